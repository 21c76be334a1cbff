"""What a class was shown lately, so that a new string has other problems."""

from collections.abc import Iterator
from typing import Any

from waysaid.number import Problem
from waysaid.site.models import EventRow, SchoolClass
from waysaid.site.planning import problems_of

WITH_PROBLEMS = ("talk-opened", "problem-added")
"""The events that bring problems."""
LATELY = 20
"""Talks that count as lately: a month of school days (our choice)."""


def used_lately(school_class: SchoolClass) -> frozenset[Problem]:
    """Return the problems of a class's last talks, those planned and those added in the middle."""
    last = school_class.talks.order_by("-made_at").values_list("pk", flat=True)[:LATELY]
    rows = EventRow.objects.filter(talk_id__in=list(last), kind__in=WITH_PROBLEMS)
    bodies = rows.values_list("body", flat=True)
    return frozenset(problems_of([each for body in bodies for each in _problems(body)]))


def _problems(body: dict[str, Any]) -> Iterator[dict[str, Any]]:
    if "text" in body:
        yield body
    yield from body.get("problems", ())
