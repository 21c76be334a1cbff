"""Every kind of problem a class may be asked, and the answer it has."""

from dataclasses import dataclass
from enum import StrEnum
from fractions import Fraction

from waysaid.number.estimate import estimates
from waysaid.number.expression import (
    Arithmetic,
    Equation,
    Expression,
    NoValue,
    is_true,
    unknown,
    value_of,
)
from waysaid.number.image import Image
from waysaid.number.written import Exact


@dataclass(frozen=True, slots=True)
class Claim:
    """True or false: `29 + 14 = 30 + 13 ?`."""

    equation: Equation


@dataclass(frozen=True, slots=True)
class Compare:
    """Which is larger: `0.65 ? 0.7`."""

    left: Expression
    right: Expression


@dataclass(frozen=True, slots=True)
class About:
    """An estimate: `about 398 x 21`."""

    expression: Expression


Problem = Arithmetic | Claim | Compare | About | Image


class Verdict(StrEnum):
    """The answer to a claim."""

    TRUE = "true"
    FALSE = "false"


class Order(StrEnum):
    """The answer to a comparison: the sign between the two."""

    LESS = "<"
    SAME = "="
    MORE = ">"

    @property
    def turned(self) -> "Order":
        """The same comparison seen from the other side."""
        return {Order.LESS: Order.MORE, Order.MORE: Order.LESS}.get(self, self)


@dataclass(frozen=True, slots=True)
class Span:
    """The answer to an estimate: from the lowest to the highest that a class would settle for."""

    low: Exact
    high: Exact


Answer = Exact | Verdict | Order | Span


def arithmetic(problem: Problem) -> Arithmetic | None:
    """Return a problem that has one number for an answer as it is; None for any other."""
    return None if isinstance(problem, Claim | Compare | About | Image) else problem


def solve(problem: Problem) -> Exact:
    """Return the number that answers a problem. Raises `NoValue` where it has no such answer."""
    found = answer_of(problem)
    if isinstance(found, int | Fraction):
        return found
    raise NoValue("the answer is no number")


def answer_of(problem: Problem) -> Answer:
    """Return the answer. Raises `NoValue` where there is none, as in 7 / 0."""
    match problem:
        case Claim():
            holds = is_true(problem.equation)
            if holds is None:
                raise NoValue("a side of the claim has no value")
            return Verdict.TRUE if holds else Verdict.FALSE
        case Compare():
            return compared(value_of(problem.left), value_of(problem.right))
        case About():
            found = [value_of(each) for each in estimates(problem.expression)]
            return Span(min(found), max(found))
        case Image():
            return problem.count
        case _:
            return unknown(problem)


def compared(left: Exact, right: Exact) -> Order:
    """Return the sign between two numbers."""
    if left == right:
        return Order.SAME
    return Order.LESS if left < right else Order.MORE
