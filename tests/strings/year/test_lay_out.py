"""A year laid out: range, needs, growing gaps, no repeats, the days of its calendar."""

from datetime import date, timedelta
from itertools import combinations, pairwise
from random import Random

import pytest

from tests.counts import count
from waysaid.strings import Curriculum, YearError, faults, lay_out_year, school_days, year_told
from waysaid.strings.year.course import LONGEST
from waysaid.strings.year.given import SHARED, in_grade
from waysaid.strings.year.ideas import Topic
from waysaid.strings.year.lay_out import EASY_IDEAS, NORMS
from waysaid.strings.year.table import ideas, ideas_asked

GRADES = (0, 1)
YEARS = [
    (grade, seed, calendar)
    for grade in GRADES
    for seed in range(count(test=1, sweep=20))
    for calendar in range(count(test=1, sweep=3))
]


def calendar_of(number):
    """Return a made-up calendar of about 180 days, with a long break and single days off."""
    dice, first = Random(number), date(2026, 8, 31) + timedelta(days=7 * number)
    off = {first + timedelta(days=dice.randrange(260)) for _ in range(8)}
    off |= {first + timedelta(days=110 + more) for more in range(14)}
    return school_days(first, first + timedelta(days=270), off)


@pytest.fixture(scope="module", params=YEARS, ids=lambda one: "-".join(map(str, one)))
def laid(request):
    """A year and the days that it was laid out for."""
    grade, seed, calendar = request.param
    days = calendar_of(calendar)
    return lay_out_year(grade, days, seed=seed), days


def test_each_school_day_has_one_talk(laid):
    year, days = laid
    assert tuple(talk.day for talk in year.talks) == days


def test_no_statement_of_it_is_false(laid):
    assert list(faults(year_told(laid[0]))) == []


def test_every_problem_belongs_to_the_grade(laid):
    year, _ = laid
    for talk in year.talks:
        for problem in talk.given.problems:
            assert in_grade(problem, talk.idea, year.grade, year.curriculum)


def test_what_an_idea_needs_comes_first(laid):
    year, _ = laid
    first = {}
    for at, talk in enumerate(year.talks):
        first.setdefault(talk.idea.slug, at)
    for slug, at in first.items():
        for need in ideas()[slug].needs:
            if ideas()[need].ccss.grade == year.grade:
                assert first[need] < at


def test_ideas_return_after_gaps_that_grow(laid):
    for gaps in gaps_of(laid[0]).values():
        assert all(gap >= 2 for gap in gaps)
        assert all(after >= min(LONGEST, gap + 1) for gap, after in pairwise(gaps)), gaps


def test_no_string_comes_twice_and_talks_of_one_idea_share_little(laid):
    talks = laid[0].talks
    assert len({talk.given.problems for talk in talks}) == len(talks)
    for one, other in combinations(talks, 2):
        if one.idea == other.idea:
            shared = set(one.given.problems) & set(other.given.problems)
            assert len(shared) <= SHARED[one.idea.ccss.grade]


def test_the_last_day_of_a_week_is_lighter(laid):
    for talk in laid[0].talks:
        assert (len(talk.given.problems) == 3) == talk.day.ends_week
        if talk.day.ends_week and talk.day.number > NORMS:
            assert talk.time > 1


def test_the_first_two_weeks_hold_a_few_easy_ideas(laid):
    year, _ = laid
    first = {talk.idea for talk in year.talks[:NORMS]}
    assert len(first) <= EASY_IDEAS
    assert all(one.topic is Topic.IMAGES or one.ccss.grade < year.grade for one in first)


def test_every_new_idea_of_the_grade_comes(laid):
    year, _ = laid
    assert {talk.idea for talk in year.talks} >= set(ideas_asked(year.grade, Curriculum.CCSS))


def gaps_of(year):
    """Return the school days between the talks of each idea."""
    days = {}
    for at, talk in enumerate(year.talks):
        days.setdefault(talk.idea.slug, []).append(at)
    return {slug: [after - at for at, after in pairwise(those)] for slug, those in days.items()}


def test_the_seed_decides_and_nothing_else():
    days = calendar_of(0)
    assert lay_out_year(0, days, seed=3) == lay_out_year(0, days, seed=3)
    assert lay_out_year(0, days, seed=3) != lay_out_year(0, days, seed=4)


def test_more_days_than_talks_is_one_sentence():
    first = date(2026, 1, 1)
    days = school_days(first, first + timedelta(days=360), weekdays=range(7))
    with pytest.raises(YearError, match=r"The talks last for \d+ school days"):
        lay_out_year(0, days)
