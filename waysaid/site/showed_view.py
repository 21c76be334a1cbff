"""What the pages about a class and a child show: growth's values, in a class's own words."""

from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from datetime import date

from waysaid.drawing import Frame, Picture, Scene, draw, lines, nearest
from waysaid.growth import (
    ChildUse,
    ClassPicture,
    FamilyUse,
    How,
    Past,
    Shown,
    Standing,
    Suggestion,
    TalkPast,
    Voice,
    how_name,
    need_says,
    reason_says,
    standing_name,
    standing_rule,
    times_said,
    to_invite,
)
from waysaid.site.record import at_hand
from waysaid.site.talk_rows import printed
from waysaid.site.wording import Wording
from waysaid.talk import State, WayTold, ends_on, telling_of

MOST_TICKS = 60
"""Talks on a small line of time, the last ones: what can still be told apart."""
TICK = 10
"""Units between two talks on it."""
LAST_TALKS = 5
"""Talks shown beside each voice: a school week."""
ROOM = Frame(width=420, height=220, label=60)
"""The room of a drawing on a card."""


@dataclass(frozen=True, slots=True)
class ChildShown:
    """A child in the row of those who used a family: her id, her name, how, when, how often."""

    key: str
    name: str
    how: str
    first: date
    times: str


@dataclass(frozen=True, slots=True)
class FamilyShown:
    """A family on the class's page: when first and last, its children, a small line of time.

    `ticks` are places on the line, each with whether it was told in that talk.
    """

    slug: str
    name: str
    times: str
    first: date | None
    last: date | None
    children: tuple[ChildShown, ...]
    ticks: tuple[tuple[int, bool], ...]


@dataclass(frozen=True, slots=True)
class Group:
    """The families that stand alike, with the rule in a sentence."""

    slug: str
    name: str
    rule: str
    families: tuple[FamilyShown, ...]


def groups_shown(
    picture: ClassPicture, past: Past, names: Mapping[str, str], wording: Wording
) -> tuple[Group, ...]:
    """Return the class picture in groups; a child who is not in `names` is left out."""
    ids = [talk.id for talk in past.talks[-MOST_TICKS:]]
    return tuple(
        Group(
            standing.value,
            standing_name(standing, wording.language),
            standing_rule(standing, wording.language),
            tuple(_family(use, ids, names, wording) for use in picture.standing(standing)),
        )
        for standing in Standing
        if picture.standing(standing)
    )


def _family(
    use: FamilyUse, ids: Sequence[str], names: Mapping[str, str], wording: Wording
) -> FamilyShown:
    told = set(use.talks)
    return FamilyShown(
        slug=use.family.value,
        name=wording.name(use.family),
        times=times_said(use.told, len(use.talks), wording.language),
        first=use.brought.day if use.brought else None,
        last=use.last,
        children=tuple(
            _child(each, names, wording) for each in use.children if each.child in names
        ),
        ticks=tuple((TICK * at + TICK // 2, talk in told) for at, talk in enumerate(ids)),
    )


def _child(use: ChildUse, names: Mapping[str, str], wording: Wording) -> ChildShown:
    times = times_said(use.times, use.times, wording.language) if use.times < 3 else ""
    how = how_name(use.how, wording.language)
    return ChildShown(use.child, names[use.child], how, use.first.day, times)


@dataclass(frozen=True, slots=True)
class VoiceShown:
    """A child's voice: in which of the last talks she was heard, the oldest first, and when last.

    `since` counts the talks since; None for a child not heard so far.
    """

    key: str
    name: str
    lately: tuple[bool, ...]
    last: date | None
    since: int | None
    turns: int
    passed: bool
    invite: bool


def voices_shown(
    heard: Sequence[Voice], past: Past, names: Mapping[str, str]
) -> tuple[VoiceShown, ...]:
    """Return the voices in the order given."""
    talks = [talk.id for talk in past.talks[-LAST_TALKS:]]
    spoke = {(p.child, p.talk) for p in past.shown if p.how is not How.PASSED}
    invited = set(to_invite(heard))
    return tuple(
        VoiceShown(
            key=voice.child,
            name=names[voice.child],
            lately=tuple((voice.child, talk) in spoke for talk in talks),
            last=voice.last,
            since=voice.since,
            turns=voice.turns,
            passed=voice.passed,
            invite=voice.child in invited,
        )
        for voice in heard
    )


@dataclass(frozen=True, slots=True)
class ReasonShown:
    """A reason in words, with the talks it points to."""

    says: str
    talks: tuple[TalkPast, ...]


@dataclass(frozen=True, slots=True)
class NextShown:
    """What could come next, in words."""

    says: str
    reasons: tuple[ReasonShown, ...]
    problems: tuple[str, ...]


MOST_PROBLEMS = 4
"""Problems shown beside a suggestion."""


def next_shown(suggestion: Suggestion, past: Past, wording: Wording) -> NextShown:
    """Return a suggestion in words."""
    talks = {talk.id: talk for talk in past.talks}
    reasons = tuple(
        ReasonShown(
            reason_says(reason, wording.language),
            tuple(talks[each] for each in reason.pointed if each in talks),
        )
        for reason in suggestion.reasons
    )
    says = need_says(suggestion.need, wording.name(suggestion.family), wording.language)
    problems = tuple(printed(text) for text in suggestion.problems[:MOST_PROBLEMS])
    return NextShown(says, reasons, problems)


@dataclass(frozen=True, slots=True)
class WayCard:
    """One of a child's ways: the day, the talk, the problem, how she came by it, what she said."""

    day: date
    talk: str
    problem: str
    family: str
    how: str
    lines: tuple[str, ...]
    words: str
    scene: Scene | None


def way_cards(pieces: Sequence[Shown], wording: Wording) -> tuple[WayCard, ...]:
    """Return a child's ways as cards, as they were told and drawn, in the order given."""
    return tuple(_card(piece, wording) for piece in pieces)


def _card(piece: Shown, wording: Wording) -> WayCard:
    state = at_hand(int(piece.talk)).state
    way = state.way(piece.way)
    said, words, scene = _as_told(state, way, wording) if way is not None else ((), "", None)
    return WayCard(
        day=piece.day,
        talk=piece.talk,
        problem=printed(piece.problem),
        family=wording.name(piece.family) if piece.family else "",
        how=how_name(piece.how, wording.language),
        lines=said,
        words=words,
        scene=scene,
    )


def _as_told(
    state: State, way: WayTold, wording: Wording
) -> tuple[tuple[str, ...], str, Scene | None]:
    """Return a way's equations, the words of it, and its drawing where it was drawn."""
    telling = telling_of(state, way)
    if telling is None or not telling.steps:
        return (), way.words or way.answer or "", None
    picture = nearest(way.picture, telling)
    if picture in (Picture.WORDS, Picture.EQUATIONS):
        said = (*lines(telling, wording.language), *ends_on(way.answer))
        return said, way.words, None
    return (), way.words, draw(picture, telling, ROOM, wording.language)
