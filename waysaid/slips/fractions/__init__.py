"""Slips with fractions."""
