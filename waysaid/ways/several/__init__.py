"""Ways with three or more numbers, a module a way."""
