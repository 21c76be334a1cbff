"""The grammar of shorthand: sides with hops, joined by equals signs into clauses.

`37+3=40+22` is one clause of two sides; `+3 40 +22 62` is three: `+3`, `40 +22` and `62`. Where
two numbers stand side by side, a new clause begins. A multiplication stands alone, as in `3x20`.
"""

from dataclasses import dataclass
from itertools import pairwise

from waysaid.hearing.token import Mark, Token, tokens
from waysaid.number import Expression, Sign, chain

MOST_HOPS = 60
"""The most hops on one side of an equals sign: our choice; nobody says sixty in a breath."""

_BREAKS = (Mark.BREAK, Mark.COLON)


@dataclass(frozen=True, slots=True)
class Said:
    """A number as it stands in the line."""

    value: int
    span: tuple[int, int]


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
        """Return the hops as one expression, from the given left."""
        return chain(left, *((hop.sign, hop.number.value) for hop in self.hops))


@dataclass(frozen=True, slots=True)
class Clause:
    """Sides with an equals sign between them."""

    sides: tuple[Side, ...]

    @property
    def bare(self) -> Said | None:
        """The number, where the clause is a number and nothing else."""
        alone = len(self.sides) == 1 and not self.sides[0].hops
        return self.sides[0].first if alone else None


def clauses(line: str) -> tuple[Clause, ...] | None:
    """Return the clauses of a line; None where the line is not shorthand."""
    cut = tokens(line)
    return None if cut is None else _Grammar(cut).clauses()


class _Grammar:
    def __init__(self, cut: tuple[Token, ...]) -> None:
        self.cut = cut
        self.place = 0

    def clauses(self) -> tuple[Clause, ...] | None:
        found = []
        while self._skipped_breaks().mark is not Mark.END:
            clause = self._clause()
            if clause is None:
                return None
            found.append(clause)
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

    def _clause(self) -> Clause | None:
        sides = [self._side()]
        while self._now().mark is Mark.EQUALS:
            self.place += 1
            if self._now().mark is Mark.BLANK:
                self.place += 1
                break
            if self._now().mark in (Mark.END, *_BREAKS):
                break
            if self._now().mark is not Mark.NUMBER:
                return None
            sides.append(self._side())
        kept = tuple(side for side in sides if side is not None)
        return Clause(kept) if len(kept) == len(sides) and _makes_sense(kept) else None

    def _side(self) -> Side | None:
        first = None
        if self._now().mark is Mark.NUMBER:
            token = self._next()
            first = Said(token.value, token.span)
            self._attach()
        hops: list[Hop] = []
        while self._now().mark is Mark.SIGN:
            sign = self._next()
            number = self._next() if self._now().mark is Mark.NUMBER else None
            if number is None or len(hops) == MOST_HOPS:
                return None
            said = Said(number.value, number.span)
            hops.append(Hop(sign.sign, said, sign.span[0], not (sign.gap or number.gap)))
        times = any(hop.sign is Sign.TIMES for hop in hops)
        if times and not (first and len(hops) == 1):
            return None
        return Side(first, tuple(hops)) if first or hops else None

    def _attach(self) -> None:
        """Step over a break between a number and the sign that goes on from it: `40, +22`."""
        place = self.place
        while self._now().mark is Mark.BREAK:
            self.place += 1
        if self._now().mark is not Mark.SIGN:
            self.place = place


def _makes_sense(sides: tuple[Side, ...]) -> bool:
    """Refuse a number said to equal a number: 40 = 40."""
    return all(side.hops or after.hops for side, after in pairwise(sides))
