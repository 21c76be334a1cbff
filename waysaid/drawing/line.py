"""The open number line: hops in the order told, on a line that is a sketch for everyone.

Hops that go the way of the first one arch over the line, hops back under its numbers, so that
labels never meet. Every number that was said is written, also when counting by ones: nothing is
thinned; a number nobody said has a mark and no label.
"""

from dataclasses import dataclass

from waysaid.drawing.metrics import digit_height
from waysaid.drawing.scene import Scene
from waysaid.drawing.shape import Anchor, Dot, Label, Line, Path, Shape
from waysaid.drawing.spacing import Arch, Brace, Plan, edge, natural, overlap, plan_of, stretched
from waysaid.drawing.story import Story
from waysaid.drawing.telling import Frame, Picture, Telling
from waysaid.drawing.words import phrase, sentence, title_of
from waysaid.number import Print, text

ARC = {1: 8, 2: 11}
"""How high a hop arches, in tenths of the label size, by digits (our choice); else `HIGHEST`."""
HIGHEST = 12


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

    @property
    def stroke(self) -> int:
        return stroke_of(self.size)


def stroke_of(size: int) -> int:
    """Return the width of a line beside labels of this size: 7 % of it, at least 2 (our choice)."""
    return max(2, size * 7 // 100)


def draw_line(story: Story, telling: Telling, frame: Frame, lang: str) -> Scene:
    """Return the open number line of a story; wider than the frame where its labels need it."""
    laid = _fitted(plan_of(story), frame)
    shapes = (*_base(laid), *_arches(laid), *_braces(laid))
    title = title_of(Picture.NUMBER_LINE, text(telling.problem, Print.TRUE), lang)
    return Scene(laid.width, laid.top + laid.bottom, title, _told(story, lang), shapes)


def _fitted(plan: Plan, frame: Frame) -> _Laid:
    """Lay the plan out with the largest labels that fit; the smallest if none does."""
    for room in frame.rooms:
        for size in range(frame.label, frame.least - 1, -1):
            laid = _laid(plan, size, room.width)
            if laid.width <= room.width and laid.top + laid.bottom <= room.height:
                return laid
    return laid


def _laid(plan: Plan, size: int, width: int) -> _Laid:
    left, right = edge(plan, size)
    places = natural(plan, size)
    spare = width - left - right - places[-1]
    if spare > 0:
        places = stretched(plan, places, spare)
    places = tuple(left + place for place in places)
    reach = _reach(plan, size)
    label = digit_height(size)
    tops = [0, *(far for arch, far in zip(plan.arches, reach, strict=True) if arch.above)]
    top = max(tops) + _over(size) + label + len(plan.braces) * _brace_height(size)
    lows = [far for arch, far in zip(plan.arches, reach, strict=True) if not arch.above]
    bottom = _under(size) + (max(lows) + _over(size) + label if lows else 0)
    return _Laid(plan, size, places, places[-1] + right, reach, top + 2, bottom + size // 20)


def _over(size: int) -> int:
    """Return the gap between a hop and its label."""
    return size // 7


def _under(size: int) -> int:
    """Return how far the numbers under the line reach down."""
    return size // 4 + digit_height(size) + size // 20


def _brace_height(size: int) -> int:
    return size // 2 + _over(size) + digit_height(size)


def _reach(plan: Plan, size: int) -> tuple[int, ...]:
    """Return how far each hop stands off: enough for the labels of all the hops it arches over."""
    far: dict[int, int] = {}
    for at in sorted(range(len(plan.arches)), key=lambda at: plan.arches[at].level):
        arch = plan.arches[at]
        lower = [far[o] for o in far if overlap(arch, plan.arches[o])]
        clear = _over(size) + digit_height(size) + size // 4
        high = ARC.get(arch.digits, HIGHEST) * size // (10 if arch.above else 15)
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
            down = laid.top + _under(laid.size) + far + _over(laid.size) + digit_height(laid.size)
            y = laid.top - far - _over(laid.size) if arch.above else down
            shapes.append(Label(x, y, laid.size, Anchor.MIDDLE, arch.label))
    return shapes


def _curve(laid: _Laid, arch: Arch, far: int) -> str:
    """Return half an oval for a hop by itself, a rounded arch for one that goes over others."""
    left, right = laid.places[arch.low], laid.places[arch.high]
    turn = -1 if arch.above else 1
    y = laid.top if arch.above else laid.top + _under(laid.size) + laid.size // 8
    far = far if arch.above else far - laid.size // 8
    if arch.level == 1:
        return f"M{left} {y}A{(right - left) // 2} {far} 0 0 {int(arch.above)} {right} {y}"
    bend = min((right - left) // 2, laid.size)
    end = y + turn * far
    up = f"M{left} {y}V{end - turn * bend}Q{left} {end} {left + bend} {end}"
    return f"{up}H{right - bend}Q{right} {end} {right} {end - turn * bend}V{y}"


def _braces(laid: _Laid) -> list[Shape]:
    """Return the gaps marked over the hops, lowest first."""
    highest = [far for arch, far in zip(laid.plan.arches, laid.reach, strict=True) if arch.above]
    y = laid.top - max(highest, default=0) - _over(laid.size) - digit_height(laid.size)
    shapes: list[Shape] = []
    for brace in laid.plan.braces:
        y -= laid.size // 2 - _over(laid.size)
        shapes.extend(_brace(laid, brace, y))
        y -= 2 * _over(laid.size) + digit_height(laid.size)
    return shapes


def _brace(laid: _Laid, brace: Brace, y: int) -> list[Shape]:
    left, right = laid.places[brace.low], laid.places[brace.high]
    foot = laid.size // 5
    shapes: list[Shape] = [Path(f"M{left} {y + foot}V{y}H{right}V{y + foot}", laid.stroke)]
    if brace.label:
        at = (left + right) // 2, y - _over(laid.size)
        shapes.append(Label(*at, laid.size, Anchor.MIDDLE, brace.label))
    return shapes


def _told(story: Story, lang: str) -> str:
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
    for gap in story.gaps:
        key = "gap" if len(story.gaps) > 1 else "gathered"
        said.append(phrase(lang, key, number=gap.label) if gap.label else "")
    return sentence(tuple(said), lang)
