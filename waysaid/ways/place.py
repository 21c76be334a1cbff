"""Number sense that many ways share: friendly neighbours and place-value pieces.

Every number here is a whole number from 0 up.
"""

from collections.abc import Iterator


def up_to(number: int, unit: int) -> int:
    """Return what is missing to the next multiple of `unit`; 0 on a multiple."""
    return -number % unit


def pieces(number: int) -> tuple[int, ...]:
    """Return the place-value pieces that are not 0, largest first: 305 is 300 and 5."""
    found = []
    unit = 1
    while number:
        number, digit = divmod(number, 10)
        if digit:
            found.append(digit * unit)
        unit *= 10
    found.reverse()
    return tuple(found)


def places(number: int, columns: int) -> tuple[int, ...]:
    """Return the pieces of so many columns, ones first, zeros kept: 305 is 5, 0 and 300."""
    return tuple(number // 10**column % 10 * 10**column for column in range(columns))


def columns(*numbers: int) -> int:
    """Return how many columns the longest of the numbers fills."""
    return len(str(max(numbers)))


def chunks(number: int) -> Iterator[tuple[str, tuple[int, int]]]:
    """Yield the ways to cut a number of three digits or more in two: 345 is 300 and 45, 340 and 5.

    Each comes with a slug. None where a chunk would be 0 or the cut is the same as `pieces`.
    """
    if len(pieces(number)) > 2:
        rest = number % 100
        yield "hundreds-then-rest", (number - rest, rest)
        yield "tens-together", (number - number % 10, number % 10)


def round_unit(number: int) -> int:
    """Return the largest power of ten that divides the number: 1 for 37, 10 for 240."""
    unit = 1
    while number and number % (unit * 10) == 0:
        unit *= 10
    return unit


def few_digits(number: int) -> bool:
    """Tell whether only the first digit is not 0: 7, 40, 300."""
    return number < 10 * round_unit(number)


def friendly_above(number: int) -> Iterator[tuple[int, int]]:
    """Yield (friendly number above, how far) near enough to work with: 38 is 40 less 2.

    To a ten at most 2 from a single digit and 6 from a longer number (one source goes 6 from 24,
    none goes 7); to a hundred at most 25 (a quarter of it), and so on. Our choice.
    """
    unit, reach = 10, 2 if number < 10 else 6
    while unit <= 10 * number:
        gap = up_to(number, unit)
        if 0 < gap <= reach and (unit == 10 or gap != up_to(number, unit // 10)):
            yield number + gap, gap
        unit *= 10
        reach = unit // 4


def is_friendly(number: int) -> bool:
    """Tell whether a number is easy to go on from: a multiple of ten."""
    return number % 10 == 0
