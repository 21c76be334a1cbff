"""Hundreds, thousands and so on, worked as ones are: 46000 + 38000 as 46 + 38 thousands are."""

from collections.abc import Callable, Iterator

from waysaid.number import Equation, Expression, Operation
from waysaid.ways.maker import AnyMaker, Maker
from waysaid.ways.plan import TIMES, Move, Plan
from waysaid.ways.shape import Difference, Round, Sum
from waysaid.ways.step import Step
from waysaid.ways.way import Family
from waysaid.ways.whole import WHOLE

LEFT_OUT = frozenset({Family.KNOWN_FACT, Family.THINK_ADD, Family.COLUMN, Family.RENAME})
"""Families that whole numbers tell of any unit already."""
OF_ONES = ("to-five", "fives")
"""How the slugs start of ways for single digits; our choice."""


def _in_units(maker: AnyMaker) -> AnyMaker:
    return Maker(maker.family, Round, _plans(maker))


def _plans(maker: AnyMaker) -> Callable[[Round], Iterator[Plan]]:
    def plans(problem: Round) -> Iterator[Plan]:
        """Yield the plans for so many units, with every number so many times as large."""
        for slug, moves in maker.of(problem.whole):
            if not slug.startswith(OF_ONES):
                yield f"{slug}-units", tuple([_told(move, problem.unit) for move in moves])

    return plans


def _told(move: Move | Step, unit: int) -> Move | Step:
    if isinstance(move, Step):
        left, right = _times(move.equation.left, unit), _times(move.equation.right, unit)
        return Step(move.kind, Equation(left, right))
    kind, left, sign, right = move
    return (kind, left if sign is TIMES else left * unit, sign, right * unit)


def _times(side: Expression, unit: int) -> Expression:
    if isinstance(side, Operation):
        return Operation(side.sign, _times(side.left, unit), _times(side.right, unit))
    return side * unit if isinstance(side, int) else side


MAKERS: tuple[AnyMaker, ...] = tuple(
    _in_units(maker)
    for maker in WHOLE
    if maker.shape in (Sum, Difference) and maker.family not in LEFT_OUT
)
