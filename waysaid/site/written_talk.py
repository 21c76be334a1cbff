"""A talk that was written down by hand, typed in afterwards: read line by line, then kept.

What is kept are the same events that a desk sends, in the order of the lines. All of them have one
moment, so that nobody takes the time of typing for time to think.
"""

from collections.abc import Callable, Iterator, Mapping, Sequence
from dataclasses import dataclass, replace
from datetime import date, datetime, time
from typing import Any

from django.db import transaction
from django.utils import timezone
from django.utils.translation import gettext as _

from waysaid.drawing import Picture
from waysaid.site.around import OnList, on_list
from waysaid.site.ears import Ears, ears_of_class
from waysaid.site.models import EventRow, Plan, Talk
from waysaid.site.reading import preview, reading_of, usual_picture, way_from_line
from waysaid.site.record import Sent, append
from waysaid.site.talks import title_of_day
from waysaid.site.wording import Wording, wording_of
from waysaid.site.written_lines import BadLineError, Line, What, line_read, who_and_said
from waysaid.talk import body_from_json

MOST_LINES = 60
"""Lines of one problem: twice as many as a class has children (our choice)."""
NOON = time(12)
"""The moment of a talk that was on another day: nobody knows a better one."""

Body = dict[str, Any]


@dataclass(frozen=True, slots=True)
class LineShown:
    """A line by its number from 1: who and how it was read, or, where `wrong`, one sentence."""

    number: int
    says: str
    wrong: bool


@dataclass(frozen=True, slots=True)
class Section:
    """A problem and what was typed under it; `shown` and `events` follow the lines."""

    shown: tuple[LineShown, ...]
    events: tuple[Body, ...]

    @property
    def wrong(self) -> bool:
        """Whether some line cannot be taken down."""
        return any(line.wrong for line in self.shown)


@dataclass(frozen=True, slots=True)
class WrittenTalk:
    """What was typed of a plan: a section a problem by its id, and what was noticed."""

    sections: Mapping[str, Section]
    noticed: Section

    @property
    def wrong(self) -> bool:
        """Whether some line cannot be taken down."""
        return self.noticed.wrong or any(each.wrong for each in self.sections.values())

    @property
    def empty(self) -> bool:
        """Whether nothing was typed."""
        return not any(each.shown for each in (*self.sections.values(), self.noticed))


def written_talk(plan: Plan, typed: Mapping[str, str], noticed: str) -> WrittenTalk:
    """Return what was typed, read; `typed` is by the id of the problem. Nothing is kept."""
    listed = on_list(plan.school_class)
    wording, ears = wording_of(plan.school_class), ears_of_class(plan.school_class)
    sections = {
        str(row["id"]): section_read(row, typed.get(str(row["id"]), ""), listed, (wording, ears))
        for row in plan.problems
    }
    return WrittenTalk(sections, _noticed(noticed, listed))


def section_read(
    row: Mapping[str, Any], typed: str, listed: Sequence[OnList], heard: tuple[Wording, Ears]
) -> Section:
    """Return what was typed under a problem, a row of a plan, for the children on this list."""
    told = _Told(row, listed, *heard)
    return Section(tuple(_each_line(typed, told.line)), tuple(told.events))


def keep_written(plan: Plan, told: WrittenTalk, day: date, client: str) -> Talk:
    """Keep what was typed as a talk of that day that is over; the same `client` keeps it once.

    A problem with nothing under it was not reached. Raises Django's `DatabaseError`.
    """
    when = _moment(day)
    with transaction.atomic():
        kept = kept_before(plan, client)
        if kept is not None:
            return kept
        title = title_of_day(plan.school_class, when)
        talk = Talk.objects.create(school_class=plan.school_class, plan=plan, title=title)
        bodies = [_opened(plan, title), *_happened(told), {"kind": "closed"}]
        sent = [Sent(nth, body_from_json(body)) for nth, body in enumerate(bodies)]
        append(talk.pk, client, sent, at=when)
        Talk.objects.filter(pk=talk.pk).update(made_at=when, closed_at=when)
    return talk


def kept_before(plan: Plan, client: str) -> Talk | None:
    """Return the talk of this class that was kept for `client`, or None."""
    events = EventRow.objects.filter(client=client, talk__school_class=plan.school_class)
    first = events.select_related("talk").first()
    return first.talk if first is not None else None


def _moment(day: date) -> datetime:
    """Return noon of that day; now, where that is still to come."""
    noon = timezone.make_aware(datetime.combine(day, NOON))
    return min(noon, timezone.localtime())


def _opened(plan: Plan, title: str) -> Body:
    return {
        "kind": "talk-opened",
        "title": title,
        "language": plan.school_class.desk_language,
        "board_language": plan.school_class.board_language,
        "problems": [
            {"id": str(row["id"]), "text": str(row["text"]), "why": str(row.get("why") or "")}
            for row in plan.problems
        ],
        "image_seconds": plan.school_class.image_seconds,
    }


def _happened(told: WrittenTalk) -> Iterator[Body]:
    for problem, section in told.sections.items():
        if section.events:
            yield {"kind": "problem-shown", "problem": problem}
            yield from section.events
    if told.noticed.events:
        yield {"kind": "phase-set", "phase": "connect"}
        yield from told.noticed.events


class _Told:
    """The lines under one problem, read one after the other."""

    def __init__(
        self, row: Mapping[str, Any], listed: Sequence[OnList], wording: Wording, ears: Ears
    ) -> None:
        self.problem, self.text = str(row["id"]), str(row["text"])
        self.listed, self.wording, self.ears = listed, wording, ears
        self.ways: list[tuple[str | None, str]] = []
        self.events: list[Body] = []

    def line(self, number: int, typed: str) -> str:
        """Take one line; return how it was read. Raises `BadLineError`."""
        line = line_read(typed, self.listed)
        match line.what:
            case What.WAY:
                says = self._way(number, line)
            case What.ANSWER:
                says = self._answers(number, line)
            case What.AGREED:
                says = self._agreed(line)
            case What.PASSED:
                says = _("passed")
                for child in line.who:
                    self._add("passed", problem=self.problem, child=child.key)
        return _said_by(line.who, says)

    def _add(self, kind: str, **parts: Any) -> None:
        self.events.append({"kind": kind, **parts})

    def _way(self, number: int, line: Line) -> str:
        teller = line.who[0] if line.who else None
        told = way_from_line(self.text, line.said, self.ears)
        picture = usual_picture(self.text, line.said, self.ears)
        way = f"{self.problem}-w{number}"
        self._add(
            "way-shared",
            id=way,
            problem=self.problem,
            child=_key(teller),
            picture=picture if told["steps"] else Picture.WORDS.value,
            **told,
        )
        for child in line.who[1:]:
            self._add("way-agreed", way=way, child=child.key)
        says = _read_as(preview(self.text, line.said, self.wording, self.ears))
        self.ways.append((_key(teller), way))
        if teller is not None and told["steps"]:
            said = reading_of(self.text, line.said, self.ears)
            self.ears = replace(self.ears, before=(*self.ears.before, (teller.name, said)))
        return says

    def _answers(self, number: int, line: Line) -> str:
        given = [each.strip() for each in line.said.split(",")]
        for nth, text in enumerate(given):
            for child in map(_key, line.who or (None,)):
                heard = f"{self.problem}-a{number}-{nth}-{child or ''}"
                self._add("answer-heard", id=heard, problem=self.problem, text=text, child=child)
        return _("only an answer: %(answer)s") % {"answer": ", ".join(given)}

    def _agreed(self, line: Line) -> str:
        like = line.like
        found = [way for child, way in self.ways if like is None or child == like.key]
        if not found:
            raise BadLineError(
                _("No way of %(name)s stands above that it could be the same as.")
                % {"name": like.name}
                if like
                else _("No way stands above that it could be the same as.")
            )
        for child in line.who:
            self._add("way-agreed", way=found[-1], child=child.key)
        if like is None:
            return _("the same as the way above")
        return _("the same as %(name)s") % {"name": like.name}


def _each_line(typed: str, take: Callable[[int, str], str]) -> Iterator[LineShown]:
    """Yield each line that is not empty, taken or refused."""
    lines = [(nth, line) for nth, line in enumerate(typed.splitlines(), 1) if line.strip()]
    for nth, line in lines[:MOST_LINES]:
        try:
            yield LineShown(nth, take(nth, line), wrong=False)
        except BadLineError as error:
            yield LineShown(nth, str(error), wrong=True)
    if len(lines) > MOST_LINES:
        sentence = _("A problem takes at most %(most)s lines.") % {"most": MOST_LINES}
        yield LineShown(lines[MOST_LINES][0], sentence, wrong=True)


def _noticed(typed: str, listed: Sequence[OnList]) -> Section:
    events: list[Body] = []

    def take(number: int, line: str) -> str:
        who, said = who_and_said(line, listed)
        if len(who) > 1:
            raise BadLineError(_("One child notices at a time; name the others on their own line."))
        child = _key(who[0] if who else None)
        events.append({"kind": "noticed", "id": f"n{number}", "child": child, "words": said})
        return _said_by(who, said)

    shown = tuple(_each_line(typed, take))
    return Section(shown, tuple(events))


def _key(child: OnList | None) -> str | None:
    return None if child is None else child.key


def _said_by(who: Sequence[OnList], says: str) -> str:
    names = ", ".join(each.name for each in who) or _("no name")
    return f"{names}: {says}"


def _read_as(read: Mapping[str, Any]) -> str:
    """Return what was understood of a way in a line; its words stay as they are in any case."""
    if not read["lines"]:
        answer = read["answer"]
        words = _("kept as words")
        return words if answer is None else f"{words}, {_('answer %(said)s') % {'said': answer}}"
    steps = ", ".join(read["lines"])
    if read["family_name"] is None:
        return steps
    perhaps = _("perhaps %(family)s") if read["perhaps"] else "%(family)s"
    return f"{steps} · {perhaps % {'family': read['family_name']}}"
