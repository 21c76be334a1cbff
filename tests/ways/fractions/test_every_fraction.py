"""What holds of every way of every problem with fractions, judged by a reader of its own."""

import random
from fractions import Fraction

import pytest

from tests.counts import count
from tests.ways.exact_judge import value
from tests.ways.fractions.judge import faults
from waysaid.number import Language, parse
from waysaid.ways import effort_of, how_said, ways

MOST = 60


def _fraction(dice: random.Random, bottom: int | None = None) -> str:
    bottom = bottom or dice.randint(2, 12)
    top = dice.randint(1, bottom - 1) if dice.random() < 0.85 else dice.randint(bottom, 2 * bottom)
    whole = dice.randint(1, 9)
    if top < bottom and dice.random() < 0.4:
        return f"{whole} {top}/{bottom}"
    return f"{top}/{bottom}"


def _proper(dice: random.Random) -> str:
    bottom = dice.randint(2, 12)
    return f"{dice.randint(1, bottom - 1)}/{bottom}"


def _added(dice: random.Random) -> str:
    bottom = dice.randint(2, 12) if dice.random() < 0.4 else None
    one, other = _fraction(dice, bottom), _fraction(dice, bottom)
    if dice.random() < 0.15:
        one = str(dice.randint(1, 9))
    if value(one) < value(other):
        one, other = other, one
    total = value(f"{one} + {other}")
    forms = [f"{one} + {other}", f"{other} + {one}"]
    if value(one) > value(other):
        forms += [f"{one} - {other}", f"{other} + _ = {one}", f"_ + {other} = {one}"]
        forms += [f"{one} - _ = {other}"]
    if total.denominator == 1:
        forms += [f"{other} + _ = {total}"]
    return dice.choice(forms)


def _of(dice: random.Random) -> str:
    part, number = _proper(dice), dice.randint(1, 1000)
    if dice.random() < 0.7:
        number = int(part.split("/")[1]) * dice.randint(1, 80)
    forms = (f"{part} of {number}", f"{part} x {number}", f"{number} x {part}")
    return dice.choice(forms)


def _grouped(dice: random.Random) -> str:
    one, other, small = _fraction(dice), _proper(dice), dice.randint(2, 12)
    forms = (f"{one} x {other}", f"{other} of {one}", f"{one} / {other}", f"{one} / {small}",
             f"{small} / {other}", f"{small} x {one}", f"{other} x _ = {small}")  # fmt: skip
    return dice.choice(forms)


def _several(dice: random.Random) -> str:
    terms = [_fraction(dice) for _ in range(3)]
    return " + ".join(terms)


FORMS = {"added": _added, "of": _of, "grouped": _grouped, "several": _several}


@pytest.mark.parametrize("form", FORMS)
def test_every_way_is_true_traced_done_in_the_head_and_said_once(form):
    dice = random.Random(form)
    wrong = []
    for _ in range(count(test=600, sweep=40_000)):
        asked = FORMS[form](dice)
        problem = parse(asked)
        found = ways(problem)
        if not found:
            wrong.append(f"{asked}: no way")
            continue
        answer = Fraction(found[0].answer)
        texts = [tuple(step.text for step in way.steps) for way in found]
        if len(texts) > len(set(texts)):
            wrong.append(f"{asked}: said twice")
        for way, text in zip(found, texts, strict=True):
            wrong += [f"{asked}: {way.family} {way.variant} {text}: {one}"
                      for one in faults(asked, way, answer)]  # fmt: skip
            if effort_of(way).tenths <= 0:
                wrong.append(f"{asked}: {text} costs nothing")
    assert wrong == []


@pytest.mark.parametrize("form", ["added", "of", "grouped"])
def test_the_answer_is_what_plain_fractions_say(form):
    dice = random.Random(form)
    for _ in range(count(test=300, sweep=20_000)):
        asked = FORMS[form](dice)
        answer = Fraction(ways(parse(asked))[0].answer)
        if "_" not in asked:
            assert answer == value(asked), asked
        else:
            sides = [side.replace("_", f"({answer})") for side in asked.split(" = ")]
            assert value(sides[0]) == value(sides[1]), asked


@pytest.mark.parametrize("bottom", range(2, 13))
def test_every_pair_of_parts_to_twelfths_has_ways(bottom):
    for other in range(2, 13):
        for top in {1, bottom - 1}:
            for over in {1, other // 2, other - 1}:
                one, two = f"{top}/{bottom}", f"{over}/{other}"
                for sign in "+-x/":
                    assert ways(parse(f"{one} {sign} {two}")), (one, sign, two)


def test_every_way_can_be_said_in_both_languages():
    dice = random.Random(1)
    for form in FORMS.values():
        for _ in range(count(test=30, sweep=2_000)):
            for way in ways(parse(form(dice))):
                for language in Language:
                    assert how_said(way, language).endswith(".")
