"""Ways that only a problem with a missing number has, a module a way."""
