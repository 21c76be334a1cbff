"""Waysaid: what a child says about a calculation, written down as a way."""
