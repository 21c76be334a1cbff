"""A past talk as it stood, at its end or after any of its steps."""

from collections.abc import Iterator, Mapping, Sequence
from dataclasses import dataclass, fields
from typing import Any

from django.utils.translation import gettext as _

from waysaid.drawing import Anchor, Box, Dot, Label, Line, Path, Scene, Shape
from waysaid.site.talk_rows import printed
from waysaid.site.words import DESK
from waysaid.talk import Body, Record, State, fold, kind_of

WIDE = 1778
"""The width of the board that is shown: 16:9, in tenths of a percent of its height."""
EDGE = 10
"""Room round what was drawn by hand, for the width of the pen."""
_SHAPES: Mapping[str, type] = {
    each.__name__.lower(): each for each in (Box, Dot, Label, Line, Path)
}


@dataclass(frozen=True, slots=True)
class StepShown:
    """One step of a talk: where it stands, when it was taken (ms), and what it was."""

    place: int
    at: int
    says: str


def state_after(records: Sequence[Record], steps: int) -> State:
    """Return the talk as it stood after so many of its records."""
    return fold(records[:steps])


def moment_after(records: Sequence[Record], steps: int) -> int | None:
    """Return when the last of so many records came, in milliseconds since 1970; None for none."""
    return records[steps - 1].at if 0 < steps <= len(records) else None


def scene_of(drawn: Mapping[str, Any]) -> Scene:
    """Return the scene that a board payload holds."""
    shapes = tuple(_shape(each) for each in drawn["shapes"])
    return Scene(drawn["width"], drawn["height"], drawn["title"], drawn["desc"], shapes)


def _shape(drawn: Mapping[str, Any]) -> Shape:
    kind = _SHAPES[str(drawn["t"])]
    given = {field.name: drawn[field.name] for field in fields(kind)}
    if "anchor" in given:
        given["anchor"] = Anchor(given["anchor"])
    shape: Shape = kind(**given)
    return shape


def with_scenes(board: dict[str, Any]) -> dict[str, Any]:
    """Return a board's payload with its drawings as scenes, for a page to show."""
    tiles = [{**tile, "scene": _maybe(tile["scene"])} for tile in board["tiles"]]
    connect, image = board["connect"], board["image"]
    if connect:
        connect = {**connect, "scene": _maybe(connect.get("scene"))}
    if image:
        image = {**image, "scene": _maybe(image["scene"])}
    drawn = {"tiles": tiles, "connect": connect, "image": image}
    return {**board, **drawn, "by_hand": _by_hand(board["strokes"])}


def _by_hand(strokes: Sequence[Mapping[str, Any]]) -> dict[str, Any] | None:
    """Return what was drawn by hand as paths and the box round them; None for nothing.

    What was drawn on different ways stands one under another.
    """
    on_one: dict[str, list[Sequence[int]]] = {}
    for each in strokes:
        drawn = [stroke for stroke in each["strokes"] if len(stroke) > 1]
        on_one.setdefault(each["way"] or "", []).extend(drawn)
    paths: list[Sequence[int]] = []
    for group in on_one.values():
        top = min((y for path in group for y in path[1::2]), default=0)
        low = max((y for path in paths for y in path[1::2]), default=top - EDGE) + EDGE
        paths += [[*_lower(path, low - top)] for path in group]
    if not paths:
        return None
    across = [x for path in paths for x in path[0::2]]
    down = [y for path in paths for y in path[1::2]]
    left, top = min(across) - EDGE, min(down) - EDGE
    box = f"{left} {top} {max(across) - left + EDGE} {max(down) - top + EDGE}"
    return {"box": box, "paths": [_path(path) for path in paths]}


def _lower(path: Sequence[int], by: int) -> Iterator[int]:
    for place, number in enumerate(path):
        yield number + by if place % 2 else number


def _path(stroke: Sequence[int]) -> str:
    points = [f"{x} {y}" for x, y in zip(stroke[0::2], stroke[1::2], strict=False)]
    return "M" + "L".join(points if len(points) > 1 else points * 2)


def _maybe(drawn: Mapping[str, Any] | None) -> Scene | None:
    return scene_of(drawn) if drawn else None


def steps_shown(records: Sequence[Record], names: Mapping[str, str]) -> list[StepShown]:
    """Return each record of a talk in a few words, in the order of the record."""
    state = fold(records)
    return [
        StepShown(place, record.at, _says(record.body, state, names))
        for place, record in enumerate(records, 1)
    ]


def _says(body: Body, state: State, names: Mapping[str, str]) -> str:
    """Return an event in a few words: who, what, on which problem."""
    given = {
        "name": names.get(getattr(body, "child", None) or "", _("someone")),
        "problem": _problem(body, state),
        "text": getattr(body, "text", None) or getattr(body, "answer", None) or "",
        "words": getattr(body, "words", ""),
        "phase": str(DESK["phases"].get(getattr(body, "phase", ""), "")),
    }
    kind = kind_of(body)
    on = getattr(body, "on", None)
    return (said_of(f"{kind}-off" if on is False else kind) or kind) % given


def _problem(body: Body, state: State) -> str:
    way = state.way(getattr(body, "way", None))
    problem = state.problem(getattr(body, "problem", None) or (way.problem if way else None))
    return printed(problem.text) if problem is not None else ""


def said_of(kind: str) -> str:
    """Return the sentence of a kind of event, with places for who and what."""
    return {
        "talk-opened": _("The talk was opened"),
        "problem-added": _("A problem was added: %(problem)s"),
        "problem-shown": _("On the board: %(problem)s"),
        "looked-again": _("One more look at %(problem)s"),
        "image-kept": _("The picture stays on the board"),
        "image-kept-off": _("The picture was hidden"),
        "phase-set": _("The board turned to: %(phase)s"),
        "answer-heard": _("%(name)s answered %(text)s to %(problem)s"),
        "answer-settled": _("The class settled on %(text)s for %(problem)s"),
        "answers-named": _("Answers with names"),
        "answers-named-off": _("Answers without names"),
        "way-shared": _("%(name)s told a way of %(problem)s"),
        "way-edited": _("A way of %(problem)s was written anew"),
        "way-agreed": _("%(name)s thought the same on %(problem)s"),
        "way-drawn-as": _("A way of %(problem)s was drawn another way"),
        "way-seen-as": _("The groups seen in a way of %(problem)s were chosen anew"),
        "passed": _("%(name)s passed on %(problem)s"),
        "strokes-drawn": _("Drawn by hand on the board"),
        "erased": _("Something was taken off the board"),
        "turn-and-talk": _("Turn and talk"),
        "turn-and-talk-off": _("Back together after talking in pairs"),
        "names-hidden": _("Tags without names"),
        "names-hidden-off": _("Tags with names"),
        "paused": _("The talk was paused"),
        "resumed": _("The talk went on"),
        "closed": _("The talk was ended"),
        "noticed": _("%(name)s noticed something: %(words)s"),
        "link-drawn": _("%(name)s said what connects problems"),
        "what-if": _("%(name)s asked: what if?"),
        "what-if-answer": _("An answer to the what-if: %(text)s"),
        "undo": _("The step before was taken back"),
    }.get(kind, "")
