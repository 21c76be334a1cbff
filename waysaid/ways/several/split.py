"""Split: every number split by place, all like pieces put together, then the results."""

from collections.abc import Iterator

from waysaid.ways.place import columns, places
from waysaid.ways.plan import Moves, Plan, hops, joined
from waysaid.ways.shape import Several
from waysaid.ways.step import Kind


def plans(problem: Several) -> Iterator[Plan]:
    """Yield tens first and ones first: 14 + 23 + 16 as 10 + 20 + 10, 4 + 3 + 6, 40 + 13."""
    terms = problem.terms
    if sum(terms) < 0:
        return
    width = columns(*map(abs, terms))
    like = [
        [piece if term > 0 else -piece for term, piece in zip(terms, row, strict=True) if piece]
        for row in zip(*(places(abs(term), width) for term in terms), strict=True)
    ]
    like = [pieces for pieces in like if pieces]
    if len(like) < 2 or sum(len(pieces) > 1 for pieces in like) < 1:
        return
    sums = [sum(pieces) for pieces in reversed(like) if sum(pieces)]
    if len(sums) < len(like) or sums[0] < 0 or any(max(pieces) < 0 for pieces in like):
        return
    gather = hops(sums[0], *sums[1:], kind=Kind.JOIN)
    yield "tens-first", (*_joins(like[::-1]), *gather)
    yield "ones-first", (*_joins(like), *gather)


def _joins(like: list[list[int]]) -> Moves:
    """Return a step for each place with more than one piece, what is taken last."""
    return tuple(
        joined(Kind.JOIN, *sorted(pieces, key=lambda piece: piece < 0))
        for pieces in like
        if len(pieces) > 1
    )
