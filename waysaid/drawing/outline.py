"""Outlines round groups of dots: round, the same for the same dots, and never through another dot.

A group is outlined by the hull of its dots where no other dot is in the way, else along the
shortest tree that joins them, else dot by dot. Lengths are in the units of the picture's layout.
"""

import math
from collections.abc import Sequence
from itertools import combinations

from waysaid.number import Place

RADIUS = 15
"""Of a dot: neighbours are `waysaid.number.PITCH` apart."""
RING = 21
"""From the middle of a dot to the outline round it."""
_CLEAR = 2
"""What stays free between an outline and another dot."""
_PIECE = math.pi / 4
"""A round corner is drawn in pieces that turn no further."""

Point = tuple[float, float]
Outline = tuple[Place, ...]
"""Dots to go round, one after another and back to the first; a dot may come twice."""


def outlines(group: Sequence[Place], others: Sequence[Place], ring: int = RING) -> list[Outline]:
    """Return what to go round at a distance of `ring` so that the group alone is inside."""
    hull = _hull(group)
    if all(_apart(other, hull) >= ring + RADIUS + _CLEAR for other in others):
        return [hull]
    edges = _tree(group)
    far = ring + RADIUS + _CLEAR
    if all(_from_edge(other, group[a], group[b]) >= far for other in others for a, b in edges):
        return [tuple(group[at] for at in _round(group, edges))]
    return [(dot,) for dot in group]


def outline_path(outline: Outline, ring: int, scale: float, shift: Point) -> str:
    """Return SVG path data round an outline, scaled and then shifted, in whole numbers."""

    def at(x: float, y: float) -> str:
        return f"{round(x * scale + shift[0])} {round(y * scale + shift[1])}"

    if len(outline) == 1:
        x, y = outline[0]
        arcs = _arc((x, y), ring, -math.pi, 2 * math.pi)
        return f"M{at(x - ring, y)}" + "".join(f"Q{at(*by)} {at(*to)}" for by, to in arcs)
    path = ""
    corners = zip(outline[-1:] + outline[:-1], outline, outline[1:] + outline[:1], strict=True)
    for before, here, after in corners:
        start = _heading(before, here) - math.pi / 2
        turn = (_heading(here, after) - _heading(before, here)) % (2 * math.pi)
        if turn > math.pi + 1e-9:
            inner = start + (turn - 2 * math.pi) / 2
            reach = ring / math.cos((turn - 2 * math.pi) / 2)
            path += f"L{at(*_away(here, inner, reach))}"
            continue
        path += f"L{at(*_away(here, start, ring))}"
        for by, to in _arc(here, ring, start, turn):
            path += f"Q{at(*by)} {at(*to)}"
    first = path[1:].split("Q")[0].split("L")[0]
    return f"M{first}{path[1 + len(first) :]}L{first}"


def _heading(one: Place, other: Place) -> float:
    return math.atan2(other[1] - one[1], other[0] - one[0])


def _away(place: Point, angle: float, far: float) -> Point:
    return place[0] + far * math.cos(angle), place[1] + far * math.sin(angle)


def _arc(middle: Point, ring: int, start: float, turn: float) -> list[tuple[Point, Point]]:
    """Return the control and end points of the pieces of an arc, clockwise."""
    pieces = max(1, math.ceil(turn / _PIECE - 1e-9)) if turn > 1e-9 else 0
    half = turn / pieces / 2 if pieces else 0.0
    return [
        (
            _away(middle, start + (2 * at + 1) * half, ring / math.cos(half)),
            _away(middle, start + (2 * at + 2) * half, ring),
        )
        for at in range(pieces)
    ]


def _hull(group: Sequence[Place]) -> Outline:
    """Return the corners of the convex hull, clockwise on a screen."""
    dots = sorted(set(group))
    if len(dots) < 3:
        return tuple(dots)
    over, under = _chain(dots), _chain(dots[::-1])
    return tuple(over[:-1] + under[:-1])


def _chain(dots: Sequence[Place]) -> list[Place]:
    chain: list[Place] = []
    for dot in dots:
        while len(chain) > 1 and _turn(chain[-2], chain[-1], dot) <= 0:
            chain.pop()
        chain.append(dot)
    return chain


def _turn(one: Place, two: Place, three: Place) -> int:
    """Return more than 0 where the way from one over two to three turns right on a screen."""
    return (two[0] - one[0]) * (three[1] - one[1]) - (two[1] - one[1]) * (three[0] - one[0])


def _apart(place: Place, hull: Outline) -> float:
    """Return how far a place is from a hull; 0 inside it."""
    edges = list(zip(hull, hull[1:] + hull[:1], strict=True))
    if len(hull) > 2 and all(_turn(one, other, place) >= 0 for one, other in edges):
        return 0.0
    return min(_from_edge(place, one, other) for one, other in edges)


def _from_edge(place: Place, one: Place, other: Place) -> float:
    """Return how far a place is from the straight line between two others."""
    wide, high = other[0] - one[0], other[1] - one[1]
    length = wide * wide + high * high
    along = (place[0] - one[0]) * wide + (place[1] - one[1]) * high
    part = min(max(along / length, 0.0), 1.0) if length else 0.0
    return math.dist(place, (one[0] + part * wide, one[1] + part * high))


def _tree(group: Sequence[Place]) -> list[tuple[int, int]]:
    """Return the edges of the shortest tree over the dots, nearest first."""
    of = list(range(len(group)))
    edges = []
    pairs = combinations(range(len(group)), 2)
    for one, other in sorted(pairs, key=lambda pair: math.dist(group[pair[0]], group[pair[1]])):
        if of[one] != of[other]:
            edges.append((one, other))
            of = [of[one] if each == of[other] else each for each in of]
    return edges


def _round(group: Sequence[Place], edges: list[tuple[int, int]]) -> list[int]:
    """Return the dots in the order in which one goes round the tree, clockwise on a screen."""
    near: dict[int, list[int]] = {at: [] for at in range(len(group))}
    for one, other in edges:
        near[one].append(other)
        near[other].append(one)
    first = edges[0]
    step = first
    tour: list[int] = []
    while not tour or step != first:
        tour.append(step[1])
        step = (step[1], _next(group, near, *step))
    return tour


def _next(group: Sequence[Place], near: dict[int, list[int]], before: int, here: int) -> int:
    """Return the first dot clockwise from the one that was come from; that one in the end."""
    back = _heading(group[here], group[before])

    def turned(other: int) -> float:
        angle = (_heading(group[here], group[other]) - back) % (2 * math.pi)
        return angle if other != before else 2 * math.pi

    return min(near[here], key=turned)
