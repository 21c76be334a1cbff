"""The grammar of shorthand: sides with hops, joined by equals signs into clauses.

`37+3=40+22` is one clause of two sides; `+3 40 +22 62` is three: `+3`, `40 +22` and `62`. Where
two numbers stand side by side, a new clause begins. `8 x ? = 56` is open: something in it is yet
to be found. `5 r 1`, `>` and `true` are answers that are no number.
"""

from dataclasses import dataclass
from itertools import pairwise

from waysaid.hearing.token import Mark, Spelling, Token, tokens
from waysaid.number import (
    BLANK,
    Equation,
    Exact,
    Expression,
    Number,
    Operation,
    Order,
    Sign,
    exact,
)
from waysaid.number import Said as AnySaid

MOST_HOPS = 60
"""The most hops on one side of an equals sign: our choice; nobody says sixty in a breath."""

_BREAKS = (Mark.BREAK, Mark.COLON)
_SUMS = (Sign.PLUS, Sign.MINUS)


@dataclass(frozen=True, slots=True)
class Said:
    """A number as it stands in the line."""

    leaf: Number
    span: tuple[int, int]

    @property
    def value(self) -> Exact:
        """What the number is worth."""
        return exact(self.leaf)


@dataclass(frozen=True, slots=True)
class Hop:
    """A sign and a number; `tight` where nothing parts the sign from both numbers, as in `50+7`."""

    sign: Sign
    number: Said
    start: int
    tight: bool


@dataclass(frozen=True, slots=True)
class Side:
    """A number, hops from it, or both. Never neither."""

    first: Said | None
    hops: tuple[Hop, ...]

    def whole(self, left: Expression) -> Expression:
        """Return the hops as one expression, from the given left; products bind before sums."""
        total: Expression | None = None
        joint, term = Sign.PLUS, left
        for hop in self.hops:
            if hop.sign in _SUMS:
                total = term if total is None else Operation(joint, total, term)
                joint, term = hop.sign, hop.number.leaf
            else:
                term = Operation(hop.sign, term, hop.number.leaf)
        return term if total is None else Operation(joint, total, term)

    @property
    def mixed(self) -> bool:
        """Whether a product comes behind a sum, as in `10x6+4x6`, so that it must bind first."""
        signs = [hop.sign in _SUMS for hop in self.hops]
        return any(before and not after for before, after in pairwise(signs))


@dataclass(frozen=True, slots=True)
class Clause:
    """Sides with an equals sign between them."""

    sides: tuple[Side, ...]

    @property
    def bare(self) -> Said | None:
        """The number, where the clause is a number and nothing else."""
        alone = len(self.sides) == 1 and not self.sides[0].hops
        return self.sides[0].first if alone else None


@dataclass(frozen=True, slots=True)
class Open:
    """An equation with something yet to be found: `8 x ? = 56`."""

    equation: Equation
    span: tuple[int, int]
    bare: None = None


@dataclass(frozen=True, slots=True)
class Answered:
    """An answer that is no number, and what it was said of.

    That is nothing, the side that `5 r 1` was said to equal, or the two sides that `>` stands
    between.
    """

    said: AnySaid
    of: tuple[Side, ...] = ()
    bare: None = None


Piece = Clause | Open | Answered


def clauses(line: str, spelling: Spelling) -> tuple[Piece, ...] | None:
    """Return the clauses of a line; None where the line is not shorthand."""
    cut = tokens(line, spelling)
    return None if cut is None else _Grammar(cut).clauses()


class _Grammar:
    def __init__(self, cut: tuple[Token, ...]) -> None:
        self.cut = cut
        self.place = 0

    def clauses(self) -> tuple[Piece, ...] | None:
        found: list[Piece] = []
        while self._skipped_breaks().mark is not Mark.END:
            piece = self._open() or self._clause()
            if piece is None:
                return None
            found.append(piece)
        return tuple(found)

    def _now(self) -> Token:
        return self.cut[self.place]

    def _next(self) -> Token:
        token = self._now()
        self.place += 1
        return token

    def _skipped_breaks(self) -> Token:
        while self._now().mark in _BREAKS:
            self.place += 1
        return self._now()

    def _open(self) -> Open | None:
        """Take `8 x ? = 56`; return None, and take nothing, where nothing like it comes."""
        ahead = self.cut[self.place : self.place + 5]
        marks = [token.mark for token in ahead]
        if marks.count(Mark.BLANK) != 1 or len(ahead) < 5:
            return None
        filled = [Mark.NUMBER if mark is Mark.BLANK else mark for mark in marks]
        turned = filled[:2] == [Mark.NUMBER, Mark.EQUALS]
        op = ahead[2:] if turned else ahead[:3]
        other = ahead[0] if turned else ahead[4]
        joint = ahead[1] if turned else ahead[3]
        shape = [Mark.NUMBER, Mark.SIGN, Mark.NUMBER]
        blank = other.mark is Mark.BLANK
        if blank or joint.mark is not Mark.EQUALS or other.mark is not Mark.NUMBER:
            return None
        if (filled[2:] if turned else filled[:3]) != shape:
            return None
        self.place += 5
        left, right = (BLANK if one.mark is Mark.BLANK else one.value for one in (op[0], op[2]))
        worked = Operation(op[1].sign, left, right)
        sides = (other.value, worked) if turned else (worked, other.value)
        return Open(Equation(*sides), (ahead[0].span[0], ahead[4].span[1]))

    def _clause(self) -> Clause | Answered | None:
        if self._now().mark is Mark.ANSWER:
            return Answered(self._next().said)
        sides = [self._side()]
        if self._now().mark is Mark.ANSWER and isinstance(self._now().said, Order):
            return self._ordered(sides[0])
        while self._now().mark is Mark.EQUALS:
            self.place += 1
            if self._now().mark is Mark.BLANK:
                self.place += 1
                break
            if self._now().mark is Mark.ANSWER and len(sides) == 1 and sides[0]:
                return Answered(self._next().said, (sides[0],))
            if self._now().mark in (Mark.END, *_BREAKS):
                break
            if self._now().mark is not Mark.NUMBER:
                return None
            sides.append(self._side())
        kept = tuple(side for side in sides if side is not None)
        return Clause(kept) if len(kept) == len(sides) and _makes_sense(kept) else None

    def _ordered(self, left: Side | None) -> Answered | None:
        """Take the `> 5/8` of `3/4 > 5/8`, or an order said behind a number: `3/4 more`."""
        said = self._next().said
        if left is None:
            return None
        if self._now().mark is not Mark.NUMBER:
            return Answered(said, ())
        right = self._side()
        return Answered(said, (left, right)) if right else None

    def _side(self) -> Side | None:
        first = None
        if self._now().mark is Mark.NUMBER:
            token = self._next()
            first = Said(token.value, token.span)
            self._attach()
            if self._again(first):
                return Side(first, ())
        hops: list[Hop] = []
        while self._now().mark is Mark.SIGN:
            sign = self._next()
            number = self._next() if self._now().mark is Mark.NUMBER else None
            if number is None or len(hops) == MOST_HOPS:
                return None
            if sign.sign is Sign.OVER and exact(number.value) == 0:
                return None
            said = Said(number.value, number.span)
            hops.append(Hop(sign.sign, said, sign.span[0], not (sign.gap or number.gap)))
        return Side(first, tuple(hops)) if first or hops else None

    def _again(self, first: Said) -> bool:
        """Tell whether a number below zero is said again to go on from: `= -5, -5 + 2`."""
        ahead = self.cut[self.place : self.place + 3]
        signs = [token.sign for token in ahead if token.mark is Mark.SIGN]
        if first.value >= 0 or len(ahead) < 3 or len(signs) < 2:
            return False
        number = ahead[1]
        number_again = number.mark is Mark.NUMBER and exact(number.value) == -first.value
        return signs[0] is Sign.MINUS and number_again

    def _attach(self) -> None:
        """Step over a break between a number and the sign that goes on from it: `40, +22`."""
        place = self.place
        while self._now().mark is Mark.BREAK:
            self.place += 1
        if self._now().mark is not Mark.SIGN:
            self.place = place


def _makes_sense(sides: tuple[Side, ...]) -> bool:
    """Refuse a whole number said to equal a whole number: 40 = 40."""
    return all(side.hops or after.hops or _parts(side, after) for side, after in pairwise(sides))


def _parts(side: Side, after: Side) -> bool:
    """Tell whether a number is written another way, 3/4 = 6/8, or a part is worth one, 10% = 8."""
    found = [one.first.leaf for one in (side, after) if one.first]
    return any(not isinstance(leaf, int) for leaf in found)
