"""What is known of a problem before a line is read: its numbers, its answer, its ways."""

from dataclasses import dataclass
from fractions import Fraction
from functools import lru_cache

from waysaid.number import (
    About,
    Blank,
    Claim,
    Compare,
    Equation,
    Exact,
    Expression,
    Image,
    NoValue,
    Number,
    Problem,
    exact,
    places_of,
    sides,
    solve,
    written,
)
from waysaid.ways import Way, ways


@dataclass(frozen=True, slots=True)
class Facts:
    """A problem's numbers in order, their place-value pieces, its answer, its ways best first.

    `asked` is what is to be worked out, where that is one expression: 398 x 21 of an estimate.
    `lefts` are the left sides of all steps of all ways: 2 + 20 + 4 is one of them where a child
    may add three hops up at once.
    """

    problem: Problem
    asked: Expression | None
    written: tuple[Number, ...]
    numbers: tuple[Exact, ...]
    pieces: frozenset[Exact]
    answer: Exact | None
    ways: tuple[Way, ...]
    lefts: frozenset[Expression]


@lru_cache(maxsize=32)
def facts_of(problem: Problem) -> Facts:
    """Return what is known of the problem."""
    leaves = [leaf for side in sides(problem) for leaf in written(side)]
    as_written = tuple(leaf for leaf in leaves if not isinstance(leaf, Blank))
    numbers = tuple(map(exact, as_written))
    try:
        answer = solve(problem)
    except NoValue:
        answer = None
    foreseen = ways(problem)
    lefts = frozenset(step.equation.left for way in foreseen for step in way.steps)
    pieces = frozenset(piece for number in numbers for piece in _pieces(number))
    return Facts(problem, _asked(problem), as_written, numbers, pieces, answer, foreseen, lefts)


def _asked(problem: Problem) -> Expression | None:
    if isinstance(problem, About):
        return problem.expression
    return None if isinstance(problem, Equation | Claim | Compare | Image) else problem


def _pieces(number: Exact) -> set[Exact]:
    """Return the number and what place value makes of it: 347 gives 300, 40, 7, 340 and 47.

    Of 1 1/4 that is 1 and 1/4; of 3.85 it is 3, 0.85, 0.8 and 0.05.
    """
    found: set[Exact] = {number}
    whole = int(number)
    for size in (10, 100, 1000, 10_000, 100_000):
        if size <= 10 * abs(whole):
            found |= {whole % size, whole - whole % size}
            found |= {whole // (size // 10) % 10 * (size // 10)}
    rest = exact(Fraction(number - whole))
    found |= {whole, rest}
    if rest and (places := places_of(rest)):
        for place in range(1, places + 1):
            cut = Fraction(int(rest * 10**place), 10**place)
            found |= {exact(cut), exact(rest - cut)}
            found.add(exact(Fraction(int(rest * 10**place) % 10, 10**place)))
    return found - {0}
