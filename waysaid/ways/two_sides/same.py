"""What both sides have in common is left out, and the rest looked at: 3 + 4 + 5 and 3 + _."""

from collections import Counter
from collections.abc import Iterator

from waysaid.number import Blank, Exact, Expression, Operation, Sign, chain, signed_terms, value_of
from waysaid.ways.plan import Plan
from waysaid.ways.step import renamed
from waysaid.ways.two_sides.shape import Closed, Open

_Rest = Expression | None


def plans(problem: Closed) -> Iterator[Plan]:
    """Yield the rests of two sums, worked out, where they share a number."""
    left, right = _rests(problem.left, problem.right)
    if left is None or right is None:
        return
    steps = [renamed(side, value_of(side)) for side in (left, right) if isinstance(side, Operation)]
    if steps:
        yield "same-on-both-sides", tuple(steps)


def left_alone(problem: Open) -> Iterator[Plan]:
    """Yield the rest of the whole side, where the number beside the blank is in it."""
    if problem.sign is Sign.PLUS:
        rest, _ = _rests(problem.whole, problem.given)
        if isinstance(rest, Operation):
            yield "same-on-both-sides", (renamed(rest, value_of(rest)),)


def _rests(one: Expression, other: Expression) -> tuple[_Rest, _Rest]:
    """Return what is left of two sums without what they share; None where they share nothing."""
    lefts, rights = _terms(one), _terms(other)
    shared = Counter(lefts) & Counter(rights)
    if not shared:
        return None, None
    return _without(lefts, shared), _without(rights, shared)


def _terms(side: Expression) -> list[Exact]:
    terms = signed_terms(side) or ()
    plain = [term for sign, term in terms if sign is Sign.PLUS and not isinstance(term, Blank)]
    return plain if len(plain) == len(terms) else []


def _without(terms: list[Exact], shared: Counter[Exact]) -> _Rest:
    left = Counter(shared)
    kept: list[Exact] = []
    for term in terms:
        if left[term]:
            left[term] -= 1
        else:
            kept.append(term)
    return chain(kept[0], *((Sign.PLUS, term) for term in kept[1:])) if kept else None
