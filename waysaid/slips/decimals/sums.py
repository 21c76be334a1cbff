"""Sums and differences with a point: lined up on the right, the point lost, parts as wholes."""

from collections.abc import Callable, Iterator
from fractions import Fraction

from waysaid.number import Equation, Expression, Number, Operation, Sign, decimal, exact
from waysaid.slips.cases import Two, places, unpointed
from waysaid.slips.slip import Made, Pair
from waysaid.slips.work import ended, says

_SUMS = (Sign.PLUS, Sign.MINUS)


def pointed(digits: int, size: int) -> Number:
    """Return digits with a point so many places from the right, all places kept."""
    return decimal(Fraction(digits, 10**size), size)


def ignore_point(two: Two) -> Iterator[Made]:
    """Work the digits without the point: 12 - 0.1 as 12 - 1."""
    bare = Pair(unpointed(two.left), two.sign, unpointed(two.right))
    if two.sign in _SUMS:
        yield ended(bare.answer, says(bare.left, bare.sign, bare.right, bare.answer))


def right_aligned(two: Two) -> Iterator[Made]:
    """Line the last digits up: 2.5 + 3.12 as 25 + 312, and the point put back."""
    sizes = places(two.left), places(two.right)
    bare = Pair(unpointed(two.left), two.sign, unpointed(two.right))
    if two.sign in _SUMS and sizes[0] != sizes[1] and bare.answer >= 0:
        step = says(bare.left, bare.sign, bare.right, bare.answer)
        for size in sorted(sizes, reverse=True):
            if size:
                wrong = pointed(bare.answer, size)
                yield ended(wrong, step, says(two.left, two.sign, two.right, wrong))


def point_as_whole(two: Two) -> Iterator[Made]:
    """Work what is after the points as whole numbers: 0.5 + 0.7 gives 0.12."""
    if two.sign not in _SUMS:
        return
    wholes = Pair(int(exact(two.left)), two.sign, int(exact(two.right)))
    after = after_point(two.left), after_point(two.right)
    larger, smaller = (max(after), min(after)) if two.sign is Sign.MINUS else after
    rest = Pair(larger, two.sign, smaller)
    if wholes.answer >= 0 and max(after):
        wrong = pointed_after(wholes.answer, rest.answer)
        steps = [
            says(larger, two.sign, smaller, rest.answer),
            says(two.left, two.sign, two.right, wrong),
        ]
        if wholes.left or wholes.right:
            steps.insert(0, says(wholes.left, two.sign, wholes.right, wholes.answer))
        yield ended(wrong, *steps, at=len(steps) - 2)


def whole_lost(two: Two) -> Iterator[Made]:
    """Drop the whole that the parts make: 0.5 + 0.7 gives 0.2."""
    total = exact(two.left) + exact(two.right)
    if two.sign is Sign.PLUS and max(exact(two.left), exact(two.right)) < 1 < total:
        wrong = decimal(exact(total - 1))
        yield ended(wrong, says(two.left, Sign.PLUS, two.right, wrong))


def after_point(number: Number) -> int:
    """Return the digits after the point, read as a whole number: 5 for 0.05."""
    size: int = 10 ** places(number)
    return unpointed(number) % size


def pointed_after(whole: int, after: int) -> Number:
    """Return a whole number with another written after its point."""
    size = len(str(after))
    return pointed(whole * 10**size + after, size)


def in_units(make: Callable[[Pair], Iterator[Made]]) -> Callable[[Two], Iterator[Made]]:
    """Return a rule for whole numbers as one for decimals, worked in tenths or hundredths."""

    def made(two: Two) -> Iterator[Made]:
        size = max(places(two.left), places(two.right))
        if two.sign not in _SUMS:
            return
        left, right = (int(exact(each) * 10**size) for each in (two.left, two.right))
        for one in make(Pair(left, two.sign, right)):
            if isinstance(one.wrong, int):
                steps = tuple(_scaled(step, size) for step in one.steps)
                yield Made(exact(Fraction(one.wrong, 10**size)), steps, one.at)

    return made


def _scaled(step: Equation, size: int) -> Equation:
    return Equation(_lower(step.left, size), _lower(step.right, size))


def _lower(part: Expression, size: int) -> Expression:
    if isinstance(part, Operation):
        return Operation(part.sign, _lower(part.left, size), _lower(part.right, size))
    return decimal(Fraction(part, 10**size)) if isinstance(part, int) else part
