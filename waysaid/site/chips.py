"""The ways foreseen for a problem, as the desk offers them to be tapped.

First one way of each family, then the variants; families that this class (and this child) use come
earlier. The weights are our choice: with no history the order is by effort alone, and a family
said three times counts as much as being the easiest.
"""

from collections.abc import Mapping, Sequence
from fractions import Fraction
from functools import lru_cache
from typing import Any

from waysaid.drawing import Frame, Picture, Telling, draw, lines, scene_json, suits
from waysaid.number import (
    Image,
    Language,
    Problem,
    Rest,
    Unreadable,
    parse,
    parse_said,
    remainder_of,
)
from waysaid.site.history import History
from waysaid.site.image_view import seen_view, small_dots
from waysaid.site.wording import Wording
from waysaid.strings import leaves_of
from waysaid.ways import Family, Step, Way, effort_of, way_says, ways

MOST = 12
"""Chips for one problem: what a desk shows without scrolling, and as much again."""
EASIEST = 3.0
OWN = 3.0
"""What a family said by this child counts beside the same said by a classmate."""
PLAINEST = 3
"""Steps that a teacher takes in at a glance."""
FROM_ELSEWHERE = 3
"""Tenths of effort that it counts to begin with another number than the problem does."""
AT_ONCE = (Family.ADD_UP, Family.JUMP)
"""Families whose ways go in more than one hop where they are told at all."""
THUMBNAIL = Frame(540, 300, 60)
"""A small picture beside a chip's equations, in the drawing's own units."""


@lru_cache(maxsize=256)
def foreseen(problem_text: str, rest: Rest = Rest.LEFT_OVER) -> tuple[Way, ...]:
    """Return the ways for a problem, one of each family first; none for one unknown to us.

    Where a division leaves something, only the ways that say so as the class asks.
    """
    try:
        problem = parse(problem_text)
        found = ways(problem)
    except Unreadable:
        return ()
    if remainder_of(problem) is not None:
        left_over = rest is Rest.LEFT_OVER
        found = tuple(way for way in found if (way.remainder is not None) == left_over) or found
    first: dict[str, Way] = {}
    for way in sorted(found, key=lambda each: _plainness(each, problem)):
        first.setdefault(way.family.value, way)
    leading = [way for way in found if first[way.family.value] is way]
    leaders = tuple(sorted(leading, key=_idle))
    return leaders + tuple(way for way in found if way not in leaders)


def _plainness(way: Way, problem: Problem) -> tuple[bool, bool, int, int]:
    """Rank a family's ways by how plainly they are told: few steps, from the first number on.

    Our choice; a difference found in one hop, and a number put on in one go, are left to those who
    just know it.
    """
    steps = len(way.steps)
    long = steps > PLAINEST or (steps == 1 and way.family in AT_ONCE)
    begins = leaves_of(way.steps[0].equation)[0]
    numbers = leaves_of(problem)
    elsewhere = FROM_ELSEWHERE if numbers and begins != numbers[0] else 0
    return (_idle(way), long, steps, effort_of(way).tenths + elsewhere)


def _idle(way: Way) -> bool:
    """Tell whether a step takes nothing on or off, as in 0 + 5: nobody would say it."""
    return any(0 in leaves_of(step.equation.left) for step in way.steps)


def chips_for(problem_text: str, history: History, wording: Wording) -> list[dict[str, Any]]:
    """Return the chips of a problem in the order this class is likely to say them."""
    known = foreseen(problem_text, wording.rest)
    order = ordered(known, history.families, {})
    return [_chip(problem_text, known[index], wording) for index in order[:MOST]]


def orders_by_child(
    problem_text: str, history: History, rest: Rest = Rest.LEFT_OVER
) -> dict[str, list[int]]:
    """Return, for each child whose own ways change it, the order of the chips for that child.

    The numbers are places in the list that `chips_for` gives.
    """
    known = foreseen(problem_text, rest)
    order = ordered(known, history.families, {})[:MOST]
    shown = _told([known[index] for index in order])
    usual = list(range(len(shown)))
    orders = {
        child: _ranked(shown, history.families, own) for child, own in history.by_child.items()
    }
    return {child: own for child, own in orders.items() if own != usual}


def ordered(
    known: Sequence[Way], by_class: Mapping[str, int], by_child: Mapping[str, int]
) -> list[int]:
    """Return the places of the ways, likeliest first; ways of one family keep their order."""
    return _ranked(_told(known), by_class, by_child)


def _told(ways: Sequence[Way]) -> list[tuple[str, bool]]:
    """Return the family of each way, and whether it is idle: found once for every child's order."""
    return [(way.family.value, _idle(way)) for way in ways]


def _ranked(
    told: Sequence[tuple[str, bool]], by_class: Mapping[str, int], by_child: Mapping[str, int]
) -> list[int]:
    seen: dict[str, int] = {}
    ranked = []
    for place, (family, idle) in enumerate(told):
        nth = seen[family] = seen.get(family, -1 + idle) + 1
        liked = by_class.get(family, 0) + OWN * by_child.get(family, 0)
        ranked.append((nth, -(liked + EASIEST / (1 + place)), place))
    return [place for _, _, place in sorted(ranked)]


def steps_json(steps: Sequence[Step]) -> list[dict[str, Any]]:
    """Return whole steps as an event carries them."""
    return [{"kind": each.kind.value, "equation": each.text, "unsaid": []} for each in steps]


def pictures_of(telling: Telling) -> dict[str, Any]:
    """Return how a telling is drawn when nobody asks for a picture, and the ones that suit it."""
    if not telling.steps:
        return {"picture": Picture.WORDS.value, "pictures": [Picture.WORDS.value]}
    suiting = [picture.value for picture in Picture if suits(picture, telling)]
    return {"picture": picture_of(telling).value, "pictures": suiting}


def picture_of(telling: Telling) -> Picture:
    """Return how a telling is drawn when nobody asks for a picture."""
    if not telling.steps:
        return Picture.WORDS
    fitting = (each for each in (Picture.DOTS, Picture.NUMBER_LINE) if suits(each, telling))
    return next(fitting, Picture.EQUATIONS)


def thumbnail(telling: Telling, language: str) -> dict[str, Any] | None:
    """Return a small number line of a telling, or its dots; None where neither suits it."""
    if isinstance(telling.problem, Image):
        return small_dots(telling, language)
    if not telling.steps or not suits(Picture.NUMBER_LINE, telling):
        return None
    return scene_json(draw(Picture.NUMBER_LINE, telling, THUMBNAIL, Language(language)))


def _chip(problem_text: str, way: Way, wording: Wording) -> dict[str, Any]:
    """Return one chip; what is costly about it is worked out once."""
    name = wording.name(way.family)
    return {**_drawn(problem_text, way, wording.language.value, wording.rest), "name": name}


@lru_cache(maxsize=2048)
def _drawn(problem_text: str, way: Way, language: str, rest: Rest) -> dict[str, Any]:
    problem = parse(problem_text)
    telling = Telling(problem, way.steps, (), way.number, way.seen)
    answer = way_says(way, problem, rest)
    return {
        "family": way.family.value,
        "lines": list(lines(telling, Language(language))),
        "steps": steps_json(way.steps),
        "answer": answer,
        "ends": None if isinstance(parse_said(answer), int | Fraction) else answer,
        "scene": thumbnail(telling, language),
        **pictures_of(telling),
        **seen_view(telling, language),
    }
