"""Rename: a division is a fraction, with the wholes taken out: 30 / 7 is 30/7, and so 4 2/7."""

from collections.abc import Iterator

from waysaid.number import Equation, Operation, exact, mixed, parts
from waysaid.ways.factor import TABLES, can_do
from waysaid.ways.plan import OVER, Plan
from waysaid.ways.shape import Leftover
from waysaid.ways.step import Kind, Step, renamed


def plans(problem: Leftover) -> Iterator[Plan]:
    """Yield the fraction, its wholes and parts, and those in lowest terms where they are not."""
    whole, part = problem.whole, problem.part
    if part > TABLES or not can_do(part, problem.groups):
        return
    shared = parts(whole, part)
    told = mixed(problem.groups, problem.left, part)
    least = exact(told)
    said = Step(Kind.RECALL, Equation(Operation(OVER, whole, part), shared))
    lowest = () if told == least else (renamed(told, least),)
    yield "as-a-fraction", (said, renamed(shared, told), *lowest)
