"""A problem -> every way to work it in the head."""

from collections import defaultdict
from collections.abc import Callable, Hashable, Iterable
from typing import Any

from waysaid.number import (
    Answer,
    Equation,
    Problem,
    Remainder,
    Span,
    answer_of,
    remainder_of,
    value_of,
)
from waysaid.ways.catalogue import makers_for
from waysaid.ways.effort import tenths_of
from waysaid.ways.kinds import seen_as
from waysaid.ways.mixed import mixed
from waysaid.ways.plan import Move, Moves
from waysaid.ways.step import Step
from waysaid.ways.way import Family, Way

_Said = tuple[Hashable, ...]
"""What tells plans apart: who tells their moves, and what is said; not the kinds of move."""
_Told = Callable[[Move | Step, Any], Step]


def ways(problem: Problem) -> tuple[Way, ...]:
    """Return every way the catalogue knows for the problem, the least effort first.

    No two have the same equations. Empty where no way is written for such a problem.
    """
    return tuple([way for _, way in weighed_ways(problem)])


def weighed_ways(problem: Problem) -> tuple[tuple[int, Way], ...]:
    """Return every way, the least effort first, each with its effort in tenths."""
    seen = seen_as(problem)
    if not seen:
        return _of_several(problem)
    answer, remainder = answer_of(problem), remainder_of(problem)
    built: dict[_Told, dict[Move, Step]] = defaultdict(dict)
    different: set[_Said] = set()
    found: list[Way] = []
    for shape in seen:
        for maker in makers_for(type(shape)):
            told = maker.told
            for plan in maker.plans(shape):
                moves = plan[1]
                said = (told, *[m.equation if isinstance(m, Step) else m[1:] for m in moves])
                different.add(said)
                if len(different) > len(found):
                    steps = _steps(moves, shape, told, built[told])
                    left = _left_over(steps, answer, remainder)
                    end = _end(steps, answer)
                    groups = plan[2] if len(plan) == 3 else ()
                    found.append(Way(maker.family, plan[0], steps, end, left, groups))
    return _sorted(found) if found else _of_several(problem)


def _of_several(problem: Problem) -> tuple[tuple[int, Way], ...]:
    """Return the ways of a problem that is worked operation by operation; empty for any other."""
    found: dict[tuple[Equation, ...], Way] = {}
    for family, variant, steps in mixed(problem, ways):
        said = tuple([step.equation for step in steps])
        found.setdefault(said, Way(family, variant, steps, answer_of(problem)))
    return _sorted(found.values())


def _end(steps: tuple[Step, ...], answer: Answer) -> Answer:
    """Return what the way comes to: for an estimate its own last number, else the answer."""
    return value_of(steps[-1].equation.right) if isinstance(answer, Span) else answer


def _left_over(
    steps: tuple[Step, ...], answer: Answer, remainder: Remainder | None
) -> Remainder | None:
    """Return the remainder where the steps end with it and not with the exact answer."""
    if remainder is None or value_of(steps[-1].equation.right) == answer:
        return None
    return remainder


def _steps(moves: Moves, shape: object, told: _Told, built: dict[Move, Step]) -> tuple[Step, ...]:
    """Return the steps of a plan, those of its moves built once for a problem: ways share many."""
    steps = []
    for move in moves:
        if isinstance(move, Step):
            steps.append(told(move, shape))
            continue
        step = built.get(move)
        if step is None:
            step = built[move] = told(move, shape)
        steps.append(step)
    return tuple(steps)


_ORDER = {family: place for place, family in enumerate(Family)}


def _sorted(found: Iterable[Way]) -> tuple[tuple[int, Way], ...]:
    """Return ways with their effort, sorted by it, then by fewer steps, then by family."""
    weighed = [(tenths_of(way), way) for way in found]
    weighed.sort(key=lambda one: (one[0], len(one[1].steps), _ORDER[one[1].family]))
    return tuple(weighed)
