"""What the class noticed, marked on a string: rings, lines under numbers, ties and arcs.

A noticing rings its numbers; joined ones are tied by lines, rows by arcs at the side. Where more
than one noticing marks a number, the second underlines it and the third does so twice, so that
each stays legible. Marks say nothing of whether a noticing is true.
"""

from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from itertools import pairwise

from waysaid.drawing.fit import stroke_of
from waysaid.drawing.metrics import digit_height
from waysaid.drawing.shape import Box, Dot, Line, Path, Shape

Spot = tuple[int, int | str]
"""A row of the string, and in it a number (its place among them), "answer" or "row"."""


@dataclass(frozen=True, slots=True)
class StringMark:
    """One noticing: what it marks, and whether the marks are joined."""

    places: Sequence[Spot]
    join: bool = True


@dataclass(frozen=True, slots=True)
class Span:
    """Where a number or the answers of a row stand; y is the baseline."""

    left: int
    right: int
    y: int

    @property
    def middle(self) -> int:
        """The x between both ends."""
        return (self.left + self.right) // 2


@dataclass(frozen=True, slots=True)
class Form:
    """On which line each row starts, and which of a row's own lines its spots are on."""

    starts: tuple[int, ...]
    within: tuple[Mapping[int | str, int], ...]

    def line(self, spot: Spot) -> int:
        """Return the line a spot is on, from 0."""
        row, place = spot
        return self.starts[row] + self.within[row].get(place, 0)


Spans = Mapping[Spot, Span]


def at_side(mark: StringMark, form: Form) -> bool:
    """Tell whether a noticing has something at the left side: a row's dot, or an arc."""
    whole = any(spot == "row" for _, spot in mark.places)
    far = any(_far(one, other, form) for one, other in pairwise(in_order(mark.places)))
    return whole or (mark.join and far)


def _far(one: Spot, other: Spot, form: Form) -> bool:
    """Tell whether there is a line of the string between two spots, so that a tie goes round."""
    return abs(form.line(one) - form.line(other)) > 1


def in_order(places: Sequence[Spot]) -> list[Spot]:
    """Return spots by row, and in a row the whole row first, then numbers, then the answer."""
    rank = {"row": -1, "answer": 10**6}

    def order(spot: Spot) -> tuple[int, int]:
        row, place = spot
        return row, place if isinstance(place, int) else rank.get(place, 0)

    return sorted(set(places), key=order)


def marked(marks: Sequence[StringMark], spans: Spans, size: int, form: Form) -> list[Shape]:
    """Return the marks of all noticings, in the order noticed."""
    shapes: list[Shape] = []
    seen: dict[Spot, int] = {}
    lanes = 0
    for place, mark in enumerate(marks):
        spots = in_order(mark.places)
        for spot in spots:
            if spot[1] != "row":
                shapes.extend(_number(spans[spot], seen.get(spot, 0) % 3, size))
            seen[spot] = seen.get(spot, 0) + 1
        shapes.extend(_joins(mark, spots, spans, _Layer(place, lanes, size, form)))
        lanes += at_side(mark, form)
    return shapes


def _number(span: Span, layer: int, size: int) -> list[Shape]:
    """Return a ring round a number; for a second noticing a line under it, for a third two."""
    stroke, pad = stroke_of(size), size // 7
    if layer == 0:
        top = span.y - digit_height(size) - pad
        wide, high = span.right - span.left + 2 * pad, digit_height(size) + 2 * pad
        return [Box(span.left - pad, top, wide, high, high // 3, False, stroke)]
    first = span.y + pad + 2 * stroke
    return [
        Line(span.left, first + at * 2 * stroke, span.right, first + at * 2 * stroke, stroke)
        for at in range(layer)
    ]


@dataclass(frozen=True, slots=True)
class _Layer:
    """Which noticing is drawn, its lane at the side, the label size, and the lines."""

    place: int
    lane: int
    size: int
    form: Form


def _joins(mark: StringMark, spots: list[Spot], spans: Spans, layer: _Layer) -> list[Shape]:
    """Return the ties between the spots of one noticing, and the dots of its rows."""
    shapes: list[Shape] = []
    side = {row for row, spot in spots if spot == "row"}
    for one, other in pairwise(spots) if mark.join else ():
        if "row" not in (one[1], other[1]) and not _far(one, other, layer.form):
            shapes.append(_tie(spans[one], spans[other], layer))
        elif one[0] != other[0]:
            side |= {one[0], other[0]}
            shapes.append(_arc(spans, (one[0], other[0]), layer.lane, layer.size))
    points = (_side_point(spans[row, "row"], layer.lane, layer.size) for row in sorted(side))
    shapes.extend(Dot(*point, layer.size // 12) for point in points)
    return shapes


def _tie(first: Span, second: Span, layer: _Layer) -> Shape:
    """Return a line from one line of the string to the next, or a loop under one line."""
    size, stroke = layer.size, stroke_of(layer.size)
    pad, shift = size // 7, (layer.place % 3 - 1) * (size // 10)
    left, right = first.middle + shift, second.middle + shift
    low = first.y + pad
    if first.y != second.y:
        return Line(left, low, right, second.y - digit_height(size) - pad, stroke)
    deep = low + size * (4 + layer.place % 3) // 26
    down = f"M{left} {low}Q{left} {deep} {left + pad} {deep}H{right - pad}"
    return Path(f"{down}Q{right} {deep} {right} {low}", stroke)


def _side_point(row: Span, lane: int, size: int) -> tuple[int, int]:
    """Return where a noticing touches a row at its left; each noticing has a lane of its own."""
    up = digit_height(size) * (4 + lane % 3 * 2) // 12
    return row.left - size // 3 - lane * (size // 4), row.y - up


def _arc(spans: Spans, rows: tuple[int, int], lane: int, size: int) -> Path:
    x1, y1 = _side_point(spans[rows[0], "row"], lane, size)
    x2, y2 = _side_point(spans[rows[1], "row"], lane, size)
    out = x1 - size
    return Path(f"M{x1} {y1}C{out} {y1} {out} {y2} {x2} {y2}", stroke_of(size))
