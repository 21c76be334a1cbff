"""What the talks of a class showed: gathered once from a talk's events, then read from rows.

A talk is gathered again when more happened in it. What is worked out is kept until an event is
written; rows hold ids, never names.
"""

from collections.abc import Iterator
from datetime import date

from django.db import DEFAULT_DB_ALIAS, transaction
from django.db.models import F, OuterRef, Q, Subquery
from django.utils import timezone

from waysaid.drawing import Picture
from waysaid.growth import Held, How, Past, Shown, TalkPast, problems_shown, shown_in
from waysaid.site.models import EventRow, Gathered, SchoolClass, ShownRow, Talk
from waysaid.site.planning import focus_of_plan
from waysaid.site.record import at_hand, mark
from waysaid.ways import Family

MOST_CLASSES = 32
"""Classes whose past is kept at hand."""

_kept: dict[int, tuple[object, Past]] = {}


def past_of_class(school_class: SchoolClass) -> Past:
    """Return the past of a class as it stands on disk now."""
    now = mark()
    known, past = _kept.get(school_class.pk, (None, Past()))
    if known is not now:
        for talk in _behind(school_class):
            gather(talk)
        past = read_past(school_class)
        if len(_kept) >= MOST_CLASSES:
            _kept.clear()
        _kept[school_class.pk] = (now, past)
    return past


def _behind(school_class: SchoolClass) -> list[Talk]:
    """Return the talks of which nothing, or not all, was gathered."""
    newest = EventRow.objects.filter(talk=OuterRef("pk")).order_by("-order").values("order")[:1]
    talks = school_class.talks.select_related("plan", "school_class")
    told = talks.annotate(newest=Subquery(newest)).filter(newest__isnull=False)
    return list(told.filter(Q(gathered=None) | ~Q(gathered__upto=F("newest"))))


def held_of(talk: Talk) -> Held:
    """Return a talk as `waysaid.growth` reads it."""
    focus = focus_of_plan(talk.plan) if talk.plan is not None else None
    day = timezone.localtime(talk.made_at).date()
    return Held(str(talk.pk), day, at_hand(talk.pk).state, focus)


def gather(talk: Talk) -> None:
    """Gather what a talk shows as it stands now, in place of what was gathered before."""
    held = held_of(talk)
    with transaction.atomic():
        Gathered.objects.filter(talk=talk).delete()
        gathered = Gathered.objects.create(
            talk=talk,
            upto=held.state.order,
            day=held.day,
            focus=held.focus or "",
            problems=list(problems_shown(held)),
        )
        ShownRow.objects.bulk_create(_row(gathered, piece) for piece in shown_in(held))


def _row(gathered: Gathered, piece: Shown) -> ShownRow:
    return ShownRow(
        gathered=gathered,
        order=piece.order,
        child=piece.child,
        how=piece.how.value,
        problem=piece.problem,
        family=piece.family or "",
        way=piece.way,
        picture=piece.picture or "",
        right=piece.right,
        language=piece.language,
        planned=piece.planned,
    )


def read_past(school_class: SchoolClass) -> Past:
    """Return the past that the rows of a class make; talks without a problem shown are left out."""
    rows = Gathered.objects.filter(talk__school_class=school_class).order_by("day", "talk_id")
    talks = tuple(
        TalkPast(str(talk), day, Family(focus) if focus else None, tuple(problems))
        for talk, day, focus, problems in rows.values_list("talk_id", "day", "focus", "problems")
        if problems
    )
    by_talk: dict[str, list[Shown]] = {talk.id: [] for talk in talks}
    days = {talk.id: talk.day for talk in talks}
    for piece in _pieces(school_class, days):
        by_talk[piece.talk].append(piece)
    return Past(talks, tuple(piece for talk in talks for piece in by_talk[talk.id]))


_HOWS = {each.value: each for each in How}
_FAMILIES: dict[str, Family | None] = {"": None, **{each.value: each for each in Family}}
_PICTURES: dict[str, Picture | None] = {"": None, **{each.value: each for each in Picture}}


def _pieces(school_class: SchoolClass, days: dict[str, date]) -> Iterator[Shown]:
    rows = ShownRow.objects.filter(gathered__talk__school_class=school_class)
    columns = (
        "gathered__talk_id", "order", "child", "how", "problem", "family", "way", "picture",
        "right", "language", "planned",
    )  # fmt: skip
    for talk, order, child, how, problem, family, way, picture, *rest in rows.order_by(
        "gathered", "order"
    ).values_list(*columns):
        day = days.get(str(talk))
        if day is not None:
            yield Shown(
                str(talk), day, order, child, _HOWS[how], problem, _FAMILIES[family], way,
                _PICTURES[picture], *rest,
            )  # fmt: skip


def forget_gathered(class_id: int, using: str = DEFAULT_DB_ALIAS) -> None:
    """Take away what was gathered of a class's talks: it is gathered again from their events."""
    Gathered.objects.using(using).filter(talk__school_class=class_id).delete()
