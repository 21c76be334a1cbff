"""Next year's teacher gets what is chosen, field by field: what is not chosen is never written.

The school's rules and local law decide what may be handed over at all.
"""

from collections.abc import Iterator, Mapping
from dataclasses import dataclass
from datetime import timedelta
from typing import Any

from django.db import transaction
from django.utils import timezone
from django.utils.translation import gettext as _

from waysaid.growth import USED, Held, shown_in
from waysaid.number import text
from waysaid.site.evidence import held_of
from waysaid.site.mentions import any_of, without_in
from waysaid.site.models import Child, Plan, SchoolClass
from waysaid.site.names import told_apart
from waysaid.site.people_models import HandedOver
from waysaid.site.talks import new_id

FORM = "waysaid-handed-over-1"
"""What the file says it is."""
LIFE = timedelta(days=30)
"""How long what is handed over waits on a server for the other teacher (our choice)."""
LEAVE_OUT, NEW = "out", "new"
"""Where a child of the list goes: nowhere, or onto the list as a new name."""


@dataclass(frozen=True, slots=True)
class Chosen:
    """What is handed over: of which children, their ways, the class picture, the strings used."""

    children: frozenset[str]
    ways: bool
    picture: bool
    strings: bool


def chosen_of(school_class: SchoolClass, chosen: Chosen) -> dict[str, Any]:
    """Return what was chosen as JSON values; `child` in it is the id in this class.

    In a child's words another child of the class is "another child".
    """
    held = [held_of(talk) for talk in school_class.talks.order_by("made_at", "pk")]
    used = _families(held) if chosen.picture else {}
    names = {child.key: child.name for child in school_class.children.all()}
    children = []
    for key, name in names.items():
        if key not in chosen.children:
            continue
        row: dict[str, Any] = {"child": key, "name": name}
        if chosen.ways:
            told = [way for each in held for way in _ways(each, key)]
            others = any_of(names[one] for one in names if one != key)
            row["ways"] = without_in(others, told, _("another child")) if others else told
        if chosen.picture:
            row["families"] = used.get(key, [])
        children.append(row)
    content: dict[str, Any] = {"form": FORM}
    if children:
        content["children"] = children
    if chosen.strings:
        content["strings"] = [_string(each) for each in held]
    return content


def _ways(held: Held, key: str) -> Iterator[dict[str, Any]]:
    texts = {problem.id: problem.text for problem in held.state.problems}
    for way in held.state.ways:
        if way.child == key:
            yield {
                "day": held.day.isoformat(),
                "problem": texts.get(way.problem, ""),
                "words": way.words,
                "steps": [text(step.equation) for step in way.steps],
                "answer": way.answer or "",
                "family": way.family.value if way.family else "",
            }


def _families(held: list[Held]) -> dict[str, list[dict[str, str]]]:
    """Return the families each child used, each with the first and the latest day."""
    days: dict[str, dict[str, list[str]]] = {}
    for talk in held:
        for piece in shown_in(talk):
            if piece.child is not None and piece.how in USED and piece.family is not None:
                of_child = days.setdefault(piece.child, {})
                of_child.setdefault(piece.family.value, []).append(talk.day.isoformat())
    return {
        child: [
            {"family": family, "first": min(found), "latest": max(found)}
            for family, found in sorted(families.items())
        ]
        for child, families in days.items()
    }


def _string(held: Held) -> dict[str, Any]:
    """Return the problems of a talk as they were shown; its title may hold a name and stays."""
    shown = [each.text for each in held.state.problems if each.id in held.state.shown]
    return {"day": held.day.isoformat(), "problems": shown}


def without_ids(content: Mapping[str, Any]) -> dict[str, Any]:
    """Return what a file holds: what was chosen, without this class's ids."""
    rows = [
        {part: what for part, what in child.items() if part != "child"}
        for child in content.get("children", ())
    ]
    return {**content, "children": rows} if rows else dict(content)


def hand_to(school_class: SchoolClass, account: str, chosen: Chosen) -> HandedOver:
    """Let what was chosen wait for an account of this server; whether there is one is not told."""
    return HandedOver.objects.create(
        to=account.strip()[:150],
        giver=school_class.owner.username,
        came_from=school_class,
        content=chosen_of(school_class, chosen),
        expires_at=timezone.now() + LIFE,
    )


def forget_expired() -> None:
    """Let go what nobody took in time."""
    HandedOver.objects.filter(school_class=None, expires_at__lte=timezone.now()).delete()


def waiting_for(username: str) -> list[HandedOver]:
    """Return what waits for an account."""
    forget_expired()
    return list(HandedOver.objects.filter(school_class=None, to__iexact=username))


def take(handed: HandedOver, school_class: SchoolClass, goes: Mapping[int, str]) -> None:
    """Take what waits into a class: `goes` says for each child of the list where it goes.

    That is `LEAVE_OUT`, `NEW`, or the id of a child of the class. Strings become plans.
    """
    with transaction.atomic():
        known = {child.key: child for child in school_class.children.all()}
        rows = []
        for place, row in enumerate(handed.content.get("children", ())):
            where = goes.get(place, LEAVE_OUT)
            child = known.get(where) if where != NEW else _new_child(school_class, row["name"])
            if child is not None:
                kept = {part: what for part, what in row.items() if part != "name"}
                rows.append({**kept, "child": child.key})
        for string in handed.content.get("strings", ()):
            _plan(school_class, string["problems"])
        handed.content = {"form": FORM, "children": rows}
        handed.came_from, handed.school_class = None, school_class
        handed.to, handed.expires_at = "", None
        handed.save()
        if not any(row.get("ways") or row.get("families") for row in rows):
            handed.delete()


def _new_child(school_class: SchoolClass, name: str) -> Child:
    there = list(school_class.children.values_list("name", flat=True))
    (apart,) = told_apart([name], there)
    return Child.objects.create(school_class=school_class, name=apart, order=len(there))


def _plan(school_class: SchoolClass, problems: list[str]) -> None:
    if problems:
        rows = [{"id": new_id(), "text": each, "why": "", "locked": False} for each in problems]
        title = " · ".join(problems[:2])[:120]
        Plan.objects.create(school_class=school_class, title=title, problems=rows)


def forget_in_handed(class_id: int, key: str, name: str, using: str) -> None:
    """Take a child out of what her class hands over, of what it took and of what waits for it.

    A file that was not taken has no ids: there her name tells.
    """

    def hers(row: Mapping[str, Any]) -> bool:
        named = str(row.get("name", "")).casefold() == name.casefold()
        return row["child"] == key if "child" in row else named

    rows = HandedOver.objects.using(using)
    for row in [*rows.filter(came_from=class_id), *rows.filter(school_class=class_id)]:
        children = row.content.get("children", [])
        left = [each for each in children if not hers(each)]
        if left != children:
            row.content = {**row.content, "children": left}
            row.save(using=using, update_fields=["content"])


def rows_of_child(child: Child) -> list[dict[str, Any]]:
    """Return what the class took of a child."""
    return [
        row
        for handed in child.school_class.handed_over.all()
        for row in handed.content.get("children", ())
        if row.get("child") == child.key
    ]
