"""A problem as links see it: its form, its signed numbers, its answer and its whole fact."""

from collections.abc import Callable, Iterator, Mapping, Sequence
from dataclasses import dataclass
from enum import StrEnum

from waysaid.number import (
    BLANK,
    Blank,
    Equation,
    Exact,
    Expression,
    Image,
    ImageKind,
    NoValue,
    Number,
    Operation,
    Problem,
    Sign,
    answer_of,
    arithmetic,
    as_written_in,
    exact,
    text,
)
from waysaid.strings.filled import as_number, filled, groups_of
from waysaid.strings.leaf import leaves_of, with_leaves, written_of


@dataclass(frozen=True, slots=True)
class Term:
    """A number of a problem, its place, and the sign with which it counts in the answer."""

    sign: Sign
    size: Exact
    place: int
    shown: Number


class Joins(StrEnum):
    """What a fact does with its three numbers."""

    ADDS = "adds"
    TAKES = "takes"
    MULTIPLIES = "multiplies"
    DIVIDES = "divides"


@dataclass(frozen=True, slots=True)
class Fact:
    """Two parts and their whole, as in 7 + 5 = 12 or 12 - 7 = 5; two factors and their product."""

    parts: tuple[Exact, Exact]
    whole: Exact
    joins: Joins

    @property
    def sums(self) -> bool:
        """Whether the parts are added to make the whole, and not multiplied."""
        return self.joins in (Joins.ADDS, Joins.TAKES)


@dataclass(frozen=True, slots=True)
class Sight:
    """A problem at its place in the string.

    `form` is the problem with every number alike; `terms` are the given numbers whose signed sum
    is the answer (empty where there is more than + and −) and `factors` those whose product is
    (those of the sign `OVER` dividing; empty where there is more than x and /); those of a picture
    are its groups of dots, and the sides of its rows; `answer` is None
    where it is no number; `fact` the problem's one equation of three numbers, if it is one;
    `filled` that equation, or a true one that the problem is about, as text.
    """

    at: int
    problem: Problem
    form: str
    terms: tuple[Term, ...]
    factors: tuple[Term, ...]
    answer: Exact | None
    filled: str
    fact: Fact | None

    @property
    def total(self) -> Exact:
        """The answer. Raises `NoValue` where it is no number."""
        if self.answer is None:
            raise NoValue("the answer is no number")
        return self.answer

    @property
    def shown(self) -> Number:
        """The answer as the problem would have it: with a point where the problem has one."""
        return as_written_in(self.total, self.problem)


def sights(problems: Sequence[Problem]) -> tuple[Sight, ...]:
    """Look at every problem of the string. Raises `NoValue` where one has no answer."""
    return tuple(_sight(at, problem) for at, problem in enumerate(problems))


def _sight(at: int, problem: Problem) -> Sight:
    found = answer_of(problem)
    whole = filled(problem, found)
    return Sight(
        at,
        problem,
        _form(problem),
        _terms(problem, _added, Sign.PLUS, Sign.MINUS),
        _terms(problem, _multiplied, Sign.TIMES, Sign.OVER),
        as_number(found),
        text(whole),
        None if arithmetic(problem) is None else _fact(whole),
    )


_JOINS = {
    Sign.PLUS: Joins.ADDS,
    Sign.MINUS: Joins.TAKES,
    Sign.TIMES: Joins.MULTIPLIES,
    Sign.OVER: Joins.DIVIDES,
}


def _fact(whole: Equation) -> Fact | None:
    sum_, result = whole.left, whole.right
    if not isinstance(sum_, Operation) or isinstance(result, Operation | Blank):
        return None
    if isinstance(sum_.left, Operation | Blank) or isinstance(sum_.right, Operation | Blank):
        return None
    joins = _JOINS.get(sum_.sign)
    left, right, result = exact(sum_.left), exact(sum_.right), exact(result)
    match joins:
        case None:
            return None
        case Joins.ADDS | Joins.MULTIPLIES:
            return Fact((min(left, right), max(left, right)), result, joins)
        case Joins.TAKES | Joins.DIVIDES:
            return Fact((min(right, result), max(right, result)), left, joins)


_Turns = Callable[[Expression, int], Iterator[int]]
"""For each leaf: 1 where it counts as it is, -1 where it is turned, 0 where that cannot be told."""


def _terms(problem: Problem, turns: _Turns, plain: Sign, turned: Sign) -> tuple[Term, ...]:
    """Return the given numbers with the sign with which each counts in the answer.

    () for a problem that has no number for an answer, or has other signs in it.
    """
    if isinstance(problem, Image):
        return _dots(problem, plain)
    asked = arithmetic(problem)
    if asked is None:
        return ()
    if isinstance(asked, Equation):
        found = [*turns(asked.left, 1), *turns(asked.right, -1)]
    else:
        found = list(turns(asked, 1))
    given = written_of(problem)
    if 0 in found:
        return ()
    turn = -found[given.index(BLANK)] if BLANK in given else 1
    return tuple(
        Term(plain if one == turn else turned, exact(leaf), place, leaf)
        for place, (one, leaf) in enumerate(zip(found, given, strict=True))
        if not isinstance(leaf, Blank)
    )


def _dots(image: Image, plain: Sign) -> tuple[Term, ...]:
    """Return the groups of a picture, which are added, or the two sides of rows, multiplied."""
    joined = Sign.TIMES if image.kind is ImageKind.ARRAY else Sign.PLUS
    if joined is not plain:
        return ()
    return tuple(Term(plain, size, place, size) for place, size in enumerate(groups_of(image)))


def _form(problem: Problem) -> str:
    """Return the problem with every number alike; of a picture its kind and how many groups."""
    if isinstance(problem, Image):
        sizes = problem.numbers[:1] if problem.kind in (ImageKind.FRAME, ImageKind.PAIRS) else ()
        return f"image {problem.kind} {sizes} {len(problem.numbers)}"
    return text(with_leaves(problem, [leaf if leaf is BLANK else 1 for leaf in leaves_of(problem)]))


def _added(expression: Expression, turn: int) -> Iterator[int]:
    yield from _turned(expression, turn, {Sign.PLUS: 1, Sign.MINUS: -1})


def _multiplied(expression: Expression, turn: int) -> Iterator[int]:
    yield from _turned(expression, turn, {Sign.TIMES: 1, Sign.OF: 1, Sign.OVER: -1})


def _turned(expression: Expression, turn: int, signs: Mapping[Sign, int]) -> Iterator[int]:
    if not isinstance(expression, Operation):
        yield turn
        return
    of = signs.get(expression.sign, 0)
    yield from _turned(expression.left, turn if of else 0, signs)
    yield from _turned(expression.right, turn * of, signs)
