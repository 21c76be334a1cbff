"""What pictures need to know of a problem: its numbers, its whole and parts, and its answer."""

from collections.abc import Iterator
from dataclasses import dataclass, replace

from waysaid.drawing.story import UNSAID, Hop, Mark, hops_of, in_groups, mark_of, renames, terms_in
from waysaid.drawing.telling import Telling
from waysaid.number import (
    About,
    Blank,
    Equation,
    Exact,
    Number,
    Operation,
    Problem,
    Sign,
    decimal,
    exact,
    has_point,
    leaves,
    sides,
    signed_terms,
    written,
)
from waysaid.ways import Kind, Step

Terms = tuple[tuple[Sign, Exact | Blank], ...]


@dataclass(frozen=True, slots=True)
class Whole:
    """A whole and its parts, true or not; `equal` tells that they are all the same.

    `over` are the parts of the other side of an equation that has a sum on both sides.
    """

    whole: Mark
    parts: tuple[Mark, ...]
    equal: bool = False
    over: tuple[Mark, ...] = ()


def terms_of(telling: Telling) -> Terms | None:
    """Return the signed numbers of a sum or difference; None for an equation or a product."""
    told = sides(telling.problem)
    if len(told) != 1 or isinstance(telling.problem, About):
        return None
    terms = signed_terms(told[0])
    return terms if terms is not None and len(terms) > 1 else None


def numbers_of(telling: Telling) -> tuple[Exact | Blank, ...]:
    """Return the numbers of the problem and its blank, from left to right."""
    return tuple(leaf for side in sides(telling.problem) for leaf in leaves(side))


def answer_of(telling: Telling) -> Exact | None:
    """Return the answer as told, else what the last step was said to make; None if neither.

    A last step that only opens a number, gives or shifts, or that ends at a number of the
    problem (30 + 32 = 62 for 62 − 25), says no answer by itself, and neither does one that says
    what is left over of groups; a fact with both numbers of the problem in it says the third
    (25 + 37 = 62).
    """
    if telling.answer is not None:
        return telling.answer
    count = len(telling.steps)
    while count > 1 and renames(telling.steps[count - 1]):
        count -= 1
    if not count:
        return None
    last = telling.steps[count - 1]
    hops = hops_of(last, telling.unsaid(count - 1))
    if not hops or last.kind in (Kind.MOVE, Kind.SHIFT):
        return None
    if last.kind is Kind.TAKE and in_groups(telling.problem):
        return None
    numbers, end = numbers_of(telling), hops[-1].end
    third = _third(hops, numbers)
    if third is not None:
        return third.value if third.said else None
    opens = last.kind is Kind.SPLIT and hops[0].start.value in numbers
    return None if opens or not end.said or end.value in numbers else end.value


def _third(hops: tuple[Hop, ...], numbers: tuple[Exact | Blank, ...]) -> Mark | None:
    """Return the third number of a fact with both numbers of the problem: 37 of 25 + 37 = 62."""
    known = [number for number in numbers if not isinstance(number, Blank)]
    rest = [hops[0].end, hops[0].amount, hops[0].start]
    if len(hops) > 1 or len(known) != 2:
        return None
    for number in known:
        found = next((mark for mark in reversed(rest) if mark.value == number), None)
        if found is None:
            return None
        rest.remove(found)
    return rest[0]


def answer_mark(telling: Telling) -> Mark:
    """Return the answer that was told, in the form it was told in; an unsaid mark if none was.

    A division told as groups and what is left over has no answer in one number: a fraction is one
    only where a step says it.
    """
    told = answer_of(telling)
    if told is None:
        return UNSAID
    said = [
        leaf
        for place, step in reversed(tuple(enumerate(telling.steps)))
        for leaf in _said(step, telling.unsaid(place))
        if not isinstance(leaf, Blank) and exact(leaf) == told
    ]
    if said:
        return mark_of(said[0], True)
    if isinstance(told, int):
        return Mark(told, True)
    if has_point(telling.problem):
        return mark_of(decimal(told), True)
    return UNSAID if _divides(telling.problem) else Mark(told, True)


def _said(step: Step, unsaid: frozenset[str]) -> Iterator[Number | Blank]:
    """Yield the numbers of a step that were said, the result first."""
    left = step.equation.left
    sides_said = [("result", step.equation.right)]
    if isinstance(left, Operation):
        sides_said += [("right", left.right), ("left", left.left)]
    for part, side in sides_said:
        if part not in unsaid:
            yield from written(side)


def _divides(problem: Problem) -> bool:
    return any(isinstance(one, Operation) and one.sign is Sign.OVER for one in sides(problem))


def whole_of(telling: Telling) -> Whole | None:
    """Return a problem of one sign as a whole and its parts, the answer in its place if told."""
    answer = answer_mark(telling)
    if isinstance(telling.problem, Equation):
        return _missing(telling.problem, answer)
    if terms_of(telling) is None:
        return None
    return _whole(terms_in(sides(telling.problem)[0]), answer, UNSAID)


def _missing(problem: Equation, answer: Mark) -> Whole | None:
    """Return `7 + _ = 12` as the whole 12 with the parts 7 and the answer; sums as two bars."""
    left, right = problem.left, problem.right
    if isinstance(left, Operation) and isinstance(right, Operation):
        one, other = (_whole(terms_in(side), UNSAID, answer) for side in (left, right))
        sums = left.sign is right.sign is Sign.PLUS
        return replace(other, over=one.parts) if sums and one and other else None
    if not isinstance(left, Operation):
        left, right = right, left
    terms = terms_in(left)
    if isinstance(right, Operation) or terms is None or len(terms) < 2:
        return None
    return _whole(terms, _or_blank(right, answer), answer)


def _whole(
    terms: tuple[tuple[Sign, Number | Blank], ...] | None, total: Mark, blank: Mark
) -> Whole | None:
    """Return a sum as its total over its terms, a difference as what was there over its parts."""
    if terms is None:
        return None
    filled = tuple(_or_blank(leaf, blank) for _, leaf in terms)
    signs = {sign for sign, _ in terms[1:]}
    if signs == {Sign.PLUS}:
        return Whole(total, filled)
    return Whole(filled[0], (*filled[1:], total)) if signs == {Sign.MINUS} else None


def _or_blank(leaf: Number | Blank, blank: Mark) -> Mark:
    return blank if isinstance(leaf, Blank) else mark_of(leaf, True)
