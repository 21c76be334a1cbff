"""The blank of one side found from what the other side comes to: 8 + 4 = 12, then 12 - 5 = 7."""

from collections.abc import Iterator

from waysaid.number import Number, Sign, as_written_in, decimal, exact, has_point, value_of
from waysaid.ways.plan import Plan
from waysaid.ways.step import Kind, Step, worked
from waysaid.ways.two_sides.each_side import made
from waysaid.ways.two_sides.shape import Open

_UNDONE = {
    (Sign.PLUS, True): (Sign.MINUS, False),
    (Sign.PLUS, False): (Sign.MINUS, False),
    (Sign.MINUS, True): (Sign.PLUS, False),
    (Sign.MINUS, False): (Sign.MINUS, True),
    (Sign.TIMES, True): (Sign.OVER, False),
    (Sign.TIMES, False): (Sign.OVER, False),
    (Sign.OVER, True): (Sign.TIMES, False),
    (Sign.OVER, False): (Sign.OVER, True),
}
"""By the sign and whether the blank comes first: what finds it, and whether the given is first."""


def undone(problem: Open) -> Iterator[Plan]:
    """Yield the other side worked out, and the blank by the opposite operation."""
    how = _UNDONE.get((problem.sign, problem.first))
    if how is None:
        return
    total = _total(problem)
    sign, turned = how
    left, right = (problem.given, total) if turned else (total, problem.given)
    if sign is not Sign.OVER or exact(right):
        yield "undone", (made(problem.whole), worked(Kind.TAKE, sign, left, right))


def added_on(problem: Open) -> Iterator[Plan]:
    """Yield the other side worked out, and what must be added on to come to it."""
    if problem.sign is Sign.PLUS and exact(problem.given):
        yield "added-on", (made(problem.whole), _fact(Sign.PLUS, problem.given, problem))
    elif problem.sign is Sign.MINUS and not problem.first:
        yield "added-on", (made(problem.whole), _fact(Sign.PLUS, _total(problem), problem))


def multiplied(problem: Open) -> Iterator[Plan]:
    """Yield the other side worked out, and the factor that comes to it."""
    if problem.sign is Sign.TIMES and exact(problem.given):
        yield "multiplied", (made(problem.whole), _fact(Sign.TIMES, problem.given, problem))


def _total(problem: Open) -> Number:
    value = value_of(problem.whole)
    return as_written_in(value, problem.whole)


def _fact(sign: Sign, known: Number, problem: Open) -> Step:
    pointed = has_point(problem.whole) or has_point(problem.given)
    found = decimal(problem.found) if pointed else problem.found
    return worked(Kind.RECALL, sign, known, found)
