"""What a problem with fractions is about."""

from collections.abc import Iterator
from dataclasses import dataclass
from fractions import Fraction
from math import lcm

from waysaid.number import (
    BLANK,
    About,
    Blank,
    Claim,
    Compare,
    Equation,
    Exact,
    Expression,
    Image,
    Number,
    Operation,
    Problem,
    Sign,
    apply,
    exact,
    sides,
    written,
)
from waysaid.ways.fractions.amount import Amount, amount, is_fraction, one_go


@dataclass(frozen=True, slots=True)
class FractionSum:
    """Two numbers put together, both above 0."""

    left: Amount
    right: Amount

    @property
    def unit(self) -> int:
        """The smallest number of parts that a whole is cut into for both."""
        return lcm(self.left.bottom, self.right.bottom)

    @property
    def easy(self) -> bool:
        """Whether a child would put the parts of both together in one go."""
        return one_go(self.left.value, self.right.value)

    def starts(self) -> Iterator[tuple[Amount, Amount, str]]:
        """Yield (the number to start from, the other, its slug): both, or one if they are equal."""
        yield self.left, self.right, "first"
        if self.left != self.right:
            yield self.right, self.left, "second"


@dataclass(frozen=True, slots=True)
class FractionTake:
    """One number less another, both above 0, and something left over."""

    whole: Amount
    part: Amount

    @property
    def left(self) -> Amount:
        """The number taken from, as a sum's first number."""
        return self.whole

    @property
    def right(self) -> Amount:
        """The number taken, as a sum's second number."""
        return self.part

    @property
    def unit(self) -> int:
        """The smallest number of parts that a whole is cut into for both."""
        return lcm(self.whole.bottom, self.part.bottom)

    @property
    def easy(self) -> bool:
        """Whether a child would take the parts of one from the other in one go."""
        return one_go(self.whole.value, self.part.value)


@dataclass(frozen=True, slots=True)
class FractionPlain:
    """What needs no working, or goes below zero: 3/4 - 3/4, 3/4 x 1, 3/4 + 0, 1/4 - 3/4."""

    left: Number
    sign: Sign
    right: Number


@dataclass(frozen=True, slots=True)
class FractionTerms:
    """Three or more numbers above 0, each added or taken; the first is added."""

    terms: tuple[tuple[Sign, Amount], ...]


@dataclass(frozen=True, slots=True)
class FractionFacts:
    """Three or more numbers multiplied."""

    factors: tuple[Number, ...]


@dataclass(frozen=True, slots=True)
class FractionAsked:
    """Two numbers and their total, `left sign right = total`; a missing one is filled in."""

    left: Number
    sign: Sign
    right: Number
    total: Number


@dataclass(frozen=True, slots=True)
class PartOf:
    """A part of a whole number: 2/3 of 57, 57 x 2/3; `first` tells whether the part comes first."""

    part: Amount
    number: int
    sign: Sign
    first: bool

    @property
    def top(self) -> int:
        """How many parts are taken."""
        return self.part.tops

    @property
    def bottom(self) -> int:
        """How many parts there are."""
        return self.part.bottom

    @property
    def even(self) -> bool:
        """Whether one part is a whole number."""
        return self.number % self.bottom == 0

    def pair(self, part: Number, number: Number) -> tuple[Number, Number]:
        """Return a part and a number in the order of the problem."""
        return (part, number) if self.first else (number, part)


@dataclass(frozen=True, slots=True)
class PartTimes:
    """A fraction or mixed number times another."""

    left: Amount
    right: Amount
    sign: Sign


@dataclass(frozen=True, slots=True)
class PartOver:
    """A number divided by another, one of them with parts."""

    whole: Amount
    part: Amount


@dataclass(frozen=True, slots=True)
class WhatPart:
    """What part one whole number is of another: _ of 80 = 20."""

    part: int
    number: int


FractionShape = (
    FractionSum
    | FractionTake
    | FractionPlain
    | FractionTerms
    | FractionFacts
    | FractionAsked
    | PartOf
    | PartTimes
    | PartOver
    | WhatPart
)


def shapes_of(problem: Problem) -> tuple[FractionShape, ...]:
    """Return every shape the problem can be seen as; empty where no number is a fraction."""
    if isinstance(problem, Claim | Compare | About | Image):
        return ()
    if not _has_fraction(problem):
        return _what_part(problem)
    if isinstance(problem, Equation):
        return _asked(problem)
    if not isinstance(problem, Operation):
        return ()
    if isinstance(problem.left, Operation) or isinstance(problem.right, Operation):
        return _longer(problem)
    if isinstance(problem.left, Blank) or isinstance(problem.right, Blank):
        return ()
    return _pair(problem.left, problem.sign, problem.right)


def _what_part(problem: Expression | Equation) -> tuple[FractionShape, ...]:
    if not isinstance(problem, Equation):
        return ()
    side, total = problem.left, problem.right
    if not isinstance(side, Operation):
        side, total = total, side
    if not isinstance(side, Operation) or side.sign is not Sign.OF or side.left is not BLANK:
        return ()
    number = side.right
    if isinstance(number, int) and isinstance(total, int) and 0 < total < number:
        return (WhatPart(total, number),)
    return ()


def _has_fraction(problem: Expression | Equation) -> bool:
    """Tell whether some number is a fraction, and every other one is that or a whole number."""
    found = False
    for side in sides(problem):
        for leaf in written(side):
            if is_fraction(leaf):
                found = True
            elif type(leaf) is not int and leaf is not BLANK:
                return False
    return found


def _pair(left: Number, sign: Sign, right: Number) -> tuple[FractionShape, ...]:
    """Return the shapes of two numbers; none where one is below 0."""
    one, other = exact(left), exact(right)
    if one < 0 or other < 0 or (sign is Sign.OVER and not other):
        return ()
    if sign is Sign.PLUS and one and other:
        return (FractionSum(amount(left), amount(right)),)
    if sign is Sign.MINUS and one > other > 0:
        return (FractionTake(amount(left), amount(right)),)
    if sign in (Sign.PLUS, Sign.MINUS) or 0 in (one, other) or other == 1:
        return (FractionPlain(left, sign, right),)
    if sign is Sign.OVER:
        return (PartOver(amount(left), amount(right)),)
    return _product(left, sign, right)


def _product(left: Number, sign: Sign, right: Number) -> tuple[FractionShape, ...]:
    one, other = exact(left), exact(right)
    if one == 1 and not is_fraction(left):
        return (FractionPlain(left, sign, right),)
    if isinstance(other, int) and not isinstance(right, Fraction) and is_fraction(left):
        return (PartOf(amount(left), other, sign, True),)
    if isinstance(one, int) and is_fraction(right):
        return (PartOf(amount(right), one, sign, False),)
    return (PartTimes(amount(left), amount(right), sign),)


def _longer(problem: Operation) -> tuple[FractionShape, ...]:
    terms = _terms(problem)
    if terms is not None:
        if any(exact(number) <= 0 for _, number in terms):
            return ()
        return (FractionTerms(tuple([(sign, amount(number)) for sign, number in terms])),)
    factors = _factors(problem)
    if factors is None or min(exact(number) for number in factors) <= 0:
        return ()
    return (FractionFacts(factors),)


def _terms(side: Expression) -> tuple[tuple[Sign, Number], ...] | None:
    """Return the numbers added and taken, each with its sign; None where there is another sign."""
    if not isinstance(side, Operation):
        return None if isinstance(side, Blank) else ((Sign.PLUS, side),)
    if side.sign not in (Sign.PLUS, Sign.MINUS) or isinstance(side.right, Operation | Blank):
        return None
    before = _terms(side.left)
    return None if before is None else (*before, (side.sign, side.right))


def _factors(side: Expression) -> tuple[Number, ...] | None:
    if not isinstance(side, Operation):
        return None if isinstance(side, Blank) else (side,)
    if side.sign not in (Sign.TIMES, Sign.OF):
        return None
    left, right = _factors(side.left), _factors(side.right)
    return None if left is None or right is None else (*left, *right)


_UNDONE = {
    Sign.PLUS: (Sign.MINUS, Sign.MINUS),
    Sign.MINUS: (Sign.PLUS, Sign.MINUS),
    Sign.TIMES: (Sign.OVER, Sign.OVER),
    Sign.OF: (Sign.OVER, Sign.OVER),
    Sign.OVER: (Sign.TIMES, Sign.OVER),
}
"""What finds a missing first number, and a missing second one."""


def _asked(equation: Equation) -> tuple[FractionShape, ...]:
    """Return the problem that finds a blank, and the two numbers with it filled in."""
    open_side, shut_side = equation.left, equation.right
    if not isinstance(open_side, Operation):
        open_side, shut_side = shut_side, open_side
    if not isinstance(open_side, Operation) or isinstance(shut_side, Operation):
        return ()
    left, sign, right = open_side.left, open_side.sign, open_side.right
    if isinstance(left, Operation) or isinstance(right, Operation):
        return ()
    if isinstance(shut_side, Blank):
        both = isinstance(left, Blank) or isinstance(right, Blank)
        return (
            ()
            if isinstance(left, Blank) or isinstance(right, Blank) or both
            else _pair(left, sign, right)
        )
    if isinstance(left, Blank) and not isinstance(right, Blank):
        finds = (shut_side, _UNDONE[sign][0], right)
        return _with_blank(finds, sign, (None, right), shut_side)
    if isinstance(right, Blank) and not isinstance(left, Blank):
        swapped = sign in (Sign.MINUS, Sign.OVER)
        finds = (
            (left, _UNDONE[sign][1], shut_side) if swapped else (shut_side, _UNDONE[sign][1], left)
        )
        return _with_blank(finds, sign, (left, None), shut_side)
    return ()


def _with_blank(
    finds: tuple[Number, Sign, Number],
    sign: Sign,
    known: tuple[Number | None, Number | None],
    total: Number,
) -> tuple[FractionShape, ...]:
    shapes = _pair(*finds)
    if not shapes:
        return ()
    found: Exact = apply(finds[1], exact(finds[0]), exact(finds[2]))
    left, right = (found if one is None else one for one in known)
    return (FractionAsked(left, sign, right, total), *shapes)
