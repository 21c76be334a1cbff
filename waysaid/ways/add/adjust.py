"""Adjust: add a friendly number near by instead, then put the difference right."""

from collections.abc import Iterator

from waysaid.ways.place import friendly_above, near_friendly, up_to
from waysaid.ways.plan import PLUS, Moves, Plan, hops
from waysaid.ways.shape import Sum
from waysaid.ways.step import Kind

BOTH = ((10, 6, "tens"), (100, 15, "hundreds"))
"""To what both numbers are changed, and how much there may be to put right; our choice."""
NEAR_TOTAL = 2
"""How far below a friendly total the answer may be for a child to see it; our choice."""


def plans(problem: Sum) -> Iterator[Plan]:
    """Yield the ways that go over with either number, or to a friendly number for both."""
    left, right = problem.left, problem.right
    for friendly, over in friendly_above(right):
        if over < left:
            yield f"second-to-{friendly}", _mended(left, friendly, -over)
    for friendly, over in friendly_above(left):
        if over < right:
            yield f"first-to-{friendly}", _mended(friendly, right, -over)
    yield from _both(left, right)
    yield from _friendly_total(left, right)


def _mended(left: int, right: int, *mends: int) -> Moves:
    """Return the sum of what was used instead, and the mends after it."""
    return ((Kind.JUMP, left, PLUS, right), *hops(left + right, *mends, kind=Kind.MEND))


def _both(left: int, right: int) -> Iterator[Plan]:
    """Use a friendly number for each, at least one of them above: 47 + 38 as 50 + 40, less 5."""
    for unit, most, slug in BOTH:
        first, second = near_friendly(left, unit), near_friendly(right, unit)
        net = first + second
        if not first or not second or not net or max(first, second) < 0 or abs(net) > most:
            continue
        used = (left + first, right + second)
        yield f"both-to-{slug}", _mended(*used, -net)
        yield f"both-to-{slug}-one-by-one", _mended(*used, -first, -second)


def _friendly_total(left: int, right: int) -> Iterator[Plan]:
    """Add a little more to land on a ten: 36 + 13 as 36 + 14, less 1."""
    over = up_to(left + right, 10)
    if 0 < over <= NEAR_TOTAL and left % 10 and right % 10:
        yield "second-to-match", _mended(left, right + over, -over)
        yield "first-to-match", _mended(left + over, right, -over)
