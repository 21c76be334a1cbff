"""Begin a talk."""

import secrets
from collections.abc import Sequence
from datetime import datetime
from typing import Any

from django.db import transaction
from django.utils import timezone, translation
from django.utils.formats import date_format
from django.utils.translation import gettext as _

from waysaid.site.models import Plan, SchoolClass, Talk
from waysaid.site.record import SERVER, Sent, append
from waysaid.talk import body_from_json


def start_talk(
    school_class: SchoolClass,
    *,
    plan: Plan | None = None,
    problems: Sequence[str] = (),
    history: bool = True,
) -> Talk:
    """Return a new talk on the plan's problems, or on these, the first of them on the board.

    Without a problem the board waits with the signals. Raises `BadEventError` for a problem that
    cannot be read; nothing is kept then. The title is the day's: a plan's own title may tell the
    idea, so it stays on the desk.
    """
    rows = plan.problems if plan is not None else [{"text": text} for text in problems]
    planned = [_planned(row) for row in rows]
    title = todays_title(school_class)
    opened = {
        "kind": "talk-opened",
        "title": title,
        "language": school_class.desk_language,
        "board_language": school_class.board_language,
        "problems": planned,
        "image_seconds": school_class.image_seconds,
    }
    bodies: list[dict[str, Any]] = [opened]
    if planned and plan is None:
        bodies.append({"kind": "problem-shown", "problem": planned[0]["id"]})
    sent = [Sent(sequence, body_from_json(body)) for sequence, body in enumerate(bodies)]
    with transaction.atomic():
        talk = Talk.objects.create(
            school_class=school_class, plan=plan, title=title, history=history
        )
        append(talk.pk, SERVER, sent)
    return talk


def desk_title(talk: Talk) -> str:
    """Return what the teacher calls a talk: its plan's title, else its own."""
    return talk.plan.title if talk.plan is not None and talk.plan.title else talk.title


def todays_title(school_class: SchoolClass) -> str:
    """Return the name of a talk of today."""
    return title_of_day(school_class, timezone.localtime())


def title_of_day(school_class: SchoolClass, when: datetime) -> str:
    """Return a talk's name by its day, in the board's language."""
    with translation.override(school_class.board_language):
        day = date_format(when, "l")
        return _("%(day)s’s talk") % {"day": day}


def new_id() -> str:
    """Return a random id for a problem, as clients make them."""
    return secrets.token_urlsafe(9)


def _planned(row: dict[str, Any]) -> dict[str, str]:
    return {
        "id": str(row.get("id") or new_id()),
        "text": str(row["text"]),
        "why": str(row.get("why") or ""),
    }
