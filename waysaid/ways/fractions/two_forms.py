"""Numbers in different forms, as 1/2 + 0.25: both written alike first."""

from collections.abc import Iterator
from dataclasses import dataclass
from fractions import Fraction
from math import lcm

from waysaid.number import (
    Blank,
    Exact,
    Form,
    Number,
    Operation,
    Problem,
    Sign,
    Written,
    decimal,
    exact,
    places_of,
)
from waysaid.ways.fractions.amount import amount, bottom_of, did, is_fraction, said_as
from waysaid.ways.fractions.units import Steps, together
from waysaid.ways.maker import AnyMaker, Maker
from waysaid.ways.plan import OVER, TIMES, Plan
from waysaid.ways.shape import to_do
from waysaid.ways.step import Kind, Step
from waysaid.ways.way import Family

LARGEST_BOTTOM = 100
MOST_PLACES = 3
"""The smallest parts, and the most places, that a number is written in to be like another; our
choice."""
_GROUPED = (Sign.TIMES, Sign.OF)


@dataclass(frozen=True, slots=True)
class TwoForms:
    """Two numbers above 0 that are not written alike; taking away leaves something."""

    left: Number
    sign: Sign
    right: Number

    @property
    def both(self) -> tuple[Number, Number]:
        """The two numbers."""
        return self.left, self.right


def two_forms(problem: Problem) -> tuple[TwoForms, ...]:
    """Return the shape of 1/2 + 0.25, 25% + 1/4, 80 - 25%; none where both are written alike."""
    asked = to_do(problem)
    if asked is None:
        return ()
    left, sign, right = asked.left, asked.sign, asked.right
    if isinstance(left, Operation | Blank) or isinstance(right, Operation | Blank):
        return ()
    one, other = exact(left), exact(right)
    if one <= 0 or other <= 0 or (sign is Sign.MINUS and one <= other):
        return ()
    return (TwoForms(left, sign, right),) if _unlike(_form(left), sign, _form(right)) else ()


def _form(number: Number) -> str:
    if is_fraction(number):
        return "fraction"
    return number.form.value if isinstance(number, Written) else "whole"


def _unlike(one: str, sign: Sign, other: str) -> bool:
    percent = Form.PERCENT.value
    forms = {one, other}
    if forms == {percent}:
        return sign not in (Sign.PLUS, Sign.MINUS)
    if forms in ({percent, "whole"}, {percent, Form.DECIMAL.value}):
        return sign not in _GROUPED
    return "whole" not in forms and len(forms) > 1


def plans(problem: TwoForms) -> Iterator[Plan]:
    """Yield both as fractions, both with a point, and a part of a decimal as a division."""
    values = [exact(one) for one in problem.both]
    if all(bottom_of(value) <= LARGEST_BOTTOM for value in values):
        yield "as-fractions", (*_renamed(problem, values), *_worked(problem, values))
    if all(_short(value) for value in values):
        new = [decimal(value) for value in values]
        result = _result(problem)
        last = did(Kind.JOIN, new[0], _sign(problem), new[1], decimal(result))
        yield "with-a-point", (*_renamed(problem, new), last)


def shared_plans(problem: TwoForms) -> Iterator[Plan]:
    """Yield a part of a decimal as a division, then so many: 1/2 of 3.5 as 3.5 / 2."""
    pairs = ((problem.left, problem.right), (problem.right, problem.left))
    for part, other in pairs:
        value = exact(other)
        if problem.sign not in _GROUPED or not is_fraction(part) or not isinstance(other, Written):
            continue
        tops, bottom = amount(part).tops, amount(part).bottom
        share = exact(Fraction(value) / bottom)
        if other.form is not Form.DECIMAL or not _short(share):
            continue
        first = did(Kind.SCALE, other, OVER, bottom, decimal(share))
        total = decimal(_result(problem))
        last = () if tops == 1 else (did(Kind.SCALE, decimal(share), TIMES, tops, total),)
        yield "share-first", (first, *last)


def _short(value: Exact) -> bool:
    places = places_of(value)
    return places is not None and places <= MOST_PLACES


def _result(problem: TwoForms) -> Exact:
    step = did(Kind.JOIN, exact(problem.left), problem.sign, exact(problem.right))
    result = step.equation.right
    return exact(result) if not isinstance(result, Operation | Blank) else 0


def _sign(problem: TwoForms) -> Sign:
    return Sign.TIMES if problem.sign is Sign.OF else problem.sign


def _renamed(problem: TwoForms, new: list[Exact] | list[Number]) -> tuple[Step, ...]:
    pairs = zip(problem.both, new, strict=True)
    return tuple(said_as(old, other) for old, other in pairs if old != other)


def _worked(problem: TwoForms, values: list[Exact]) -> Steps:
    one, other = values
    if problem.sign in (Sign.PLUS, Sign.MINUS):
        unit = lcm(bottom_of(one), bottom_of(other))
        kind = Kind.JOIN if problem.sign is Sign.PLUS else Kind.TAKE
        return together(kind, one, problem.sign, other, unit)
    return (did(Kind.SCALE, one, _sign(problem), other),)


MAKERS: tuple[AnyMaker, ...] = (
    Maker(Family.RENAME, TwoForms, plans),
    Maker(Family.FACTOR_STEPS, TwoForms, shared_plans),
)
