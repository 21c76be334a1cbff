"""Give what is kept to who asks for it: all of a class, or all of one child."""

from collections.abc import Iterator, Mapping
from typing import Any

from django.utils.translation import gettext as _

from waysaid.site.erasing import mentions_of
from waysaid.site.handing import rows_of_child
from waysaid.site.mentions import any_of, without_in
from waysaid.site.models import Child, EventRow, Plan, SchoolClass, SchoolYear, Talk


def class_record(school_class: SchoolClass) -> dict[str, Any]:
    """Return everything that is kept of a class, as JSON values; pictures by their sizes alone."""
    return {
        "class": {
            "name": school_class.name,
            "grade": school_class.grade,
            "desk_language": school_class.desk_language,
            "board_language": school_class.board_language,
            "words": school_class.words,
            "own_names": school_class.own_names,
            "rest": school_class.rest,
            "image_seconds": school_class.image_seconds,
            "background": school_class.background_id,
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
        "handed_over": [handed.content for handed in school_class.handed_over.all()],
        "colleagues": [
            {"account": each.person.get_username(), "part": each.part}
            for each in school_class.members.select_related("person")
        ],
    }


def _plan(plan: Plan) -> dict[str, Any]:
    return {
        "id": plan.pk,
        "title": plan.title,
        "problems": plan.problems,
        "questions": plan.questions,
        "starter": plan.starter,
        "wish": plan.wish,
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
        "history": talk.history,
        "set_aside": talk.set_aside,
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


ABOUT_A_WAY = frozenset({"way-edited", "way-drawn-as", "way-seen-as", "strokes-drawn"})
"""Kinds of events that say more of a way, and name no child themselves."""


def child_record(child: Child) -> dict[str, Any]:
    """Return everything kept of one child, as JSON values, and nothing of another.

    Where another child of the class is named in what this one said or was written of her, there is
    "another child".
    """
    record: dict[str, Any] = {
        "child": {"id": child.key, "name": child.name, "active": child.active},
        "class": child.school_class.name,
        "talks": [
            {
                "title": talk.title,
                "day": talk.made_at.date().isoformat(),
                "events": events,
            }
            for talk in child.school_class.talks.order_by("made_at", "pk")
            if (events := list(_of_child(list(talk.events.order_by("order")), child.key)))
        ],
        "handed_over": rows_of_child(child),
        "written": mentions_of(child),
    }
    names = child.school_class.children.exclude(pk=child.pk).values_list("name", flat=True)
    if (others := any_of(names)) is not None:
        told = {part: record[part] for part in ("talks", "handed_over", "written")}
        record |= without_in(others, told, _("another child"), always=("written",))
    return record


def _of_child(rows: list[EventRow], key: str) -> Iterator[dict[str, Any]]:
    """Yield the events of a talk that are this child's, each with the problem it is about."""
    texts: dict[str, str] = {}
    ways: dict[str, Mapping[str, Any]] = {}
    for row in rows:
        body = row.body
        for planned in body.get("problems") or ():
            texts[planned["id"]] = planned["text"]
        if row.kind == "problem-added":
            texts[body["problem"]] = body["text"]
        elif row.kind == "way-shared":
            ways[body["id"]] = body
        way = ways.get(str(body.get("way")))
        more = row.kind in ABOUT_A_WAY and way is not None and way.get("child") == key
        if body.get("child") == key or more:
            about = body.get("problem") or (way or {}).get("problem")
            same = {"steps": (way or {}).get("steps")} if row.kind == "way-agreed" else {}
            kept = {each: what for each, what in body.items() if each not in ("child", "to")}
            at = row.received_at.isoformat()
            yield {**kept, **same, "problem_text": texts.get(str(about), ""), "received_at": at}
