"""A problem as links see it: its form, its signed numbers, its answer and its whole fact."""

from collections.abc import Iterator, Sequence
from dataclasses import dataclass

from waysaid.number import (
    BLANK,
    Blank,
    Equation,
    Exact,
    Expression,
    Operation,
    Problem,
    Sign,
    arithmetic,
    exact,
    sides,
    solve,
    text,
)
from waysaid.strings.leaf import leaves_of, with_leaves


@dataclass(frozen=True, slots=True)
class Term:
    """A number of a problem, its place, and the sign with which it counts in the answer."""

    sign: Sign
    size: Exact
    place: int


@dataclass(frozen=True, slots=True)
class Fact:
    """Two parts and their whole, as in 7 + 5 = 12 or 12 - 7 = 5."""

    parts: tuple[Exact, Exact]
    whole: Exact
    adds: bool


@dataclass(frozen=True, slots=True)
class Sight:
    """A problem at its place in the string.

    `form` is the problem with every number alike; `terms` are the given numbers whose signed sum
    is the answer (empty where there is more than + and −); `fact` its one equation of three
    numbers, if it is one; `filled` that equation, or the problem with its answer, as text.
    """

    at: int
    problem: Problem
    form: str
    terms: tuple[Term, ...]
    answer: Exact
    filled: str
    fact: Fact | None


def sights(problems: Sequence[Problem]) -> tuple[Sight, ...]:
    """Look at every problem of the string. Raises `NoValue` where one has no answer."""
    return tuple(_sight(at, problem) for at, problem in enumerate(problems))


def _sight(at: int, problem: Problem) -> Sight:
    answer = solve(problem)
    given = leaves_of(problem)
    form = text(with_leaves(problem, [leaf if leaf is BLANK else 1 for leaf in given]))
    whole = _filled(problem, answer)
    return Sight(at, problem, form, _terms(problem), answer, text(whole), _fact(whole))


def _filled(problem: Problem, answer: Exact) -> Equation:
    asked = arithmetic(problem)
    if asked is not None and not isinstance(asked, Equation):
        return Equation(asked, answer)
    given = leaves_of(problem)
    full = with_leaves(problem, [answer if leaf is BLANK else leaf for leaf in given])
    if not isinstance(full, Equation):
        raise TypeError("an equation stays one when it is filled")
    turned = isinstance(full.right, Operation) and not isinstance(full.left, Operation)
    return Equation(full.right, full.left) if turned else full


def _fact(whole: Equation) -> Fact | None:
    sum_, result = whole.left, whole.right
    if not isinstance(sum_, Operation) or isinstance(result, Operation | Blank):
        return None
    if isinstance(sum_.left, Operation | Blank) or isinstance(sum_.right, Operation | Blank):
        return None
    left, right, result = exact(sum_.left), exact(sum_.right), exact(result)
    match sum_.sign:
        case Sign.PLUS:
            return Fact((min(left, right), max(left, right)), result, adds=True)
        case Sign.MINUS:
            return Fact((min(right, result), max(right, result)), left, adds=False)
        case _:
            return None


def _terms(problem: Problem) -> tuple[Term, ...]:
    """Return the given numbers, signed so that their sum is the answer; () beyond + and −."""
    if isinstance(problem, Equation):
        signs = [*_signs(problem.left, 1), *_signs(problem.right, -1)]
    else:
        signs = [sign for side in sides(problem) for sign in _signs(side, 1)]
    given = leaves_of(problem)
    if 0 in signs:
        return ()
    turn = -signs[given.index(BLANK)] if BLANK in given else 1
    return tuple(
        Term(Sign.PLUS if sign == turn else Sign.MINUS, leaf, place)
        for place, (sign, leaf) in enumerate(zip(signs, given, strict=True))
        if not isinstance(leaf, Blank)
    )


def _signs(expression: Expression, sign: int) -> Iterator[int]:
    """Yield 1 or -1 for each leaf of a sum or difference, 0 for any other."""
    if not isinstance(expression, Operation):
        yield sign
        return
    of = {Sign.PLUS: 1, Sign.MINUS: -1}.get(expression.sign, 0)
    yield from _signs(expression.left, sign if of else 0)
    yield from _signs(expression.right, sign * of)
