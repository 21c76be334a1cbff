"""Ways to find so many per cent of a number."""

from waysaid.number import Problem
from waysaid.ways.maker import AnyMaker, Maker
from waysaid.ways.percents import benchmark, factor_steps, of_part, other, rename
from waysaid.ways.percents.shape import PercentOf, PercentSum, PercentWhole
from waysaid.ways.percents.shape import shapes_of as _plain
from waysaid.ways.way import Family

MAKERS: tuple[AnyMaker, ...] = (
    Maker(Family.BENCHMARK, PercentOf, benchmark.plans),
    Maker(Family.BENCHMARK, PercentOf, factor_steps.halves_plans),
    Maker(Family.KNOWN_FACT, PercentOf, other.all_plans),
    Maker(Family.BENCHMARK, PercentOf, factor_steps.one_first_plans),
    Maker(Family.RENAME, PercentOf, rename.as_part_plans),
    Maker(Family.RENAME, PercentOf, rename.turned_plans),
    Maker(Family.RENAME, PercentOf, rename.per_hundred_plans),
    Maker(Family.RENAME, PercentOf, rename.hundredths_plans),
    Maker(Family.RENAME, PercentOf, rename.wholes_plans),
    Maker(Family.FACTOR_STEPS, PercentOf, factor_steps.plans),
    Maker(Family.BENCHMARK, PercentOf, other.fallback_plans),
    Maker(Family.DOUBLE_HALVE, PercentOf, other.double_plans),
    Maker(Family.BREAK_UP, PercentOf, other.broken_plans),
    Maker(Family.ADJUST, PercentOf, other.near_plans),
    Maker(Family.BENCHMARK, PercentWhole, other.whole_plans),
    Maker(Family.KNOWN_FACT, PercentSum, other.sum_plans),
    Maker(Family.RENAME, PercentSum, other.sumunits_of_plans),
    *of_part.MAKERS,
)


def shapes_of(problem: Problem) -> tuple[object, ...]:
    """Return every shape of a problem with percents; none for any other."""
    return (*_plain(problem), *of_part.shapes_of(problem))


__all__ = ["MAKERS", "shapes_of"]
