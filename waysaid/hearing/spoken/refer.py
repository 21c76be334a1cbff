"""What a pronoun may point to: a number of the problem, what stands, or what is left of one."""

from collections.abc import Iterator

from waysaid.hearing.meaning import Meaning
from waysaid.hearing.reading import Part
from waysaid.hearing.spoken import weights
from waysaid.hearing.spoken.change import replace
from waysaid.hearing.spoken.close import both_changed
from waysaid.hearing.spoken.frame import HOPS, Frame, Quantity, Slot
from waysaid.hearing.spoken.item import Item
from waysaid.hearing.spoken.numbers import number
from waysaid.hearing.spoken.scale import by_two
from waysaid.hearing.spoken.sized import sizes
from waysaid.hearing.spoken.state import State
from waysaid.hearing.spoken.step import with_step
from waysaid.hearing.spoken.world import World
from waysaid.hearing.worth import worth
from waysaid.number import Blank, Compare, Image, Number, Sign, exact, leaves

POINTING = (
    Meaning.IT,
    Meaning.ONE,
    Meaning.FIRST,
    Meaning.LAST,
    Meaning.OTHER,
    Meaning.LARGER_ONE,
    Meaning.SMALLER_ONE,
    Meaning.REST,
)
"""The meanings of words that point to a number."""


def refer(state: State, item: Item, world: World) -> Iterator[State]:
    """Yield the states in which a pronoun is one of the numbers it may point to.

    Where no number is awaited a pronoun may also be passed over: `it's forty`; and `other` where
    one is: half of the other quarter.
    """
    awaited = state.frame.wants in (Slot.LEFT, Slot.RIGHT)
    compared = isinstance(world.facts.problem, Compare) and item.meaning in _SIDES
    if compared:
        unasked = 0 if awaited or state.verdict is None else weights.POINTED
    else:
        unasked = 0 if awaited or _one_turned(state, item, world) else weights.IGNORED
    for leaf, more in _meant(state, item, world):
        said = Quantity(leaf, item.span)
        for after in number(state, said, world):
            yield after.and_costs(more + unasked)
    if not awaited:
        of_two = isinstance(world.facts.problem, Compare)
        yield state.and_costs(_PASSED_OVER.get(item.meaning, 0) if of_two and item.meaning else 0)
    elif item.meaning is Meaning.OTHER:
        yield state.and_costs(weights.NEXT)


def _one_turned(state: State, item: Item, world: World) -> bool:
    """Tell whether one number was just turned into another, and the other is named: 38 to 40."""
    last = state.drafts[-1] if state.drafts else None
    if last is None or item.meaning is not Meaning.OTHER or Part.RIGHT not in last.open:
        return False
    start = next(iter(leaves(last.left)))
    return start in world.facts.numbers and last.stands not in world.facts.numbers


_SIDES = (Meaning.FIRST, Meaning.LAST, Meaning.OTHER)
"""Words for one of two numbers compared."""

_PASSED_OVER = {
    Meaning.OTHER: weights.FREE,
    Meaning.REST: weights.FREE,
    Meaning.FIRST: weights.POINTED,
    Meaning.LAST: weights.POINTED,
}
"""What it costs to pass over words that are seldom said of two numbers but to mean one of them."""


def _meant(state: State, item: Item, world: World) -> Iterator[tuple[Number, int]]:
    numbers = world.facts.written
    match item.meaning:
        case Meaning.IT:
            known = list(_it(state))
            if isinstance(world.facts.problem, Compare):
                yield from _compared(known, world)
                return
            yield from known or ((one, weights.POINTED) for one in reversed(numbers))
        case Meaning.FIRST:
            yield from ((one, 0) for one in numbers[:1])
        case Meaning.LAST | Meaning.OTHER if isinstance(world.facts.problem, Image):
            yield from ((one, weights.POINTED) for one in sizes(state, world) if state.drafts)
        case Meaning.LAST:
            yield from ((one, 0) for one in numbers[-1:])
        case Meaning.LARGER_ONE:
            yield from ((one, 0) for one in sorted(numbers, key=exact)[-1:])
        case Meaning.SMALLER_ONE:
            yield from ((one, 0) for one in sorted(numbers, key=exact)[:1])
        case Meaning.OTHER:
            named = _named(state)
            if isinstance(world.facts.problem, Compare):
                named = _side_named(state, world) or named
            others = [one for one in numbers if exact(one) not in named[-1:]]
            yield from ((one, weights.POINTED if len(others) > 1 else 0) for one in others)
        case Meaning.REST:
            yield from _rest(state, world)
        case _:
            yield from ((one, weights.POINTED) for one in dict.fromkeys(numbers))


def _compared(known: list[tuple[Number, int]], world: World) -> list[tuple[Number, int]]:
    """Return the number compared that was spoken of; the first, where it was neither."""
    own = [exact(one) for one in world.facts.written]
    return [one for one in known if worth(one[0]) in own] or [(world.facts.written[0], 1)]


def _it(state: State) -> Iterator[tuple[Number, int]]:
    """Yield what was moved, for one who gives it on; what stands; what was last named."""
    giving = state.frame.verb is Meaning.GIVE
    found: dict[object, int] = {}
    for one, more in (
        (state.amount if giving or state.dropped else None, 0),
        (state.standing, weights.POINTED if giving else 0),
        (state.spoken, weights.POINTED),
    ):
        if one is not None:
            found.setdefault(one.leaf, more)
    for leaf, more in found.items():
        if worth(leaf) is not None:  # type: ignore[arg-type]
            yield leaf, more  # type: ignore[misc]


def _named(state: State) -> list[object]:
    """Return the values named in the steps so far, the last one at the end."""
    found: list[object] = []
    for draft in state.drafts:
        found.extend(leaves(draft.left))
    if state.frame.left is not None:
        found.append(state.frame.left.value)
    return [one for one in found if one is not None][:1] if len(found) == 2 else found[-2:-1]


def _side_named(state: State, world: World) -> list[object]:
    """Return the number compared that was spoken of last, or worked with; none where none was."""
    spoken = state.spoken.value if state.spoken is not None else None
    own = world.facts.numbers
    worked = [one for draft in state.drafts for one in leaves(draft.left) if one in own]
    return [spoken] if spoken in own else [*worked[-1:]]


def _rest(state: State, world: World) -> Iterator[tuple[Number, int]]:
    """Yield what is left of a number of the problem when what was used of it is taken off."""
    hops = [
        leaf
        for draft in state.drafts
        for leaf in list(leaves(draft.left))[1:]
        if not isinstance(leaf, Blank)
    ]
    for one in dict.fromkeys(map(exact, world.facts.written)):
        for used in {sum(hops), *hops[-1:]} if hops else ():
            left = exact(one - used)
            if left > 0:
                yield left, weights.POINTED


def both(state: State, item: Item, world: World) -> Iterator[State]:
    """Yield the state in which a hop is made from every number of the problem."""
    frame = state.frame
    if frame.verb in (Meaning.HALF, Meaning.DOUBLE) and frame.left is None and not state.drafts:
        yield both_by_two(state, item, world, halved=frame.verb is Meaning.HALF)
    if isinstance(world.facts.problem, Image):
        yield state.and_costs(weights.IGNORED)
        return
    hop = frame.sign is not None and frame.right is not None
    if Sign.OVER in world.signs and (frame.sign in HOPS or frame.bare is not None):
        yield state.and_costs(1)
        return
    if frame.wants is Slot.LEFT and hop:
        yield both_changed(replace(state, frame=Frame()), replace(frame, wants=Slot.NONE), world)
    elif frame.wants is Slot.LEFT:
        yield replace(state, both=True, frame=replace(frame, wants=Slot.NONE))
    elif frame.paired and frame.left is None:
        yield both_changed(replace(state, frame=Frame()), frame, world)
    elif not frame.reach:
        yield replace(state, both=True)
    whole = frame.left is not None and frame.right is not None
    begun = frame.verb is not None and frame.right is None
    told = frame.reach or not (frame.empty or whole or begun)
    yield state.and_costs(weights.IGNORED if told and not world.groups else 1)


def both_by_two(state: State, item: Item, world: World, *, halved: bool) -> State:
    """Return the state in which every number was halved, or doubled: 48 and 3 are still to come."""
    after = replace(state, frame=Frame(), both=False)
    if world.fractions:
        scaled = by_two(halved, Quantity(world.fractions[0][0], item.span), world)
        return both_changed(after, replace(scaled, left=None), world)
    for one in world.facts.written:
        left = Quantity(one, item.span)
        after = with_step(after, by_two(halved, left, world), left, world)
    return after.and_costs(-len(world.facts.written) * weights.UNSAID)
