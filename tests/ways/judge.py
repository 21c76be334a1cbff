"""An independent judge of ways: it reads their equations and knows nothing of how they are made.

It asks of each way what anyone who listens would: is every step true, does the last one give the
answer, and could a listener tell where each number comes from?
"""

from collections.abc import Iterator, Sequence
from itertools import combinations, pairwise

from tests.ways.judge_groups import (
    explained_by_groups,
    grouped,
    long_product,
    taken,
    tells_what_is_left,
    too_much,
)
from waysaid.number import Equation, Operation, Problem, Sign, exact, leaves, parse, solve
from waysaid.ways import Family, Kind, Step, Way, effort_of, ways

COUNTED = (1, 2, 5, 10, 100)
"""What anybody counts by, and the fives that fingers show."""
FINDING = {
    Family.THINK_ADD,
    Family.ADD_UP,
    Family.KNOWN_FACT,
    Family.COUNTING,
    Family.THINK_TIMES,
}
"""Families whose last step may have the answer within, as 7 + 6 = 13 has the 6."""


def faults(asked: str) -> list[str]:
    """Return what is wrong with the ways of a problem, each with the way it is wrong with."""
    problem = parse(asked)
    found = ways(problem)
    texts = [" ; ".join(step.text for step in way.steps) for way in found]
    wrong = [f"{asked}: said twice: {text}" for text in texts if texts.count(text) > 1]
    if not in_order([effort_of(way).tenths for way in found]):
        wrong.append(f"{asked}: not the least effort first")
    for way, text in zip(found, texts, strict=True):
        wrong += [f"{asked}: {way.family} {text}: {fault}" for fault in faults_of(problem, way)]
    return wrong


def faults_of(problem: Problem, way: Way) -> Iterator[str]:
    """Yield what is wrong with one way: no steps, a false one, no answer, a number from nowhere."""
    if not way.steps:
        yield "no steps"
        return
    for step in way.steps:
        if step.true is not True:
            yield f"{step.text} is not true"
        if too_much(step, long_product(problem)):
            yield f"{step.text} is too much in one go"
    ends = _ends_well(way) if way.remainder is None else tells_what_is_left(problem, way)
    if way.answer != solve(problem) or not ends:
        yield "the last step does not give the answer"
    given = _numbers(problem)
    known, gone = set(given), 0
    groups, sharing = grouped(problem), way.answer < max(given)
    for step in way.steps:
        left = {abs(number - gone) for number in given}
        strange = [one for one in _new(step) if not explained(one, known | left)]
        if groups:
            strange = [one for one in strange if not explained_by_groups(one, known, left, sharing)]
        if len(strange) > _free(step, problem, way):
            yield f"where do {strange} come from?"
        known |= {abs(leaf) for leaf in _numbers(step.equation)}
        gone += taken(step) if groups else _hop(step)


def _free(step: Step, problem: Problem, way: Way) -> int:
    """Return how many numbers of a step need no reason of their own.

    The last part of a number that is opened follows from the others; of two numbers shifted
    alike, one follows; a blank may be filled with the answer; terms may be counted.
    """
    whole = step.equation.left
    if not isinstance(step.equation.right, int):
        return 1
    if isinstance(whole, Operation) and whole.sign is Sign.TIMES and not grouped(problem):
        return int(not isinstance(problem, Equation) and whole.left == len([*leaves(problem)]))
    return int(isinstance(problem, Equation) and way.steps == (step,))


def _hop(step: Step) -> int:
    """Return how far a step goes on or back."""
    whole = step.equation.left
    if step.kind is Kind.JUMP and isinstance(whole, Operation) and isinstance(whole.right, int):
        return whole.right
    return 0


def _ends_well(way: Way) -> bool:
    last = way.steps[-1].equation
    if not isinstance(last.right, Operation) and exact(last.right) == way.answer:
        return True
    return way.family in FINDING and way.answer in tuple(leaves(last.left))


def _numbers(problem: Problem) -> set[int]:
    if isinstance(problem, Equation):
        return _numbers(problem.left) | _numbers(problem.right)
    return {leaf for leaf in leaves(problem) if isinstance(leaf, int)}


def _new(step: Step) -> set[int]:
    """Return the numbers a step starts from and, where it opens or shifts, those it comes to."""
    right = step.equation.right
    said = _numbers(step.equation.left) | (set() if isinstance(right, int) else _numbers(right))
    return {abs(number) for number in said}


def explained(number: int, known: set[int]) -> bool:
    """Tell whether a listener who knows some numbers could tell where another comes from.

    It is one of them, or what they count by, a part of one or of how far two are apart, the gap
    from one to a friendly number, a friendly neighbour, the middle of two, the double of one.
    """
    if number in known or number in COUNTED or _explained_in_units(number, known):
        return True
    pairs = tuple(combinations(known, 2))
    apart = {abs(one - other) for one, other in pairs}
    return (
        any(_part(number, whole) for whole in known | apart)
        or any(_opened(number, whole) for whole in known)
        or any(_gap(number, one) or _neighbour(number, one) for one in known)
        or any(2 * number == one + other for one, other in pairs)
        or any(2 * one == number for one in known)
        or _lands(number, known)
        or _mends(number, known)
    )


def _explained_in_units(number: int, known: set[int]) -> bool:
    """Tell whether a round number is explained as so many hundreds, thousands and so on."""
    for unit in (100, 1000, 10_000, 100_000):
        if number and number % unit == 0:
            some = {one // unit for one in known if one % unit == 0}
            if explained(number // unit, some):
                return True
    return False


def _part(number: int, whole: int) -> bool:
    """Tell whether a number is a run of another's digits in their places, or its first digits."""
    for low in (1, 10, 100, 1000, 10_000, 100_000):
        if number * low == whole or number in (whole % (10 * low), whole - whole % low):
            return True
        if number == whole % (10 * low) - whole % low:
            return True
    return False


def _opened(number: int, whole: int) -> bool:
    """Tell whether a number is a column of another after a trade: 42 is 30 and 12."""
    for low in (1, 10, 100, 1000, 10_000):
        column = whole // low % 10
        if number < whole and number in (
            (column + 10) * low,
            (column - 1) * low,
            (column + 9) * low,
            whole - (column + 10) * low,
        ):
            return True
    return False


def _gap(number: int, one: int) -> bool:
    """Tell whether a number is what another lacks to a ten, a hundred, a thousand or five."""
    return number in (-one % 10, -one % 100, -one % 1000, 5 - one)


def _neighbour(number: int, one: int) -> bool:
    """Tell whether a number is friendly and near by, or all nines just below a hundred."""
    if number + 1 == one and one % 100 == 0:
        return True
    apart = abs(number - one)
    for unit, reach in ((5, 2), (10, 9), (25, 4), (50, 13), (100, 40), (1000, 100)):
        if number % unit == 0 and apart <= reach:
            return True
    return False


def _lands(number: int, known: set[int]) -> bool:
    """Tell whether a number is near one and lands on a friendly number from another.

    37 + 23 instead of 37 + 25, 584 - 184 instead of 584 - 176. Or that it is a round number that
    lands just past one: 61 + 40 on the way to 99.
    """
    if number % 10 == 0 and any(
        0 < one + number - other <= 3 for one in known for other in known if one != other
    ):
        return True
    for unit in (10, 100):
        near = any(abs(number - one) < unit // 2 + (unit == 10) * 5 for one in known)
        if near and any((one + number) % unit == 0 or (one - number) % unit == 0 for one in known):
            return True
    return False


def _mends(number: int, known: set[int]) -> bool:
    """Tell whether a number is small changes in one: 3 and 2 for 47 and 38, 1 each for 19s."""
    friendly = [one for one in known if one % 10 == 0 or one % 25 == 0]
    small = {abs(one - other) for one in friendly for other in known if abs(one - other) <= 25}
    if any(number in (3 * one, 4 * one) for one in small):
        return True
    return any(number in (one + other, abs(one - other)) for one in small for other in small)


def in_order(found: Sequence[int]) -> bool:
    """Tell whether numbers never go down."""
    return all(one <= other for one, other in pairwise(found))
