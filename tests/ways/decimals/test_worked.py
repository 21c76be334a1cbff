"""Decimals worked as we chose, or as a source has it; the published ones are with the others."""

import pytest
from hypothesis import given
from hypothesis import strategies as st

from tests.ways.telling import told
from waysaid.number import Language, parse
from waysaid.ways import Family, effort_of, how_said, ways
from waysaid.ways.decimals import shapes_of
from waysaid.ways.decimals.shape import Chain, InUnits, Over, Pair, Plain, Scaled, Times
from waysaid.ways.shape import Difference, Sum

CASES = (
    ("3.8 + 2.6", Family.BRIDGE, "3.8 + 0.2 = 4; 4 + 2.4 = 6.4"),
    ("8.2 - 0.9", Family.ADJUST, "8.2 - 1 = 7.2; 7.2 + 0.1 = 7.3"),
    ("0.65 + 0.7", Family.RENAME, "65 + 70 = 135; 135 / 100 = 1.35"),
    ("0.65 + 0.7", Family.RENAME, "0.7 = 0.70; 0.65 + 0.70 = 1.35"),
    ("3.45 + 2.80", Family.RENAME, "3 + 2 = 5; 45 + 80 = 125; 125 / 100 = 1.25; 5 + 1.25 = 6.25"),
    ("0.7 + _ = 1.2", Family.ADD_UP, "0.7 + 0.3 = 1; 1 + 0.2 = 1.2; 0.3 + 0.2 = 0.5"),
    ("0.3 - 0.8", Family.BRIDGE, "0.3 - 0.3 = 0; 0 - 0.5 = -0.5"),
    ("1.4 x 0.6", Family.RENAME, "14 x 6 = 84; 84 / 100 = 0.84"),
    ("1.4 x 0.6", Family.BREAK_UP, "1 x 0.6 = 0.6; 0.4 x 0.6 = 0.24; 0.6 + 0.24 = 0.84"),
    ("3.2 x 4", Family.BREAK_UP, "3 x 4 = 12; 0.2 x 4 = 0.8; 12 + 0.8 = 12.8"),
    ("4.9 x 6", Family.NEAR_FACT, "5 x 6 = 30; 30 - 0.6 = 29.4"),
    ("2.5 x 8", Family.DOUBLE_HALVE, "2.5 x 8 = 5 x 4; 5 x 4 = 20"),
    ("2.5 x 8", Family.FACTOR_STEPS, "2.5 x 2 = 5; 5 x 2 = 10; 10 x 2 = 20"),
    ("2.5 x 8", Family.ADJUST, "10 x 8 = 80; 80 / 4 = 20"),
    ("0.25 x 36", Family.RENAME, "36 / 4 = 9"),
    ("0.25 x 36", Family.RENAME, "0.25 = 1/4; 36 / 4 = 9"),
    ("0.75 x 36", Family.RENAME, "36 / 4 = 9; 9 x 3 = 27"),
    ("0.75 x 36", Family.BREAK_UP, "0.75 x 30 = 22.5; 0.75 x 6 = 4.5; 22.5 + 4.5 = 27"),
    ("0.125 x 40", Family.RENAME, "40 / 8 = 5"),
    ("0.5 x 14", Family.RENAME, "14 / 2 = 7"),
    ("0.7 x 4", Family.COUNTING, "0.7 + 0.7 = 1.4; 1.4 + 0.7 = 2.1; 2.1 + 0.7 = 2.8"),
    ("0.6 x 40", Family.DOUBLE_HALVE, "0.6 x 40 = 6 x 4; 6 x 4 = 24"),
    ("4.8 / 0.6", Family.SCALE_BOTH, "4.8 / 0.6 = 48 / 6; 48 / 6 = 8"),
    ("4.8 / 0.6", Family.THINK_TIMES, "0.6 x 8 = 4.8"),
    ("7.5 / 1.5", Family.SCALE_BOTH, "7.5 / 1.5 = 15 / 3; 15 / 3 = 5"),
    ("4.8 / 4", Family.BREAK_UP, "4 / 4 = 1; 0.8 / 4 = 0.2; 1 + 0.2 = 1.2"),
    ("4.8 / 4", Family.RENAME, "48 / 4 = 12; 12 / 10 = 1.2"),
    ("4.8 / 4", Family.FACTOR_STEPS, "4.8 / 2 = 2.4; 2.4 / 2 = 1.2"),
    ("6 / 0.5", Family.RENAME, "6 x 2 = 12"),
    ("6 / 0.5", Family.RENAME, "1 / 0.5 = 2; 6 x 2 = 12"),
    ("1 / 0.3", Family.SCALE_BOTH, "1 / 0.3 = 10 / 3; 10 / 3 = 3 1/3"),
    ("0.5 x 7 x 2", Family.PARTNERS, "0.5 x 2 = 1; 1 x 7 = 7"),
    ("0.7 x 1", Family.KNOWN_FACT, "0.7 x 1 = 0.7"),
)


@pytest.mark.parametrize(("problem", "family", "steps"), CASES)
def test_a_child_may_work_decimals(problem, family, steps):
    assert steps in told(problem, family)


NEVER = (
    ("1.375 + 0.002", Family.COUNTING, "nobody counts in thousandths"),
    ("1.4 x 0.6", Family.DOUBLE_HALVE, "no place is lost by it"),
    ("0.36 + 0.12", Family.COUNTING, "nobody counts twelve hundredths"),
)


@pytest.mark.parametrize(("problem", "family", "why"), NEVER)
def test_it_keeps_silent_where_a_child_would(problem, family, why):
    assert told(problem, family) == [], why


SEEN = {
    "3.8 + 2.6": (InUnits(Sum(38, 26), 1), Pair(38, 26, False, 1, (1, 1))),
    "0.8 - 0.35": (InUnits(Difference(80, 35), 2), Pair(80, 35, True, 2, (1, 2))),
    "1.4 x 0.60": (Times(Scaled(14, 1), Scaled(6, 1)),),
    "4.8 / 4": (Over(Scaled(48, 1), Scaled(4, 0)),),
    "_ x 0.6 = 4.8": (Over(Scaled(48, 1), Scaled(6, 1)),),
    "_ / 4 = 1.2": (Times(Scaled(12, 1), Scaled(4, 0)),),
    "0.5 x 7 x 2": (Chain((parse("0.5").value, 7, 2)),),
    "37 + 25": (),
    "1/2 + 0.5": (),
    "0.65 ? 0.7": (),
    "15% of 60": (),
}


@pytest.mark.parametrize(("problem", "shapes"), SEEN.items())
def test_a_problem_is_seen_as(problem, shapes):
    assert shapes_of(parse(problem)) == shapes


def test_what_needs_no_working_is_plain():
    for problem in ("0.7 x 1", "0 x 0.7", "0.7 / 0.7", "0.7 / 1"):
        assert [type(shape) for shape in shapes_of(parse(problem))] == [Plain]


def test_a_way_is_said_with_its_points():
    way = next(way for way in ways(parse("3.8 + 2.6")) if way.variant == "to-ten-from-first")
    assert how_said(way, Language.EN) == (
        "I went to a friendly number first: 3.8 and 0.2 more is 4, then 4 and 2.4 more is 6.4."
    )
    assert how_said(way, Language.ES) == (
        "Primero fui a un número fácil: 3.8 y 0.2 más son 4, luego 4 y 2.4 más son 6.4."
    )


def _least(problem: str, family: Family) -> int:
    return min(effort_of(way).tenths for way in ways(parse(problem)) if way.family is family)


def test_points_cost_something_and_little():
    for family in (Family.BRIDGE, Family.JUMP, Family.ADJUST, Family.SPLIT):
        whole, pointed = _least("38 + 26", family), _least("3.8 + 2.6", family)
        assert whole < pointed <= 2 * whole


@given(st.integers(1, 9), st.integers(1, 9))
def test_one_more_place_to_work_in_never_costs_less(one, other):
    tenths = effort_of(ways(parse(f"1.{one} + 2.{other}"))[0]).tenths
    hundredths = effort_of(ways(parse(f"1.{one}7 + 2.{other}8"))[0]).tenths
    assert tenths <= hundredths


def test_a_quarter_taken_as_a_part_is_less_work_than_in_hundredths():
    found = ways(parse("0.25 x 36"))
    as_part, as_units = (
        next(effort_of(way).tenths for way in found if slug in way.variant)
        for slug in ("as-1-over-4", "as-hundredths")
    )
    assert as_part < as_units
