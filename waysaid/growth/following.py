"""What could come next: a family to hold a talk about, with reasons that point to the talks.

Every rule counts what happened and wants enough of it, so that a chance day moves nothing; where
no rule finds enough there is no suggestion, and the plan of the year goes on. All numbers here are
our choice, tried on simulated classes with a need planted and without one.
"""

from collections import Counter
from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from enum import StrEnum

from waysaid.growth.past import NOT_TAUGHT, Past, TalkPast, shares
from waysaid.growth.shown import TOLD, USED, Shown
from waysaid.strings import FOCUSES
from waysaid.ways import Family

ENOUGH_WAYS = 24
"""Before so many ways were told lately nothing is suggested: about three talks' worth."""
MISSED = 8
MISSED_TALKS = 4
"""A family is missed when a class that knew every way would have told it so many times lately, on
problems of so many talks: by chance alone it is then left out about once in three thousand."""
A_FEW = 2
A_FEW_MISSED = 9
"""Children who carry a family alone; it is missed when so many ways of it would have been told."""
SLIPPED, SLIPPED_TALKS, SLIPPED_CHILDREN = 4, 3, 2
"""So many ways of a family ended elsewhere, in so many talks, of so many children; and more than
half of those told, or of the last `SLIPPED_OF`, did."""
SLIPPED_OF = 8
WAIT = 3
"""After a talk about a family so many others come before it is suggested again."""
MOST_POINTED = 3
"""Talks that a reason points to, the last ones."""


class Need(StrEnum):
    """Why a family could come next."""

    SLIPPING = "slipping"
    FEW = "few"
    NOBODY = "nobody"
    AWAY = "away"


class Because(StrEnum):
    """What a reason says."""

    ENDED_ELSEWHERE = "ended-elsewhere"
    THEY_TELL_IT = "they-tell-it"
    FEW_BROUGHT_IT = "few-brought-it"
    NOBODY_BROUGHT_IT = "nobody-brought-it"
    WAS_HEARD_BEFORE = "was-heard-before"
    INVITED = "invited"
    TALK_ABOUT_IT = "talk-about-it"
    NO_TALK_ABOUT_IT = "no-talk-about-it"


@dataclass(frozen=True, slots=True)
class Reason:
    """One reason: how often, in how many talks, and the ids of the last of these talks."""

    because: Because
    times: int = 0
    talks: int = 0
    pointed: tuple[str, ...] = ()


@dataclass(frozen=True, slots=True)
class Suggestion:
    """A family for the next talk, what it needs, two or three reasons, problems that invited it."""

    family: Family
    need: Need
    reasons: tuple[Reason, ...]
    problems: tuple[str, ...]


@dataclass(frozen=True, slots=True)
class _Case:
    """A family: its pieces ever and lately, the problems that invited it, the talks about it.

    `due` is how many ways of it a class that knew every way would have told lately, in thousandths.
    """

    family: Family
    told: Sequence[Shown]
    used: Sequence[Shown]
    lately: Sequence[Shown]
    invited: Sequence[tuple[TalkPast, str]]
    about: Sequence[TalkPast]
    due: int


def suggested_next(past: Past) -> Suggestion | None:
    """Return what could come next, the clearest need first; None where nothing stands out."""
    return next(iter(_suggestions(past)), None)


def _suggestions(past: Past) -> list[Suggestion]:
    lately = past.since(past.lately)
    if sum(piece.how in TOLD for piece in lately) < ENOUGH_WAYS:
        return []
    resting = {talk.focus for talk in past.talks[-WAIT:]}
    cases = [case for case in _cases(past, lately) if case.family not in resting]
    found = [one for case in cases if (one := _suggestion(case)) is not None]
    order = list(Need)
    return sorted(found, key=lambda one: (order.index(one.need), -_strength(one)))


def _strength(suggestion: Suggestion) -> int:
    """Return how much there is behind the first reason."""
    return suggestion.reasons[0].times


def _cases(past: Past, lately: Sequence[Shown]) -> Iterator[_Case]:
    by_family: dict[Family, list[Shown]] = {}
    for piece in past.shown:
        if piece.family is not None and piece.how in USED:
            by_family.setdefault(piece.family, []).append(piece)
    recent = {piece.talk for piece in lately}
    asked = [(talk, text) for talk in past.lately for text in talk.problems]
    told_on = Counter((piece.talk, piece.problem) for piece in lately if piece.how in TOLD)
    for family in FOCUSES:
        if family not in NOT_TAUGHT:
            used = by_family.get(family, [])
            told = [piece for piece in used if piece.how in TOLD]
            now = [piece for piece in told if piece.talk in recent]
            at = [(talk, text) for talk, text in asked if family in shares(text)]
            due = sum(told_on[talk.id, text] * shares(text)[family] for talk, text in at)
            about = [talk for talk in past.talks if talk.focus is family]
            yield _Case(family, told, used, now, at, about, due)


def _suggestion(case: _Case) -> Suggestion | None:
    for need, reasons in (
        (Need.SLIPPING, _slipping(case)),
        (Need.FEW, _few(case)),
        (Need.NOBODY, _nobody(case)),
        (Need.AWAY, _away(case)),
    ):
        if reasons:
            problems = tuple(dict.fromkeys(text for _, text in reversed(case.invited)))
            return Suggestion(case.family, need, (*reasons, _about(case))[:3], problems)
    return None


def _slipping(case: _Case) -> tuple[Reason, ...]:
    """Ways of a family end elsewhere more often than not: something to look at together."""
    counted = [piece for piece in case.lately if piece.right is not None]
    last = counted[-SLIPPED_OF:]
    wrong = [piece for piece in last if piece.right is False]
    talks = {piece.talk for piece in wrong}
    children = {piece.child for piece in wrong if piece.child is not None}
    if (
        len(wrong) < SLIPPED
        or len(wrong) * 2 <= len(last)
        or len(talks) < SLIPPED_TALKS
        or len(children) < SLIPPED_CHILDREN
    ):
        return ()
    return (_reason(Because.ENDED_ELSEWHERE, wrong), _reason(Because.THEY_TELL_IT, counted))


def _few(case: _Case) -> tuple[Reason, ...]:
    """One or two children carry a family that others could meet."""
    children = {piece.child for piece in case.used if piece.child is not None}
    if not 0 < len(children) <= A_FEW or not _missed(case, A_FEW_MISSED + 2 * len(case.lately)):
        return ()
    return (_reason(Because.FEW_BROUGHT_IT, case.used), _invited_reason(case))


def _nobody(case: _Case) -> tuple[Reason, ...]:
    """Problems made a family easy, again and again, and nobody has brought it so far."""
    if case.used or not _missed(case, MISSED):
        return ()
    return (_invited_reason(case), Reason(Because.NOBODY_BROUGHT_IT))


def _away(case: _Case) -> tuple[Reason, ...]:
    """Find a family that was told before and is told no more, though problems invite it."""
    if not case.told or case.lately or not _missed(case, MISSED):
        return ()
    return (_reason(Because.WAS_HEARD_BEFORE, case.told), _invited_reason(case))


def _missed(case: _Case, ways: int) -> bool:
    talks = {talk.id for talk, _ in case.invited}
    return case.due >= 1000 * ways and len(talks) >= MISSED_TALKS


def _invited_reason(case: _Case) -> Reason:
    talks = tuple(dict.fromkeys(talk.id for talk, _ in case.invited))
    return Reason(Because.INVITED, len(case.invited), len(talks), talks[-MOST_POINTED:])


def _about(case: _Case) -> Reason:
    if not case.about:
        return Reason(Because.NO_TALK_ABOUT_IT)
    talks = tuple(talk.id for talk in case.about)
    return Reason(Because.TALK_ABOUT_IT, len(talks), len(talks), talks[-MOST_POINTED:])


def _reason(because: Because, pieces: Sequence[Shown]) -> Reason:
    talks = tuple(dict.fromkeys(piece.talk for piece in pieces))
    return Reason(because, len(pieces), len(talks), talks[-MOST_POINTED:])
