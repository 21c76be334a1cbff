"""The demo's class, all of it invented: names, a fortnight of talks, a plan for today.

The talks are made of the same events that a desk sends, with a fixed seed, so that every demo
begins alike.
"""

import random
from collections.abc import Iterator
from datetime import datetime, timedelta
from typing import Any

from django.db import transaction
from django.utils import timezone
from django.utils.formats import date_format

from waysaid.number import number_text, parse, said_text
from waysaid.site.chips import foreseen, steps_json
from waysaid.site.desk_notes import answer_of, problem_of
from waysaid.site.models import Child, Plan, SchoolClass, Talk
from waysaid.site.opening import local_teacher
from waysaid.site.planning import plan_of_starter, starter_named
from waysaid.site.record import Sent, append
from waysaid.site.wall import empty_class
from waysaid.slips import foresee, slip_answer
from waysaid.talk import body_from_json

NAMES = (
    "Ayo", "Bram", "Caleb", "Dov", "Elif", "Esme", "Faye", "Gael", "Hana", "Ines", "Iris",
    "Juno", "Kofi", "Lars", "Lena", "Mei", "Milo", "Nadia", "Noor", "Odin", "Pilar", "Quin",
    "Ravi", "Rosa", "Sana", "Seth", "Theo", "Tomas", "Uma", "Wren", "Yara", "Zuri",
)  # fmt: skip
"""First names that we thought up, from many places; none is of a child we know."""
CLASS_NAME = "2B"
GRADE = 2
PAST = (
    "tens-then-the-rest",
    "fill-up-to-a-ten",
    "moving-one-across",
    "one-short-of-a-ten",
    "down-to-a-ten",
    "tens-with-tens",
)
"""Starters of the talks before today, the oldest first."""
TODAY = "moving-a-few-across"
CLIENT = "demo"
QUIET = 6
"""Children at the end of a shuffled list who have not said anything lately."""
TALK_STARTS = timedelta(hours=9, minutes=40)

Happened = tuple[int, dict[str, Any]]


def make_demo() -> None:
    """Fill an empty database with the invented class; one that has a class is left as it is."""
    with transaction.atomic():
        if SchoolClass.objects.exists():
            return
        school_class = empty_class(local_teacher().pk, CLASS_NAME, "en", "en")
        school_class.grade = GRADE
        school_class.save()
        Child.objects.bulk_create(
            Child(school_class=school_class, name=name, order=order)
            for order, name in enumerate(NAMES)
        )
        dice = random.Random(CLASS_NAME)
        speakers = [child.key for child in school_class.children.all()]
        dice.shuffle(speakers)
        for slug, day in zip(PAST, _school_days(len(PAST)), strict=True):
            _past_talk(_plan(school_class, slug, day), day, speakers[:-QUIET], dice)
        _plan(school_class, TODAY, timezone.localtime())


def _school_days(count: int) -> list[datetime]:
    """Return the last school days before today, the oldest first, at the time of the talk."""
    day = timezone.localtime().replace(hour=0, minute=0, second=0, microsecond=0)
    found: list[datetime] = []
    while len(found) < count:
        day -= timedelta(days=1)
        if day.weekday() < 5:
            found.insert(0, day + TALK_STARTS)
    return found


def _plan(school_class: SchoolClass, slug: str, day: datetime) -> Plan:
    starter = starter_named(slug)
    if starter is None:
        raise ValueError(f"No starter is called {slug}.")
    plan = plan_of_starter(school_class, starter)
    plan.made_for = day.date()
    plan.save()
    return plan


def _past_talk(plan: Plan, day: datetime, speakers: list[str], dice: random.Random) -> None:
    school_class = plan.school_class
    title = f"{date_format(day, 'l')}’s talk"
    talk = Talk.objects.create(school_class=school_class, plan=plan, title=title)
    opened = {
        "kind": "talk-opened",
        "title": title,
        "language": school_class.desk_language,
        "board_language": school_class.board_language,
        "problems": [{key: row[key] for key in ("id", "text", "why")} for row in plan.problems],
    }
    moment = day
    script: list[Happened] = [(0, opened), *_told(plan, speakers, dice), (20, {"kind": "closed"})]
    for sequence, (seconds, body) in enumerate(script):
        moment += timedelta(seconds=seconds)
        append(talk.pk, CLIENT, [Sent(sequence, body_from_json(body))], at=moment)
    Talk.objects.filter(pk=talk.pk).update(made_at=day, closed_at=moment)


def _told(plan: Plan, speakers: list[str], dice: random.Random) -> Iterator[Happened]:
    """Yield what happened in a talk, each with the seconds since what was before it."""
    for place, row in enumerate(plan.problems):
        turns = dice.sample(speakers, 4)
        yield 25, {"kind": "problem-shown", "problem": row["id"]}
        yield from _answers(row, turns, place, dice)
        yield from _ways(row, turns, place, dice)
    first, second = (row["id"] for row in plan.problems[:2])
    yield 30, {"kind": "phase-set", "phase": "connect"}
    marks = [{"problem": first, "place": "answer"}, {"problem": second, "place": "answer"}]
    noticed = {"kind": "noticed", "id": "n0", "child": dice.choice(speakers), "marks": marks}
    yield 25, {**noticed, "words": "the first one helps with the next one", "join": True}


def _answers(
    row: dict[str, Any], turns: list[str], place: int, dice: random.Random
) -> Iterator[Happened]:
    problem = problem_of(row["text"])
    right = answer_of(problem) if problem is not None else None
    if problem is None or right is None:
        return
    heard = {"kind": "answer-heard", "id": f"a{place}", "problem": row["id"]}
    yield dice.randrange(9, 24), {**heard, "text": number_text(right), "child": turns[0]}
    slips = foresee(problem)
    if slips and place % 2:
        wrong = slip_answer(slips[0], problem)
        yield 5, {**heard, "id": f"b{place}", "text": wrong, "child": turns[3]}


def _ways(
    row: dict[str, Any], turns: list[str], place: int, dice: random.Random
) -> Iterator[Happened]:
    known = foreseen(row["text"])[:5]
    for nth, way in enumerate(dice.sample(known, min(len(known), dice.choice((2, 2, 3))))):
        yield (
            dice.randrange(20, 50),
            {
                "kind": "way-shared",
                "id": f"w{place}-{nth}",
                "problem": row["id"],
                "child": turns[nth],
                "steps": steps_json(way.steps),
                "family": way.family.value,
                "answer": said_text(way.answer, parse(row["text"])),
                "picture": dice.choice(("equations", "number-line")),
                "foreseen": True,
            },
        )
    if known and place % 2 == 0:
        yield 6, {"kind": "way-agreed", "way": f"w{place}-0", "child": turns[3]}
