"""Easier forms of a problem of several operations, each with the family of its thought."""

from collections.abc import Iterator

from waysaid.number import Expression, Number, Operation, Sign, chain, exact
from waysaid.ways.factor import FEW
from waysaid.ways.way import Family

PLUS, MINUS, TIMES, OVER = Sign.PLUS, Sign.MINUS, Sign.TIMES, Sign.OVER

Form = tuple[Family, str, Expression]
_Term = tuple[Sign, Expression]


def rewrites(whole: Expression) -> Iterator[Form]:
    """Yield other forms of the same value; each is worked from the inside out."""
    if isinstance(whole, Operation):
        yield from _common_factor(whole)
        yield from _multiplied_out(whole)
        yield from _divided(whole)
        yield from _group_by_group(whole)


def opened_sum(whole: Expression) -> Expression | None:
    """Return a sum with its brackets opened: 20 - (3 + 5) as 20 - 3 - 5.

    None where there is no bracket to open, or anything is multiplied or divided.
    """
    terms = _terms(whole, PLUS)
    if terms is None or not _has_bracket(whole):
        return None
    (_, first), *rest = terms
    return chain(first, *rest)


def _has_bracket(whole: Expression) -> bool:
    if not isinstance(whole, Operation):
        return False
    return isinstance(whole.right, Operation) or _has_bracket(whole.left)


def _terms(side: Expression, sign: Sign) -> list[_Term] | None:
    """Return the numbers of a sum, each with its sign; None where it is no sum."""
    if not isinstance(side, Operation):
        return [(sign, side)]
    if side.sign not in (PLUS, MINUS):
        return None
    turned = MINUS if sign is PLUS else PLUS
    left = _terms(side.left, sign)
    right = _terms(side.right, sign if side.sign is PLUS else turned)
    return None if left is None or right is None else [*left, *right]


def _common_factor(whole: Operation) -> Iterator[Form]:
    """Put the same number of groups together: 2 x 15 + 2 x 5 as 2 x 20."""
    left, right = whole.left, whole.right
    if whole.sign not in (PLUS, MINUS) or not _product(left) or not _product(right):
        return
    for same, one in _sides(left):
        for other, two in _sides(right):
            if exact(same) == exact(other):
                slug = "common-factor"
                yield Family.PARTNERS, slug, Operation(TIMES, same, Operation(whole.sign, one, two))
                return


def _group_by_group(whole: Operation) -> Iterator[Form]:
    """Add or take a few groups one after another: 20 - 2 x 6 as 20 - 6 - 6."""
    left, right = whole.left, whole.right
    if whole.sign not in (PLUS, MINUS) or isinstance(left, Operation):
        return
    if not isinstance(right, Operation) or right.sign is not TIMES:
        return
    for groups, size in _sides(right):
        if isinstance(groups, int) and 1 < groups <= FEW:
            told = chain(left, *([(whole.sign, size)] * groups))
            yield Family.JUMP, f"{groups}-groups-in-turn", told


def _product(side: Expression) -> bool:
    return isinstance(side, Operation) and side.sign is TIMES and len([*_sides(side)]) == 2


def _sides(side: Expression) -> Iterator[tuple[Number, Number]]:
    """Yield both numbers of a pair, either first; none where a side is more than a number."""
    if isinstance(side, Operation):
        left, right = side.left, side.right
        if isinstance(left, Number) and isinstance(right, Number):
            yield left, right
            yield right, left


def _multiplied_out(whole: Operation) -> Iterator[Form]:
    """Multiply a bracket part by part: (30 + 4) x 5 as 30 x 5 and 4 x 5."""
    for bracket, by, first in ((whole.left, whole.right, True), (whole.right, whole.left, False)):
        if not isinstance(bracket, Operation) or bracket.sign not in (PLUS, MINUS):
            continue
        if whole.sign not in (TIMES, OVER) or (whole.sign is OVER and not first):
            continue
        if isinstance(by, Number) and len([*_sides(bracket)]) == 2:
            pairs = [(part, by) if first else (by, part) for part in (bracket.left, bracket.right)]
            one, other = (Operation(whole.sign, *pair) for pair in pairs)
            yield Family.BREAK_UP, "multiplied-out", Operation(bracket.sign, one, other)


def _divided(whole: Operation) -> Iterator[Form]:
    """Divide in an easier order: 12 x 10 / 4 as 12 / 4 x 10, 48 / 4 / 2 as 48 / 8."""
    left, right = whole.left, whole.right
    if whole.sign is OVER and isinstance(left, Operation) and isinstance(right, Number):
        if left.sign is OVER:
            divisor = Operation(TIMES, left.right, right)
            yield Family.PARTNERS, "one-divisor", Operation(OVER, left.left, divisor)
        for one, other in _sides(left) if left.sign is TIMES else ():
            if exact(right) and exact(one) % exact(right) == 0:
                shared = Operation(OVER, one, right)
                yield Family.PARTNERS, "divided-first", Operation(TIMES, shared, other)
    if whole.sign is OVER and isinstance(right, Operation) and right.sign is TIMES:
        first = Operation(OVER, left, right.left)
        yield Family.FACTOR_STEPS, "one-by-one", Operation(OVER, first, right.right)
