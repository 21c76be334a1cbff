"""Quick images on the teacher's side: small pictures, and how the class's look at one stands."""

from functools import lru_cache
from typing import Any

from waysaid.drawing import Scene, Telling, draw_image, scene_json
from waysaid.number import Image, Language, Unreadable, parse
from waysaid.talk import State
from waysaid.ways import groups_seen

CHIP = (360, 220)
"""The room of a picture beside a chip's equations, in the drawing's own units."""
DESK = (480, 220)
"""The room of the picture that the teacher always sees."""


def small_dots(telling: Telling, language: str) -> dict[str, Any] | None:
    """Return a picture with the groups that a telling saw outlined; None for any other telling."""
    image = telling.problem
    if not isinstance(image, Image):
        return None
    seen = groups_seen(image, telling.steps)
    return None if seen is None else scene_json(draw_image(image, *CHIP, Language(language), seen))


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
