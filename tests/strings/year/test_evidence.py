"""What is known of a class, a short calendar or another curriculum changes a year as it should."""

from collections import Counter

import pytest

from waysaid.strings import Curriculum, Evidence, faults, lay_out_year, numbered_days, year_told
from waysaid.strings.year.table import ideas

DAYS = numbered_days()
USUAL = lay_out_year(0, DAYS)


def often(year):
    """Return how many talks each idea has."""
    return Counter(talk.idea.slug for talk in year.talks)


@pytest.mark.parametrize("slug", ["see-two-groups", "hiding-in-five", "start-with-the-bigger"])
def test_what_all_have_comes_less_often(slug):
    known = lay_out_year(0, DAYS, evidence=Evidence(all_have=frozenset({slug})))
    assert 1 <= often(known)[slug] < often(USUAL)[slug]


def test_of_the_year_before_what_was_not_heard_yet_comes_first():
    late = "a-number-in-two-parts"
    year = lay_out_year(1, numbered_days(60), evidence=Evidence(not_yet=frozenset({late})))
    old = [talk.idea.slug for talk in year.talks if talk.idea.ccss.grade == 0]
    needed = {late, *ideas()[late].needs, *ideas()["pairs-in-five"].needs}
    assert late in old
    assert set(old[: old.index(late) + 1]) <= needed


@pytest.mark.parametrize("count_of_days", [1, 4, 23, 61, 140, 200])
def test_a_calendar_of_any_length_is_filled(count_of_days):
    year = lay_out_year(0, numbered_days(count_of_days))
    assert len(year.talks) == count_of_days
    assert list(faults(year_told(year))) == []


def test_a_year_of_england_is_of_its_own_grade():
    year = lay_out_year(0, DAYS, Curriculum.ENGLAND)
    assert {talk.idea.england.grade for talk in year.talks} == {0}
    assert {talk.idea.ccss.grade for talk in year.talks} == {0, 1}
    assert list(faults(year_told(year))) == []
