"""What is known of a problem before a line is read: its numbers, its answer, its ways."""

from dataclasses import dataclass
from functools import lru_cache

from waysaid.number import (
    Blank,
    Exact,
    Expression,
    NoValue,
    Problem,
    leaves,
    sides,
    solve,
)
from waysaid.ways import Way, ways


@dataclass(frozen=True, slots=True)
class Facts:
    """A problem's numbers in order, their place-value pieces, its answer, its ways best first.

    `lefts` are the left sides of all steps of all ways: 2 + 20 + 4 is one of them where a child
    may add three hops up at once.
    """

    problem: Problem
    numbers: tuple[Exact, ...]
    pieces: frozenset[Exact]
    answer: Exact | None
    ways: tuple[Way, ...]
    lefts: frozenset[Expression]


@lru_cache(maxsize=32)
def facts_of(problem: Problem) -> Facts:
    """Return what is known of the problem."""
    found = [leaf for side in sides(problem) for leaf in leaves(side)]
    numbers = tuple(leaf for leaf in found if not isinstance(leaf, Blank))
    try:
        answer = solve(problem)
    except NoValue:
        answer = None
    foreseen = ways(problem)
    lefts = frozenset(step.equation.left for way in foreseen for step in way.steps)
    pieces = frozenset(piece for number in numbers for piece in _pieces(number))
    return Facts(problem, numbers, pieces, answer, foreseen, lefts)


def _pieces(number: Exact) -> set[Exact]:
    """Return the number and what place value makes of it: 347 gives 300, 40, 7, 340 and 47."""
    found: set[Exact] = {number}
    if isinstance(number, int):
        for size in (10, 100, 1000):
            found |= {number % size, number - number % size}
            found |= {number // (size // 10) % 10 * (size // 10)}
    return found - {0}
