"""From what a client posts to events that may be written down."""

import re
from collections.abc import Collection, Mapping, Sequence
from dataclasses import dataclass
from typing import Any

from django.utils.translation import get_language
from django.utils.translation import gettext as _

from waysaid.drawing import Picture
from waysaid.number import Language, Unreadable, parse
from waysaid.site.around import Around
from waysaid.site.ears import ears_for
from waysaid.site.models import Talk
from waysaid.site.reading import usual_picture, way_from_line
from waysaid.site.record import FIRST, SERVER, Sent, at_hand
from waysaid.site.refusal import RefusalError
from waysaid.talk import BadEventError, State, body_from_json, kind_of

MOST_EVENTS = 200
"""Events in one delivery: a desk that was alone for a whole talk."""
LARGEST_SEQUENCE = 2**31 - 1
CLIENT = re.compile(r"[A-Za-z0-9_-]{1,64}")
SERVER_ONLY = frozenset({"talk-opened"})
DRAWER = frozenset(
    {
        "answer-heard",
        "answers-named",
        "answer-settled",
        "erased",
        "image-kept",
        "looked-again",
        "names-hidden",
        "noticed",
        "passed",
        "paused",
        "phase-set",
        "problem-added",
        "problem-shown",
        "resumed",
        "strokes-drawn",
        "turn-and-talk",
        "undo",
        "way-agreed",
        "way-drawn-as",
        "way-shared",
        "what-if",
        "what-if-answer",
    }
)
"""What the drawer of the one screen may record: all that a class may watch being written."""
TELLING = frozenset({"way-shared", "way-edited"})
HAND = frozenset({"strokes-drawn", "erased"})
"""What a board may record: what is drawn on it by hand, and rubbed out again."""


def delivery(
    given: Mapping[str, Any], here: Around, kinds: Collection[str]
) -> tuple[str, list[Sent]]:
    """Return the client and its events. Raises `RefusalError` with one sentence for anything else.

    `kinds` are those that may be sent here; empty stands for a desk, which may send every one
    that is not the server's own.
    """
    client, events = given.get("client"), given.get("events")
    if not isinstance(client, str) or not CLIENT.fullmatch(client) or client == SERVER:
        raise RefusalError(400, _("‘client’ takes 1 to 64 letters, digits, - and _."))
    if not isinstance(events, list) or not 0 < len(events) <= MOST_EVENTS:
        most = {"most": MOST_EVENTS}
        raise RefusalError(400, _("‘events’ takes a list of 1 to %(most)s events.") % most)
    children = {each.key for each in here.children}
    state = at_hand(here.talk.pk, FIRST).state
    at = _At(here.talk, state, _texts(events, state), kinds)
    sent = [_sent(event, at) for event in events]
    for each in sent:
        child = getattr(each.body, "child", None)
        if child is not None and child not in children:
            raise RefusalError(400, _("No child of this class has the id that was sent."))
    return client, sent


@dataclass(frozen=True, slots=True)
class _At:
    """Where events arrive: the talk as it stands, its texts, and what may be sent here.

    `texts` are those of the problems, by the id of each problem and of each way.
    """

    talk: Talk
    state: State
    texts: Mapping[str, str]
    kinds: Collection[str]


def _sent(event: object, at: _At) -> Sent:
    if not isinstance(event, Mapping):
        raise RefusalError(400, _("An event is a JSON object."))
    sequence = event.get("sequence")
    if type(sequence) is not int or not 0 <= sequence <= LARGEST_SEQUENCE:
        raise RefusalError(400, _("‘sequence’ takes a whole number from 0."))
    _check_problem(event)
    try:
        body = body_from_json(_with_reading(event, at))
    except BadEventError as error:
        raise RefusalError(400, str(error)) from None
    kind = kind_of(body)
    allowed = kind in at.kinds if at.kinds else kind not in SERVER_ONLY
    if not allowed or (at.kinds == HAND and not _by_hand(kind, event, at.state)):
        raise RefusalError(422, _("This screen may not record that."))
    return Sent(sequence, body)


def _check_problem(event: Mapping[str, Any]) -> None:
    """Refuse a problem that cannot be read, with the place marked, in the desk's language."""
    text = event.get("text")
    if event.get("kind") == "problem-added" and isinstance(text, str):
        try:
            parse(text)
        except Unreadable as error:
            language = Language((get_language() or "en")[:2])
            raise RefusalError(400, error.sentence(language)) from None


def _with_reading(event: Mapping[str, Any], at: _At) -> Mapping[str, Any]:
    """Return the event; a way told as a `line` is read here, and drawn as nobody asked otherwise.

    So what was understood never reaches the one screen, and a line that a desk typed while it was
    out of touch is read once it comes through.
    """
    kind = event.get("kind")
    if kind not in TELLING:
        return event
    if at.kinds == DRAWER and any(event.get(part) for part in ("foreseen", "family", "proposed")):
        raise RefusalError(422, _("This screen may not record that."))
    line = event.get("line")
    if not isinstance(line, str):
        return event
    text = at.texts.get(str(event.get("problem" if kind == "way-shared" else "way")))
    if text is None:
        raise RefusalError(400, _("No problem of this talk has the id that was sent."))
    rest = {key: value for key, value in event.items() if key != "line"}
    ears = ears_for(at.talk, at.state, text)
    told = way_from_line(text, line, ears)
    picture = rest.get("picture") or usual_picture(text, line, ears)
    return {**rest, **told, "picture": picture if told["steps"] else Picture.WORDS.value}


def _texts(events: Sequence[object], state: State) -> dict[str, str]:
    """Return the text of each problem, by its id and by its ways'; those of this delivery too."""
    texts = {planned.id: planned.text for planned in state.problems}
    ways = [(way.id, way.problem) for way in state.ways]
    for event in events:
        if isinstance(event, Mapping) and event.get("kind") == "problem-added":
            texts[str(event.get("problem"))] = str(event.get("text"))
        elif isinstance(event, Mapping) and event.get("kind") == "way-shared":
            ways.append((str(event.get("id")), str(event.get("problem"))))
    return {**texts, **{way: texts[problem] for way, problem in ways if problem in texts}}


def _by_hand(kind: str, event: Mapping[str, Any], state: State) -> bool:
    """Tell whether an event is about strokes; a board rubs out nothing else."""
    return kind != "erased" or event.get("id") in {drawn.id for drawn in state.drawn}
