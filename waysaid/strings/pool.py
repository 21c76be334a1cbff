"""What a string is composed from: every candidate of a grade and a family, and what each helps.

Which numbers are candidates is our choice, by common practice, no source: all that a grade works
with to a hundred; above it numbers on and beside the friendly ones.
"""

from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from functools import lru_cache
from itertools import pairwise

from waysaid.number import Operation, Sign
from waysaid.strings.helps import Help, helped, work
from waysaid.strings.link import LinkKind
from waysaid.strings.plain import Plain, plain_of
from waysaid.ways import Family, Way, grades_of, tenths_of, ways

SIGNS = {
    Family.NEAR_DOUBLE: Sign.PLUS,
    Family.BRIDGE: Sign.PLUS,
    Family.JUMP: Sign.PLUS,
    Family.SPLIT: Sign.PLUS,
    Family.SPLIT_THEN_JUMP: Sign.PLUS,
    Family.ADJUST: Sign.PLUS,
    Family.GIVE_AND_TAKE: Sign.PLUS,
    Family.SHIFT_BOTH: Sign.MINUS,
    Family.ADD_UP: Sign.MINUS,
    Family.THINK_ADD: Sign.MINUS,
    Family.NEAR_FACT: Sign.TIMES,
    Family.BREAK_UP: Sign.TIMES,
    Family.DOUBLE_HALVE: Sign.TIMES,
    Family.FACTOR_STEPS: Sign.TIMES,
    Family.THINK_TIMES: Sign.OVER,
    Family.CHUNK_OUT: Sign.OVER,
    Family.SCALE_BOTH: Sign.OVER,
}
"""The families that a string is composed for, each with the operation that it is at home in."""

_ALWAYS = frozenset({Family.KNOWN_FACT, Family.COLUMN, Family.COUNTING})
_FIRST_RESORT = {
    Sign.PLUS: _ALWAYS | {Family.JUMP, Family.SPLIT},
    Sign.MINUS: _ALWAYS | {Family.JUMP, Family.SPLIT},
    Sign.TIMES: _ALWAYS | {Family.BREAK_UP},
    Sign.OVER: _ALWAYS | {Family.BREAK_UP, Family.CHUNK_OUT},
}
"""The families that need no eye for the numbers: what the focus must save work against."""

_BOTH = frozenset({Family.GIVE_AND_TAKE, Family.SHIFT_BOTH, Family.DOUBLE_HALVE, Family.SCALE_BOTH})
"""The families that show in a link of two problems with one answer; others in one inside a way."""

RIVAL = 10
"""A family costs at most so many tenths more than the easiest way to be its rival."""


@dataclass(frozen=True, slots=True)
class Candidate:
    """A problem that a string may hold.

    `effort` is that of its easiest way; `focus` that of the easiest way of the family in focus,
    None where it has none; `usual` that of the easiest way of first resort (of any, where there
    is none); all in tenths. `rivals` is how many families come near the easiest. `inside` are the
    problems that are steps of its easiest way in focus, each with what then is left to do.
    """

    plain: Plain
    effort: int
    focus: int | None
    usual: int
    rivals: int
    inside: tuple[tuple[Plain, int], ...] = ()

    @property
    def pays(self) -> int | None:
        """What the focus saves against the usual ways, in tenths; None without such a way."""
        return None if self.focus is None else self.usual - self.focus


@dataclass(frozen=True, slots=True)
class Pool:
    """The candidates, and for each the helps that lead from it, by the places of those helped."""

    candidates: tuple[Candidate, ...]
    helps: tuple[tuple[tuple[int, Help], ...], ...]

    def met(self, places: Sequence[int]) -> tuple[Help | None, ...]:
        """Return the help with which each problem of a string meets the one before; first None."""
        pairs = pairwise(places)
        return (None, *(dict(self.helps[one]).get(other) for one, other in pairs))

    def place(self, plain: Plain) -> int | None:
        """Return where a problem stands among the candidates; None where it is none of them."""
        for place, one in enumerate(self.candidates):
            if one.plain == plain:
                return place
        return None


@lru_cache(maxsize=8)
def pool(
    grade: int,
    family: Family,
    more: tuple[Plain, ...] = (),
    without: frozenset[Plain] = frozenset(),
) -> Pool:
    """Return the pool of a grade for a family in focus, with problems more and without others."""
    plains = (*plains_of(grade, family), *more)
    kept = dict.fromkeys(plain for plain in plains if plain not in without)
    return pool_of(tuple(kept), family)


def plains_of(grade: int, family: Family) -> tuple[Plain, ...]:
    """Return every problem of a grade, each once, that a string for the family may hold."""
    every = dict.fromkeys(_plains(SIGNS[family]))
    return tuple(plain for plain in every if grades_of(plain.problem).holds(grade))


def pool_of(plains: tuple[Plain, ...], family: Family) -> Pool:
    """Return the pool of these problems."""
    candidates = tuple(candidate(plain, family) for plain in plains)
    at = {plain: place for place, plain in enumerate(plains)}
    own = LinkKind.BOTH_CHANGE if family in _BOTH else LinkKind.INSIDE_A_WAY
    leads: list[dict[int, Help]] = [{} for _ in plains]
    for place, one in enumerate(candidates):
        for before, help_ in helped(one.plain, one.inside):
            known = at.get(before)
            if known is not None and known != place:
                other = leads[known].get(place)
                if other is None or help_.left < other.left:
                    leads[known][place] = help_._replace(own=help_.kind is own)
    return Pool(candidates, tuple(tuple(sorted(one.items())) for one in leads))


@lru_cache(maxsize=50_000)
def candidate(plain: Plain, family: Family) -> Candidate:
    """Look at a problem for a family in focus."""
    best: dict[Family, tuple[int, Way]] = {}
    for way in ways(plain.problem):
        tenths = tenths_of(way)
        if way.family not in best or tenths < best[way.family][0]:
            best[way.family] = (tenths, way)
    effort = min(tenths for tenths, _ in best.values())
    others = {one: tenths for one, (tenths, _) in best.items() if one is not family}
    usual = [others[one] for one in others if one in _FIRST_RESORT[plain.sign]]
    focus = best.get(family)
    return Candidate(
        plain,
        effort,
        focus[0] if focus else None,
        min(usual or others.values(), default=effort),
        sum(tenths <= effort + RIVAL for tenths, _ in best.values()),
        tuple(_inside(plain, *focus)) if focus else (),
    )


def _inside(plain: Plain, tenths: int, way: Way) -> Iterator[tuple[Plain, int]]:
    """Yield the problems that are steps of a way, each with the effort that is then left."""
    for step in way.steps:
        left = step.equation.left
        part = plain_of(left) if isinstance(left, Operation) else None
        if part is not None and part.answer not in (None, plain.answer):
            yield part, max(0, tenths - work(*part))


_TO_HUNDRED = range(2, 100)
_BESIDE = (-3, -2, -1, 0, 1, 2)
_HUNDREDS = tuple(hundred + beside for hundred in range(200, 1000, 100) for beside in _BESIDE)
_ADDED = tuple(number for number in range(15, 100) if number % 10 in (0, 5, 7, 8, 9))
_GROUPS = range(2, 13)
_OF_GROUPS = (*range(2, 31), 32, 35, 36, 40, 45, 48, 49, 50, 51, 60, 64, 70, 75, 80, 90, 98, 99,
              100, 101, 120, 125, 150, 200, 250)  # fmt: skip


def _plains(sign: Sign) -> Iterator[Plain]:
    """Yield every problem of an operation that may be a candidate in some grade."""
    match sign:
        case Sign.PLUS:
            yield from (Plain(a, sign, b) for a in _TO_HUNDRED for b in range(1, a + 1))
            yield from _with_hundreds(sign)
        case Sign.MINUS:
            yield from (Plain(a, sign, b) for a in range(3, 101) for b in range(1, a))
            yield from _with_hundreds(sign)
        case Sign.TIMES:
            yield from (Plain(a, sign, b) for a in _GROUPS for b in _OF_GROUPS)
            yield from (Plain(a, sign, b) for a in range(13, 51) for b in _OF_GROUPS)
        case _:
            yield from (Plain(a * b, sign, a) for a in _GROUPS for b in _OF_GROUPS if b > 1)
            yield from (Plain(a * b, sign, a) for a in range(14, 33) for b in _GROUPS)


def _with_hundreds(sign: Sign) -> Iterator[Plain]:
    """Yield the problems of a number of hundreds with each one that is no larger than it."""
    for number in _HUNDREDS:
        smaller = (other for other in _HUNDREDS if other < number)
        yield from (Plain(number, sign, other) for other in (*_ADDED, *smaller))
