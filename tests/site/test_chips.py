"""The chips: what is offered first is what a child would say."""

import pytest

from waysaid.site.chips import foreseen, ordered
from waysaid.strings import leaves_of
from waysaid.ways import Family


def idle(way):
    return any(0 in leaves_of(step.equation.left) for step in way.steps)


@pytest.mark.parametrize("problem", ["30 + 15", "40 + 26", "26 + 40", "300 + 145", "500 - 240"])
def test_no_way_with_nothing_to_put_on_is_offered_before_the_others(problem):
    known = foreseen(problem)
    leaders = [known[place] for place in ordered(known, {}, {})]
    first = leaders[: len({way.family for way in known if not idle(way)})]
    assert first
    assert not any(idle(way) for way in first)


def test_a_jump_of_the_whole_number_at_once_does_not_lead():
    jumps = [way for way in foreseen("30 + 15") if way.family is Family.JUMP]
    assert [step.text for step in jumps[0].steps] == ["30 + 10 = 40", "40 + 5 = 45"]
