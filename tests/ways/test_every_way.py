"""What holds of every way of every problem, judged by a reader that knows no way-maker."""

from concurrent.futures import ProcessPoolExecutor
from dataclasses import replace
from itertools import chain

import pytest

from tests.counts import count
from tests.ways.asked import asked, asked_in_groups
from tests.ways.judge import faults, faults_of
from waysaid.number import Equation, Operation, Remainder, Sign, parse, solve
from waysaid.ways import Family, Kind, Step, Way, step, ways

BATCH = 1000


def _batch(seed: int, many: int) -> tuple[int, list[str]]:
    problems = asked(seed, many)
    return len(problems), list(chain.from_iterable(map(faults, problems)))


def _batch_in_groups(seed: int, many: int) -> tuple[int, list[str]]:
    problems = asked_in_groups(seed, many)
    none = [f"{problem}: no way" for problem in problems if not ways(parse(problem))]
    return len(problems), none + list(chain.from_iterable(map(faults, problems)))


def test_every_way_is_true_and_its_numbers_can_be_traced_and_no_two_are_alike(sweep_note):
    many = count(test=20_000, sweep=1_000_000)
    sizes = [BATCH] * (many // BATCH) or [many]
    with ProcessPoolExecutor(max_workers=2) as pool:
        judged = list(pool.map(_batch, range(len(sizes)), sizes))
    wrong = list(chain.from_iterable(found for _, found in judged))
    sweep_note(
        "every way is true, gives the answer, says no number from nowhere, and is said once",
        sum(tried for tried, _ in judged),
        len(wrong),
    )
    assert wrong == []


def test_every_way_to_multiply_or_divide_is_true_traced_and_done_in_the_head(sweep_note):
    many = count(test=8_000, sweep=400_000)
    sizes = [BATCH] * (many // BATCH) or [many]
    with ProcessPoolExecutor(max_workers=2) as pool:
        judged = list(pool.map(_batch_in_groups, range(len(sizes)), sizes))
    wrong = list(chain.from_iterable(found for _, found in judged))
    sweep_note(
        "every way to multiply or divide is true, gives the answer, and no step is too much",
        sum(tried for tried, _ in judged),
        len(wrong),
    )
    assert wrong == []


def test_every_product_and_quotient_of_the_tables_has_ways_and_none_is_faulty():
    for left in range(13):
        for right in range(1, 13):
            for problem in (f"{left} x {right}", f"{left * right} / {right}"):
                assert ways(parse(problem)), problem
                assert faults(problem) == []


def test_every_sum_and_difference_to_twenty_has_ways_and_none_is_faulty():
    for total in range(21):
        for left in range(total + 1):
            for problem in (f"{left} + {total - left}", f"{total} - {left}"):
                assert ways(parse(problem)), problem
                assert faults(problem) == []


def _way(family: Family, *steps: Step) -> Way:
    return Way(family, "bad", steps, 62)


BAD_GROUPS = {
    "a step that is too much": (
        "47 x 89",
        _way(
            Family.BREAK_UP,
            step(Kind.GROUP, 47, Sign.TIMES, 89),
        ),
    ),
    "groups from nowhere": (
        "96 / 6",
        _way(
            Family.CHUNK_OUT,
            step(Kind.GROUP, 7, Sign.TIMES, 6),
            step(Kind.GROUP, 9, Sign.TIMES, 6),
            step(Kind.GATHER, 7, Sign.PLUS, 9),
        ),
    ),
    "parts from nowhere": (
        "47 x 6",
        _way(
            Family.BREAK_UP,
            step(Kind.GROUP, 31, Sign.TIMES, 6),
            step(Kind.GROUP, 16, Sign.TIMES, 6),
            step(Kind.JOIN, 186, Sign.PLUS, 96),
        ),
    ),
    "a remainder that is not said": (
        "16 / 3",
        Way(Family.BREAK_UP, "bad", (step(Kind.GROUP, 15, Sign.OVER, 3),), 0, Remainder(5, 1)),
    ),
    "a remainder that is wrong": (
        "16 / 3",
        Way(
            Family.THINK_TIMES,
            "bad",
            (step(Kind.RECALL, 3, Sign.TIMES, 4), step(Kind.TAKE, 16, Sign.MINUS, 12)),
            0,
            Remainder(4, 4),
        ),
    ),
    "a count of groups that is no answer": (
        "96 / 6",
        _way(
            Family.CHUNK_OUT,
            step(Kind.GROUP, 10, Sign.TIMES, 6),
        ),
    ),
}


@pytest.mark.parametrize(("problem", "bad"), BAD_GROUPS.values(), ids=BAD_GROUPS.keys())
def test_the_judge_finds_in_products_and_quotients(problem, bad):
    told = replace(bad, answer=solve(parse(problem)))
    assert list(faults_of(parse(problem), told))


BAD = {
    "a false step": _way(
        Family.BRIDGE,
        Step(Kind.JUMP, Equation(Operation(Sign.PLUS, 37, 3), 41)),
        step(Kind.JUMP, 40, Sign.PLUS, 22),
    ),
    "an end that is not the answer": _way(Family.BRIDGE, step(Kind.JUMP, 37, Sign.PLUS, 3)),
    "a number from nowhere": _way(
        Family.SPLIT, step(Kind.JOIN, 37, Sign.PLUS, 11), step(Kind.JOIN, 48, Sign.PLUS, 14)
    ),
    "no steps": _way(Family.KNOWN_FACT),
}


@pytest.mark.parametrize("bad", BAD.values(), ids=BAD.keys())
def test_the_judge_finds(bad):
    assert list(faults_of(parse("37 + 25"), bad))
