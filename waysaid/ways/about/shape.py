"""An estimate, and the easier problems it may go through."""

from dataclasses import dataclass

from waysaid.number import About, Expression, Problem, estimates


@dataclass(frozen=True, slots=True)
class Estimate:
    """The problem as it is asked, and the easier ones."""

    asked: Expression
    easier: tuple[Expression, ...]


def shapes_of(problem: Problem) -> tuple[Estimate, ...]:
    """Return the shape of `about 398 x 21`."""
    if not isinstance(problem, About):
        return ()
    return (Estimate(problem.expression, estimates(problem.expression)),)
