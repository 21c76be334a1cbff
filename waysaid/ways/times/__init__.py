"""Ways to multiply two numbers, a module a way."""
