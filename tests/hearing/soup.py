"""Arbitrary strings to hear, from a seed: any Unicode; words of talk and numbers in no order."""

import sys
from collections.abc import Callable, Iterator
from functools import cache
from random import Random

from waysaid.hearing.lexicon import lexicon_of
from waysaid.number import Language, number_words

LONGEST = 2_000
"""The characters of the longest string."""
LONG = 0.04
"""How many of all are of that length; the others are mostly as short as what is typed."""


def strings(seed: int, many: int) -> Iterator[tuple[str, str, Language]]:
    """Yield so many (problem, string, language); the kinds of strings in turn."""
    dice = Random(f"soup {seed}")
    makers = (_any, _plane, _talk, _numbers, _mixed, _digits, _again)
    for place in range(many):
        language = dice.choice(tuple(Language))
        length = LONGEST if dice.random() < LONG else int(LONGEST ** dice.random() ** 2)
        yield dice.choice(PROBLEMS), makers[place % len(makers)](dice, length, language), language


PROBLEMS = (  # noqa: SIM905
    "37 + 25|71 - 34|7 x 6|91 / 7|16 / 3|8 + 7 + 2|7 + _ = 12|2/3 + 2/3|1 1/4 - 3/4|3.8 + 0.45"
    "|25% of 60|2/3 of 57|0.65 ? 0.7|29 + 14 = 30 + 13 ?|8 + 4 = _ + 5|about 398 x 21"
    "|image frame 10: 7|image array: 3 x 4|982374 + 91823"
).split("|")


def _any(dice: Random, length: int, _: Language) -> str:
    """Return characters of all of Unicode, halves of pairs and unassigned ones among them."""
    return "".join(chr(dice.randint(0, sys.maxunicode)) for _ in range(length))


def _plane(dice: Random, length: int, _: Language) -> str:
    """Return characters of one neighbourhood: a script, signs, marks that join, other digits."""
    first = dice.choice((0, 0x20, 0x80, 0x2B0, 0x300, 0x660, 0x900, 0x2000, 0x2150, 0x2190, 0xFF00))
    return "".join(chr(first + dice.randint(0, 0x7F)) for _ in range(length))


@cache
def _phrases(language: Language) -> tuple[str, ...]:
    return tuple(sorted(" ".join(phrase) for phrase in lexicon_of(language).phrases))


def _joined(dice: Random, length: int, word: Callable[[], str]) -> str:
    found = ""
    while len(found) < length:
        found += word() + dice.choice((" ", " ", " ", ", ", "", ". "))
    return found[:length]


def _talk(dice: Random, length: int, language: Language) -> str:
    return _joined(dice, length, lambda: dice.choice(_phrases(language)))


def _numbers(dice: Random, length: int, language: Language) -> str:
    most = dice.choice((12, 100, 10**6))
    return _joined(dice, length, lambda: number_words(dice.randint(0, most), language))


def _mixed(dice: Random, length: int, language: Language) -> str:
    def word() -> str:
        if dice.random() < 0.5:
            return number_words(dice.randint(0, dice.choice((10, 100, 1000))), language)
        return dice.choice(_phrases(language))

    return _joined(dice, length, word)


def _digits(dice: Random, length: int, _: Language) -> str:
    return "".join(dice.choice("0123456789 +-x/=.,%()_?→−½ ofr<>") for _ in range(length))


def _again(dice: Random, length: int, language: Language) -> str:
    """Return one word or two, over and over."""
    one = f"{dice.choice(_phrases(language))} {number_words(dice.randint(0, 99), language)} "
    return (one * length)[:length]
