"""Slips of products of whole numbers."""
