"""Problems of two or more operations, brackets, and a number missing inside them."""

import random
from fractions import Fraction

import pytest

from tests.counts import count
from tests.ways.telling import told
from waysaid.number import Language, Operation, exact, parse, solve
from waysaid.ways import Family, how_said, ways

CASES = (
    ("6 x 3 + 4", Family.JUMP, "6 x 3 = 18; 18 + 4 = 22"),
    ("6 x 3 + 4", Family.BRIDGE, "6 x 3 = 18; 18 + 2 = 20; 20 + 2 = 22"),
    ("2 x 15 + 2 x 5", Family.PARTNERS, "15 + 5 = 20; 2 x 20 = 40"),
    ("2 x 15 + 2 x 5", Family.KNOWN_FACT, "2 x 15 = 30; 2 x 5 = 10; 30 + 10 = 40"),
    ("48 / 4 / 2", Family.FACTOR_STEPS, "48 / 4 = 12; 12 / 2 = 6"),
    ("48 / 4 / 2", Family.PARTNERS, "4 x 2 = 8; 48 / 8 = 6"),
    ("48 / (4 x 2)", Family.FACTOR_STEPS, "48 / 4 = 12; 12 / 2 = 6"),
    ("20 - (3 + 5)", Family.KNOWN_FACT, "3 + 5 = 8; 20 - 8 = 12"),
    ("20 - (3 + 5)", Family.JUMP, "20 - 3 = 17; 17 - 5 = 12"),
    ("(30 + 4) x 5", Family.BREAK_UP, "30 x 5 = 150; 4 x 5 = 20; 150 + 20 = 170"),
    ("12 x 10 / 4", Family.PARTNERS, "12 / 4 = 3; 3 x 10 = 30"),
    ("5 + 3 + _ = 12", Family.KNOWN_FACT, "5 + 3 = 8; 12 - 8 = 4"),
    ("_ x 3 + 4 = 19", Family.KNOWN_FACT, "19 - 4 = 15; 15 / 3 = 5"),
    ("2 x (3.5 + 1)", Family.BREAK_UP, "3.5 + 3.5 = 7; 2 x 1 = 2; 7 + 2 = 9"),
)


@pytest.mark.parametrize(("problem", "family", "steps"), CASES)
def test_several_operations_are_worked(problem, family, steps):
    assert steps in told(problem, family)


def test_a_longer_product_without_a_friendly_pair_has_a_way():
    assert ways(parse("47 x 89 x 37"))


def test_several_operations_are_said_in_both_languages():
    way = next(way for way in ways(parse("2 x 15 + 2 x 5")) if way.family is Family.PARTNERS)
    assert how_said(way, Language.EN) == (
        "I looked for numbers that go together: 15 and 5 is 20, then 2 times 20 is 40."
    )
    assert how_said(way, Language.ES) == (
        "Busqué números que van bien juntos: 15 y 5 son 20, luego 2 por 20 son 40."
    )


def _asked(seed: int, many: int) -> list[str]:
    dice = random.Random(seed)
    forms = (
        "{a} x {b} + {c}",
        "{c} + {a} x {b}",
        "{a} x {b} - {a}",
        "{a} x {b} + {a} x {c}",
        "({c} + {a}) x {b}",
        "{c} - ({a} + {b})",
        "{c} - {a} - (2 + {b})",
        "{a} x {b} x {c}",
        "{a} + {b} + _ = {d}",
        "{a} x {b} / {a}",
    )
    problems = []
    for _ in range(many):
        a, b = dice.randint(2, 12), dice.randint(2, 12)
        c = dice.randint(25, 99)
        problems.append(dice.choice(forms).format(a=a, b=b, c=c, d=a + b + c))
    return problems


@pytest.mark.parametrize("seed", range(4))
def test_every_way_of_several_operations_is_true_and_ends_with_the_answer(seed):
    for asked in _asked(seed, count(test=25, sweep=2000)):
        problem = parse(asked)
        found = ways(problem)
        assert found, asked
        said = [tuple(step.text for step in way.steps) for way in found]
        assert len(set(said)) == len(said)
        for way in found:
            assert all(step.true for step in way.steps), asked
            last = way.steps[-1].equation.right
            assert not isinstance(last, Operation)
            assert Fraction(exact(last)) == solve(problem), (asked, way)
