"""What the class's screen may show: the one place where a talk becomes a board.

Every field is listed here by name; nothing else reaches a board. Families, slips, foreseen ways,
true or false, who has not been heard and every other private thing stay behind. The order is the
order heard, and every way is laid out by the same rules, whatever its numbers.
"""

from collections.abc import Mapping
from dataclasses import dataclass, field
from functools import lru_cache
from typing import Any

from waysaid.drawing import (
    Frame,
    Picture,
    Telling,
    draw,
    draw_image,
    lines,
    nearest,
    scene_json,
)
from waysaid.number import (
    Exact,
    Image,
    Language,
    NoValue,
    Order,
    Remainder,
    Unreadable,
    Verdict,
    parse_expression,
    parse_said,
    say,
    value_of,
)
from waysaid.talk.connect import connect_view
from waysaid.talk.event import Ground, Phase, PlannedProblem, Relation, SaidStep
from waysaid.talk.sheet import Sheet, read, shown
from waysaid.talk.state import Drawn, State, WayTold
from waysaid.ways import Step

CONTENTS = 512
"""Drawings that are kept, numbers alone (our choice: a few talks, on a few shapes of screen)."""


@dataclass(frozen=True, slots=True)
class Signal:
    """A quiet hand signal of the class: its word, and our icon's name or its own picture."""

    word: str
    icon: str | None = None
    picture: str | None = None


@dataclass(frozen=True, slots=True)
class Wall:
    """What hangs around the talk: the class's signals, norms, sentence starters, background."""

    signals: tuple[Signal, ...] = ()
    norms: tuple[str, ...] = ()
    starters: tuple[str, ...] = ()
    background: str | None = None
    names: Mapping[str, str] = field(default_factory=dict)


def board_view(state: State, wall: Wall, wide: int, now: int | None = None) -> dict[str, Any]:
    """Return everything a board of this width may show, as JSON values.

    `wide` is the screen's width in tenths of a percent of its height (16:9 is 1778). `now`, in
    milliseconds since 1970, tells whether a quick image is still in sight: without it, none is.
    """
    sheet = Sheet.of(wide)
    names = {} if state.names_hidden else wall.names
    return {
        "order": state.order,
        "phase": state.phase.value,
        "title": state.title,
        "language": state.board_language,
        "paused": state.paused,
        "turn_and_talk": state.turn_and_talk,
        "signals": [
            {"word": each.word, "icon": each.icon, "picture": each.picture} for each in wall.signals
        ],
        "norms": list(wall.norms),
        "starters": list(wall.starters),
        "background": wall.background,
        "layout": {"side": sheet.side, "tile": sheet.tile.width, "height": sheet.tile.height},
        "problem": _problem(state, state.problem(state.now)),
        "image": _image(state, sheet, now),
        "earlier": _earlier(state),
        "answers": _answers(state, names),
        "tiles": [_tile(state, way, names, sheet) for way in state.ways_of(state.now)],
        "strokes": [
            {"id": each.id, "way": each.way, "strokes": [list(line) for line in each.strokes]}
            for each in _drawn(state)
        ],
        "connect": connect_view(state, names, sheet) if state.phase is Phase.CONNECT else None,
    }


def said_parts(steps: tuple[SaidStep, ...]) -> tuple[frozenset[str], ...]:
    """Return, for each step, the names of the parts that nobody said."""
    return tuple(frozenset(part.value for part in step.unsaid) for step in steps)


def telling_of(state: State, way: WayTold) -> Telling | None:
    """Return what a drawing needs of a way; None where its problem cannot be read."""
    problem = read(state.problem(way.problem))
    if problem is None:
        return None
    steps = tuple(Step(each.kind, each.equation) for each in way.steps)
    return Telling(problem, steps, said_parts(way.steps), _number(way.answer), way.seen)


def _number(answer: str | None) -> Exact | None:
    """Return an answer as a number; None where it is none, as in "about 60"."""
    try:
        return None if answer is None else value_of(parse_expression(answer))
    except (Unreadable, NoValue):
        return None


def _drawn(state: State) -> list[Drawn]:
    """Return what was drawn by hand on what the board shows now."""
    if state.phase is Phase.CONNECT:
        return [each for each in state.drawn if each.on is Ground.STRING]
    ground = Ground.SHEET if state.phase is Phase.WAYS else Ground.PROBLEM
    return [each for each in state.drawn if each.on is ground and each.problem == state.now]


def _problem(state: State, planned: PlannedProblem | None) -> dict[str, Any] | None:
    said = None if planned is None else _said(planned, Language(state.board_language))
    return None if planned is None or said is None else {"id": planned.id, **said}


def _image(state: State, sheet: Sheet, now: int | None) -> dict[str, Any] | None:
    """Return the quick image of the moment, its dots only while the class may see them.

    `left` is for how many more milliseconds; 0 where it is hidden, None where it is there to stay.
    """
    image = read(state.problem(state.now))
    if not isinstance(image, Image):
        return None
    kept = state.now in state.kept
    left = 0 if now is None else state.look_left(now)
    if not kept and not left:
        return {"scene": None, "left": 0}
    room = sheet.picture if state.phase is Phase.THINK else sheet.small_picture
    scene = _dots(image, room, Language(state.board_language))
    return {"scene": scene, "left": None if kept else left}


@lru_cache(maxsize=CONTENTS)
def _dots(image: Image, room: tuple[int, int], language: Language) -> dict[str, Any]:
    return dict(scene_json(draw_image(image, *room, language)))


@lru_cache(maxsize=CONTENTS)
def _said(planned: PlannedProblem, language: Language) -> dict[str, str] | None:
    problem = read(planned)
    if problem is None:
        return None
    return {"text": shown(problem, language), "spoken": say(problem, language)}


def _earlier(state: State) -> list[dict[str, Any]]:
    """Return the problems shown so far in order, with the answers heard and no others."""
    rows = []
    for planned in state.problems:
        row = _problem(state, planned) if planned.id in state.shown else None
        if row is not None:
            now = planned.id == state.now
            answers = [] if now else list(state.given(planned.id))
            rows.append({**row, "answers": answers, "now": now})
    return rows


def _answers(state: State, names: Mapping[str, str]) -> list[dict[str, Any]]:
    """Return the answers to the problem of the moment, alike, in the order heard."""
    given: dict[str, list[str]] = {}
    for answer in state.answers_of(state.now):
        who = given.setdefault(answer.text, [])
        name = names.get(answer.child or "", "")
        if state.answers_named and name:
            who.append(name)
    return [{"text": answer, "names": who} for answer, who in given.items()]


def _tile(state: State, way: WayTold, names: Mapping[str, str], sheet: Sheet) -> dict[str, Any]:
    earlier = state.way(way.to) if way.relation is not Relation.OWN else None
    changed = any(each.relation is Relation.CHANGES and each.to == way.id for each in state.ways)
    return {
        "id": way.id,
        "name": names.get(way.child or "", ""),
        "also": [names[child] for child in way.agreed if child and child in names],
        "relation": way.relation.value,
        "to_name": names.get(earlier.child or "", "") if earlier else "",
        "folded": changed,
        **_content(state, way, sheet.tile),
    }


def _content(state: State, way: WayTold, room: Frame) -> dict[str, Any]:
    """Return what a tile holds: equations as lines, a drawing, or only the words."""
    telling = telling_of(state, way)
    if telling is None or not way.steps or way.picture is Picture.WORDS:
        said = way.words or (way.answer or "")
        return {"picture": "words", "words": said, "lines": [], "scene": None}
    shown = _pictured(way.picture, telling, room, Language(state.board_language))
    ends = ends_on(way.answer) if shown["lines"] else []
    return {"words": None, **shown, "lines": [*shown["lines"], *ends]}


def ends_on(answer: str | None) -> list[str]:
    """Return the answer a child gave that no step can hold, as `5 r 1` or `>`, as a line of it."""
    said = parse_said(answer) if answer else None
    return [f"→ {answer}"] if isinstance(said, Remainder | Order | Verdict) else []


@lru_cache(maxsize=CONTENTS)
def _pictured(wanted: Picture, telling: Telling, room: Frame, language: Language) -> dict[str, Any]:
    """Return a way's equations or its drawing; kept for the next state, so never changed."""
    picture = nearest(wanted, telling)
    if picture in (Picture.EQUATIONS, Picture.WORDS):
        return {"picture": "equations", "lines": list(lines(telling, language)), "scene": None}
    scene = scene_json(draw(picture, telling, room, language))
    return {"picture": picture.value, "lines": [], "scene": scene}
