"""Slips with decimals."""
