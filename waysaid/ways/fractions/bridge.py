"""Bridge: fill up, or come down, to a whole, then the rest."""

from collections.abc import Iterator

from waysaid.number import Exact, Number, exact, parts
from waysaid.ways.fractions.amount import Amount, did, one_go
from waysaid.ways.fractions.shape import FractionSum, FractionTake
from waysaid.ways.fractions.units import Steps, cut_into, tops_in
from waysaid.ways.plan import MINUS, PLUS, Plan
from waysaid.ways.step import Kind


def sum_plans(problem: FractionSum) -> Iterator[Plan]:
    """Yield either number filled up from the other, the cut said or not."""
    for start, other, tag in problem.starts():
        gap = start.gap
        if not gap or gap >= other.value or not start.top:
            continue
        if one_go(other.value, gap):
            rest = exact(other.value - gap)
            up = did(Kind.JUMP, start.number, PLUS, written_like(gap, start))
            on = did(Kind.JUMP, exact(start.value + gap), PLUS, rest)
            yield f"{tag}-to-whole", (up, on)
            if not (start.whole and other.whole):
                cut = did(Kind.SPLIT, other.number, MINUS, written_like(gap, start))
                yield f"{tag}-to-whole-cut-said", (up, cut, on)
        elif start.value < 1 and other.value < 1:
            yield f"{tag}-to-whole-in-parts", _in_parts(start, other, problem.unit)


def _in_parts(start: Amount, other: Amount, unit: int) -> Steps:
    """Cut both into parts of a size first: 10/12 + 2/12 = 1, 1 + 7/12."""
    tops, more = tops_in(start, unit), tops_in(other, unit)
    gap = parts(unit - tops, unit)
    rest = parts(more - unit + tops, unit)
    up = did(Kind.JUMP, parts(tops, unit), PLUS, gap)
    cuts = dict.fromkeys((*cut_into(start, unit), *cut_into(other, unit)))
    return (*cuts, up, did(Kind.JUMP, 1, PLUS, rest))


def written_like(value: Exact, number: Amount) -> Number:
    """Return a part in the size that a number is written in: 2/4 beside 2/4."""
    if isinstance(value, int) or number.bottom % value.denominator:
        return value
    return parts(int(value * number.bottom), number.bottom)


def take_plans(problem: FractionTake) -> Iterator[Plan]:
    """Yield the way down to a whole and on, and what is left of one whole that is broken."""
    whole, part = problem.whole, problem.part
    over = whole.over
    if over and over < part.value and one_go(part.value, over):
        rest = exact(part.value - over)
        down = did(Kind.JUMP, whole.number, MINUS, written_like(over, whole))
        on = did(Kind.JUMP, exact(whole.value - over), MINUS, rest)
        yield "to-whole", (down, on)
        cut = did(Kind.SPLIT, part.number, MINUS, written_like(over, whole))
        yield "to-whole-cut-said", (down, cut, on)
