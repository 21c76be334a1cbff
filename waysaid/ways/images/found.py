"""The groups behind what was said of a picture, found again from the steps alone.

Only what is put together counts, not what it is said to make: a child who saw 4 and 3 and said 8
saw the same groups as one who said 7.
"""

from functools import lru_cache

from waysaid.number import Blank, Equation, Expression, Image, Number, Operation, Sign
from waysaid.ways.explore import ways
from waysaid.ways.images.groupings import Seen
from waysaid.ways.step import Step

_Side = tuple[Sign | Number | Blank | None, ...]
_BEFORE = None
"""Stands for the result of an earlier step."""


@lru_cache(maxsize=512)
def groups_seen(image: Image, steps: tuple[Step, ...]) -> Seen | None:
    """Return the groups of the least way with these steps, whatever they are said to make.

    Groups are of dots, and of empty places behind them; None where no way goes like that.
    """
    if not steps:
        return None
    said = _pattern(steps)
    return next((way.seen for way in ways(image) if _pattern(way.steps) == said), None)


def _pattern(steps: tuple[Step, ...]) -> tuple[_Side, ...]:
    made: list[Expression] = []
    pattern = []
    for each in steps:
        equation: Equation = each.equation
        pattern.append(tuple(_terms(equation.left, made)))
        made.append(equation.right)
    return tuple(pattern)


def _terms(side: Expression, made: list[Expression]) -> list[Sign | Number | Blank | None]:
    if isinstance(side, Operation):
        return [*_terms(side.left, made), side.sign, *_terms(side.right, made)]
    return [_BEFORE if side in made else side]
