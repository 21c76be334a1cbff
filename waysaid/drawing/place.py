"""Place-value pieces: squares for hundreds, sticks for tens, dots for ones.

The pieces are those of the problem's own numbers. A regrouping is drawn only where the child's
steps make one: in an addition ten ones are ringed and become a ten, in a subtraction a ten is
opened into ones.
"""

from dataclasses import dataclass, field
from enum import Enum

from waysaid.drawing.fit import Drawn, arrow, largest, open_dot, stroke_of
from waysaid.drawing.metrics import digit_height, text_width
from waysaid.drawing.problem import terms_of
from waysaid.drawing.scene import Scene
from waysaid.drawing.shape import Anchor, Box, Dot, Label, Shape
from waysaid.drawing.story import Hop, hops_of
from waysaid.drawing.telling import Frame, Picture, Telling
from waysaid.drawing.words import listed, phrase, sentence, title_of
from waysaid.number import Language, Print, Sign, leaves, sign_text
from waysaid.ways import Kind

MOST = 999
"""Pieces are drawn for numbers up to this; more hundreds than nine are no longer seen at once."""


class Regroup(Enum):
    """What the child's steps do with a ten."""

    NONE = "none"
    RING = "ring"
    OPEN = "open"


@dataclass(frozen=True, slots=True)
class Pieces:
    """The numbers of a problem in order, each with its sign, and the regrouping told."""

    terms: tuple[tuple[Sign, int], ...]
    regroup: Regroup


def pieces_of(telling: Telling) -> Pieces | None:
    """Return the pieces of a sum or difference of two or three whole numbers up to `MOST`."""
    terms = terms_of(telling)
    if terms is None or len(terms) > 3:
        return None
    whole = tuple((sign, leaf) for sign, leaf in terms if isinstance(leaf, int))
    if len(whole) < len(terms) or any(not 0 <= leaf <= MOST for _, leaf in whole):
        return None
    return Pieces(whole, _regroup(telling, whole))


def _regroup(telling: Telling, terms: tuple[tuple[Sign, int], ...]) -> Regroup:
    if len(terms) != 2:
        return Regroup.NONE
    (_, one), (sign, other) = terms
    hops = [
        hop
        for place, step in enumerate(telling.steps)
        for hop in hops_of(step, telling.unsaid(place))
    ]
    if sign is Sign.PLUS:
        rings = one % 10 + other % 10 >= 10 and any(_makes_ten(hop, (one, other)) for hop in hops)
        return Regroup.RING if rings else Regroup.NONE
    opens = _splits_ten(telling, one) or any(_takes(hop, one) for hop in hops)
    opens = opens and one % 100 >= 10
    return Regroup.OPEN if opens else Regroup.NONE


def _makes_ten(hop: Hop, numbers: tuple[int, int]) -> bool:
    """Tell whether a hop joins the ones of both, or fills one number up with ones of the other."""
    start, amount = hop.start.value, hop.amount.value
    if hop.sign is not Sign.PLUS or not 0 < amount < 10:
        return False
    ones = sorted(number % 10 for number in numbers)
    if sorted((start, amount)) == ones:
        return max(numbers) >= 10 and hop.end.said and hop.end.value >= 10
    return start in numbers and (start + amount) % 10 == 0


def _splits_ten(telling: Telling, whole: int) -> bool:
    """Tell whether the whole was opened so that a part has its ones and one ten more."""
    return any(
        step.kind is Kind.SPLIT
        and step.equation.left == whole
        and whole % 10 + 10 in leaves(step.equation.right)
        for step in telling.steps
    )


def _takes(hop: Hop, whole: int) -> bool:
    """Tell whether ones are taken from the whole's ones and one ten more."""
    ones_and_ten = hop.start.value == whole % 10 + 10 != whole
    return hop.sign is Sign.MINUS and ones_and_ten and hop.amount.value < 10


def draw_place(pieces: Pieces, telling: Telling, frame: Frame, lang: Language) -> Scene:
    """Return a row of pieces for each number; a regrouping stands between the tens and ones."""
    drawn = largest(frame, lambda size, _: _laid(pieces, size))
    title = title_of(Picture.PLACE_VALUE, telling.problem, lang)
    said = [phrase(lang, "pieces", number=n, pieces=_named(n, lang)) for _, n in pieces.terms]
    if pieces.regroup is not Regroup.NONE:
        said.append(phrase(lang, pieces.regroup.value))
    return Scene(drawn.width, drawn.height, title, sentence(tuple(said), lang), drawn.shapes)


def _named(number: int, lang: Language) -> str:
    counts = (("hundred", number // 100), ("ten", number // 10 % 10), ("one", number % 10))
    named = tuple(
        phrase(lang, key if count == 1 else f"{key}s", count=count)
        for key, count in counts
        if count
    )
    return listed(named, lang) or phrase(lang, "none")


@dataclass(slots=True)
class _Pen:
    """Where the next piece goes; `unit` is a tenth of a hundred's side, `size` the label's."""

    size: int
    x: int = 0
    y: int = 0
    shapes: list[Shape] = field(default_factory=list)

    @property
    def side(self) -> int:
        return self.size * 13 // 10

    @property
    def stroke(self) -> int:
        return stroke_of(self.size)

    @property
    def step(self) -> int:
        """From the middle of a dot to the next."""
        return self.side // 5

    @property
    def dot(self) -> int:
        return self.size * 9 // 100

    def hundred(self) -> None:
        self.shapes.append(self._box(self.side))
        self.x += self.side + self.size // 5

    def ten(self, opened: bool = False) -> None:
        wide = max(2, self.size // 6)
        box = self._box(wide)
        self.shapes.append(box if opened else Box(box.x, box.y, wide, box.height, 0, True))
        self.x += wide + self.size // 6

    def _box(self, wide: int) -> Box:
        return Box(self.x, self.y, wide, self.side, 0, False, self.stroke)

    def ones(self, filled: int, outlined: int = 0) -> None:
        """Draw dots in columns of five, filled ones first."""
        for place in range(filled + outlined):
            x = self.x + self.step // 2 + place // 5 * self.step
            y = self.y + self.step // 2 + place % 5 * self.step
            thin = max(2, self.stroke // 2)
            full = Dot(x, y, self.dot)
            self.shapes.append(full if place < filled else open_dot(x, y, self.dot, thin))
        self.x += -(-(filled + outlined) // 5) * self.step

    def ring(self, columns: int) -> None:
        """Ring the columns of dots that come next."""
        pad = self.size // 8
        wide = columns * self.step
        self.shapes.append(
            Box(
                self.x - pad,
                self.y - pad,
                wide + 2 * pad,
                self.side + 2 * pad,
                2 * pad,
                False,
                self.stroke,
            )
        )

    def arrow(self, right: bool) -> None:
        y = self.y + self.side // 2
        ends = (self.x, self.x + self.size * 6 // 10)
        self.shapes.append(arrow(*(ends if right else ends[::-1]), y, self.stroke))
        self.x += self.size * 8 // 10


def _laid(pieces: Pieces, size: int) -> Drawn:
    """Lay out: labels, then hundreds and tens in a row for each number, then the ones."""
    pen = _Pen(size)
    pad = size // 8 + pen.stroke
    labels = [_label(place, term) for place, term in enumerate(pieces.terms)]
    start = max(text_width(label, size) for label in labels) + size * 4 // 10
    pitch = pen.side + size * 4 // 10
    wide = start
    for place, ((_, number), label) in enumerate(zip(pieces.terms, labels, strict=True)):
        pen.x, pen.y = start, pad + place * pitch
        baseline = pen.y + (pen.side + digit_height(size)) // 2
        pen.shapes.append(Label(start - size * 4 // 10, baseline, size, Anchor.END, label))
        opens = pieces.regroup is Regroup.OPEN and place == 0
        _big(pen, number, opens)
        if pieces.regroup is not Regroup.RING:
            pen.x += size // 4
            pen.ones(number % 10)
        wide = max(wide, pen.x)
    if pieces.regroup is Regroup.RING:
        pen.x, pen.y = wide + size // 5, pad + pitch // 2
        _ringed(pen, *(number % 10 for _, number in pieces.terms))
        wide = pen.x
    height = pad * 2 + (len(labels) - 1) * pitch + pen.side
    return Drawn(wide + pad, height, tuple(pen.shapes))


def _label(place: int, term: tuple[Sign, int]) -> str:
    sign, number = term
    return f"{sign_text(sign, Print.TRUE)} {number}" if place else str(number)


def _big(pen: _Pen, number: int, opens: bool) -> None:
    """Draw hundreds and tens; where a ten opens, its outline, an arrow and its ten ones."""
    for _ in range(number // 100):
        pen.hundred()
    tens = number // 10 % 10
    for _ in range(tens - opens):
        pen.ten()
    if opens:
        pen.ten(opened=True)
        pen.arrow(right=True)
        pen.ring(2)
        pen.ones(10)
        pen.x += pen.size // 5


def _ringed(pen: _Pen, one: int, other: int) -> None:
    """Draw the new ten, an arrow to it from ten ringed ones of both, and the ones left over."""
    first, second = (one, 10 - one) if one >= other else (10 - other, other)
    pen.ten(opened=True)
    pen.arrow(right=False)
    pen.ring(2)
    pen.ones(first, second)
    pen.x += pen.size // 3
    pen.ones(one - first, other - second)
