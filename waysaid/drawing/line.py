"""The open number line: hops in the order told, on a line that is a sketch for everyone.

Hops that go the way of the first one arch over the line, hops back under its numbers, so that
labels never meet. Every number that was said is written, also when counting by ones: nothing is
thinned; a number nobody said has a mark and no label.
"""

from dataclasses import dataclass, replace
from itertools import pairwise, product

from waysaid.drawing.fit import Drawn, largest, stroke_of
from waysaid.drawing.metrics import digit_height
from waysaid.drawing.scene import Scene
from waysaid.drawing.shape import Anchor, Dot, Label, Line, Path, Shape
from waysaid.drawing.spacing import (
    Arch,
    Brace,
    Plan,
    edge,
    natural,
    overlap,
    parted,
    plan_of,
    stretched,
)
from waysaid.drawing.story import Story
from waysaid.drawing.telling import Frame, Picture, Telling
from waysaid.drawing.words import phrase, sentence, title_of
from waysaid.number import Language


@dataclass(frozen=True, slots=True)
class _Rise:
    """How high things stand, in twentieths of the label size (our choice).

    `arcs` by the digits of a hop's number, the last one for more; `over` from an arc to its
    label, `clear` from a label to a higher arc, `brace` from what is under a gap to its line.
    """

    arcs: tuple[int, int, int]
    below: int
    over: int
    clear: int
    brace: int

    def arc(self, digits: int, above: bool) -> int:
        return self.arcs[min(digits, 3) - 1] if above else self.below


_ROOMY = _Rise((16, 22, 24), 14, 3, 5, 8)
_LOW = _Rise((11, 12, 12), 7, 2, 3, 4)
"""For much above and under the line at once, where the roomy one is too high for a tile."""


@dataclass(frozen=True, slots=True)
class _Laid:
    """A plan with sizes and places: heights are distances from the line, up or down."""

    plan: Plan
    size: int
    places: tuple[int, ...]
    width: int
    reach: tuple[int, ...]
    top: int
    bottom: int
    rise: _Rise

    @property
    def over(self) -> int:
        """From an arc to the baseline of its label."""
        return self.size * self.rise.over // 20

    @property
    def stroke(self) -> int:
        return stroke_of(self.size)


def draw_line(
    story: Story,
    telling: Telling,
    frame: Frame,
    lang: Language,
    picture: Picture = Picture.NUMBER_LINE,
) -> Scene:
    """Return the open number line of a story, by the name of the picture.

    Where its labels need more room than a line has, and all four tiles hold it so, the line goes
    on in a second or third row, each starting at the mark the last one ended at.
    """
    plan = plan_of(story)
    drawn = largest(frame, lambda size, room: _rows(plan, size, room))
    title = title_of(picture, telling.problem, lang)
    return Scene(drawn.width, drawn.height, title, _told(story, lang), drawn.shapes)


def _rows(plan: Plan, size: int, room: Frame) -> Drawn:
    """Draw in one row, or in as few rows as fit the room; in one if no number of rows does."""
    whole = _drawn(_laid(plan, size, room.width, _ROOMY), 0)
    if whole.width <= room.width and whole.height > room.height and size == room.least:
        return _drawn(_laid(plan, size, room.width, _LOW), 0)
    if whole.width <= room.width:
        return whole
    rises = (_ROOMY, _LOW) if size == room.least else (_ROOMY,)
    for count, rise in product((2, 3), rises):
        rows = [_laid(part, size, room.width, rise) for part in parted(plan, count)]
        drawn = _stacked(rows)
        if len(rows) == count and drawn.width <= room.width and drawn.height <= room.height:
            return drawn
    return whole


def _stacked(rows: list[_Laid]) -> Drawn:
    shapes: list[Shape] = []
    y = 0
    for row in rows:
        drawn = _drawn(row, y)
        shapes.extend(drawn.shapes)
        y += drawn.height + row.size // 4
    return Drawn(max(row.width for row in rows), y - rows[-1].size // 4, tuple(shapes))


def _drawn(laid: _Laid, down: int) -> Drawn:
    """Draw one row, its top `down` from the top of the scene."""
    height = laid.top + laid.bottom
    placed = replace(laid, top=laid.top + down)
    return Drawn(laid.width, height, (*_base(placed), *_arches(placed), *_braces(placed)))


def _laid(plan: Plan, size: int, width: int, rise: _Rise) -> _Laid:
    left, right = edge(plan, size)
    places = natural(plan, size)
    spare = width - left - right - places[-1]
    if spare > 0:
        places = stretched(plan, places, spare)
    places = tuple(left + place for place in places)
    reach = _reach(plan, size, rise)
    top, bottom = _extent(plan, size, reach, rise)
    return _Laid(plan, size, places, places[-1] + right, reach, top, bottom, rise)


def _extent(plan: Plan, size: int, reach: tuple[int, ...], rise: _Rise) -> tuple[int, int]:
    """Return how far everything reaches up and down from the line."""
    label = size * rise.over // 20 + digit_height(size)
    far = list(zip(plan.arches, reach, strict=True))
    ups = [high + label for arch, high in far if arch.above]
    lows = [low + label for arch, low in far if not arch.above]
    braces = len(plan.braces) * (size * rise.brace // 20)
    labelled = sum(
        _lift(brace, size, rise) + digit_height(size) for brace in plan.braces if brace.label
    )
    top = max(ups, default=0) + braces + labelled
    return top + max(3, size // 11), _under(size) + max(lows, default=0) + size // 20


def _under(size: int) -> int:
    """Return how far the numbers under the line reach down."""
    return size // 4 + digit_height(size) + size // 20


def _reach(plan: Plan, size: int, rise: _Rise) -> tuple[int, ...]:
    """Return how far each hop stands off: enough for the labels of all the hops it arches over."""
    far: dict[int, int] = {}
    clear = size * (rise.over + rise.clear) // 20 + digit_height(size)
    for at in sorted(range(len(plan.arches)), key=lambda at: plan.arches[at].level):
        arch = plan.arches[at]
        lower = [far[o] for o in far if overlap(arch, plan.arches[o])]
        high = rise.arc(arch.digits, arch.above) * size // 20
        far[at] = max([high, *(one + clear for one in lower)])
    return tuple(far[at] for at in range(len(plan.arches)))


def _base(laid: _Laid) -> list[Shape]:
    """Return the line, its marks and their numbers."""
    y, size = laid.top, laid.size
    shapes: list[Shape] = [Line(laid.stroke, y, laid.width - laid.stroke, y, laid.stroke)]
    for x, label in zip(laid.places, laid.plan.labels, strict=True):
        shapes.append(Dot(x, y, max(3, size // 11)))
        if label:
            baseline = y + size // 4 + digit_height(size)
            shapes.append(Label(x, baseline, size, Anchor.MIDDLE, label))
    return shapes


def _arches(laid: _Laid) -> list[Shape]:
    shapes: list[Shape] = []
    for arch, far in zip(laid.plan.arches, laid.reach, strict=True):
        shapes.append(Path(_curve(laid, arch, far), laid.stroke))
        if arch.label:
            x = (laid.places[arch.over[0]] + laid.places[arch.over[1]]) // 2
            down = laid.top + _under(laid.size) + far + laid.over + digit_height(laid.size)
            y = laid.top - far - laid.over if arch.above else down
            shapes.append(Label(x, y, laid.size, Anchor.MIDDLE, arch.label))
    return shapes


def _curve(laid: _Laid, arch: Arch, far: int) -> str:
    """Return half an oval for a hop by itself, a rounded arch for one that goes over others."""
    left, right = laid.places[arch.low], laid.places[arch.high]
    turn = -1 if arch.above else 1
    y = laid.top if arch.above else laid.top + _under(laid.size) + laid.size // 8
    far = far if arch.above else far - laid.size // 8
    if arch.level == 1 and arch.count > 1:
        return _equal(arch.count, (left, right), y, (far, arch.above))
    if arch.level == 1:
        return f"M{left} {y}A{(right - left) // 2} {far} 0 0 {int(arch.above)} {right} {y}"
    bend = min((right - left) // 2, laid.size * 7 // 20)
    end = y + turn * far
    up = f"M{left} {y}V{end - turn * bend}Q{left} {end} {left + bend} {end}"
    return f"{up}H{right - bend}Q{right} {end} {right} {end - turn * bend}V{y}"


def _equal(count: int, ends: tuple[int, int], y: int, rise: tuple[int, bool]) -> str:
    """Return so many equal hops one after another, each half an oval."""
    (left, right), (far, above) = ends, rise
    feet = [left + (right - left) * at // count for at in range(count + 1)]
    ovals = [
        f"A{(high - low) // 2} {far} 0 0 {int(above)} {high} {y}" for low, high in pairwise(feet)
    ]
    return f"M{left} {y}{''.join(ovals)}"


def _braces(laid: _Laid) -> list[Shape]:
    """Return the gaps marked over the hops, lowest first."""
    label = laid.over + digit_height(laid.size)
    far = list(zip(laid.plan.arches, laid.reach, strict=True))
    y = laid.top - max((high + label for arch, high in far if arch.above), default=0)
    shapes: list[Shape] = []
    for brace in laid.plan.braces:
        y -= laid.size * laid.rise.brace // 20
        shapes.extend(_brace(laid, brace, y))
        if brace.label:
            y -= _lift(brace, laid.size, laid.rise) + digit_height(laid.size)
    return shapes


def _lift(brace: Brace, size: int, rise: _Rise) -> int:
    """Return how far a gap's label stands over its line: letters hang lower than digits."""
    return size * 7 // 20 if any(one.isalpha() for one in brace.label) else size * rise.over // 20


def _brace(laid: _Laid, brace: Brace, y: int) -> list[Shape]:
    left, right = laid.places[brace.low], laid.places[brace.high]
    foot = laid.size * laid.rise.brace // 40
    start = f"M{left} {y + foot}V{y}" if brace.ends[0] else f"M{left} {y}"
    end = f"V{y + foot}" if brace.ends[1] else ""
    shapes: list[Shape] = [Path(f"{start}H{right}{end}", laid.stroke)]
    if brace.label:
        at = (left + right) // 2, y - _lift(brace, laid.size, laid.rise)
        shapes.append(Label(*at, laid.size, Anchor.MIDDLE, brace.label))
    return shapes


def _told(story: Story, lang: Language) -> str:
    """Return the hops in words; what nobody said is left out."""
    said: list[str] = []
    here = None
    for hop in story.hops:
        if hop.start.value != here:
            number = hop.start.text
            said.append(phrase(lang, "start" if number else "somewhere", number=number))
        move = hop.label or "…"
        said.append(phrase(lang, "hop", move=move, number=hop.end.text) if hop.end.said else move)
        here = hop.end.value
    summed = len(story.gaps) == 1 and bool(story.hops)
    for gap in story.gaps:
        key = "gathered" if summed else "gap" if gap.label else "stretch"
        low, high = gap.low.text or "…", gap.high.text or "…"
        said.append(phrase(lang, key, number=gap.label, low=low, high=high))
    return sentence(tuple(said), lang)
