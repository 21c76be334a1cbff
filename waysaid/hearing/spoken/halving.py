"""Half and double as verbs: of what is named, of what stands, of both numbers, and once more."""

from collections.abc import Iterator

from waysaid.hearing.meaning import Meaning
from waysaid.hearing.spoken import weights
from waysaid.hearing.spoken.change import replace
from waysaid.hearing.spoken.close import closed
from waysaid.hearing.spoken.frame import Frame, Quantity, Slot
from waysaid.hearing.spoken.item import Item
from waysaid.hearing.spoken.refer import both_by_two
from waysaid.hearing.spoken.scale import by_two, unnamed
from waysaid.hearing.spoken.state import State
from waysaid.hearing.spoken.world import World
from waysaid.number import Compare, Operation, Sign


def unnamed_scaled(state: State, item: Item, world: World) -> Iterator[State]:
    """Half, or double, of what is not named: what stands, or a number of the problem."""
    frame = state.frame
    if frame.left is not None:
        yield state.framed(replace(frame, wants=Slot.RESULT))
        return
    for left, odd in unnamed(state, world, item.span):
        scaled = by_two(frame.verb is Meaning.HALF, left, world)
        yield state.framed(replace(scaled, wants=Slot.RESULT), odd)


def scale_verb(state: State, item: Item, world: World) -> Iterator[State]:
    """Half or double: of both numbers or the one before, where named; else of what comes.

    A number that it is to be put on is kept: eight and half of eight.
    """
    halved = item.meaning is Meaning.HALF
    if halved:
        yield from half_of_half(state, item, world)
    if state.both and not state.drafts and state.frame.empty:
        yield both_by_two(state, item, world, halved=halved)
    whole = state.frame.whole
    if whole is not None and isinstance(whole.leaf, int) and state.frame.left is None:
        yield state.framed(Frame(verb=item.meaning, result=whole, wants=Slot.LEFT), weights.NEXT)
    if state.frame.bare is not None and state.frame.left is not None:
        value = state.frame.left.value
        told = value == world.facts.answer and value not in world.facts.numbers
        odd = weights.LOOSE if told and not state.drafts else 0
        yield state.framed(by_two(halved, state.frame.left, world), 1 + odd)
    kept = state.frame.left
    own = kept is not None and kept.value in world.facts.numbers and not state.drafts
    if own and state.frame.wants is Slot.RIGHT and state.frame.sign is Sign.PLUS:
        for after in closed(state.framed(Frame(left=kept)), world):
            yield after.framed(Frame(verb=item.meaning, wants=Slot.LEFT), -weights.RESTATED)
    if state.frame == Frame(verb=item.meaning, wants=Slot.LEFT, reach=state.frame.reach):
        yield state.framed(replace(state.frame, reach=True), weights.NEXT)
    for after in closed(state, world):
        yield after.framed(Frame(verb=item.meaning, wants=Slot.LEFT))


def again(state: State, item: Item, world: World) -> Iterator[State]:
    """Yield the same hop, or half, or double, once more from what stands."""
    frame = state.frame
    if frame.verb in (Meaning.HALF, Meaning.DOUBLE) and state.standing is not None:
        left = replace(state.standing, said=False)
        yield state.framed(by_two(frame.verb is Meaning.HALF, left, world))
        return
    last = state.drafts[-1].left if state.drafts else None
    scaled = isinstance(last, Operation) and last.sign in (Sign.TIMES, Sign.OVER)
    if scaled and frame.empty and state.standing is not None:
        yield state.framed(Frame(left=replace(state.standing, said=False)))
        yield state.and_costs(weights.IGNORED)
    else:
        yield state.and_costs(weights.FREE if isinstance(world.facts.problem, Compare) else 0)
    if frame.empty and isinstance(last, Operation) and not isinstance(last.right, Operation):
        right = Quantity(last.right, item.span)
        yield state.framed(Frame(sign=last.sign, right=right), 1)


def half_of_half(state: State, item: Item, world: World) -> Iterator[State]:
    """Half of a half, neither named before: the first is of a number of the problem."""
    frame = state.frame
    if frame.verb is not Meaning.HALF or frame.left is not None or state.drafts:
        return
    for left, odd in unnamed(state, world, item.span):
        halved = state.framed(by_two(True, left, world), max(0, odd - weights.BASE))
        for after in closed(halved, world):
            yield after.framed(Frame(verb=Meaning.HALF, wants=Slot.LEFT))
