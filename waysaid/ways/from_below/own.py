"""The ways past zero that only a start below zero has: through zero, counted, jumped, known."""

from collections.abc import Iterator

from waysaid.ways.below.counting import SIZES
from waysaid.ways.below.known_fact import WITHIN
from waysaid.ways.from_below.shape import ByBelow, FromBelow, StaysBelow
from waysaid.ways.place import MOST_COUNTS, pieces, round_unit, up_to
from waysaid.ways.plan import MINUS, PLUS, Plan, counts, gathered, hops
from waysaid.ways.step import Kind, opened


def known_plans(problem: FromBelow) -> Iterator[Plan]:
    """Yield the fact where all of it is small, and a number and its opposite: -7 + 7 = 0."""
    start, change = problem.start, problem.change
    unit = min(round_unit(start), round_unit(change))
    farthest = start + change if problem.sign is MINUS else max(start, change)
    opposite = problem.sign is PLUS and start == change
    if farthest // unit <= WITHIN or opposite:
        yield "known", ((Kind.RECALL, -start, problem.sign, change),)


def stays_plans(problem: StaysBelow) -> Iterator[Plan]:
    """Yield what is known at once: -3 + 0 = -3, -3 x 1 = -3."""
    yield "known", ((Kind.RECALL, problem.left, problem.sign, problem.right),)


def counting_plans(problem: FromBelow) -> Iterator[Plan]:
    """Yield the counts on or back, by ones for a few, by tens and hundreds through their like."""
    for size, slug in SIZES:
        times, over = divmod(problem.change, size)
        like = size == 1 or problem.start % size == 0
        if not over and like and 1 < times <= MOST_COUNTS:
            way = "on" if problem.sign is PLUS else "back"
            yield f"{way}-by-{slug}", counts(-problem.start, problem.sign, size, times)


def jump_plans(problem: FromBelow) -> Iterator[Plan]:
    """Yield the jump in place-value pieces, largest first and smallest first."""
    change = 1 if problem.sign is PLUS else -1
    parts = tuple(change * piece for piece in pieces(problem.change))
    if len(parts) > 1:
        yield "tens-first", hops(-problem.start, *parts)
        yield "ones-first", hops(-problem.start, *reversed(parts))


def bridge_plans(problem: FromBelow) -> Iterator[Plan]:
    """Yield the way through zero, or through a ten below zero: -8 - 5 through -10."""
    start, change = problem.start, problem.change
    if problem.sign is PLUS and change > start:
        yield from _through(-start, start, change - start, "zero")
    else:
        gap = up_to(start, 10) if problem.sign is MINUS else start % 10
        if 0 < gap < change and (start > 10 or problem.sign is MINUS):
            turn = 1 if problem.sign is PLUS else -1
            yield from _through(-start, turn * gap, turn * (change - gap), "ten")


def _through(start: int, first: int, rest: int, where: str) -> Iterator[Plan]:
    told = hops(start, first, rest)
    yield f"through-{where}", told
    yield f"opened-to-{where}", (opened(abs(first + rest), abs(first), abs(rest)), *told)


def add_up_plans(problem: ByBelow) -> Iterator[Plan]:
    """Yield how far apart the numbers are: from -3 up to 0, then to 5; from -5 up to -3."""
    left, right = problem.left, problem.right
    if problem.sign is not MINUS or left <= right:
        return
    if left > 0:
        yield "through-zero", (*hops(right, -right, left), *gathered(-right, left))
    else:
        yield "at-once", hops(right, left - right)
