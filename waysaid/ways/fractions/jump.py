"""Jump: one number stays whole, the other goes on or off by its wholes and its parts."""

from collections.abc import Iterator

from waysaid.number import exact
from waysaid.ways.fractions.amount import Amount, did, one_go
from waysaid.ways.fractions.shape import FractionSum, FractionTake
from waysaid.ways.plan import MINUS, PLUS, Plan
from waysaid.ways.step import Kind, Step


def sum_plans(problem: FractionSum) -> Iterator[Plan]:
    """Yield the wholes and the parts of either number added to the other."""
    for start, other, tag in problem.starts():
        if not (other.whole and other.top and problem.easy):
            continue
        middle = exact(start.value + other.whole)
        on = did(Kind.JUMP, start.number, PLUS, other.whole)
        yield f"{tag}-wholes-first", (on, did(Kind.JUMP, middle, PLUS, other.part))
        gap = start.gap
        if 0 < gap < other.value - other.whole and one_go(other.value, gap):
            filled = did(Kind.JUMP, middle, PLUS, gap)
            rest = exact(other.value - other.whole - gap)
            last = did(Kind.JUMP, exact(middle + gap), PLUS, rest)
            yield f"{tag}-wholes-then-to-whole", (on, filled, last)
        if start.top:
            small = did(Kind.JUMP, start.number, PLUS, other.part)
            after = exact(start.value + exact(other.part))
            yield f"{tag}-parts-first", (small, did(Kind.JUMP, after, PLUS, other.whole))


def take_plans(problem: FractionTake) -> Iterator[Plan]:
    """Yield the wholes and the parts of the second taken from the first."""
    whole, part = problem.whole, problem.part
    if not (part.whole and part.top and problem.easy):
        return
    middle = exact(whole.value - part.whole)
    off = did(Kind.JUMP, whole.number, MINUS, part.whole)
    yield "wholes-first", (off, did(Kind.JUMP, middle, MINUS, part.part))
    over = whole.over
    if 0 < over < part.value - part.whole and one_go(part.value, over):
        down = did(Kind.JUMP, middle, MINUS, over)
        rest = exact(part.value - part.whole - over)
        last = did(Kind.JUMP, exact(middle - over), MINUS, rest)
        yield "wholes-then-to-whole", (off, down, last)
    yield "parts-first", _parts_first(whole, part)


def _parts_first(whole: Amount, part: Amount) -> tuple[Step, ...]:
    after = exact(whole.value - exact(part.part))
    small = did(Kind.JUMP, whole.number, MINUS, part.part)
    return (small, did(Kind.JUMP, after, MINUS, part.whole))
