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
from waysaid.number import Number, decimal, exact


def place_named(state: State, item: Item, world: World) -> Iterator[State]:
    """Take a place named for its two digits: the tens make eighty, of 58 + 36, is 50 + 30 = 80.

    Of numbers that are not whole, their wholes, or what they have besides.
    """
    frame = state.frame
    named: tuple[Number, ...] = ()
    if item.meaning and world.hop is not None and len(world.facts.numbers) == 2:
        named = () if world.groups else _named(item.meaning, world)
    if not named or not all(named):
        yield state.and_costs(weights.IGNORED if frame.bare is not None and world.sizes else 0)
        return
    yield state.and_costs(weights.UNSAID if world.whole else weights.NEXT)
    left, right = (Quantity(one, item.span, said=False) for one in named)
    pair = Frame(left=left, sign=world.hop, right=right)
    if frame.right is None and frame.left is None and frame.whole is None:
        yield state.framed(pair)
    else:
        for after in closed(state, world):
            yield after.framed(pair)


def _named(meaning: Meaning, world: World) -> tuple[Number, ...]:
    """Return what stands at a place of each number; none where the place means nothing there."""
    size = _NAMED.get(meaning)
    if world.whole:
        return () if size is None else tuple(exact(one * size) for one in digits_at(world, size))
    wholes = tuple(int(one) for one in world.facts.numbers)
    if meaning is Meaning.ONES:
        return wholes
    if meaning is not Meaning.PARTS:
        return ()
    rests = (exact(one - int(one)) for one in world.facts.numbers)
    return tuple(decimal(one) if world.pointed else one for one in rests)


_NAMED = {Meaning.HUNDREDS: 100, Meaning.TENS: 10, Meaning.ONES: 1}
