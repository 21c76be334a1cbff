"""Ways to divide one number by another, a module a way."""
