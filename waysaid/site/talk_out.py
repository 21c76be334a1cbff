"""A plan or a talk as a talk file, for elsewhere."""

from collections.abc import Iterable
from typing import Any

from django.utils import timezone
from django.utils.translation import gettext as _

from waysaid.paper import (
    BoardInFile,
    SignalInFile,
    TalkFile,
    TalkFileError,
    outside,
    read_talk_file,
    talk_file_bytes,
)
from waysaid.site.models import Plan, SchoolClass, Talk
from waysaid.site.record import at_hand
from waysaid.site.refusal import RefusalError
from waysaid.site.talks import desk_title
from waysaid.site.wall import MOST_SIGNALS
from waysaid.site.wording import rest_of
from waysaid.talk import PlannedProblem

LONGEST = 300


def plan_file(plan: Plan) -> bytes:
    """Return a plan as a talk file with no events."""
    problems = tuple(
        PlannedProblem(str(row["id"]), str(row["text"]), _line(row.get("why")))
        for row in plan.problems
    )
    school_class = plan.school_class
    return _sound(
        TalkFile(
            title=_line(plan.title),
            language=school_class.desk_language,
            board_language=school_class.board_language,
            grade=school_class.grade,
            day=plan.made_for,
            board=_board(school_class),
            problems=problems,
            questions=_lines(plan.questions),
        )
    )


def talk_file(talk: Talk, *, names: bool) -> bytes:
    """Return a talk as a talk file, the children with their names or without."""
    kept = at_hand(talk.pk)
    with kept.lock:
        records, state = tuple(kept.records), kept.state
    school_class = talk.school_class
    known = {each.key: each.name for each in school_class.children.all()} if names else {}
    children, events = outside(records, known)
    problems = tuple(PlannedProblem(each.id, each.text, _line(each.why)) for each in state.problems)
    return _sound(
        TalkFile(
            title=_line(desk_title(talk)),
            language=state.language,
            board_language=state.board_language,
            grade=school_class.grade,
            day=timezone.localtime(talk.made_at).date(),
            board=_board(school_class),
            problems=problems,
            questions=_lines(talk.plan.questions if talk.plan else ()),
            children=children,
            events=events,
        )
    )


def _sound(talk: TalkFile) -> bytes:
    """Return the file, read again first: what cannot be brought back is not given out."""
    made = talk_file_bytes(talk)
    try:
        read_talk_file(made)
    except TalkFileError:
        sentence = _("This is more than a talk file takes; the record of the class has all of it.")
        raise RefusalError(409, sentence) from None
    return made


def _board(school_class: SchoolClass) -> BoardInFile:
    signals = tuple(
        SignalInFile(_line(each.get("word")), _line(each.get("icon")) or None)
        for each in school_class.signals[:MOST_SIGNALS]
    )
    return BoardInFile(
        signals,
        _lines(school_class.norms),
        _lines(school_class.starters),
        rest_of(school_class),
        school_class.image_seconds,
    )


def _lines(given: Iterable[Any]) -> tuple[str, ...]:
    return tuple(line for each in given if (line := _line(each)))[:20]


def _line(given: object) -> str:
    """Return a text as one line of a file."""
    return " ".join(str(given or "").split())[:LONGEST].strip()
