"""Hops: on and back, more and less, to a number and off one."""

from collections.abc import Iterator

from waysaid.hearing.meaning import Meaning
from waysaid.hearing.spoken import weights
from waysaid.hearing.spoken.change import replace
from waysaid.hearing.spoken.close import closed
from waysaid.hearing.spoken.frame import HOPS, Frame, Quantity, Slot
from waysaid.hearing.spoken.item import Item
from waysaid.hearing.spoken.meant import below
from waysaid.hearing.spoken.shares import shared_alone
from waysaid.hearing.spoken.sharing import all_that_is_left
from waysaid.hearing.spoken.sized import rest_grouped
from waysaid.hearing.spoken.state import State
from waysaid.hearing.spoken.world import World
from waysaid.number import BLANK, Image, Sign, leaves, sides


def go(state: State, item: Item, world: World) -> Iterator[State]:
    """Begin a hop: on in a sum, back in a difference, unless a word says which.

    Or how often a number goes into another: four into nine goes twice.
    """
    if state.frame.paired and state.frame.sign is Sign.OVER and state.frame.result is None:
        yield state.framed(replace(state.frame, wants=Slot.RESULT))
    if state.frame.bare is not None:
        for sign in HOPS:
            left = state.frame.left
            yield state.framed(Frame(Meaning.GO, left=left, sign=sign, wants=Slot.RIGHT), 1)
    for after in closed(state, world):
        for sign in HOPS:
            hop = Frame(verb=Meaning.GO, sign=sign, wants=Slot.RIGHT)
            more = 0 if sign in world.signs or world.groups else 1
            yield after.framed(hop, more)
        yield after.and_costs(1)


def on_or_back(state: State, item: Item, world: World) -> Iterator[State]:
    """On or back: which way the hop goes."""
    sign = Sign.MINUS if item.meaning is Meaning.BACK else Sign.PLUS
    frame = state.frame
    if frame.verb is Meaning.GIVE and frame.paired and frame.left is None and sign is Sign.MINUS:
        for back in HOPS:
            more = 0 if back is not world.hop else 1
            yield state.framed(Frame(Meaning.GO, sign=back, right=frame.right), more)
        return
    if frame.verb in (Meaning.GO, Meaning.ADD, Meaning.TAKE, Meaning.ROUND, Meaning.COUNT):
        if frame.sign in (None, sign) or frame.verb in (Meaning.ADD, Meaning.TAKE):
            yield state
        else:
            yield state.and_costs(weights.IGNORED)
    elif frame.bare is not None or (frame.empty and state.standing is None):
        yield state
        yield from _behind(state, sign, world)
    elif frame.paired or frame.empty:
        for after in closed(state, world):
            yield after.framed(Frame(verb=Meaning.GO, sign=sign, wants=Slot.RIGHT))
        yield state
    else:
        yield state


def more(state: State, item: Item, world: World) -> Iterator[State]:
    """`one more`, `two less`: a hop whose size was just said."""
    sign = Sign.PLUS if item.meaning is Meaning.MORE else Sign.MINUS
    other = Sign.MINUS if sign is Sign.PLUS else Sign.PLUS
    frame = state.frame
    if frame.bare is not None:
        yield from _behind(state, sign, world)
        if frame.left is not None and (
            rest_grouped(state, frame.left, world) is not None
            or all_that_is_left(state, frame.left, world)
            or any(shared_alone(state, frame.left, world))
        ):
            yield state
        than = Frame(sign=sign, right=frame.left, wants=Slot.LEFT)
        yield state.framed(than, 1)
        if other in world.signs or state.drafts:
            for turned in _behind(state, other, world):
                yield turned.and_costs(1 if state.drafts else weights.UNSAID)
        yield state.and_costs(weights.IGNORED)
    elif frame.whole is not None and frame.left is not None and frame.sign is None:
        yield from _compared(state, sign)
    else:
        under = below(state) if sign is Sign.MINUS else None
        if under is not None:
            yield under
        if frame.verb in (Meaning.ADD, Meaning.TAKE) and frame.wants is Slot.RIGHT:
            yield state.framed(Frame())
        gainsaid = sign is Sign.MINUS and frame.sign is Sign.PLUS and frame.wants is Slot.RIGHT
        yield state.and_costs(weights.IGNORED if gainsaid else 0)
        if sign is Sign.MINUS or state.frame.empty:
            for after in closed(state, world):
                yield after.framed(Frame(sign=sign, wants=Slot.RIGHT), 1)


def _compared(state: State, sign: Sign) -> Iterator[State]:
    """`Five is one more than four`; or `the six has one less`, and what that comes to."""
    frame = state.frame
    hop = Frame(sign=sign, right=frame.left, result=frame.whole, wants=Slot.LEFT)
    yield state.framed(hop)
    yield state.framed(Frame(left=frame.whole, sign=sign, right=frame.left))


def _behind(state: State, sign: Sign, world: World) -> Iterator[State]:
    size = state.frame.left
    if size is not None:
        yield state.framed(Frame(sign=sign, right=size))


def to(state: State, item: Item, world: World) -> Iterator[State]:
    """To what a number is put; or up, or down, to where a hop ends."""
    frame = state.frame
    if frame.verb is Meaning.GIVE and frame.paired and frame.left and frame.sign is Sign.MINUS:
        for after in closed(state, world):
            taker = Frame(Meaning.GIVE, sign=Sign.PLUS, right=frame.right, wants=Slot.LEFT)
            yield after.framed(taker, -weights.HANDED)
    elif (
        frame.verb in (Meaning.ADD, Meaning.GIVE, Meaning.TAKE) and frame.paired and not frame.left
    ):
        yield state.framed(replace(frame, wants=Slot.LEFT))
        yield state.framed(replace(frame, wants=Slot.RESULT), 1)
    elif frame.sign is not None and frame.wants is Slot.RIGHT:
        yield _reaching(state, frame.left, frame.sign)
    elif frame.paired:
        yield state.framed(replace(frame, wants=Slot.RESULT))
    elif frame.bare is not None or (frame.empty and state.standing is not None):
        if frame.left is not None and not isinstance(frame.left.leaf, int):
            yield state.framed(Frame(whole=frame.left, wants=Slot.RESULT))
        if isinstance(world.facts.problem, Image) and frame.left is not None:
            yield state.framed(Frame(sign=Sign.MINUS, right=frame.left, wants=Slot.LEFT))
        for sign in HOPS:
            yield _reaching(state, frame.left, sign)
        yield state.and_costs(1)
    else:
        yield state


def turned_into(state: State, item: Item, world: World) -> Iterator[State]:
    """Begin what a number of the problem is turned into: the thirty eight, I made it forty."""
    left = state.frame.bare
    if left is None or left.value not in world.facts.numbers or world.groups or not world.whole:
        return
    for sign in HOPS:
        yield _reaching(state, left, sign).and_costs(-weights.POINTED)


def _reaching(state: State, left: Quantity | None, sign: Sign) -> State:
    """Begin a hop that is told by where it ends."""
    return state.framed(Frame(left=left, sign=sign, reach=True, wants=Slot.RESULT))


def off(state: State, item: Item, world: World) -> Iterator[State]:
    """Off a number; or where a hop starts."""
    frame = state.frame
    yield from _what_stands(state, Meaning.TAKE)
    if frame.verb in (Meaning.TAKE, Meaning.GO) and frame.paired and frame.left is None:
        yield state.framed(replace(frame, wants=Slot.LEFT))
    elif frame.verb is Meaning.GIVE and frame.paired and frame.left is None:
        off = replace(frame, sign=Sign.MINUS, wants=Slot.LEFT)
        yield state.framed(off)
    elif frame.verb is Meaning.ADD and frame.paired and frame.left is None:
        yield state.framed(replace(frame, verb=Meaning.FROM, wants=Slot.NONE))
        yield state.and_costs(1)
    elif frame.verb in (Meaning.GIVE, Meaning.ADD) and frame.paired:
        for after in closed(state, world):
            giver = Frame(sign=Sign.MINUS, right=frame.right, wants=Slot.LEFT)
            yield after.framed(giver, -weights.HANDED)
    elif frame.whole is not None and frame.left is not None and frame.sign is None:
        yield state
        yield from _received(state, world)
    elif frame.bare is not None:
        off = Frame(sign=Sign.MINUS, right=frame.left, wants=Slot.LEFT)
        yield state.framed(off)
        yield state.framed(Frame(result=frame.left, wants=Slot.LEFT), 1)
        yield state.and_costs(1)
    else:
        yield state


def _what_stands(state: State, verb: Meaning) -> Iterator[State]:
    """Yield the hop by what stands, named inside the verb alone: se lo quito a setenta."""
    frame, stands = state.frame, state.standing
    if frame.verb is not verb or frame.wants is not Slot.RIGHT or not state.drafts or frame.left:
        return
    if stands is not None and state.latest is None:
        right = replace(stands, said=False)
        yield state.framed(replace(frame, right=right, wants=Slot.LEFT), weights.NEXT)


def _received(state: State, world: World) -> Iterator[State]:
    """Yield what a number got from another: the seven got one from the nine."""
    frame, size = state.frame, state.frame.left
    full = (side for side in sides(world.facts.problem) if BLANK not in leaves(side))
    own = {number for side in full for number in leaves(side)}
    if frame.whole is None or frame.whole.value not in own or world.groups:
        return
    for after in closed(state.framed(Frame(left=frame.whole, sign=Sign.PLUS, right=size)), world):
        giver = Frame(Meaning.GIVE, sign=Sign.MINUS, right=size, wants=Slot.LEFT)
        yield after.framed(giver, -weights.HANDED)


def onto(state: State, item: Item, world: World) -> Iterator[State]:
    """Put a number on another: the three with the seven."""
    frame = state.frame
    yield from _what_stands(state, Meaning.ADD)
    if frame.verb in (Meaning.ADD, Meaning.GIVE) and frame.paired and frame.left is None:
        yield state.framed(replace(frame, wants=Slot.LEFT))
    elif frame.bare is not None:
        yield state.framed(replace(frame, sign=Sign.PLUS, wants=Slot.RIGHT), 1)
    else:
        yield state
