"""The bare shape of a problem: what composing changes and looks up, by the thousand."""

from collections.abc import Iterable
from enum import Enum
from fractions import Fraction
from typing import NamedTuple

from waysaid.number import Exact, Form, Problem, Sign, has_form
from waysaid.strings.leaf import leaves_of, written_of
from waysaid.strings.sight import Fact, Joins, Sight, Term, sights


class Counts(Enum):
    """How the numbers of a problem make its answer; `COMPARED` where the answer is no number."""

    ADDED = "added"
    MULTIPLIED = "multiplied"
    COMPARED = "compared"


class Key(NamedTuple):
    """What tells problems apart: the form, and the numbers given in it."""

    form: str
    numbers: tuple[Exact, ...]


class Shape(NamedTuple):
    """A problem by its numbers.

    `turns` has 1 for each number that is added or multiplied and -1 for one that is taken away or
    divides. `answer` is None where it is no number. `fact` is its one fact of three
    numbers, if it is one. `percent` is whether it is so many per cent of a number, `pointed` and
    `parted` whether it has numbers with a point, and fractions.
    """

    key: Key
    turns: tuple[int, ...]
    counts: Counts
    answer: Exact | None
    fact: Fact | None
    percent: bool
    pointed: bool
    parted: bool

    @property
    def numbers(self) -> tuple[Exact, ...]:
        """The numbers given."""
        return self.key.numbers

    @property
    def trio(self) -> tuple[object, ...] | None:
        """What problems share that are one fact seen from several sides; None for no fact."""
        return None if self.fact is None else (self.fact.parts, self.fact.whole, self.fact.sums)

    def other(self, numbers: Iterable[Exact]) -> Key:
        """Return the key of a problem of the same form with other numbers."""
        return Key(self.key.form, tuple(numbers))


def shape_of(problem: Problem) -> Shape:
    """Return the shape of a problem. Raises `NoValue` where it has no answer."""
    seen = sights((problem,))[0]
    counts, terms = _counted(seen)
    numbers = tuple(term.size for term in terms)
    if counts is Counts.COMPARED:
        numbers = tuple(leaf for leaf in leaves_of(problem) if isinstance(leaf, int | Fraction))
    given = written_of(problem)
    return Shape(
        Key(seen.form, numbers),
        tuple(1 if term.sign in _COUNT_AS_THEY_ARE else -1 for term in terms),
        counts,
        seen.answer,
        seen.fact,
        bool(terms) and has_form(terms[0].shown, Form.PERCENT),
        any(has_form(leaf, Form.DECIMAL) for leaf in given),
        any(isinstance(leaf, Fraction) or has_form(leaf, Form.PARTS) for leaf in given),
    )


_COUNT_AS_THEY_ARE = frozenset({Sign.PLUS, Sign.TIMES})


def _counted(seen: Sight) -> tuple[Counts, tuple[Term, ...]]:
    if seen.terms:
        return Counts.ADDED, seen.terms
    return (Counts.MULTIPLIED, seen.factors) if seen.factors else (Counts.COMPARED, ())


def undoes(one: Shape, other: Shape) -> bool:
    """Tell whether two problems are one fact seen from two sides, and not only turned around."""
    if one.fact is None or other.fact is None or one.trio != other.trio or one.key == other.key:
        return False
    alike = one.key.form == other.key.form and one.fact.joins is other.fact.joins
    joined = one.fact.joins in (Joins.ADDS, Joins.MULTIPLIES)
    return not (alike and joined and one.answer == other.answer)
