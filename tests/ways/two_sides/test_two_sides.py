"""Ways for true or false, for more or less of two workings, and for a blank among two sides."""

import re
from fractions import Fraction

import pytest
from hypothesis import assume, given, settings
from hypothesis import strategies as st

from tests.counts import count
from tests.ways.exact_judge import holds, number, value
from waysaid.number import Language, NoValue, Unreadable, Verdict, parse, solve
from waysaid.ways import effort_of, how_said, ways

small = st.integers(1, 99)
signs = st.sampled_from("+-x/")
pairs = st.builds(lambda one, sign, other: f"{one} {sign} {other}", small, signs, small)

FOUND = [
    ("29 + 14 = 30 + 13 ?", "give-and-take", ["29 + 1 = 30", "14 - 1 = 13"]),
    ("29 + 14 = 30 + 13 ?", "rename", ["29 + 14 = 43", "30 + 13 = 43"]),
    ("62 - 25 = 67 - 30 ?", "shift-both", ["62 + 5 = 67", "25 + 5 = 30"]),
    ("16 x 5 = 8 x 10 ?", "double-halve", ["16 / 2 = 8", "5 x 2 = 10"]),
    ("180 / 12 = 90 / 6 ?", "scale-both", ["180 / 2 = 90", "12 / 2 = 6"]),
    ("3 x 4 = 4 x 3 ?", "known-fact", ["3 x 4 = 4 x 3"]),
    ("8 + 4 = _ + 5", "give-and-take", ["4 + 1 = 5", "8 - 1 = 7"]),
    ("8 + 4 = _ + 5", "rename", ["8 + 4 = 12", "12 - 5 = 7"]),
    ("8 + 4 = _ + 5", "think-add", ["8 + 4 = 12", "5 + 7 = 12"]),
    ("3 + 4 + 5 = 3 + _", "partners", ["4 + 5 = 9"]),
    ("62 - 25 = _ - 30", "shift-both", ["25 + 5 = 30", "62 + 5 = 67"]),
    ("16 x 5 = _ x 10", "think-times", ["16 x 5 = 80", "10 x 8 = 80"]),
    ("3.8 + 2.6 = 4 + _", "give-and-take", ["3.8 + 0.2 = 4", "2.6 - 0.2 = 2.4"]),
]


@pytest.mark.parametrize(("line", "family", "steps"), FOUND)
def test_a_way_a_class_may_bring_is_found(line, family, steps):
    told = [(way.family.value, [step.text for step in way.steps]) for way in ways(parse(line))]
    assert (family, steps) in told


@settings(max_examples=count(test=400, sweep=20_000))
@given(pairs, pairs)
def test_every_way_to_judge_a_claim_is_true_and_ends_in_its_verdict(left, right):
    verdict = Verdict.TRUE if value(left) == value(right) else Verdict.FALSE
    found = ways(parse(f"{left} = {right} ?"))
    assert found
    for way in found:
        assert way.answer is verdict
        _sound(way)


@settings(max_examples=count(test=400, sweep=20_000))
@given(pairs, small, signs, st.booleans())
def test_every_way_to_a_blank_is_true_and_finds_it(whole, given_, sign, first):
    side = f"_ {sign} {given_}" if first else f"{given_} {sign} _"
    try:
        problem = parse(f"{whole} = {side}")
        answer = Fraction(solve(problem))
    except (Unreadable, NoValue):
        assume(False)
    assume(answer > 0)
    found = ways(problem)
    assert found
    for way in found:
        assert Fraction(way.number) == answer
        last = way.steps[-1].text
        numbers = re.split(r" (?:[-+x/]|=) ", last)
        assert answer in [number(one) for one in numbers]
        _sound(way)


def _sound(way):
    assert all(holds(step.text) for step in way.steps)
    assert effort_of(way).tenths > 0
    for language in Language:
        assert how_said(way, language)


def test_what_moves_across_leaves_something():
    for way in ways(parse("8 + 4 = 12 + 5 ?")):
        assert all(not step.text.endswith("= 0") for step in way.steps)
