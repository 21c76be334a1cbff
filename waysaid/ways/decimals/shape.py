"""What a problem with decimals is about.

A sum or difference is one of whole numbers in units of its smallest place, so that everything known
of whole numbers is known of it: 3.8 + 2.6 is 38 + 26 tenths. A product or quotient has its numbers
each in a unit of its own: 1.4 x 0.6 is 14 tenths times 6 tenths.
"""

from collections.abc import Iterator
from dataclasses import dataclass

from waysaid.number import (
    BLANK,
    About,
    Blank,
    Claim,
    Compare,
    Equation,
    Exact,
    Expression,
    Form,
    Image,
    Operation,
    Problem,
    Sign,
    Written,
    apply,
    exact,
    has_form,
    leaves,
    places_of,
    written,
)
from waysaid.ways.decimals.unit import made
from waysaid.ways.shape import Difference, Shape, Sum, shapes
from waysaid.ways.step import Kind, Step

MOST_MORE = 3
"""How many places further than its numbers a quotient may go: 1 / 8 is 0.125; our choice."""
GROUPED = (Sign.TIMES, Sign.OVER)


@dataclass(frozen=True, slots=True)
class InUnits:
    """A sum, a difference or the like in whole units of so many places after the point."""

    whole: Shape
    places: int


@dataclass(frozen=True, slots=True)
class Pair:
    """Two numbers added or taken, in units of `places`; `sizes` are the places each is written in.

    `taken` tells whether the second is taken from the first.
    """

    left: int
    right: int
    taken: bool
    places: int
    sizes: tuple[int, int]

    @property
    def numbers(self) -> tuple[int, int]:
        """Both numbers."""
        return self.left, self.right

    @property
    def total(self) -> int:
        """The answer, in units."""
        return self.left - self.right if self.taken else self.left + self.right


@dataclass(frozen=True, slots=True)
class Scaled:
    """A number as so many units of so many places: 1.4 is 14 of one place, 0.05 is 5 of two."""

    units: int
    places: int

    @property
    def value(self) -> Exact:
        """The number itself."""
        return apply(Sign.OVER, self.units, 10**self.places)


@dataclass(frozen=True, slots=True)
class Times:
    """A product with a decimal in it; neither number is 0 or 1."""

    left: Scaled
    right: Scaled

    @property
    def places(self) -> int:
        """The places of the product of the units."""
        return self.left.places + self.right.places

    def turns(self) -> Iterator["Turned"]:
        """Yield the number a child would change, with the other: both, or one if equal."""
        yield Turned(self.left, self.right, True)
        if self.left != self.right:
            yield Turned(self.right, self.left, False)


@dataclass(frozen=True, slots=True)
class Turned:
    """One number of a product to change, the other to keep; whether the first one is changed."""

    factor: Scaled
    other: Scaled
    first: bool

    @property
    def tag(self) -> str:
        """The slug of the number that is changed."""
        return "first" if self.first else "second"

    def times(self, kind: Kind, units: int, places: int) -> Step:
        """Return the step with so many units instead of the number: 0.1 x 6 for 4.9 x 6."""
        other, result = self.other, (units * self.other.units, places + self.other.places)
        pair = (units, places), (other.units, other.places)
        left, right = pair if self.first else pair[::-1]
        return made(kind, left, Sign.TIMES, right, result)


@dataclass(frozen=True, slots=True)
class Over:
    """A quotient with a decimal in it, of numbers above 0; the second is not 1."""

    whole: Scaled
    part: Scaled


@dataclass(frozen=True, slots=True)
class Plain:
    """A product or quotient that is known at once: 0.7 x 1, 0 x 0.7, 0.7 / 0.7."""

    left: Exact
    sign: Sign
    right: Exact


@dataclass(frozen=True, slots=True)
class Chain:
    """Three or more numbers multiplied, a decimal among them, none of them 0."""

    factors: tuple[Exact, ...]


DecimalShape = InUnits | Pair | Times | Over | Plain | Chain


def shapes_of(problem: Problem) -> tuple[DecimalShape, ...]:
    """Return every shape of a problem with decimals; empty for any other."""
    if isinstance(problem, Claim | Compare | About | Image):
        return ()
    sides = (problem.left, problem.right) if isinstance(problem, Equation) else (problem,)
    places = _places(sides)
    if places is None:
        return ()
    if isinstance(problem, Equation):
        asked = _asked(problem)
        return () if asked is None else _grouped(*asked) if asked else _added(problem, places)
    if isinstance(problem, Operation) and problem.sign in GROUPED:
        return _product_or_quotient(problem)
    return _added(problem, places)


def _places(sides: tuple[Expression, ...]) -> int | None:
    """Return the most places after a point; None where no number has a point, or one is a part."""
    most, pointed = 0, False
    for side in sides:
        for leaf in written(side):
            if has_form(leaf, Form.DECIMAL):
                most, pointed = max(most, leaf.size), True
            elif leaf is not BLANK and type(leaf) is not int:
                return None
    return most if pointed else None


def _added(problem: Expression | Equation, places: int) -> tuple[DecimalShape, ...]:
    """Return a sum, a difference or either with a number missing, in units of the smallest place.

    Empty where it is none of them.
    """
    if isinstance(problem, Equation):
        sides = [_in_units(side, 10**places) for side in (problem.left, problem.right)]
        if sides[0] is None or sides[1] is None:
            return ()
        if (
            BLANK in (problem.left, problem.right)
            and _whole(problem.left)
            and _whole(problem.right)
        ):
            return ()
        return tuple([InUnits(shape, places) for shape in shapes(Equation(sides[0], sides[1]))])
    units = _in_units(problem, 10**places)
    if units is None or _whole(problem):
        return ()
    found: list[DecimalShape] = []
    for shape in shapes(units):
        found.append(InUnits(shape, places))
        if isinstance(shape, Sum | Difference) and isinstance(problem, Operation):
            sizes = (_size(problem.left), _size(problem.right))
            if isinstance(shape, Difference):
                found.append(Pair(shape.whole, shape.part, True, places, sizes))
            else:
                found.append(Pair(shape.left, shape.right, False, places, sizes))
    return tuple(found)


def _whole(side: Expression) -> bool:
    """Tell whether every number is a whole one, as in 17.0 - 15: it is worked as such."""
    return all(isinstance(leaf, int | Blank) for leaf in leaves(side))


def _size(leaf: Expression) -> int:
    return leaf.size if isinstance(leaf, Written) else 0


def _in_units(expression: Expression, unit: int) -> Expression | None:
    """Return the expression with every number in units; None where it multiplies or divides."""
    if isinstance(expression, Operation):
        left, right = _in_units(expression.left, unit), _in_units(expression.right, unit)
        if expression.sign in GROUPED or left is None or right is None:
            return None
        return Operation(expression.sign, left, right)
    return expression if isinstance(expression, Blank) else int(exact(expression) * unit)


def _asked(equation: Equation) -> tuple[Exact, Sign, Exact] | tuple[()] | None:
    """Return the product or quotient that finds a blank; () for a sum; None for any other."""
    open_side, shut_side = equation.left, equation.right
    if not isinstance(open_side, Operation):
        open_side, shut_side = shut_side, open_side
    if not isinstance(open_side, Operation) or open_side.sign not in GROUPED:
        return ()
    sign, times = open_side.sign, open_side.sign is Sign.TIMES
    left, right, total = _number(open_side.left), _number(open_side.right), _number(shut_side)
    blank = [side is BLANK for side in (open_side.left, open_side.right, shut_side)]
    if blank == [False, False, True] and left is not None and right is not None:
        return (left, sign, right)
    if blank == [True, False, False] and right is not None and total is not None:
        return (total, Sign.OVER if times else Sign.TIMES, right)
    if blank == [False, True, False] and left is not None and total is not None:
        return (total, Sign.OVER, left) if times else (left, Sign.OVER, total)
    return None


def _number(side: Expression) -> Exact | None:
    """Return the value of a number; None for a blank or an operation."""
    return None if isinstance(side, Operation | Blank) else exact(side)


def _product_or_quotient(problem: Operation) -> tuple[DecimalShape, ...]:
    left, right = _number(problem.left), _number(problem.right)
    if left is not None and right is not None:
        return _grouped(left, problem.sign, right)
    factors = _factors(problem)
    return () if factors is None or min(factors) <= 0 else (Chain(factors),)


def _factors(expression: Expression) -> tuple[Exact, ...] | None:
    """Return the numbers of a longer product; None for anything else."""
    if not isinstance(expression, Operation):
        last = _number(expression)
        return None if last is None else (last,)
    if expression.sign is not Sign.TIMES:
        return None
    before, last = _factors(expression.left), _number(expression.right)
    return None if before is None or last is None else (*before, last)


def _grouped(left: Exact, sign: Sign, right: Exact) -> tuple[DecimalShape, ...]:
    """Return the shape of a product or quotient of numbers from 0 up."""
    if min(left, right) < 0 or (sign is Sign.OVER and not right):
        return ()
    plain = right == 1 or not left or (left == right and sign is Sign.OVER)
    if plain or (sign is Sign.TIMES and (left == 1 or not right)):
        return (Plain(left, sign, right),)
    one, other = scaled(left), scaled(right)
    return (Times(one, other) if sign is Sign.TIMES else Over(one, other),)


def scaled(value: Exact) -> Scaled:
    """Return a number that a point writes exactly in units of its own smallest place."""
    places = places_of(value) or 0
    return Scaled(int(value * 10**places), places)
