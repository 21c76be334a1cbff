"""How far a number compared is from one, or from a half: an eighth away, a third missing."""

from collections.abc import Iterator

from waysaid.hearing.draft import Draft
from waysaid.hearing.meaning import Meaning
from waysaid.hearing.reading import Part
from waysaid.hearing.spoken import weights
from waysaid.hearing.spoken.change import replace
from waysaid.hearing.spoken.close import closed
from waysaid.hearing.spoken.frame import Frame, Quantity, Slot
from waysaid.hearing.spoken.item import Item
from waysaid.hearing.spoken.state import State
from waysaid.hearing.spoken.world import World
from waysaid.number import Compare, Exact, Number, Operation, Sign, exact, parts

_MARKS: tuple[Number, ...] = (1, parts(1, 2))
"""What numbers less than one are held against: common practice, no source."""


def apart(state: State, item: Item, world: World) -> Iterator[State]:
    """Yield the states in which a number said is what another lacks, or the next one will be."""
    if not isinstance(world.facts.problem, Compare):
        yield state.and_costs(weights.IGNORED)
        return
    frame = state.frame
    if frame.whole is not None and frame.left is not None and frame.sign is None:
        yield from _lacking(replace(state, frame=Frame()), frame.whole, frame.left, world)
    elif frame.bare is not None and frame.left is not None:
        if state.spoken is not None:
            yield from _lacking(replace(state, frame=Frame()), None, frame.left, world)
        yield _awaiting(state, frame.left)
    elif frame.whole is not None and frame.left is None:
        yield _awaiting(state, frame.whole)
    else:
        for after in closed(state, world):
            yield replace(after, apart=True)
            if after.spoken is not None and _side(after.spoken.value, world) is not None:
                yield _awaiting(after, after.spoken)


def _awaiting(state: State, of: Quantity) -> State:
    return state.framed(Frame(verb=Meaning.APART, left=of, wants=Slot.RIGHT))


def lacks(state: State, said: Quantity, world: World) -> Iterator[State]:
    """Yield the states after the number that the one before it lacks: it is missing an eighth."""
    of = state.frame.left
    yield from _lacking(replace(state, frame=Frame()), of, said, world)


def _lacking(state: State, of: Quantity | None, size: Quantity, world: World) -> Iterator[State]:
    """Yield the state with the step from a number to what it is held against."""
    own = None if of is None else _side(of.value, world)
    if own is None and state.spoken is not None:
        own = _side(state.spoken.value, world)
    sides = list(world.facts.written) if own is None else [own]
    found = [
        (left, True) for side in sides for left in _between(side) if _worth(left) == size.value
    ]
    if not found and own is not None and size.value is not None:
        found = [(Operation(Sign.MINUS, 1, own), False)]
    for left, true in found[:1]:
        yield _held(state, left, size, 0 if true else weights.FALSE)


def _held(state: State, left: Operation, size: Quantity, cost: int) -> State:
    draft = Draft(left, (Part.LEFT, Part.OP), size.span, size.leaf)
    return replace(
        state,
        drafts=(*state.drafts, draft),
        apart=True,
        so=False,
        cost=state.cost + cost,
    )


def _between(side: Number) -> Iterator[Operation]:
    """Yield the differences between a number compared and what it is held against."""
    for mark in _MARKS:
        if exact(mark) > exact(side):
            yield Operation(Sign.MINUS, mark, side)
        elif exact(mark) < exact(side):
            yield Operation(Sign.MINUS, side, mark)


def _worth(left: Operation) -> Exact:
    return exact(exact(left.left) - exact(left.right))  # type: ignore[arg-type]


def _side(value: Exact | None, world: World) -> Number | None:
    """Return the number compared that has the value, as the problem writes it."""
    found = [one for one in world.facts.written if exact(one) == value]
    return found[0] if len(found) == 1 else None
