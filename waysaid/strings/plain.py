"""A plain problem: one operation on two whole numbers. What composing chooses from."""

from typing import NamedTuple

from waysaid.number import Operation, Problem, Sign, apply


class Plain(NamedTuple):
    """One operation on two whole numbers: 37 + 25, 96 / 6."""

    left: int
    sign: Sign
    right: int

    @property
    def problem(self) -> Problem:
        """The problem as everything else here knows it."""
        return Operation(self.sign, self.left, self.right)

    @property
    def answer(self) -> int | None:
        """The answer; None where it is no whole number from 0 up."""
        if self.sign is Sign.OVER and self.right == 0:
            return None
        value = apply(self.sign, self.left, self.right)
        return value if isinstance(value, int) and value >= 0 else None


def plain_of(problem: Problem) -> Plain | None:
    """Return a problem as a plain one; None where it is of another kind."""
    if not isinstance(problem, Operation):
        return None
    left, right = problem.left, problem.right
    if type(left) is not int or type(right) is not int:
        return None
    return Plain(left, problem.sign, right)
