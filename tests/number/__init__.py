"""Tests of waysaid.number."""
