"""Write a talk's events down, and keep the state they fold to.

An event that is answered is on disk: it is written in one transaction that takes the write lock
first, so the order is the server's. The same client and sequence again gets the same answer; with
another body it is refused. Watchers are told only after the commit.
"""

import threading
from collections import OrderedDict
from collections.abc import Sequence
from dataclasses import dataclass
from datetime import UTC, datetime, timedelta
from typing import Any

from django.db import connection, transaction
from django.utils import timezone

from waysaid.site.asked import Asked, forget_rows
from waysaid.site.held import let_all_go
from waysaid.site.models import EventRow, Talk
from waysaid.talk import Body, Record, State, body_from_json, body_json, fold, fold_on, kind_of

SERVER = "server"
"""The client name of events that the server makes itself."""
FIRST = 1
"""The order of a talk's first event."""
MOST_TALKS = 64
"""Talks whose state is kept at hand; others are folded again when they are asked for."""


class SentTwiceError(ValueError):
    """Raised when a client sends another event under a sequence it has used."""

    def __init__(self, sequence: int) -> None:
        super().__init__(sequence)
        self.sequence = sequence


_BEGINNING = datetime(1970, 1, 1, tzinfo=UTC)
_LAST = Asked(
    lambda key: EventRow.objects.filter(talk=key).order_by("-order").values_list("order")[:1]
)


@dataclass(frozen=True, slots=True)
class Sent:
    """An event as a client sent it."""

    sequence: int
    body: Body


@dataclass(frozen=True, slots=True)
class Saved:
    """An event that is on disk, and its place in the talk."""

    sequence: int
    order: int


class TalkAtHand:
    """One talk's records and state; hold `lock` while reading more than one thing of it."""

    def __init__(self, talk_id: int) -> None:
        self.talk_id = talk_id
        self.lock = threading.RLock()
        self.records: list[Record] = []
        self.state: State = fold(())
        self.order = 0
        self.version = 0
        self.saved_by: dict[str, int] = {}

    def catch_up(self) -> None:
        """Read what was written since."""
        with self.lock:
            rows = EventRow.objects.filter(talk_id=self.talk_id, order__gt=self.order)
            self._take([record_of(row) for row in rows.order_by("order")])

    def hear(self, records: Sequence[Record]) -> None:
        """Take what is on disk now; what does not follow at once is read from there."""
        with self.lock:
            new = [record for record in records if record.order > self.order]
            if new and new[0].order == self.order + 1:
                self._take(new)
            elif new:
                self.catch_up()

    def _take(self, new: list[Record]) -> None:
        if not new:
            return
        self.state = fold_on(self.state, self.records, new)
        self.records.extend(new)
        for record in new:
            before = self.saved_by.get(record.client, -1)
            self.saved_by[record.client] = max(before, record.sequence)
        self.order = new[-1].order

    def next_version(self) -> int:
        """Return a higher number at each call, to tell later frames from earlier ones."""
        with self.lock:
            self.version += 1
            return self.version


_at_hand: OrderedDict[int, TalkAtHand] = OrderedDict()
_at_hand_lock = threading.Lock()
_marks = [object()]
"""One mark, another after every change of what is on disk."""


def at_hand(talk_id: int, least: int | None = None) -> TalkAtHand:
    """Return the talk as it stands on disk now, or at least up to the event of order `least`."""
    talk = _kept(talk_id)
    if least is None or talk.order < least:
        talk.catch_up()
    return talk


def _kept(talk_id: int) -> TalkAtHand:
    with _at_hand_lock:
        talk = _at_hand.setdefault(talk_id, TalkAtHand(talk_id))
        _at_hand.move_to_end(talk_id)
        while len(_at_hand) > MOST_TALKS:
            _at_hand.popitem(last=False)
        return talk


def forget_all() -> None:
    """Forget every state and whatever waits to be looked at, as a restart does."""
    with _at_hand_lock:
        _at_hand.clear()
    forget_rows()
    let_all_go()
    mark_change()


def mark() -> object:
    """Return a mark of what is on disk now: the same one until an event of any talk is written.

    What is worked out from several talks is kept with the mark that was there before reading.
    """
    return _marks[0]


def mark_change() -> None:
    """Let nothing count that was worked out before."""
    _marks[0] = object()


def milliseconds(moment: datetime) -> int:
    """Return a moment in milliseconds since 1970."""
    return (moment - _BEGINNING) // timedelta(milliseconds=1)


def moment_of(milliseconds: int) -> datetime:
    """Return the moment that is so many milliseconds after the beginning of 1970."""
    return _BEGINNING + timedelta(milliseconds=milliseconds)


def record_of(row: EventRow) -> Record:
    """Return the record that a row keeps."""
    body = body_from_json(row.body)
    return Record(row.order, row.client, row.sequence, body, milliseconds(row.received_at))


def append(
    talk_id: int, client: str, sent: Sequence[Sent], at: datetime | None = None
) -> tuple[Saved, ...]:
    """Write the events that are new, in one transaction, and return where each of them stands.

    They are taken as having come now, or `at` another moment where a past talk is made up.

    Raises `SentTwiceError` (and writes nothing) for a sequence used before with another body,
    `Talk.DoesNotExist` for no such talk, and Django's `DatabaseError` when the disk refuses.
    """
    with transaction.atomic():
        top = _locked(talk_id)
        known = _known(talk_id, client, [each.sequence for each in sent], top)
        now = at or timezone.now()
        new: list[Record] = []
        saved = []
        for each in sent:
            body = body_json(each.body)
            order, before = known.setdefault(each.sequence, (top + 1, body))
            if before != body:
                raise SentTwiceError(each.sequence)
            if order == top + 1:
                top = order
                new.append(Record(order, client, each.sequence, each.body, milliseconds(now)))
            saved.append(Saved(each.sequence, order))
        EventRow.objects.bulk_create([_row(talk_id, record, now) for record in new])
        transaction.on_commit(lambda: _heard(talk_id, new))
    return tuple(saved)


def write_past(talk_id: int, client: str, happened: Sequence[tuple[datetime, Body]]) -> None:
    """Write what happened in a talk that nobody has at hand yet, each event at its own moment."""
    rows = []
    for order, (moment, body) in enumerate(happened, FIRST):
        record = Record(order, client, order, body, milliseconds(moment))
        rows.append(_row(talk_id, record, moment))
    EventRow.objects.bulk_create(rows)
    mark_change()


def _locked(talk_id: int) -> int:
    """Keep other writers from a talk until the transaction ends; return its last order, or 0.

    A transaction of SQLite has the lock from its start, and an event has its talk. Raises
    `Talk.DoesNotExist` for no such talk.
    """
    if connection.features.has_select_for_update or not (last := _LAST(talk_id)):
        Talk.objects.select_for_update().only("pk").get(pk=talk_id)
        last = _LAST(talk_id)
    return int(last[0][0]) if last else 0


def _known(
    talk_id: int, client: str, wanted: Sequence[int], top: int
) -> dict[int, tuple[int, dict[str, Any]]]:
    """Return the order and the body of those that this client sent before, by sequence.

    `top` is the last order on disk. A talk that is at hand up to there tells what is new.
    """
    talk = _at_hand.get(talk_id)
    if talk is not None and talk.order == top and min(wanted) > talk.saved_by.get(client, -1):
        return {}
    rows = EventRow.objects.filter(talk_id=talk_id, client=client, sequence__in=wanted)
    # Read and written anew: a part that a later version added is no difference.
    return {row.sequence: (row.order, body_json(record_of(row).body)) for row in rows.order_by()}


def _heard(talk_id: int, records: Sequence[Record]) -> None:
    """Put what was just written on the state at hand, if the talk is at hand."""
    mark_change()
    talk = _at_hand.get(talk_id)
    if talk is not None:
        talk.hear(records)


def write_records(talk_id: int, records: Sequence[Record]) -> None:
    """Write the records of a whole talk that was held elsewhere, each event at its own moment.

    For a talk that has no events yet, in a transaction of the caller's.
    """
    EventRow.objects.bulk_create(
        [_row(talk_id, record, moment_of(record.at)) for record in records]
    )
    transaction.on_commit(mark_change)


def _row(talk_id: int, record: Record, now: datetime) -> EventRow:
    return EventRow(
        talk_id=talk_id,
        order=record.order,
        client=record.client,
        sequence=record.sequence,
        kind=kind_of(record.body),
        body=body_json(record.body),
        received_at=now,
    )
