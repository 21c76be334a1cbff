"""A number named between a word of dividing and `by`: divided sixty by twenty."""

from waysaid.hearing.meaning import Meaning
from waysaid.hearing.spoken.item import Item, plainly_said
from waysaid.hearing.spoken.trail import Lattice
from waysaid.hearing.word import Pause

_BETWEEN = frozenset({Meaning.FILLER, Meaning.IT, Meaning.ONE})
"""What else may stand between: divided the sixty by twenty."""

_NOT_SO = (Meaning.SPLIT, Meaning.OVER)
"""What a word of dividing does not mean there."""


def by_is_over(items: Lattice) -> Lattice:
    """Return the lattice in which such a number is shared and `by` is no `times`."""
    left_out = list[Item]()
    divides: tuple[Item, ...] = ()
    number, place = False, 0
    while place < len(items):
        here, said = items[place], plainly_said(items[place])
        meant = {one.meaning for one in said}
        if here and here[0].pause is not Pause.NONE:
            divides = ()
        if Meaning.SHARE in meant:
            divides, number = here, False
        elif any(one.numeral for one in said):
            divides, number = () if number else divides, True
        elif {Meaning.TIMES, Meaning.BY} <= meant and divides and number:
            left_out += [one for one in here if one.meaning is Meaning.TIMES]
            left_out += [one for one in divides if one.meaning in _NOT_SO]
        elif meant.isdisjoint(_BETWEEN):
            divides = ()
        place = said[0].end if said else place + 1
    if not left_out:
        return items
    return tuple(tuple(one for one in here if one not in left_out) for here in items)
