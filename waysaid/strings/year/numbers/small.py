"""Numbers to twenty; to a hundred what is missing, and what is nearly a ten."""

from collections.abc import Callable, Iterable, Iterator, Mapping
from itertools import product

from waysaid.number import BLANK, Equation, Operation, Problem, Sign
from waysaid.strings.year.numbers.made import minus, plus


def _steps_on(most: int) -> Iterator[Problem]:
    """Yield a few more: at most `most`, to ten."""
    for one, few in product(range(1, 10), range(1, most + 1)):
        if one + few <= 10:
            yield plus(one, few)


def _steps_back(most: int) -> Iterator[Problem]:
    for one, few in product(range(2, 11), range(1, most + 1)):
        if few < one:
            yield minus(one, few)


def _turned(most: int) -> Iterator[Problem]:
    """Yield a few more, and the same turned around."""
    for one, few in product(range(3, 10), range(1, most + 1)):
        if one + few <= 10:
            yield plus(one, few)
            yield plus(few, one)


def _totals(totals: Iterable[int], least: int = 1) -> Iterator[Problem]:
    for total in totals:
        for one in range(least, total + 1 - least):
            yield plus(one, total - one)


def _five_and_some() -> Iterator[Problem]:
    for one in range(6):
        yield plus(5, one)
        yield plus(one, 5)


def _away(wholes: Iterable[int]) -> Iterator[Problem]:
    for whole in wholes:
        yield from (minus(whole, one) for one in range(1, whole))


def _added(wholes: Iterable[int], least: int = 1) -> Iterator[Problem]:
    """Yield what is added to a part to ten, and what it is added to."""
    for whole in wholes:
        for part in range(least, min(whole, 11)):
            yield Equation(Operation(Sign.PLUS, part, BLANK), whole)
            yield Equation(Operation(Sign.PLUS, BLANK, part), whole)


def _taken(wholes: Iterable[int]) -> Iterator[Problem]:
    """Yield what was taken away where no part is above ten."""
    for whole in wholes:
        for rest in range(max(1, whole - 10), min(whole, 11)):
            yield Equation(Operation(Sign.MINUS, whole, BLANK), rest)


def _in_front(sign: Sign) -> Iterator[Problem]:
    """Yield what was there before one, two or three came or went."""
    for few, first in product((1, 2, 3), range(1, 11)):
        after = first + few if sign is Sign.PLUS else first - few
        if 0 < after <= 10:
            yield Equation(Operation(sign, BLANK, few), after)


def _two_parts() -> Iterator[Problem]:
    for whole in range(4, 11):
        for part in range(1, whole):
            yield Equation(whole, Operation(Sign.PLUS, part, BLANK))


def _back_through_ten() -> Iterator[Problem]:
    """Yield what goes back to ten, or through it."""
    for whole in range(11, 19):
        yield from (minus(whole, away) for away in range(whole - 10, 10))


def _nearly_a_ten_away(wholes: Iterable[int], tens: Iterable[int]) -> Iterator[Problem]:
    """Yield tens taken away, and one or two less than that."""
    for whole, ten, less in product(wholes, tens, (0, 1, 2)):
        if ten < whole:
            yield minus(whole, ten - less)


def _to_hundred() -> Iterator[Problem]:
    for part in range(11, 100):
        yield Equation(Operation(Sign.PLUS, part, BLANK), 100)


def _through_a_ten() -> Iterator[Problem]:
    """Yield what was added to go through a ten, or just to it."""
    for part, more in product(range(16, 80), range(2, 13)):
        to_ten = -part % 10
        if part % 10 >= 5 and to_ten <= more < 10 + to_ten:
            yield Equation(Operation(Sign.PLUS, part, BLANK), part + more)


def _there_first() -> Iterator[Problem]:
    """Yield what was there before a number of tens, or one or two less, went."""
    for less, rest in product((10, 9, 20, 19, 18, 30, 29, 28, 40, 39, 38), range(15, 65, 5)):
        if less + rest <= 100:
            yield Equation(Operation(Sign.MINUS, BLANK, less), rest)


def _balanced() -> Iterator[Problem]:
    """Yield a sum whose first number goes up to the ten on the other side."""
    for one, other in product(range(7, 50), range(3, 40)):
        more = -one % 10
        if 0 < more <= 3 and more < other and other % 10 in (3, 4, 5, 6, 7):
            ten = Operation(Sign.PLUS, one + more, BLANK)
            yield Equation(Operation(Sign.PLUS, one, other), ten)


def _twins() -> Iterator[Problem]:
    """Yield doubles to ten, and one of the two with the whole."""
    for one in range(1, 6):
        yield plus(one, one)
        yield Equation(Operation(Sign.PLUS, one, BLANK), 2 * one)


SMALL: Mapping[str, Callable[[], Iterator[Problem]]] = {
    "one-and-two-more": lambda: _steps_on(3),
    "one-and-two-less": lambda: _steps_back(3),
    "start-with-the-bigger": lambda: _turned(3),
    "pairs-in-five": lambda: _totals((3, 4, 5), least=0),
    "twins": _twins,
    "five-and-some": _five_and_some,
    "pairs-in-ten": lambda: _totals((8, 9, 10)),
    "away-from-ten": lambda: _away((8, 9, 10)),
    "fact-families-to-10": lambda: _taken(range(4, 11)),
    "hiding-in-five": lambda: _added((3, 4, 5)),
    "hiding-in-ten": lambda: _added((8, 9, 10)),
    "hiding-in-front": lambda: _in_front(Sign.PLUS),
    "hiding-before-some-left": lambda: _in_front(Sign.MINUS),
    "a-number-in-two-parts": _two_parts,
    "back-through-ten": _back_through_ten,
    "take-nearly-ten": lambda: _nearly_a_ten_away(range(11, 21), (10,)),
    "take-nearly-a-ten-to-100": lambda: _nearly_a_ten_away(
        (one for one in range(32, 100) if 2 <= one % 10 <= 6), (20, 30, 40, 50)
    ),
    "hiding-through-ten": lambda: _added(range(11, 18), least=5),
    "taken-away-and-hidden": lambda: _taken(range(10, 18)),
    "how-far-to-100": _to_hundred,
    "what-was-added": _through_a_ten,
    "what-was-there-first": _there_first,
    "balance-to-100": _balanced,
}
