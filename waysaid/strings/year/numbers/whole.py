"""Whole numbers above twenty: hundreds, thousands, groups, both sides alike, about how much."""

from collections.abc import Callable, Iterator, Mapping
from itertools import product

from waysaid.number import BLANK, About, Claim, Equation, Operation, Problem, Sign
from waysaid.strings.year.numbers.made import minus, over, plus, times

_LONG = (1450, 1650, 2370, 2500, 3400, 3650, 4300, 5180, 6250, 7320)
"""Numbers that thousands are added to, or taken from."""
_THOUSANDS = (1000, 2000, 3000, 4000, 5000)


def _fill_hundreds() -> Iterator[Problem]:
    """Yield two numbers that fill a hundred, and a third between them."""
    for first, less, between in product((1, 2, 3, 4), (2, 5, 10, 15, 20, 25, 30, 40), (37, 64, 95)):
        one = 100 * first - less
        for other in (less, less + 100):
            yield plus(one, other)
            yield plus(plus(one, between), other)


def _to_thousand() -> Iterator[Problem]:
    for part in range(305, 1000, 5):
        yield Equation(Operation(Sign.PLUS, part, BLANK), 1000)
    for part in (368, 468, 568, 668, 768, 868, 968, 392, 492, 592, 692, 792, 892, 992):
        yield Equation(Operation(Sign.PLUS, part, BLANK), 1000)


def _down_through_hundreds() -> Iterator[Problem]:
    """Yield what goes down to a hundred, or through it."""
    for hundreds, tens, more in product(range(200, 1000, 100), (10, 20, 30, 40), (0, 10, 20, 30)):
        yield minus(hundreds + tens, tens + more)
        yield minus(hundreds + tens + 5, tens + more + 5)


def _down_in_pieces() -> Iterator[Problem]:
    """Yield hundreds, tens and ones taken away, where there are as many of each."""
    wholes = ((580, 4), (690, 8), (760, 7), (850, 6), (970, 9))
    for (tens, ones), away, less in product(wholes, (200, 300, 400), (30, 40, 50)):
        yield minus(tens, away)
        yield minus(tens, away + less)
        yield minus(tens + ones, away + less)
        yield from (minus(tens + ones, away + less + few) for few in range(2, ones))


def _nearly_hundreds_away() -> Iterator[Problem]:
    """Yield hundreds taken away, and a little less than that."""
    wholes = (376, 450, 540, 587, 623, 735, 812, 960)
    for whole, hundreds, less in product(wholes, (100, 200, 300), (0, 1, 2, 5)):
        yield minus(whole, hundreds - less)


def _both_sides(off: tuple[int, ...]) -> Iterator[Problem]:
    """Yield sums whose first number goes up to a ten on the other side: a blank, or true or not."""
    for ten, more, other in product((20, 30, 40, 50, 100), (1, 2, 3), (14, 16, 25, 26, 27, 42, 45)):
        one = plus(ten - more, other)
        yield Equation(one, Operation(Sign.PLUS, ten, BLANK))
        yield Equation(one, Operation(Sign.PLUS, BLANK, other - more))
        for wrong in off:
            yield Claim(Equation(one, plus(ten, other - more + wrong)))


def _as_far_apart() -> Iterator[Problem]:
    """Yield differences whose second number goes up to a ten on the other side."""
    for one, ten, more in product((42, 45, 53, 61, 72, 83, 94), (20, 30, 40, 50), (1, 2, 3)):
        if one > ten:
            left = minus(one, ten - more)
            yield Equation(left, Operation(Sign.MINUS, one + more, BLANK))
            yield Equation(left, Operation(Sign.MINUS, BLANK, ten))


def _left_over(many: range) -> Iterator[Problem]:
    """Yield what can be shared out to the end, and one, two or three more.

    Ten groups or more only with something left: else strings would be of quotients without.
    """
    for each, groups in product(range(4, 10), many):
        for left in range(1 if groups > 10 else 0, min(each, 4)):
            yield over(each * groups + left, each)


def _beside_thousands() -> Iterator[Problem]:
    for number, thousands, less in product(_LONG, _THOUSANDS, (0, 1, 2, 5, 10)):
        yield plus(number, thousands - less)


def _filled_thousands() -> Iterator[Problem]:
    """Yield thousands and a number, and the same with a little moved across."""
    for number, thousands, moved in product(_LONG, _THOUSANDS, (0, 1, 2, 3, 5, 10)):
        yield plus(thousands - moved, number + moved)


def _long_jumps() -> Iterator[Problem]:
    jumps = (200, 500, 520, 400, 430, 3000, 3400, 2000, 2300, 2340, 1000, 1200, 1250)
    yield from (plus(number, jump) for number, jump in product(_LONG, jumps))


def _small_gaps() -> Iterator[Problem]:
    """Yield a number just above a thousand and one just below it."""
    above, below = (0, 1, 2, 3, 5, 6, 8, 12, 15), (2, 5, 8, 10, 12, 15, 20, 32)
    for thousands, more, less in product(range(2000, 9000, 1000), above, below):
        yield minus(thousands + more, thousands - less)


def _thousands_away() -> Iterator[Problem]:
    """Yield a number taken from thousands, and from one or two less."""
    taken = (1500, 1268, 1475, 2386, 2745, 3268)
    for thousands, away, less in product((3000, 4000, 5000, 6000, 8000), taken, (0, 1, 2)):
        if away < thousands and not (less == 2 and away == 1500):
            yield minus(thousands - less, away - less)


def _a_little_less() -> Iterator[Problem]:
    """Yield thousands taken away, and a little less than that."""
    for number, thousands in product((45000, 52000, 62000, 73000, 84500, 91000), (10, 20, 30, 40)):
        for less in (0, 1, 100, 200, 1000, 2000):
            yield minus(number, thousands * 1000 - less)


def _through_zero() -> Iterator[Problem]:
    """Yield as much taken away as there is, and more."""
    for whole in (*range(3, 10), 12, 14, 15, 18, 20, 23, 25, 30, 36, 40, 45, 50):
        for more in (0, 1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 12, 15, 20, 24, 30):
            yield minus(whole, whole + more)


def _balanced_products() -> Iterator[Problem]:
    """Yield products of which one number is halved on the other side, so that the other doubles."""
    for half, other in product(range(3, 26), (3, 4, 5, 6, 7, 8, 15, 25)):
        if half * other <= 200:
            yield Equation(times(2 * half, other), Operation(Sign.TIMES, half, BLANK))
            yield Equation(times(other, 2 * half), Operation(Sign.TIMES, BLANK, half))


def _about_sums() -> Iterator[Problem]:
    """Yield sums of hundreds or thousands, and about how much those of numbers near them are."""
    for unit in (100, 1000):
        for one, other in product((2, 3, 4, 6), (1, 2, 3, 5)):
            first, second = one * unit, other * unit
            yield plus(first, second)
            for by, more in product((-11, -2, 3), (-5, -2, 7)):
                yield About(plus(first + by, second + more))


def _friends() -> Iterator[Problem]:
    """Yield two factors that make tens or hundreds, and a third between them or behind."""
    friends = ((2, 5), (4, 5), (4, 25), (2, 50), (5, 20), (5, 8), (2, 15), (2, 25))
    for (one, other), between in product(friends, (3, 6, 7, 9, 11, 12, 13, 17)):
        yield times(one, other)
        yield times(times(one, between), other)
        yield times(times(other, between), one)


def _about_products() -> Iterator[Problem]:
    """Yield products of tens and hundreds, and about how much those of numbers near them are."""
    firsts, seconds = (20, 30, 40, 60, 80, 200, 300, 400), (20, 30, 40, 50)
    for one, other in product(firsts, seconds):
        yield times(one, other)
        yield from (About(times(one + by, other)) for by in (-2, -1, 1, 2))
        yield from (About(times(one + by, other + at)) for by, at in product((-2, 1, 2), (-1, 1)))


WHOLE: Mapping[str, Callable[[], Iterator[Problem]]] = {
    "pairs-that-fill-hundreds": _fill_hundreds,
    "missing-to-1000": _to_thousand,
    "down-through-a-hundred": _down_through_hundreds,
    "down-in-pieces": _down_in_pieces,
    "a-hundred-too-much": _nearly_hundreds_away,
    "balance-and-compare": lambda: _both_sides((0, 2, -1)),
    "as-far-apart-on-both-sides": _as_far_apart,
    "what-is-left-over": lambda: _left_over(range(3, 10)),
    "groups-with-some-left": lambda: _left_over(range(10, 22)),
    "nearly-a-thousand": _beside_thousands,
    "fill-the-thousand": _filled_thousands,
    "large-jumps": _long_jumps,
    "small-gaps-between-large": _small_gaps,
    "no-zeros-to-cross": _thousands_away,
    "a-little-less-is-taken": _a_little_less,
    "through-zero": _through_zero,
    "balance-of-products": _balanced_products,
    "about-a-sum": _about_sums,
    "factors-that-are-friends": _friends,
    "about-a-product": _about_products,
}
