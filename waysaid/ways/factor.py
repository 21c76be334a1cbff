"""Number sense for products: what is known, what is done in one go, how a number is made of parts.

Every number here is a whole number from 1 up.
"""

from collections.abc import Iterator

from waysaid.ways.place import chunks, easy_double, pieces

TABLES = 12
"""How far tables are known: to 12 x 12 in England's Year 4 (eng-nc2014)."""
FEW = 4
"""Up to how many fifteens and twenty-fives a child may simply know; our choice."""
_WIDEST = {1: 10**9, 2: 1000, 3: 200, 4: 200}
"""Below what the other number must be, by the digit it is multiplied by; our choice."""
_WIDE = 100
"""The same for any other digit; our choice."""
MOST_STEPS = 4
"""The most factors a child would multiply by one after another; our choice."""
_ADDED_REST = 5
"""How little may be left of a number over twenty-five for 25 to be taken first; our choice."""
TWENTY_FIVE = "twenty-five-and-rest"
"""The slug of that cut."""


def bare(number: int) -> int:
    """Return the number without the zeros at its end: 12 for 1200."""
    while number and number % 10 == 0:
        number //= 10
    return number


def knows(one: int, other: int) -> bool:
    """Tell whether a child of the end of grade 4 may simply know the product.

    The tables, the same of tens and hundreds, anything times ten, easy doubles, and a few
    fifteens and twenty-fives. Beyond the tables our choice.
    """
    small, large = sorted((bare(one), bare(other)))
    if large <= TABLES or small == 1:
        return True
    if small == 2:
        return easy_double(large)
    return small <= FEW and large in (15, 25)


def can_do(one: int, other: int) -> bool:
    """Tell whether a child would do the product in one go, in the head.

    One digit times two, twice three digits, three or four times a hundred and some; zeros left
    out: 20 x 36, 253 x 2, 3 x 126. Our choice.
    """
    small, large = sorted((bare(one), bare(other)))
    return large <= TABLES or (small < 10 and large < _WIDEST.get(small, _WIDE))


def can_share(whole: int, part: int) -> bool:
    """Tell whether a child would divide in one go: without remainder, and as `can_do` back."""
    return whole % part == 0 and can_do(part, whole // part)


def cuts(number: int) -> Iterator[tuple[str, tuple[int, ...]]]:
    """Yield the ways to cut a factor into parts, each with a slug.

    By place, in two at a place, five and the rest, two and the rest, nearly halves.
    """
    found = pieces(number)
    if len(found) > 1:
        yield "by-place", found
    yield from chunks(number)
    if 5 < number < 10:
        yield "five-and-rest", (5, number - 5)
    if 4 < number < 10:
        yield "two-and-rest", (number - 2, 2)
    if number in (7, 9):
        yield "nearly-halves", (number // 2 + 1, number // 2)
    if 25 < number < 25 + _ADDED_REST:
        yield TWENTY_FIVE, (25, number - 25)


def factored(number: int) -> Iterator[tuple[int, ...]]:
    """Yield the factors a child would multiply by in turn instead of a number: 12 as 3, 4.

    Two factors in either order, both from the tables, or a power of ten and the rest of a round
    number; more than two only where they are doubles and one other: 2, 2, 3. Nothing for a power
    of ten: that is known.
    """
    if bare(number) == 1:
        return
    for first in (*range(2, TABLES + 1), 100, 1000):
        last, over = divmod(number, first)
        tens = 1 in (bare(first), bare(last))
        if not over and last > 1 and (tens or (last <= TABLES and number % 10)):
            yield (first, last)
    twos, rest = 0, number
    while rest % 2 == 0 and rest != 10:
        twos, rest = twos + 1, rest // 2
    for doubles in range(2, min(twos, MOST_STEPS) + 1):
        other = number // 2**doubles
        if other == 1 and doubles > 2:
            yield (2,) * doubles
        elif 2 < other <= 10 and doubles < MOST_STEPS:
            yield (*((2,) * doubles), other)
            yield (other, *((2,) * doubles))


def near(number: int) -> Iterator[tuple[int, str]]:
    """Yield the numbers of groups that are easy near a number, each with a slug.

    One more or fewer at five and 25, or two more than five; up to three below a ten (two for a
    single digit) and up to five below a hundred or a thousand; two above any of them. Our choice.
    """
    found: dict[int, str] = {}
    for unit, most in ((10, 3 if number > 10 else 2), (100, 5), (1000, 5)):
        gap, over = -number % unit, number % unit
        if 0 < gap <= most:
            found[number + gap] = f"up-to-{number + gap}"
        if 0 < over <= 2 and number > unit:
            found[number - over] = f"down-to-{number - over}"
    for friendly, most in ((5, 2), (25, 1)):
        if friendly - 1 <= number <= friendly + most and number != friendly:
            found[friendly] = f"from-{friendly}"
    yield from found.items()
