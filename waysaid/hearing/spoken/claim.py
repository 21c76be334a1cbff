"""The answer that a line tells by where its numbers stand: before its reasons, or at the end."""

from collections.abc import Iterable

from waysaid.hearing.meaning import Meaning
from waysaid.hearing.spoken.item import Item
from waysaid.hearing.spoken.trail import Lattice
from waysaid.hearing.word import Pause
from waysaid.number import Exact, Order, exact

Phrase = list[Item]
"""What was plainly said in one place, all of it ending at the same word."""

LEADS = frozenset(
    {
        Meaning.FILLER,
        Meaning.IT,
        Meaning.EQUALS,
        Meaning.SO,
        Meaning.THINK,
        Meaning.KNEW,
        Meaning.UNSURE,
        Meaning.SEE,
        Meaning.THEN,
        Meaning.LEFT_OVER,
        Meaning.ABOUT,
    }
)
"""What may stand before an answer and beside it: I think it's nine. Our choice."""

BY_THE_WAY = frozenset({Meaning.FILLER, Meaning.IT, Meaning.THINK, Meaning.KNEW})
"""What may stand between a number and the word for its reasons."""


def claim(phrases: list[Phrase]) -> Item | None:
    """Return the first number of a line, where its reasons come right behind it; else None.

    Of `it's fourteen because from thirty eight` the fourteen is the answer, whatever comes of the
    reasons. A number that belongs to an act is none: I took five because.
    """
    found: Item | None = None
    for phrase in phrases:
        said = {one.meaning for one in phrase if one.meaning}
        number = next((one for one in phrase if one.numeral), None)
        if number is not None and said - _ALSO:
            return None
        if number is not None:
            if found is not None or number.numeral is None or number.numeral.many:
                return None
            found = number
        elif found is None:
            if said and said.isdisjoint(LEADS):
                return None
        elif Meaning.BECAUSE in said:
            return _with_reasons(found, said)
        elif said.isdisjoint(BY_THE_WAY):
            return None
    return None


def claimed_late(phrases: list[Phrase]) -> Item | None:
    """Return the number that `so` promised, its reasons right behind it and no other promised.

    Of `so it's twenty four because a fifth is six` the six is no answer.
    """
    found: Item | None = None
    last: Item | None = None
    promised = False
    for phrase in phrases:
        said = {one.meaning for one in phrase if one.meaning}
        number = next((one for one in phrase if one.numeral), None)
        if number is not None:
            last = number if promised and number.numeral and not number.numeral.many else None
            found = None if last else found
            promised = False
        elif last is not None and Meaning.BECAUSE in said:
            found, last = _with_reasons(last, said), None
        elif said.isdisjoint(BY_THE_WAY):
            promised = Meaning.SO in said or (promised and Meaning.EQUALS in said)
            last = None
    return found


_ALSO = frozenset({Meaning.FILLER, Meaning.ONE, Meaning.HALF})
"""What the words of a number may mean too, and it stays one: a half."""


def acts_last(phrases: list[Phrase], items: Lattice) -> tuple[frozenset[Exact], frozenset[Exact]]:
    """Return what the last number of a line may be where it belongs to an act; else nothing.

    Of `got fifty six and then I gave one back` it is the one, and what the act comes to was not
    said. Of `take one sixty one` it may be the 61 as well. With it, what the act is plainly of:
    none of what is put in, for that is the answer too.
    """
    before: set[Meaning] = set()
    last: Item | None = None
    plainly = False
    for phrase in phrases:
        said = {one.meaning for one in phrase if one.meaning}
        if any(one.numeral for one in phrase):
            acts = phrase[0].pause is Pause.NONE and not before.isdisjoint(_ACTS)
            plainly = before.isdisjoint((Meaning.ADD, Meaning.MORE))
            last, before = phrase[0] if acts else None, set()
        elif said.isdisjoint((Meaning.FILLER, Meaning.IT)):
            before = said
    if last is None:
        return frozenset(), frozenset()
    ends = (one for here in items for one in here if one.end == last.end)
    return _values(ends), _values(one for one in items[last.start] if plainly)


def _values(items: Iterable[Item]) -> frozenset[Exact]:
    return frozenset(exact(one.numeral.leaf) for one in items if one.numeral)


def _with_reasons(number: Item, said: set[Meaning]) -> Item | None:
    """Return a number behind which a word plainly is `because`, and no filler or `is` as well."""
    plain = said.isdisjoint((Meaning.EQUALS, Meaning.FILLER, Meaning.IT))
    return number if plain else None


def side_ended_on(phrases: list[Phrase]) -> Order | None:
    """Return how a line ends on a side behind `so`: so it's the left one, so right is bigger.

    Or behind a pause, where nothing was smaller: one is 62 and the other 61, the left one. What is
    smaller of which nothing was said before is the side itself: it's smaller, the left one. Or
    behind its verdict, that a clause begins with: nine twelfths and eight, bigger is the first.
    """
    promised, smaller, side, found, first = False, False, None, None, True
    ahead: Order | None = None
    for phrase in phrases:
        said = {one.meaning for one in phrase if one.meaning}
        order = next((order for word, order in _ORDERS.items() if word in said), None)
        paused = bool(phrase) and phrase[0].pause is not Pause.NONE
        named = _side(phrase, said) if promised or (paused and (first or not smaller)) else None
        led = _side(phrase, said) if ahead and not paused else None
        if led is not None and order is None:
            side = found = led if ahead is Order.MORE else led.turned
        elif named is not None:
            found = None if Meaning.TRUE in said else named.turned if smaller and first else named
            side = named
        elif side is not None and order is not None:
            found = side if order is Order.MORE else side.turned
        elif Meaning.SO in said or said.isdisjoint(_BETWEEN):
            side, found = None, None
        begins = order if paused or Meaning.SO in said else None
        ahead = begins or (None if paused or said.isdisjoint(_BETWEEN) else ahead)
        smaller = smaller or order is Order.LESS
        first = first and (order is not None or not said.isdisjoint(_BETWEEN)) and bool(said)
        promised = Meaning.SO in said or (promised and not said.isdisjoint(_BETWEEN))
    return found


def _side(phrase: Phrase, said: set[Meaning]) -> Order | None:
    """Return which side is larger where the one named is; `left` and `right` alone name one."""
    alone = all(one.end - one.start == 1 for one in phrase)
    if Meaning.FIRST in said or (alone and Meaning.REST in said):
        return Order.MORE
    return Order.LESS if Meaning.LAST in said or (alone and Meaning.TRUE in said) else None


_BETWEEN = BY_THE_WAY | {Meaning.EQUALS}
_ORDERS = {Meaning.LARGER: Order.MORE, Meaning.SMALLER: Order.LESS}

_ACTS = frozenset({Meaning.ADD, Meaning.TAKE, Meaning.GIVE, Meaning.PLUS, Meaning.MINUS})


def ended_on(phrases: list[Phrase]) -> Item | None:
    """Return the number that ends a line behind a pause or a word for a result; else None."""
    promised, last = False, None
    for phrase in phrases:
        said = {one.meaning for one in phrase if one.meaning}
        number = next((one for one in phrase if one.numeral), None)
        if number is not None:
            paused = phrase[0].pause is not Pause.NONE
            last = number if promised or paused else None
            promised = False
        elif said and said <= {Meaning.EQUALS, Meaning.SO, Meaning.IT, Meaning.FILLER}:
            promised = promised or not said.isdisjoint((Meaning.EQUALS, Meaning.SO))
            last = None
        else:
            promised, last = False, None
    if last is None or last.numeral is None or last.numeral.many:
        return None
    return last
