"""Rename: decimals as so many tenths, or hundredths, which are cents and centimetres.

0.65 + 0.7 is 65 + 70 cents; 3.45 + 2.80 is 5 whole ones and 125 cents (after design.md's "money
and metre readings"; the forms are ours).
"""

from collections.abc import Iterator
from fractions import Fraction

from waysaid.number import Equation, Number, Operation, decimal
from waysaid.ways.decimals.names import unit_name, worth
from waysaid.ways.decimals.shape import Pair
from waysaid.ways.decimals.unit import made, pointed
from waysaid.ways.plan import MINUS, PLUS, Plan
from waysaid.ways.step import Kind, Step


def plans(problem: Pair) -> Iterator[Plan]:
    """Yield the numbers as units, wholes and units apart, and written with as many places."""
    if not problem.places:
        return
    sign, kind = (MINUS, Kind.TAKE) if problem.taken else (PLUS, Kind.JOIN)
    in_units = (kind, problem.left, sign, problem.right)
    slug = f"as-{unit_name(problem.places)}"
    yield slug, (in_units, worth(problem.total, problem.places))
    if not problem.taken:
        yield from _apart(problem)
    yield from _same_places(problem, kind)


def _apart(problem: Pair) -> Iterator[Plan]:
    """Add the wholes and the units apart: 3.45 + 2.80 as 3 + 2, 45 + 80, 125 / 100, 5 + 1.25."""
    places = problem.places
    (whole, some), (others, more) = (divmod(one, 10**places) for one in problem.numbers)
    if whole and others and some and more:
        wholes, rest = (Kind.JOIN, whole, PLUS, others), (Kind.JOIN, some, PLUS, more)
        both = (whole + others, 0), (some + more, places)
        last = made(Kind.JOIN, both[0], PLUS, both[1], (problem.total, places))
        slug = f"wholes-then-{unit_name(places)}"
        yield slug, (wholes, rest, worth(some + more, places), last)


def _same_places(problem: Pair, kind: Kind) -> Iterator[Plan]:
    """Write zeros at the end of the shorter number: 0.7 = 0.70, then 0.65 + 0.70."""
    places = problem.places
    if problem.sizes[0] == problem.sizes[1]:
        return
    exact = [Fraction(one, 10**places) for one in problem.numbers]
    shorter = problem.sizes[1] < problem.sizes[0]
    before = decimal(exact[shorter], problem.sizes[shorter])
    even: list[Number] = [decimal(one, places) for one in exact]
    longer = Step(Kind.SPLIT, Equation(before, even[shorter]))
    whole = Operation(MINUS if problem.taken else PLUS, even[0], even[1])
    yield "same-places", (longer, Step(kind, Equation(whole, pointed(problem.total, places))))
