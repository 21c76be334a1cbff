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


CALENDAR = """BEGIN:VCALENDAR
BEGIN:VEVENT
SUMMARY:First day of school
DTSTART;VALUE=DATE:20260907
END:VEVENT
BEGIN:VEVENT
SUMMARY:Last day of school
DTSTART;VALUE=DATE:20260918
END:VEVENT
BEGIN:VEVENT
SUMMARY:Harvest
DTSTART;VALUE=DATE:20260911
END:VEVENT
END:VCALENDAR
"""


def test_with_a_calendar_each_talk_has_its_day_and_there_is_a_calendar_of_them(asked, tmp_path):
    days = tmp_path / "days.ics"
    days.write_text(CALENDAR)
    given = ("year", "--grade", "0", "--calendar", str(days), "--out", str(tmp_path))
    assert asked(*given)["talks"] == 9
    year = json.loads((tmp_path / "grade-0.json").read_text("utf-8"))
    assert "2026-09-11" not in {talk["date"] for talk in year["talks"]}
    written = (tmp_path / "grade-0.ics").read_text("utf-8")
    assert written.count("BEGIN:VEVENT") == 9
    assert "\r\r" not in written
    assert asked(*given, "--last", "2026-09-10")["talks"] == 4


@pytest.mark.parametrize(
    ("given", "said"),
    [
        (("--calendar", "nowhere.ics"), "cannot read ‘nowhere.ics’"),
        (("--first", "2026-09-01"), "“first” or “last” is given alone"),
        (("--first", "1st", "--last", "2026-09-10"), "“first” is ‘1st’; a date such as"),
        (("--first", "2026-09-11", "--last", "2026-09-10"), "no school day"),
    ],
)
def test_bad_days_are_one_line(run, tmp_path, given, said):
    status, _, error = run("year", "--grade", "0", "--out", str(tmp_path), *given)
    assert status == 2
    assert said in error
    assert error.count("\n") == 1


def test_a_bad_calendar_names_the_line(run, tmp_path):
    days = tmp_path / "days.ics"
    days.write_text(CALENDAR.replace("20260911", "20261311"))
    given = ("--grade", "0", "--out", str(tmp_path), "--calendar", str(days))
    status, _, error = run("year", *given)
    assert status == 2
    assert "Line 12 of the calendar says ‘20261311’" in error
    assert "Line 12" not in run("year", *given, "--lang", "es")[2]
