"""A product or a quotient as two sides and what they make, and the steps that work on it.

`14 x 6` has both sides and asks what they make; `84 / 4` and `_ x 4 = 84` have one side and what
both make. A number nobody said has its place and no value.
"""

from dataclasses import dataclass
from enum import Enum

from waysaid.drawing.story import UNSAID, Mark, mark_of
from waysaid.number import (
    BLANK,
    About,
    Blank,
    Equation,
    Exact,
    Expression,
    Number,
    Operation,
    Problem,
    Sign,
    exact,
    sides,
)
from waysaid.ways import Step


@dataclass(frozen=True, slots=True)
class Groups:
    """Two sides and their product; None for the one the problem asks for.

    `about` tells that an estimate is asked for, so that other sides may stand for these.
    """

    one: Number | None
    other: Number | None
    product: Number | None
    about: bool = False

    @property
    def known(self) -> Exact | None:
        """The side that a division gives; None for a product."""
        side = self.other if self.one is None else self.one
        return exact(side) if self.product is not None and side is not None else None


@dataclass(frozen=True, slots=True)
class Piece:
    """A product told in one step, or a quotient turned into one; `shared` tells which."""

    one: Mark
    other: Mark
    product: Mark
    shared: bool


class Cut(Enum):
    """Which side of the problem's rectangle a piece is a part of."""

    ONE = "one"
    OTHER = "other"
    BOTH = "both"
    WHOLE = "whole"


@dataclass(frozen=True, slots=True)
class Placed:
    """A piece as a part of a side, the side that it shares, and what both make."""

    cut: Cut
    part: Mark
    side: Mark
    product: Mark
    shared: bool = False


def groups_of(problem: Problem) -> Groups | None:
    """Return the sides of a product or quotient of two numbers; None for any other problem."""
    asked = sides(problem)
    if isinstance(problem, Equation):
        return _in_equation(problem)
    if len(asked) != 1 or not isinstance(asked[0], Operation):
        return None
    one, other = asked[0].left, asked[0].right
    if isinstance(one, Operation | Blank) or isinstance(other, Operation | Blank):
        return None
    if asked[0].sign is Sign.TIMES:
        return Groups(one, other, None, isinstance(problem, About))
    if asked[0].sign is Sign.OVER and exact(other):
        return Groups(None, other, one, isinstance(problem, About))
    return None


def _in_equation(problem: Equation) -> Groups | None:
    """Return the sides of `_ x 6 = 54`, `54 / _ = 9` and their like, turned round or not."""
    whole, made = problem.left, problem.right
    if not isinstance(whole, Operation):
        whole, made = made, whole
    if not isinstance(whole, Operation) or isinstance(made, Operation):
        return None
    left, right = _leaf(whole.left), _leaf(whole.right)
    if isinstance(whole.left, Operation) or isinstance(whole.right, Operation):
        return None
    if whole.sign is Sign.TIMES:
        found = Groups(left, right, _leaf(made))
    elif whole.sign is Sign.OVER:
        found = Groups(_leaf(made), right, left)
    else:
        return None
    blank = [found.one, found.other, found.product].count(None)
    return found if blank == 1 and found.known != 0 else None


def _leaf(side: Expression) -> Number | None:
    return None if isinstance(side, Operation | Blank) else side


def piece_of(step: Step, unsaid: frozenset[str]) -> Piece | None:
    """Return the product or quotient a step tells; None where it tells none of two numbers."""
    whole, made = step.equation.left, step.equation.right
    if not isinstance(whole, Operation) or isinstance(made, Operation):
        return None
    if isinstance(whole.left, Operation | Blank) or isinstance(whole.right, Operation | Blank):
        return None
    left = mark_of(whole.left, "left" not in unsaid)
    right = mark_of(whole.right, "right" not in unsaid)
    end = UNSAID if isinstance(made, Blank) else mark_of(made, "result" not in unsaid)
    if whole.sign is Sign.TIMES:
        product = Mark(left.value * right.value, False) if made is BLANK else end
        return Piece(left, right, product, False)
    if whole.sign is Sign.OVER:
        return Piece(end, right, left, True)
    return None


def placed(piece: Piece, groups: Groups) -> Placed | None:
    """Return where a piece lies in the rectangle of the problem; None where it does not."""
    one, other = piece.one, piece.other
    known = groups.known
    if known is not None:
        if other.value == known:
            return Placed(Cut.ONE, one, other, piece.product, piece.shared)
        if one.value == known and not piece.shared:
            return Placed(Cut.ONE, other, one, piece.product)
        return None
    if piece.shared or groups.one is None or groups.other is None:
        return None
    wide, high = exact(groups.one), exact(groups.other)
    if sorted((one.value, other.value)) == sorted((wide, high)):
        return Placed(Cut.WHOLE, one, other, piece.product)
    if other.value == high:
        return Placed(Cut.ONE, one, other, piece.product)
    if one.value == wide:
        return Placed(Cut.OTHER, other, one, piece.product)
    if one.value == high:
        return Placed(Cut.ONE, other, one, piece.product)
    if other.value == wide:
        return Placed(Cut.OTHER, one, other, piece.product)
    return Placed(Cut.BOTH, one, other, piece.product)
