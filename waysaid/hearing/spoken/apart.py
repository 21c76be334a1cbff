"""How far a number compared is from one, or from a half: an eighth away, a third missing."""

from collections.abc import Iterator

from waysaid.hearing.meaning import Meaning
from waysaid.hearing.spoken import weights
from waysaid.hearing.spoken.change import replace
from waysaid.hearing.spoken.close import closed
from waysaid.hearing.spoken.frame import Frame, Quantity, Slot
from waysaid.hearing.spoken.gap import lacking, side_of
from waysaid.hearing.spoken.item import Item
from waysaid.hearing.spoken.state import State
from waysaid.hearing.spoken.world import World
from waysaid.number import Compare, Sign


def apart(state: State, item: Item, world: World) -> Iterator[State]:
    """Yield the states in which a number said is what another lacks, or the next one will be.

    What a number of a sum lacks is put on it: a tres cuartos le falta un cuarto.
    """
    frame = state.frame
    if not isinstance(world.facts.problem, Compare):
        yield state.and_costs(weights.IGNORED)
        lacks_more = frame.bare is not None and frame.bare.value in world.facts.numbers
        if lacks_more and world.hop is Sign.PLUS:
            yield state.framed(replace(frame, sign=Sign.PLUS, wants=Slot.RIGHT), weights.NEXT)
        return
    if frame.whole is not None and frame.left is not None and frame.sign is None:
        yield from lacking(replace(state, frame=Frame()), frame.whole, frame.left, world)
    elif frame.bare is not None and frame.left is not None:
        if state.spoken is not None:
            yield from lacking(replace(state, frame=Frame()), None, frame.left, world)
        yield _awaiting(state, frame.left)
    elif frame.whole is not None and frame.left is None:
        yield _awaiting(state, frame.whole)
    else:
        for after in closed(state, world):
            yield replace(after, apart=True)
            if after.spoken is not None and side_of(after.spoken.value, world) is not None:
                yield _awaiting(after, after.spoken)


def _awaiting(state: State, of: Quantity) -> State:
    return state.framed(Frame(verb=Meaning.APART, left=of, wants=Slot.RIGHT))


def lacks(state: State, said: Quantity, world: World) -> Iterator[State]:
    """Yield the states after the number that the one before it lacks: it is missing an eighth."""
    of = state.frame.left
    yield from lacking(replace(state, frame=Frame()), of, said, world)
