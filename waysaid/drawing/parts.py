"""Parts of a number beside what they make: 10% and 8 of 80, one third and 19 of 57.

A part follows from how the child came to it (80 / 10 = 8, half of that, both together) and never
from a result, so that right and wrong stand at the same place; it is written only if it was said.
"""

from dataclasses import dataclass
from fractions import Fraction

from waysaid.drawing.problem import answer_mark
from waysaid.drawing.story import UNSAID, Mark, mark_of, terms_in
from waysaid.drawing.telling import Telling
from waysaid.number import (
    Blank,
    Exact,
    Expression,
    Form,
    Number,
    Operation,
    Sign,
    Written,
    apply,
    exact,
    sides,
)
from waysaid.ways import Step

MOST_PARTS = 6
"""A whole that is cut into no more equal parts than this shows them all (our choice)."""
FARTHEST = 4
"""No part of more than this many wholes is marked (our choice)."""


@dataclass(frozen=True, slots=True)
class Pair:
    """One mark on both bars: where it stands among the others, and what is written there."""

    at: Exact
    upper: Mark
    lower: Mark


def parts_of(telling: Telling) -> tuple[Pair, ...]:
    """Return `15% of 80` or `2/3 of 57` as parts over a whole, with the parts of the steps."""
    told = sides(telling.problem)
    part, number = both_of(told[0]) if len(told) == 1 else (None, None)
    if part is None or number is None or not _is_part(part.form):
        return ()
    if not isinstance(told[0], Operation) or told[0].sign not in (Sign.OF, Sign.TIMES):
        return ()
    pairs = [Pair(part.value, part, answer_mark(telling)), Pair(1, UNSAID, number)]
    known: dict[Exact, Exact] = {number.value: 1}
    for place, step in enumerate(telling.steps):
        pair = _told(step, telling.unsaid(place), known)
        if pair is not None and 0 < pair.at <= FARTHEST:
            pairs.append(pair)
            known.setdefault(pair.lower.value, pair.at)
    return (*pairs, *_equal(part))


def both_of(whole: Expression) -> tuple[Mark | None, Mark | None]:
    """Return both numbers of an operation; none where either is not a number."""
    if not isinstance(whole, Operation):
        return None, None
    left, right = whole.left, whole.right
    if isinstance(left, Operation | Blank) or isinstance(right, Operation | Blank):
        return None, None
    return mark_of(left, True), mark_of(right, True)


def _is_part(number: Number | None) -> bool:
    """Tell whether a number is a part: a fraction, a per cent or a number with a point."""
    return number is not None and not isinstance(number, int) and 0 < exact(number) <= FARTHEST


def _equal(part: Mark) -> list[Pair]:
    """Return a mark for each of the equal parts that the bottom of a fraction names."""
    written = part.form
    in_parts = not isinstance(written, Written) or written.form is Form.PARTS
    bottom = part.value.denominator
    if not in_parts or not 1 < bottom <= MOST_PARTS:
        return []
    return [Pair(Fraction(at, bottom), UNSAID, UNSAID) for at in range(1, bottom)]


def _told(step: Step, unsaid: frozenset[str], known: dict[Exact, Exact]) -> Pair | None:
    """Return the pair of a step that goes on from parts that are known."""
    left, right = step.equation.left, step.equation.right
    if not isinstance(left, Operation) or isinstance(right, Operation | Blank):
        return None
    end = mark_of(right, "result" not in unsaid)
    one, other = both_of(left)
    if one is None or other is None or left.sign in (Sign.PLUS, Sign.MINUS):
        at = _together(left, known)
        return None if at is None else Pair(at, UNSAID, end)
    if left.sign is not Sign.OVER and known.get(other.value) == 1 and _is_part(one.form):
        return Pair(one.value, Mark(one.value, "left" not in unsaid, one.form), end)
    at = _times(left.sign, (one.value, other.value), known)
    return None if at is None else Pair(at, UNSAID, end)


def _times(sign: Sign, numbers: tuple[Exact, Exact], known: dict[Exact, Exact]) -> Exact | None:
    """Return the part that so many times, or one of so many shares of, a known one is."""
    one, other = numbers
    if sign is Sign.OVER:
        return apply(sign, known[one], other) if one in known and other else None
    if one in known:
        return apply(sign, known[one], other)
    return apply(sign, known[other], one) if other in known else None


def _together(side: Expression, known: dict[Exact, Exact]) -> Exact | None:
    """Return the part that known ones make together, one taken from another included."""
    total: Exact = 0
    for sign, leaf in terms_in(side) or ():
        if isinstance(leaf, Blank) or exact(leaf) not in known:
            return None
        total = apply(sign, total, known[exact(leaf)])
    return total or None
