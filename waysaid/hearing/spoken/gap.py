"""What a number compared lacks to one, or has more than a half: the step of an eighth missing."""

from collections.abc import Iterator
from fractions import Fraction

from waysaid.hearing.draft import Draft
from waysaid.hearing.reading import Part
from waysaid.hearing.spoken import weights
from waysaid.hearing.spoken.frame import Quantity
from waysaid.hearing.spoken.state import State
from waysaid.hearing.spoken.world import World
from waysaid.hearing.worth import worth
from waysaid.number import Compare, Exact, Number, Operation, Order, Sign, exact, parts

MARKS: tuple[Number, ...] = (1, parts(1, 2))
"""What numbers less than one are held against: common practice, no source."""


def missing(state: State, size: Quantity, world: World) -> Iterator[State]:
    """Yield the step of a number alone that one of the numbers compared lacks to one."""
    if not state.apart or not isinstance(world.facts.problem, Compare):
        return
    sides = [one for one in world.facts.written if exact(1 - exact(one)) == size.value]
    if len(sides) == 1:
        held = _held(state, Operation(Sign.MINUS, 1, sides[0]), size, 0)
        yield held
        yield from _each_lacks(held, size, sides[0], world)


def _each_lacks(state: State, size: Quantity, own: Number, world: World) -> Iterator[State]:
    """Yield the state in which the other number lacks one of its parts, too: both are one bit off.

    Only one of the two parts need be named: and an eighth is smaller.
    """
    others = [one for one in world.facts.written if one != own]
    lack = Fraction(exact(1 - exact(others[0]))) if others else Fraction(0)
    if not state.both or lack.numerator != 1 or Fraction(size.value or 0).numerator != 1:
        return
    left = Operation(Sign.MINUS, 1, others[0])
    if any(draft.left == left for draft in state.drafts):
        return
    open_parts = (Part.LEFT, Part.OP, Part.RIGHT)
    draft = Draft(left, open_parts, size.span)
    yield state.stepped(draft, -1, both=False)


def lacking(state: State, of: Quantity | None, size: Quantity, world: World) -> Iterator[State]:
    """Yield the state with the step from a number to what it is held against."""
    own = None if of is None else side_of(of.value, world)
    if own is None and state.spoken is not None:
        own = side_of(state.spoken.value, world)
    sides = list(world.facts.written) if own is None else [own]
    found = [(left, True) for side in sides for left in _between(side) if worth(left) == size.value]
    if not found and own is not None and size.value is not None:
        found = [(Operation(Sign.MINUS, 1, own), False)]
    for left, true in found[:1]:
        yield _held(state, left, size, 0 if true else weights.FALSE)


def _held(state: State, left: Operation, size: Quantity, cost: int) -> State:
    draft = Draft(left, (Part.LEFT, Part.OP), size.span, size.leaf)
    return state.stepped(draft, cost, apart=True)


def _between(side: Number) -> Iterator[Operation]:
    """Yield the differences between a number compared and what it is held against."""
    for mark in MARKS:
        if exact(mark) > exact(side):
            yield Operation(Sign.MINUS, mark, side)
        elif exact(mark) < exact(side):
            yield Operation(Sign.MINUS, side, mark)


def side_of(value: Exact | None, world: World) -> Number | None:
    """Return the number compared that has the value, as the problem writes it."""
    found = [one for one in world.facts.written if exact(one) == value]
    return found[0] if len(found) == 1 else None


def gainsays(state: State, number: Quantity, world: World) -> bool:
    """Tell whether a number compared is not the one that a verdict made the larger."""
    if state.verdict not in (Order.MORE, Order.LESS) or len(world.facts.numbers) != 2:
        return False
    larger, smaller = world.facts.numbers[:: 1 if state.verdict is Order.MORE else -1]
    return number.value == smaller != larger
