"""Shift both: change both alike so that a whole is taken, or taken from; the difference stays."""

from collections.abc import Iterator
from fractions import Fraction

from waysaid.number import Exact, Operation, exact
from waysaid.ways.fractions.amount import Amount, did, one_go, said_as
from waysaid.ways.fractions.shape import FractionTake
from waysaid.ways.plan import MINUS, PLUS, Plan
from waysaid.ways.step import Kind, Step

FARTHEST = Fraction(1, 2)
"""How far both go to make one of them whole; our choice."""


def take_plans(problem: FractionTake) -> Iterator[Plan]:
    """Yield both up or down to make the second whole, in steps or said as one."""
    whole, part = problem.whole, problem.part
    if whole.value < 1 or not part.top:
        return
    if part.gap <= FARTHEST and one_go(whole.value, part.gap):
        yield from _shifted(whole, part, part.gap)
    if part.over <= FARTHEST and part.value > 1 and one_go(whole.value, part.over):
        yield from _shifted(whole, part, -part.over)
    if 0 < whole.gap <= FARTHEST and whole.gap != part.gap and one_go(part.value, whole.gap):
        yield from _shifted(whole, part, whole.gap)


def _shifted(whole: Amount, part: Amount, change: Exact) -> Iterator[Plan]:
    new = (exact(whole.value + change), exact(part.value + change))
    sign, size = (PLUS, change) if change > 0 else (MINUS, -change)
    slug = f"{'up' if change > 0 else 'down'}-by-{size}"
    last = did(Kind.TAKE, new[0], MINUS, new[1])
    both = (
        did(Kind.SHIFT, whole.number, sign, size),
        did(Kind.SHIFT, part.number, sign, size),
    )
    yield slug, (*both, last)
    old = Operation(MINUS, whole.number, part.number)
    told = Step(Kind.SHIFT, said_as(old, Operation(MINUS, *new)).equation)
    yield f"{slug}-said-as-one", (told, last)
