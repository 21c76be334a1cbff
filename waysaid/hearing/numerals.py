"""Every number that may begin at a word of talk, from the tables of a language."""

from collections.abc import Iterator
from dataclasses import dataclass
from fractions import Fraction
from functools import lru_cache
from itertools import islice

from waysaid.hearing.digits import ordinal_digits, written_number
from waysaid.hearing.lexicon import Lexicon
from waysaid.hearing.measured import measured
from waysaid.hearing.near import near_values
from waysaid.hearing.wholes import Scan, Whole, wholes_at
from waysaid.hearing.word import Pause, Word
from waysaid.number import (
    MOST_DIGITS,
    Form,
    Number,
    decimal,
    exact,
    has_form,
    mixed,
    parts,
    percent,
)

REACH = 16
"""How many words one number takes at most: our choice, more than any number to a million takes."""

_MOST_PLACES = 4
"""The most places after a point that are heard: our choice, two more than a class needs."""


@dataclass(frozen=True, slots=True)
class Numeral:
    """A number as it is said in the words `start` to `end`.

    `many` tells that several of it are meant: sixes; `places` that it is said in units: two tens
    and four; `noise` is 0 said plainly, 1 unusual, 2 what a recogniser or typist makes of it.
    """

    leaf: Number
    start: int
    end: int
    many: bool
    noise: int
    places: bool


def numerals_at(words: tuple[Word, ...], place: int, lexicon: Lexicon) -> tuple[Numeral, ...]:
    """Return every number that begins at that word, longest first, plainest first of those.

    A number never goes over a pause. Returns () where none begins, or the place is past the end.
    """
    if not 0 <= place < len(words) or not _may_begin(words[place].text, lexicon):
        return ()
    texts = [words[place].text]
    for word in islice(words, place + 1, place + REACH):
        if word.pause is not Pause.NONE:
            break
        texts.append(word.text)
    found = _numerals(tuple(texts), lexicon)
    if not place:
        return found
    return tuple(
        Numeral(one.leaf, place, one.end + place, one.many, one.noise, one.places) for one in found
    )


def _may_begin(text: str, lexicon: Lexicon) -> bool:
    first = text[0]
    if first.isdigit() or text in lexicon.numbers.starts or first in ".,":
        return True
    return text not in lexicon.words and bool(near_values(text, lexicon))


@lru_cache(maxsize=8192)
def _numerals(texts: tuple[str, ...], lexicon: Lexicon) -> tuple[Numeral, ...]:
    """Return the numbers at the first of a few words."""
    scan = Scan(texts, lexicon)
    best: dict[tuple[object, ...], Numeral] = {}
    for one in _readings(scan):
        key = (one.end, repr(one.leaf), one.many, one.places)
        if key not in best or best[key].noise > one.noise:
            best[key] = one
    return tuple(sorted(best.values(), key=lambda one: (-one.end, one.noise, one.places)))


def _readings(scan: Scan) -> Iterator[Numeral]:
    written = written_number(scan.texts[0], scan.lexicon)
    for leaf, many, noise in written:
        yield Numeral(leaf, 0, 1, many, noise, False)
    wholes = wholes_at(scan, 0)
    for one in wholes:
        yield Numeral(one.value, 0, one.end, one.many, one.noise, False)
    yield from _decimals(scan, wholes)
    yield from _parted(scan, 0)
    yield from _over(scan, 0)
    for one in wholes:
        if not one.many and one.value:
            yield from _mixed(scan, one)
    yield from _percents(scan, wholes)
    yield from _in_places(scan, wholes)
    for value, end, noise, places in measured(scan, wholes):
        leaf = value if isinstance(value, int) else decimal(value, 2)
        yield Numeral(leaf, 0, end, False, noise, places)
        if isinstance(value, int) and value and end > 1:
            yield from _mixed(scan, Whole(value, end, noise))


def _decimals(scan: Scan, wholes: tuple[Whole, ...]) -> Iterator[Numeral]:
    """Read a point: zero point six five, point seventy five, three point two."""
    starts = [(one.value, one.end, one.noise) for one in wholes if not one.many]
    for whole, end, noise in [(0, 0, 0), *starts]:
        for point in scan.lexicon.numbers.points:
            if scan.has(point, end):
                for places, size, last, extra in _places(scan, end + len(point)):
                    value = whole + Fraction(places, 10**size)
                    both = min(2, noise + extra)
                    yield Numeral(decimal(value, size), 0, last, False, both, False)


def _places(scan: Scan, at: int) -> Iterator[tuple[int, int, int, int]]:
    """Return what may stand behind a point: digits said one by one, or a number of two digits."""
    places = 0
    for size in range(1, _MOST_PLACES + 1):
        here = scan.texts[at + size - 1 : at + size]
        if here in scan.lexicon.numbers.short.zero:
            single = 0
        else:
            ones = [w for w in wholes_at(scan, at + size - 1) if w.end == at + size and w.single]
            ones = [w for w in ones if w.value <= 9 and w.noise < 2 and not w.many]
            if not ones:
                break
            single = ones[0].value
        places = 10 * places + single
        yield places, size, at + size, 0
    for one in wholes_at(scan, at):
        if 10 <= one.value <= 999 and not one.many:
            yield one.value, len(str(one.value)), one.end, 0 if one.digits else one.noise


def _parted(scan: Scan, at: int) -> Iterator[Numeral]:
    """Read equal parts from a word on: three quarters, a third, half."""
    words = scan.lexicon.numbers
    for end in range(at + 1, min(at + words.longest, len(scan.texts)) + 1):
        phrase = scan.texts[at:end]
        if phrase in words.articles:
            yield from _named(scan, Whole(1, end), 0)
        for part in words.parts.get(phrase, ()):
            if part.noise:
                continue
            noise = 0 if part.value in {2, 4} else 1
            yield Numeral(Fraction(1, part.value), at, end, False, noise, False)
    for one in wholes_at(scan, at):
        if not one.many and one.value:
            yield from _named(scan, one, at)


def _over(scan: Scan, at: int) -> Iterator[Numeral]:
    """Read a fraction by its top and bottom: three over four."""
    for one in wholes_at(scan, at):
        for over in scan.lexicon.numbers.over if one.value and not one.many else ():
            if scan.has(over, one.end):
                for last in wholes_at(scan, one.end + len(over)):
                    if last.value and not last.many:
                        leaf, noise = parts(one.value, last.value), max(one.noise, last.noise)
                        yield Numeral(leaf, at, last.end, False, noise, False)


def _named(scan: Scan, top: Whole, at: int) -> Iterator[Numeral]:
    """Read a count and the name of a part; tenths and hundredths are places too: 0.6."""
    words = scan.lexicon.numbers
    ordinal = ordinal_digits(scan.texts[top.end]) if top.end < len(scan.texts) else None
    if ordinal:
        yield Numeral(parts(top.value, ordinal), at, top.end + 1, False, top.noise, False)
    for end in range(top.end + 1, min(top.end + words.longest, len(scan.texts)) + 1):
        for part in words.parts.get(scan.texts[top.end : end], ()):
            noise = max(top.noise, part.noise)
            yield Numeral(parts(top.value, part.value), at, end, False, noise, False)
            if part.value in {10, 100, 1000}:
                size = len(str(part.value)) - 1
                leaf = decimal(Fraction(top.value, part.value), size)
                yield Numeral(leaf, at, end, False, noise, True)


def _mixed(scan: Scan, whole: Whole) -> Iterator[Numeral]:
    """Read wholes and parts: two and a half, one and three quarters, one and three over four.

    What is shared out begins nothing in the middle of a number: of `treinta y dos entre tres`.
    """
    longest = max((one.end for one in wholes_at(scan, 0)), default=0)
    for begin, noise in scan.joined(scan.lexicon.numbers.part_joins, whole.end):
        over = _over(scan, begin) if begin >= longest else ()
        for part in (*_parted(scan, begin), *over):
            value = exact(part.leaf)
            if 0 < value < 1 and not part.places:
                bottom = part.leaf.denominator if isinstance(part.leaf, Fraction) else 0
                size = bottom or getattr(part.leaf, "size", 1)
                leaf = mixed(whole.value, int(value * size), size)
                both = max(whole.noise, part.noise, noise)
                yield Numeral(leaf, 0, part.end, False, both, False)
        for leaf, _, extra in (
            written_number(scan.texts[begin], scan.lexicon) if (begin < len(scan.texts)) else ()
        ):
            if isinstance(leaf, Fraction) and 0 < leaf < 1:
                made = mixed(whole.value, leaf.numerator, leaf.denominator)
                yield Numeral(made, 0, begin + 1, False, max(whole.noise, noise, extra), False)


def _percents(scan: Scan, wholes: tuple[Whole, ...]) -> Iterator[Numeral]:
    """Read percents: ten percent, 50 %, twelve and a half percent."""
    values = [(Fraction(w.value), w.end, w.noise) for w in wholes if not w.many]
    values += [(Fraction(exact(n.leaf)), n.end, n.noise) for n in _decimals(scan, wholes)]
    values += [
        (Fraction(exact(n.leaf)), n.end, n.noise)
        for w in wholes if w.value and not w.many for n in _mixed(scan, w)
    ]  # fmt: skip
    for leaf, many, noise in written_number(scan.texts[0], scan.lexicon):
        if not many and has_form(leaf, Form.DECIMAL):
            values.append((Fraction(exact(leaf)), 1, noise))
    for sign, odd in scan.lexicon.numbers.percents:
        for value, end, noise in values:
            if scan.has(sign, end):
                both = max(noise, odd)
                yield Numeral(percent(value / 100), 0, end + len(sign), False, both, False)


def _in_places(scan: Scan, wholes: tuple[Whole, ...]) -> Iterator[Numeral]:
    """Read a number said in its units: two tens and four, 4 tens, three tens five ones."""
    articles = [Whole(1, len(one)) for one in scan.lexicon.numbers.articles if scan.has(one, 0)]
    heads = [one for one in (*wholes, *articles) if not one.many and one.value]
    queue = [(unit, 0) for head in heads for unit in _units(scan, head)]
    while queue:
        (total, size, end, noise), before = queue.pop()
        if total < 10**MOST_DIGITS:
            yield Numeral(total, 0, end, False, noise, True)
        for begin, extra in scan.joined(scan.lexicon.numbers.joins, end):
            for one in wholes_at(scan, begin):
                both = max(noise, extra, one.noise)
                if one.many or not one.value:
                    continue
                if one.value < size and before < REACH:
                    yield Numeral(total + one.value, 0, one.end, False, both, True)
                for worth, small, last, more in _units(scan, one):
                    if small < size:
                        queue.append(((total + worth, small, last, max(both, more)), before + 1))


def _units(scan: Scan, count: Whole) -> list[tuple[int, int, int, int]]:
    """Return a count of a unit: its worth, the unit, where it ends, the noise."""
    words, found = scan.lexicon.numbers, []
    for end in range(count.end + 1, min(count.end + words.longest, len(scan.texts)) + 1):
        phrase = scan.texts[count.end : end]
        one = any(not value.many for value in words.values.get(phrase, ()))
        odd = int(count.value > 1 and one)
        found += [
            (count.value * unit.value, unit.value, end, min(2, max(count.noise, unit.noise) + odd))
            for unit in words.units.get(phrase, ())
            if count.value < 1000
        ]
    return found
