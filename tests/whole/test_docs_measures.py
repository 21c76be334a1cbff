"""Each measurement of the documentation is typed, with a handful of cases, and says what it should.

How long something took is looked at nowhere; that there is a figure, and whose, is.
"""

import json
from itertools import chain

import pytest

from tests.browser import driver_runs, program
from tests.postgres import missing
from tests.whole.reader import Reader
from tests.whole.test_docs_commands import MEASUREMENTS

pytestmark = pytest.mark.slow

PARTS = {
    "python scripts/bench_ways.py": {"ways", "slips", "whole"},
    "python scripts/bench_compose.py": {"whole_pools", "beside_a_solver", "growth"},
    "python scripts/bench_year.py": {"bank"},
    "python scripts/bench_growth.py": {
        *("district", "page", "rows_read", "suggestion", "suggestion_cold"),
    },
    "python scripts/bench_months.py": {"months"},
    "python scripts/bench_hearing.py": {
        *("lexicons_read_ms", "imports_ms", "sentences", "generated", "any_string", "memory"),
    },
    "python scripts/bench.py tap": {"machine", "tap_to_board"},
    "python scripts/bench.py line": {"machine", "line"},
}
"""What each command measures."""
APART = {"bench_compose": "composing", "bench_hearing": "hearing"}
"""The scripts whose parts `make bench` keeps under a name of their own."""
WHOLE = {"start", "weight", "memory", *APART.values()}.union(
    *(parts for command, parts in PARTS.items() if not any(each in command for each in APART))
)
"""What `make bench` measures."""


@pytest.fixture(scope="module")
def measurer(checkout, tmp_path_factory):
    """A reader with everything set up, who has a handful of cases measured."""
    reader = Reader(checkout, tmp_path_factory.mktemp("home"))
    reader.finds(checkout / ".venv" / "bin")
    reader.environment["WAYSAID_COUNTS"] = "quick"
    return reader


def measured(measurer, command):
    """Type a measurement, and return what it printed without the note that it was a small one."""
    in_browser = "bench.py" in command or command == "make bench"
    if in_browser and not (program() and driver_runs()):
        missing("Chromium, or what its driver needs,")
    found = json.loads(measurer.types(command))
    assert found.pop("small_run") is True
    return found


def spreads(found):
    """Yield each middle and 95th of a hundred with its number, however deep it stands."""
    if isinstance(found, dict):
        if {"p50", "p95", "n"} <= set(found):
            yield found
        yield from chain.from_iterable(map(spreads, found.values()))
    elif isinstance(found, list):
        yield from chain.from_iterable(map(spreads, found))


def assert_well_formed(found):
    for each in spreads(found):
        assert 0 <= each["p50"] <= each["p95"]
        assert each["n"] >= 2


@pytest.mark.parametrize(
    "command",
    [
        pytest.param(each, marks=[pytest.mark.browser] if "bench.py" in each else [])
        for each in MEASUREMENTS
    ],
)
def test_a_measurement_is_made_and_told(measurer, command):
    found = measured(measurer, command)
    assert set(found) == PARTS[command]
    assert_well_formed(found)
    if "months" in found:
        assert found["months"]["rows"] > 0
        assert found["months"]["same_rows"] is True
    if "bank" in found:
        assert found["bank"]["talks"] == 180
    if "beside_a_solver" in found:
        beside = found["beside_a_solver"]
        assert (beside["unlike"], beside["solver_not_proven"]) == (0, 0)
        assert found["whole_pools"]["not_proven"] == []


@pytest.mark.browser
def test_all_of_it_is_measured_and_told(measurer):
    found = measured(measurer, "make bench")
    assert set(found) == WHOLE
    assert_well_formed(found)
    assert len(list(spreads(found))) > 40
    for screen in found["weight"].values():
        assert screen["warm"]["bytes"] < screen["cold"]["bytes"]
    assert all(each > 0 for each in found["memory"].values())
