"""Links between two sums or differences of one form: what changed, and what the answer did.

Two sums are compared as bags of signed numbers, so that 16 + 29 is seen beside 30 + 15.
"""

from collections.abc import Iterator

from waysaid.number import Number, Sign
from waysaid.strings.friendly import twin_link
from waysaid.strings.link import Link, LinkKind, Place, Saying
from waysaid.strings.show import change, gap, gap_shown, times
from waysaid.strings.sight import Sight, Term

Pair = tuple[Term, Term]


def changed(first: Sight, second: Sight) -> tuple[Pair, ...] | None:
    """Pair every given number that changed with what it became; None for unlike forms.

    Numbers of one sign are paired so that they change least, those in the same place first.
    """
    if first.form != second.form or not first.terms:
        return None
    left, right = leftovers(first.terms, second.terms)
    pairs: list[Pair] = []
    for old in left:
        fitting = [new for new in right if new.sign is old.sign]
        new = min(fitting, key=lambda one: (gap(one.size, old.size), one.place != old.place))
        right.remove(new)
        pairs.append((old, new))
    return tuple(pairs)


def leftovers(first: tuple[Term, ...], second: tuple[Term, ...]) -> tuple[list[Term], list[Term]]:
    """Leave out the numbers that both have, each as often as both have it."""
    left, right = list(first), list(second)
    for old in first:
        twins = [new for new in right if (new.sign, new.size) == (old.sign, old.size)]
        if twins:
            left.remove(old)
            right.remove(next((new for new in twins if new.place == old.place), twins[0]))
    return left, right


def change_links(first: Sight, second: Sight) -> Iterator[Link]:
    """Yield the links that compare two sums or differences of one form, number by number."""
    pairs = changed(first, second)
    if pairs is None:
        return
    match len(pairs):
        case 0:
            yield from turned_around(first, second, first.terms, second.terms)
        case 1:
            yield _one_changes(first, second, pairs[0])
        case 2:
            yield from _both_change(first, second, pairs)
    yield from _scaled(first, second)
    yield from twin_link(first, second, pairs)


def turned_around(
    first: Sight, second: Sight, had: tuple[Term, ...], has: tuple[Term, ...]
) -> Iterator[Link]:
    """Yield the link of two problems with the same numbers in another order."""
    if [term.size for term in had] == [term.size for term in has]:
        return
    marks = marks_of(first, had) + marks_of(second, has)
    shows = (first.filled, second.filled)
    yield Link(LinkKind.TURNED_AROUND, (first.at, second.at), shows, Saying.TURNED, (), marks)


def marks_of(sight: Sight, terms: tuple[Term, ...]) -> tuple[tuple[int, Place], ...]:
    """Return the places of some numbers of a problem, as a link marks them."""
    return tuple((sight.at, term.place) for term in terms)


_ONE_SAYINGS = {
    (False, True, True): Saying.NUMBER_UP_ANSWER_UP,
    (False, True, False): Saying.NUMBER_DOWN_ANSWER_DOWN,
    (False, False, True): Saying.TAKE_MORE,
    (False, False, False): Saying.TAKE_LESS,
    (True, True, True): Saying.UP_MISSING_UP,
    (True, True, False): Saying.DOWN_MISSING_DOWN,
    (True, False, True): Saying.UP_MISSING_DOWN,
    (True, False, False): Saying.DOWN_MISSING_UP,
}
"""By: a number is missing, the number counts for the answer, it went up."""


def _one_changes(first: Sight, second: Sight, pair: Pair) -> Link:
    old, new = pair
    by, up = gap_shown(old.shown, new.shown), new.size > old.size
    saying = _ONE_SAYINGS["=" in first.form, old.sign is Sign.PLUS, up]
    return Link(
        LinkKind.ONE_CHANGES,
        (first.at, second.at),
        (change(old.shown, new.shown), change(first.shown, second.shown)),
        saying,
        (old.shown, new.shown, by),
        ((first.at, old.place), (second.at, new.place)),
    )


def _both_change(first: Sight, second: Sight, pairs: tuple[Pair, ...]) -> Iterator[Link]:
    if first.answer != second.answer:
        return
    (one, one_new), (other, _) = pairs
    by = gap_shown(one.shown, one_new.shown)
    if one.sign is other.sign:
        giver, taker = (one, other) if one_new.size < one.size else (other, one)
        twins = giver.size == taker.size
        saying = Saying.MOVED_BETWEEN_TWINS if twins else Saying.MOVED
        numbers = (by, giver.shown, taker.shown)
    else:
        saying = Saying.BOTH_UP if one_new.size > one.size else Saying.BOTH_DOWN
        numbers = (by, one.shown, other.shown)
    yield Link(
        LinkKind.BOTH_CHANGE,
        (first.at, second.at),
        (*(change(old.shown, new.shown) for old, new in pairs), first.filled, second.filled),
        saying,
        numbers,
        (
            *((first.at, old.place) for old, _ in pairs),
            *((second.at, new.place) for _, new in pairs),
        ),
    )


_SCALES = {
    10: (LinkKind.TEN_TIMES, Saying.TENS),
    100: (LinkKind.TEN_TIMES, Saying.HUNDREDS),
    2: (LinkKind.DOUBLE_HALF, Saying.DOUBLED),
}


def _scaled(first: Sight, second: Sight) -> Iterator[Link]:
    """Yield a link where every number is ten, a hundred or two times the other's."""
    for by, (kind, saying) in _SCALES.items():
        for small, large in ((first, second), (second, first)):
            if not _times(small.terms, large.terms, by):
                continue
            turned = saying is Saying.DOUBLED and small is second
            yield Link(
                kind,
                (first.at, second.at),
                tuple(times(size, by) for size in (*_sizes(small.terms), small.shown)),
                Saying.HALVED if turned else saying,
                _sizes(small.terms),
                tuple((one.at, term.place) for one in (first, second) for term in one.terms),
            )


def _sizes(terms: tuple[Term, ...]) -> tuple[Number, ...]:
    return tuple(term.shown for term in terms)


def _times(small: tuple[Term, ...], large: tuple[Term, ...], by: int) -> bool:
    """Tell whether each number is `by` times its fellow, in order or turned around."""
    few = sorted((term.sign.value, term.size * by) for term in small)
    many = sorted((term.sign.value, term.size) for term in large)
    return few == many and any(term.size for term in small)
