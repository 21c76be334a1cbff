"""One step of a way: an equation, and the kind of move it is.

The kinds are few and closed: hearing, drawing and paper match on them, so that a new way touches
nothing else.
"""

from dataclasses import dataclass
from enum import StrEnum

from waysaid.number import (
    Equation,
    Exact,
    Expression,
    Form,
    Number,
    Operation,
    Sign,
    apply,
    decimal,
    exact,
    has_form,
    is_true,
)
from waysaid.number import text as number_print


class Kind(StrEnum):
    """The moves a child makes in the head with whole numbers."""

    COUNT = "count"
    """On or back by ones or by equal skips: 8 + 1 = 9."""
    RECALL = "recall"
    """A fact simply known: 6 + 6 = 12."""
    JUMP = "jump"
    """From a number kept whole, on or back: 37 + 20 = 57."""
    JOIN = "join"
    """Pieces put together: 30 + 20 = 50."""
    TAKE = "take"
    """A piece taken from a like piece: 60 - 40 = 20, 3 - 8 = -5."""
    SPLIT = "split"
    """One number opened into parts: 42 = 30 + 12, or 25 - 3 = 22 as what is left over."""
    MOVE = "move"
    """Some given from one number to the other: 37 + 3 = 40 and 25 - 3 = 22."""
    SHIFT = "shift"
    """Both numbers changed alike: 62 + 5 = 67 and 25 + 5 = 30."""
    MEND = "mend"
    """The difference put right after a friendly number: 67 - 5 = 62."""
    GATHER = "gather"
    """The hops, or the groups taken out, added up: 5 + 32 = 37."""
    GROUP = "group"
    """Some of the groups as a piece: 10 x 6 = 60, or a piece shared out: 60 / 6 = 10."""
    SCALE = "scale"
    """A number made so many times as large or small, or both: 506 x 2 = 1012, 16 x 5 = 8 x 10."""


@dataclass(frozen=True, slots=True)
class Step:
    """One equation of a way, as a child would say it."""

    kind: Kind
    equation: Equation

    @property
    def text(self) -> str:
        """The equation as plain text: `37 + 3 = 40`."""
        return number_print(self.equation)

    @property
    def true(self) -> bool | None:
        """Whether the equation holds; None where a part of it was not said."""
        return is_true(self.equation)


def step(kind: Kind, left: int, sign: Sign, right: int) -> Step:
    """Return the true step `left sign right = result`. Raises `NoValue` for a division by zero."""
    result: Exact
    if sign is Sign.PLUS:
        result = left + right
    elif sign is Sign.MINUS:
        result = left - right
    else:
        result = apply(sign, left, right)
    return Step(kind, Equation(Operation(sign, left, right), result))


def worked(kind: Kind, sign: Sign, left: Number, right: Number) -> Step:
    """Return the true step of numbers in any form; the result has a point where one of them has.

    Raises `NoValue` for a division by zero.
    """
    value = apply(sign, exact(left), exact(right))
    pointed = any(has_form(one, Form.DECIMAL) for one in (left, right))
    return Step(kind, Equation(Operation(sign, left, right), decimal(value) if pointed else value))


def renamed(left: Expression, right: Expression) -> Step:
    """Return the step that writes a number another way: 3/4 = 6/8."""
    return Step(Kind.SPLIT, Equation(left, right))


def opened(whole: int, *parts: int) -> Step:
    """Return the step that opens a whole into parts, as in 42 = 30 + 12."""
    joined: Expression = parts[0]
    for part in parts[1:]:
        joined = Operation(Sign.PLUS, joined, part)
    return Step(Kind.SPLIT, Equation(whole, joined))
