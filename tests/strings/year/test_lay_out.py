"""A year laid out: range, needs, growing gaps, no repeats, the days of its calendar."""

from datetime import date, timedelta
from itertools import combinations, pairwise
from random import Random

import pytest

from tests.counts import count
from waysaid.strings import Curriculum, YearError, faults, lay_out_year, school_days, year_told
from waysaid.strings.year.course import LONGEST
from waysaid.strings.year.given import SHARED, in_grade, largest
from waysaid.strings.year.ideas import Topic
from waysaid.strings.year.lay_out import EASY_IDEAS, NORMS
from waysaid.strings.year.table import ideas, ideas_asked
from waysaid.ways import grades_of

YEARS = [
    pytest.param(grade, seed, calendar, marks=[pytest.mark.slow] if grade > 1 else [])
    for grade in range(7)
    for seed in range(count(test=1, sweep=20))
    for calendar in range(count(test=1, sweep=3))
]


def calendar_of(number):
    """Return a made-up calendar of about 180 days, with a long break and single days off."""
    dice, first = Random(number), date(2026, 8, 31) + timedelta(days=7 * number)
    off = {first + timedelta(days=dice.randrange(260)) for _ in range(8)}
    off |= {first + timedelta(days=110 + more) for more in range(14)}
    return school_days(first, first + timedelta(days=270), off)


@pytest.mark.parametrize(("grade", "seed", "calendar"), YEARS)
def test_a_year_is_as_it_should_be(grade, seed, calendar):
    days = calendar_of(calendar)
    year = lay_out_year(grade, days, seed=seed)
    assert (year.grade, year.seed) == (grade, seed)
    assert tuple(talk.day for talk in year.talks) == days
    assert list(faults(year_told(year))) == []
    no_problem_is_beyond_the_grade_and_every_talk_reaches_it(year)
    what_an_idea_needs_comes_first(year)
    ideas_return_after_gaps_that_grow(year)
    no_string_comes_twice_and_talks_of_one_idea_share_little(year)
    the_last_day_of_a_week_is_lighter(year)
    the_first_two_weeks_hold_a_few_easy_ideas(year)
    every_new_idea_of_the_grade_comes(year)


def no_problem_is_beyond_the_grade_and_every_talk_reaches_it(year):
    for talk in year.talks:
        problems = talk.given.problems
        assert in_grade(problems, talk.idea, year.grade, year.curriculum)
        if year.grade:
            grades = [grades_of(problem) for problem in problems]
            assert max(one.first for one in grades) <= year.grade
            assert max(one.last for one in grades) >= year.grade
        elif talk.idea.topic is Topic.IMAGES:
            assert all(problem.count <= 20 for problem in problems)
        else:
            assert all(largest(problem) <= 10 for problem in problems)


def what_an_idea_needs_comes_first(year):
    first = {}
    for at, talk in enumerate(year.talks):
        first.setdefault(talk.idea.slug, at)
    for slug, at in first.items():
        for need in ideas()[slug].needs:
            if ideas()[need].ccss.grade == year.grade:
                assert first[need] < at


def ideas_return_after_gaps_that_grow(year):
    for gaps in gaps_of(year).values():
        assert all(gap >= 2 for gap in gaps)
        assert all(after >= min(LONGEST, gap + 1) for gap, after in pairwise(gaps)), gaps


def no_string_comes_twice_and_talks_of_one_idea_share_little(year):
    talks = year.talks
    assert len({talk.given.problems for talk in talks}) == len(talks)
    for one, other in combinations(talks, 2):
        if one.idea == other.idea:
            shared = set(one.given.problems) & set(other.given.problems)
            assert len(shared) <= SHARED[one.idea.ccss.grade]


def the_last_day_of_a_week_is_lighter(year):
    for talk in year.talks:
        assert (len(talk.given.problems) == 3) == talk.day.ends_week
        if talk.day.ends_week and talk.day.number > NORMS:
            assert talk.time > 1


def the_first_two_weeks_hold_a_few_easy_ideas(year):
    first = {talk.idea for talk in year.talks[:NORMS]}
    assert len(first) <= EASY_IDEAS
    assert all(one.topic is Topic.IMAGES or one.ccss.grade < year.grade for one in first)


def every_new_idea_of_the_grade_comes(year):
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
