"""Split, then jump: tens from tens, then the ones go on and off one after another."""

from collections.abc import Iterator

from waysaid.ways.add.split_then_jump import MOST_HOPS
from waysaid.ways.place import pieces
from waysaid.ways.plan import MINUS, Plan, hops
from waysaid.ways.shape import Difference
from waysaid.ways.step import Kind


def plans(problem: Difference) -> Iterator[Plan]:
    """Yield the ways where both numbers have a big piece of one place and something small."""
    (big, *small), (other, *others) = pieces(problem.whole), pieces(problem.part)
    if not (small and others and len(str(big)) == len(str(other)) and big > other):
        return
    if len(small) + len(others) > MOST_HOPS:
        return
    start = (Kind.TAKE, big, MINUS, other)
    left = big - other
    less = [-piece for piece in others]
    yield "on-then-off", (start, *hops(left, *small, *less))
    yield "off-then-on", (start, *hops(left, *less, *small))
    if len(small) == len(others) == 1 and 0 < small[0] < others[0] < 10:
        bridged = hops(left, small[0], -small[0], small[0] - others[0])
        yield "on-then-off-bridged", (start, *bridged)
