"""The lattice of a line: every number and every meaning that may begin at each of its words."""

from dataclasses import dataclass, replace

from waysaid.hearing.lexicon import Lexicon
from waysaid.hearing.meaning import Meaning
from waysaid.hearing.numerals import Numeral, numerals_at
from waysaid.hearing.word import Pause, Word
from waysaid.number import Exact, exact, negative


@dataclass(frozen=True, slots=True)
class Item:
    """A stretch of words read as one thing: a number, a meaning, or neither (a word unknown).

    `start` and `end` count words; `span` is (start, end) in characters of the line. `noise` is how
    far the words are from the plain way to say it; `pause` is what comes before. `against` marks a
    verdict with its `than`: the other number comes; `anew` a word that takes back the number before
    it, for another is said in its stead.
    """

    start: int
    end: int
    span: tuple[int, int]
    pause: Pause
    meaning: Meaning | None = None
    numeral: Numeral | None = None
    noise: int = 0
    against: bool = False
    anew: bool = False


def plainly_said(here: tuple[Item, ...]) -> list[Item]:
    """Return what was plainly said at a place, of the longest phrases alone."""
    plain = [one for one in here if not one.noise]
    end = max((one.end for one in plain), default=0)
    return [one for one in plain if one.end == end]


def lattice(words: tuple[Word, ...], lexicon: Lexicon) -> tuple[tuple[Item, ...], ...]:
    """Return, for each word, all that may begin there; a word that means nothing is an item too."""
    found = [_items_at(words, place, lexicon) for place in range(len(words))]
    inside = {
        place
        for here in found
        for item in here
        if item.meaning and not item.noise
        for place in range(item.start + 1, item.end)
    }
    known = {
        place
        for here in found
        for item in here
        if item.meaning is Meaning.KNEW and not item.noise
        for place in range(item.start + 1, item.end)
    }
    doubted = (
        tuple(_doubtful(item, found, place in known) for item in here) if place in inside else here
        for place, here in enumerate(found)
    )
    return _last_heard(tuple(doubted))


def _doubtful(item: Item, found: list[tuple[Item, ...]], named: bool) -> Item:
    """Return a number as odder that begins inside a plain phrase: has to be, carry the one sixty.

    That is one heard amiss, or a hundred of which only the one was said, or one that only names a
    table.
    """
    one = item.numeral
    if one is None:
        return item
    rest = found[item.start + 1] if item.start + 1 < item.end else ()
    short = any(
        other.numeral and other.end == item.end and exact(other.numeral.leaf) == _less(one)
        for other in rest
    )
    return replace(item, noise=item.noise + 1) if one.noise > 1 or short or named else item


def _less(numeral: Numeral) -> Exact | None:
    """Return what a number comes to without the one hundred in it; None where it has not one."""
    leaf = numeral.leaf
    return leaf - 100 if isinstance(leaf, int) and 100 < leaf < 200 else None


def _last_heard(items: tuple[tuple[Item, ...], ...]) -> tuple[tuple[Item, ...], ...]:
    """Return the lattice in which a last word that a number is awaited at is plainly one: is for.

    Only behind another number: what is the plus for. Nor where something is shared, too.
    """
    if not items or not any(one.numeral and not one.noise for here in items[:-1] for one in here):
        return items
    before = [one for here in items for one in here if one.end == len(items) - 1]
    if any(one.meaning is Meaning.SHARE and not one.noise for one in before):
        return items
    rest = any(one.meaning is Meaning.LEFT_OVER and one.end > one.start + 1 for one in before)
    if not rest and not any(one.meaning in _AWAIT and not one.noise for one in before):
        return items
    last = tuple(replace(one, noise=0) if one.numeral else one for one in items[-1])
    return (*items[:-1], last)


_AWAIT = (Meaning.EQUALS, Meaning.PLUS, Meaning.MINUS, Meaning.TIMES, Meaning.OVER)
"""What a number comes right behind."""


def _items_at(words: tuple[Word, ...], place: int, lexicon: Lexicon) -> tuple[Item, ...]:
    first, pause = words[place].span[0], words[place].pause
    readings = numerals_at(words, place, lexicon)
    headless = _HEADLESS if _behind_wholes(words, place, lexicon) else 0
    ended = [one for one in readings if _ended(one, words, lexicon)]
    found = [
        Item(
            place,
            one.end,
            (first, words[one.end - 1].span[1]),
            pause,
            None,
            one,
            one.noise
            + _cut_short(one, readings, words, lexicon)
            + headless
            - (one in ended)
            - _counts_groups(one, words, lexicon)
            + _runs_on(one, words, lexicon),
        )
        for one in readings
    ]
    found.extend(_below_zero(words, place, lexicon))
    counted = any(one.end == place + 1 and not one.noise for one in readings)
    phrase: tuple[str, ...] = ()
    for end in range(place + 1, min(place + lexicon.longest, len(words)) + 1):
        if end > place + 1 and words[end - 1].pause is not Pause.NONE:
            break
        phrase = (*phrase, words[end - 1].text)
        span = (first, words[end - 1].span[1])
        for meaning, noise in lexicon.phrases.get(phrase, ()):
            doubtful = counted and end == place + 1 and meaning not in _ALSO_NUMBERS
            said = _THAN.get(meaning, meaning)
            more = Item(place, end, span, pause, said, None, noise + doubtful)
            found.append(replace(more, against=True) if said is not meaning else more)
    found = _verdicts_whole(_kept_whole(found), words, lexicon)
    if _ends_line(readings, words) and _promised(place, words, lexicon):
        found = [one if one.numeral else replace(one, noise=one.noise + _CUT) for one in found]
    if all(item.noise for item in found):
        found.append(Item(place, place + 1, words[place].span, pause))
    return tuple(found)


def _kept_whole(found: list[Item]) -> list[Item]:
    """Return the items without an odd word of correcting that begins a plain phrase: or so.

    Nor a filler that begins a plain word for a result: así que.
    """
    longest = max((one.end for one in found if one.meaning and not one.noise), default=0)
    result = max(
        (one.end for one in found if one.meaning is Meaning.SO and not one.noise), default=0
    )
    return [
        one
        for one in found
        if (one.meaning is not Meaning.CORRECT or not one.noise or one.end >= longest)
        and (one.meaning is not Meaning.FILLER or one.end >= result)
    ]


def _verdicts_whole(found: list[Item], words: tuple[Word, ...], lexicon: Lexicon) -> list[Item]:
    """Return the items, of verdicts that end with `than` or without it only those with it.

    What is larger than another is not the larger one. `Than` alone is no verdict, as `grande` is.
    """
    ends: dict[tuple[Meaning | None, int], list[int]] = {}
    for item in found:
        if item.meaning in _VERDICTS:
            ends.setdefault((item.meaning, item.noise), []).append(item.end)
    kept = []
    than = max((max(same) for same in ends.values() if len(same) > 1), default=0)
    for item in found:
        if item.meaning in _OF_TWO and item.end < than:
            continue
        same = ends.get((item.meaning, item.noise), [item.end])
        if item.end == max(same):
            ends_so = len(same) > 1 and not _may_mean(words, item.end - 1, lexicon, _VERDICTS, True)
            kept.append(replace(item, against=True) if ends_so else item)
    return kept


_VERDICTS = (Meaning.LARGER, Meaning.SMALLER)
_THAN = {Meaning.LARGER_THAN: Meaning.LARGER, Meaning.SMALLER_THAN: Meaning.SMALLER}
"""Verdicts that the other number comes behind, and what they are without it."""

_OF_TWO = (Meaning.LARGER_ONE, Meaning.SMALLER_ONE)


def _below_zero(words: tuple[Word, ...], place: int, lexicon: Lexicon) -> list[Item]:
    """Return the numbers below zero that begin there: minus six."""
    if not _may_mean(words, place, lexicon, (Meaning.MINUS,), paused=True):
        return []
    if place + 1 >= len(words) or words[place + 1].pause is not Pause.NONE:
        return []
    found = []
    for one in numerals_at(words, place + 1, lexicon)[:2]:
        below = replace(one, leaf=negative(one.leaf), start=place)
        span = (words[place].span[0], words[one.end - 1].span[1])
        found.append(Item(place, one.end, span, words[place].pause, None, below, one.noise + 1))
    return found


_HEADLESS = 2
"""How odd a number is that begins with a point right behind its wholes: `point two` of
`four point two`. Our choice."""


def _behind_wholes(words: tuple[Word, ...], place: int, lexicon: Lexicon) -> bool:
    """Tell whether a point stands at a place right behind a number that it may belong to."""
    if not place or words[place].pause is not Pause.NONE:
        return False
    if (words[place].text,) not in lexicon.numbers.points:
        return False
    before = numerals_at(words, place - 1, lexicon)
    return any(one.end == place and not one.noise for one in before)


def _ended(numeral: Numeral, words: tuple[Word, ...], lexicon: Lexicon) -> bool:
    """Tell whether a number of tens and misheard ones ends where something else begins.

    Of `thirty for and two` the word belongs to the tens: nothing else can end so.
    """
    place = numeral.end
    if numeral.noise < _AMISS or place - numeral.start != 2 or not isinstance(numeral.leaf, int):
        return False
    tens_and_ones = 20 < numeral.leaf < 100 and numeral.leaf % 10 > 0
    behind = place >= len(words) or words[place].pause is not Pause.NONE
    behind = behind or _may_mean(words, place, lexicon, (*_GO_ON, Meaning.EQUALS))
    return tens_and_ones and behind


def _counts_groups(numeral: Numeral, words: tuple[Word, ...], lexicon: Lexicon) -> int:
    """Return how much less odd a misheard number is right before groups: to sevens, for fives."""
    place = numeral.end
    if numeral.noise < _AMISS or place >= len(words) or words[place].pause is not Pause.NONE:
        return 0
    groups = numerals_at(words, place, lexicon)
    return _AMISS * any(one.many and not one.noise for one in groups)


def _runs_on(numeral: Numeral, words: tuple[Word, ...], lexicon: Lexicon) -> int:
    """Return how odd a number in units is whose last word counts units itself.

    Of `four hundreds and three hundreds` 403 is no number.
    """
    if not numeral.places or numeral.end >= len(words):
        return 0
    last = numerals_at(words, numeral.end - 1, lexicon)
    return _AMISS * any(one.places and one.end > numeral.end for one in last)


_AMISS = 2
"""How odd a word is that a recogniser made of another."""

_CUT = 6
"""How odd tens are that are broken off where nothing goes on behind the ones: 30 of `six times five
is thirty two`. A true step does not bear that out. Our choice."""

_ALSO_NUMBERS = (Meaning.HALF, Meaning.DOUBLE, Meaning.HUNDREDS, Meaning.TENS, Meaning.ONES)
"""Meanings of words that are numbers, too, and mean them as often."""


def _cut_short(
    numeral: Numeral, readings: tuple[Numeral, ...], words: tuple[Word, ...], lexicon: Lexicon
) -> int:
    """Return how odd it is to break off a number inside a longer one: sixty of sixty two."""
    ends = numeral.end < len(words) and _ends_line(readings, words)
    if ends and _promised(numeral.start, words, lexicon):
        return _CUT
    longer = [one for one in readings if one.end > numeral.end and one.noise <= numeral.noise]
    if not longer:
        behind = (one for one in readings if one.end > numeral.end)
        return int(any(_ended(one, words, lexicon) for one in behind))
    joined = _may_mean(words, numeral.end, lexicon, _JOINTS)
    if joined and _takes_part(numeral, readings, words, lexicon):
        return 0
    if not isinstance(numeral.leaf, int) or numeral.leaf % 100 == 0:
        goes_on = _may_mean(words, max(one.end for one in readings), lexicon, _GO_ON)
        return 1 if not joined else 0 if goes_on else 2
    if numeral.leaf <= 10:
        return 1
    whole = max(longer, key=lambda one: one.end)
    if isinstance(whole.leaf, int) and whole.leaf < 100 and _stops(whole.end, words, lexicon):
        return _CUT
    if not joined:
        return 2 if numeral.leaf < 100 else 3
    return 1 if _may_mean(words, whole.end, lexicon, _GO_ON) else 3


def _ends_line(readings: tuple[Numeral, ...], words: tuple[Word, ...]) -> bool:
    """Tell whether a whole number of several words, heard well enough, ends the line: 630."""
    return any(
        one.end == len(words) > one.start + 1 and isinstance(one.leaf, int) and one.noise < _AMISS
        for one in readings
    )


def _promised(place: int, words: tuple[Word, ...], lexicon: Lexicon) -> bool:
    """Tell whether a pause, `so` or `so it's` stands before a number: so six thirty."""
    if words[place].pause is not Pause.NONE:
        return True
    before = place - 1
    if before > 0 and _may_mean(words, before, lexicon, (Meaning.EQUALS,), paused=True):
        before -= 1
    return before >= 0 and _may_mean(words, before, lexicon, (Meaning.SO,), paused=True)


def _stops(place: int, words: tuple[Word, ...], lexicon: Lexicon) -> bool:
    """Tell whether the line, or what is being said, ends at a place."""
    if place >= len(words) or words[place].pause is not Pause.NONE:
        return True
    return _may_mean(words, place, lexicon, (Meaning.SO, Meaning.THEN, Meaning.CORRECT))


def _takes_part(
    numeral: Numeral, readings: tuple[Numeral, ...], words: tuple[Word, ...], lexicon: Lexicon
) -> bool:
    """Tell whether a part of something comes behind a number: 34 of `thirty four and half of`."""
    longest = max(readings, key=lambda one: one.end)
    parts = isinstance(numeral.leaf, int) and not isinstance(longest.leaf, int)
    whole = parts and longest.leaf and int(exact(longest.leaf)) == numeral.leaf
    return bool(whole) and _may_mean(words, longest.end, lexicon, (Meaning.OF,))


_JOINTS = (Meaning.AND,)
_GO_ON = (
    Meaning.AND,
    Meaning.PLUS,
    Meaning.MINUS,
    Meaning.TIMES,
    Meaning.OVER,
    Meaning.OF,
    Meaning.AGAIN,
    Meaning.MORE,
)
"""What comes behind a number that belongs to something else: `50 and seven and five`."""


def _may_mean(
    words: tuple[Word, ...],
    place: int,
    lexicon: Lexicon,
    wanted: tuple[Meaning, ...],
    paused: bool = False,
) -> bool:
    """Tell whether the word at a place has one of the meanings, with no pause before it."""
    if place >= len(words) or not (paused or words[place].pause is Pause.NONE):
        return False
    found = lexicon.phrases.get((words[place].text,), ())
    return any(meaning in wanted for meaning, noise in found if not noise)


def is_number(here: tuple[Item, ...]) -> bool:
    """Tell whether a number begins here, and no word that plainly means something else."""
    words = any(one.meaning and not one.noise for one in here)
    return any(one.numeral and not (one.numeral.noise and words) for one in here)
