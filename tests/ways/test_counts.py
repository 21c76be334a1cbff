"""The counts of ways, kept as text, and a slow enumerator that must find the same ways."""

from concurrent.futures import ProcessPoolExecutor
from pathlib import Path

from tests.counts import count
from tests.ways.counted import line, problems
from tests.ways.slow_groups import break_ups, one_group_off, two_factors
from tests.ways.slow_ways import adjusts, bridges, jumps, splits
from tests.ways.telling import told
from waysaid.number import parse
from waysaid.ways import Family, ways

COUNTS = Path(__file__).resolve().parents[1] / "counts" / "ways.counts"


def test_the_counts_are_those_in_the_file():
    assert COUNTS.read_text().splitlines() == [line(problem) for problem in problems()]


def _differs(problem: str, family: Family, slow: set[str]) -> list[str]:
    """Return what only one of the two lists has; a family listed before may have its steps."""
    every = {"; ".join(step.text for step in way.steps) for way in ways(parse(problem))}
    return [f"{problem}: {family}: {one}" for one in (set(told(problem, family)) - slow)] + [
        f"{problem}: {family} lacks {one}" for one in slow - every
    ]


def _sums_from(left: int) -> list[str]:
    wrong: list[str] = []
    for right in range(1, 100):
        problem = f"{left} + {right}"
        wrong += _differs(problem, Family.JUMP, jumps(left, "+", right))
        wrong += _differs(problem, Family.BRIDGE, bridges(left, right))
        wrong += _differs(problem, Family.ADJUST, adjusts(left, right))
        if min(left, right) > 10 and left % 10 and right % 10:
            wrong += _lacks_splits(f"{left} + {right}", splits(left, "+", right))
    return wrong


def _differences_from(whole: int) -> list[str]:
    wrong: list[str] = []
    for part in range(1, whole):
        problem = f"{whole} - {part}"
        wrong += _differs(problem, Family.JUMP, jumps(whole, "-", part))
        apart = whole // 10 > part // 10 and whole % 10 != part % 10
        if apart and part > 10 and whole % 10 and part % 10:
            wrong += _lacks_splits(problem, splits(whole, "-", part))
    return wrong


def _lacks_splits(problem: str, slow: set[str]) -> list[str]:
    every = {"; ".join(step.text for step in way.steps) for way in ways(parse(problem))}
    return [f"{problem} lacks {one}" for one in slow - every]


def test_a_slow_enumerator_finds_the_same_jumps_bridges_splits_and_adjustments(sweep_note):
    starts = range(1, 100, 99 // count(test=11, sweep=99))
    with ProcessPoolExecutor(max_workers=2) as pool:
        wrong = [
            one
            for judged in (_sums_from, _differences_from)
            for found in pool.map(judged, starts)
            for one in found
        ]
    sweep_note(
        "the ways of four families below 100 are those a slow enumerator finds",
        sum(99 + start - 1 for start in starts),
        len(wrong),
    )
    assert wrong == []


def _products_of(left: int) -> list[str]:
    wrong: list[str] = []
    for right in range(2, 100):
        problem = f"{left} x {right}"
        every = {"; ".join(step.text for step in way.steps) for way in ways(parse(problem))}
        cut = {one for one in told(problem, Family.BREAK_UP) if " / " not in one}
        off = {one for one in told(problem, Family.NEAR_FACT) if _one_group(one, left, right)}
        steps = {
            one
            for one in told(problem, Family.FACTOR_STEPS)
            if one.count(";") == 1 and " + " not in one
        }
        for slow, found in (
            (break_ups(left, right), cut),
            (one_group_off(left, right), off),
            (two_factors(left, right), steps),
        ):
            wrong += [f"{problem}: {one}" for one in found - slow]
            wrong += [f"{problem} lacks {one}" for one in slow - every]
    return wrong


def _one_group(said: str, left: int, right: int) -> bool:
    """Tell whether a near fact starts from a product with one group more or fewer."""
    one, _, other = said.partition(" = ")[0].partition(" x ")
    return abs(int(one) - left) + abs(int(other) - right) == 1


def test_a_slow_enumerator_finds_the_same_break_ups_near_facts_and_factor_steps(sweep_note):
    starts = range(2, 100, 98 // count(test=14, sweep=98))
    with ProcessPoolExecutor(max_workers=2) as pool:
        wrong = [one for found in pool.map(_products_of, starts) for one in found]
    sweep_note(
        "the ways of three families to multiply below 100 are those a slow enumerator finds",
        98 * len(starts),
        len(wrong),
    )
    assert wrong == []
