"""A problem -> every way to work it in the head."""

from waysaid.number import (
    Answer,
    Equation,
    Problem,
    Remainder,
    Sign,
    Span,
    answer_of,
    remainder_of,
    value_of,
)
from waysaid.ways.catalogue import makers_for
from waysaid.ways.effort import tenths_of
from waysaid.ways.kinds import seen_as
from waysaid.ways.mixed import mixed
from waysaid.ways.plan import Move
from waysaid.ways.step import Step, step
from waysaid.ways.way import Family, Way

_Said = tuple[int, Sign, int] | Equation
"""What tells moves apart: what is said, not the kind of move it is."""


def ways(problem: Problem) -> tuple[Way, ...]:
    """Return every way the catalogue knows for the problem, the least effort first.

    No two have the same equations. Empty where no way is written for such a problem.
    """
    seen = seen_as(problem)
    if not seen:
        return _of_several(problem)
    answer, remainder = answer_of(problem), remainder_of(problem)
    built: dict[Move, Step] = {}
    found: dict[tuple[_Said, ...], Way] = {}
    for shape in seen:
        for maker in makers_for(type(shape)):
            for plan in maker.plans(shape):
                moves = plan[1]
                said = tuple(
                    [move.equation if isinstance(move, Step) else move[1:] for move in moves]
                )
                if said not in found:
                    steps = tuple([_built(move, built) for move in moves])
                    left = _left_over(steps, answer, remainder)
                    end = _end(steps, answer)
                    groups = plan[2] if len(plan) == 3 else ()
                    found[said] = Way(maker.family, plan[0], steps, end, left, groups)
    return tuple(sorted(found.values(), key=_effort)) if found else _of_several(problem)


def _of_several(problem: Problem) -> tuple[Way, ...]:
    """Return the ways of a problem that is worked operation by operation; empty for any other."""
    found: dict[tuple[Equation, ...], Way] = {}
    for family, variant, steps in mixed(problem, ways):
        said = tuple([step.equation for step in steps])
        found.setdefault(said, Way(family, variant, steps, answer_of(problem)))
    return tuple(sorted(found.values(), key=_effort))


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


def _built(move: Move | Step, built: dict[Move, Step]) -> Step:
    """Build the step of a move, once for a problem: its ways share many."""
    if isinstance(move, Step):
        return move
    if move not in built:
        built[move] = step(*move)
    return built[move]


_ORDER = {family: place for place, family in enumerate(Family)}


def _effort(way: Way) -> tuple[int, int, int]:
    """Return what ways are sorted by: effort, then fewer steps, then the order of the families."""
    return tenths_of(way), len(way.steps), _ORDER[way.family]
