"""Number sense that many ways share: friendly neighbours and place-value pieces.

Every number here is a whole number from 0 up.
"""

from collections.abc import Iterator

MOST_COUNTS = 10
"""The most counts a child keeps hold of: as many as there are fingers; our choice."""
_SKIPS = ((1, "ones", 1), (2, "twos", 3), (5, "fives", 3), (10, "tens", 2), (100, "hundreds", 2))
"""Each size, its slug, and how few counts of it still are counting; our choice."""
_CUTS = ((1000, "thousands-then-rest"), (100, "hundreds-then-rest"), (10, "tens-together"))
MOST_PIECES = 4
"""The most place-value pieces a child would keep in the head; our choice."""


def up_to(number: int, unit: int) -> int:
    """Return what is missing to the next multiple of `unit`; 0 on a multiple."""
    return -number % unit


def is_friendly(number: int) -> bool:
    """Tell whether a number is easy to go on from: a multiple of ten."""
    return number % 10 == 0


def round_unit(number: int) -> int:
    """Return the largest power of ten that divides the number: 1 for 37, 10 for 240."""
    unit = 1
    while number and number % (unit * 10) == 0:
        unit *= 10
    return unit


def easy_double(number: int) -> bool:
    """Tell whether a child would know or see the double at once.

    Up to 20 and multiples of 5 up to 100, and the same of tens and hundreds; our choice.
    """
    size = number // round_unit(number)
    return size <= 20 or (size % 5 == 0 and size <= 100)


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


def columns(*numbers: int) -> int:
    """Return how many columns the longest of the numbers fills."""
    return len(str(max(numbers)))


def places(number: int, width: int) -> tuple[int, ...]:
    """Return the pieces of so many columns, ones first, zeros kept: 305 is 5, 0 and 300."""
    return tuple(number // 10**column % 10 * 10**column for column in range(width))


def chunks(number: int) -> Iterator[tuple[str, tuple[int, int]]]:
    """Yield the ways to cut a number in two, each with a slug: 345 is 300 and 45, 340 and 5.

    None for a number of one or two pieces.
    """
    if len(pieces(number)) > 2:
        for unit, slug in _CUTS:
            rest = number % unit
            if rest and unit <= number:
                yield slug, (number - rest, rest)


def friendly_above(number: int) -> Iterator[tuple[int, int]]:
    """Yield (friendly number above, how far) near enough to work with: 38 is 40 less 2.

    To a ten at most 2 from a single digit and 6 from a longer number (one source goes 6 from 24,
    none goes 7); to a hundred or a thousand at most 25. Our choice.
    """
    unit, reach = 10, 2 if number < 10 else 6
    nearer = 0
    while unit <= 10 * number:
        gap = up_to(number, unit)
        if nearer < gap <= reach:
            yield number + gap, gap
        nearer = gap
        unit *= 10
        reach = 25


def near_friendly(number: int, unit: int) -> int:
    """Return the small change that makes a number a multiple of `unit`, up or down; else 0.

    At most 4 for a ten and 10 for a hundred, so that both numbers of a problem can be changed at
    once; from below the first multiple half of that, and only up. Our choice.
    """
    reach = 4 if unit == 10 else 10
    up = up_to(number, unit)
    if number < unit:
        return up if up <= reach // 2 else 0
    if up <= reach:
        return up
    return up - unit if unit - up <= reach else 0


def skips(start: int, distance: int) -> Iterator[tuple[int, str]]:
    """Yield (size, slug) for each equal count that covers a distance from a start.

    By ones up to `MOST_COUNTS`; by larger steps at least two of them, and by twos and fives at
    least three, where the words are the ones known by heart (2, 4, 6; 5, 10, 15) and tens would
    not do.
    """
    for size, slug, fewest in _SKIPS:
        times, over = divmod(distance, size)
        by_heart = size in (1, 10, 100) or (start % size == 0 and distance % 10)
        if not over and by_heart and fewest <= times <= MOST_COUNTS:
            yield size, slug
