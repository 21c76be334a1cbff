"""Sharing digit by digit, as on paper: four into nine goes twice, carry one, four into twelve."""

from waysaid.hearing.draft import Draft
from waysaid.hearing.spoken.moved import pair_of
from waysaid.hearing.spoken.state import State
from waysaid.hearing.spoken.world import World
from waysaid.number import Exact, Sign, exact


def goes_in(draft: Draft, world: World) -> Exact | None:
    """Return how often what is shared by goes into the digits that a step shares: 2, of 9 / 4.

    None where a step shares no digits, or all of the number.
    """
    pair = pair_of(draft) if world.digits else None
    if pair is None or pair[0] not in world.digits or pair[1] is not Sign.OVER:
        return None
    whole, size = world.facts.numbers
    return exact(pair[0] // size) if pair[2] == size and pair[0] != whole else None


def shares_digits(drafts: tuple[Draft, ...], world: World) -> bool:
    """Tell whether the last step shares the digits that are next."""
    return bool(drafts) and goes_in(drafts[-1], world) is not None


def told_by_digits(drafts: tuple[Draft, ...], world: World) -> bool:
    """Tell whether the first step shares the first digits: the 9 of 92, and not the 24 of 240."""
    first = pair_of(drafts[0]) if drafts and shares_digits(drafts[:1], world) else None
    if first is None or first[0] != world.digits[0]:
        return False
    behind = str(world.facts.numbers[0])[len(str(first[0])) :]
    return bool(behind.strip("0"))


def comes_next(state: State, value: Exact, world: World) -> bool:
    """Tell whether a number is what is shared after the digits just shared: that's twelve."""
    known = value in world.digits and shares_digits(state.drafts, world)
    last = pair_of(state.drafts[-1]) if known else None
    if last is None:
        return False
    return world.digits.index(value) == world.digits.index(last[0]) + 1
