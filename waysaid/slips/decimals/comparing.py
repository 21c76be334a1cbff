"""Which decimal is larger, decided by how long it is or by its digits alone.

The work behind an order is shown as what was compared: `65 - 7 = 58` where 65 was held against 7.
"""

from collections.abc import Callable, Iterator

from waysaid.number import Equation, Number, Problem, Sign, compared, exact, parts
from waysaid.slips.cases import Part, Versus, is_pointed, part_of, places, unpointed, versus_of
from waysaid.slips.decimals.sums import after_point, pointed_after
from waysaid.slips.slip import Made
from waysaid.slips.work import ended, says


def decimals_of(problem: Problem) -> Versus | None:
    """Return two numbers to compare, one or both with a point, the other whole."""
    versus = versus_of(problem)
    if versus is None:
        return None
    both = versus.left, versus.right
    if not any(is_pointed(each) for each in both):
        return None
    return versus if all(is_pointed(each) or isinstance(each, int) for each in both) else None


def held(one: int, other: int, *, smaller: bool = False) -> Made:
    """Return the order of two whole numbers held against each other; turned for `smaller`."""
    order = compared(other, one) if smaller else compared(one, other)
    high, low = max(one, other), min(one, other)
    return Made(order, (says(high, Sign.MINUS, low, high - low),))


def _same_wholes(versus: Versus) -> bool:
    return int(exact(versus.left)) == int(exact(versus.right))


def longer_larger(versus: Versus) -> Iterator[Made]:
    """Take the longer decimal for the larger: 0.65 beats 0.7, as 65 beats 7."""
    if _same_wholes(versus):
        yield held(after_point(versus.left), after_point(versus.right))
        if places(versus.left) != places(versus.right):
            yield held(places(versus.left), places(versus.right))


def shorter_larger(versus: Versus) -> Iterator[Made]:
    """Take the shorter decimal for the larger: any tenths beat any hundredths."""
    if places(versus.left) != places(versus.right) and _same_wholes(versus):
        yield held(places(versus.left), places(versus.right), smaller=True)


def ignore_point(versus: Versus) -> Iterator[Made]:
    """Compare the digits without the points: 1.25 beats 3.7, as 125 beats 37."""
    yield held(unpointed(versus.left), unpointed(versus.right))


def mixed_of(problem: Problem) -> Versus | None:
    """Return a fraction below one and a decimal to compare, either way round."""
    versus = versus_of(problem)
    if versus is None:
        return None
    both = versus.left, versus.right
    return versus if any(map(is_pointed, both)) and any(map(_fraction, both)) else None


def _fraction(number: Number) -> Part | None:
    part = part_of(number)
    return part if part is not None and part.bottom > 1 and not part.whole else None


def bottom_after_point(versus: Versus) -> Iterator[Made]:
    """Read a fraction as its bottom after a point: 1/4 as 0.4."""
    yield _read_as(versus, lambda part: pointed_after(0, part.bottom))


def top_point_bottom(versus: Versus) -> Iterator[Made]:
    """Read a fraction as its top, a point and its bottom: 1/4 as 1.4."""
    yield _read_as(versus, lambda part: pointed_after(part.top, part.bottom))


def _read_as(versus: Versus, read: Callable[[Part], Number]) -> Made:
    """Return the order that comes of reading the fractions in this way."""
    sides: list[Number] = []
    steps: list[Equation] = []
    for number in (versus.left, versus.right):
        part = _fraction(number)
        sides.append(read(part) if part is not None else number)
        if part is not None:
            steps.append(Equation(number, sides[-1]))
    return Made(compared(exact(sides[0]), exact(sides[1])), tuple(steps))


def fraction_of(problem: Problem) -> Part | None:
    """Return a fraction that stands alone, to be said as a decimal."""
    return None if not isinstance(problem, Number) else _fraction(problem)


def alone_bottom_after_point(part: Part) -> Iterator[Made]:
    """Say 1/4 as 0.4."""
    yield _said(part, pointed_after(0, part.bottom))


def alone_top_point_bottom(part: Part) -> Iterator[Made]:
    """Say 1/4 as 1.4."""
    yield _said(part, pointed_after(part.top, part.bottom))


def _said(part: Part, wrong: Number) -> Made:
    return ended(wrong, Equation(parts(part.top, part.bottom), wrong))
