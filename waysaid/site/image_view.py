"""Quick images on the teacher's side: small pictures, how they were seen, how a look stands."""

from functools import lru_cache
from typing import Any

from waysaid.drawing import Scene, Telling, draw_image, scene_json, seen_in
from waysaid.number import Image, ImageKind, Language, Unreadable, layout_of, parse
from waysaid.talk import State
from waysaid.ways import groups_fitting

CHIP = (360, 220)
"""The room of a picture beside a chip's equations, in the drawing's own units."""
DESK = (480, 220)
"""The room of the picture that the teacher always sees."""
CHOICE = (220, 150)
"""The room of a picture that is there to choose how the child saw it."""

Seen = tuple[tuple[int, ...], ...]


def small_dots(telling: Telling, language: str) -> dict[str, Any] | None:
    """Return a picture with the groups that a telling saw outlined; None for any other telling."""
    image, seen = telling.problem, seen_in(telling)
    if not isinstance(image, Image) or seen is None:
        return None
    return scene_json(draw_image(image, *CHIP, Language(language), seen))


@lru_cache(maxsize=512)
def seen_view(telling: Telling, language: str) -> dict[str, Any]:
    """Return the groups a telling saw, and all that fit what was said where there are several.

    A grouping is named after its lines, `rows` or `columns`, where it has such. Never changed.
    """
    image, seen = telling.problem, seen_in(telling)
    if not isinstance(image, Image) or seen is None:
        return {"seen": [], "groupings": []}
    fitting = groups_fitting(image, telling.steps)
    if not any(_same(seen, each) for each in fitting):
        fitting = (seen, *fitting)
    offered = fitting if len(fitting) > 1 else ()
    return {
        "seen": _listed(seen),
        "groupings": [
            {
                "seen": _listed(each),
                "chosen": _same(seen, each),
                "by": _lines_of(image, each),
                "scene": scene_json(draw_image(image, *CHOICE, Language(language), each)),
            }
            for each in offered
        ],
    }


def _same(one: Seen, other: Seen) -> bool:
    return {frozenset(group) for group in one} == {frozenset(group) for group in other}


def _listed(seen: Seen) -> list[list[int]]:
    return [list(group) for group in seen]


def _lines_of(image: Image, seen: Seen) -> str:
    """Return `rows` or `columns` where the groups of an array are whole ones, else nothing."""
    if image.kind is not ImageKind.ARRAY:
        return ""
    places = layout_of(image).places
    for name, axis in (("rows", 1), ("columns", 0)):
        lines = [{places[dot][axis] for dot in group} for group in seen]
        if sum(map(len, lines)) == len(set().union(*lines)):
            return name
    return ""


def image_of(problem_text: str) -> Image | None:
    """Return the quick image that a problem's text is, or None."""
    try:
        problem = parse(problem_text)
    except Unreadable:
        return None
    return problem if isinstance(problem, Image) else None


def image_scene(problem_text: str, language: Language) -> Scene | None:
    """Return a quick image as a small drawing; None for any other problem."""
    image = image_of(problem_text)
    return None if image is None else draw_image(image, *DESK, language)


@lru_cache(maxsize=256)
def small_image(problem_text: str, language: str) -> dict[str, Any] | None:
    """Return a quick image as a small drawing; None for any other problem. Never changed."""
    scene = image_scene(problem_text, Language(language))
    return None if scene is None else scene_json(scene)


def image_view(state: State, language: str, now: int) -> dict[str, Any] | None:
    """Return what the desk shows of the quick image of the moment; None where there is none.

    `now` is the server's clock in milliseconds since 1970, as the events' own times are.
    """
    planned = state.problem(state.now)
    scene = small_image(planned.text, language) if planned is not None else None
    if planned is None or scene is None:
        return None
    return {
        "problem": planned.id,
        "scene": scene,
        "seconds": state.image_seconds,
        "left": state.look_left(now),
        "kept": planned.id in state.kept,
        "once_more": planned.id not in state.looked_again,
    }
