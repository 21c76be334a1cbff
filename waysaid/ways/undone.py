"""What finds a missing number: the problem worked backwards, as 10 / 4 for `_ x 4 = 10`."""

from collections.abc import Iterator

from waysaid.number import Blank, Equation, Expression, Operation, Problem, Sign, blanks, exact
from waysaid.ways.way import Way

_OPPOSITE = {
    Sign.PLUS: Sign.MINUS,
    Sign.MINUS: Sign.PLUS,
    Sign.TIMES: Sign.OVER,
    Sign.OVER: Sign.TIMES,
    Sign.OF: Sign.OVER,
}


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
    return None if isinstance(shut_side, Operation) else _undone(open_side, shut_side)


def _undone(side: Expression, total: Expression) -> Expression:
    """Return what the blank of a side is, given the total: for `_ x 3 + 4 = 19`, (19 - 4) / 3."""
    if not isinstance(side, Operation):
        return total
    if blanks(side.left):
        return _undone(side.left, Operation(_OPPOSITE[side.sign], total, side.right))
    if side.sign in (Sign.MINUS, Sign.OVER):
        return _undone(side.right, Operation(side.sign, side.left, total))
    return _undone(side.right, Operation(_OPPOSITE[side.sign], total, side.left))


def told_exactly(found: tuple[Way, ...]) -> Iterator[Way]:
    """Yield the ways that end with the exact value.

    A number asked for is no whole number of groups with something left over: in `7 x _ = 30` it
    is 4 2/7.
    """
    for way in found:
        last = way.steps[-1].equation.right
        if not isinstance(last, Operation | Blank) and exact(last) == way.answer:
            yield way
