"""Ways to multiply three or more numbers, a module a way."""
