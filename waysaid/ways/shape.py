"""What a problem is about, in the few shapes that ways are written for.

A problem can be seen as more than one shape: `7 + _ = 12` is a missing number, and also the
difference 12 - 7; `_ x 6 = 54` is also the quotient 54 / 6.
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
    Expression,
    Image,
    Operation,
    Problem,
    Sign,
    signed_terms,
)
from waysaid.ways.place import round_unit, up_to


@dataclass(frozen=True, slots=True)
class Sum:
    """Two whole numbers put together, neither of them 0."""

    left: int
    right: int

    def starts(self) -> Iterator[tuple[int, int, str]]:
        """Yield (the number to start from, the other, its slug): both, or one if they are equal."""
        yield self.left, self.right, "first"
        if self.left != self.right:
            yield self.right, self.left, "second"

    def fills(self) -> Iterator[tuple[int, int, str]]:
        """Yield the starts a child would fill up from, and break the other for.

        A single digit only when the other is below 20, and no friendly number is broken; our
        choice.
        """
        for start, other, tag in self.starts():
            if (start >= 10 or other < 20) and other % 10:
                yield start, other, tag

    def fills_hundreds(self) -> Iterator[tuple[int, int, str]]:
        """Yield the starts less than ten below a hundred: for these a friendly number is broken.

        998 + 350 is 1000 + 348. Our choice.
        """
        for start, other, tag in self.starts():
            if other % 10 == 0 and 0 < up_to(start, 100) < 10 <= start:
                yield start, other, tag

    def goes_on(self) -> Iterator[tuple[int, int, str]]:
        """Yield the starts a child would go on from: a single digit only where it comes first."""
        for start, other, tag in self.starts():
            if start >= 10 or tag == "first":
                yield start, other, tag


@dataclass(frozen=True, slots=True)
class Difference:
    """One whole number less another, neither of them 0, and something left over."""

    whole: int
    part: int

    @property
    def left_over(self) -> int:
        """Return the answer."""
        return self.whole - self.part


@dataclass(frozen=True, slots=True)
class Round:
    """A sum or difference of hundreds, thousands and so on, as one of so many of them."""

    whole: Sum | Difference
    unit: int


@dataclass(frozen=True, slots=True)
class Below:
    """A whole number less a larger one, neither of them 0: the answer is below zero."""

    whole: int
    part: int

    @property
    def short(self) -> int:
        """Return how far below zero the answer is."""
        return self.part - self.whole


@dataclass(frozen=True, slots=True)
class Product:
    """Two whole numbers multiplied, both of them from 2 up."""

    left: int
    right: int

    @property
    def product(self) -> int:
        """Return the answer."""
        return self.left * self.right

    def turns(self) -> Iterator["Turn"]:
        """Yield the factor a child would change, with the other: both, or one if equal."""
        yield Turn(self.left, self.right, True)
        if self.left != self.right:
            yield Turn(self.right, self.left, False)


@dataclass(frozen=True, slots=True)
class Turn:
    """One factor to change, the other to keep, and whether the first one is changed."""

    factor: int
    other: int
    first: bool

    @property
    def tag(self) -> str:
        """The slug of the factor that is changed."""
        return "first" if self.first else "second"

    def placed(self, factor: int) -> tuple[int, int]:
        """Return a new factor and the other one in the order of the problem."""
        return (factor, self.other) if self.first else (self.other, factor)


@dataclass(frozen=True, slots=True)
class Quotient:
    """A whole number divided by another without remainder; part and answer from 2 up."""

    whole: int
    part: int

    @property
    def groups(self) -> int:
        """Return the answer."""
        return self.whole // self.part


@dataclass(frozen=True, slots=True)
class Leftover:
    """A whole number divided by another, of which something is left over."""

    whole: int
    part: int

    @property
    def groups(self) -> int:
        """Return how many whole groups there are."""
        return self.whole // self.part

    @property
    def left(self) -> int:
        """Return what is left over."""
        return self.whole % self.part

    @property
    def nearest(self) -> int:
        """Return what the whole groups make: 15 of 16 in threes."""
        return self.groups * self.part


@dataclass(frozen=True, slots=True)
class UnderOne:
    """A whole number divided by a larger one, neither of them 0: less than one for each."""

    whole: int
    part: int


@dataclass(frozen=True, slots=True)
class Factors:
    """Three or more whole numbers multiplied."""

    factors: tuple[int, ...]


@dataclass(frozen=True, slots=True)
class Nothing:
    """A problem where nothing has to be worked: 7 + 0, 7 - 0, 7 - 7, 7 x 1, 7 x 0, 7 / 1, 7 / 7."""

    left: int
    sign: Sign
    right: int


@dataclass(frozen=True, slots=True)
class Several:
    """Three or more whole numbers added, or taken away where the number is negative.

    The first is added, and only the first may be 0. The total may be below zero.
    """

    terms: tuple[int, ...]


@dataclass(frozen=True, slots=True)
class Missing:
    """A problem of two numbers with one of them missing: `left sign right = total`.

    The number that was missing is filled in; `asked` is its place, 0 or 1.
    """

    left: int
    sign: Sign
    right: int
    asked: int


Shape = (
    Sum
    | Difference
    | Round
    | Below
    | Product
    | Quotient
    | Leftover
    | UnderOne
    | Factors
    | Nothing
    | Several
    | Missing
)


def to_do(problem: Problem) -> Operation | None:
    """Return what a problem asks to do, also where `_ =` or `= _` stands beside it; else None."""
    if isinstance(problem, Equation):
        alone = [side for side in (problem.left, problem.right) if side is not BLANK]
        return to_do(alone[0]) if len(alone) == 1 else None
    return problem if isinstance(problem, Operation) else None


def shapes(problem: Problem) -> tuple[Shape, ...]:
    """Return every shape the problem can be seen as; empty where no way is written for it."""
    if isinstance(problem, Equation):
        return _missing(problem)
    if isinstance(problem, Claim | Compare | About | Image):
        return ()
    return _known(problem)


def _known(expression: Expression) -> tuple[Shape, ...]:
    if isinstance(expression, Operation) and expression.sign in (Sign.TIMES, Sign.OVER):
        return _grouped(expression)
    terms = _whole_terms(expression)
    if terms is None or len(terms) < 2 or not isinstance(expression, Operation):
        return ()
    if len(terms) == 2:
        return _pair(terms[0], expression.sign, abs(terms[1]))
    terms = _worth_saying(terms)
    if len(terms) == 2:
        return _pair(terms[0], Sign.MINUS if terms[1] < 0 else Sign.PLUS, abs(terms[1]))
    return (Several(terms),)


def _worth_saying(terms: tuple[int, ...]) -> tuple[int, ...]:
    """Return the terms without those that are 0, but never fewer than two."""
    some = tuple([term for term in terms if term])
    if not some or some[0] < 0:
        some = (0, *some)
    return some if len(some) > 1 else (*some, 0)


def _whole_terms(expression: Expression) -> tuple[int, ...] | None:
    """Return the terms with their signs; None where they are not all whole numbers from 0 up."""
    terms: list[int] = []
    for sign, term in signed_terms(expression) or ():
        if not isinstance(term, int) or term < 0:
            return None
        terms.append(term if sign is Sign.PLUS else -term)
    return tuple(terms) or None


def _grouped(expression: Operation) -> tuple[Shape, ...]:
    """Return the shapes of a product or a quotient of whole numbers from 0 up."""
    left, right = expression.left, expression.right
    if isinstance(left, int) and isinstance(right, int):
        return _pair(left, expression.sign, right) if min(left, right) >= 0 else ()
    factors = _whole_factors(expression)
    return () if factors is None else (Factors(factors),)


def _whole_factors(expression: Expression) -> tuple[int, ...] | None:
    """Return the numbers of a longer product; None where they are not whole and from 0 up."""
    if isinstance(expression, int):
        return (expression,) if expression >= 0 else None
    if not isinstance(expression, Operation) or expression.sign is not Sign.TIMES:
        return None
    before, last = _whole_factors(expression.left), expression.right
    if before is None or not isinstance(last, int) or last < 0:
        return None
    return (*before, last)


def _pair(left: int, sign: Sign, right: int) -> tuple[Shape, ...]:
    """Return the shape of `left sign right`, which is not below 0."""
    if sign is Sign.TIMES:
        plain = min(left, right) < 2
        return (Nothing(left, sign, right) if plain else Product(left, right),)
    if sign is Sign.OVER:
        return _share(left, right)
    if not left or not right or (sign is Sign.MINUS and left == right):
        return (Nothing(left, sign, right),)
    if sign is Sign.MINUS and left < right:
        return (Below(left, right),)
    whole = Sum(left, right) if sign is Sign.PLUS else Difference(left, right)
    if left % 100 or right % 100:
        return (whole,)
    return whole, _round(left, sign, right)


def _round(left: int, sign: Sign, right: int) -> Round:
    """Return a sum or difference in the largest unit that both numbers are made of."""
    unit = min(round_unit(left), round_unit(right))
    left, right = left // unit, right // unit
    return Round(Sum(left, right) if sign is Sign.PLUS else Difference(left, right), unit)


def _share(whole: int, part: int) -> tuple[Shape, ...]:
    if not part:
        return ()
    if 0 < whole < part:
        return (UnderOne(whole, part),)
    if whole % part:
        return (Leftover(whole, part),)
    if part == 1 or whole in (0, part):
        return (Nothing(whole, Sign.OVER, part),)
    return (Quotient(whole, part),)


def _missing(equation: Equation) -> tuple[Shape, ...]:
    """Return the shapes of `7 + _ = 12`, either way round."""
    open_side, shut_side = equation.left, equation.right
    if isinstance(open_side, int):
        open_side, shut_side = shut_side, open_side
    if isinstance(open_side, Blank):
        return _known(shut_side)
    if isinstance(shut_side, Blank):
        return _known(open_side)
    if not isinstance(shut_side, int) or not isinstance(open_side, Operation):
        return ()
    if open_side.sign is Sign.OF:
        return ()
    left, sign, right = open_side.left, open_side.sign, open_side.right
    if sign in (Sign.TIMES, Sign.OVER):
        return _filled_groups(left, sign, right, shut_side)
    return _filled(left, sign, right, shut_side)


def _filled_groups(left: object, sign: Sign, right: object, total: int) -> tuple[Shape, ...]:
    """Fill the blank of a product or a quotient in, and add what finds it: 54 / 6 or 9 x 6."""
    if left is BLANK and isinstance(right, int):
        given, place = right, 0
    elif right is BLANK and isinstance(left, int):
        given, place = left, 1
    else:
        return ()
    if given < 1 or total < 0:
        return ()
    if sign is Sign.OVER and not place:
        return (Missing(total * given, sign, given, 0), *_pair(total, Sign.TIMES, given))
    whole, part = (total, given) if sign is Sign.TIMES else (given, total)
    if not part or whole % part:
        return ()
    found = whole // part
    both = (given, found) if place else (found, given)
    return (Missing(both[0], sign, both[1], place), *_pair(whole, Sign.OVER, part))


def _filled(left: object, sign: Sign, right: object, total: int) -> tuple[Shape, ...]:
    """Fill the blank in, and add the difference or sum that finds it.

    None where a number given is below zero: that is worked from what finds it.
    """
    if any(type(number) is int and number < 0 for number in (left, right, total)):
        return ()
    plus = sign is Sign.PLUS
    if left is BLANK and isinstance(right, int):
        found = total - right if plus else total + right
        missing = Missing(found, sign, right, 0)
        seen = (total, Sign.MINUS if plus else Sign.PLUS, right)
    elif right is BLANK and isinstance(left, int):
        found = total - left if plus else left - total
        missing = Missing(left, sign, found, 1)
        seen = (total, Sign.MINUS, left) if plus else (left, Sign.MINUS, total)
    else:
        return ()
    return _pair(*seen) if found < 0 else (missing, *_pair(*seen))
