"""Two numbers to compare, each in the form it is written in."""

from dataclasses import dataclass
from fractions import Fraction

from waysaid.number import Blank, Compare, Exact, Form, Number, Operation, Problem, Written, exact


@dataclass(frozen=True, slots=True)
class Two:
    """Two numbers, neither below 0."""

    left: Number
    right: Number

    @property
    def both(self) -> tuple[Number, Number]:
        """Return the two."""
        return self.left, self.right

    @property
    def values(self) -> tuple[Exact, Exact]:
        """Return what they are worth."""
        return exact(self.left), exact(self.right)


def shapes_of(problem: Problem) -> tuple[Two, ...]:
    """Return the shape of `0.65 ? 0.7`; none where a side is work to do."""
    if not isinstance(problem, Compare):
        return ()
    left, right = problem.left, problem.right
    if isinstance(left, Operation | Blank) or isinstance(right, Operation | Blank):
        return ()
    if exact(left) < 0 or exact(right) < 0:
        return ()
    return (Two(left, right),)


def is_fraction(number: Number) -> bool:
    """Tell whether a number is written as a fraction or a mixed number."""
    if isinstance(number, Written):
        return number.form is Form.PARTS
    return isinstance(number, Fraction)


def top_and_bottom(number: Number) -> tuple[int, int]:
    """Return the top and bottom of a number as written, its wholes in parts: 5 and 4 of 1 1/4."""
    bottom = number.size if isinstance(number, Written) and is_fraction(number) else 0
    value = Fraction(exact(number))
    bottom = bottom or value.denominator
    return int(value * bottom), bottom
