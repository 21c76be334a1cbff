"""Numbers plainly taken back, another said right behind in their stead: is thirty, no, twenty."""

from dataclasses import replace

from waysaid.hearing.meaning import Meaning
from waysaid.hearing.spoken.item import Item, plainly_said
from waysaid.hearing.spoken.trail import Lattice
from waysaid.hearing.word import Pause

_BETWEEN = frozenset({Meaning.CORRECT, Meaning.EQUALS, Meaning.IT, Meaning.FILLER})
"""What may stand between a number and the one said in its stead: no, it's."""

_BEHIND = frozenset({Meaning.SO, Meaning.THEN, Meaning.BECAUSE})
"""What comes behind a number said anew that no step begins with."""


def amended(items: Lattice) -> Lattice:
    """Return the lattice in which words are marked that take back just the number before them.

    That is where another number comes right behind and no step begins with it, for then all of the
    step before is taken back. Both are whole: a part and a whole are seldom said one for the other.
    """
    old: Item | None = None
    words, marked, place = list[int](), dict[int, tuple[Item, ...]](), 0
    while place < len(items):
        here, phrase = items[place], plainly_said(items[place])
        number = next((one for one in phrase if one.numeral), None)
        if number is not None:
            if old is not None and words and _in_its_stead(old, number, items):
                marked |= {at: _meant(items[at], at == words[0]) for at in words}
            old, words = number, []
        elif _BETWEEN.isdisjoint(one.meaning for one in phrase):
            old, words = None, []
        elif any(_takes_back(one) for one in here):
            words.append(place)
        place = phrase[0].end if phrase else place + 1
    return tuple(marked.get(at, here) for at, here in enumerate(items)) if marked else items


def _meant(here: tuple[Item, ...], first: bool) -> tuple[Item, ...]:
    """Return words that take back, marked, and nothing else; others behind them mean no more."""
    words = (one for one in here if _takes_back(one))
    if first:
        return tuple(replace(one, anew=True) for one in words)
    return tuple(replace(one, meaning=Meaning.FILLER) for one in words)


def _takes_back(word: Item) -> bool:
    return word.meaning is Meaning.CORRECT and not word.noise


def _in_its_stead(old: Item, new: Item, items: Lattice) -> bool:
    one, other = (number.numeral and number.numeral.leaf for number in (old, new))
    if old.numeral is not None and old.numeral.many:
        return False
    if one == other or not (isinstance(one, int) and isinstance(other, int)):
        return False
    if new.end == len(items) or items[new.end][0].pause is not Pause.NONE:
        return True
    return not _BEHIND.isdisjoint(one.meaning for one in plainly_said(items[new.end]))
