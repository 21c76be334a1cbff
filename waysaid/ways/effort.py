"""What a way asks of a child, in tenths, part by part.

`effort_of` explains; `tenths_of` gives the total alone, quickly, for sorting. The constants and
their sources are in `costs.py`. Effort speaks of ways, never of children.
"""

from collections.abc import Iterator
from dataclasses import dataclass
from enum import StrEnum
from fractions import Fraction

from waysaid.number import (
    Blank,
    Equation,
    Exact,
    Expression,
    Operation,
    Sign,
    Written,
    exact,
)
from waysaid.ways.costs import TENTHS, Charge
from waysaid.ways.factor import TABLES, bare
from waysaid.ways.group_costs import share_costs, times_costs
from waysaid.ways.part_costs import part_cost
from waysaid.ways.percent_costs import block_costs
from waysaid.ways.point_costs import has_points, without_points
from waysaid.ways.step import Kind, Step
from waysaid.ways.sum_costs import Cost, digits, whole_cost
from waysaid.ways.way import Family, Way


class Reason(StrEnum):
    """The parts that effort is made of."""

    STEPS = "steps"
    FACTS = "facts"
    CROSSING = "crossing"
    SIZE = "size"
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
_HOLD = TENTHS[Charge.HOLD]
_REWRITE = TENTHS[Charge.REWRITE]
_CUT = TENTHS[Charge.CUT]
_MATCH = TENTHS[Charge.MATCH]
_MEND = TENTHS[Charge.MEND]
_MEND_TAKEN = TENTHS[Charge.MEND_TAKEN]
_BOTH = TENTHS[Charge.BOTH]
_TALLY = TENTHS[Charge.TALLY]
_DIGIT = TENTHS[Charge.DIGIT]
_COLUMN = TENTHS[Charge.COLUMN]
_NEGATIVE = TENTHS[Charge.NEGATIVE]
_PART = TENTHS[Charge.PART]
_SKIPS = {
    1: TENTHS[Charge.HOP],
    2: TENTHS[Charge.SKIP],
    5: TENTHS[Charge.SKIP],
    10: TENTHS[Charge.SKIP],
    100: TENTHS[Charge.SKIP],
}
_ODD_SKIP = TENTHS[Charge.ODD_SKIP]
_UNSAID = frozenset(
    {
        Family.BRIDGE,
        Family.ADJUST,
        Family.NEAR_DOUBLE,
        Family.JUMP,
        Family.SPLIT,
        Family.SPLIT_THEN_JUMP,
        Family.ADD_UP,
        Family.NEAR_FACT,
        Family.BREAK_UP,
        Family.FACTOR_STEPS,
        Family.THINK_TIMES,
        Family.CHUNK_OUT,
        Family.RENAME,
        Family.BENCHMARK,
    }
)
"""Families that can swap or cut a number without a step for it, and keep the rest in mind."""
_ROUNDED = "rounded-to-"
"""How the slug of an estimate starts; it names every number that was rounded."""
_PERCENT = "percent-"
"""How the slug of a way starts that knows, unsaid, which part of a number a percent is."""
_REWRITING = frozenset({Kind.SPLIT, Kind.MOVE, Kind.SHIFT})
_SCALING = frozenset({Family.DOUBLE_HALVE, Family.SCALE_BOTH})
"""Families where a number scaled is a number rewritten, not the work itself."""
_ALIKE = frozenset({Kind.SHIFT, Kind.SCALE})
_GROUPED = frozenset({Sign.TIMES, Sign.OVER})

_Sizes = tuple[int, ...]


def _measure(way: Way) -> _Sizes:
    """Return the tenths for each reason, in the order of `Reason`."""
    steps = facts = crossing = size = counting = negative = rewritten = alike = 0
    said = way.steps
    if has_points(said):
        way, size, same = without_points(way)
        said = way.steps if same else said
    counted: object = None
    scaling = way.family in _SCALING
    for step in way.steps:
        kind = step.kind
        if kind is Kind.COUNT:
            hop = step.equation.left
            by = hop.right if isinstance(hop, Operation) else hop
            if by != counted:
                steps += _STEP
                counting += _TALLY
                counted = by
            counting += _SKIPS.get(by, _ODD_SKIP) if type(by) is int else _skip(by)
            if not negative and _below_zero(step):
                negative += _NEGATIVE
            continue
        cost = _equation_cost(step.equation)
        steps += cost[0]
        facts += cost[1]
        crossing += cost[2]
        size += cost[3]
        negative += cost[4]
        if kind in _REWRITING or (scaling and kind is Kind.SCALE):
            rewritten += _REWRITE
            if kind in _ALIKE and isinstance(step.equation.right, Operation):
                rewritten += _REWRITE
                alike += 1
    family = way.family
    held = alike
    if family is not Family.COUNTING:
        held += _held(said, family is Family.ADD_UP)
    if family in _UNSAID and not rewritten:
        unsaid = _unsaid(way)
        rewritten += unsaid[0]
        held += unsaid[1]
    column = _COLUMN * len(way.steps) if family is Family.COLUMN else 0
    return steps, facts, crossing, size, held * _HOLD, rewritten, counting, negative, column


def _skip(by: Expression) -> int:
    """Return the tenths for one count by a part: 1/4 more each time is a hop of a quarter."""
    one = isinstance(by, Fraction) and by.numerator == 1
    return _SKIPS[1] + _PART if one else _ODD_SKIP


def _below_zero(step: Step) -> bool:
    right = step.equation.right
    return isinstance(right, int) and right < 0


def _unsaid(way: Way) -> tuple[int, int]:
    """Return what has no step of its own: tenths for rewriting, and how many numbers are held."""
    if way.variant.startswith(_ROUNDED):
        return _REWRITE * (1 + way.variant.count("-and-")), 0
    if way.variant.startswith(_PERCENT):
        return block_costs(way.steps), 0
    if way.family is Family.BENCHMARK:
        return (_CUT, 0) if len(way.steps) > 2 else (0, 0)
    return _unsaid_in_family(way)


def _unsaid_in_family(way: Way) -> tuple[int, int]:
    steps, length = way.steps, len(way.steps)
    match way.family:
        case Family.JUMP:
            jumps = sum(step.kind is Kind.JUMP for step in steps)
            return (_CUT, jumps - 1) if jumps > 1 else (0, 0)
        case Family.SPLIT:
            return (2 if length > 2 else 1) * _CUT, 0
        case Family.SPLIT_THEN_JUMP:
            return 2 * _CUT, length - 1
        case Family.ADD_UP:
            return (_at_once(steps[0]), 0) if length == 1 else (0, 0)
        case Family.NEAR_DOUBLE if length == 1:
            return 2 * _REWRITE, 1
        case Family.BREAK_UP:
            return (2 if way.variant.startswith("both") else 1) * _CUT, 0
        case Family.NEAR_FACT:
            return _REWRITE + _MEND, 1
        case Family.FACTOR_STEPS | Family.RENAME:
            return _CUT, 0
        case Family.THINK_TIMES if length == 1:
            return _tried(steps[0]), 0
        case Family.THINK_TIMES | Family.CHUNK_OUT:
            return _CUT, sum(step.kind is Kind.GROUP for step in steps)
        case _:
            return (_swapped(way), 1) if length > 1 else (0, 0)


def _tried(step: Step) -> int:
    """Return the tenths for a factor found in one go: one of the tables costs none."""
    factors = _numbers(step.equation.left)
    return 0 if all(type(one) is int and bare(one) <= TABLES for one in factors) else _MATCH + _CUT


def _at_once(step: Step) -> int:
    """Return the tenths for a whole difference seen at once: 49 + 2 = 51 costs none."""
    hop = _numbers(step.equation.left)[-1]
    return _MATCH + _CUT if isinstance(hop, int) and hop > 9 else 0


def _swapped(way: Way) -> int:
    """Return the tenths for a number swapped or cut in silence, and for putting it right.

    The cut of a bridge costs half of the fact behind it: 25 = 3 + 22 leans on 3 + 2.
    """
    first, second = _numbers(way.steps[0].equation.left), _numbers(way.steps[1].equation.left)
    one, other, rest = first[0], first[-1], second[-1]
    if type(one) is not int or type(other) is not int or type(rest) is not int:
        return _REWRITE
    cost = _REWRITE
    if way.family is not Family.NEAR_DOUBLE and min(one, other) > 9 and one % 10 and other % 10:
        cost += _MATCH
    if way.family is Family.BRIDGE:
        return cost + whole_cost(False, other, rest)[1] // 2
    if way.family is Family.ADJUST:
        cost += _MEND_TAKEN if _is_minus(way.steps[0]) else _MEND
        cost += _BOTH if way.variant.startswith("both") else 0
        cost += _HOLD if rest > 9 else 0
    return cost


def _is_minus(step: Step) -> bool:
    left = step.equation.left
    return isinstance(left, Operation) and left.sign is Sign.MINUS


def _held(steps: tuple[Step, ...], hops: bool) -> int:
    """Count, over the steps, the results (and hops, where they are gathered) not yet used."""
    if _each_goes_on(steps):
        return 0
    waiting: list[Exact | Blank] = []
    held = 0
    for step in steps:
        left = step.equation.left
        used = _numbers(left)
        for number in used:
            if waiting and number in waiting:
                waiting.remove(number)
        held += len(waiting)
        right = step.equation.right
        if hops and step.kind is Kind.JUMP:
            right = used[-1]
        if type(right) is Written:
            right = exact(right)
        if type(right) is int or type(right) is Fraction:
            waiting.append(right if right.numerator >= 0 else -right)
    return held


def _each_goes_on(steps: tuple[Step, ...]) -> bool:
    """Tell whether each step uses the result of the one before, so that none waits."""
    before: Expression | None = None
    for step in steps:
        left = step.equation.left
        if type(left) is not Operation:
            return False
        if before is not None and before not in (left.left, left.right):
            return False
        before = step.equation.right
    return True


def _numbers(expression: Expression) -> tuple[Exact | Blank, ...]:
    """Return the value of every number, and every blank, from left to right."""
    if isinstance(expression, Operation):
        left, right = expression.left, expression.right
        if type(left) is int and type(right) is int:
            return left, right
        return _numbers(left) + _numbers(right)
    return (expression if isinstance(expression, Blank) else exact(expression),)


def _equation_cost(equation: Equation) -> Cost:
    left, right = equation.left, equation.right
    if type(left) is not Operation:
        left, right = right, left
        if type(left) is not Operation:
            return part_cost(equation)
    elif type(right) is Operation:
        return _alike(left, right) if _all_whole(equation) else part_cost(equation)
    one, other = left.left, left.right
    if type(one) is int and type(other) is int:
        if left.sign in _GROUPED:
            return _group_cost(left.sign, one, other)
        return whole_cost(left.sign is Sign.MINUS, one, other)
    return _longer_cost(left) if _all_whole(equation) else part_cost(equation)


def _all_whole(equation: Equation) -> bool:
    numbers = _numbers(equation.left) + _numbers(equation.right)
    return all(type(number) is int for number in numbers)


def _alike(before: Operation, after: Operation) -> Cost:
    """Return the cost of two numbers changed in one breath: 62 - 25 = 67 - 30, 16 x 5 = 8 x 10.

    Turned round, 3 x 4 = 4 x 3, they are not changed.
    """
    facts = crossing = size = 0
    grouped = before.sign in _GROUPED
    if grouped and _numbers(before) == _numbers(after)[::-1]:
        return 2 * _STEP, 0, 0, 0, 0
    for old, new in zip(_numbers(before), _numbers(after), strict=False):
        if type(old) is int and type(new) is int and old != new:
            cost = _scaled(old, new) if grouped else whole_cost(new < old, old, abs(new - old))
            facts += cost[1]
            crossing += cost[2]
            size += cost[3]
    return 2 * _STEP, facts, crossing, size, 0


def _scaled(old: int, new: int) -> Cost:
    """Return the cost of one number scaled to another."""
    if new > old > 0:
        return _group_cost(Sign.TIMES, old, new // old)
    return _group_cost(Sign.OVER, old, old // max(new, 1))


def _group_cost(sign: Sign, left: int, right: int) -> Cost:
    """Return the cost of one product or quotient of two whole numbers."""
    times = sign is Sign.TIMES
    facts, crossing = (times_costs if times else share_costs)(abs(left), abs(right))
    result = left * right if times or not right else left // right
    size = _DIGIT * (digits(abs(left)) + digits(abs(right)) + digits(abs(result)))
    return _STEP, facts, crossing, size, 0


def _longer_cost(expression: Operation) -> Cost:
    """Add up the costs of an expression of several terms; it is said as one step."""
    facts = crossing = size = negative = 0
    for operation in _whole_operations(expression):
        cost = whole_cost(*operation)
        facts += cost[1]
        crossing += cost[2]
        size += cost[3]
        negative += cost[4]
    return _STEP, facts, crossing, size, negative


def _whole_operations(expression: Operation) -> Iterator[tuple[bool, int, int]]:
    terms = [number for number in _numbers(expression) if type(number) is int]
    so_far = terms[0] if terms else 0
    minus = expression.sign is Sign.MINUS
    for term in terms[1:]:
        yield minus, so_far, term
        so_far = so_far - term if minus else so_far + term
