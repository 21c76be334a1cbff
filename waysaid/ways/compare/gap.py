"""How much more one is than the other: 3/8 and 2/8 more is 5/8, 0.65 and 0.05 more is 0.7."""

from collections.abc import Iterator
from fractions import Fraction

from waysaid.number import Equation, Form, Number, Operation, Sign, decimal, exact, has_form, parts
from waysaid.ways.compare.shape import Two, is_fraction, top_and_bottom
from waysaid.ways.plan import Plan
from waysaid.ways.step import Kind, Step, worked


def plans(two: Two) -> Iterator[Plan]:
    """Yield the hop from the smaller to the larger, where they have the same unit already."""
    low, high = sorted(two.both, key=exact)
    gap = Fraction(exact(high)) - Fraction(exact(low))
    if not gap:
        return
    if all(isinstance(one, int) for one in two.both):
        yield "up-to-it", (worked(Kind.JUMP, Sign.PLUS, low, exact(gap)),)
    elif all(has_form(one, Form.DECIMAL) or isinstance(one, int) for one in two.both):
        yield "up-to-it", (_hop(low, decimal(gap), high),)
    elif all(is_fraction(one) for one in two.both):
        bottoms = {top_and_bottom(one)[1] for one in two.both}
        if len(bottoms) == 1:
            bottom = bottoms.pop()
            yield "up-to-it", (_hop(low, parts(int(gap * bottom), bottom), high),)


def _hop(low: Number, gap: Number, high: Number) -> Step:
    return Step(Kind.JUMP, Equation(Operation(Sign.PLUS, low, gap), high))
