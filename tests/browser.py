"""A real browser that may only speak to this machine."""
