"""Shift both: change both numbers alike, so that one is friendly; the difference stays."""

from collections.abc import Iterator
from itertools import pairwise

from waysaid.ways.place import friendly_above, up_to
from waysaid.ways.plan import MINUS, PLUS, Move, Moves, Plan, same
from waysaid.ways.shape import Difference
from waysaid.ways.step import Kind

MOST_DOWN = 5
"""How far both go down to a friendly part; our choice."""
MOST_FOR_WHOLE = 3
"""How far both go for the sake of the whole; our choice."""
FARTHEST = {10: 6, 100: 40, 1000: 100}
"""How far both go up to a ten, a hundred, a thousand: te-slides goes 3 from 857, then 40, then
100, and 33 at once from 367."""


def plans(problem: Difference) -> Iterator[Plan]:
    """Yield the ways with one change, and with one change after another."""
    whole, part = problem.whole, problem.part
    for change in _changes(whole, part):
        slug = f"{'up' if change > 0 else 'down'}-by-{abs(change)}"
        after = (whole + change, part + change)
        yield (
            slug,
            (
                _changed(whole, change),
                _changed(part, change),
                (Kind.TAKE, after[0], MINUS, after[1]),
            ),
        )
        yield f"{slug}-said-as-one", _chained((whole, part), after)
    steps = _ever_rounder(whole, part)
    for length in range(2, len(steps)):
        yield f"rounder-{length}-times", _chained(*steps[: length + 1])


def _changes(whole: int, part: int) -> tuple[int, ...]:
    """Return the changes worth making, each once, those for the part first."""
    found = dict.fromkeys(over for _, over in friendly_above(part))
    hundred = up_to(part, 100)
    if whole >= 100 and part >= 50 and 0 < hundred <= FARTHEST[100]:
        found[hundred] = None
    if part > 10 and 0 < part % 10 <= MOST_DOWN:
        found[-(part % 10)] = None
    if part % 10 and whole > 10:
        if 0 < up_to(whole, 10) <= MOST_FOR_WHOLE:
            found[up_to(whole, 10)] = None
        if 0 < whole % 10 <= MOST_FOR_WHOLE and part > whole % 10:
            found[-(whole % 10)] = None
        if whole % 100 == 0 and part > 1:
            found[-1] = None
    return tuple(found)


def _changed(number: int, change: int) -> Move:
    return (Kind.SHIFT, number, PLUS if change > 0 else MINUS, abs(change))


def _chained(*pairs: tuple[int, int]) -> Moves:
    """Return the differences said to be the same, one after another, then the last one taken."""
    told = tuple(same(before, after) for before, after in pairwise(pairs))
    whole, part = pairs[-1]
    return (*told, (Kind.TAKE, whole, MINUS, part))


def _ever_rounder(whole: int, part: int) -> list[tuple[int, int]]:
    """Return the pairs on the way to a part with one digit: 121 - 88, 123 - 90, 133 - 100."""
    pairs = [(whole, part)]
    unit = 10
    while unit in FARTHEST and unit <= min(2 * part, whole):
        change = up_to(pairs[-1][1], unit)
        if change > FARTHEST[unit]:
            break
        if change:
            pairs.append((pairs[-1][0] + change, pairs[-1][1] + change))
        unit *= 10
    return pairs
