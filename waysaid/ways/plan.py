"""How a way is written down before its steps are built.

A plan is a slug for the variant and its moves. A move says what is done, never what comes out: the
result is worked out when the step is built, so that no step can be false.
"""

from collections.abc import Iterator

from waysaid.number import Equation, Sign, chain, value_of
from waysaid.ways.step import Kind, Step, step

PLUS = Sign.PLUS
MINUS = Sign.MINUS
TIMES = Sign.TIMES
OVER = Sign.OVER

AT_ONCE = 4
"""The most parts a child would add up in one breath; our choice."""

Move = tuple[Kind, int, Sign, int]
Moves = tuple[Move | Step, ...]
Plan = tuple[str, Moves]
SeenPlan = tuple[str, Moves, tuple[tuple[int, ...], ...]]
"""A plan for a quick image, with the groups of dots that it was seen as."""


def plainly(move: Move | Step, shape: object) -> Step:
    """Return the step of a move with its numbers as they are planned."""
    return move if isinstance(move, Step) else step(*move)


def hops(start: int, *changes: int, kind: Kind = Kind.JUMP) -> tuple[Move, ...]:
    """Return the moves on (or back, where a change is negative) from a number, one after another.

    A change of 0 is no move.
    """
    moves: list[Move] = []
    for change in changes:
        if change > 0:
            moves.append((kind, start, PLUS, change))
        elif change:
            moves.append((kind, start, MINUS, -change))
        start += change
    return tuple(moves)


def counts(start: int, sign: Sign, size: int, times: int) -> Moves:
    """Return so many counts of one size, on or back from a number."""
    change = size if sign is PLUS else -size
    return hops(start, *([change] * times), kind=Kind.COUNT)


def joined(kind: Kind, *parts: int) -> Move | Step:
    """Return the step that adds two parts, or more at once: 2 + 20 + 4 = 26.

    A part below 0 is taken away; the first is not below 0.
    """
    first, *rest = ((PLUS if part >= 0 else MINUS, abs(part)) for part in parts)
    if len(rest) == 1:
        return (kind, first[1], *rest[0])
    whole = chain(first[1], *rest)
    return Step(kind, Equation(whole, value_of(whole)))


def summed(kind: Kind, *parts: int) -> Iterator[tuple[str, Moves]]:
    """Yield the ways to add parts up, each with a slug: all at once, or one after another."""
    if len(parts) > 1:
        if len(parts) <= AT_ONCE:
            yield "", (joined(kind, *parts),)
        if len(parts) > 2:
            yield "-in-turn", hops(*parts, kind=kind)


def gathered(*hopped: int) -> Moves:
    """Return the step that adds the hops up, or none for a single hop."""
    return (joined(Kind.GATHER, *hopped),) if len(hopped) > 1 else ()


def same(before: tuple[int, int], after: tuple[int, int]) -> Step:
    """Return the step that says two differences are one: 62 - 25 = 67 - 30."""
    return _alike(Kind.SHIFT, MINUS, before, after)


def scaled(sign: Sign, before: tuple[int, int], after: tuple[int, int]) -> Step:
    """Return the step that says two products, or two quotients, are one: 16 x 5 = 8 x 10."""
    return _alike(Kind.SCALE, sign, before, after)


def _alike(kind: Kind, sign: Sign, before: tuple[int, int], after: tuple[int, int]) -> Step:
    sides = (chain(one, (sign, other)) for one, other in (before, after))
    return Step(kind, Equation(*sides))
