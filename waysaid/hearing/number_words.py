"""How a language says numbers, as tables: what each word is worth and what may follow it."""

from collections.abc import Iterable, Mapping
from dataclasses import dataclass
from typing import Any

from waysaid.hearing.phrase import Phrase, phrases_of


@dataclass(frozen=True, slots=True)
class Value:
    """What a phrase is worth, how noisy that is (0 to 2), and whether it says several of it."""

    value: int
    noise: int = 0
    many: bool = False


@dataclass(frozen=True, slots=True)
class Tail:
    """What may follow a number and be added to it: from `low` to `high`, behind a join."""

    low: int
    high: int
    joins: tuple[tuple[Phrase, int], ...]


@dataclass(frozen=True, slots=True)
class Scale:
    """A word that multiplies the number before it, from `low` to `high`: hundred, thousand."""

    value: int
    low: int
    high: int
    alone: bool
    tail: Tail


@dataclass(frozen=True, slots=True)
class Short:
    """A hundred left unsaid: one sixty, one oh six. `heads` go before numbers of two digits."""

    heads: Mapping[int, int]
    zero: frozenset[Phrase]


@dataclass(frozen=True, slots=True)
class NumberWords:
    """The words for numbers of one language.

    `values` are words with a worth of their own, `heads` what may follow a worth, `scales` words
    that multiply; `parts` names of equal parts, by their bottom number; `units` names of places,
    for two tens and four. `near` are the words that a slip of spelling may stand for, and
    `ordinary` words that are never one; `percents` words for so many hundredths, and how odd.
    `measures` are what is counted in wholes and, by `small_measures`, in hundredths: dollars and
    cents; `coins` are so many hundredths by name. `between` are words that may stand between a
    count and its part: two more quarters.
    """

    values: Mapping[Phrase, tuple[Value, ...]]
    heads: Mapping[int, Tail]
    scales: Mapping[Phrase, tuple[tuple[Scale, int, bool], ...]]
    articles: frozenset[Phrase]
    short: Short
    parts: Mapping[Phrase, tuple[Value, ...]]
    units: Mapping[Phrase, tuple[Value, ...]]
    joins: tuple[tuple[Phrase, int], ...]
    part_joins: tuple[tuple[Phrase, int], ...]
    over: frozenset[Phrase]
    points: frozenset[Phrase]
    percents: tuple[tuple[Phrase, int], ...]
    decimal_marks: str
    group_marks: str
    near: frozenset[str]
    ordinary: frozenset[str]
    starts: frozenset[str]
    longest: int
    measures: frozenset[Phrase]
    small_measures: frozenset[Phrase]
    measure_joins: tuple[Phrase, ...]
    between: frozenset[str]
    coins: Mapping[Phrase, tuple[Value, ...]]

    @property
    def words(self) -> frozenset[str]:
        """Every single word that stands in a phrase for a number."""
        tables = (self.values, self.scales, self.parts, self.units)
        return frozenset(word for table in tables for phrase in table for word in phrase)


def read_number_words(table: Mapping[str, Any]) -> NumberWords:
    """Read the table `numbers` of a lexicon; raises `KeyError` where a part of it is missing."""
    plurals = [tuple(rule) for rule in table["plurals"]]
    values = _values(table["values"], plurals, 0)
    for noise, name in ((1, "unusual"), (2, "misheard")):
        _merge(values, _values(table.get(name, {}), [], noise))
    heads = _heads(table["heads"])
    _merge(values, _glued(table["heads"], values, heads))
    scales = _scales(table["scales"], plurals)
    parts = _values(table["parts"], [], 0)
    _merge(parts, _values(table.get("parts_misheard", {}), [], 2))
    units = _values(table["units"], [], 0)
    coins = _values(table.get("coins", {}), [], 0)
    articles = frozenset(_each(table["articles"]))
    points = frozenset(_each(table["points"]))
    spoken = (values, scales, parts)
    near = {word for group in spoken for phrase in group for word in phrase if len(word) >= 5}
    starts = [*values, *scales, *parts, *articles, *points, *coins]
    return NumberWords(
        values={phrase: tuple(found) for phrase, found in values.items()},
        heads=heads,
        scales={phrase: tuple(found) for phrase, found in scales.items()},
        articles=articles,
        short=_short(table.get("short", {})),
        parts={phrase: tuple(found) for phrase, found in parts.items()},
        units={phrase: tuple(found) for phrase, found in units.items()},
        joins=_joins(table["unit_joins"], []),
        part_joins=_joins(table["part_joins"], []),
        over=frozenset(_each(table["over"])),
        points=points,
        percents=_joins(table["percents"], table.get("loose_percents", [])),
        decimal_marks=table["decimal_marks"],
        group_marks=table["group_marks"],
        near=frozenset(near),
        ordinary=frozenset(table["ordinary"]),
        starts=frozenset(phrase[0] for phrase in starts),
        longest=max(len(phrase) for phrase in (*starts, *units)),
        measures=frozenset(_each(table.get("measures", []))),
        small_measures=frozenset(_each(table.get("small_measures", []))),
        measure_joins=tuple(_each(table.get("measure_joins", [""]))),
        between=frozenset(table.get("between", [])),
        coins={phrase: tuple(found) for phrase, found in coins.items()},
    )


def _each(written: Iterable[str]) -> list[Phrase]:
    return [phrase for one in written for phrase in phrases_of(one)]


def _joins(plain: Iterable[str], loose: Iterable[str]) -> tuple[tuple[Phrase, int], ...]:
    return (
        *((phrase, 0) for one in plain for phrase in phrases_of(one)),
        *((phrase, 1) for one in loose for phrase in phrases_of(one)),
    )


def _values(
    rows: Mapping[str, list[str]], plurals: list[tuple[str, ...]], noise: int
) -> dict[Phrase, list[Value]]:
    """Read rows of worth and phrases; each phrase has its plural as the rules make it."""
    found: dict[Phrase, list[Value]] = {}
    for worth, written in rows.items():
        for phrase in _each(written):
            _put(found, phrase, Value(int(worth), noise))
            for several in _several(phrase, plurals):
                _put(found, several, Value(int(worth), noise, many=True))
    return found


def _put(found: dict[Phrase, list[Value]], phrase: Phrase, value: Value) -> None:
    group = found.setdefault(phrase, [])
    if all((each.value, each.many) != (value.value, value.many) for each in group):
        group.append(value)


def _merge(into: dict[Phrase, list[Value]], others: Mapping[Phrase, list[Value]]) -> None:
    for phrase, group in others.items():
        for value in group:
            _put(into, phrase, value)


def _several(phrase: Phrase, plurals: list[tuple[str, ...]]) -> list[Phrase]:
    """Return the plurals of a phrase by the rules: `["y", "ies"]` makes sixties of sixty."""
    *front, last = phrase
    for ending, *endings in plurals:
        if last.endswith(ending):
            stem = last.removesuffix(ending)
            return [(*front, stem + one) for one in endings]
    return []


def _heads(rows: Iterable[Mapping[str, Any]]) -> dict[int, Tail]:
    heads = {}
    for row in rows:
        low, high = row["takes"]
        tail = Tail(low, high, _joins(row["joins"], row.get("loose", [])))
        heads.update(dict.fromkeys(row["values"], tail))
    return heads


def _glued(
    rows: Iterable[Mapping[str, Any]],
    values: Mapping[Phrase, list[Value]],
    heads: Mapping[int, Tail],
) -> dict[Phrase, list[Value]]:
    """Return the numbers written as one word: twentyfour, treintaiuno."""
    found: dict[Phrase, list[Value]] = {}
    plain = [
        (phrase[0], each) for phrase, group in values.items() for each in group
        if len(phrase) == 1 and each.noise == 0
    ]  # fmt: skip
    for row in rows:
        for glue in row.get("glue", []):
            fronts = [(w, each.value) for w, each in plain if each.value in row["values"]]
            for word, worth in fronts:
                for last, each in plain:
                    if heads[worth].low <= each.value <= heads[worth].high and word.isalpha():
                        joined = (word + glue + last,)
                        _put(found, joined, Value(worth + each.value, 1, each.many))
    return found


def _scales(
    rows: Iterable[Mapping[str, Any]], plurals: list[tuple[str, ...]]
) -> dict[Phrase, list[tuple[Scale, int, bool]]]:
    found: dict[Phrase, list[tuple[Scale, int, bool]]] = {}
    for row in rows:
        low, high = row["before"]
        worth = row["value"]
        tail = Tail(1, worth - 1, _joins(row["joins"], row.get("loose", [])))
        scale = Scale(worth, low, high, row["alone"], tail)
        for phrase in _each(row["words"]):
            found.setdefault(phrase, []).append((scale, 0, False))
            for several in _several(phrase, plurals):
                found.setdefault(several, []).append((scale, 0, True))
    return found


def _short(row: Mapping[str, Any]) -> Short:
    heads = {
        **dict.fromkeys(row.get("loose_heads", []), 1),
        **dict.fromkeys(row.get("heads", []), 0),
    }
    return Short(heads, frozenset(_each(row.get("zero", []))))
