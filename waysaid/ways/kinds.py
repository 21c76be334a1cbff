"""What a problem is seen as: every kind of problem looks for its own shapes."""

from collections.abc import Callable

from waysaid.number import Problem
from waysaid.ways import (
    about,
    compare,
    decimals,
    fractions,
    from_below,
    images,
    long_times,
    percents,
    two_sides,
)
from waysaid.ways.shape import shapes

LOOKS: tuple[Callable[[Problem], tuple[object, ...]], ...] = (
    shapes,
    from_below.shapes_of,
    long_times.shapes_of,
    decimals.shapes_of,
    fractions.shapes_of,
    percents.shapes_of,
    two_sides.shapes_of,
    compare.shapes_of,
    about.shapes_of,
    images.shapes_of,
)
"""One for whole numbers, and one for each kind beyond them."""


def seen_as(problem: Problem) -> tuple[object, ...]:
    """Return every shape the problem can be seen as; empty where no way is written for it."""
    return tuple([shape for look in LOOKS for shape in look(problem)])
