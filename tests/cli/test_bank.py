"""`waysaid bank`: a file for each grade, the same for the same seed, each statement true."""

import json

import pytest
from jsonschema import Draft202012Validator

from tests.counts import count
from waysaid.cli import bank
from waysaid.strings import faults, year_schema

GRADES = range(count(test=1, sweep=7))


@pytest.fixture
def few(monkeypatch):
    """Leave the bank these grades only: the others take a while."""
    shares = [share for one in bank.SHARES if (share := tuple(set(one) & set(GRADES)))]
    monkeypatch.setattr(bank, "SHARES", shares)


@pytest.mark.slow
@pytest.mark.usefixtures("few")
def test_a_bank_has_a_file_for_each_grade_that_fits_its_form(asked, tmp_path):
    found = asked("bank", "--seed", "3", "--out", str(tmp_path / "one"))
    assert found["talks"] == 180 * len(GRADES)
    assert found["files"] == [f"grade-{grade}.json" for grade in GRADES]
    again = asked("bank", "--seed", "3", "--out", str(tmp_path / "two"))
    assert {**again, "out": found["out"]} == found
    for name in found["files"]:
        said = (tmp_path / "one" / name).read_text("utf-8")
        assert said == (tmp_path / "two" / name).read_text("utf-8")
        year = json.loads(said)
        Draft202012Validator(year_schema()).validate(year)
        assert (year["seed"], list(faults(year))) == (3, [])


@pytest.mark.slow
@pytest.mark.usefixtures("few")
def test_a_bank_is_the_years_that_are_written_one_by_one(asked, tmp_path):
    asked("bank", "--out", str(tmp_path / "bank"))
    asked("year", "--grade", "0", "--out", str(tmp_path))
    one = (tmp_path / "grade-0.json").read_text("utf-8")
    assert (tmp_path / "bank" / "grade-0.json").read_text("utf-8") == one


def test_a_bad_bank_is_one_line(run):
    status, _, error = run("bank", "--curriculum", "mars", "--out", "x")
    assert (status, error.count("\n")) == (2, 1)
    assert "‘mars’ is not a curriculum" in error
