"""What stands beside what on two bars: groups and what they make, a per cent and its part.

A pair is told by one step (`10 x 6 = 60`, `90 / 6`, `10% of 80 = 8`) or by the problem. Pairs stand
in the order of their groups or parts, never of a result, so that right and wrong look alike.
"""

from collections.abc import Iterable
from dataclasses import dataclass, replace
from fractions import Fraction

from waysaid.drawing.groups import Cut, Groups, Piece, Placed, groups_of, piece_of, placed
from waysaid.drawing.problem import answer_mark
from waysaid.drawing.story import UNSAID, Mark, mark_of
from waysaid.drawing.telling import Telling
from waysaid.number import (
    Blank,
    Equation,
    Exact,
    Expression,
    Form,
    Number,
    Operation,
    Sign,
    Written,
    sides,
)
from waysaid.ways import Kind, Step

MOST_PAIRS = 7
"""No more pairs than can be read on one sheet (our choice)."""


@dataclass(frozen=True, slots=True)
class Pair:
    """One mark on both bars: where it stands among the others, and what is written there."""

    at: Exact
    upper: Mark
    lower: Mark


@dataclass(frozen=True, slots=True)
class Pairs:
    """The pairs from the left; `split` tells that the upper bar is cut into so many equal parts."""

    pairs: tuple[Pair, ...]
    split: int = 0


def pairs_of(telling: Telling) -> Pairs | None:
    """Return the pairs a telling tells; None where it tells none beside the problem's own."""
    told = _part_of(telling) or _groups(telling) or _scaled(telling)
    if told is None:
        return None
    merged = _merged(told.pairs)
    return Pairs(merged, told.split) if 1 < len(merged) <= MOST_PAIRS else None


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


def _part_of(telling: Telling) -> Pairs | None:
    """Return `15% of 80` or `2/3 of 57` as parts over a whole, with the parts of the steps."""
    told = sides(telling.problem)
    whole = told[0] if len(told) == 1 else None
    if not isinstance(whole, Operation) or whole.sign not in (Sign.OF, Sign.TIMES):
        return None
    part, number = _sides(whole)
    if part is None or number is None or not _is_part(part.form):
        return None
    pairs = [Pair(part.value, part, answer_mark(telling)), Pair(1, UNSAID, number)]
    for place, step in enumerate(telling.steps):
        pairs += _part_told(step, telling.unsaid(place), number)
    wide = part.value.denominator if _in_parts(part.form) else 0
    return Pairs(tuple(pairs), wide if 1 < wide <= 12 else 0)


def _sides(whole: Operation) -> tuple[Mark | None, Mark | None]:
    left, right = whole.left, whole.right
    if isinstance(left, Operation | Blank) or isinstance(right, Operation | Blank):
        return None, None
    return mark_of(left, True), mark_of(right, True)


def _is_part(number: Number | None) -> bool:
    """Tell whether a number is a part: a fraction, a per cent or a number with a point."""
    return not isinstance(number, int) and number is not None and _value(number) > 0


def _in_parts(number: Number | None) -> bool:
    return not isinstance(number, Written) or number.form is Form.PARTS


def _value(number: Number) -> Exact:
    return number.value if isinstance(number, Written) else number


def _part_told(step: Step, unsaid: frozenset[str], number: Mark) -> list[Pair]:
    """Return the pair of `10% of 80 = 8`, or of 57 / 3 = 19 as one of three parts."""
    left, right = step.equation.left, step.equation.right
    if not isinstance(left, Operation) or isinstance(right, Operation | Blank):
        return []
    one, other = _sides(left)
    if one is None or other is None:
        return []
    end = mark_of(right, "result" not in unsaid)
    if left.sign in (Sign.OF, Sign.TIMES) and other.value == number.value and _is_part(one.form):
        return [Pair(one.value, Mark(one.value, "left" not in unsaid, one.form), end)]
    if left.sign is Sign.OVER and one.value == number.value and other.value > 1:
        return [Pair(Fraction(1) / other.value, UNSAID, end)]
    return []


def _groups(telling: Telling) -> Pairs | None:
    """Return how many groups make how much: 10 and 60, 6 and 36, 16 and 96."""
    groups = groups_of(telling.problem)
    if groups is None:
        return None
    found: list[Placed] = []
    for place, step in enumerate(telling.steps):
        piece = piece_of(step, telling.unsaid(place))
        at = None if piece is None else placed(piece, groups)
        if piece is not None and at is not None and not _is_whole(piece, groups):
            found.append(at)
    if not found or {one.cut for one in found} not in ({Cut.ONE}, {Cut.OTHER}):
        return None
    divides = groups.product is not None
    pairs = [
        Pair(one.product.value if divides else one.part.value, one.part, one.product)
        for one in found
    ]
    return Pairs((*pairs, _own(telling, groups, found[0].cut)))


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


def _scaled(telling: Telling) -> Pairs | None:
    """Return 180 beside 12, 90 beside 6: a division scaled alike on both sides."""
    groups = groups_of(telling.problem)
    if groups is None or groups.product is None or groups.one is not None or not telling.steps:
        return None
    if any(step.kind not in (Kind.SCALE, Kind.RECALL, Kind.GROUP) for step in telling.steps):
        return None
    if isinstance(telling.problem, Equation) or groups.other is None:
        return None
    first = mark_of(groups.product, True)
    pairs = [Pair(first.value, first, mark_of(groups.other, True))]
    last = len(telling.steps) - 1
    for place, step in enumerate(telling.steps):
        unsaid = telling.unsaid(place)
        pairs += _quotient(step.equation.right, "result" not in unsaid)
        if place == last and step.kind is not Kind.SCALE:
            pairs += _quotient(step.equation.left, "left" not in unsaid)
    return Pairs(tuple(pairs)) if len(pairs) > 1 else None


def _quotient(side: Expression, said: bool) -> list[Pair]:
    """Return the pair of a division that was said: 90 beside 6 of 90 / 6."""
    if not isinstance(side, Operation) or side.sign is not Sign.OVER:
        return []
    upper, lower = _sides(side)
    if upper is None or lower is None:
        return []
    return [Pair(upper.value, replace(upper, said=said), replace(lower, said=said))]
