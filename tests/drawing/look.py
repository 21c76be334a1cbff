"""Look at a scene as an eye would: where its labels and its ink are."""

import math
import re
from itertools import combinations, pairwise

from waysaid.drawing import Anchor, Box, Dot, Label, Line, Path, Scene, text_width

Point = tuple[float, float]
Area = tuple[float, float, float, float]


def area(label: Label) -> Area:
    """The room of a label's ink: left, top, right, bottom; a digit is 0.725 em high."""
    wide = text_width(label.text, label.size)
    left = label.x - {Anchor.START: 0, Anchor.MIDDLE: wide / 2, Anchor.END: wide}[label.anchor]
    return left, label.y - 0.725 * label.size, left + wide, label.y


def labels(scene: Scene) -> list[Label]:
    return [shape for shape in scene.shapes if isinstance(shape, Label)]


def overlapping(scene: Scene) -> list[tuple[str, str]]:
    """Pairs of labels whose ink shares room."""
    return [
        (one.text, other.text)
        for one, other in combinations(labels(scene), 2)
        if meets(area(one), area(other))
    ]


def meets(one: Area, other: Area) -> bool:
    apart = one[2] <= other[0] or other[2] <= one[0] or one[3] <= other[1] or other[3] <= one[1]
    return not apart


def crossed(scene: Scene) -> list[str]:
    """Labels that a line, an arc, a dot or an outline runs through."""
    rooms = [(label.text, area(label)) for label in labels(scene)]
    inked = _inked(scene)
    return [text for text, room in rooms if any(_inks(ink, room) for ink in inked)]


def _inked(scene: Scene) -> list[tuple[Area, list[tuple[Point, float]]]]:
    """The ink of every shape that is no label, with the room it takes."""
    found = []
    for shape in scene.shapes:
        if ink := points(shape):
            xs, ys = [x for (x, _), _ in ink], [y for (_, y), _ in ink]
            half = ink[0][1]
            room = (min(xs) - half, min(ys) - half, max(xs) + half, max(ys) + half)
            found.append((room, ink))
    return found


def _inks(ink: tuple[Area, list[tuple[Point, float]]], room: Area) -> bool:
    """Whether some of the ink is more than a unit inside the room."""
    left, top, right, bottom = room
    return meets(ink[0], room) and any(
        left + 1 - half < x < right - 1 + half and top + 1 - half < y < bottom - 1 + half
        for (x, y), half in ink[1]
    )


def outside(scene: Scene) -> list[str]:
    """What reaches past the edge of the scene."""
    found = []
    for shape in scene.shapes:
        if isinstance(shape, Label):
            left, top, right, bottom = area(shape)
            corners = [((left, top), 0.0), ((right, bottom), 0.0)]
        else:
            corners = points(shape)
        for (x, y), half in corners:
            if x - half < -1 or y - half < -1 or x + half > scene.width + 1:
                found.append(str(shape))
                break
            if y + half > scene.height + 1:
                found.append(str(shape))
                break
    return found


def points(shape: object) -> list[tuple[Point, float]]:
    """Points along the ink of a shape, each with half the ink's width there."""
    match shape:
        case Line(x1, y1, x2, y2, stroke):
            return [(point, stroke / 2) for point in _along((x1, y1), (x2, y2))]
        case Dot(x, y, r):
            return [((x, y), r)]
        case Box(x, y, width, height, _, _, stroke):
            corners = [(x, y), (x + width, y), (x + width, y + height), (x, y + height)]
            sides = zip(corners, [*corners[1:], corners[0]], strict=True)
            return [(point, stroke / 2) for one, other in sides for point in _along(one, other)]
        case Path(d, stroke):
            return [(point, stroke / 2) for point in _path(d)]
    return []


def _along(one: Point, other: Point) -> list[Point]:
    count = max(2, int(math.dist(one, other) // 4))
    return [
        (one[0] + (other[0] - one[0]) * at / count, one[1] + (other[1] - one[1]) * at / count)
        for at in range(count + 1)
    ]


def _path(d: str) -> list[Point]:
    """Points along path data made of M, L, H, V, Q, C and A (half an oval on a level line)."""
    here: Point = (0, 0)
    made: list[Point] = []
    for letter, rest in re.findall(r"([MLHVQCA])([^MLHVQCA]*)", d):
        numbers = [int(number) for number in rest.split()]
        match letter:
            case "M":
                here = (numbers[0], numbers[1])
                continue
            case "L":
                there = (numbers[0], numbers[1])
                made += _along(here, there)
            case "H":
                there = (numbers[0], here[1])
                made += _along(here, there)
            case "V":
                there = (here[0], numbers[0])
                made += _along(here, there)
            case "A":
                there = (numbers[5], numbers[6])
                made += _oval(here, there, numbers[1], bool(numbers[4]))
            case _:
                ends = [(x, y) for x, y in zip(numbers[::2], numbers[1::2], strict=True)]
                there = ends[-1]
                made += _bezier([here, *ends])
        here = there
    return made


def _oval(one: Point, other: Point, high: int, up: bool) -> list[Point]:
    middle, half = (one[0] + other[0]) / 2, abs(other[0] - one[0]) / 2
    turn = -1 if up else 1
    angles = [math.pi * at / 60 for at in range(61)]
    return [(middle - half * math.cos(a), one[1] + turn * high * math.sin(a)) for a in angles]


def _bezier(ends: list[Point]) -> list[Point]:
    made = []
    for at in range(31):
        level = ends
        while len(level) > 1:
            level = [
                (a[0] + (b[0] - a[0]) * at / 30, a[1] + (b[1] - a[1]) * at / 30)
                for a, b in pairwise(level)
            ]
        made.append(level[0])
    return made


def blind(scene: Scene) -> Scene:
    """The scene with every numeral in its labels, title and description as a hash."""
    shapes = tuple(
        Label(s.x, s.y, s.size, s.anchor, re.sub(r"\d", "#", s.text)) if isinstance(s, Label) else s
        for s in scene.shapes
    )
    return Scene(scene.width, scene.height, "", "", shapes)
