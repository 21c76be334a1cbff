"""Every whole number that may begin at a word, from the tables of a language."""

from dataclasses import dataclass, field, replace

from waysaid.hearing.digits import whole_digits
from waysaid.hearing.lexicon import Lexicon
from waysaid.hearing.near import near_values
from waysaid.hearing.number_words import Tail, Value
from waysaid.hearing.phrase import Phrase

MOST = 10**9 - 1
"""The largest number that is read in words: as many digits as a number may have."""

Joins = tuple[tuple[Phrase, int], ...]


@dataclass(frozen=True, slots=True)
class Whole:
    """A whole number that ends before the word `end`.

    `many` tells that it is said as several, `digits` that it ends in digits, `single` that it is
    one word without a scale.
    """

    value: int
    end: int
    noise: int = 0
    many: bool = False
    digits: bool = False
    single: bool = True


@dataclass(frozen=True, slots=True)
class Scan:
    """A few words in a row and what was found at each so far."""

    texts: tuple[str, ...]
    lexicon: Lexicon
    found: dict[int, tuple[Whole, ...]] = field(default_factory=dict)

    def has(self, phrase: Phrase, at: int) -> bool:
        """Tell whether the phrase stands there; the empty phrase stands everywhere."""
        return self.texts[at : at + len(phrase)] == phrase

    def joined(self, joins: Joins, at: int) -> list[tuple[int, int]]:
        """Return where each join that stands there ends, with its noise."""
        return [(at + len(join), noise) for join, noise in joins if self.has(join, at)]


def wholes_at(scan: Scan, at: int) -> tuple[Whole, ...]:
    """Return every whole number that begins at that word, each end and value once."""
    if at not in scan.found:
        scan.found[at] = ()
        queue, made = _bases(scan, at), dict[tuple[int, int, bool], Whole]()
        while queue:
            one = queue.pop()
            key = (one.value, one.end, one.many)
            if one.value <= MOST and (key not in made or made[key].noise > one.noise):
                made[key] = one
                queue += _longer(scan, at, one)
        scan.found[at] = tuple(made.values())
    return scan.found[at]


def _bases(scan: Scan, at: int) -> list[Whole]:
    """Return the numbers of one phrase or of digits, and a scale that stands alone."""
    if at >= len(scan.texts):
        return []
    digits = whole_digits(scan.texts[at])
    if digits:
        return [Whole(digits[0], at + 1, many=digits[1], digits=True)]
    words = scan.lexicon.numbers
    found = []
    for end in range(at + 1, min(at + words.longest, len(scan.texts)) + 1):
        phrase = scan.texts[at:end]
        found += [Whole(v.value, end, v.noise, v.many) for v in words.values.get(phrase, ())]
        for scale, noise, many in words.scales.get(phrase, ()):
            if scale.alone:
                one = Whole(scale.value, end, noise, many, single=False)
                found += [one, *_tailed(scan, at, one, scale.tail)]
        if phrase in words.articles:
            found += _scaled(scan, at, Whole(1, end))
    if not found:
        found = [_near(at, value) for value in near_values(scan.texts[at], scan.lexicon)]
    return found


def _near(at: int, value: Value) -> Whole:
    return Whole(value.value, at + 1, value.noise, value.many)


def _longer(scan: Scan, at: int, one: Whole) -> list[Whole]:
    """Return the numbers that go on from one: thirty, thirty seven; two, two hundred."""
    if one.many:
        return []
    tail = scan.lexicon.numbers.heads.get(one.value) if one.single else None
    found = _tailed(scan, at, one, tail) if tail else []
    return found + _scaled(scan, at, one) + (_shortened(scan, one) if one.single else [])


def _tailed(scan: Scan, at: int, one: Whole, tail: Tail) -> list[Whole]:
    """Return the number with each number added that may follow it."""
    found = []
    for begin, noise in scan.joined(tail.joins, one.end):
        for last in wholes_at(scan, begin) if begin > at else ():
            if tail.low <= last.value <= tail.high:
                apart = one.digits or (last.digits and one.single)
                extra = noise + (1 + (begin > one.end) if apart else 0) + last.many
                together = min(2, max(one.noise, last.noise) + extra)
                found.append(
                    replace(last, value=one.value + last.value, noise=together, single=False)
                )
    return found


def _scaled(scan: Scan, at: int, one: Whole) -> list[Whole]:
    """Return the number times each scale that follows it, alone and with what follows that."""
    words, found = scan.lexicon.numbers, []
    for end in range(one.end + 1, min(one.end + words.longest, len(scan.texts)) + 1):
        for scale, noise, many in words.scales.get(scan.texts[one.end : end], ()):
            if scale.low <= one.value <= scale.high:
                worth = one.value * scale.value
                big = Whole(worth, end, max(noise, one.noise), many, single=False)
                found += [big, *([] if many else _tailed(scan, at, big, scale.tail))]
    return found


def _shortened(scan: Scan, one: Whole) -> list[Whole]:
    """Return hundreds left unsaid: one sixty, one oh six; and won sixty, misheard."""
    short = scan.lexicon.numbers.short
    loose = short.heads.get(one.value)
    if one.digits or loose is None or (loose and one.noise > 1):
        return []
    noise, found = loose + one.noise, []
    for last in wholes_at(scan, one.end):
        least = 20 if last.many else 10
        if least <= last.value <= 99 and not last.digits:
            worth, odd = 100 * one.value + last.value, min(2, noise + last.many + last.noise)
            found.append(Whole(worth, last.end, odd, last.many, single=False))
    for zero in short.zero:
        if scan.has(zero, one.end):
            found += [
                replace(last, value=100 * one.value + last.value, noise=noise, single=False)
                for last in wholes_at(scan, one.end + len(zero))
                if 1 <= last.value <= 9 and not last.digits and not last.many
                for noise in (min(2, max(one.noise, last.noise)),)
            ]
    return found
