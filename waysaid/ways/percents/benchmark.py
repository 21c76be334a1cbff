"""Benchmark: build a percent from 100, 50, 25, 10, 5 and 1 per cent of the number."""

from collections.abc import Iterator
from dataclasses import dataclass, replace
from fractions import Fraction
from functools import lru_cache

from waysaid.number import Equation, Exact, Number, Sign, chain, exact
from waysaid.ways.factor import can_do
from waysaid.ways.fractions.amount import did
from waysaid.ways.percents.blocks import HALF_OF_FIVE, HALF_OF_ONE, Built, Part, builds
from waysaid.ways.percents.shape import PercentOf, shown, units_of
from waysaid.ways.plan import AT_ONCE, MINUS, OVER, PLUS, TIMES, Plan
from waysaid.ways.step import Kind, Step

HUNDRED = 100
UNIT = 10**9
"""The unit that sizes are counted in, so that every block of a number is a whole number of it."""
TOLD_FULLY = 2
"""How many builds are told in every order; the others in the plainest; our choice."""
_BY = {50: 2, 25: 4, 20: 5, 10: 10, 1: 100}
"""By what the number is divided for a block."""
_FROM: dict[Exact, tuple[int, int]] = {
    25: (50, 2),
    5: (10, 2),
    1: (10, 10),
    HALF_OF_FIVE: (5, 2),
    HALF_OF_ONE: (1, 2),
}
"""From which other block a block comes, and divided by what."""


@dataclass(frozen=True, slots=True)
class _Order:
    """How a build is told.

    `finished` tells each multiple right after its block, `chained` takes a block from the one
    before where it can, `once` puts all together in one breath where they are few.
    """

    finished: bool = False
    chained: bool = False
    once: bool = True


_PLAIN = _Order()
_ORDERS = (
    ("in-turn", replace(_PLAIN, finished=True)),
    ("from-each-other", replace(_PLAIN, chained=True)),
    ("added-in-turn", replace(_PLAIN, once=False)),
)


def plans(problem: PercentOf) -> Iterator[Plan]:
    """Yield every build whose steps are done in the head; the plainest one where none is."""
    if problem.rate == HUNDRED:
        return
    found = builds(problem.rate)
    fitting = [built for built in found if _in_head(problem, built)]
    for place, built in enumerate(fitting or found[:1]):
        plain = _steps(problem, built.parts, _PLAIN)
        yield f"percent-{built.slug}", plain
        for slug, order in _ORDERS if place < TOLD_FULLY and len(built.parts) > 1 else ():
            steps = _steps(problem, built.parts, order)
            if steps != plain:
                yield f"percent-{built.slug}-{slug}", steps


def _in_head(problem: PercentOf, built: Built) -> bool:
    """Tell whether every multiple of a block is done in one go."""
    return all(
        abs(many) < 2 or can_do(abs(many), units_of(problem.share(block)))
        for block, many in built.parts
    )


@lru_cache(maxsize=1 << 14)
def _number(units: int) -> Number:
    """Return so many units as a number is written."""
    return shown(exact(Fraction(units, UNIT)))


def _steps(problem: PercentOf, parts: tuple[Part, ...], order: _Order) -> tuple[Step, ...]:
    """Return the steps of a build."""
    made: dict[Exact, int] = {HUNDRED: int(Fraction(problem.number) * UNIT)}
    steps: list[Step] = []
    later: list[Step] = []
    for block, many in parts:
        steps += _block(block, made, order.chained)
        if abs(many) > 1:
            size = made[block]
            result = _number(size * abs(many))
            told = did(Kind.SCALE, abs(many), TIMES, _number(size), result)
            (steps if order.finished else later).append(told)
    return (*steps, *later, *_summed([made[block] * many for block, many in parts], order.once))


def _block(block: Exact, made: dict[Exact, int], chained: bool) -> list[Step]:
    """Return the steps that work a block out, and keep its size; none where it is there."""
    if block in made:
        return []
    whole = made[HUNDRED]
    start, by = _FROM.get(block, (HUNDRED, 1))
    at_once = block in _BY and not (chained and block in _FROM and start in made)
    if at_once:
        start, by = HUNDRED, _BY[int(block)]
    before = [] if at_once else _block(start, made, chained)
    made[block] = int(Fraction(whole) * block / HUNDRED)
    if by == 1:
        return before
    kind = Kind.SCALE if by == 2 else Kind.GROUP
    return [*before, did(kind, _number(made[start]), OVER, by, _number(made[block]))]


def _summed(sizes: list[int], once: bool) -> list[Step]:
    """Return the steps that put the pieces together, those below 0 taken away."""
    so_far, *rest = sizes
    if once and len(rest) in range(1, AT_ONCE):
        signed = [(_sign(one), _number(abs(one))) for one in rest]
        whole = chain(_number(so_far), *signed)
        return [Step(_kind(rest[-1]), Equation(whole, _number(sum(sizes))))]
    steps = []
    for one in rest:
        after = so_far + one
        numbers = _number(so_far), _number(abs(one)), _number(after)
        steps.append(did(_kind(one), numbers[0], _sign(one), numbers[1], numbers[2]))
        so_far = after
    return steps


def _sign(size: int) -> Sign:
    return PLUS if size > 0 else MINUS


def _kind(size: int) -> Kind:
    return Kind.JOIN if size > 0 else Kind.TAKE
