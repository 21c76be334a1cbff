"""Which fraction is larger, decided by one of its numbers alone, or by the gap between them."""

from collections.abc import Iterator
from dataclasses import dataclass

from waysaid.number import Order, Problem, Sign, compared
from waysaid.slips.cases import Part, part_of, versus_of
from waysaid.slips.decimals.comparing import held
from waysaid.slips.slip import Made
from waysaid.slips.work import says


@dataclass(frozen=True, slots=True)
class Fractions:
    """Two fractions to compare, with as many wholes on both sides."""

    left: Part
    right: Part


def fractions_of(problem: Problem) -> Fractions | None:
    """Return two fractions to compare whose wholes, if any, are alike."""
    versus = versus_of(problem)
    if versus is None:
        return None
    left, right = part_of(versus.left), part_of(versus.right)
    if left is None or right is None or left.whole != right.whole:
        return None
    return Fractions(left, right) if min(left.bottom, right.bottom) > 1 else None


def bigger_bottom(case: Fractions) -> Iterator[Made]:
    """Take the fraction with the bigger bottom for the larger: 1/8 beats 1/4."""
    if case.left.bottom != case.right.bottom:
        yield held(case.left.bottom, case.right.bottom)


def smaller_bottom(case: Fractions) -> Iterator[Made]:
    """Take the fraction with the smaller bottom for the larger, whatever the tops."""
    if case.left.bottom != case.right.bottom:
        yield held(case.left.bottom, case.right.bottom, smaller=True)


def bigger_top(case: Fractions) -> Iterator[Made]:
    """Take the fraction with the bigger top for the larger, whatever the bottoms."""
    if case.left.top != case.right.top:
        yield held(case.left.top, case.right.top)


def gap_compare(case: Fractions) -> Iterator[Made]:
    """Compare how far each is from one by its top and bottom alone: 9/10 and 12/13 as equal."""
    gaps = case.left.bottom - case.left.top, case.right.bottom - case.right.top
    if min(gaps) >= 0:
        order = compared(gaps[1], gaps[0])
        steps = tuple(
            says(each.bottom, Sign.MINUS, each.top, each.bottom - each.top)
            for each in (case.left, case.right)
        )
        yield Made(Order.SAME if gaps[0] == gaps[1] else order, steps)
