"""Places named for their digits: the tens make eighty, the ones fourteen."""

from collections.abc import Iterator

from waysaid.hearing.meaning import Meaning
from waysaid.hearing.spoken import weights
from waysaid.hearing.spoken.close import closed
from waysaid.hearing.spoken.frame import Frame, Quantity
from waysaid.hearing.spoken.item import Item
from waysaid.hearing.spoken.places import digits_at
from waysaid.hearing.spoken.state import State
from waysaid.hearing.spoken.world import World
from waysaid.number import exact


def place_named(state: State, item: Item, world: World) -> Iterator[State]:
    """Take a place named for its two digits: the tens make eighty, of 58 + 36, is 50 + 30 = 80."""
    frame, size = state.frame, _NAMED.get(item.meaning) if item.meaning else None
    two = size is not None and world.hop is not None and len(world.facts.numbers) == 2
    digits = digits_at(world, size) if two and size and not world.groups else ()
    if size is None or not digits or not all(digits):
        yield state
        return
    yield state.and_costs(weights.UNSAID)
    left, right = (Quantity(exact(one * size), item.span, said=False) for one in digits)
    pair = Frame(left=left, sign=world.hop, right=right)
    if frame.right is None and frame.left is None and frame.whole is None:
        yield state.framed(pair)
    else:
        for after in closed(state, world):
            yield after.framed(pair)


_NAMED = {Meaning.HUNDREDS: 100, Meaning.TENS: 10, Meaning.ONES: 1}
