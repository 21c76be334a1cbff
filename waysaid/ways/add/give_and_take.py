"""Give and take: some moves from one number to the other; the total stays."""

from collections.abc import Iterator

from waysaid.ways.place import is_friendly, round_unit, up_to
from waysaid.ways.plan import MINUS, PLUS, Move, Plan
from waysaid.ways.shape import Sum
from waysaid.ways.step import Kind

MOST_TO_TEN = 5
MOST_TO_HUNDRED = 25
MOST_DOWN = 3
"""How much a child would move up to a ten, up to a hundred, and down to a ten; our choice."""


def plans(problem: Sum) -> Iterator[Plan]:
    """Yield the ways to make either number friendly, or both equal."""
    left, right = problem.left, problem.right
    if is_friendly(left) and is_friendly(right):
        return
    for target, giver, tag in problem.fills():
        for amount, slug in _amounts(target, giver):
            if 0 < abs(amount) < (giver if amount > 0 else target):
                yield from _both_orders(problem, amount, tag, slug)
    for target, giver, tag in problem.fills_hundreds():
        if up_to(target, 10) < giver:
            yield from _both_orders(problem, up_to(target, 10), tag, "up-to-ten")
    yield from _to_double(problem)


def _both_orders(problem: Sum, amount: int, tag: str, slug: str) -> Iterator[Plan]:
    """End in the order of the problem, and with the number made friendly said first."""
    moves = _moved(problem, amount, tag == "first")
    yield f"{tag}-{slug}", moves
    if tag == "second":
        *before, (kind, left, sign, right) = moves
        yield f"{tag}-{slug}-said-first", (*before, (kind, right, sign, left))


def _amounts(target: int, giver: int) -> Iterator[tuple[int, str]]:
    """Yield what makes the target friendly, and a slug: up to a ten or hundred, down to a ten."""
    up, more = up_to(target, 10), up_to(target, 100)
    if up <= MOST_TO_TEN:
        yield up, "up-to-ten"
    if more <= MOST_TO_HUNDRED and more != up:
        yield more, "up-to-hundred"
    if target % 10 <= MOST_DOWN and target > 10 and (target + giver) % 10:
        yield -(target % 10), "down-to-ten"


def _to_double(problem: Sum) -> Iterator[Plan]:
    """Make both equal: 6 + 8 as 7 + 7, 24 + 26 as 25 + 25."""
    gap = problem.right - problem.left
    unit = min(round_unit(problem.left), round_unit(problem.right))
    if abs(gap) == 2 * unit or (abs(gap) == 4 and (problem.left + gap // 2) % 5 == 0):
        yield "to-double", _moved(problem, gap // 2, True)


def _moved(problem: Sum, amount: int, first: bool) -> tuple[Move, ...]:
    """Return the moves that give `amount` to one number and take it from the other.

    The number made friendly is changed first; the last step keeps the order of the problem.
    """
    change = amount if first else -amount
    left, right = problem.left, problem.right
    both = _changed(left, change), _changed(right, -change)
    last = (Kind.JOIN, left + change, PLUS, right - change)
    return (*(both if first else reversed(both)), last)


def _changed(number: int, change: int) -> Move:
    return (Kind.MOVE, number, PLUS if change > 0 else MINUS, abs(change))
