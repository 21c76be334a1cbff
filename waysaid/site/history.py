"""What a class's talks before this one tell the desk: for her eyes only, never the board's."""

from collections import Counter
from collections.abc import Collection, Mapping, Sequence
from dataclasses import dataclass, field
from functools import lru_cache
from statistics import median

from django.db.models import Max

from waysaid.site.models import EventRow, Talk
from waysaid.site.record import MOST_TALKS, mark, record_of
from waysaid.talk import Record, State, fold, kind_of
from waysaid.ways import Family

TALKS_BACK = 20
"""How many talks the counts look back over (our choice: about a month of days)."""
LATELY = 5
"""Heard lately: in one of so many talks before this one (our choice: a school week)."""
SHORTEST_THINK, LONGEST_THINK = 2, 300
"""Seconds; a problem shown by mistake, or left standing over a break, is not think time."""
ENDS_THINKING = frozenset({"answer-heard", "way-shared", "passed", "phase-set", "turn-and-talk"})
"""What ends the thinking, by the kind of event."""

Correction = tuple[Family | None, Family | None]
"""The family a line was read as, and the one the teacher chose; None for no family."""


@dataclass(frozen=True, slots=True)
class History:
    """Families of ways as counts, by class and by child; who was heard lately; think time.

    `corrections` counts the ways that were read as one family and chosen as another.
    """

    talks: int = 0
    families: Mapping[str, int] = field(default_factory=dict)
    by_child: Mapping[str, Mapping[str, int]] = field(default_factory=dict)
    lately: frozenset[str] = frozenset()
    corrections: Mapping[Correction, int] = field(default_factory=dict)
    usual_seconds: int | None = None


def history_before(talk: Talk) -> History:
    """Return what the talks of this class before `talk` tell, as they stand on disk now."""
    before = Talk.objects.filter(school_class=talk.school_class_id, made_at__lt=talk.made_at)
    listed = before.order_by("-made_at", "-pk").values_list("pk", "set_aside")[:TALKS_BACK]
    talks = tuple((pk, tuple(set_aside)) for pk, set_aside in listed)
    rows = EventRow.objects.filter(talk__in=[pk for pk, _ in talks])
    return _history(talks, rows.aggregate(Max("pk"))["pk__max"] or 0, rows.count())


_kept: dict[int, tuple[object, Mapping[Correction, int]]] = {}


def corrections_before(talk: Talk) -> Mapping[Correction, int]:
    """Return the corrections alone: looked up once until an event is written or one is erased."""
    now = mark()
    known, corrections = _kept.get(talk.pk, (None, {}))
    if known is not now:
        corrections = history_before(talk).corrections
        if len(_kept) >= MOST_TALKS:
            _kept.clear()
        _kept[talk.pk] = (now, corrections)
    return corrections


@lru_cache(maxsize=32)
def _history(
    newest_first: tuple[tuple[int, tuple[str, ...]], ...], newest_event: int, events: int
) -> History:
    rows: dict[int, list[Record]] = {talk: [] for talk, _ in newest_first}
    for row in EventRow.objects.filter(talk__in=rows).order_by("talk", "order"):
        rows[row.talk_id].append(record_of(row))
    past = [(records, fold(records)) for records in rows.values()]
    real = [(records, state) for records, state in past if state.shown]
    return summed_up(real, frozenset(way for _, set_aside in newest_first for way in set_aside))


def summed_up(
    newest_first: Sequence[tuple[Sequence[Record], State]], set_aside: Collection[str] = ()
) -> History:
    """Return the history that these talks make; corrections of ways set aside do not count."""
    families: Counter[str] = Counter()
    by_child: dict[str, Counter[str]] = {}
    seconds: list[int] = []
    corrections: Counter[Correction] = Counter()
    for records, state in newest_first:
        seconds += think_seconds(records)
        corrections.update(corrections_of(state, set_aside).values())
        for way in state.ways:
            if way.family is None:
                continue
            families[way.family.value] += 1
            for child in {way.child, *way.agreed} - {None}:
                by_child.setdefault(str(child), Counter())[way.family.value] += 1
    lately = frozenset(child for _, state in newest_first[:LATELY] for child in state.spoke())
    usual = round(median(seconds)) if seconds else None
    return History(len(newest_first), families, by_child, lately, corrections, usual)


def corrections_of(state: State, set_aside: Collection[str] = ()) -> dict[str, Correction]:
    """Return what was read as one family and chosen as another, by the way's id.

    What the teacher set aside is left out.
    """
    return {
        way.id: (way.proposed.family, way.family)
        for way in state.ways
        if way.proposed is not None and way.corrected and way.id not in set_aside
    }


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
