"""`waysaid year`: the files it writes, and one line for what it cannot."""

import json

import pytest


def test_a_year_is_written_as_json(asked, tmp_path):
    found = asked("year", "--grade", "0", "--out", str(tmp_path / "k"))
    assert found["talks"] == 180
    year = json.loads((tmp_path / "k" / found["files"][0]).read_text("utf-8"))
    assert [talk["day"] for talk in year["talks"]] == list(range(1, 181))
    assert year["form"] == "waysaid-year-1"


@pytest.mark.parametrize(
    ("given", "said"),
    [
        (("--grade", "7", "--out", "x"), "“grade” is 7; a grade from 0"),
        (("--grade", "0"), "year needs grade and out"),
        (("--grade", "0", "--out", "x", "--curriculum", "mars"), "‘mars’ is not a curriculum"),
        (("--grade", "0", "--out", "/dev/null/x"), "a folder to write into would fit"),
    ],
)
def test_a_bad_wish_is_one_line(run, given, said):
    status, _, error = run("year", *given)
    assert status == 2
    assert said in error
    assert error.count("\n") == 1
