"""Tests of Waysaid, in folders that mirror the package."""
