"""Products and quotients with a point: the point lost or misplaced, a zero put on."""

from collections.abc import Callable, Iterator
from fractions import Fraction

from waysaid.number import Exact, Number, Sign, Written, apply, decimal, exact
from waysaid.slips.cases import Two, is_pointed, places, unpointed
from waysaid.slips.decimals.sums import after_point, pointed, pointed_after
from waysaid.slips.slip import Made, Pair
from waysaid.slips.work import ended, one_step, says, whole

_BY = (Sign.TIMES, Sign.OVER)


def _right(two: Two) -> Exact:
    return apply(two.sign, exact(two.left), exact(two.right))


def _said(two: Two, wrong: Number) -> Made:
    return one_step(two.left, two.sign, two.right, wrong)


def ignore_point(two: Two) -> Iterator[Made]:
    """Work the digits without the point: 0.3 x 0.4 gives 12."""
    if two.sign in _BY:
        left, right = unpointed(two.left), unpointed(two.right)
        yield one_step(left, two.sign, right, decimal(apply(two.sign, left, right)))


def point_kept(two: Two) -> Iterator[Made]:
    """Keep the places of the factor with the most: 0.3 x 0.3 gives 0.9."""
    size = max(places(two.left), places(two.right))
    if two.sign is Sign.TIMES and min(places(two.left), places(two.right)):
        bare = Pair(unpointed(two.left), Sign.TIMES, unpointed(two.right))
        wrong = pointed(bare.answer, size)
        last = says(two.left, two.sign, two.right, wrong)
        yield ended(wrong, whole(bare, bare.answer), last, at=1)


def point_misplaced(two: Two) -> Iterator[Made]:
    """Put the point a place too far: 0.6 x 7 gives 42 or 0.42."""
    if two.sign in _BY:
        for wrong in (_right(two) * 10, Fraction(_right(two)) / 10):
            yield _said(two, decimal(exact(wrong)))


def append_zero(two: Two) -> Iterator[Made]:
    """Write zeros behind: 2.5 x 10 gives 2.50."""
    for number, tens in ((two.left, two.right), (two.right, two.left)):
        more = {10: 1, 100: 2, 1000: 3}.get(tens if isinstance(tens, int) else 0)
        if two.sign is Sign.TIMES and more and isinstance(number, Written):
            yield _said(two, decimal(exact(number), places(number) + more))


def point_as_whole(two: Two) -> Iterator[Made]:
    """Work both sides of the point by themselves: 2.5 x 3 gives 6.15, 6.15 / 3 gives 2.5."""
    number, by = two.left, two.right
    if two.sign is Sign.TIMES and isinstance(number, int):
        number, by = by, number
    if two.sign not in _BY or not isinstance(by, int) or not is_pointed(number) or by < 2:
        return
    before, after = int(exact(number)), after_point(number)
    parts = apply(two.sign, before, by), apply(two.sign, after, by)
    if isinstance(parts[0], int) and isinstance(parts[1], int):
        wrong = pointed_after(parts[0], parts[1])
        steps = [
            says(after, two.sign, by, parts[1]),
            says(two.left, two.sign, two.right, wrong),
        ]
        if before:
            steps.insert(0, says(before, two.sign, by, parts[0]))
        yield ended(wrong, *steps, at=len(steps) - 2)


def always_smaller(two: Two) -> Iterator[Made]:
    """Make it smaller, as division does with whole numbers: 6 / 0.5 gives 3."""
    by = exact(two.right)
    if two.sign is Sign.OVER and 0 < by < 1:
        wrong = decimal(exact(exact(two.left) * by))
        parts = exact(Fraction(1) / by)
        if isinstance(parts, int):
            yield one_step(two.left, Sign.OVER, parts, wrong)
        else:
            yield one_step(two.left, Sign.TIMES, two.right, wrong)


def wrong_operation(two: Two) -> Iterator[Made]:
    """Add instead of multiplying, multiply or subtract instead of dividing."""
    if two.sign is Sign.TIMES:
        total = decimal(exact(exact(two.left) + exact(two.right)))
        yield one_step(two.left, Sign.PLUS, two.right, total)
    elif two.sign is Sign.OVER:
        if exact(two.right) > 1:
            product = decimal(exact(exact(two.left) * exact(two.right)))
            yield one_step(two.left, Sign.TIMES, two.right, product)
        gap = decimal(exact(exact(two.left) - exact(two.right)))
        yield one_step(two.left, Sign.MINUS, two.right, gap)


def larger_by_smaller(two: Two) -> Iterator[Made]:
    """Divide the larger number by the smaller: 0.5 / 2 gives 4."""
    if two.sign is Sign.OVER and 0 < exact(two.left) < exact(two.right):
        wrong = decimal(apply(Sign.OVER, exact(two.right), exact(two.left)))
        yield one_step(two.right, Sign.OVER, two.left, wrong)


def on_digits(make: Callable[[Pair], Iterator[Made]]) -> Callable[[Two], Iterator[Made]]:
    """Return a rule for whole factors as one for factors with a point."""

    def made(two: Two) -> Iterator[Made]:
        size = places(two.left) + places(two.right)
        if two.sign is Sign.TIMES:
            bare = Pair(unpointed(two.left), Sign.TIMES, unpointed(two.right))
            for one in make(bare):
                if isinstance(one.wrong, int):
                    wrong = decimal(Fraction(one.wrong, 10**size))
                    last = says(two.left, two.sign, two.right, wrong)
                    yield Made(exact(wrong), (*one.steps, last), one.at)

    return made
