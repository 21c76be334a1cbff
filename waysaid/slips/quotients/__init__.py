"""Slips of divisions of whole numbers, with and without something left over."""
