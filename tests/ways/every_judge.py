"""A second evaluator of problems and ways of every kind, on Python's own fractions.

It shares no code with the engine: it reads problems, steps and answers as they are printed. Only
the numbers of a picture are counted from its text.
"""

import re
from collections.abc import Iterator
from dataclasses import dataclass
from fractions import Fraction
from functools import lru_cache
from itertools import combinations, permutations
from math import lcm
from operator import eq, gt, lt

from tests.ways import exact_judge
from tests.ways.exact_judge import value
from tests.ways.judge import explained
from tests.ways.judge_groups import explained_by_groups

FINDING = frozenset(
    {"think-add", "add-up", "known-fact", "counting", "think-times", "near-double"}
    | {"give-and-take", "shift-both", "double-halve", "scale-both", "partners"}
)
"""Families whose last step may have the answer within, as 7 + 6 = 13 has the 6."""
Exact = int | Fraction
"""A number; where it is whole it is kept as such, which is several times as fast."""

COUNTED = frozenset((0, 1, 2, 5, 10, 100, 1000))
LANDMARKS = frozenset(Fraction(one, 100) for one in (1, 5, 10, 20, 25, 50, 75, 100))
HALF = Fraction(1, 2)
LARGEST_UNIT = 10_000
LARGEST_BOTTOM = 12


@dataclass(frozen=True, slots=True)
class Heard:
    """A way as it is printed: its family, its steps and its answer, a remainder where it has one.

    The answer of a claim is `true` or `false`, of a comparison `<`, `=` or `>`.
    """

    family: str
    steps: tuple[str, ...]
    answer: str
    left_over: tuple[int, int] | None = None


@lru_cache(maxsize=1 << 12)
def numbers(printed: str) -> frozenset[Exact]:
    """Return every number of a printed problem, expression or equation."""
    return frozenset(map(_plain, exact_judge.numbers(printed)))


def _size(number: Exact) -> Exact:
    return -number if number < 0 else number


def _plain(number: Fraction) -> Exact:
    return number.numerator if number.denominator == 1 else number


def faults_of(problem: str, ways: list[Heard]) -> Iterator[str]:
    """Yield what is wrong with the ways of a problem."""
    if not ways:
        yield "no way"
    told = [way.steps for way in ways]
    if len(set(told)) < len(told):
        yield "a way is told twice"
    for way in ways:
        for fault in _faults(problem, way):
            yield f"{way.family} {'; '.join(way.steps)}: {fault}"


def _faults(problem: str, way: Heard) -> Iterator[str]:
    if not way.steps:
        yield "no steps"
        return
    for step in way.steps:
        if not holds(step):
            yield f"{step} is not true"
    yield from _wrong_answer(problem, way)
    yield from _from_nowhere(problem, way)


def _from_nowhere(problem: str, way: Heard) -> Iterator[str]:
    given = _given(problem)
    told = _Told(problem, set(given) | _how_many(problem), set(_digits(problem)))
    gone: Exact = 0
    for step in way.steps:
        strange = [one for one in _new(step) if not told.knows(one)]
        if strange:
            left = {_size(one - gone) for one in given | _multiples(problem)}
            strange = [one for one in strange if not told.explains(one, left, numbers(step))]
        if len(strange) > _free(problem, way, step):
            yield f"where do {', '.join(map(str, strange))} come from?"
        told.known |= {_size(number) for number in numbers(step)}
        told.digits |= _digits(step)
        gone += _gone(step)


def _how_many(problem: str) -> set[int]:
    """Return how many numbers are put together, three or more: 18 + 16 + 20 is near 3 x 20."""
    together = problem.count(" + ") + 1
    return {together} if together > 2 else set()


def _multiples(problem: str) -> frozenset[int]:
    """Return what of a number shared can be shared without rest: 441 of 444 / 9."""
    if not re.fullmatch(r"\d+ / \d+", problem):
        return frozenset()
    whole, part = map(int, problem.split(" / "))
    return frozenset({whole - whole % part})


@lru_cache(maxsize=1 << 12)
def _digits(printed: str) -> frozenset[int]:
    """Return the whole numbers written, the tops and bottoms among them."""
    found = () if printed.startswith("image ") else re.findall(r"\d+", printed)
    return frozenset(map(int, found))


@lru_cache(maxsize=1 << 12)
def holds(step: str) -> bool:
    """Tell whether both sides of a printed equation are worth the same."""
    left, right = step.split(" = ")
    return value(left) == value(right)


def _wrong_answer(problem: str, way: Heard) -> Iterator[str]:
    """Yield what is wrong with the answer of a way and with where it ends."""
    if problem.startswith("about "):
        last = value(way.steps[-1].split(" = ")[1])
        if value(way.answer) != last:
            yield f"{way.answer} is not what it comes to"
        if not _sensible(last, value(problem.removeprefix("about "))):
            yield f"{way.answer} is far off"
        return
    if not is_answer(problem, way.answer):
        yield f"{way.answer} is not the answer"
    elif problem.endswith("?") or " ? " in problem:
        return
    elif way.left_over is not None:
        if not _told_left_over(problem, way):
            yield "what is left over is not told"
    elif not _ends(way):
        yield "the last step does not give the answer"


def is_answer(problem: str, answer: str) -> bool:
    """Tell whether a printed answer is the one, by putting it to the test."""
    if problem.startswith("image "):
        return int(answer) == counted(problem)
    if problem.endswith(" ?"):
        return answer == ("true" if holds(problem.removesuffix(" ?")) else "false")
    if " ? " in problem:
        left, right = map(value, problem.split(" ? "))
        return {"<": lt, "=": eq, ">": gt}[answer](left, right)
    if "_" in problem:
        return holds(problem.replace("_", f"({answer})"))
    return value(problem) == value(answer)


def counted(problem: str) -> int:
    """Return how many dots a picture has, from its text."""
    head, _, rest = problem.partition(":")
    if head.endswith("array"):
        rows, columns = map(int, rest.split(" x "))
        return rows * columns
    if head.endswith("dots"):
        return len(rest.split())
    return sum(map(int, rest.split()))


def _sensible(estimate: Fraction, exact: Fraction) -> bool:
    """Tell whether an estimate is off by no more than half of the number, or than one."""
    return abs(estimate - exact) <= max(abs(exact) / 2, Fraction(1))


def _told_left_over(problem: str, way: Heard) -> bool:
    whole, part = map(int, problem.split(" / "))
    groups, left = way.left_over or (0, 0)
    said = {number for step in way.steps for number in numbers(step)}
    return (groups, left) == divmod(whole, part) and left > 0 and {groups, left} <= said


def _ends(way: Heard) -> bool:
    left, right = way.steps[-1].split(" = ")
    answer = value(way.answer)
    return value(right) == answer or (way.family in FINDING and answer in numbers(left))


def _given(problem: str) -> frozenset[Exact]:
    """Return the numbers of a problem; of a picture all the counts that may be seen in it."""
    if problem.startswith("image "):
        return frozenset(range(1, 2 * counted(problem) + 21))
    return frozenset(_size(number) for number in numbers(problem))


@lru_cache(maxsize=1 << 12)
def _new(step: str) -> frozenset[Exact]:
    """Return the numbers a step starts from and, where it opens one, those it comes to."""
    left, right = step.split(" = ")
    said = numbers(left)
    if len(numbers(right)) > 1 or len(said) == 1:
        said = said | numbers(right)
    return frozenset(_size(number) for number in said)


@lru_cache(maxsize=1 << 12)
def _gone(step: str) -> Exact:
    """Return how much of a number a step deals with."""
    left, right = step.split(" = ")
    for sign in (" + ", " - "):
        if sign in left:
            return _plain(value(left.rsplit(sign, 1)[1]))
    return _plain(value(right)) if " x " in left else 0


def _free(problem: str, way: Heard, step: str) -> int:
    """Return how many numbers of a step need no reason of their own.

    The last part of a number that is opened, or of two changed alike, follows from the rest; what
    is asked for may be tried: the answer in the last step.
    """
    left, right = step.split(" = ")
    if len(numbers(left)) == 1 or len(numbers(right)) > 1:
        return 1
    return int(way.family in FINDING and step == way.steps[-1])


class _Told:
    """What a listener knows so far: the numbers, and the digits they are written with."""

    def __init__(self, problem: str, known: set[Exact], digits: set[int]) -> None:
        self.known, self.digits = known, digits
        self.grouped = bool(re.search(r" x | / | of |image", problem))
        self.written = self.grouped or bool(re.search(r"\d/\d", problem))
        self.about = problem.startswith("about ")
        self.percents = "%" in problem
        self.pointed = "." in problem

    def knows(self, number: Exact) -> bool:
        """Tell whether a number was said before, or is what anybody counts by."""
        return (
            number in self.known
            or number in COUNTED
            or (self.percents and number in LANDMARKS)
            or (self.written and number in self.digits)
            or (self.written and number.numerator == 1 and number.denominator in self.digits)
        )

    def explains(self, number: Exact, left: set[Exact], with_it: frozenset[Exact]) -> bool:
        """Tell whether it is plain where a number comes from.

        `left` is what is still to do, `with_it` are the numbers of the same step.
        """
        known = self.known | left
        if number in known or (self.written and self._alike(number)):
            return True
        if self.about and any(_easier(number, one, with_it) for one in self.known):
            return True
        if number in {_size(one - other) for one, other in combinations(known, 2)}:
            return True
        if self.percents and _rate(number, known):
            return True
        if not self.percents and any(_of_parts(number, one) for one in known):
            return True
        if self.pointed and self.grouped and _too_many(number, known):
            return True
        return any(self._in_units(number, known, unit) for unit in self._units(known))

    def _alike(self, number: Exact) -> bool:
        """Tell whether parts of both sizes come out even in a number, or it is 25 of one."""
        if number.denominator > 1:
            return False
        pairs = combinations(self.digits - {0}, 2)
        return any(number == 25 * one for one in self.digits) or any(
            number == lcm(*two) for two in pairs
        )

    def _units(self, known: set[Exact]) -> set[int]:
        """Return in how many parts a whole is cut for the numbers to be counted in them."""
        if self.pointed:
            return {1, 10, 100, 1000}
        finest = lcm(*(one.denominator for one in known))
        return {1, finest} if finest <= LARGEST_UNIT else {1}

    def _in_units(self, number: Exact, known: set[Exact], unit: int) -> bool:
        """Tell whether a number is explained where the others are so many units.

        It may be so many units itself, 0.24 as 240 thousandths, or a number of groups.
        """
        even = [one for one in known if (one * unit).denominator == 1]
        others = {int(one * unit) for one in even} | {int(one % 1 * unit) for one in even}
        others |= {unit} if unit > 1 else set()
        others |= self.digits if self.grouped else set()
        counts = {int(one) for one in (number, number * unit) if one.denominator == 1}
        return any(
            explained(one, others)
            or (self.grouped and explained_by_groups(one, others, set(), sharing=True))
            for one in counts
        )


def _rate(number: Exact, known: set[Exact]) -> bool:
    """Tell whether a percent is explained by those that were said: its tens, its ones, a gap."""
    rates = {int(one * 100) for one in known if one < 5 and (one * 100).denominator == 1}
    many = number * 100
    return many.denominator == 1 and (many % 10 == 0 or explained(int(many), rates | {100}))


def _nearest(one: Exact, step: Fraction) -> Fraction:
    return (one / step + HALF) // 1 * step


def _easier(number: Exact, one: Exact, known: frozenset[Exact]) -> bool:
    """Tell whether a number is another rounded at one of its places, or to what shares out near."""
    places = (Fraction(10) ** place for place in range(-2, 6))
    if any(number == _nearest(one, place) for place in places):
        return True
    near = 5 * _size(number - one) <= 2 * one
    return near and any(by > 1 and by != number and number % by == 0 for by in known)


def _too_many(number: Exact, known: set[Exact]) -> bool:
    """Tell whether a number is what groups lack to a whole number of them: 0.02 of 1.7."""
    return any(
        number in (each * (-groups % 1), each * (groups % 1))
        for groups, each in permutations(known, 2)
    )


def _of_parts(number: Exact, one: Exact) -> bool:
    """Tell whether a number is a part of another, or what it lacks to a landmark.

    Its wholes or what is over them, some of its parts, its top or its bottom, what it lacks to a
    half or to a whole, the nearest half.
    """
    if one.denominator == 1 and number.denominator == 1:
        return False
    tops = {one.numerator, one.denominator, one % 1, one // 1, -(-one // 1)}
    lacks = {-one % 1, -one % HALF, one % HALF, _size(one - 1), _size(one - HALF)}
    if number in tops | lacks:
        return True
    if number < one and number.denominator == one.denominator <= LARGEST_BOTTOM:
        return True
    return number in (HALF, _nearest(one, HALF), Fraction(1, one.denominator))
