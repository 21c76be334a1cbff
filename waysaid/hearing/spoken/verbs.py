"""What a verb does to the step being said: add, take, give, multiply, share."""

from collections.abc import Iterator

from waysaid.hearing.meaning import Meaning
from waysaid.hearing.spoken import weights
from waysaid.hearing.spoken.change import replace
from waysaid.hearing.spoken.close import closed
from waysaid.hearing.spoken.frame import Frame, Slot
from waysaid.hearing.spoken.item import Item
from waysaid.hearing.spoken.moved import pair_of
from waysaid.hearing.spoken.part import base_value, is_part
from waysaid.hearing.spoken.sized import groups_in
from waysaid.hearing.spoken.state import State
from waysaid.hearing.spoken.world import World
from waysaid.number import Sign


def verb(state: State, item: Item, world: World) -> Iterator[State]:
    """Add, take, give: behind a number alone it may be a sign; else its number comes."""
    sign = Sign.MINUS if item.meaning is Meaning.TAKE else Sign.PLUS
    frame = state.frame
    gives = item.meaning is Meaning.GIVE and not world.groups
    if frame.verb is Meaning.EACH:
        yield state
    if frame.left and frame.right is None and frame.sign and frame.wants is Slot.RIGHT:
        own = frame.left.value in world.facts.numbers and isinstance(frame.left.leaf, int)
        if own and frame.whole is None and not frame.reach and item.meaning is not Meaning.GIVE:
            yield state.framed(replace(frame, sign=sign), 1)
    if frame.bare is not None and frame.left is not None:
        yield state.framed(replace(frame, sign=sign, wants=Slot.RIGHT), 1)
        if gives and frame.left.value in world.facts.numbers:
            giver = Frame(Meaning.GIVE, frame.left, Sign.MINUS, wants=Slot.RIGHT)
            yield state.framed(giver)
        elif gives:
            yield state.framed(Frame(Meaning.GIVE, sign=Sign.PLUS, right=frame.left))
    for after in closed(state, world):
        yield after.framed(Frame(verb=item.meaning, sign=sign, wants=Slot.RIGHT))


_SCALES = {Meaning.MULTIPLY: Sign.TIMES, Meaning.SHARE: Sign.OVER}


def scaling(state: State, item: Item, world: World) -> Iterator[State]:
    """Multiply, share: its first number comes, then the other behind `by`.

    Those who share may be named before it: six kids share them. A part taken of a number is not
    shared: ten percent, so I divided.
    """
    frame = state.frame
    share = item.meaning is Meaning.SHARE and Sign.OVER in world.signs
    if share and frame.bare is not None and frame.bare.value == world.facts.numbers[-1]:
        yield state.framed(Frame())
    behind = frame.bare is not None and not (is_part(frame.bare) and world.base is not None)
    if behind and item.meaning is not None:
        yield state.framed(replace(frame, sign=_SCALES[item.meaning], wants=Slot.RIGHT), 1)
    for after in closed(state, world):
        yield after.framed(Frame(verb=item.meaning, wants=Slot.LEFT))


def by(state: State, item: Item, world: World) -> Iterator[State]:
    """Behind what is multiplied or shared: by how many."""
    frame = state.frame
    if frame.left is not None and frame.verb in _SCALES:
        yield state.framed(replace(frame, sign=_SCALES[frame.verb], wants=Slot.RIGHT))
    elif frame.left is not None and frame.verb is Meaning.SPLIT and _shares(world):
        yield state
        yield state.framed(Frame(left=frame.left, sign=Sign.OVER, wants=Slot.RIGHT))
    else:
        yield from groups_in(state, world)
        yield state
        if frame.bare is not None and frame.bare.value == base_value(world):
            yield state.framed(replace(frame, sign=Sign.OVER, wants=Slot.RIGHT), weights.NEXT)
        last = pair_of(state.drafts[-1]) if state.drafts and frame.empty else None
        if last is not None and last[1] in _SCALES.values():
            more = 0 if last[1] is Sign.TIMES else weights.NO_RESULT
            yield state.framed(Frame(sign=last[1], wants=Slot.RIGHT), more)


def _shares(world: World) -> bool:
    """Tell whether a number may be cut into equal parts: it is shared, or some parts are taken."""
    return Sign.OVER in world.signs or world.base is not None or (world.groups and world.parted)
