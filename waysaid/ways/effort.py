"""What a way asks of a child, in tenths, part by part.

`effort_of` explains; `tenths_of` gives the total alone, quickly, for sorting. The constants and
their sources are in `costs.py`. Effort speaks of ways, never of children.
"""

from collections.abc import Iterator
from dataclasses import dataclass
from enum import StrEnum
from functools import lru_cache

from waysaid.number import Blank, Equation, Exact, Expression, Operation, Sign, leaves
from waysaid.ways.costs import SUM_FACTS, TAKE_FACTS, TENTHS, Charge
from waysaid.ways.step import Kind, Step
from waysaid.ways.way import Family, Way


class Reason(StrEnum):
    """The parts that effort is made of."""

    STEPS = "steps"
    FACTS = "facts"
    CROSSING = "crossing"
    HELD = "held"
    REWRITTEN = "rewritten"
    COUNTING = "counting"
    NEGATIVE = "negative"
    COLUMN = "column"


@dataclass(frozen=True, slots=True)
class EffortPart:
    """One reason and what it costs, in tenths."""

    reason: Reason
    tenths: int


@dataclass(frozen=True, slots=True)
class Effort:
    """The cost of a way; parts that cost nothing are left out."""

    parts: tuple[EffortPart, ...]

    @property
    def tenths(self) -> int:
        """The total, in tenths."""
        return sum(part.tenths for part in self.parts)

    @property
    def text(self) -> str:
        """The total with one decimal: `4.1`."""
        whole, tenths = divmod(self.tenths, 10)
        return f"{whole}.{tenths}"


def effort_of(way: Way) -> Effort:
    """Return the effort of a way with its parts."""
    sizes = zip(Reason, _measure(way), strict=True)
    return Effort(tuple(EffortPart(reason, tenths) for reason, tenths in sizes if tenths))


def tenths_of(way: Way) -> int:
    """Return the total effort of a way, in tenths: `effort_of(way).tenths`, sooner."""
    return sum(_measure(way))


_STEP = TENTHS[Charge.STEP]
_READ_OFF = TENTHS[Charge.READ_OFF]
_CROSS = TENTHS[Charge.CROSS]
_HOLD = TENTHS[Charge.HOLD]
_REWRITE = TENTHS[Charge.REWRITE]
_CUT = TENTHS[Charge.CUT]
_NEGATIVE = TENTHS[Charge.NEGATIVE]
_COLUMN = TENTHS[Charge.COLUMN]
_SKIPS = {
    1: TENTHS[Charge.HOP],
    2: TENTHS[Charge.SKIP],
    5: TENTHS[Charge.SKIP],
    10: TENTHS[Charge.SKIP],
    100: TENTHS[Charge.SKIP],
}
_ODD_SKIP = TENTHS[Charge.ODD_SKIP]
_UNSAID = frozenset({Family.BRIDGE, Family.ADJUST, Family.NEAR_DOUBLE})
"""Families that swap or cut a number without a step for it, and keep the rest in mind."""
_REWRITING = frozenset({Kind.SPLIT, Kind.MOVE, Kind.SHIFT})

_Sizes = tuple[int, int, int, int, int, int, int, int]


def _measure(way: Way) -> _Sizes:
    """Return the tenths for each reason, in the order of `Reason`."""
    steps = facts = crossing = counting = negative = rewritten = 0
    counted = False
    for step in way.steps:
        kind = step.kind
        if kind is Kind.COUNT:
            steps += 0 if counted else _STEP
            counted = True
            counting += _hop(step.equation.left)
            continue
        cost = _equation_cost(step.equation)
        steps += cost[0]
        facts += cost[1]
        crossing += cost[2]
        negative += cost[3]
        if kind in _REWRITING:
            rewritten += _REWRITE
    family = way.family
    held = 0 if family is Family.COUNTING else _held(way.steps, family is Family.ADD_UP)
    if family in _UNSAID and not rewritten and len(way.steps) > 1:
        rewritten, held = _REWRITE, held + 1
    cuts, waiting = _cuts(way)
    column = _COLUMN * len(way.steps) if family is Family.COLUMN else 0
    rewritten += _CUT * cuts
    return steps, facts, crossing, _HOLD * (held + waiting), rewritten, counting, negative, column


def _cuts(way: Way) -> tuple[int, int]:
    """Return how many numbers are cut by place unsaid, and how often a piece of one waits."""
    match way.family:
        case Family.JUMP:
            jumps = sum(step.kind is Kind.JUMP for step in way.steps)
            return (1, jumps - 1) if jumps > 1 else (0, 0)
        case Family.SPLIT:
            return 2, 0
        case Family.SPLIT_THEN_JUMP:
            return 2, len(way.steps) - 1
        case _:
            return 0, 0


def _held(steps: tuple[Step, ...], hops: bool) -> int:
    """Count, over the steps, the results (and hops, where they are gathered) not yet used."""
    waiting: list[Exact | Blank] = []
    held = 0
    for step in steps:
        left = step.equation.left
        used = _numbers(left)
        for number in used:
            if number in waiting:
                waiting.remove(number)
        held += len(waiting)
        if hops and step.kind is Kind.JUMP:
            waiting.append(used[-1])
        result = step.equation.right
        if not isinstance(result, Operation):
            waiting.append(result)
    return held


def _numbers(expression: Expression) -> tuple[Exact | Blank, ...]:
    if (
        isinstance(expression, Operation)
        and not isinstance(expression.left, Operation)
        and not isinstance(expression.right, Operation)
    ):
        return expression.left, expression.right
    return tuple(leaves(expression))


def _hop(counted: Expression) -> int:
    """Return the tenths of one count, on or back: `8 + 1`, `40 - 10`."""
    size = counted.right if isinstance(counted, Operation) else counted
    return _SKIPS.get(size, _ODD_SKIP) if isinstance(size, int) else _ODD_SKIP


_Cost = tuple[int, int, int, int]
"""Tenths for the step itself, its facts, what it crosses, and a piece below zero."""


def _equation_cost(equation: Equation) -> _Cost:
    left = equation.left
    if not isinstance(left, Operation):
        left = equation.right
    if isinstance(left, Operation):
        if left is equation.left and isinstance(equation.right, Operation):
            return _STEP, 0, 0, 0
        if type(left.left) is int and type(left.right) is int:
            return _whole_cost(left.sign is Sign.MINUS, left.left, left.right)
        return _longer_cost(left)
    return _STEP, 0, 0, 0


def _longer_cost(expression: Operation) -> _Cost:
    """Add up the costs of an expression of several terms; it is said as one step."""
    facts = crossing = negative = 0
    for operation in _whole_operations(expression):
        cost = _whole_cost(*operation)
        facts += cost[1]
        crossing += cost[2]
        negative += cost[3]
    return _STEP, facts, crossing, negative


def _whole_operations(expression: Operation) -> Iterator[tuple[bool, int, int]]:
    terms = [number for number in leaves(expression) if type(number) is int]
    so_far = terms[0] if terms else 0
    minus = expression.sign is Sign.MINUS
    for term in terms[1:]:
        yield minus, so_far, term
        so_far = so_far - term if minus else so_far + term


@lru_cache(maxsize=1 << 16)
def _whole_cost(minus: bool, left: int, right: int) -> _Cost:
    """Return the cost of one sum or difference of two whole numbers."""
    if right < 0 or left < 0:
        minus = minus != (right < 0)
        left, right = max(abs(left), abs(right)), min(abs(left), abs(right))
    if minus and right > left:
        return _STEP, _taken(right, left)[0], 0, _NEGATIVE
    facts, crossing = _taken(left, right) if minus else _joined(left, right)
    shared = facts or crossing or minus
    return _STEP if shared else _READ_OFF, facts, crossing, 0


def _joined(left: int, right: int) -> tuple[int, int]:
    """Return tenths for the facts, place by place, and for the tens crossed, of a sum."""
    single = left < 10 and right < 10
    facts = crossing = carry = 0
    while right or (carry and left):
        left, one = divmod(left, 10)
        right, other = divmod(right, 10)
        facts += SUM_FACTS[one][other]
        total = one + other + carry
        carry = int(total > 9)
        if carry and not single and (total > 10 or right):
            crossing += _CROSS
    return facts, crossing


def _taken(left: int, right: int) -> tuple[int, int]:
    """Return tenths for the facts, place by place, and for the tens crossed, of a difference."""
    single = left < 19 and right < 10
    facts = crossing = owed = 0
    while right or owed:
        left, one = divmod(left, 10)
        right, other = divmod(right, 10)
        if one - owed < other:
            facts += TAKE_FACTS[one + 10][other]
            if not single and (one or right):
                crossing += _CROSS
            owed = 1
        else:
            facts += TAKE_FACTS[one][other]
            owed = 0
    return facts, crossing
