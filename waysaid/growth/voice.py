"""Whose voice was in the room: by turns and by days. To invite with, never to force.

A pass is a choice, and it is respected: who passed lately is not named to be asked again. What was
heard is what was written down; a child may have talked in pairs, or thought, and left no trace.
"""

from collections import Counter
from collections.abc import Sequence
from dataclasses import dataclass
from datetime import date

from waysaid.growth.past import Past
from waysaid.growth.shown import How

HEARD_LATELY = 5
"""Talks in which to have been heard lately: a school week. Our choice."""
LEFT_ALONE = 2
"""For so many talks after a pass a child is not named to be invited. Our choice."""
MOST_INVITED = 3
"""Names at a time: as many as one talk has room for. Our choice."""


@dataclass(frozen=True, slots=True)
class Voice:
    """A child's voice: turns in all and in the last talks, when last, how many talks since.

    `last` and `since` are None for a child not heard so far. `passed` says that she chose to pass
    in one of the last talks.
    """

    child: str
    turns: int
    turns_lately: int
    last: date | None
    since: int | None
    passed: bool

    @property
    def heard_lately(self) -> bool:
        """Whether she was heard in one of the last talks."""
        return self.since is not None and self.since < HEARD_LATELY


def voices(past: Past, children: Sequence[str]) -> tuple[Voice, ...]:
    """Return the voice of each child, in the order given."""
    ago = past.ago()
    turns: Counter[str] = Counter()
    lately: Counter[str] = Counter()
    last: dict[str, tuple[int, date]] = {}
    passed: set[str] = set()
    for piece in past.shown:
        child, back = piece.child, ago.get(piece.talk)
        if child is None or back is None:
            continue
        if piece.how is How.PASSED:
            if back < LEFT_ALONE:
                passed.add(child)
            continue
        turns[child] += 1
        lately[child] += back < HEARD_LATELY
        last[child] = min(last.get(child, (back, piece.day)), (back, piece.day))
    return tuple(
        _voice(child, turns, lately, last.get(child), child in passed) for child in children
    )


def _voice(
    child: str,
    turns: Counter[str],
    lately: Counter[str],
    last: tuple[int, date] | None,
    passed: bool,
) -> Voice:
    since, day = last or (None, None)
    return Voice(child, turns[child], lately[child], day, since, passed)


def to_invite(heard: Sequence[Voice]) -> tuple[str, ...]:
    """Return whom to invite: not heard lately, not just passed; the longest unheard first."""
    quiet = [voice for voice in heard if not voice.heard_lately and not voice.passed]
    quiet.sort(key=lambda voice: (voice.since is not None, -(voice.since or 0)))
    return tuple(voice.child for voice in quiet[:MOST_INVITED])
