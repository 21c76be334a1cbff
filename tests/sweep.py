"""Notes on how many cases each property was tried with, for docs/reference/sweep.md.

A test says what it tried with the fixture `sweep_note`; a Hypothesis test that says nothing is
noted with the number of examples it may draw. The notes travel in the JUnit file as properties,
which scripts/sweep_report.py turns into a table.
"""

from collections.abc import Callable

import pytest

NOTE = "waysaid-sweep"


@pytest.fixture
def sweep_note(record_property) -> Callable[..., None]:
    """Return a function that notes a property in plain words, its cases and its exceptions."""

    def note(what: str, cases: int, exceptions: int = 0) -> None:
        record_property(NOTE, f"{cases}|{exceptions}|{what}")

    return note


@pytest.hookimpl(trylast=True)
def pytest_runtest_setup(item: pytest.Item) -> None:
    """Note the examples of a Hypothesis test, so that none is left out of the report."""
    function = getattr(item, "obj", None)
    drawn = getattr(function, "_hypothesis_internal_use_settings", None)
    if getattr(function, "is_hypothesis_test", False) and drawn is not None:
        item.user_properties.append((f"{NOTE}-examples", str(drawn.max_examples)))
