"""Rename: numbers as so many tenths or hundredths, or a decimal as the part of one that it is."""

from collections.abc import Iterator
from fractions import Fraction

from waysaid.number import Equation, places_of
from waysaid.ways.decimals.names import unit_name, worth
from waysaid.ways.decimals.shape import Scaled, Times, Turned, scaled
from waysaid.ways.decimals.unit import made, pointed
from waysaid.ways.factor import can_do
from waysaid.ways.plan import OVER, TIMES, Moves, Plan
from waysaid.ways.shape import Product
from waysaid.ways.step import Kind, Step
from waysaid.ways.times.break_up import plans as broken_up

TOP_OVER = {
    Fraction(top, bottom): (top, bottom)
    for top, bottom in (
        (1, 2),
        (1, 4),
        (3, 4),
        (1, 5),
        (2, 5),
        (1, 8),
        (3, 8),
        (1, 10),
        (1, 100),
        (1, 1000),
        (3, 2),
    )
}
"""The decimals that a child knows as parts of one; our choice."""
MOST_PLACES = 3
"""The most places after the point that a share may have; our choice."""


def plans(problem: Times) -> Iterator[Plan]:
    """Yield the product of the units, and either number as a part of one."""
    yield from _units(problem)
    for turn in problem.turns():
        yield from _part(turn)


def _units(problem: Times) -> Iterator[Plan]:
    """Multiply the units, in one go or broken up, then say what they are worth: 84 / 100."""
    one, other = problem.left.units, problem.right.units
    last = worth(one * other, problem.places)
    slug = f"as-{unit_name(problem.places)}"
    if 1 in (one, other) or not problem.places:
        return
    if can_do(one, other):
        yield slug, ((Kind.GROUP, one, TIMES, other), last)
        return
    for name, moves in _worked(one, other):
        yield f"{slug}-{name}", (*moves, last)
        return


def _worked(one: int, other: int) -> Iterator[tuple[str, Moves]]:
    """Yield the product of two longer numbers by its parts."""
    yield from broken_up(Product(one, other))


def _part(turn: Turned) -> Iterator[Plan]:
    """Take the part: 0.25 x 36 as 36 / 4; 0.75 x 36 as 36 / 4 and 9 x 3.

    With or without saying that 0.25 is 1/4.
    """
    found = TOP_OVER.get(Fraction(turn.factor.value))
    if found is None:
        return
    top, bottom = found
    share = _share(turn.other, bottom)
    if share is None or not can_do(max(share.units, 1), top):
        return
    other = (turn.other.units, turn.other.places)
    cut = made(Kind.SCALE, other, OVER, (bottom, 0), (share.units, share.places))
    steps: tuple[Step, ...] = (cut,)
    if top > 1:
        result = (share.units * top, share.places)
        steps += (made(Kind.SCALE, (share.units, share.places), TIMES, (top, 0), result),)
    slug = f"{turn.tag}-as-{top}-over-{bottom}"
    yield slug, steps
    if top < bottom:
        number = pointed(turn.factor.units, turn.factor.places)
        said = Step(Kind.SPLIT, Equation(number, Fraction(top, bottom)))
        yield f"{slug}-said", (said, *steps)


def _share(number: Scaled, bottom: int) -> Scaled | None:
    """Return the number over a small one, where a child would do it in one go; else None."""
    value = Fraction(number.value) / bottom
    places = places_of(value)
    if places is None or places > MOST_PLACES:
        return None
    share = scaled(value)
    return share if 10 % bottom == 0 or can_do(share.units, bottom) else None
