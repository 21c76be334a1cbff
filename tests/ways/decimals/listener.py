"""A listener to ways with decimals: reads their printed steps, and shares no code with the engine.

It works on Python's fractions alone. Of each way it asks: is every step true, does the last give
the answer, and could a listener tell where each number comes from?
"""

import re
from collections.abc import Iterator, Sequence
from fractions import Fraction

NUMBER = re.compile(r"(-?)(?:(\d+) )?(\d+(?:\.\d+|/\d+)?)")
SCALES = tuple(map(Fraction, (*range(2, 13), 100, 1000, 10_000, 100_000, 10**6)))
FINDING = {"add-up", "think-add", "think-times", "known-fact", "counting"}
"""Families whose last step may have the answer within, as 0.7 + 0.5 = 1.2 has the 0.5."""
COUNTED = (Fraction(0), Fraction(1, 5), Fraction(1, 2), Fraction(1), Fraction(2), Fraction(5))
"""What anybody counts by, with the tens that `_power_of_ten` knows."""

Side = list[Fraction | str]


def read(side: str) -> Side:
    """Return the numbers and signs of one side of a step: `1 2/4 + 0.5` is three of them."""
    found: Side = []
    place = 0
    while place < len(side):
        match = NUMBER.match(side, place)
        if match and (match[1] == "" or not found or isinstance(found[-1], str)):
            minus, whole, part = match.groups()
            if whole is not None and "/" not in part:
                raise ValueError(side)
            value = Fraction(part) + int(whole or 0)
            found.append(-value if minus else value)
            place = match.end()
        else:
            found.append(side[place])
            place += 1
        while place < len(side) and side[place] == " ":
            place += 1
    return found


def worth(side: Side) -> Fraction:
    """Return what a side comes to, from left to right; no side of a step mixes + with x."""
    total = side[0]
    assert isinstance(total, Fraction)
    for sign, number in zip(side[1::2], side[2::2], strict=True):
        assert isinstance(number, Fraction)
        if sign == "+":
            total += number
        elif sign == "-":
            total -= number
        elif sign == "x":
            total *= number
        else:
            assert sign == "/"
            total /= number
    return total


def numbers(side: Side) -> list[Fraction]:
    """Return the numbers of a side."""
    return [part for part in side if isinstance(part, Fraction)]


def faults(
    given: Sequence[Fraction], answer: Fraction, family: str, steps: Sequence[str]
) -> Iterator[str]:
    """Yield what is wrong with one way."""
    if not steps:
        yield "no steps"
        return
    known = {abs(number) for number in given}
    gone = Fraction(0)
    for text in steps:
        left, right = (read(side) for side in text.split(" = "))
        if worth(left) != worth(right):
            yield f"{text} is not true"
        waiting = {abs(number - gone) for number in given}
        strange = _strange(left, right, known | waiting)
        asked = family in FINDING and len(steps) == 1 and strange == {answer}
        if len(strange) > (1 if len(right) > 1 else 0) and not asked:
            yield f"{text}: where do {[*map(str, strange)]} come from?"
        known |= {abs(one) for one in [*numbers(left), *numbers(right)]}
        if len(left) == 3 and left[1] in ("+", "-"):
            gone += numbers(left)[1]
    last = [*map(read, steps[-1].split(" = "))]
    if worth(last[1]) != answer and not (family in FINDING and answer in numbers(last[0])):
        yield "the last step does not give the answer"


def _strange(left: Side, right: Side, known: set[Fraction]) -> set[Fraction]:
    """Return the numbers of a step that a listener could not place; of a sum opened, those long."""
    if len(left) == 1 and len(right) > 3:
        return {one for one in numbers(right) if len(_bare(_units(one)[0])) > 2}
    if _both_by_the_least(left, right, known):
        return set()
    new = [*numbers(left), *numbers(right if len(right) > 1 else [])]
    return {abs(one) for one in new if not explained(abs(one), known)}


def _both_by_the_least(left: Side, right: Side, known: set[Fraction]) -> bool:
    """Tell whether a known difference is the same one with one of the last place off both.

    3.6 - 3.038 is 3.599 - 3.037: nothing is to be traded then.
    """
    if "-" not in left or "-" not in right or (len(left), len(right)) != (3, 3):
        return False
    (whole, part), (less, part_less) = numbers(left), numbers(right)
    place = min(_units(one)[1] for one in (whole, part))
    return {whole, part} <= known and whole - less == part - part_less == place


def explained(number: Fraction, known: set[Fraction]) -> bool:
    """Tell whether a listener who knows some numbers could tell where another comes from."""
    if number in known or number in COUNTED or _power_of_ten(number):
        return True
    gaps = {abs(one - other) for one in known for other in known}
    least = min(_units(one)[1] for one in known)
    small = {gap for gap in gaps if gap <= 30 * least}
    return (
        number in gaps
        or any(number == one * by or number * by == one for one in known for by in SCALES)
        or any(_friendly(number, one) or _makes_friendly(number, one) for one in known)
        or any(_halved(number, one) or _small_factor(number, one) for one in known)
        or any(number == one * other for one in known for other in known)
        or any(other and number == one / other for one in known for other in known)
        or any(2 * number == one + other for one in known for other in known)
        or any(_part(number, whole) for whole in known | gaps)
        or any(_part(number, whole * unit) for whole in known for unit in SCALES[-6:-3])
        or any(_some_times(number, one) for one in known)
        or any(_groups(number, one, group) for one in known for group in known)
        or any(_nearly(number, gap) for gap in gaps)
        or _lands(number, known)
        or any(_next_to(number, one, known) for one in known)
        or any(number in (one + other, one - other) for one in small for other in small)
    )


def _power_of_ten(number: Fraction) -> bool:
    digits = number.numerator * number.denominator
    return 1 in (number.numerator, number.denominator) and str(digits).rstrip("0") == "1"


def _units(number: Fraction) -> tuple[int, Fraction]:
    """Return the digits of a decimal without its point, and what its last place is worth."""
    place = Fraction(1)
    while (number / place).denominator > 1 and place > Fraction(1, 10**7):
        place /= 10
    return int(number / place), place


def _next_to(number: Fraction, one: Fraction, known: set[Fraction]) -> bool:
    """Tell whether a number is the next whole one, or the last before a whole one: 11.99, 12."""
    place = min(_units(each)[1] for each in known)
    return one % 1 == 0 and abs(number - one) in (1, place)


def _halved(number: Fraction, one: Fraction) -> bool:
    """Tell whether a number is about half of another's digits, or it less five or 25 of them."""
    digits, place = _units(one)
    return number in ((digits // 2) * place, (digits // 2 + 1) * place) or (
        number in ((digits - 5) * place, (digits - 25) * place, (digits - 2) * place)
    )


def _some_times(number: Fraction, one: Fraction) -> bool:
    """Tell whether a number has the digits of a few times another: 0.38 of 19."""
    digits = _bare(_units(number)[0])
    return any(digits == _bare(_units(one)[0] * by) for by in range(1, 7))


def _bare(digits: int) -> str:
    return str(digits).rstrip("0")


def _lands(number: Fraction, known: set[Fraction]) -> bool:
    """Tell whether a number is near one and lands on a round one from another: 4.79 - 2.79."""
    place = min(_units(one)[1] for one in known)
    for one in known:
        for unit in (10 * place, 100 * place, 1000 * place):
            if abs(number - one) <= unit and any(
                not (other + number) % unit or not (other - number) % unit for other in known
            ):
                return True
    return False


def _part(number: Fraction, whole: Fraction) -> bool:
    """Tell whether a number is a run of another's digits in their places, or in units of them.

    0.3 and 0.05 are parts of 0.35; so are 35 and 30, as hundredths.
    """
    digits, place = _units(whole)
    wide = range(len(str(digits)) + 1)
    for unit in {place, Fraction(1)}:
        units = number / unit
        if units.denominator > 1:
            continue
        some = int(units)
        for low in wide:
            one = 10**low
            column = digits // one % 10 * one
            if some in (column + 10 * one, digits - column - 10 * one):
                return True
            if any(some == digits % 10**high - digits % one for high in wide if high > low):
                return True
    return False


def _friendly(number: Fraction, one: Fraction) -> bool:
    """Tell whether a number is round and near another, or a round number's half."""
    _, place = _units(one)
    for power in range(6):
        unit = place * 10**power
        for round_unit, reach in (
            (10 * unit, 9 * unit),
            (5 * unit, 3 * unit),
            (25 * unit, 4 * unit),
        ):
            if number % round_unit == 0 and abs(number - one) <= reach:
                return True
        if number % (100 * unit) == 0 and abs(number - one) <= 40 * unit:
            return True
    return False


def _makes_friendly(number: Fraction, one: Fraction) -> bool:
    """Tell whether a number is what another has above or lacks to a round one."""
    _, place = _units(one)
    return any(
        number in (-one % (place * 10**power), one % (place * 10**power)) for power in range(1, 7)
    )


def _small_factor(number: Fraction, one: Fraction) -> bool:
    return number.denominator == 1 and 1 < number <= 25 and not _units(one)[0] % number


def _groups(number: Fraction, one: Fraction, group: Fraction) -> bool:
    """Tell whether so many groups fill a number nearly, or are what such groups take."""
    if not number or not group:
        return False
    fill = one / group
    if (number < fill and number * group % 1 == 0) or (
        number < one and number % 1 == 0 and (number / group * 10).denominator == 1
    ):
        return True
    for place in (Fraction(10) ** power for power in range(-3, 4)):
        down = fill // place * place
        for some in (down, down + place, fill - down, fill - 10 * place, 5 * place, 10 * place):
            if some > 0 and number in (some, some * group):
                return True
    halves = (fill / 2, fill - 5, fill - 10)
    return any(some > 0 and number in (some, some * group) for some in halves)


def _nearly(number: Fraction, gap: Fraction) -> bool:
    """Tell whether a number is a round one just past how far two are apart, or lands so."""
    _, place = _units(gap)
    return any(
        abs(number - gap) <= 5 * place * 10**power and number % (place * 10 ** (power + 1)) == 0
        for power in range(6)
    )
