"""A class's talks as the start and the list of talks show them."""

from collections.abc import Iterable
from dataclasses import dataclass

from django.utils import timezone
from django.utils.translation import get_language

from waysaid.number import BLANK, Language, Print, Unreadable, parse, text
from waysaid.site.models import SchoolClass, Talk
from waysaid.site.record import at_hand
from waysaid.talk import State


@dataclass(frozen=True, slots=True)
class TalkRow:
    """A talk in one line: its problems as shown, how many ways were told, whether it can go on."""

    talk: Talk
    problems: tuple[str, ...]
    ways: int
    paused: bool
    open: bool


def printed(problem: str) -> str:
    """Return a problem as a screen shows it; one that cannot be read as it was typed."""
    try:
        language = Language((get_language() or "en")[:2])
        return text(parse(problem), Print.TRUE, language).replace(BLANK.value, "▢")
    except Unreadable:
        return problem


def rows_of(talks: Iterable[Talk]) -> list[TalkRow]:
    """Return the talks as rows, in the order given."""
    return [_row(talk, at_hand(talk.pk).state) for talk in talks]


def to_go_on(school_class: SchoolClass) -> TalkRow | None:
    """Return the talk that waits: paused on any day, or begun today and not over."""
    today = timezone.localdate()
    for row in rows_of(school_class.talks.all()[:12]):
        same_day = timezone.localtime(row.talk.made_at).date() == today
        if row.open and (row.paused or same_day):
            return row
    return None


def _row(talk: Talk, state: State) -> TalkRow:
    shown = tuple(printed(each.text) for each in state.problems if each.id in state.shown)
    return TalkRow(
        talk, shown, len(state.ways), state.paused and not state.closed, not state.closed
    )
