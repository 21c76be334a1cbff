"""Take away what is kept of a child, a talk or a class; and give all of it to who asks.

What is taken away is gone from this machine's data. Copies made before still hold it.
"""

from collections.abc import Iterator
from contextlib import contextmanager
from typing import Any

from django.db import connection, transaction

from waysaid.site.hub import HUB
from waysaid.site.models import Child, EventRow, Plan, SchoolClass, SchoolYear, Talk
from waysaid.site.record import forget_all

NOTHING_WITHOUT_A_CHILD = "passed"
"""The kind of event that says only that this child chose to pass."""


def forget_child(child: Child, *, said_too: bool) -> None:
    """Take a child off the list for good; what was said stays nameless, or goes too.

    Events are changed nowhere else: here the name's id goes out of each of them.
    """
    with _for_good():
        own = EventRow.objects.filter(talk__school_class=child.school_class_id)
        for row in own.filter(body__child=child.key):
            if said_too or row.kind == NOTHING_WITHOUT_A_CHILD:
                row.delete()
            else:
                row.body = {**row.body, "child": None}
                row.save(update_fields=["body"])
        child.delete()


def forget_talks(talks: list[Talk]) -> None:
    """Take talks away with everything in them."""
    gone = [talk.pk for talk in talks]
    with _for_good():
        Talk.objects.filter(pk__in=gone).delete()
    _end_streams(gone)


def forget_class(school_class: SchoolClass) -> None:
    """Take a class away: names, plans, its year, talks, pictures."""
    gone = list(school_class.talks.values_list("pk", flat=True))
    with _for_good():
        school_class.delete()
    _end_streams(gone)


def _end_streams(talks: list[int]) -> None:
    """Let no screen go on looking at a talk that is gone."""
    for talk in talks:
        HUB.empty(talk)


@contextmanager
def _for_good() -> Iterator[None]:
    """Do all or nothing, and leave nothing of it in the data file or at hand.

    SQLite keeps what was deleted until its place is used again, unless it is told to wipe it.
    """
    on_sqlite = connection.vendor == "sqlite"
    with connection.cursor() as cursor:
        if on_sqlite:
            cursor.execute("PRAGMA secure_delete = ON")
        with transaction.atomic():
            yield
        forget_all()
        if on_sqlite:
            cursor.execute("PRAGMA wal_checkpoint(TRUNCATE)")


def class_record(school_class: SchoolClass) -> dict[str, Any]:
    """Return everything that is kept of a class, as JSON values; pictures by their sizes alone."""
    return {
        "class": {
            "name": school_class.name,
            "grade": school_class.grade,
            "desk_language": school_class.desk_language,
            "board_language": school_class.board_language,
            "signals": school_class.signals,
            "norms": school_class.norms,
            "starters": school_class.starters,
            "made_at": school_class.made_at.isoformat(),
        },
        "children": [
            {"id": child.key, "name": child.name, "order": child.order, "active": child.active}
            for child in school_class.children.all()
        ],
        "pictures": [
            {"id": each.pk, "kind": each.kind, "width": each.width, "height": each.height}
            for each in school_class.pictures.defer("content")
        ],
        "plans": [_plan(plan) for plan in school_class.plans.all()],
        "year": _year(SchoolYear.objects.filter(school_class=school_class).first()),
        "talks": [_talk(talk) for talk in school_class.talks.order_by("made_at", "pk")],
    }


def _plan(plan: Plan) -> dict[str, Any]:
    return {
        "id": plan.pk,
        "title": plan.title,
        "problems": plan.problems,
        "questions": plan.questions,
        "starter": plan.starter,
        "made_for": plan.made_for.isoformat() if plan.made_for else None,
        "made_at": plan.made_at.isoformat(),
    }


def _year(year: SchoolYear | None) -> dict[str, Any] | None:
    if year is None:
        return None
    return {
        "grade": year.grade,
        "curriculum": year.curriculum,
        "first": year.first.isoformat(),
        "last": year.last.isoformat(),
        "off": year.off,
        "days": [
            {
                "date": day.date.isoformat(),
                "idea": day.idea,
                "problems": day.problems,
                "plan": day.plan_id,
                "locked": day.locked,
                "skipped": day.skipped,
                "held": day.held,
            }
            for day in year.days.all()
        ],
    }


def _talk(talk: Talk) -> dict[str, Any]:
    return {
        "id": talk.pk,
        "title": talk.title,
        "plan": talk.plan_id,
        "made_at": talk.made_at.isoformat(),
        "closed_at": talk.closed_at.isoformat() if talk.closed_at else None,
        "events": [
            {
                "order": row.order,
                "client": row.client,
                "sequence": row.sequence,
                "received_at": row.received_at.isoformat(),
                **row.body,
            }
            for row in talk.events.order_by("order")
        ],
    }
