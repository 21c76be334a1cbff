"""What pictures need to know of a problem: its numbers, its whole and parts, and its answer."""

from dataclasses import dataclass

from waysaid.drawing.story import Hop, Mark, hops_of
from waysaid.drawing.telling import Telling
from waysaid.number import About, Blank, Equation, Exact, Sign, leaves, sides, signed_terms
from waysaid.ways import Kind

Terms = tuple[tuple[Sign, Exact | Blank], ...]


@dataclass(frozen=True, slots=True)
class Whole:
    """A whole and its parts; None stands for a number that nobody said."""

    whole: Exact | None
    parts: tuple[Exact | None, ...]


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
    problem (30 + 32 = 62 for 62 − 25), says no answer by itself; a fact with both numbers of the
    problem in it says the third (25 + 37 = 62).
    """
    if telling.answer is not None or not telling.steps:
        return telling.answer
    last = telling.steps[-1]
    hops = hops_of(last, telling.unsaid(len(telling.steps) - 1))
    if not hops or last.kind in (Kind.MOVE, Kind.SHIFT):
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


def whole_of(telling: Telling) -> Whole | None:
    """Return a problem of one sign as a whole and its parts, the answer in its place if told."""
    answer = answer_of(telling)
    if isinstance(telling.problem, Equation):
        return _missing(telling.problem, answer)
    terms = terms_of(telling)
    if terms is None:
        return None
    numbers = tuple(None if isinstance(leaf, Blank) else leaf for _, leaf in terms)
    signs = {sign for sign, _ in terms[1:]}
    if signs == {Sign.PLUS}:
        return Whole(answer, numbers)
    if signs == {Sign.MINUS}:
        return Whole(numbers[0], (*numbers[1:], answer))
    return None


def _missing(problem: Equation, answer: Exact | None) -> Whole | None:
    """Return `7 + _ = 12` as the whole 12 with the parts 7 and the answer."""
    terms = signed_terms(problem.left)
    if terms is None or len(terms) < 2 or len(tuple(leaves(problem.right))) > 1:
        return None
    result = next(leaves(problem.right))
    filled = [answer if isinstance(leaf, Blank) else leaf for _, leaf in terms]
    total = answer if isinstance(result, Blank) else result
    signs = {sign for sign, _ in terms[1:]}
    if signs == {Sign.PLUS}:
        return Whole(total, tuple(filled))
    return Whole(filled[0], (*filled[1:], total)) if signs == {Sign.MINUS} else None


def mark(value: Exact | None) -> Mark:
    """Return a number as a mark, an unsaid one for None."""
    return Mark(value if value is not None else 0, value is not None)
