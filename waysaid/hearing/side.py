"""What a side of a clause comes to, and how it compares with a problem and its ways."""

from itertools import pairwise, takewhile

from waysaid.hearing.clause import Hop, Said, Side
from waysaid.hearing.turned import turned_side
from waysaid.hearing.worth import worth as value
from waysaid.number import (
    Compare,
    Exact,
    Expression,
    Operation,
    Order,
    Problem,
    Remainder,
    Sign,
    Verdict,
    apply,
    negative,
)
from waysaid.ways import Way


def even(values: list[Exact], skips: tuple[Exact, ...]) -> bool:
    """Tell whether the numbers go on or back by one of the skips."""
    gaps = {apply(Sign.MINUS, after, before) for before, after in pairwise(values)}
    return len(gaps) == 1 and not gaps.isdisjoint((*skips, *(-skip for skip in skips)))


def whole_of(problem: Problem) -> Expression | None:
    """Return what a part is to be taken of: the 80 of 15% of 80."""
    if isinstance(problem, Operation) and problem.sign is Sign.OF:
        return problem.right
    return None


def order(
    said: Remainder | Order | Verdict, of: tuple[Side, ...], problem: Problem
) -> Order | None:
    """Return the order said of the problem's two numbers, from the left one's side.

    None where other numbers were compared.
    """
    if not isinstance(problem, Compare) or not isinstance(said, Order):
        return None
    between = tuple(map(worth, of))
    asked = (value(problem.left), value(problem.right))
    if between == asked:
        return said
    return said.turned if between == asked[::-1] else None


def below_zero(whole: Operation, hops: list[Hop]) -> Said | None:
    """Return the result that looks like a hop: the -3 of `2-5 -3`."""
    number = Said(negative(hops[0].number.leaf), (hops[0].start, hops[0].number.span[1]))
    below = hops[0].sign is Sign.MINUS and number.value < 0 and not hops[0].tight
    return number if below and value(whole) == number.value else None


def alike(lefts: list[Expression], way: Way) -> int:
    """Count the first steps of a way that begin as the given ones do."""
    pairs = zip(lefts, way.steps, strict=False)
    same = takewhile(lambda pair: pair[0] == turned_side(pair[1].equation.left), pairs)
    return len(list(same))


def worth(side: Side) -> Exact | None:
    """Return what a side that says where it starts is worth; None where it has no value."""
    return value(side.whole(side.first.leaf)) if side.first else None


def worth_as_written(side: Side) -> Expression | None:
    """Return a side as an expression; None where it does not say where it starts."""
    return side.whole(side.first.leaf) if side.first else None


def end_of(side: Side) -> int:
    """Return the place behind the side's last hop."""
    return side.hops[-1].number.span[1]
