"""A zero put behind a number: three fours is twelve, and with the zero that's one twenty."""

from collections.abc import Iterator

from waysaid.hearing.meaning import Meaning
from waysaid.hearing.spoken import weights
from waysaid.hearing.spoken.change import replace
from waysaid.hearing.spoken.close import closed
from waysaid.hearing.spoken.frame import Frame, Quantity, Slot
from waysaid.hearing.spoken.item import Item
from waysaid.hearing.spoken.state import State
from waysaid.hearing.spoken.world import World
from waysaid.number import Sign

_TIMES = (10, 100, 1000)
"""How many times as large one zero makes a number, or two, or three."""


def zeros(state: State, item: Item, world: World) -> Iterator[State]:
    """Yield the product by ten of what stands; by more where the number that comes bears it out.

    One zero that is put on need not be followed by what it makes; of several it must tell how many.
    """
    for after in closed(state, world):
        yield after
        here = after.standing
        if here is None or not isinstance(here.leaf, int) or not world.groups or world.pointed:
            continue
        for times in _TIMES if after.drafts else ():
            left, right = replace(here, said=False), Quantity(times, item.span)
            frame = Frame(left=left, sign=Sign.TIMES, right=right)
            one = item.meaning is Meaning.ZERO
            if one and times == _TIMES[0]:
                yield after.framed(frame, -weights.UNSAID)
            else:
                awaited = replace(frame, wants=Slot.RESULT)
                yield after.framed(awaited, 0 if one else -weights.ARRIVED)
