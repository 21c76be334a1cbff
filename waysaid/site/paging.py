"""A long list in pages, the newest first: which page is asked for, and what is beside it."""

from collections.abc import Sequence
from dataclasses import dataclass
from typing import Generic, TypeVar

from django.db.models import Model, QuerySet
from django.http import HttpRequest

Row = TypeVar("Row", bound=Model)
LONGEST = 5
"""Digits of a page's number."""


@dataclass(frozen=True, slots=True)
class Page(Generic[Row]):
    """The rows of a page, and the numbers of the pages beside it; None where there is none."""

    rows: Sequence[Row]
    newer: int | None
    older: int | None


def page_asked(request: HttpRequest) -> int:
    """Return the number of the page that an address asks for; 1 where it asks for none."""
    asked = request.GET.get("page", "")
    return max(1, int(asked)) if asked.isdecimal() and len(asked) <= LONGEST else 1


def page_of(rows: QuerySet[Row], page: int, size: int) -> Page[Row]:
    """Return a page of rows that stand newest first."""
    found = list(rows[(page - 1) * size : page * size + 1])
    return Page(
        found[:size], page - 1 if page > 1 else None, page + 1 if len(found) > size else None
    )
