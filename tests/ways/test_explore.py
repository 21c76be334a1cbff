"""The list of ways: best first, each once, the same every time."""

import pytest

from tests.ways.asked import asked, asked_in_groups
from waysaid.number import parse, solve
from waysaid.ways import Family, effort_of, ways


def test_a_problem_nobody_wrote_ways_for_has_none():
    for problem in ("7", "1/3"):
        assert ways(parse(problem)) == ()


@pytest.mark.parametrize("problem", asked(7, 60) + asked_in_groups(7, 60))
def test_the_least_effort_comes_first(problem):
    efforts = [effort_of(way).tenths for way in ways(parse(problem))]
    assert efforts == sorted(efforts)


@pytest.mark.parametrize("problem", asked(8, 60) + asked_in_groups(8, 60))
def test_every_way_carries_the_answer(problem):
    assert {way.answer for way in ways(parse(problem))} <= {solve(parse(problem))}


@pytest.mark.parametrize("problem", asked(9, 60) + asked_in_groups(9, 60))
def test_asking_twice_gives_the_same(problem):
    assert ways(parse(problem)) == ways(parse(problem))


@pytest.mark.parametrize(
    "problem",
    [one for one in asked(10, 90) + asked_in_groups(10, 120) if "_" not in one],
)
def test_family_and_variant_name_one_way_where_no_number_is_missing(problem):
    names = [(way.family, way.variant) for way in ways(parse(problem))]
    assert len(names) == len(set(names))


def test_every_family_comes_up_somewhere():
    problems = (
        "37 + 25",
        "26 + 27",
        "71 - 34",
        "13 - 7",
        "7 + 26 + 3",
        "30 x 14",
        "19 x 7",
        "96 / 6",
        "15% of 60",
    )
    met = {way.family for problem in problems for way in ways(parse(problem))}
    assert met == set(Family)


def test_steps_that_two_families_share_stay_with_the_one_listed_first():
    met = {"; ".join(step.text for step in way.steps): way.family for way in ways(parse("30 + 28"))}
    assert met["30 + 30 = 60; 60 - 2 = 58"] is Family.NEAR_DOUBLE
