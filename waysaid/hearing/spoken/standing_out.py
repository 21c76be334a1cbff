"""Numbers that stand out in a line: one it opens with, one it ends on, one with its reasons."""

from collections.abc import Iterator
from dataclasses import dataclass

from waysaid.hearing.meaning import Meaning
from waysaid.hearing.spoken.behind import says
from waysaid.hearing.spoken.claim import BY_THE_WAY, LEADS, Phrase
from waysaid.hearing.spoken.item import Item, is_number
from waysaid.hearing.spoken.trail import Lattice
from waysaid.hearing.word import Pause
from waysaid.number import Number

NEAR = 2
"""Up to this grade of noise a number that stands out may be meant: too hundred ten. Our choice."""


@dataclass(frozen=True, slots=True)
class StandingOut:
    """What the numbers that stand out in a line may be.

    `opens` begins the line, a pause behind it, and `only` is whether it is the line's one number,
    plainly led by a word for a result; `ends` ends the line behind a pause or a word for a result;
    `reasoned` are numbers behind which the reasons come. `wanting` is whether the line ends on a
    word for a result that never came: and two twelves is, um.
    """

    opens: tuple[Number, ...]
    only: bool
    ends: tuple[Number, ...]
    reasoned: tuple[Number, ...]
    wanting: bool


def standing_out(phrases: list[Phrase], items: Lattice) -> StandingOut:
    """Return what the numbers that stand out in a line may be."""
    opens = list(_opens(items))
    numbers = [phrase for phrase in phrases if any(one.numeral for one in phrase)]
    led = bool(opens) and any(
        one.meaning is Meaning.EQUALS and not one.noise for one in items[0] if opens[0].start
    )
    only = led and len(numbers) == 1 and all(one.end == numbers[0][0].end for one in opens)
    return StandingOut(
        _leaves(opens),
        only,
        _leaves(one for here in items for one in here if _ends(one, items)),
        _leaves([*_misheard(items), *_reasoned(phrases)]),
        _wanting(phrases),
    )


def _leaves(found: Iterator[Item] | list[Item]) -> tuple[Number, ...]:
    return tuple(one.numeral.leaf for one in found if one.numeral and not one.numeral.many)


def _opens(items: Lattice) -> Iterator[Item]:
    """Yield what the number may be that begins a line and has a pause behind it."""
    place = 0
    while place < len(items):
        found = [
            one
            for one in items[place]
            if one.numeral
            and one.noise <= NEAR
            and one.end < len(items)
            and items[one.end][0].pause is not Pause.NONE
        ]
        if found:
            yield from found
            return
        leads = [one.end for one in items[place] if one.meaning in LEADS and not one.noise]
        if is_number(items[place]) or not leads:
            return
        place = max(leads)


def _ends(one: Item, items: Lattice) -> bool:
    """Tell whether a number ends the line behind a pause, or a word for a result."""
    if not one.numeral or one.end != len(items) or one.noise > NEAR or not one.start:
        return False
    return items[one.start][0].pause is not Pause.NONE or _promised(one.start, items)


def _promised(place: int, items: Lattice) -> bool:
    """Tell whether a plain word for a result ends at a place, or a word that means nothing does."""
    before = [one for here in items[:place] for one in here if one.end == place and not one.noise]
    start = min((one.start for one in before), default=place)
    said = {one.meaning for one in before if one.start == start}
    if any(one.numeral for one in before):
        return False
    if not said.isdisjoint((Meaning.EQUALS, Meaning.SO)):
        return True
    passed = start < place and not said.isdisjoint((Meaning.FILLER, Meaning.IT))
    return passed and _promised(start, items)


def _reasoned(phrases: list[Phrase]) -> Iterator[Item]:
    """Yield the numbers right behind which plain reasons come."""
    last: Item | None = None
    for phrase in phrases:
        said = {one.meaning for one in phrase if one.meaning}
        number = next((one for one in phrase if one.numeral), None)
        if number is not None:
            last = number
        elif Meaning.BECAUSE in said:
            if last is not None and said.isdisjoint((Meaning.EQUALS, Meaning.FILLER, Meaning.IT)):
                yield last
            last = None
        elif said.isdisjoint(BY_THE_WAY):
            last = None


def _misheard(items: Lattice) -> Iterator[Item]:
    """Yield what a misheard number may be that opens the line, reasons behind it: ate because."""
    for one in items[0] if items else ():
        if one.numeral and 0 < one.noise <= NEAR and says(items, one.end, Meaning.BECAUSE):
            yield one


def _wanting(phrases: list[Phrase]) -> bool:
    """Tell whether a line ends on a number, a word for a result behind it, and no result."""
    promised = False
    for phrase in reversed(phrases):
        said = {one.meaning for one in phrase if one.meaning}
        if any(one.numeral for one in phrase):
            return promised
        plain = said <= {Meaning.EQUALS, Meaning.FILLER}
        if not plain or (promised and Meaning.EQUALS in said):
            return False
        promised = promised or Meaning.EQUALS in said
    return False
