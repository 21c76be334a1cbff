"""Give and take: one number gives the other what it lacks to a whole; the total stays."""

from collections.abc import Iterator

from waysaid.number import Operation, exact
from waysaid.ways.fractions.amount import did, one_go, said_as
from waysaid.ways.fractions.bridge import written_like
from waysaid.ways.fractions.shape import FractionSum
from waysaid.ways.plan import MINUS, PLUS, Plan
from waysaid.ways.step import Kind, Step


def sum_plans(problem: FractionSum) -> Iterator[Plan]:
    """Yield either number made whole by the other, in steps or said as one."""
    for start, other, tag in problem.starts():
        gap = start.gap
        if not 0 < gap < other.value or not start.top or not one_go(other.value, gap):
            continue
        moved = written_like(gap, start)
        full, rest = exact(start.value + gap), exact(other.value - gap)
        made = did(Kind.MOVE, start.number, PLUS, moved)
        given = did(Kind.MOVE, other.number, MINUS, moved)
        pair = (full, rest) if tag == "first" else (rest, full)
        last = did(Kind.JOIN, pair[0], PLUS, pair[1])
        yield f"{tag}-to-whole", (made, given, last)
        yield f"{tag}-to-whole-given-first", (given, made, last)
        whole = Operation(PLUS, problem.left.number, problem.right.number)
        told = Step(Kind.MOVE, said_as(whole, Operation(PLUS, *pair)).equation)
        yield f"{tag}-to-whole-said-as-one", (told, last)
