"""Numbers that are only denied, or held against: it can't be 43, less than 40, 43 is too big."""

from collections.abc import Iterator

from waysaid.hearing.meaning import Meaning
from waysaid.hearing.spoken.item import Item, is_number
from waysaid.hearing.spoken.trail import Lattice
from waysaid.hearing.word import Pause
from waysaid.number import Verdict

_AGAINST = (Meaning.LARGER, Meaning.SMALLER)
_BETWEEN = (Meaning.THINK, Meaning.EQUALS)
_MUCH = (Meaning.LESS, Meaning.MORE)
_ALIKE = (Meaning.EQUALS, Meaning.EQUAL, Meaning.ALIKE)


def denied(items: Lattice) -> Iterator[tuple[int, int]]:
    """Yield where numbers stand behind a word such as not or less than, or before too big."""
    for here in items:
        for one in here:
            if one.noise:
                continue
            if one.meaning is Meaning.NOT or (one.meaning in _AGAINST and one.against):
                yield from _behind_at(items, one.end)
            elif one.numeral and _too_much(items, one.end):
                yield one.span


def _behind_at(items: Lattice, place: int) -> Iterator[tuple[int, int]]:
    """Yield where numbers begin at a place, with at most a word such as `it's` or two before."""
    places = {place}
    for _ in _BETWEEN:
        places |= {
            one.end
            for at in places
            for one in _at(items, at)
            if one.meaning in _BETWEEN and not one.noise
        }
    for at in places:
        yield from (one.span for one in _at(items, at) if one.numeral)


def _too_much(items: Lattice, place: int) -> bool:
    """Tell whether it is said at a place that what was just said is too much: is too big."""
    ends = [one.end for one in _at(items, place) if one.meaning is Meaning.EQUALS]
    return any(
        one.meaning is Meaning.FALSE or (one.meaning in _MUCH and one.end - one.start > 1)
        for at in ends
        for one in _at(items, at)
        if not one.noise
    )


def _at(items: Lattice, place: int) -> tuple[Item, ...]:
    """Return what may begin at a place with no pause before it."""
    here = items[place] if place < len(items) else ()
    return here if here and here[0].pause is Pause.NONE else ()


def unlike(items: Lattice) -> bool:
    """Tell whether one number is said not to be another: thirteen isn't fifteen."""
    ends = {one.end for here in items for one in here if one.numeral and not one.noise}
    for here in items:
        for one in here:
            if one.meaning is Meaning.NOT and not one.noise and one.start in ends:
                behind = items[one.end] if one.end < len(items) else ()
                after = {one.end, *(other.end for other in behind if other.meaning in _ALIKE)}
                if any(place < len(items) and is_number(items[place]) for place in after):
                    return True
    return False


def judged(items: Lattice) -> Verdict | None:
    """Return the verdict on a claim that ends the line: so no. Or that thirteen is not fifteen."""
    last = [one for here in items for one in here if one.meaning and one.end == len(items)]
    longest = min((one.start for one in last if not one.noise), default=0)
    said = {one.meaning for one in last if one.start == longest and not one.noise}
    if Meaning.FALSE in said or unlike(items):
        return Verdict.FALSE
    return Verdict.TRUE if Meaning.TRUE in said else None
