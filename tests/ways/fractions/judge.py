"""A judge of ways with fractions and percents, on Python's own fractions and printed text alone.

It asks what anyone who listens would: is every step true, does the last one give the answer, could
a listener tell where each number comes from, and is no step too much to do in the head?
"""

import re
from collections.abc import Iterator
from fractions import Fraction
from itertools import combinations, product

from tests.ways.exact_judge import holds, number, value
from waysaid.ways import Family, Way

FINDING = {Family.ADD_UP, Family.THINK_ADD, Family.KNOWN_FACT, Family.COUNTING, Family.THINK_TIMES}
FINDING_TOO = {Family.NEAR_DOUBLE, Family.CHUNK_OUT}
_NUMBER = re.compile(r"(?:\d+ )?\d+/\d+(?!\d)|\d+(?:\.\d+)?%?")
_SIGN = re.compile(r" (\+|-|x|/|of) ")
LANDMARKS = {Fraction(1), Fraction(2), Fraction(1, 2), Fraction(10), Fraction(100)}
BLOCKS = {Fraction(one) for one in (3, 4, 5, 8, 20)}
"""How many times a well-known percent goes into a hundred, and the parts that it is."""
FILLED = {5, 10}
"""What a child fills up to: 4 more than the 1 that 9/9 is makes five."""
FOUR = 4
LARGEST = 12


def numbers(printed: str) -> list[str]:
    """The numbers of a line as they are printed, signs left out."""
    return [one for side in _sides(printed) for one in re.split(r" (?:\+|-|x|/|of) ", side)]


def _sides(printed: str) -> list[str]:
    return [side.replace("(", "").replace(")", "") for side in printed.split(" = ")]


def faults(problem: str, way: Way, answer: Fraction) -> Iterator[str]:
    """Yield what is wrong with one way of a problem."""
    if not way.steps:
        yield "no steps"
        return
    known = {abs(number(one)) for one in numbers(problem) if one != "_"}
    known |= BLOCKS if "%" in problem else set()
    for one in numbers(problem):
        known |= _within(one) if one != "_" else set()
    for step in way.steps:
        if not holds(step.text):
            yield f"{step.text} is not true"
        if too_much(step.text):
            yield f"{step.text} is too much in one go"
        finds = "_" in problem or way.family in FINDING
        yield from _strange(step.text, known, answer if finds else None)
        for one in numbers(step.text):
            known.add(abs(number(one)))
            known |= _within(one)
    if not _ends(way, answer):
        yield "the last step does not give the answer"


def _ends(way: Way, answer: Fraction) -> bool:
    left, right = way.steps[-1].text.split(" = ")
    if value(right) == answer:
        return True
    found = way.family in FINDING or way.family in FINDING_TOO
    return found and answer in [number(one) for one in numbers(left)]


def _within(printed: str) -> set[Fraction]:
    """What lies within a number: its wholes, its parts, its top, its bottom, one of its parts."""
    if "%" in printed:
        size = number(printed) * 100
        return {size}
    whole, _, part = printed.rpartition(" ")
    found = {Fraction(int(whole))} if whole else set()
    if "/" in part:
        top, bottom = (abs(int(one)) for one in part.split("/"))
        found |= {Fraction(top), Fraction(bottom), Fraction(top, bottom), Fraction(1, bottom)}
        tops = int(whole or 0) * bottom + top
        found |= {Fraction(tops), 1 - Fraction(top, bottom) % 1, Fraction(tops % bottom, bottom)}
    return found


def _strange(step: str, known: set[Fraction], asked: Fraction | None) -> Iterator[str]:
    """Yield a number of a step that a listener could not place; one may follow from the others."""
    left, right = _sides(step)
    told = numbers(left) + (numbers(right) if _SIGN.search(right) else [])
    strange = []
    seen = set(known)
    for one in told:
        size = abs(number(one))
        if size != asked and not _explained(size, seen):
            strange.append(one)
        seen |= {size} | _within(one)
    if len(strange) > int(bool(_SIGN.search(right))):
        yield f"{step}: where do {strange} come from?"


def _explained(size: Fraction, known: set[Fraction]) -> bool:
    if size in known or size in LANDMARKS:
        return True
    pairs = tuple(combinations(known, 2))
    if any(size in (one + other, abs(one - other)) for one, other in pairs):
        return True
    if any(size in (2 * one, one / 2, one * 10, one / 10) for one in known):
        return True
    if any(size in (-one % 1, one % 1, one // 1, abs(one - Fraction(1, 2))) for one in known):
        return True
    if size.denominator > 1:
        return any(
            size in (one * other, one / (other or 1)) for one, other in product(known, known)
        )
    return _counted(size, known)


def _counted(size: Fraction, known: set[Fraction]) -> bool:
    """Tell whether a whole number is a number of groups tried, a factor, or a round part of one."""
    wholes = {int(one) for one in known if one.denominator == 1 and one > 0}
    count = int(size)
    if any(count * one in wholes or count % one == 0 for one in wholes if one > 1):
        return True
    if any(one % count == 0 or one + count in FILLED for one in wholes):
        return True
    if any(_near(count, one) or _piece(count, one) for one in wholes):
        return True
    return any((count - 1) * one <= other for one in wholes for other in wholes if one > 1)


def _near(count: int, whole: int) -> bool:
    """Tell whether a number is friendly and near another: 60 for 57, 300 for 285."""
    return any(count % unit == 0 and abs(count - whole) < unit // 2 + 5 for unit in (10, 100, 1000))


def _piece(count: int, whole: int) -> bool:
    """Tell whether a number is a place-value piece of another: 400 of 480."""
    return any(count == whole // unit % 10 * unit for unit in (1, 10, 100, 1000))


def too_much(step: str) -> bool:
    """Tell whether unlike parts are put together, or long numbers multiplied, in one go."""
    left, right = step.split(" = ")
    found = _SIGN.findall(left)
    if _SIGN.search(right) or not found:
        return False
    told = [number(one) for one in numbers(left)]
    if set(found) <= {"+", "-"}:
        parted = [one for one in numbers(left) if "/" in one and number(one).denominator > 1]
        written = [int(one.split("/")[1]) for one in parted]
        lowest = [one.denominator for one in told if one.denominator > 1]
        if len(written) != 2 or len(told) > 2:
            return False
        return _unlike(*sorted(written)) and (len(lowest) < 2 or _unlike(*sorted(lowest)))
    digits = sorted(len(str(abs(one.numerator)).rstrip("0")) for one in told)
    return found == ["x"] and digits[0] > 2


def _unlike(small: int, large: int) -> bool:
    return bool(large % small) or large // small > FOUR
