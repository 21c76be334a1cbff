"""Ways to divide a number by a larger one: less than one for each, a module a way."""
