"""What a problem is about, in the few shapes that ways are written for.

A problem can be seen as more than one shape: `7 + _ = 12` is a missing number, and also the
difference 12 - 7.
"""

from collections.abc import Iterator
from dataclasses import dataclass

from waysaid.number import BLANK, Blank, Equation, Expression, Problem, Sign, signed_terms


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
class Nothing:
    """A sum or difference where nothing has to be worked: 7 + 0, 7 - 0, 7 - 7."""

    left: int
    sign: Sign
    right: int


@dataclass(frozen=True, slots=True)
class Several:
    """Three or more whole numbers added, or taken away where the number is negative."""

    terms: tuple[int, ...]


@dataclass(frozen=True, slots=True)
class Missing:
    """A sum or difference with one of its two numbers missing: `left sign right = total`.

    The number that was missing is filled in; `asked` is its place, 0 or 1.
    """

    left: int
    sign: Sign
    right: int
    asked: int


Shape = Sum | Difference | Nothing | Several | Missing


def shapes(problem: Problem) -> tuple[Shape, ...]:
    """Return every shape the problem can be seen as; empty where no way is written for it."""
    if isinstance(problem, Equation):
        return _missing(problem)
    return _known(problem)


def _known(expression: Expression) -> tuple[Shape, ...]:
    terms = _whole_terms(expression)
    if terms is None or sum(terms) < 0:
        return ()
    if len(terms) == 2:
        return _pair(terms[0], Sign.MINUS if terms[1] < 0 else Sign.PLUS, abs(terms[1]))
    return (Several(terms),) if len(terms) > 2 and all(terms) else ()


def _whole_terms(expression: Expression) -> tuple[int, ...] | None:
    """Return the terms with their signs; None where they are not all whole numbers from 0 up."""
    terms: list[int] = []
    for sign, term in signed_terms(expression) or ():
        if not isinstance(term, int) or term < 0:
            return None
        terms.append(term if sign is Sign.PLUS else -term)
    return tuple(terms) or None


def _pair(left: int, sign: Sign, right: int) -> tuple[Shape, ...]:
    """Return the shape of `left sign right`, which is not below 0."""
    if not left or not right or (sign is Sign.MINUS and left == right):
        return (Nothing(left, sign, right),)
    return (Sum(left, right),) if sign is Sign.PLUS else (Difference(left, right),)


def _missing(equation: Equation) -> tuple[Shape, ...]:
    """Return the shapes of `7 + _ = 12`, either way round."""
    open_side, shut_side = equation.left, equation.right
    if isinstance(open_side, int):
        open_side, shut_side = shut_side, open_side
    if isinstance(open_side, Blank):
        return _known(shut_side)
    if isinstance(shut_side, Blank):
        return _known(open_side)
    parts = signed_terms(open_side)
    if not isinstance(shut_side, int) or parts is None or len(parts) != 2:
        return ()
    (_, left), (sign, right) = parts
    return _filled(left, sign, right, shut_side)


def _filled(left: object, sign: Sign, right: object, total: int) -> tuple[Shape, ...]:
    """Fill the blank in, and add the difference or sum that finds it."""
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
    return () if found < 0 else (missing, *_pair(*seen))
