"""Fixtures of the pages' browser tests."""

from tests.site.pages.browsing import enter, house

__all__ = ["enter", "house"]
