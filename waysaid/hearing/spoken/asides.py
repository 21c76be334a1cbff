"""What is said beside the work: that it is all, that a fact was known, that no way can be told."""

from collections.abc import Iterator

from waysaid.hearing.spoken import weights
from waysaid.hearing.spoken.change import replace
from waysaid.hearing.spoken.close import closed
from waysaid.hearing.spoken.item import Item
from waysaid.hearing.spoken.state import State
from waysaid.hearing.spoken.world import World


def done(state: State, item: Item, world: World) -> Iterator[State]:
    """Close what is being said; that it is all tells nothing where more is said after it."""
    for after in closed(state, world):
        yield after.and_costs(weights.NEXT)


def vague(state: State, item: Item, world: World) -> Iterator[State]:
    """Tell only the beginning of the number just said: sixty something."""
    if state.frame.bare is not None:
        yield from closed(state, world)


def knew(state: State, item: Item, world: World) -> Iterator[State]:
    """Take a fact as known; a table that is named by its number may come: I know my twelves."""
    if state.frame.bare is None:
        yield replace(state, knew=True)
    else:
        for after in closed(state, world):
            yield replace(after, knew=True)


def unsure(state: State, item: Item, world: World) -> Iterator[State]:
    """Take it that no way can be told."""
    yield replace(state, unsure=True)
