"""A division told as whole groups and what is left over, beside its exact value."""

from dataclasses import dataclass

from waysaid.number.expression import NoValue, Operation, Sign
from waysaid.number.problem import Problem


@dataclass(frozen=True, slots=True)
class Remainder:
    """How many whole groups there are, and how many are left over, fewer than a group."""

    groups: int
    left: int

    @property
    def text(self) -> str:
        """The remainder as text: `5 r 1`."""
        return f"{self.groups} r {self.left}"


def divided(whole: int, part: int) -> Remainder:
    """Return the groups and what is left of two numbers from 0 up. Raises `NoValue` for / 0."""
    if part == 0:
        raise NoValue("division by zero")
    return Remainder(*divmod(whole, part))


def remainder_of(problem: Problem) -> Remainder | None:
    """Return the remainder of `16 / 3`; None for what is no such division, or leaves nothing."""
    if not isinstance(problem, Operation) or problem.sign is not Sign.OVER:
        return None
    whole, part = problem.left, problem.right
    if not isinstance(whole, int) or not isinstance(part, int) or whole < part or part < 1:
        return None
    found = divided(whole, part)
    return found if found.left else None
