"""A problem as composing looks at it: what each family of ways asks in it, and what is inside."""

from collections.abc import Iterator
from functools import lru_cache
from typing import NamedTuple

from waysaid.number import Blank, Operation, Problem, exact
from waysaid.strings.helps import work
from waysaid.strings.inside import NOT_INSIDE
from waysaid.strings.shape import Shape, shape_of
from waysaid.ways import Family, Way, weighed_ways


class Part(NamedTuple):
    """A problem that is a step of a way, and the tenths that are then left."""

    problem: Problem
    left: int


class Seen(NamedTuple):
    """A family: the tenths of its easiest way, and the problems that are steps of its ways."""

    tenths: int
    parts: tuple[Part, ...]


class Look(NamedTuple):
    """A problem, its shape, and what each family asks in it."""

    problem: Problem
    shape: Shape
    families: dict[Family, Seen]

    @property
    def effort(self) -> int:
        """The tenths of the easiest way of all."""
        return min(seen.tenths for seen in self.families.values())


@lru_cache(maxsize=60_000)
def look(problem: Problem) -> Look:
    """Look at a problem. Raises `NoValue` where it has no answer."""
    tenths: dict[Family, int] = {}
    parts: dict[Family, dict[Problem, int]] = {}
    for asks, way in weighed_ways(problem):
        tenths.setdefault(way.family, asks)
        known = parts.setdefault(way.family, {})
        if way.family in NOT_INSIDE:
            continue
        for part, left in _parts(problem, asks, way):
            known[part] = min(left, known.get(part, left))
    families = {
        family: Seen(asks, tuple(Part(*part) for part in parts[family].items()))
        for family, asks in tenths.items()
    }
    return Look(problem, shape_of(problem), families)


def _parts(problem: Problem, tenths: int, way: Way) -> Iterator[Part]:
    """Yield the problems that are steps of a way, each with the tenths that are then left."""
    for step in way.steps:
        part = step.equation.left
        if not isinstance(part, Operation) or part == problem:
            continue
        if isinstance(part.left, Operation | Blank) or isinstance(part.right, Operation | Blank):
            continue
        eased = work(exact(part.left), part.sign, exact(part.right))
        yield Part(part, max(0, tenths - eased))
