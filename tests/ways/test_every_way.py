"""What holds of every way of every problem, judged by a reader that knows no way-maker."""

from concurrent.futures import ProcessPoolExecutor
from itertools import chain

import pytest

from tests.counts import count
from tests.ways.asked import asked
from tests.ways.judge import faults, faults_of
from waysaid.number import Equation, Operation, Sign, parse
from waysaid.ways import Family, Kind, Step, Way, step, ways

BATCH = 1000


def _batch(seed: int, many: int) -> tuple[int, list[str]]:
    problems = asked(seed, many)
    return len(problems), list(chain.from_iterable(map(faults, problems)))


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


def test_every_sum_and_difference_to_twenty_has_ways_and_none_is_faulty():
    for total in range(21):
        for left in range(total + 1):
            for problem in (f"{left} + {total - left}", f"{total} - {left}"):
                assert ways(parse(problem)), problem
                assert faults(problem) == []


def _way(family: Family, *steps: Step) -> Way:
    return Way(family, "bad", steps, 62)


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
