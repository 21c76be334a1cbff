"""The words of a noticing as a row of senses, numbers and problems named; the rest is passed by."""

import tomllib
from collections.abc import Iterator, Mapping, Sequence
from dataclasses import dataclass
from enum import StrEnum
from functools import cache
from importlib import resources

from waysaid.hearing import Numeral, Phrase, Word, lexicon_of, numerals_at, phrases_of, words_of
from waysaid.number import Exact, Language, Operation, Problem, Sign, exact
from waysaid.strings.leaf import leaves_of

LONGEST = 400
"""The most characters of a noticing that are read; the rest is passed by. Our choice."""


class Sense(StrEnum):
    """What a phrase of a noticing may mean; the slugs stand in the files of words."""

    ANSWER = "answer"
    LEFT = "left"
    NUMBER = "number"
    FIRST = "first"
    SECOND = "second"
    OTHER = "other"
    BOTH = "both"
    UP = "up"
    DOWN = "down"
    MORE = "more"
    LESS = "less"
    SAME = "same"
    DOUBLE = "double"
    HALF = "half"
    TIMES = "times"
    OVER = "over"
    TEN = "ten"
    EACH = "each"
    BACK = "back"
    TWICE = "twice"
    SWITCH = "switch"
    MOVE = "move"
    GIVE = "give"
    TAKE = "take"
    UNDO = "undo"
    FAMILY = "family"
    MAKES = "makes"
    IS = "is"
    IN = "in"
    HELP = "help"
    NEAR = "near"
    HAS = "has"
    BECOMES = "becomes"
    ALSO = "also"
    THAN = "than"
    FROM = "from"
    TO = "to"
    OF_THEM = "ofthem"
    SO = "so"
    ALL = "all"
    THEY = "they"
    DENIED = "denied"
    PASS = "pass"
    P1 = "p1"
    P2 = "p2"
    P3 = "p3"
    P4 = "p4"
    P5 = "p5"
    BEFORE_LAST = "beforelast"
    LAST = "last"


@dataclass(frozen=True, slots=True)
class Size:
    """A number said.

    `loose` where the word may stand for any number: `one`; `many` where several of it are meant.
    """

    value: Exact
    loose: bool = False
    many: bool = False


@dataclass(frozen=True, slots=True)
class Named:
    """A problem named, by its place from 0; `whole` where its numbers and sign were said."""

    at: int
    whole: bool = False


Item = Sense | Size | Named

_PLACES = {Sense.P1: 0, Sense.P2: 1, Sense.P3: 2, Sense.P4: 3, Sense.P5: 4}


@dataclass(frozen=True, slots=True)
class Vocabulary:
    """What the phrases of one language may mean in a noticing."""

    senses: Mapping[Phrase, tuple[Sense, ...]]
    signs: Mapping[Phrase, frozenset[Sign]]
    pronouns: frozenset[str]
    longest: int


@cache
def vocabulary(language: Language) -> Vocabulary:
    """Return the words for noticings of a language, from its file."""
    source = resources.files("waysaid.strings") / "data" / f"noticed-{language.value}.toml"
    return read_vocabulary(source.read_text(encoding="utf-8"))


def read_vocabulary(toml: str) -> Vocabulary:
    """Read the words for noticings from the text of their file.

    Raises `KeyError` where a table is missing, and `ValueError` for a sense that is none, or a
    phrase that stands in two places.
    """
    table = tomllib.loads(toml)
    senses: dict[Phrase, tuple[Sense, ...]] = {}
    for slugs, written in table["senses"].items():
        meant = tuple(map(Sense, slugs.split("+")))
        for phrase in (one for line in written for one in phrases_of(line) if one):
            if senses.setdefault(phrase, meant) != meant:
                raise ValueError(f"“{' '.join(phrase)}” stands in two places of the words")
    signs: dict[Phrase, set[Sign]] = {}
    for slug, written in table["signs"].items():
        for phrase in (one for line in written for one in phrases_of(line)):
            signs.setdefault(phrase, set()).add(Sign(slug))
    return Vocabulary(
        senses,
        {phrase: frozenset(found) for phrase, found in signs.items()},
        frozenset(table["pronouns"]),
        max(map(len, senses)),
    )


def items_of(words: str, problems: Sequence[Problem], language: Language) -> tuple[Item, ...]:
    """Return what is said, in order: senses, numbers, and problems of the string by their place."""
    row = words_of(words[:LONGEST], lexicon_of(language))
    spoken = _Spoken(row, vocabulary(language), language)
    found: list[Item] = []
    at = 0
    while at < len(row):
        items, at = _next(spoken, at, problems)
        found += items
    return tuple(found)


@dataclass(frozen=True, slots=True)
class _Spoken:
    row: tuple[Word, ...]
    vocabulary: Vocabulary
    language: Language

    def phrase(self, at: int, known: Mapping[Phrase, object]) -> Phrase:
        """Return the longest known phrase at a word, () where there is none."""
        texts = tuple(word.text for word in self.row[at : at + self.vocabulary.longest])
        ends = range(len(texts), 0, -1)
        return next((texts[:end] for end in ends if texts[:end] in known), ())

    def number(self, at: int) -> Numeral | None:
        """Return the number said plainly at a word."""
        found = numerals_at(self.row, at, lexicon_of(self.language))
        return next((one for one in found if one.noise == 0), None)


def _next(spoken: _Spoken, at: int, problems: Sequence[Problem]) -> tuple[list[Item], int]:
    """Return the items at a word, and the word after them."""
    number = spoken.number(at)
    if number is not None:
        named = _whole_problem(spoken, at, problems)
        if named is not None:
            return [Named(named[0], whole=True)], named[1]
    phrase = spoken.phrase(at, spoken.vocabulary.senses)
    if number is not None and number.end - at > len(phrase):
        loose = number.end == at + 1 and spoken.row[at].text in spoken.vocabulary.pronouns
        return [Size(exact(number.leaf), loose, number.many)], number.end
    if not phrase:
        return [], at + 1
    senses = spoken.vocabulary.senses[phrase]
    return [_item(sense, len(problems)) for sense in senses], at + len(phrase)


def _item(sense: Sense, count: int) -> Item:
    if sense in _PLACES:
        return Named(_PLACES[sense])
    if sense in (Sense.BEFORE_LAST, Sense.LAST):
        return Named(count - (2 if sense is Sense.BEFORE_LAST else 1))
    return sense


def _whole_problem(spoken: _Spoken, at: int, problems: Sequence[Problem]) -> tuple[int, int] | None:
    """Return which problem of the string is said whole at a word, and where it ends."""
    for row, problem in enumerate(problems):
        end = _said_whole(spoken, at, problem)
        if end is not None:
            return row, end
    return None


def _said_whole(spoken: _Spoken, at: int, problem: Problem) -> int | None:
    signs = tuple(_signs(problem))
    numbers = leaves_of(problem)
    if not signs or len(signs) + 1 != len(numbers):
        return None
    for place, wanted in enumerate(numbers):
        if place:
            joined = _after_sign(spoken, at, signs[place - 1])
            if joined is None:
                return None
            at = joined
        number = spoken.number(at)
        if number is None or exact(number.leaf) != wanted:
            return None
        at = number.end
    return at


def _after_sign(spoken: _Spoken, at: int, wanted: Sign) -> int | None:
    """Return where the sign at a word ends; there, where none is said: five sevens."""
    sign = spoken.phrase(at, spoken.vocabulary.signs)
    if sign and wanted in spoken.vocabulary.signs[sign]:
        return at + len(sign)
    number = spoken.number(at)
    return at if wanted is Sign.TIMES and number is not None and number.many else None


def _signs(problem: Problem) -> Iterator[Sign]:
    """Yield the signs of a sum or product from left to right; of any other kind none."""
    if isinstance(problem, Operation):
        if isinstance(problem.left, Operation):
            yield from _signs(problem.left)
        yield Sign.TIMES if problem.sign is Sign.OF else problem.sign
