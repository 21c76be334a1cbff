"""Ways to take a number from a smaller one, so that the answer is below zero, a module a way."""
