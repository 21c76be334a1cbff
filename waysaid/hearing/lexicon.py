"""The lexicon of a language, read from its file: phrases with their meanings, number words."""

import tomllib
from collections.abc import Mapping
from dataclasses import dataclass
from functools import lru_cache
from importlib.resources import files

from waysaid.hearing.meaning import Meaning
from waysaid.hearing.number_words import NumberWords, read_number_words
from waysaid.hearing.phrase import Phrase, phrases_of
from waysaid.number import Language

_NOISES = ("plain", "unusual", "misheard")
"""The tables of phrases in a file, by their noise: 0, 1, 2."""


@dataclass(frozen=True, slots=True, eq=False)
class Lexicon:
    """What the words of one language may mean.

    `phrases` gives each phrase of folded words its meanings with their noise: 0 said plainly, 1
    unusual, 2 what a recogniser or a typist may make of it. `longest` is the length of the longest
    phrase in words; `words` every word that stands in a phrase or a number.
    """

    code: str
    phrases: Mapping[Phrase, tuple[tuple[Meaning, int], ...]]
    longest: int
    numbers: NumberWords
    words: frozenset[str]


@lru_cache(maxsize=len(Language))
def lexicon_of(language: Language) -> Lexicon:
    """Return the lexicon of a language; its file is read once."""
    source = files("waysaid.hearing").joinpath("words", f"{language.value}.toml")
    return read_lexicon(source.read_text(encoding="utf-8"))


def read_lexicon(toml: str) -> Lexicon:
    """Read a lexicon from the text of its file.

    Raises `tomllib.TOMLDecodeError` for text that is no TOML, `KeyError` where a table is missing
    and `ValueError` for a meaning that is none of `Meaning`.
    """
    table = tomllib.loads(toml)
    phrases: dict[Phrase, dict[Meaning, int]] = {}
    small = frozenset(table.get("small", []))
    for noise, name in enumerate(_NOISES):
        for slug, written in table.get(name, {}).items():
            meaning = Meaning(slug)
            for phrase in (made for one in written for made in _made(one, small)):
                phrases.setdefault(phrase, {}).setdefault(meaning, noise)
    numbers = read_number_words(table["numbers"])
    return Lexicon(
        code=table["code"],
        phrases={phrase: tuple(found.items()) for phrase, found in phrases.items()},
        longest=max((len(phrase) for phrase in phrases), default=1),
        numbers=numbers,
        words=numbers.words.union(*phrases),
    )


def _made(written: str, small: frozenset[str]) -> list[Phrase]:
    """Return the phrases of a line; one of several words never shrinks to small words alone."""
    several = len(written.split()) > 1
    return [
        phrase
        for phrase in phrases_of(written)
        if phrase and not (several and len(phrase) == 1 and small.issuperset(phrase))
    ]
