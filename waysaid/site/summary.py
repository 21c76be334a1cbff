"""The summary a coach sees: made once for each half-term that is over, without a name."""

from collections.abc import Iterable
from dataclasses import dataclass
from datetime import date

from django.db import transaction
from django.utils import timezone

from waysaid.growth import USED, shown_in
from waysaid.site.counts import LEAST, cells, half_term, is_over, together
from waysaid.site.evidence import held_of
from waysaid.site.models import SchoolClass, Talk
from waysaid.site.people_models import Counted
from waysaid.site.wording import wording_of
from waysaid.ways import Family

MOST = 12
"""Half-terms on the page: two years (our choice)."""


@dataclass(frozen=True, slots=True)
class Band:
    """How many children used a family in a half-term, from and to."""

    family: str
    low: int
    high: int


@dataclass(frozen=True, slots=True)
class HalfTerm:
    """A half-term: its first day and the bands that may be told."""

    first: date
    bands: tuple[Band, ...]


@dataclass(frozen=True, slots=True)
class GradeSummary:
    """The classes of a grade, each with its half-terms, and all of them together if several."""

    grade: int | None
    classes: tuple[tuple[str, tuple[HalfTerm, ...]], ...]
    together: tuple[HalfTerm, ...]


def count_what_is_over(school_class: SchoolClass, today: date) -> None:
    """Count each half-term that is over and was not counted; what was counted stays as it is."""
    counted = set(school_class.counted.values_list("first", flat=True))
    waiting: dict[date, list[Talk]] = {}
    for talk in school_class.talks.all():
        first = half_term(timezone.localtime(talk.made_at).date())
        if first not in counted and is_over(first, today):
            waiting.setdefault(first, []).append(talk)
    for first, talks in waiting.items():
        with transaction.atomic():
            Counted.objects.get_or_create(
                school_class=school_class, first=first, defaults={"cells": cells(_heard(talks))}
            )


def _heard(talks: Iterable[Talk]) -> Iterable[tuple[str, str]]:
    for talk in talks:
        for piece in shown_in(held_of(talk)):
            if piece.child is not None:
                used = piece.family if piece.how in USED else None
                yield piece.child, used.value if used else ""


def summary_of(classes: Iterable[SchoolClass], today: date) -> list[GradeSummary]:
    """Return what may be told of these classes, by grade."""
    grades: dict[int | None, list[SchoolClass]] = {}
    for each in classes:
        count_what_is_over(each, today)
        grades.setdefault(each.grade, []).append(each)
    known = sorted(grades, key=lambda grade: -1 if grade is None else grade)
    return [_grade(grade, grades[grade]) for grade in known]


def _grade(grade: int | None, classes: list[SchoolClass]) -> GradeSummary:
    rows = {each: list(each.counted.order_by("-first")[:MOST]) for each in classes}
    one_by_one = tuple(
        (each.name, tuple(_half_term(each, row.first, [row]) for row in rows[each]))
        for each in classes
    )
    firsts = sorted({row.first for found in rows.values() for row in found}, reverse=True)
    every = [row for found in rows.values() for row in found]
    added = tuple(
        _half_term(classes[0], first, [row for row in every if row.first == first])
        for first in firsts
    )
    return GradeSummary(grade, one_by_one, added if len(classes) > 1 else ())


def _half_term(school_class: SchoolClass, first: date, rows: list[Counted]) -> HalfTerm:
    names = wording_of(school_class)
    bands = together((row.cells for row in rows), LEAST)
    return HalfTerm(
        first,
        tuple(Band(names.name(Family(slug)), *band) for slug, band in sorted(bands.items())),
    )
