"""Read a word that is written in digits: `37`, `1,000`, `0.65`, `15%`, `3/4`, `1 1/4`, `6s`."""

import re
from fractions import Fraction

from waysaid.hearing.lexicon import Lexicon
from waysaid.number import MOST_DIGITS, Number, decimal, mixed, parts, percent

_WHOLE = re.compile(r"([0-9]{1,9})(s?)")
_PART = re.compile(r"(?:([0-9]+) )?([0-9]+)/([0-9]+)")
_POINTED = re.compile(r"([0-9]*)[.,]([0-9]+)(%?)")
_GROUPED = re.compile(r"[0-9]{1,3}(?:([.,])[0-9]{3})(?:\1[0-9]{3})*(%?)")
_ORDINAL = re.compile(r"([0-9]{1,4})(?:st|nd|rd|th)s?")

Written = tuple[Number, bool, int]
"""What a word in digits says: the number, whether several of it (`6s`), the noise."""


def whole_digits(word: str) -> tuple[int, bool] | None:
    """Return the whole number and whether it is said as several: `6s`; None for other words."""
    match = _WHOLE.fullmatch(word) if word.isascii() else None
    return (int(match[1]), bool(match[2])) if match else None


def ordinal_digits(word: str) -> int | None:
    """Return the number of `4th` or `4ths`; None for other words."""
    match = _ORDINAL.fullmatch(word) if word.isascii() else None
    return int(match[1]) if match else None


def written_number(word: str, lexicon: Lexicon) -> tuple[Written, ...]:
    """Return every number that a word in digits may be, likeliest first; () where it is none."""
    whole = whole_digits(word)
    if whole:
        return ((whole[0], whole[1], 0),)
    if not word[:1].isdigit() and word[:1] not in {".", ","}:
        return ()
    if word.endswith("%") and whole_digits(word[:-1]):
        return ((percent(Fraction(int(word[:-1]), 100)), False, 0),)
    return (*_part(word), *_pointed(word, lexicon))


def _part(word: str) -> tuple[Written, ...]:
    match = _PART.fullmatch(word)
    if not match or any(len(one or "") > MOST_DIGITS for one in match.groups()):
        return ()
    whole, top, bottom = (int(one or 0) for one in match.groups())
    if not bottom:
        return ()
    leaf = mixed(whole, top, bottom) if whole and top else parts(top, bottom)
    return ((leaf, False, 0),)


def _pointed(word: str, lexicon: Lexicon) -> tuple[Written, ...]:
    """Read points and commas; where one may part thousands or places, both are read."""
    found: list[Written] = []
    if sum(one.isdigit() for one in word) > MOST_DIGITS:
        return ()
    grouped = _GROUPED.fullmatch(word)
    if grouped and word[0] != "0":
        value = int(re.sub("[^0-9]", "", word))
        noise = 0 if grouped[1] in lexicon.numbers.group_marks else 1
        found.append((percent(Fraction(value, 100)) if grouped[2] else value, False, noise))
    match = _POINTED.fullmatch(word)
    if match and (word[len(match[1])] in lexicon.numbers.decimal_marks):
        places = len(match[2])
        amount = Fraction(int(match[1] + match[2]), 10**places)
        leaf = percent(amount / 100) if match[3] else decimal(amount, places)
        found.append((leaf, False, 1 if found and found[0][2] == 0 else 0))
    return tuple(sorted(found, key=lambda one: one[2]))
