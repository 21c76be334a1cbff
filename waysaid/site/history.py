"""What a class's talks before this one tell the desk: for her eyes only, never the board's."""

from collections import Counter
from collections.abc import Mapping, Sequence
from dataclasses import dataclass, field
from functools import lru_cache
from statistics import median

from django.db.models import Max

from waysaid.site.models import EventRow, Talk
from waysaid.site.record import record_of
from waysaid.talk import Record, State, fold, kind_of

TALKS_BACK = 20
"""How many talks the counts look back over (our choice: about a month of days)."""
LATELY = 5
"""Heard lately: in one of so many talks before this one (our choice: a school week)."""
SHORTEST_THINK, LONGEST_THINK = 2, 300
"""Seconds; a problem shown by mistake, or left standing over a break, is not think time."""
ENDS_THINKING = frozenset({"answer-heard", "way-shared", "passed", "phase-set", "turn-and-talk"})
"""What ends the thinking, by the kind of event."""


@dataclass(frozen=True, slots=True)
class History:
    """Families of ways as counts, by class and by child; who was heard lately; think time."""

    talks: int = 0
    families: Mapping[str, int] = field(default_factory=dict)
    by_child: Mapping[str, Mapping[str, int]] = field(default_factory=dict)
    lately: frozenset[str] = frozenset()
    usual_seconds: int | None = None


def history_before(talk: Talk) -> History:
    """Return what the talks of this class before `talk` tell, as they stand on disk now."""
    before = Talk.objects.filter(school_class=talk.school_class_id, made_at__lt=talk.made_at)
    ids = list(before.order_by("-made_at", "-pk").values_list("pk", flat=True)[:TALKS_BACK])
    rows = EventRow.objects.filter(talk__in=ids)
    return _history(tuple(ids), rows.aggregate(Max("pk"))["pk__max"] or 0, rows.count())


@lru_cache(maxsize=32)
def _history(newest_first: tuple[int, ...], newest_event: int, events: int) -> History:
    rows: dict[int, list[Record]] = {talk: [] for talk in newest_first}
    for row in EventRow.objects.filter(talk__in=newest_first).order_by("talk", "order"):
        rows[row.talk_id].append(record_of(row))
    past = [(records, fold(records)) for records in rows.values()]
    real = [(records, state) for records, state in past if state.shown]
    return summed_up(real)


def summed_up(newest_first: Sequence[tuple[Sequence[Record], State]]) -> History:
    """Return the history that these talks make."""
    families: Counter[str] = Counter()
    by_child: dict[str, Counter[str]] = {}
    seconds: list[int] = []
    for records, state in newest_first:
        seconds += think_seconds(records)
        for way in state.ways:
            if way.family is None:
                continue
            families[way.family.value] += 1
            for child in {way.child, *way.agreed} - {None}:
                by_child.setdefault(str(child), Counter())[way.family.value] += 1
    lately = frozenset(child for _, state in newest_first[:LATELY] for child in state.spoke())
    usual = round(median(seconds)) if seconds else None
    return History(len(newest_first), families, by_child, lately, usual)


def think_seconds(records: Sequence[Record]) -> list[int]:
    """Return, for each problem shown, the seconds until something was heard of it."""
    found = []
    since: int | None = None
    for record in records:
        kind = kind_of(record.body)
        if kind == "problem-shown":
            since = record.at
        elif since is not None and kind in ENDS_THINKING:
            seconds = (record.at - since) // 1000
            since = None
            if SHORTEST_THINK <= seconds <= LONGEST_THINK:
                found.append(seconds)
    return found
