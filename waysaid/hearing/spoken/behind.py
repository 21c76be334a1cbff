"""What comes right behind a number, and makes it no answer: back, more, something, I got lost."""

from waysaid.hearing.meaning import Meaning
from waysaid.hearing.spoken.item import is_number
from waysaid.hearing.spoken.trail import Lattice
from waysaid.hearing.word import Pause
from waysaid.number import Number


def says(items: Lattice, place: int, meaning: Meaning) -> bool:
    """Tell whether a word that plainly means so begins at a place, and is not of `more or less`."""
    here = items[place] if place < len(items) else ()
    near = max((one.end for one in here if one.meaning is Meaning.ABOUT), default=0)
    return any(
        one.meaning is meaning
        and not one.noise
        and (one.end >= near or meaning is not Meaning.MORE)
        for one in here
    )


def lost(items: Lattice) -> bool:
    """Tell whether the work was given up behind the last number: and then I lost count.

    So it was where a result was promised and is not known: and that's, um, I don't know.
    """
    numbers = [place for place, here in enumerate(items) if is_number(here)]
    awaited = False
    for place in range(numbers[-1] + 1, len(items)) if numbers else ():
        if says(items, place, Meaning.LOST) or (awaited and says(items, place, Meaning.UNSURE)):
            return True
        awaited = awaited or says(items, place, Meaning.EQUALS)
    return False


def ends_before(items: Lattice, meaning: Meaning) -> frozenset[int]:
    """Return where numbers end right behind which a word plainly means so."""
    return frozenset(
        one.span[1]
        for here in items
        for one in here
        if one.numeral and says(items, one.end, meaning)
    )


def paired(items: Lattice) -> tuple[Number, Number] | None:
    """Return the two numbers that the line ends on, put together: and now it's ten and three."""
    every = [one for here in items for one in here if one.numeral and not one.noise]
    last = max(every, key=lambda one: (one.end, one.end - one.start), default=None)
    if last is None or last.end < len(items) or not _joined(items, last.start - 1):
        return None
    first = max(
        (one for one in every if one.end == last.start - 1),
        key=lambda one: one.end - one.start,
        default=None,
    )
    if first is None or first.numeral is None or last.numeral is None:
        return None
    return first.numeral.leaf, last.numeral.leaf


def _joined(items: Lattice, place: int) -> bool:
    """Tell whether a word at a place joins two numbers, with no pause between."""
    joins = says(items, place, Meaning.AND) or says(items, place, Meaning.PLUS)
    return joins and items[place][0].pause is Pause.NONE


def handed(items: Lattice) -> frozenset[int]:
    """Return where numbers end right behind which `back` comes, and no other number."""
    return frozenset(
        one.span[1]
        for here in items
        for one in here
        if one.numeral and says(items, one.end, Meaning.BACK) and not _goes_back(items, one.end)
    )


def _goes_back(items: Lattice, place: int) -> bool:
    """Tell whether a number says how far it goes back: twenty, back three."""
    apart = items[place][0].pause is not Pause.NONE
    return apart or (place + 1 < len(items) and is_number(items[place + 1]))
