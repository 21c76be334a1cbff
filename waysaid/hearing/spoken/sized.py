"""Groups of which only the number was said: ten groups, twenty of them, one row less."""

from collections.abc import Iterator

from waysaid.hearing.meaning import Meaning
from waysaid.hearing.spoken import weights
from waysaid.hearing.spoken.change import replace
from waysaid.hearing.spoken.frame import HOPS, Frame, Quantity, Slot
from waysaid.hearing.spoken.item import Item
from waysaid.hearing.spoken.moved import pair_of
from waysaid.hearing.spoken.outline import shared_of
from waysaid.hearing.spoken.state import State, counts
from waysaid.hearing.spoken.world import World, asks
from waysaid.hearing.turned import turned_side
from waysaid.hearing.worth import worth
from waysaid.number import Exact, Operation, Sign, exact

_MOST_OFF = 3
"""How many groups are put on or taken off by their number alone. Our choice."""


def sizes(state: State, world: World) -> tuple[Exact, ...]:
    """Return how large a group may be: as in the last product or sharing, else as the problem has.

    The size just worked with is the only one.
    """
    for draft in reversed(state.drafts):
        pair = pair_of(draft)
        if pair is None or pair[1] not in (Sign.TIMES, Sign.OVER):
            continue
        held = pair[2:] if pair[1] is Sign.OVER else (pair[2], pair[0])
        known = [one for one in held if one in world.sizes]
        if known:
            return tuple(known[:1])
    return world.sizes


def groups(state: State, item: Item, world: World) -> Iterator[State]:
    """Take a number as one of groups whose size is known: ten groups, and one row more."""
    frame = state.frame
    if frame.bare is not None and frame.left is not None:
        yield state.and_costs(weights.IGNORED if world.sizes else 0)
        yield from _of_size(state, frame.left, world)
    elif frame.left is None and frame.right is not None and frame.sign in HOPS:
        of = list(_of_standing(replace(state, frame=Frame()), frame.right, world))
        yield from (one.and_costs(weights.NEXT) for one in of)
        yield state.and_costs(weights.ARRIVED if of else 0)
    else:
        yield state
    yield from _hops(state, world)


def _of_size(state: State, count: Quantity, world: World) -> Iterator[State]:
    """Yield so many of what stands, where some way has it; or of the size of a group."""
    if not isinstance(count.leaf, int):
        return
    yield from _of_standing(state, count, world)
    found = sizes(state, world)
    others = [one for one in found if one != count.value] or list(found)
    for size in others:
        right = Quantity(size, count.span, said=False)
        more = weights.POINTED if len(others) > 1 else 0
        yield state.framed(Frame(left=count, sign=Sign.TIMES, right=right), more)


def _of_standing(state: State, count: Quantity, world: World) -> Iterator[State]:
    """Yield so many of what stands, where some way has it, or it is no whole number."""
    known = state.standing if state.drafts and world.groups else None
    if known is None or not isinstance(count.leaf, int):
        return
    side = turned_side(Operation(Sign.TIMES, count.leaf, known.leaf))
    if side in world.lefts or not isinstance(known.leaf, int):
        right = replace(known, said=False)
        yield state.framed(Frame(left=count, sign=Sign.TIMES, right=right))


def shared_by(state: State, span: tuple[int, int]) -> Quantity | None:
    """Return what the last step shared by, unsaid: into 80 ten times, and into 16 twice."""
    pair = pair_of(state.drafts[-1]) if state.drafts else None
    return Quantity(pair[2], span, said=False) if pair and pair[1] is Sign.OVER else None


def how_often(state: State, world: World) -> Iterator[State]:
    """Yield the sharing of which the number of groups was said first: and twice in sixteen."""
    times, frame = state.frame.left, state.frame
    divisor = shared_by(state, times.span) if times is not None else None
    if frame.bare is not None and divisor is not None:
        yield state.framed(Frame(right=divisor, sign=Sign.OVER, result=times, wants=Slot.LEFT))


def taken_so_often(state: State, world: World) -> Iterator[State]:
    """Yield the product of a number and how often it was taken: twenty, three times."""
    times, before = state.frame.bare, state.undo[0] if state.undo else None
    if times is None or before is None or times.many or not world.groups:
        return
    frame = before.frame
    added = frame.verb is Meaning.ADD and frame.left is None and frame.result is None
    one = frame.right if added else frame.bare
    if one is None or one.many or one.span[1] + 2 < times.span[0]:
        return
    if one.value == times.value:
        return
    said = Frame(left=one, sign=Sign.TIMES, right=times)
    yield before.framed(said, weights.NEXT + times.noise * weights.NOISE)


def size_named(state: State, size: Quantity) -> bool:
    """Tell whether a number only names the groups just counted: four, twenty fives."""
    pair = pair_of(state.drafts[-1]) if state.drafts else None
    return pair is not None and pair[1:] == (Sign.OVER, size.value)


def holds(state: State, whole: Quantity, world: World) -> Iterator[State]:
    """Yield the sharing of a number into which so many groups go: in a hundred go four."""
    shared, value = shared_of(world), whole.value
    if shared is None or value is None or value <= shared[1]:
        return
    right = Quantity(shared[1], whole.span, said=False)
    frame = Frame(left=whole, sign=Sign.OVER, right=right, wants=Slot.RESULT)
    yield state.framed(frame, weights.NEXT)


def groups_in(state: State, world: World) -> Iterator[State]:
    """Yield the sharing said as so many in a number: there's twenty in a hundred."""
    times, frame = state.frame.left, state.frame
    if frame.bare is None or times is None or shared_of(world) is None:
        return
    if times.many or times.value in world.sizes:
        yield state.framed(Frame(Meaning.BY, right=times, sign=Sign.OVER, wants=Slot.LEFT))
    if times.many:
        return
    for size in sizes(state, world)[:1]:
        right = Quantity(size, times.span, said=False)
        held = Frame(Meaning.BY, right=right, sign=Sign.OVER, result=times, wants=Slot.LEFT)
        yield state.framed(held, weights.NEXT)


def named_groups(whole: Quantity, left: Quantity, state: State, world: World) -> Frame | None:
    """Return the step of so many groups and what they come to: twenty is one forty."""
    if not isinstance(whole.leaf, int) or not isinstance(left.leaf, int) or whole.leaf < 2:
        return None
    if whole.many and state.latest is not None:
        return None
    for size in sizes(state, world):
        if worth(Operation(Sign.TIMES, whole.leaf, size)) == left.value and size > 1:
            right = Quantity(size, whole.span, said=False)
            return Frame(left=whole, sign=Sign.TIMES, right=right, result=left)
    return None


def _hops(state: State, world: World) -> Iterator[State]:
    """Yield the hop of so many groups whose number was just said: and another two rows."""
    frame = state.frame
    if frame.sign not in HOPS or frame.right is None or frame.result is not None:
        return
    times = frame.right.leaf
    if not isinstance(times, int) or not frame.right.said:
        return
    for size in sizes(state, world):
        right = Quantity(exact(times * size), frame.right.span, said=False)
        yield state.framed(replace(frame, right=right))


def a_piece(frame: Frame, said: Quantity, world: World) -> bool:
    """Tell whether a number is what one place of a factor comes to: 180, of 36, for 6 x 36.

    Or how many groups a hop is: eighteen too many, which is six threes.
    """
    if frame.sign is Sign.MINUS and frame.right is not None and said.value is not None:
        return any(exact(said.value * one) == frame.right.value for one in world.sizes)
    if frame.sign is not Sign.TIMES or frame.left is None or frame.right is None:
        return False
    for one, other in ((frame.left.leaf, frame.right.leaf), (frame.right.leaf, frame.left.leaf)):
        if not isinstance(one, int) or not isinstance(other, int) or one < 10 or not one % 10:
            continue
        if said.value in ((one - one % 10) * other, one % 10 * other):
            return True
    return False


def hop_of(times: Quantity, size: Quantity, world: World) -> Quantity | None:
    """Return what some groups come to that are put on or taken off: minus two fives."""
    if size.value not in world.sizes or not isinstance(times.leaf, int):
        return None
    whole = worth(Operation(Sign.TIMES, times.leaf, size.leaf))
    span = (times.span[0], size.span[1])
    return None if whole is None else Quantity(whole, span, said=False)


def onto_groups(frame: Frame, state: State, world: World) -> Frame | None:
    """Return the hop by some groups where the result is all of them: two more nines, 108."""
    times, size, end, here = frame.left, frame.right, frame.result, state.standing
    if frame.sign is not Sign.TIMES or None in (times, size, end, here) or not state.drafts:
        return None
    assert times is not None
    assert size is not None
    few = isinstance(times.leaf, int) and times.leaf <= _MOST_OFF
    whole = hop_of(times, size, world) if few else None
    if whole is None or here is None or end is None or whole.value == end.value:
        return None
    start = replace(here, said=False)
    hop = Frame(left=start, sign=Sign.PLUS, right=whole, result=end)
    return hop if hop.comes_to == end.value else None


def more_groups(frame: Frame, end: Quantity, state: State, world: World) -> Frame | None:
    """Return the product of some more groups and what they come to: and two more, fifty."""
    times = frame.right
    if frame.sign is not Sign.PLUS or frame.left is not None or times is None or frame.result:
        return None
    for size in sizes(state, world):
        whole = Operation(Sign.TIMES, times.leaf, size)
        known = asks(whole, world) or times.value in (None, 1)
        if size > 1 and not known and worth(whole) == end.value:
            right = Quantity(size, times.span, said=False)
            return Frame(left=times, sign=Sign.TIMES, right=right, result=end)
    return None


def rest_grouped(state: State, number: Quantity, world: World) -> Frame | None:
    """Return how many groups what was left over makes: sixty left, and that's four more."""
    last = pair_of(state.drafts[-1]) if state.drafts else None
    rest = state.standing
    if last is None or last[1] is not Sign.MINUS or rest is None or number.many:
        return None
    for size in sizes(state, world):
        if worth(Operation(Sign.TIMES, number.leaf, size)) == rest.value:
            right = Quantity(size, number.span, said=False)
            return Frame(left=number, sign=Sign.TIMES, right=right, result=rest)
    return None


def by_groups(frame: Frame, start: Quantity, state: State, world: World) -> Iterator[Frame]:
    """Yield the hop of one group, or a few, that the result said bears out: less one, so 72."""
    size, end, here = frame.right, frame.result, start.value
    if size is None or end is None or here is None or not isinstance(size.leaf, int):
        return
    if frame.sign not in HOPS or not 0 < size.leaf <= _MOST_OFF or frame.comes_to == end.value:
        return
    for one in sizes(state, world):
        off = exact(size.leaf * one)
        if one > 1 and worth(Operation(frame.sign, exact(here), off)) == end.value:
            yield replace(frame, right=Quantity(off, size.span, said=False))


def count_of(state: State, world: World) -> Exact | None:
    """Return how many groups the last product or sharing has."""
    pair = pair_of(state.drafts[-1]) if state.drafts else None
    if pair is not None and pair[1] is Sign.OVER and pair[2] in world.sizes:
        return state.drafts[-1].stands
    if pair is not None and pair[1] is Sign.TIMES and len(world.sizes) == 1:
        one, size = pair[0], pair[2]
        if world.sizes[0] in (one, size):
            return one if size == world.sizes[0] else size
    return (*counts(state)[-1:], None)[0]


def in_groups(frame: Frame, state: State, world: World) -> Frame | None:
    """Return the hop from the groups counted whose size was said in ones: 7 too big, so nine."""
    count, size, end = count_of(state, world), frame.right, frame.result
    if count is None or size is None or end is None or frame.sign not in HOPS:
        return None
    for one in sizes(state, world):
        if size.value is None or one < 2 or size.value % one or not size.value:
            continue
        right = Quantity(exact(size.value // one), size.span, said=False)
        hop = Operation(frame.sign, count, right.leaf)
        if worth(hop) == end.value:
            return replace(frame, left=Quantity(count, size.span, said=False), right=right)
    return None
