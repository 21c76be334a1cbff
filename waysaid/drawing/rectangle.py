"""A told product or quotient as a rectangle cut into the parts the child said.

The pieces are those of the steps, true or not: a piece nobody said leaves its cell empty, a side
nobody said has no number. A near fact is a whole with a strip taken off or put on.
"""

from collections.abc import Iterable, Sequence
from dataclasses import dataclass, replace

from waysaid.drawing.equations import line_of
from waysaid.drawing.groups import (
    Cut,
    Groups,
    Placed,
    groups_of,
    piece_of,
    placed,
)
from waysaid.drawing.story import UNSAID, Hop, Mark, hops_of, mark_of
from waysaid.drawing.telling import Telling
from waysaid.number import Blank, Equation, Number, Operation, Sign
from waysaid.ways import Kind, Step

MOST_PARTS = 8
"""A side is cut into no more parts than this (our choice: more are not seen as parts)."""


@dataclass(frozen=True, slots=True)
class Column:
    """A part of the side along the top.

    `taken` is a strip that goes off again, `apart` what is left over of a number shared out.
    """

    side: Mark
    taken: bool = False
    apart: bool = False


@dataclass(frozen=True, slots=True)
class Rectangle:
    """Sides down the left and along the top, and a cell for each pair of parts, row by row.

    `whole` is the side before a strip is taken off, `notes` the equations that are no pieces.
    `first` tells that the columns are parts of the first side of the problem, `shared` that
    some of them came out of a division.
    """

    rows: tuple[Mark, ...]
    columns: tuple[Column, ...]
    cells: tuple[tuple[Mark, ...], ...]
    whole: Mark | None = None
    notes: tuple[str, ...] = ()
    first: bool = True
    shared: bool = False


Told = Sequence[tuple[Step, frozenset[str]]]


def rectangles_of(telling: Telling) -> tuple[Rectangle, ...] | None:
    """Return the rectangle a telling works on, or the one it becomes after another; else None."""
    groups = groups_of(telling.problem)
    if groups is None or not telling.steps:
        return None
    told = [(step, telling.unsaid(place)) for place, step in enumerate(telling.steps)]
    if told[0][0].kind is Kind.SCALE and groups.product is None:
        reshaped = _reshaped(told, groups)
        if reshaped:
            return reshaped
    work = _Work(groups)
    for step, unsaid in told:
        if not work.add(step, unsaid):
            return None
    made = work.rectangle()
    return None if made is None else (made,)


@dataclass(slots=True)
class _Strip:
    """A column in the making, with the cell under it."""

    column: Column
    cell: Mark


class _Work:
    """The steps taken in so far, one after another."""

    def __init__(self, groups: Groups) -> None:
        self.groups = groups
        self.pieces: list[Placed] = []
        self.strips: list[_Strip] = []
        self.left_over: Mark | None = None
        self.notes: list[str] = []
        self.left_note = ""
        self.total: Mark | None = None

    def add(self, step: Step, unsaid: frozenset[str]) -> bool:
        """Take in one step; False where it has no place in a rectangle."""
        if _opens(step):
            return True
        piece = piece_of(step, unsaid)
        if piece is not None:
            if self.pieces and self._whole_again(step):
                self.notes.append(line_of(step, unsaid))
                return True
            found = placed(piece, self.groups)
            return found is not None and self._add_piece(found, step)
        hops = hops_of(step, unsaid)
        return bool(hops) and bool(self.pieces) and self._add_hops(hops, step, unsaid)

    def _whole_again(self, step: Step) -> bool:
        """Tell whether a step only says the whole division in the end: 63 / 5 = 12 3/5."""
        left = step.equation.left
        return (
            isinstance(left, Operation)
            and left.sign is Sign.OVER
            and left.left == self.groups.product
        )

    def _add_piece(self, found: Placed, step: Step) -> bool:
        if self.strips or (found.cut is Cut.BOTH and step.kind is Kind.SCALE):
            return False
        if self.pieces and self.pieces[0].cut is not found.cut:
            return False
        if self.pieces and found.cut is Cut.WHOLE:
            return False
        self.pieces.append(found)
        self.total, self.left_over, self.left_note = found.product, None, ""
        return len(self.pieces) <= MOST_PARTS

    def _add_hops(self, hops: tuple[Hop, ...], step: Step, unsaid: frozenset[str]) -> bool:
        hop = hops[0]
        divides = self.groups.product is not None
        if divides and step.kind is Kind.TAKE:
            self.left_over, self.left_note = hops[-1].end, line_of(step, unsaid)
            return True
        strip = self._strip(hop) if len(hops) == 1 else None
        if strip is not None:
            if self.pieces[0].cut is Cut.BOTH:
                return False
            self.strips.append(strip)
        self._note(step, unsaid)
        self.total = hops[-1].end
        return len(self.strips) < MOST_PARTS

    def _note(self, step: Step, unsaid: frozenset[str]) -> None:
        line = line_of(step, unsaid)
        if line:
            self.notes.append(line)

    def _strip(self, hop: Hop) -> _Strip | None:
        """Return the strip that a hop from the one piece puts on or takes off, if it does."""
        taken = hop.sign is Sign.MINUS
        if len(self.pieces) == 2 and taken and self._said_before(hop):
            last = self.pieces.pop()
            return _Strip(Column(last.part, True), last.product)
        if len(self.pieces) != 1:
            return None
        only = self.pieces[0]
        if self.total is not None and hop.start.value == self.total.value:
            return _Strip(Column(UNSAID, taken), hop.amount)
        if self.groups.product is not None and hop.start.value == only.part.value:
            return self._named(hop, taken)
        return None

    def _said_before(self, hop: Hop) -> bool:
        """Tell whether what is taken off was told as a piece just before: 14 of 70 − 14."""
        first, last = self.pieces
        area = (hop.start.value, hop.amount.value) == (first.product.value, last.product.value)
        side = (hop.start.value, hop.amount.value) == (first.part.value, last.part.value)
        return area or (side and self.groups.product is not None)

    def _named(self, hop: Hop, taken: bool) -> _Strip | None:
        """Name the side of a strip that was told as an area, or begin one with that side."""
        if self.strips:
            first = self.strips[0]
            self.strips[0] = _Strip(replace(first.column, side=hop.amount), first.cell)
            return None
        return _Strip(Column(hop.amount, taken), UNSAID)

    def rectangle(self) -> Rectangle | None:
        """Return what the steps make; None where they told no piece."""
        if not self.pieces:
            return None
        cut = self.pieces[0].cut
        notes = self._kept_notes()
        if cut is Cut.BOTH:
            grid = _grid(self.pieces, self.groups.about)
            return None if grid is None else replace(grid, notes=notes)
        if cut is Cut.WHOLE:
            only = self.pieces[0]
            low, high = sorted((only.part, only.side), key=lambda mark: mark.value)
            self.pieces = [replace(only, part=high, side=low)]
        return replace(self._in_one_row(), notes=notes, first=cut is not Cut.OTHER)

    def _kept_notes(self) -> tuple[str, ...]:
        """Return the notes; of what was taken from a number shared out only the last."""
        return tuple(note for note in (*self.notes, self.left_note) if note)

    def _in_one_row(self) -> Rectangle:
        strips = [_Strip(Column(one.part), one.product) for one in self.pieces]
        taken = any(strip.column.taken for strip in self.strips)
        whole = strips[0].column.side if taken else None
        if taken:
            strips[0] = _Strip(Column(UNSAID), strips[0].cell)
        strips += self.strips
        if self.left_over is not None:
            strips.append(_Strip(Column(UNSAID, apart=True), self.left_over))
        return Rectangle(
            (self.pieces[0].side,),
            tuple(strip.column for strip in strips),
            (tuple(strip.cell for strip in strips),),
            whole,
            shared=any(one.shared for one in self.pieces),
        )


def _opens(step: Step) -> bool:
    """Tell whether a step only opens or renames a number."""
    left = step.equation.left
    return step.kind is Kind.SPLIT and not isinstance(left, Operation | Blank)


def _grid(pieces: Sequence[Placed], about: bool) -> Rectangle | None:
    """Return pieces of both sides as a grid; None where two of them share a cell."""
    if len(pieces) == 1 and not about:
        return None
    rows = list(dict.fromkeys(one.part.value for one in pieces))
    columns = list(dict.fromkeys(one.side.value for one in pieces))
    spots = {(one.part.value, one.side.value): one for one in pieces}
    if len(spots) < len(pieces) or (len(rows) == len(columns) == len(pieces) > 1):
        return None
    return Rectangle(
        tuple(_named_once(one.part for one in pieces if one.part.value == row) for row in rows),
        tuple(
            Column(_named_once(one.side for one in pieces if one.side.value == column))
            for column in columns
        ),
        tuple(
            tuple(
                spots[row, column].product if (row, column) in spots else UNSAID
                for column in columns
            )
            for row in rows
        ),
    )


def _named_once(marks: Iterable[Mark]) -> Mark:
    """Return the mark of one side, said if it was said in any of its pieces."""
    found = list(marks)
    return next((mark for mark in found if mark.said), found[0])


def _reshaped(told: Told, groups: Groups) -> tuple[Rectangle, ...]:
    """Return 16 by 5, then 8 by 10: rectangles that hold as much; none where nothing changes."""
    if groups.one is None or groups.other is None:
        return ()
    made = [_plain(mark_of(groups.one, True), mark_of(groups.other, True), UNSAID)]
    last, unsaid = told[-1]
    for step, away in told[:-1]:
        if step.kind is not Kind.SCALE:
            return ()
        sides = _both(step.equation, away)
        if sides is not None:
            made.append(_plain(*sides, UNSAID))
    piece = piece_of(last, unsaid)
    sides = _both(last.equation, unsaid)
    if sides is not None and last.kind is Kind.SCALE:
        return (*made, _plain(*sides, UNSAID))
    if piece is None or piece.shared or last.kind is Kind.SCALE:
        return ()
    final = _plain(piece.one, piece.other, piece.product)
    if len(made) > 1 and (made[-1].rows, made[-1].columns) == (final.rows, final.columns):
        return (*made[:-1], final)
    return (*made, final)


def _both(equation: Equation, unsaid: frozenset[str]) -> tuple[Mark, Mark] | None:
    """Return the sides that a product is turned into: 8 and 10 of 16 x 5 = 8 x 10."""
    right = equation.right
    if not isinstance(right, Operation) or right.sign is not Sign.TIMES:
        return None
    if isinstance(right.left, Operation | Blank) or isinstance(right.right, Operation | Blank):
        return None
    return _said(right.left, unsaid), _said(right.right, unsaid)


def _said(leaf: Number, unsaid: frozenset[str]) -> Mark:
    return mark_of(leaf, "result" not in unsaid)


def _plain(one: Mark, other: Mark, product: Mark) -> Rectangle:
    return Rectangle((other,), (Column(one),), ((product,),))
