"""Ways to work problems with fractions and mixed numbers."""

from waysaid.number import Problem
from waysaid.ways.fractions import (
    add_up,
    adjust,
    benchmark_sum,
    bridge,
    counting,
    give_and_take,
    jump,
    known_fact,
    near_double,
    of_known,
    of_number,
    part_over,
    part_times,
    rename_sum,
    several,
    shift_both,
    split,
    two_forms,
    what_part,
)
from waysaid.ways.fractions.shape import (
    FractionAsked,
    FractionFacts,
    FractionPlain,
    FractionSum,
    FractionTake,
    FractionTerms,
    PartOf,
    PartOver,
    PartTimes,
)
from waysaid.ways.fractions.shape import shapes_of as one_form
from waysaid.ways.maker import AnyMaker, Maker
from waysaid.ways.way import Family


def shapes_of(problem: Problem) -> tuple[object, ...]:
    """Return every shape the problem can be seen as; empty where no number is a fraction."""
    return one_form(problem) or two_forms.two_forms(problem)


MAKERS: tuple[AnyMaker, ...] = (
    Maker(Family.KNOWN_FACT, FractionPlain, known_fact.plain_plans),
    Maker(Family.RENAME, FractionPlain, rename_sum.plain_plans),
    Maker(Family.KNOWN_FACT, FractionSum, known_fact.sum_plans),
    Maker(Family.KNOWN_FACT, FractionTake, known_fact.take_plans),
    Maker(Family.KNOWN_FACT, FractionAsked, known_fact.asked_plans),
    Maker(Family.KNOWN_FACT, PartOf, known_fact.part_plans),
    Maker(Family.KNOWN_FACT, PartTimes, known_fact.times_plans),
    Maker(Family.KNOWN_FACT, PartOver, known_fact.over_plans),
    Maker(Family.RENAME, FractionSum, rename_sum.sum_plans),
    Maker(Family.RENAME, FractionTake, rename_sum.take_plans),
    Maker(Family.NEAR_DOUBLE, FractionSum, near_double.sum_plans),
    Maker(Family.NEAR_DOUBLE, FractionTake, near_double.take_plans),
    Maker(Family.BRIDGE, FractionSum, bridge.sum_plans),
    Maker(Family.BRIDGE, FractionTake, bridge.take_plans),
    Maker(Family.BENCHMARK, FractionSum, benchmark_sum.sum_plans),
    Maker(Family.BENCHMARK, FractionTake, benchmark_sum.take_plans),
    Maker(Family.JUMP, FractionSum, jump.sum_plans),
    Maker(Family.JUMP, FractionTake, jump.take_plans),
    Maker(Family.SPLIT, FractionSum, split.sum_plans),
    Maker(Family.SPLIT, FractionTake, split.take_plans),
    Maker(Family.SPLIT_THEN_JUMP, FractionSum, split.then_jump_sum_plans),
    Maker(Family.SPLIT_THEN_JUMP, FractionTake, split.then_jump_take_plans),
    Maker(Family.ADJUST, FractionSum, adjust.sum_plans),
    Maker(Family.ADJUST, FractionTake, adjust.take_plans),
    Maker(Family.GIVE_AND_TAKE, FractionSum, give_and_take.sum_plans),
    Maker(Family.SHIFT_BOTH, FractionTake, shift_both.take_plans),
    Maker(Family.ADD_UP, FractionTake, add_up.take_plans),
    Maker(Family.COUNTING, FractionSum, counting.sum_plans),
    Maker(Family.COUNTING, FractionTake, counting.take_plans),
    Maker(Family.COUNTING, PartOf, counting.part_plans),
    Maker(Family.COUNTING, PartOver, counting.over_plans),
    Maker(Family.PARTNERS, FractionTerms, several.partners_plans),
    Maker(Family.JUMP, FractionTerms, several.in_turn_plans),
    Maker(Family.SPLIT, FractionTerms, several.split_plans),
    Maker(Family.RENAME, FractionTerms, several.unit_plans),
    Maker(Family.FACTOR_STEPS, FractionFacts, several.facts_plans),
    Maker(Family.PARTNERS, FractionFacts, several.facts_partners_plans),
    *of_known.MAKERS,
    *of_number.MAKERS,
    *part_times.MAKERS,
    *part_over.MAKERS,
    *what_part.MAKERS,
    *two_forms.MAKERS,
)

__all__ = ["MAKERS", "shapes_of"]
