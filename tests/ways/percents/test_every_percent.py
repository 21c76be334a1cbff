"""What holds of every way to find so many per cent of a number, judged by a reader of its own."""

import random
from fractions import Fraction

import pytest

from tests.counts import count
from tests.ways.exact_judge import value
from tests.ways.fractions.judge import faults
from waysaid.number import Language, parse
from waysaid.ways import Family, effort_of, how_said, tenths_of, ways

FRIENDLY = (40, 60, 80, 120, 240)


def _asked(dice: random.Random) -> str:
    rate, number = dice.randint(1, 200), dice.randint(1, 1000)
    if dice.random() < 0.5:
        rate = dice.choice((1, 5, 10, 12.5, 15, 20, 25, 30, 35, 37.5, 40, 50, 60, 75, 90, 99, 150))
    if dice.random() < 0.6:
        number = dice.randint(1, 50) * dice.choice((2, 4, 5, 10, 20))
    forms = (f"{rate}% of {number}",) * 3 + (f"{rate}% x {number}", f"{number} x {rate}%")
    return dice.choice(forms)


def _wrong(asked: str) -> list[str]:
    found = ways(parse(asked))
    if not found:
        return [f"{asked}: no way"]
    texts = [tuple(step.text for step in way.steps) for way in found]
    wrong = [] if len(texts) == len(set(texts)) else [f"{asked}: said twice"]
    for way, text in zip(found, texts, strict=True):
        told = faults(asked, way, value(asked))
        wrong += [f"{asked}: {way.family} {way.variant} {text}: {one}" for one in told]
        if effort_of(way).tenths <= 0 or way.answer != value(asked):
            wrong.append(f"{asked}: {text} costs nothing, or has another answer")
    return wrong


def test_every_way_is_true_traced_done_in_the_head_and_said_once():
    dice = random.Random("percents")
    wrong = []
    for _ in range(count(test=800, sweep=40_000)):
        wrong += _wrong(_asked(dice))
    assert wrong == []


def test_every_whole_percent_to_two_hundred_has_a_way_by_blocks():
    dice = random.Random("blocks")
    for rate in range(1, 201):
        for number in (dice.randint(1, 1000) for _ in range(count(test=3, sweep=200))):
            found = {way.family for way in ways(parse(f"{rate}% of {number}"))}
            assert Family.BENCHMARK in found or rate == 100, (rate, number)


@pytest.mark.parametrize("number", FRIENDLY)
def test_the_landmarks_ask_least(number):
    """Half before a tenth, then those built of two blocks, of three, and of ones; our choice."""
    least = [
        min(tenths_of(way) for way in ways(parse(f"{rate}% of {number}")))
        for rate in (50, 10, 15, 35, 17)
    ]
    assert least == sorted(set(least)), least


FOUND = [
    ("15% of 60", "benchmark", ["60 / 10 = 6", "6 / 2 = 3", "6 + 3 = 9"]),
    ("35% of 80", "benchmark", ["80 / 4 = 20", "80 / 10 = 8", "20 + 8 = 28"]),
    ("75% of 160", "benchmark", ["160 / 2 = 80", "80 / 2 = 40", "80 + 40 = 120"]),
    ("25% of 36", "rename", ["25% = 1/4", "36 / 4 = 9"]),
    ("25% of 60", "rename", ["1/4 x 60 = 15"]),
    ("90% of 40", "benchmark", ["40 / 10 = 4", "40 - 4 = 36"]),
    ("99% of 300", "benchmark", ["300 / 100 = 3", "300 - 3 = 297"]),
    ("110% of 40", "benchmark", ["40 / 10 = 4", "40 + 4 = 44"]),
    ("150% of 60", "benchmark", ["60 / 2 = 30", "60 + 30 = 90"]),
    ("12.5% of 80", "benchmark", ["80 / 2 = 40", "40 / 2 = 20", "20 / 2 = 10"]),
    ("16% of 25", "rename", ["16% of 25 = 25% of 16", "25% of 16 = 4"]),
    ("17% of 300", "rename", ["3 x 17 = 51"]),
    ("15% of 80", "rename", ["15% = 0.15", "0.15 x 80 = 12"]),
    ("15% of 80", "double-halve", ["15% of 80 = 30% of 40", "30% of 40 = 12"]),
    ("37% of 999", "adjust", ["37% of 1000 = 370", "37% of 1 = 0.37", "370 - 0.37 = 369.63"]),
    ("200% of 45", "benchmark", ["45 + 45 = 90"]),
    ("7% of 300", "benchmark", ["300 / 100 = 3", "3 x 7 = 21"]),
    ("15% of _ = 9", "benchmark", ["9 / 3 = 3", "3 x 20 = 60"]),
    ("15% + 20%", "known-fact", ["15% + 20% = 35%"]),
]


@pytest.mark.parametrize(("asked", "family", "steps"), FOUND)
def test_a_way_a_class_may_bring_is_found(asked, family, steps):
    told = [(way.family.value, [step.text for step in way.steps]) for way in ways(parse(asked))]
    assert (family, steps) in told


def test_every_way_can_be_said_in_both_languages():
    dice = random.Random(2)
    for _ in range(count(test=60, sweep=2_000)):
        for way in ways(parse(_asked(dice))):
            for language in Language:
                assert how_said(way, language).endswith(".")


def test_the_answer_is_what_plain_fractions_say():
    assert Fraction(ways(parse("37.5% of 64"))[0].answer) == Fraction(24)
