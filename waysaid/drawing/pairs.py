"""What stands beside what on two bars: groups and what they make, a per cent and its part.

A pair is told by one step (`10 x 6 = 60`, `90 / 6`, `10% of 80 = 8`) or by the problem. Pairs stand
in the order of their groups or parts, never of a result, so that right and wrong look alike.
"""

from collections.abc import Iterable
from dataclasses import replace
from fractions import Fraction

from waysaid.drawing.groups import Cut, Groups, Piece, Placed, groups_of, piece_of, placed
from waysaid.drawing.parts import Pair, both_of, parts_of
from waysaid.drawing.problem import answer_mark
from waysaid.drawing.story import UNSAID, mark_of
from waysaid.drawing.telling import Telling
from waysaid.number import Equation, Exact, Expression, Operation, Sign
from waysaid.ways import Kind

MOST_PAIRS = 7
"""No more pairs than can be read on one sheet (our choice)."""


def pairs_of(telling: Telling) -> tuple[Pair, ...] | None:
    """Return the pairs from the left; None where a telling tells fewer than two or too many."""
    told = parts_of(telling) or _groups(telling) or _scaled(telling)
    merged = _merged(told)
    return merged if 1 < len(merged) <= MOST_PAIRS else None


def _merged(pairs: Iterable[Pair]) -> tuple[Pair, ...]:
    """Return the pairs in order; those at one place are one, with what was said of either."""
    places: dict[Exact, Pair] = {}
    for pair in pairs:
        old = places.get(pair.at)
        if old is not None:
            upper = old.upper if old.upper.said else pair.upper
            lower = old.lower if old.lower.said else pair.lower
            places[pair.at] = Pair(pair.at, upper, lower)
        else:
            places[pair.at] = pair
    return tuple(places[at] for at in sorted(places))


def _groups(telling: Telling) -> tuple[Pair, ...]:
    """Return how many groups make how much: 10 and 60, 6 and 36, 16 and 96."""
    groups = groups_of(telling.problem)
    if groups is None:
        return ()
    found: list[Placed] = []
    for place, step in enumerate(telling.steps):
        piece = piece_of(step, telling.unsaid(place))
        at = None if piece is None else placed(piece, groups)
        if piece is not None and at is not None and not _is_whole(piece, groups):
            found.append(at)
    if not found or {one.cut for one in found} not in ({Cut.ONE}, {Cut.OTHER}):
        return ()
    pairs = [
        Pair(one.product.value if one.shared else one.part.value, one.part, one.product)
        for one in found
    ]
    if any(one.shared is not found[0].shared for one in found):
        return ()
    own = _own(telling, groups, found[0].cut)
    if groups.product is not None and not found[0].shared:
        farthest = max(pair.at for pair in pairs)
        own = replace(own, at=farthest + (Fraction(-1, 2) if _too_far(telling) else 1))
    return (*pairs, own)


def _too_far(telling: Telling) -> bool:
    """Tell whether the child went past the number and came back: 60 − 6 = 54."""
    return any(
        step.kind is Kind.MEND
        and isinstance(step.equation.left, Operation)
        and step.equation.left.sign is Sign.MINUS
        for step in telling.steps
    )


def _is_whole(piece: Piece, groups: Groups) -> bool:
    """Tell whether a quotient is the problem's own."""
    return piece.shared and piece.product.form == groups.product


def _own(telling: Telling, groups: Groups, cut: Cut) -> Pair:
    """Return the pair of the problem itself, the answer in its place if it was told."""
    answer = answer_mark(telling)
    if groups.product is not None:
        product = mark_of(groups.product, True)
        return Pair(product.value, answer, product)
    side = groups.one if cut is Cut.ONE else groups.other
    mark = UNSAID if side is None else mark_of(side, True)
    return Pair(mark.value, mark, answer)


def _scaled(telling: Telling) -> tuple[Pair, ...]:
    """Return 180 beside 12, 90 beside 6: a division scaled alike on both sides."""
    groups = groups_of(telling.problem)
    if groups is None or groups.product is None or groups.one is not None or not telling.steps:
        return ()
    if any(step.kind not in (Kind.SCALE, Kind.RECALL, Kind.GROUP) for step in telling.steps):
        return ()
    if isinstance(telling.problem, Equation) or groups.other is None:
        return ()
    first = mark_of(groups.product, True)
    pairs = [Pair(first.value, first, mark_of(groups.other, True))]
    last = len(telling.steps) - 1
    for place, step in enumerate(telling.steps):
        unsaid = telling.unsaid(place)
        pairs += _quotient(step.equation.right, ("result" not in unsaid,) * 2)
        if place == last and step.kind is not Kind.SCALE:
            said = ("left" not in unsaid, "right" not in unsaid)
            pairs += _quotient(step.equation.left, said)
    return tuple(pairs) if len(pairs) > 1 else ()


def _quotient(side: Expression, said: tuple[bool, bool]) -> list[Pair]:
    """Return the pair of a division that was said: 90 beside 6 of 90 / 6."""
    if not isinstance(side, Operation) or side.sign is not Sign.OVER:
        return []
    upper, lower = both_of(side)
    if upper is None or lower is None:
        return []
    return [Pair(upper.value, replace(upper, said=said[0]), replace(lower, said=said[1]))]
