"""What holds of every way with decimals, as a listener hears it who knows no way-maker."""

import re
from concurrent.futures import ProcessPoolExecutor
from fractions import Fraction
from itertools import chain, pairwise

import pytest

from tests.counts import count
from tests.ways.decimals.asked import asked
from tests.ways.decimals.listener import faults, numbers, read, worth
from waysaid.number import Language, parse, solve
from waysaid.ways import effort_of, how_said, ways

BATCH = 250


def heard(problem: str) -> list[str]:
    """Return what is wrong with the ways of a problem."""
    found = ways(parse(problem))
    if not found:
        return [f"{problem}: no way"]
    told = [tuple(step.text for step in way.steps) for way in found]
    wrong = [f"{problem}: said twice: {steps}" for steps in set(told) if told.count(steps) > 1]
    given = list(chain.from_iterable(numbers(_side(side)) for side in problem.split(" = ")))
    answer = Fraction(solve(parse(problem)))
    for way, steps in zip(found, told, strict=True):
        if way.answer != answer:
            wrong.append(f"{problem}: {steps}: answer {way.answer}")
        name = f"{problem}: {way.family.value} {'; '.join(steps)}"
        wrong += [f"{name}: {fault}" for fault in faults(given, answer, way.family.value, steps)]
    efforts = [effort_of(way).tenths for way in found]
    if min(efforts) <= 0 or any(one > other for one, other in pairwise(efforts)):
        wrong.append(f"{problem}: efforts {efforts}")
    return wrong


def _side(side: str) -> list[Fraction | str]:
    return read(side.replace("_", "").strip())


def _batch(seed: int) -> list[str]:
    return list(chain.from_iterable(map(heard, asked(seed, BATCH))))


def test_every_way_with_decimals_is_true_ends_well_and_says_no_number_from_nowhere(sweep_note):
    seeds = range(max(1, count(test=500, sweep=20_000) // BATCH))
    with ProcessPoolExecutor(max_workers=2) as pool:
        wrong = list(chain.from_iterable(pool.map(_batch, seeds)))
    sweep_note("every way with decimals is true and traced", BATCH * len(seeds), len(wrong))
    assert wrong == []


@pytest.mark.parametrize("problem", asked(77, count(test=60, sweep=600)))
def test_a_telling_says_the_numbers_of_its_steps_as_they_are_written(problem):
    for way in ways(parse(problem)):
        for language in Language:
            told = how_said(way, language)
            assert told.endswith(".")
            assert not set("{}+=_") & set(told), told
            written = " ".join(step.text for step in way.steps)
            assert all(part in written for part in re.findall(r"\d+/\d+", told)), told
            said = set(re.findall(r"\d+(?:\.\d+)?", told))
            for step in way.steps:
                result = step.text.split(" = ")[1]
                if " " not in result and "/" not in result:
                    assert result.lstrip("-") in said, (told, step.text)


BAD = (
    (["3.8 + 0.2 = 4.1", "4.1 + 2.3 = 6.4"], "a false step"),
    (["3.8 + 0.2 = 4"], "no answer"),
    (["3.8 + 1.77 = 5.57", "5.57 + 0.83 = 6.4"], "a number from nowhere"),
    ([], "no steps"),
)


@pytest.mark.parametrize(("steps", "why"), BAD, ids=[why for _, why in BAD])
def test_the_listener_hears(steps, why):
    given = [Fraction("3.8"), Fraction("2.6")]
    assert list(faults(given, Fraction("6.4"), "bridge", steps)), why


def test_the_listener_works_out_what_is_printed():
    assert worth(read("5 + 1.2 + 0.05")) == Fraction("6.25")
    assert worth(read("1 2/4 - 0.5")) == 1
    assert worth(read("-0.7 + 0.2")) == Fraction("-0.5")
    assert worth(read("84 / 100")) == Fraction("0.84")
