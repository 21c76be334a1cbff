"""What finds a missing number: the problem worked backwards, as 10 / 4 for `_ x 4 = 10`."""

from collections.abc import Iterator

from waysaid.number import Blank, Equation, Expression, Operation, Problem, blanks, exact, undone
from waysaid.ways.way import Way


def to_work_out(problem: Problem) -> Expression | None:
    """Return what is to be worked out: the problem, or what finds its one blank; else None."""
    if isinstance(problem, Operation):
        return problem if not blanks(problem) else None
    if not isinstance(problem, Equation) or blanks(problem) != 1:
        return None
    open_side, shut_side = problem.left, problem.right
    if blanks(shut_side):
        open_side, shut_side = shut_side, open_side
    if isinstance(open_side, Blank):
        return shut_side
    return None if isinstance(shut_side, Operation) else undone(open_side, shut_side)


def told_exactly(found: tuple[Way, ...]) -> Iterator[Way]:
    """Yield the ways that end with the exact value.

    A number asked for is no whole number of groups with something left over: in `7 x _ = 30` it
    is 4 2/7.
    """
    for way in found:
        last = way.steps[-1].equation.right
        if not isinstance(last, Operation | Blank) and exact(last) == way.answer:
            yield way
