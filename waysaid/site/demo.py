"""The demo's class, all of it invented: names, sixty talks, a plan for today.

The talks are a simulated class's (`waysaid.growth`), written as the events a desk sends, from a
fixed seed, so that every demo begins alike.
"""

from collections.abc import Sequence
from datetime import datetime, timedelta

from django.db import transaction
from django.utils import timezone
from django.utils.formats import date_format

from waysaid.growth import Lesson, Room, Simulated, lessons
from waysaid.site.models import Child, Plan, SchoolClass, Talk
from waysaid.site.opening import local_teacher
from waysaid.site.planning import plan_of_starter, row_of, starter_named
from waysaid.site.record import write_past
from waysaid.site.wall import empty_class
from waysaid.site.wishing import fields_of
from waysaid.strings import Wish, topics_of

NAMES = (
    "Ayo", "Bram", "Caleb", "Dov", "Elif", "Esme", "Faye", "Gael", "Hana", "Ines", "Iris",
    "Juno", "Kofi", "Lars", "Mei", "Milo", "Nadia", "Noor", "Odin", "Pilar", "Ravi",
    "Sana", "Theo", "Uma", "Wren", "Zuri",
)  # fmt: skip
"""First names that we thought up, from many places; none is of a child we know."""
CLASS_NAME = "2B"
GRADE = 2
SEED = 0
TALKS = 60
TODAY = "moving-a-few-across"
CLIENT = "demo"
TALK_STARTS = timedelta(hours=9, minutes=40)


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
        fill(school_class, lessons()[:TALKS], SEED)
        _plan_today(school_class)


def fill(school_class: SchoolClass, strings: Sequence[Lesson], seed: int) -> None:
    """Give a class past talks about these strings, one on each school day before today."""
    children = tuple(child.key for child in school_class.children.all())
    simulated = Simulated(Room(children), seed)
    for lesson, day in zip(strings, _school_days(len(strings)), strict=True):
        _past_talk(school_class, simulated, lesson, day)


def _school_days(count: int) -> list[datetime]:
    """Return the last school days before today, the oldest first, at the time of the talk."""
    day = timezone.localtime().replace(hour=0, minute=0, second=0, microsecond=0)
    found: list[datetime] = []
    while len(found) < count:
        day -= timedelta(days=1)
        if day.weekday() < 5:
            found.insert(0, day + TALK_STARTS)
    return found


def _plan_today(school_class: SchoolClass) -> None:
    starter = starter_named(TODAY)
    if starter is None:
        raise ValueError(f"No starter is called {TODAY}.")
    plan = plan_of_starter(school_class, starter)
    plan.made_for = timezone.localdate()
    plan.save()


def _plan_of(school_class: SchoolClass, lesson: Lesson, title: str, day: datetime) -> Plan:
    """Return the plan that a past talk had: its string, and what it was about."""
    wish = {}
    if lesson.focus is not None:
        topic = topics_of(lesson.focus)[0]
        wish = {**fields_of(Wish(GRADE, lesson.focus)), "about": topic.value}
    return Plan.objects.create(
        school_class=school_class,
        title=title,
        problems=[row_of(problem) for problem in lesson.problems],
        wish=wish,
        made_for=day.date(),
    )


def _past_talk(
    school_class: SchoolClass, simulated: Simulated, lesson: Lesson, day: datetime
) -> None:
    title = f"{date_format(day, 'l')}’s talk"
    plan = _plan_of(school_class, lesson, title, day)
    talk = Talk.objects.create(school_class=school_class, plan=plan, title=title)
    moment, happened = day, []
    for seconds, body in simulated.talk(lesson, title):
        moment += timedelta(seconds=seconds)
        happened.append((moment, body))
    write_past(talk.pk, CLIENT, happened)
    Talk.objects.filter(pk=talk.pk).update(made_at=day, closed_at=moment)
