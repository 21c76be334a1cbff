"""Ways to find a difference, a module a way."""
