"""Slips of sums and differences of whole numbers."""
