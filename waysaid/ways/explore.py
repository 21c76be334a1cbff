"""A problem -> every way to work it in the head."""

from waysaid.number import Equation, Problem, Sign, solve
from waysaid.ways.catalogue import CATALOGUE
from waysaid.ways.leans import leans_of
from waysaid.ways.plan import Move
from waysaid.ways.shape import shapes
from waysaid.ways.step import Step, step
from waysaid.ways.way import Family, Way

_Said = tuple[int, Sign, int] | Equation


def ways(problem: Problem) -> tuple[Way, ...]:
    """Return every way the catalogue knows for the problem, the least effort first.

    No two have the same equations. Empty where no way is written for such a problem.
    """
    seen = shapes(problem)
    if not seen:
        return ()
    answer = solve(problem)
    builder = _Builder()
    found: dict[tuple[_Said, ...], Way] = {}
    for shape in seen:
        for maker in CATALOGUE:
            for variant, moves in maker.of(shape):
                said = tuple(map(_said, moves))
                if said not in found:
                    steps = tuple(map(builder.step, moves))
                    found[said] = Way(maker.family, variant, steps, answer, leans_of(steps))
    return tuple(sorted(found.values(), key=_effort))


def _said(move: Move | Step) -> _Said:
    """Return what tells moves apart: what is said, not the kind of move it is."""
    return move.equation if isinstance(move, Step) else move[1:]


class _Builder:
    """Builds each step once for a problem: its ways share many."""

    def __init__(self) -> None:
        self._built: dict[Move, Step] = {}

    def step(self, move: Move | Step) -> Step:
        if isinstance(move, Step):
            return move
        built = self._built.get(move)
        if built is None:
            built = self._built[move] = step(*move)
        return built


_ORDER = {family: place for place, family in enumerate(Family)}


def _effort(way: Way) -> tuple[int, int]:
    """Return what ways are sorted by: fewer steps, then the order of the families."""
    return len(way.steps), _ORDER[way.family]
