"""Adjust: all numbers are near one friendly number, so take that for each and put it right."""

from collections.abc import Iterator

from waysaid.number import Sign
from waysaid.ways.plan import Plan, hops, joined
from waysaid.ways.shape import Several
from waysaid.ways.step import Kind

FARTHEST = 4
"""How far from the friendly number each may be; our choice."""
MOST_TO_MEND = 6
"""How much there may be to put right in the end; our choice."""


def plans(problem: Several) -> Iterator[Plan]:
    """Yield so many times the friendly number, or it added so often, and one mend for all."""
    terms = problem.terms
    total, many = sum(terms), len(terms)
    for unit in (10, 25):
        friendly = (total + many * unit // 2) // (many * unit) * unit
        lot = many * friendly
        if friendly < 20 or any(abs(term - friendly) > FARTHEST for term in terms):
            continue
        if abs(total - lot) > MOST_TO_MEND:
            continue
        mend = hops(lot, total - lot, kind=Kind.MEND)
        yield f"times-{friendly}", ((Kind.RECALL, many, Sign.TIMES, friendly), *mend)
        yield f"each-as-{friendly}", (joined(Kind.JOIN, *([friendly] * many)), *mend)
