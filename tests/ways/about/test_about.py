"""Ways to estimate."""

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from tests.counts import count
from tests.ways.exact_judge import holds, value
from waysaid.number import Language, answer_of, parse
from waysaid.ways import effort_of, how_said, ways

FOUND = [
    ("about 398 x 21", "adjust", ["400 x 20 = 8000"]),
    ("about 398 x 21", "adjust", ["400 x 21 = 8400"]),
    ("about 398 x 21", "adjust", ["400 x 20 = 8000", "400 x 1 = 400", "8000 + 400 = 8400"]),
    ("about 7/8 + 12/13", "benchmark", ["1 + 1 = 2"]),
    ("about 1234 / 6", "adjust", ["1200 / 6 = 200"]),
    ("about 19% of 52", "benchmark", ["20% of 50 = 10"]),
]


@pytest.mark.parametrize(("line", "family", "steps"), FOUND)
def test_a_way_a_class_may_bring_is_found(line, family, steps):
    told = [(way.family.value, [step.text for step in way.steps]) for way in ways(parse(line))]
    assert (family, steps) in told


@settings(max_examples=count(test=400, sweep=20_000))
@given(st.integers(2, 9999), st.sampled_from("+-x/"), st.integers(2, 999))
def test_every_estimate_is_worked_truly_and_lies_in_the_range(left, sign, right):
    problem = parse(f"about {left} {sign} {right}")
    span = answer_of(problem)
    found = ways(problem)
    assert found
    for way in found:
        assert span.low <= way.answer <= span.high
        assert value(way.steps[-1].text.split(" = ")[1]) == way.answer
        assert all(holds(step.text) for step in way.steps)
        assert effort_of(way).tenths > 0
        for language in Language:
            assert how_said(way, language)
