"""A talk file taken in: as a plan, or as a past talk of the class, its children chosen by name."""

import re
from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from datetime import timedelta
from typing import Any

from django.db import transaction

from waysaid.paper import ChildInFile, TalkFile, with_children
from waysaid.site.models import Child, Plan, SchoolClass, Talk
from waysaid.site.names import LONGEST_NAME, MOST_NAMES, clean, told_apart
from waysaid.site.planning import LONGEST_WHY, MOST_PROBLEMS, Row
from waysaid.site.record import moment_of, write_records
from waysaid.site.talks import new_id, todays_title
from waysaid.talk import State, TalkOpened, fold

NAMELESS, NEW = "", "new"
"""Choices for a child of a file: no name at all, or a new name on the class list."""
LONGEST_TITLE = 120
_PLAIN = re.compile(r"[A-Za-z0-9_-]+")
MOST_EVER = 2 * MOST_NAMES
"""Names on one class list, those who left among them."""


class TooManyNamesError(ValueError):
    """Raised where the class list would become too long."""


@dataclass(frozen=True, slots=True)
class Match:
    """A child of the file, and the child on the class list that she seems to be: her key, or ''."""

    id: str
    name: str
    child: str


def matches(talk: TalkFile, children: Sequence[Child]) -> tuple[Match, ...]:
    """Return the file's children with those of the same name on the list, whatever its capitals.

    A name that is not there, or there once more, is for a person to decide: it is matched to
    nobody.
    """
    known = {clean(each.name).casefold(): each.key for each in children}
    return tuple(
        Match(each.id, clean(each.name), known.pop(clean(each.name).casefold(), NAMELESS))
        for each in talk.children
    )


def as_plan(school_class: SchoolClass, talk: TalkFile) -> Plan:
    """Return a new plan with the file's problems, reasons and questions; at most 12 problems."""
    return Plan.objects.create(
        school_class=school_class,
        title=talk.title[:LONGEST_TITLE].strip() or todays_title(school_class),
        problems=[_row(each.id, each.text, each.why) for each in talk.problems[:MOST_PROBLEMS]],
        questions=list(talk.questions),
        made_for=talk.day if not talk.events else None,
    )


def _row(row_id: str, text: str, why: str) -> Row:
    """Return a row of a plan; an id that no page could carry is made anew."""
    plain = row_id if _PLAIN.fullmatch(row_id) else new_id()
    return {"id": plain, "text": text, "why": why[:LONGEST_WHY], "locked": False}


def as_past_talk(school_class: SchoolClass, talk: TalkFile, chosen: Mapping[str, str]) -> Talk:
    """Return the talk, kept as a past one of this class, on the day on which it was.

    `chosen` says for each of the file's children the key of one on the list, `NEW` or `NAMELESS`;
    any other is nameless. Raises `TooManyNamesError`; nothing is kept then.
    """
    state = fold(talk.events)
    with transaction.atomic():
        children = _children(school_class, talk.children, chosen)
        made = Talk.objects.create(
            school_class=school_class, plan=_plan_of(school_class, talk), title=_title(talk)
        )
        records = with_children(talk.events, children)
        write_records(made.pk, records)
        _date(made, state, [each.at for each in records])
    made.refresh_from_db()
    return made


def _title(talk: TalkFile) -> str:
    """Return the talk's own title, which the board shows; a plan's may tell the idea."""
    opened: Any = talk.events[0].body
    title = opened.title if isinstance(opened, TalkOpened) else talk.title
    return " ".join(title.split())[:LONGEST_TITLE]


def _plan_of(school_class: SchoolClass, talk: TalkFile) -> Plan | None:
    """Return the plan that the file tells of, if it tells more than the talk does."""
    if not talk.questions and talk.title == _title(talk):
        return None
    return as_plan(school_class, talk)


def _date(made: Talk, state: State, moments: Sequence[int]) -> None:
    first, last = moment_of(min(moments)), moment_of(max(moments))
    closed = last + timedelta(milliseconds=1) if state.closed else None
    Talk.objects.filter(pk=made.pk).update(made_at=first, closed_at=closed)


def _children(
    school_class: SchoolClass, listed: Sequence[ChildInFile], chosen: Mapping[str, str]
) -> dict[str, str | None]:
    """Return the key on the class list for each of the file's children, new ones added."""
    there = {each.key: each.name for each in school_class.children.all()}
    new = [each for each in listed if chosen.get(each.id) == NEW and clean(each.name)]
    if len(there) + len(new) > MOST_EVER:
        raise TooManyNamesError(len(there) + len(new))
    names = told_apart([clean(each.name)[:LONGEST_NAME] for each in new], list(there.values()))
    keys: dict[str, str | None] = {}
    for place, (each, name) in enumerate(zip(new, names, strict=True)):
        made = Child.objects.create(school_class=school_class, name=name, order=len(there) + place)
        keys[each.id] = made.key
    for each in listed:
        key = chosen.get(each.id, NAMELESS)
        keys.setdefault(each.id, key if key in there else None)
    return keys
