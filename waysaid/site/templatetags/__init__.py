"""Filters that our templates use."""
