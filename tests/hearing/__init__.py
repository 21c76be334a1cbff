"""Tests of waysaid.hearing."""
