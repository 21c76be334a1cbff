"""The project's own strings: the links written down by hand are found."""

import pytest

from tests.strings.ours import OURS
from tests.strings.ours_on import OURS_ON
from waysaid.number import parse
from waysaid.strings import links, starters


@pytest.mark.parametrize(("problems", "by_hand"), [row[2:] for row in OURS], ids=lambda _: "")
def test_every_link_written_down_by_hand_is_found(problems, by_hand):
    found = {
        (link.kind.value, link.between)
        for link in links([parse(one) for one in problems], every=True)
    }
    assert set(by_hand) <= found


@pytest.mark.parametrize("problems", [row[2] for row in OURS])
def test_something_is_offered_between_the_first_problems_of_each(problems):
    offered = links([parse(one) for one in problems])
    assert any(1 in link.between for link in offered)


def test_the_first_problem_of_every_row_opens_a_starter():
    first = {starter.problems[0] for starter in starters()}
    assert {parse(row[2][0]) for row in OURS} <= first


@pytest.mark.parametrize(("problems", "by_hand"), OURS_ON, ids=lambda _: "")
def test_every_link_of_the_later_grades_written_down_by_hand_is_found(problems, by_hand):
    found = {
        (link.kind.value, link.between)
        for link in links([parse(one) for one in problems], every=True)
    }
    assert set(by_hand) <= found


@pytest.mark.parametrize("problems", [row[0] for row in OURS_ON])
def test_one_of_the_first_links_offered_was_written_down_by_hand(problems):
    by_hand = next(row[1] for row in OURS_ON if row[0] == problems)
    first = links([parse(one) for one in problems])[:2]
    assert {(link.kind.value, link.between) for link in first} & set(by_hand)
