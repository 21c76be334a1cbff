"""What a way leans on follows from its steps."""

import pytest

from waysaid.number import parse, text
from waysaid.ways import Family, ways

LEANS = (
    ("37 + 25", Family.BRIDGE, "37 + 3 = 40; 40 + 22 = 62", ["7 + 3 = 10", "4 + 2 = 6"], (40,)),
    ("37 + 25", Family.JUMP, "37 + 20 = 57; 57 + 5 = 62", ["3 + 2 = 5", "7 + 5 = 12"], ()),
    ("36 + 9", Family.ADJUST, "36 + 10 = 46; 46 - 1 = 45", ["3 + 1 = 4", "6 - 1 = 5"], (10,)),
    ("30 + 28", Family.NEAR_DOUBLE, "30 + 30 = 60; 60 - 2 = 58", ["3 + 3 = 6"], (60, 30)),
    ("12 - 9", Family.COUNTING, "9 + 1 = 10; 10 + 1 = 11; 11 + 1 = 12; 1 + 1 + 1 = 3", [], (10,)),
    ("19 x 7", Family.NEAR_FACT, "20 x 7 = 140; 140 - 7 = 133", ["2 x 7 = 14"], (140, 20)),
    ("24 x 4", Family.FACTOR_STEPS, "24 x 2 = 48; 48 x 2 = 96", ["4 x 2 = 8", "2 x 2 = 4"], ()),
    ("56 / 8", Family.KNOWN_FACT, "56 / 8 = 7", ["7 x 8 = 56"], ()),
    ("12 x 11", Family.KNOWN_FACT, "12 x 11 = 132", ["12 x 11 = 132"], ()),
)


@pytest.mark.parametrize(("problem", "family", "steps", "facts", "friendly"), LEANS)
def test_a_way_leans_on(problem, family, steps, facts, friendly):
    (way,) = (
        way
        for way in ways(parse(problem))
        if way.family is family and "; ".join(step.text for step in way.steps) == steps
    )
    assert [text(fact) for fact in way.leans.facts][: len(facts)] == facts
    assert way.leans.friendly == friendly
