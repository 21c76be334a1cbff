"""Which days' backups stay: the last seven, and one for each of four weeks before them."""

from collections.abc import Iterable
from datetime import date

DAILY = 7
WEEKLY = 4
"""How many of each stay (promised: 7 + 4)."""


def to_keep(days: Iterable[date]) -> frozenset[date]:
    """Return the days whose backups stay, at most `DAILY` + `WEEKLY` of those given.

    A week runs from Monday (ISO 8601) and keeps the newest of its days that are not among the
    last seven, so that run day after day nothing goes that a later day would have kept.
    """
    newest_first = sorted(set(days), reverse=True)
    weeks: dict[tuple[int, int], date] = {}
    for day in newest_first[DAILY:]:
        weeks.setdefault(day.isocalendar()[:2], day)
    return frozenset([*newest_first[:DAILY], *list(weeks.values())[:WEEKLY]])
