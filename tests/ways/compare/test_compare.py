"""Ways to tell which of two numbers is larger."""

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from tests.counts import count
from tests.ways.exact_judge import holds, number
from waysaid.number import Language, Order, parse
from waysaid.ways import effort_of, how_said, ways

decimals = st.builds(
    lambda n, size: f"{n // 10**size}.{n % 10**size:0{size}}",
    st.integers(1, 3000),
    st.integers(1, 3),
)
fractions = st.builds(lambda top, bottom: f"{top}/{bottom}", st.integers(1, 24), st.integers(2, 12))
percents = st.integers(1, 150).map("{}%".format)
wholes = st.integers(0, 9999).map(str)
numbers = st.one_of(decimals, fractions, percents, wholes)

FOUND = [
    ("3/4 ? 5/8", "rename", ["3/4 = 6/8"]),
    ("3/4 ? 5/8", "benchmark", ["1 - 3/4 = 1/4", "1 - 5/8 = 3/8"]),
    ("3/4 ? 5/8", "rename", ["3/4 = 0.75", "5/8 = 0.625"]),
    ("2/3 ? 6/10", "scale-both", ["2/3 = 6/9"]),
    ("3/7 ? 5/9", "benchmark", ["7 / 2 = 3 1/2", "9 / 2 = 4 1/2"]),
    ("0.65 ? 0.7", "rename", ["0.7 = 0.70"]),
    ("0.65 ? 0.7", "scale-both", ["0.65 x 100 = 65", "0.7 x 100 = 70"]),
    ("0.65 ? 0.7", "split", ["0.65 = 0.6 + 0.05"]),
    ("5/8 ? 3/8", "add-up", ["3/8 + 2/8 = 5/8"]),
    ("30% ? 1/3", "rename", ["30% = 9/30", "1/3 = 10/30"]),
    ("12/13 ? 9/10", "benchmark", ["1 - 12/13 = 1/13", "1 - 9/10 = 1/10"]),
    ("305 ? 350", "split", ["305 = 300 + 5", "350 = 300 + 50"]),
]


@pytest.mark.parametrize(("line", "family", "steps"), FOUND)
def test_a_way_a_class_may_bring_is_found(line, family, steps):
    told = [(way.family.value, [step.text for step in way.steps]) for way in ways(parse(line))]
    assert (family, steps) in told


@settings(max_examples=count(test=400, sweep=20_000))
@given(numbers, numbers)
def test_every_way_is_true_and_says_what_plain_fractions_say(left, right):
    found = ways(parse(f"{left} ? {right}"))
    gap = number(left) - number(right)
    order = Order.SAME if not gap else Order.MORE if gap > 0 else Order.LESS
    texts = [tuple(step.text for step in way.steps) for way in found]
    assert len(texts) == len(set(texts))
    for way in found:
        assert way.answer is order
        assert all(holds(step.text) for step in way.steps)
        assert effort_of(way).tenths > 0
        for language in Language:
            assert how_said(way, language)


@settings(max_examples=count(test=400, sweep=20_000))
@given(numbers, numbers)
def test_there_is_a_way_for_two_numbers_that_differ(left, right):
    if number(left) != number(right):
        assert ways(parse(f"{left} ? {right}"))


def test_the_landmark_is_never_on_the_far_side():
    for way in ways(parse("1 1/4 ? 6/5")):
        assert all(" - 2/4" not in step.text for step in way.steps)
