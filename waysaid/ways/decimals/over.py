"""Quotients with decimals, worked as whole quotients are.

Two kinds: how many times a decimal goes into a number (both in one unit: 4.8 / 0.6 is 48 tenths in
sixes), and a decimal shared by a whole number (4.8 / 4 is 48 tenths shared).
"""

from collections.abc import Callable, Iterator

from waysaid.ways.decimals.shape import MOST_MORE, Over, Scaled
from waysaid.ways.decimals.unit import Units, all_in, made
from waysaid.ways.maker import AnyMaker, Maker
from waysaid.ways.plan import OVER, PLUS, TIMES, Move, Plan
from waysaid.ways.shape import Quotient, UnderOne
from waysaid.ways.share import (
    adjust,
    break_up,
    chunk_out,
    counting,
    factor_steps,
    known_fact,
    near_fact,
    think_times,
)
from waysaid.ways.step import Kind, Step
from waysaid.ways.way import Family

COUNTED_PLACES = 2
"""The most places a child counts in; our choice."""
WHOLE_CUTS = ("five-by-five", "by-doubling")
"""Cuts of groups that make sense only where the groups are whole; our choice."""
TENTH_CUTS = ("ten-first", "tens-one-by-one", "five-first", "round-first")
"""Cuts of groups that make sense in tenths as well, where ten of them are one; our choice."""

_Planner = Callable[[Quotient], Iterator[Plan]]


def in_whole(problem: Over) -> tuple[Quotient, int, int, int] | None:
    """Return the quotient of whole numbers, and the places of its whole, its part, its groups.

    None where it has no end, or not near enough.
    """
    whole, part = problem.whole, problem.part
    if part.places:
        places = max(whole.places, part.places)
        more = whole.units * 10 ** (places - whole.places)
        by = part.units * 10 ** (places - part.places)
        if more % by == 0:
            return Quotient(more, by), places, places, 0
        return None
    for extra in range(MOST_MORE + 1):
        if whole.units * 10**extra % part.units == 0:
            places = whole.places + extra
            return Quotient(whole.units * 10**extra, part.units), places, 0, places
    return None


def _mapped(family: Family, plans: _Planner, most: int = 9) -> AnyMaker:
    """Return the maker that does with units what a planner of whole quotients does with ones."""

    def mapped(problem: Over) -> Iterator[Plan]:
        found = in_whole(problem)
        if found is None:
            return
        quotient, whole, part, groups = found
        if min(quotient.part, quotient.groups) < 2 or whole > most:
            return
        for slug, moves in plans(quotient):
            if fits(family, slug, part) and not any(cut in slug for cut in _unfit(groups)):
                teller = _Teller(family is Family.THINK_TIMES, whole, part, groups)
                yield slug, tuple([teller.step(move) for move in moves])

    return Maker(family, Over, mapped)


def fits(family: Family, slug: str, part_places: int) -> bool:
    """Tell whether a way of whole quotients makes sense where the part has so many places.

    A decimal is not taken in factors nor swapped for ten; a whole number of sharers is not
    counted up to a decimal.
    """
    if family is Family.FACTOR_STEPS:
        return not part_places
    if family is Family.ADJUST:
        return not part_places or slug == "half-then-doubled"
    return bool(part_places) if family is Family.COUNTING else True


def _unfit(places: int) -> tuple[str, ...]:
    """Return the cuts that groups of so many places are not cut by: no one takes 0.5 and 0.5."""
    if not places:
        return ()
    return WHOLE_CUTS if places == 1 else (*WHOLE_CUTS, *TENTH_CUTS)


class _Teller:
    """Tells the moves of a whole quotient in the units of its whole, its part and its groups."""

    def __init__(self, thinks: bool, whole: int, part: int, groups: int) -> None:
        self.thinks, self.whole, self.part, self.groups = thinks, whole, part, groups

    def step(self, move: Move | Step) -> Step:
        """Return the step; each number in the unit of what it is."""
        if isinstance(move, Step):
            gathers = move.kind in (Kind.GATHER, Kind.JOIN)
            return all_in(move, self.groups if gathers else self.whole)
        kind, left, sign, right = move
        if sign is OVER:
            return self._over(kind, left, right)
        if sign is TIMES:
            return self._times(kind, left, right)
        wholes = kind in (Kind.COUNT, Kind.TAKE) or (self.thinks and kind is not Kind.GATHER)
        places = self.whole if wholes else self.groups
        result = left + right if sign is PLUS else left - right
        return made(kind, (left, places), sign, (right, places), (result, places))

    def _over(self, kind: Kind, left: int, right: int) -> Step:
        by: Units = (right, self.part)
        result: Units = (left // right, self.groups)
        if kind is Kind.SCALE:
            by, result = (right, 0), (left // right, self.whole)
        return made(kind, (left, self.whole), OVER, by, result)

    def _times(self, kind: Kind, left: int, right: int) -> Step:
        if kind is Kind.SCALE:
            result = (left * right, self.groups)
            return made(kind, (left, self.groups), TIMES, (right, 0), result)
        one, other = (self.part, self.groups) if self.thinks else (self.groups, self.part)
        return made(kind, (left, one), TIMES, (right, other), (left * right, self.whole))


MAKERS: tuple[AnyMaker, ...] = (
    _mapped(Family.KNOWN_FACT, known_fact.plans),
    _mapped(Family.COUNTING, counting.plans, COUNTED_PLACES),
    _mapped(Family.ADJUST, adjust.plans),
    _mapped(Family.FACTOR_STEPS, factor_steps.plans),
    _mapped(Family.NEAR_FACT, near_fact.plans),
    _mapped(Family.BREAK_UP, break_up.plans),
    _mapped(Family.THINK_TIMES, think_times.plans),
    _mapped(Family.CHUNK_OUT, chunk_out.plans),
)


def _of_whole_numbers(maker: AnyMaker) -> AnyMaker:
    """Return the maker that does with 3 / 8 what a maker of decimals does with 3.0 / 8."""

    def plans(problem: UnderOne) -> Iterator[Plan]:
        yield from maker.plans(Over(Scaled(problem.whole, 0), Scaled(problem.part, 0)))

    return Maker(maker.family, UnderOne, plans)


_TOLD = (Family.KNOWN_FACT, Family.FACTOR_STEPS, Family.BREAK_UP, Family.THINK_TIMES)
UNDER_ONE: tuple[AnyMaker, ...] = tuple(
    _of_whole_numbers(maker) for maker in MAKERS if maker.family in _TOLD
)
"""Less than one for each, told as a decimal where it ends soon."""
