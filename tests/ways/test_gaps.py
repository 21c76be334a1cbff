"""Ways of problems between the kinds: long products, decimals by decimals, parts of groups."""

import pytest

from tests.ways.exact_judge import holds
from tests.ways.telling import told
from waysaid.number import parse, solve
from waysaid.ways import Family, ways

CASES = (
    ("7 x _ = 30", Family.THINK_TIMES, "7 x 4 = 28; 30 - 28 = 2; 30 / 7 = 4 2/7"),
    ("7 x _ = 30", Family.RENAME, "30 / 7 = 30/7; 30/7 = 4 2/7"),
    ("30 / 7", Family.THINK_TIMES, "7 x 4 = 28; 30 - 28 = 2; 2 / 7 = 2/7; 4 + 2/7 = 4 2/7"),
    ("30 / 4", Family.SCALE_BOTH, "30 / 4 = 15 / 2; 15 / 2 = 7 1/2"),
    ("_ x 1/2 = 0.5", Family.RENAME, "0.5 = 1/2; 1/2 / 1/2 = 1"),
    ("1234 x 56", Family.BREAK_UP, "1234 x 50 = 61700; 1234 x 6 = 7404; 61700 + 7404 = 69104"),
    ("1234 x 56", Family.NEAR_FACT, "1234 x 60 = 74040; 1234 x 4 = 4936; 74040 - 4936 = 69104"),
    ("1234 x 56", Family.FACTOR_STEPS, "1234 x 7 = 8638; 8638 x 8 = 69104"),
    (
        "1234 x 56",
        Family.DOUBLE_HALVE,
        "1234 x 56 = 2468 x 28; 2468 x 28 = 4936 x 14; 4936 x 14 = 9872 x 7; 9872 x 7 = 69104",
    ),
    ("2.5 x 1.2", Family.RENAME, "5 x 12 = 60; 60 x 5 = 300; 300 / 100 = 3"),
    (
        "3.14 x 2.72",
        Family.BREAK_UP,
        (
            "3 x 2.72 = 8.16; 0.1 x 2.72 = 0.272; 0.04 x 2.72 = 0.1088; "
            "8.16 + 0.272 = 8.432; 8.432 + 0.1088 = 8.5408"
        ),
    ),
    ("19/3 x 0.5%", Family.BENCHMARK, "19/3 / 100 = 19/300; 19/300 / 2 = 19/600"),
    ("19/3 x 0.5%", Family.RENAME, "0.5% = 1/200; 19/3 x 1/200 = 19/600"),
    ("20 - 2 x 6", Family.JUMP, "20 - 6 = 14; 14 - 6 = 8"),
    ("1/2 + 0.25", Family.JUMP, "1/2 = 0.5; 0.5 + 0.2 = 0.7; 0.7 + 0.05 = 0.75"),
)


@pytest.mark.parametrize(("problem", "family", "steps"), CASES)
def test_a_child_may_work_it_so(problem, family, steps):
    assert steps in told(problem, family)


@pytest.mark.parametrize("problem", sorted({case[0] for case in CASES}))
def test_every_way_of_these_is_true_and_told_once(problem):
    found = ways(parse(problem))
    texts = [tuple(step.text for step in way.steps) for way in found]
    assert len(set(texts)) == len(texts)
    assert all(holds(step) for steps in texts for step in steps)
    assert all(way.answer == solve(parse(problem)) for way in found)
