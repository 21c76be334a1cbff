"""Ways to add two numbers, a module a way."""
