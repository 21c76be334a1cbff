"""A part of a number by parts that are well known, by a friendly number near by, or renamed."""

from collections.abc import Iterator
from fractions import Fraction

from waysaid.number import Exact, Number, Operation, exact, parts
from waysaid.ways.factor import can_do, can_share, cuts
from waysaid.ways.fractions.amount import did, said_as
from waysaid.ways.fractions.of_number import times
from waysaid.ways.fractions.shape import PartOf
from waysaid.ways.fractions.units import endings
from waysaid.ways.maker import AnyMaker, Maker
from waysaid.ways.place import friendly_above
from waysaid.ways.plan import MINUS, OVER, PLUS, TIMES, Move, Plan, summed
from waysaid.ways.step import Kind, Step
from waysaid.ways.way import Family

LARGEST = 12
"""Into how many parts a child shares in one go for a well-known part; our choice."""


def benchmark(problem: PartOf) -> Iterator[Plan]:
    """Yield half and a smaller part, and the whole less one part."""
    number, value = problem.number, Fraction(problem.part.value)
    if number < 2 or value >= 1:
        return
    rest = value - Fraction(1, 2)
    if rest > 0 and rest.numerator == 1 and rest.denominator <= LARGEST:
        yield from _half_and(number, rest.denominator)
    if problem.top == problem.bottom - 1 and problem.bottom > 2 and problem.even:
        share = number // problem.bottom
        off: Move = (Kind.TAKE, number, MINUS, share)
        if can_share(number, problem.bottom):
            yield "all-less-one-part", ((Kind.GROUP, number, OVER, problem.bottom), off)
        for by in (2, 3):
            other = problem.bottom // by
            if problem.bottom == by * other and other > 1 and can_share(number, by):
                cut = (_over(number, by), _over(number // by, other))
                yield f"all-less-one-part-by-{by}", (*cut, off)


def _over(number: int, by: int) -> Move:
    return (Kind.SCALE if by == 2 else Kind.GROUP, number, OVER, by)


def _half_and(number: int, bottom: int) -> Iterator[Plan]:
    """Yield half, and one part from the number or from the half: 80 and half of it."""
    if number % 2 or number % bottom or not can_do(2, number // 2):
        return
    half, share = number // 2, number // bottom
    first = _over(number, 2)
    last: Move = (Kind.JOIN, half, PLUS, share)
    if can_share(number, bottom):
        yield f"half-and-{bottom}th", (first, (Kind.GROUP, number, OVER, bottom), last)
    if bottom % 2 == 0 and can_share(half, bottom // 2):
        yield f"half-and-{bottom}th-from-half", (first, _over(half, bottom // 2), last)


def broken(problem: PartOf) -> Iterator[Plan]:
    """Yield the part of each piece of the number: 2/3 of 30 and 2/3 of 27."""
    part, number, bottom = problem.part, problem.number, problem.bottom
    if not problem.even or part.value >= 1:
        return
    share = number // bottom
    for slug, lots in cuts(share):
        if len(lots) > 2 or not all(can_do(bottom, lot) for lot in lots):
            continue
        groups = tuple(_of(problem, bottom * lot) for lot in lots)
        results = tuple(lot * problem.top for lot in lots)
        for how, sums in summed(Kind.JOIN, *results):
            yield f"number-{slug}{how}", (*groups, *sums)


def _of(problem: PartOf, number: int) -> Step:
    pair = problem.pair(problem.part.number, number)
    return did(Kind.GROUP, pair[0], problem.sign, pair[1])


def near(problem: PartOf) -> Iterator[Plan]:
    """Yield the part of a friendly number near by: 2/3 of 60, less 2/3 of 3."""
    number, bottom = problem.number, problem.bottom
    if not problem.even or problem.part.value >= 1:
        return
    for friendly, gap in friendly_above(number):
        if friendly % bottom == 0 and can_share(friendly, bottom):
            big, small = friendly // bottom * problem.top, gap // bottom * problem.top
            groups = (_of(problem, friendly), _of(problem, gap))
            mend: Move = (Kind.MEND, big, MINUS, small)
            yield f"up-to-{friendly}", (*groups, mend)


def renamed(problem: PartOf) -> Iterator[Plan]:
    """Yield one part as a division; so many parts counted: 6 x 2/3 = 12/3, 12/3 = 4."""
    number, bottom = problem.number, problem.bottom
    if problem.top == 1 and (can_share(number, bottom) or (not problem.even and number < bottom)):
        yield "as-division", (did(Kind.GROUP, number, OVER, bottom),)
    if not can_do(number, problem.top) or problem.part.whole:
        return
    pair = problem.pair(problem.part.number, number)
    many = number * problem.top
    made = did(Kind.GROUP, pair[0], problem.sign, pair[1], parts(many, bottom))
    if can_share(many, bottom) or many % bottom:
        for how, ending in endings(many, bottom):
            if ending:
                yield f"as-parts{how}", (made, *ending)


def moved_across(problem: PartOf) -> Iterator[Plan]:
    """Yield the bottom taken into the number: 2/3 x 57 = 2 x 19."""
    if not problem.even or problem.top == 1 or not can_share(problem.number, problem.bottom):
        return
    share = problem.number // problem.bottom
    if share > 1 and can_do(share, problem.top):
        yield from _same(problem, (problem.top, share))


def _same(problem: PartOf, new: tuple[Exact, Exact]) -> Iterator[Plan]:
    old = problem.pair(problem.part.number, problem.number)
    after = problem.pair(*new)
    told = said_as(Operation(problem.sign, *old), Operation(TIMES, *after))
    last = did(Kind.RECALL, after[0], TIMES, after[1])
    yield "bottom-across", (Step(Kind.SCALE, told.equation), last)


def grouped(problem: PartOf) -> Iterator[Plan]:
    """Yield as many parts as make wholes, so many times: 3 x 2/3 = 2, 2 x 2 = 4."""
    number, bottom, part = problem.number, problem.bottom, problem.part
    share = number // bottom
    if not problem.even or share < 2 or problem.sign is not TIMES or part.whole:
        return
    one = problem.pair(part.number, bottom)
    made = did(Kind.GROUP, one[0], TIMES, one[1])
    yield "wholes-in-groups", (made, *times(problem.top, share))


def mixed_plans(problem: PartOf) -> Iterator[Plan]:
    """Yield a mixed number of a number, wholes and parts apart: 6 x 1 and 6 x 1/2."""
    part, number = problem.part, problem.number
    if not part.whole or not part.top or not can_do(number, part.whole):
        return
    both = [_times(problem, one) for one in (part.whole, part.part)]
    big, small = part.whole * number, exact(exact(part.part) * number)
    yield "wholes-and-parts", (*both, did(Kind.JOIN, big, PLUS, small))
    if part.whole == 1:
        yield "parts-on-top", (both[1], did(Kind.JOIN, number, PLUS, small))
    yield "parts-and-wholes", (both[1], both[0], did(Kind.JOIN, small, PLUS, big))


def _times(problem: PartOf, factor: Number) -> Step:
    pair = problem.pair(factor, problem.number)
    return did(Kind.GROUP, pair[0], problem.sign, pair[1])


def mixed_near(problem: PartOf) -> Iterator[Plan]:
    """Yield the next whole of a mixed number, less what is too much: 6 x 2 less 6 x 1/4."""
    part, number = problem.part, problem.number
    if not part.whole or not part.gap or part.gap > Fraction(1, 3):
        return
    if can_do(number, part.whole + 1):
        both = [_times(problem, one) for one in (part.whole + 1, part.gap)]
        big, small = (part.whole + 1) * number, exact(part.gap * number)
        yield "up-to-whole", (*both, did(Kind.MEND, big, MINUS, small))


def mixed_renamed(problem: PartOf) -> Iterator[Plan]:
    """Yield a mixed number all in parts first: 1 1/2 = 3/2, 6 x 3/2 = 18/2, 18/2 = 9."""
    part, number = problem.part, problem.number
    if not part.whole or not can_do(number, part.tops):
        return
    cut = parts(part.tops, part.bottom)
    many = number * part.tops
    pair = problem.pair(cut, number)
    made = did(Kind.GROUP, pair[0], problem.sign, pair[1], parts(many, part.bottom))
    for how, ending in endings(many, part.bottom):
        yield f"mixed-as-parts{how}", (said_as(part.number, cut), made, *ending)


def mixed_across(problem: PartOf) -> Iterator[Plan]:
    """Yield one number doubled and the other halved: 6 x 1 1/2 = 3 x 3."""
    part, number = problem.part, problem.number
    if part.whole and part.bottom in (2, 4) and number % part.bottom == 0:
        yield from _same(problem, (part.tops, number // part.bottom))


MAKERS: tuple[AnyMaker, ...] = (
    Maker(Family.RENAME, PartOf, renamed),
    Maker(Family.BENCHMARK, PartOf, benchmark),
    Maker(Family.DOUBLE_HALVE, PartOf, moved_across),
    Maker(Family.BREAK_UP, PartOf, broken),
    Maker(Family.BREAK_UP, PartOf, mixed_plans),
    Maker(Family.ADJUST, PartOf, near),
    Maker(Family.ADJUST, PartOf, mixed_near),
    Maker(Family.FACTOR_STEPS, PartOf, grouped),
    Maker(Family.RENAME, PartOf, mixed_renamed),
    Maker(Family.DOUBLE_HALVE, PartOf, mixed_across),
)
