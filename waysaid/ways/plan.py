"""How a way is written down before its steps are built.

A plan is a slug for the variant and its moves. A move says what is done, never what comes out: the
result is worked out when the step is built, so that no step can be false.
"""

from waysaid.number import Equation, Expression, Sign, chain, value_of
from waysaid.ways.step import Kind, Step

PLUS = Sign.PLUS
MINUS = Sign.MINUS

Move = tuple[Kind, int, Sign, int]
Plan = tuple[str, tuple[Move | Step, ...]]


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


def joined(kind: Kind, *parts: int) -> Move | Step:
    """Return the step that adds two parts, or more at once: 2 + 20 + 4 = 26."""
    if len(parts) == 2:
        return (kind, parts[0], PLUS, parts[1])
    whole: Expression = chain(parts[0], *((PLUS, part) for part in parts[1:]))
    return Step(kind, Equation(whole, value_of(whole)))


def gathered(*hopped: int) -> tuple[Move | Step, ...]:
    """Return the step that adds the hops up, or none for a single hop."""
    return (joined(Kind.GATHER, *hopped),) if len(hopped) > 1 else ()


def same(before: tuple[int, int], after: tuple[int, int]) -> Step:
    """Return the step that says two differences are one: 62 - 25 = 67 - 30."""
    sides = (chain(whole, (MINUS, part)) for whole, part in (before, after))
    return Step(Kind.SHIFT, Equation(*sides))
