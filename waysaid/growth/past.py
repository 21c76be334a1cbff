"""The talks of a class so far, with what was shown in them: what everything else here reads."""

from collections.abc import Iterable, Mapping
from dataclasses import dataclass
from datetime import date
from functools import lru_cache

from waysaid.growth.shown import Held, Shown, shown_in
from waysaid.number import NoValue, Unreadable, parse
from waysaid.ways import Family, weighed_ways

LATELY = 20
"""Talks that count as lately: a month of school days. Our choice."""
IN_REACH = 2
"""A problem invites the ways that ask at most so many times what its easiest asks. Our choice."""
PAUSE = 10
"""Tenths that every way asks on top, so that a fact just known is not all there is. Our choice."""
MOST_EASE = 10**6
NOT_TAUGHT = frozenset({Family.COUNTING, Family.KNOWN_FACT, Family.COLUMN})
"""What no talk is held for: where children start, what they come to know, and paper. Our choice."""


@dataclass(frozen=True, slots=True)
class TalkPast:
    """A talk: its id, its day, the family its plan was about, the texts of the problems shown."""

    id: str
    day: date
    focus: Family | None = None
    problems: tuple[str, ...] = ()


@dataclass(frozen=True, slots=True)
class Past:
    """The talks of a class, the oldest first, and all that was shown in them, in that order."""

    talks: tuple[TalkPast, ...] = ()
    shown: tuple[Shown, ...] = ()

    @property
    def lately(self) -> tuple[TalkPast, ...]:
        """The last talks, the oldest of them first."""
        return self.talks[-LATELY:]

    def since(self, talks: Iterable[TalkPast]) -> tuple[Shown, ...]:
        """Return what was shown in these talks."""
        wanted = {talk.id for talk in talks}
        return tuple(piece for piece in self.shown if piece.talk in wanted)

    def ago(self) -> dict[str, int]:
        """Return how many talks there were since each talk, by its id; 0 for the last one."""
        return {talk.id: back for back, talk in enumerate(reversed(self.talks))}


def past_of(held: Iterable[Held]) -> Past:
    """Return the past that these talks make; talks without a problem shown are left out."""
    real = sorted((one for one in held if one.state.shown), key=lambda one: one.day)
    return Past(
        tuple(TalkPast(one.id, one.day, one.focus, problems_shown(one)) for one in real),
        tuple(piece for one in real for piece in shown_in(one)),
    )


def problems_shown(held: Held) -> tuple[str, ...]:
    """Return the texts of the problems that a talk showed, in the order of the string."""
    state = held.state
    return tuple(each.text for each in state.problems if each.id in state.shown)


@lru_cache(maxsize=16_384)
def shares(problem_text: str) -> Mapping[Family, int]:
    """Return how a class that knew every way would share a problem out, in thousandths of its ways.

    The easier a family's easiest way, the larger its share; what asks more than `IN_REACH` times
    the least has none. Empty for a text that is no problem, and for one that no way is known for.
    """
    try:
        weighed = weighed_ways(parse(problem_text))
    except (Unreadable, NoValue):
        return {}
    first: dict[Family, int] = {}
    for tenths, way in weighed:
        if tenths + PAUSE <= IN_REACH * (weighed[0][0] + PAUSE):
            first.setdefault(way.family, tenths + PAUSE)
    ease = {family: MOST_EASE // tenths for family, tenths in first.items()}
    whole = sum(ease.values())
    return {family: 1000 * each // whole for family, each in ease.items()}


def invited(problem_text: str) -> frozenset[Family]:
    """Return the families that a problem invites: those with a share that talks are held for."""
    return frozenset(shares(problem_text)) - NOT_TAUGHT
