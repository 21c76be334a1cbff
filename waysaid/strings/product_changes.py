"""Links between two products or quotients of one form: what changed, and what the answer did."""

from collections.abc import Iterator
from fractions import Fraction

from waysaid.number import (
    Equation,
    Exact,
    Form,
    Number,
    Operation,
    Sign,
    exact,
    has_form,
    text,
)
from waysaid.strings.changes import Pair, marks_of, turned_around
from waysaid.strings.factor_pairs import changed_factors, ratio, tens_between, whole_ratio
from waysaid.strings.friendly import twin_link
from waysaid.strings.link import Link, LinkKind, Place, Saying
from waysaid.strings.show import change, gap_shown, scaling
from waysaid.strings.sight import Sight


def product_links(first: Sight, second: Sight) -> Iterator[Link]:
    """Yield the links that compare two products or quotients of one form, factor by factor."""
    pairs = changed_factors(first, second)
    if pairs is None:
        return
    match len(pairs):
        case 0:
            yield from turned_around(first, second, first.factors, second.factors)
        case 1:
            yield from _one_scaled(first, second, pairs[0])
            yield _one_changes(first, second, pairs[0])
        case 2:
            swapped = tuple(_percent_turned(first, second))
            yield from swapped or _both_change(first, second, pairs)
            yield from _both_scaled(first, second, pairs)
    yield from _places_shifted(first, second, pairs)
    yield from twin_link(first, second, pairs)


def _link(kind: LinkKind, seen: tuple[Sight, Sight], shows: tuple[str, ...], said: "_Said") -> Link:
    first, second = seen
    saying, numbers, pairs = said
    marks: list[tuple[int, Place]] = [(first.at, old.place) for old, _ in pairs]
    marks += [(second.at, new.place) for _, new in pairs]
    return Link(kind, (first.at, second.at), shows, saying, numbers, tuple(marks))


_Said = tuple[Saying, tuple[Number, ...], tuple[Pair, ...]]


def _one_changes(first: Sight, second: Sight, pair: Pair) -> Link:
    """Return the link that tells what the answer does when one factor grows or shrinks."""
    old, new = pair
    by, up = gap_shown(old.shown, new.shown), new.size > old.size
    numbers: tuple[Number, ...] = (old.shown, new.shown, by)
    shows = [change(old.shown, new.shown)]
    if old.sign is Sign.OVER and "=" not in first.form:
        saying = Saying.BY_MORE if up else Saying.BY_LESS
        shows += [first.filled, second.filled]
    elif "=" in first.form:
        saying = Saying.MISSING_GREW if second.total > first.total else Saying.MISSING_SHRANK
        numbers = (*numbers, gap_shown(first.shown, second.shown))
        shows.append(change(first.shown, second.shown))
    else:
        saying, more, part = _follows(first, second, pair)
        numbers = (*numbers, *more)
        shows += [*part, change(first.shown, second.shown)]
    said = (saying, numbers, (pair,))
    return _link(LinkKind.ONE_CHANGES, (first, second), tuple(shows), said)


_Follows = tuple[Saying, tuple[Number, ...], tuple[str, ...]]


def _follows(first: Sight, second: Sight, pair: Pair) -> _Follows:
    """Tell how the answer follows where a factor, or what is shared out, changes.

    The numbers are those of the rest, and by how much the answer changes.
    """
    old, new = pair
    up, by = new.size > old.size, gap_shown(old.shown, new.shown)
    rest = [term for term in first.factors if term.place != old.place]
    answers = gap_shown(first.shown, second.shown)
    over = [term for term in rest if term.sign is Sign.OVER]
    if over:
        left = _left_over(first, second, pair)
        if left is not None:
            return left
        among = over[0].shown
        if len(rest) > 1:
            return (Saying.PART_MORE if up else Saying.PART_LESS), (among, answers), ()
        part = _equation(Sign.OVER, by, among, answers)
        return (Saying.SHARE_MORE if up else Saying.SHARE_LESS), (among, answers), (part,)
    group = rest[0].shown if len(rest) == 1 else _product([term.size for term in rest])
    part = _equation(Sign.OF if _percent(by) else Sign.TIMES, by, group, answers)
    return _group_saying(exact(by), up), (group, answers), (part,)


def _percent(number: Number) -> bool:
    return has_form(number, Form.PERCENT)


def _group_saying(by: Exact, up: bool) -> Saying:
    if by == 1:
        return Saying.GROUP_MORE if up else Saying.GROUP_LESS
    if isinstance(by, int):
        return Saying.GROUPS_MORE if up else Saying.GROUPS_LESS
    return Saying.PART_MORE if up else Saying.PART_LESS


def _left_over(first: Sight, second: Sight, pair: Pair) -> _Follows | None:
    """Tell what is left over, where both are whole numbers shared out into as many each."""
    old, new = pair
    if len(first.factors) != 2:
        return None
    by = next(term.size for term in first.factors if term.sign is Sign.OVER)
    sizes = (old.size, new.size, by)
    if not all(isinstance(size, int) for size in sizes) or old.size // by != new.size // by:
        return None
    known = exact(by * (old.size // by))
    saying = Saying.LEFT_OVER_MORE if new.size > old.size else Saying.LEFT_OVER_LESS
    left = (exact(old.size - known), exact(new.size - known))
    shows = tuple(
        _equation(Sign.MINUS, size, known, rest)
        for size, rest in zip((old.size, new.size), left, strict=True)
    )
    return saying, (by, *left), shows


def _equation(sign: Sign, left: Number, right: Number, result: Number) -> str:
    return text(Equation(Operation(sign, left, right), result))


def _product(sizes: list[Exact]) -> Exact:
    found = Fraction(1)
    for size in sizes:
        found *= size
    return exact(found)


_BY_TWO = {
    (Sign.TIMES, True): Saying.ONE_DOUBLED,
    (Sign.TIMES, False): Saying.ONE_HALVED,
    (Sign.OVER, True): Saying.BY_TWICE,
    (Sign.OVER, False): Saying.BY_HALF,
}
_BY_MORE = {
    (Sign.TIMES, True): Saying.ONE_TIMES,
    (Sign.TIMES, False): Saying.ONE_OVER,
    (Sign.OVER, True): Saying.BY_TIMES,
    (Sign.OVER, False): Saying.BY_OVER,
}
MOST_TIMES = 9
"""Times as big that a child would see at a glance, tens apart (our choice)."""


def _one_scaled(first: Sight, second: Sight, pair: Pair) -> Iterator[Link]:
    """Yield a link where one number is whole times as big or as small as it was."""
    by, (old, new) = whole_ratio(ratio(pair)), pair
    if by is None or by > MOST_TIMES or not first.total:
        return
    if old.sign is Sign.OVER and "=" in first.form:
        return
    kind = LinkKind.DOUBLE_HALF if by == 2 else LinkKind.ONE_CHANGES
    saying = (_BY_TWO if by == 2 else _BY_MORE)[old.sign, new.size > old.size]
    shows = (scaling(old.shown, new.shown), scaling(first.shown, second.shown))
    numbers = (old.shown, new.shown, by)
    yield _link(kind, (first, second), shows, (saying, numbers, (pair,)))


def _both_change(first: Sight, second: Sight, pairs: tuple[Pair, ...]) -> Iterator[Link]:
    """Yield a link where two numbers are scaled, and the answer stays."""
    pair, other = pairs
    by = whole_ratio(ratio(pair))
    if first.answer != second.answer or by is None or not first.total:
        return
    bigger = pair if pair[1].size > pair[0].size else other
    smaller = other if bigger is pair else pair
    if pair[0].sign is other[0].sign:
        saying = Saying.DOUBLE_AND_HALF if by == 2 else Saying.TIMES_AND_OVER
        numbers = (bigger[0].shown, smaller[0].shown, by)
    else:
        up = pair[1].size > pair[0].size
        two = Saying.BOTH_DOUBLED if up else Saying.BOTH_HALVED
        saying = two if by == 2 else Saying.BOTH_TIMES if up else Saying.BOTH_OVER
        numbers = (pair[0].shown, other[0].shown, by)
    shows = tuple(scaling(old.shown, new.shown) for old, new in pairs)
    said = (saying, numbers, pairs)
    yield _link(LinkKind.BOTH_CHANGE, (first, second), (*shows, first.filled, second.filled), said)


def _both_scaled(first: Sight, second: Sight, pairs: tuple[Pair, ...]) -> Iterator[Link]:
    """Yield a link where both factors doubled, or both were cut in half."""
    ratios = {ratio(pair) for pair in pairs}
    alike = pairs[0][0].sign is Sign.TIMES and pairs[1][0].sign is Sign.TIMES
    for by, saying in ((2, Saying.TWO_DOUBLED), (Fraction(1, 2), Saying.TWO_HALVED)):
        if alike and ratios == {by} and first.total:
            shows = [scaling(old.shown, new.shown) for old, new in pairs]
            shows.append(scaling(first.shown, second.shown))
            said = (saying, tuple(old.shown for old, _ in pairs), pairs)
            yield _link(LinkKind.DOUBLE_HALF, (first, second), tuple(shows), said)


def _places_shifted(first: Sight, second: Sight, pairs: tuple[Pair, ...]) -> Iterator[Link]:
    """Yield a link where every number that changed has the same digits in other places."""
    tens = [tens_between(ratio(pair)) for pair in pairs]
    if not pairs or not all(tens) or not first.total:
        return
    grown = tens_between(exact(Fraction(second.total) / first.total))
    opposed = len({pair[0].sign for pair in pairs}) > 1
    if grown is None or (grown == 0 and not opposed):
        return
    saying = Saying.PLACES_STAY
    if grown:
        saying = Saying.PLACES_UP if grown > 0 else Saying.PLACES_DOWN
    shows = [scaling(old.shown, new.shown) for old, new in pairs]
    shows += [scaling(first.shown, second.shown)] if grown else [first.filled, second.filled]
    said = (saying, (10 ** abs(grown),), pairs)
    yield _link(LinkKind.TEN_TIMES, (first, second), tuple(shows), said)


def _percent_turned(first: Sight, second: Sight) -> Iterator[Link]:
    """Yield the link of so many per cent of a number and that number per cent of so many."""
    if not (len(first.factors) == 2 and _percent(first.factors[0].shown)):
        return
    (one, one_of), (other, other_of) = first.factors, second.factors
    if not _percent(other.shown) or one.size * 100 != other_of.size:
        return
    if other.size * 100 == one_of.size:
        shows = (first.filled, second.filled)
        marks = marks_of(first, first.factors) + marks_of(second, second.factors)
        between, numbers = (first.at, second.at), (exact(one.size * 100), one_of.shown)
        turned = Saying.PERCENT_TURNED
        yield Link(LinkKind.TURNED_AROUND, between, shows, turned, numbers, marks)


def together(first: Sight, second: Sight, third: Sight) -> Iterator[Link]:
    """Yield the link of three products or quotients, two of which put together make another.

    They differ in one number that is multiplied or shared out, and two of those make the third.
    """
    seen = (first, second, third)
    moving = _moving_place(seen)
    if moving is None:
        return
    small, middle, large = sorted(seen, key=lambda one: one.factors[moving].size)
    sizes = [one.factors[moving].size for one in (small, middle, large)]
    if sizes[0] <= 0 or sizes[0] + sizes[1] != sizes[2]:
        return
    parts = [one.factors[moving].shown for one in (small, middle, large)]
    yield Link(
        LinkKind.INSIDE_A_WAY,
        tuple(one.at for one in seen),
        (
            small.filled,
            middle.filled,
            _equation(Sign.PLUS, parts[0], parts[1], parts[2]),
            _equation(Sign.PLUS, small.shown, middle.shown, large.shown),
        ),
        Saying.TOGETHER,
        (*parts, small.shown, middle.shown, large.shown),
        tuple((one.at, one.factors[moving].place) for one in seen),
    )


def _moving_place(seen: tuple[Sight, Sight, Sight]) -> int | None:
    """Return which factor alone differs among all three, where it is not what they divide by."""
    first = seen[0]
    if len({one.form for one in seen}) > 1 or not first.factors or "=" in first.form:
        return None
    places = range(len(first.factors))
    moving = [at for at in places if len({one.factors[at].size for one in seen}) > 1]
    if len(moving) != 1 or first.factors[moving[0]].sign is Sign.OVER:
        return None
    return moving[0]
