"""What a number said alone may be: a result, the end of a hop, the next of a count."""

from collections.abc import Iterator

from waysaid.hearing.draft import COUNTED, RESULT_ALONE, Draft
from waysaid.hearing.spoken import weights
from waysaid.hearing.spoken.anew import (
    held_against,
    point_put_back,
    said_anew,
    side_anew,
)
from waysaid.hearing.spoken.by_digit import comes_next
from waysaid.hearing.spoken.change import replace
from waysaid.hearing.spoken.frame import Frame, Quantity
from waysaid.hearing.spoken.gap import gainsays, missing
from waysaid.hearing.spoken.meant import climbed, pretended
from waysaid.hearing.spoken.part import so_many_parts
from waysaid.hearing.spoken.pieces import joined
from waysaid.hearing.spoken.put_on import part_put_on
from waysaid.hearing.spoken.reached import reached
from waysaid.hearing.spoken.shares import shared_alone
from waysaid.hearing.spoken.sharing import both_scaled, both_sides, dealt
from waysaid.hearing.spoken.sized import rest_grouped
from waysaid.hearing.spoken.state import State
from waysaid.hearing.spoken.step import filled, loose, with_step
from waysaid.hearing.spoken.world import World, as_written
from waysaid.hearing.turned import turned, turned_side
from waysaid.number import (
    Blank,
    Compare,
    Equation,
    Exact,
    Image,
    ImageKind,
    Operation,
    Sign,
    chain,
    exact,
    leaves,
)

_SKIPS = (1, 2, 5, 10, 100)
"""What children count by: common practice, no source."""

_PAIR = 2
"""Beyond how many numbers the last may be larger than what stands: 26 on 10. Our choice."""

BEGUN = RESULT_ALONE
"""What nobody says of a count that begins one past its start: "six, seven, eight" for 5 + 3."""


def alone(state: State, number: Quantity, world: World) -> Iterator[State]:
    """Yield what a number said alone may be: a result, an end, a sum of pieces, or loose."""
    value = number.value
    if value is None:
        yield loose(state, number)
        return
    if state.denied and not state.drafts:
        yield replace(state, denied=False, spoken=number, cost=state.cost + weights.REPEATED)
    named = state.spoken
    state = replace(state, spoken=number, denied=False)
    yield from _of_hops(state, number, named, world)
    judged = state.so and isinstance(world.facts.problem, Compare)
    known = value <= 10 or value % 10 == 0 or value in world.facts.numbers
    if state.free and known and not (judged and value in world.facts.numbers):
        more = 0 if _digit_of(number, state.standing) else weights.FREE
        more += weights.LOOSE if gainsays(state, number, world) else 0
        yield replace(state, free=False, rounded=number, cost=state.cost + more)
    if comes_next(state, value, world):
        yield state
    if held_against(state, value, world):
        yield replace(state, apart=False)
        return
    explained = False
    for after in (
        *said_anew(state, number, world),
        *side_anew(state, number, value, world),
        *(part_put_on(state, number, world) if world.parted else ()),
        *missing(state, number, world),
        *point_put_back(state, number, value, world),
        *_repeated(state, number, value, world),
        *filled(state, number, value),
        *_hopped(state, number, value, world),
        *_put_beside(state, number, value, world),
        *joined(state, number, value, world),
        *_arrived(state, number, value, world),
        *reached(state, number, value, world),
        *_rest_grouped(state, number, world),
        *dealt(state, number, world),
        *shared_alone(state, number, world),
        *both_sides(state, number, world),
        *both_scaled(state, number, world),
        *_counted(state, number, value, world),
    ):
        explained = True
        yield after
    if not explained or not state.drafts:
        yield loose(state, number)
    elif state.so:
        yield loose(state, number).and_costs(weights.ARRIVED)


def _digit_of(number: Quantity, whole: Quantity | None) -> bool:
    """Tell whether a number is one of the digits of another: what is written and what carried."""
    return whole is not None and str(whole.value or "").find(str(number.value)) >= 0


def _of_hops(
    state: State, number: Quantity, named: Quantity | None, world: World
) -> Iterator[State]:
    """Yield what all the hops come to; or what a number used for another comes to."""
    climb = climbed(state, number, world)
    if climb is not None:
        sizes, unsaid = climb
        whole = chain(sizes[0], *((Sign.PLUS, one) for one in sizes[1:]))
        draft = Draft(as_written(whole, world), RESULT_ALONE, number.span, number.leaf)
        yield state.stepped(draft, -unsaid * weights.UNSAID - 1, standing=number)
    for near in (named, state.rounded):
        for before, step, more in pretended(near, number, state, world) if near else ():
            if step.left is not None:
                yield with_step(before, step, step.left, world).and_costs(more)


def _rest_grouped(state: State, number: Quantity, world: World) -> Iterator[State]:
    """Yield the groups that what was left over makes."""
    shared = rest_grouped(state, number, world)
    if shared is not None:
        yield with_step(state, shared, number, world)


def _repeated(state: State, number: Quantity, value: Exact, world: World) -> Iterator[State]:
    """Yield a result said again; at the end it is the answer said again."""
    if state.standing is not None and state.standing.value == value and state.drafts:
        last = state.drafts[-1]
        if last.result is not None:
            yield loose(state, replace(number, said=True)).and_costs(weights.REPEATED)


def _hopped(state: State, number: Quantity, value: Exact, world: World) -> Iterator[State]:
    """Yield a hop said as its size and its end: after 1, `a third, one and a third`."""
    latest = state.latest
    if latest is None or state.standing is None:
        return
    size, here = latest.quantity, state.standing.value
    if here is None or size.value is None or not state.drafts:
        return
    told = state.drafts[-1].result is not None or not world.sizes
    for sign, end in ((Sign.PLUS, here + size.value), (Sign.MINUS, here - size.value)):
        if end == value and size.value and (told or sign is Sign.PLUS):
            frame = Frame(sign=sign, right=size, result=number, op_said=False)
            before = replace(state, bare=state.bare[:-1])
            start = replace(state.standing, said=False)
            yield with_step(before, frame, start, world).and_costs(weights.HOPPED)


def _put_beside(state: State, number: Quantity, value: Exact, world: World) -> Iterator[State]:
    """Yield two numbers said alone and what some way adds them to: twenty thirty fifty."""
    pair = [one.quantity for one in state.bare if one.after == len(state.drafts)]
    if len(pair) != 2 or world.hop is not Sign.PLUS or any(one.many for one in pair):
        return
    left, right = pair
    frame = Frame(left=left, sign=world.hop, right=right, result=number, op_said=False)
    side = Operation(world.hop, left.leaf, right.leaf)
    if frame.comes_to == value and turned_side(side) in world.lefts:
        before = replace(state, bare=state.bare[:-2])
        yield with_step(before, frame, left, world).and_costs(weights.ARRIVED)


def _arrived(state: State, number: Quantity, value: Exact, world: World) -> Iterator[State]:
    """Where a hop from what stands ends that some way makes: 74, so 75."""
    if not state.drafts:
        yield from _set_off(state, number, value, world)
    if state.standing is None or state.standing.value is None or not state.drafts:
        return
    here, last = state.standing.value, state.drafts[-1]
    if here in world.facts.numbers or last.result is None:
        return
    times = so_many_parts(state, value, world)
    if times is not None:
        start, many = replace(state.standing, said=False), Quantity(times, number.span, said=False)
        frame = Frame(left=start, sign=Sign.TIMES, right=many, result=number, op_said=True)
        yield with_step(state, frame, start, world).and_costs(weights.ARRIVED)
    sign, size = (Sign.PLUS, value - here) if value > here else (Sign.MINUS, here - value)
    several = len(world.facts.numbers) > _PAIR
    if size > here and not (several and size in world.facts.numbers):
        return
    hop = Operation(sign, here, exact(size))
    meant = Operation(sign, exact(last.forced or 0), exact(size))
    known = turned_side(hop) in world.lefts or turned(Equation(hop, exact(value))) in world.wrong
    known = known or (last.forced != here and turned_side(meant) in world.lefts)
    if size and hop != world.facts.asked and known:
        right = Quantity(exact(size), number.span, said=False)
        frame = Frame(sign=sign, right=right, result=number, op_said=False)
        start = replace(state.standing, said=False)
        yield with_step(state, frame, start, world).and_costs(weights.ARRIVED)


def _set_off(state: State, number: Quantity, value: Exact, world: World) -> Iterator[State]:
    """Where a first hop ends that some way makes, from a number of the problem: 56, 60, 73."""
    one = state.bare[0].quantity if len(state.bare) == 1 else None
    here = one.value if one else None
    if one is None or here is None or here not in world.facts.numbers or world.groups:
        return
    sign, size = (Sign.PLUS, value - here) if value > here else (Sign.MINUS, here - value)
    hop = Operation(sign, here, exact(size))
    if not size or hop == world.facts.asked or value in world.facts.numbers:
        return
    if value != world.facts.answer and turned_side(hop) in world.lefts:
        right = Quantity(exact(size), number.span, said=False)
        frame = Frame(sign=sign, right=right, result=number, op_said=False)
        before = replace(state, bare=())
        yield with_step(before, frame, one, world).and_costs(weights.ARRIVED + 1)


def _counted(state: State, number: Quantity, value: Exact, world: World) -> Iterator[State]:
    """One more number of a count; groups of a size are none: three fives."""
    if number.many and world.groups:
        return
    counting = bool(state.drafts) and state.drafts[-1].counted
    before = state.standing if counting else None
    if before is None and state.latest is not None:
        before = state.latest.quantity
    if before is None and not state.drafts and not state.bare:
        yield from _count_begun(state, number, value, world)
    if before is None or before.value is None:
        return
    here = before.value
    skip = value - here if value > here else here - value
    groups = (*world.facts.numbers, here, *_last_skip(state)) if world.groups else ()
    problem = world.facts.problem
    if isinstance(problem, Image) and problem.kind is ImageKind.ARRAY:
        groups = problem.numbers
    amiss = counting and _miscounted(state, skip, world)
    if (skip not in (*_SKIPS, *groups) and not amiss) or not skip:
        return
    sign = Sign.PLUS if value > here else Sign.MINUS
    last = state.drafts[-1].left if counting else None
    if isinstance(last, Operation) and last.sign is not sign:
        return
    unsaid = COUNTED
    span = (before.span[0], number.span[1])
    size = _last_skip(state)[0] if amiss else exact(skip)
    draft = Draft(Operation(sign, here, size), unsaid, span, number.leaf)
    known = turned_side(draft.left) in world.lefts
    first = 0 if counting else weights.COUNTING
    known = known or here in world.facts.numbers or (world.groups and skip == here)
    known = known or (isinstance(problem, Image) and skip == here)
    more = first + (0 if known or counting else weights.STRANGE) + weights.SLIP * amiss
    bare = state.bare if counting else state.bare[:-1]
    after = state.stepped(draft, more, bare=bare, standing=number)
    yield after
    if world.sizes and counting:
        yield from (one.and_costs(-1) for one in filled(after, number, value))


def _miscounted(state: State, skip: Exact, world: World) -> bool:
    """Tell whether a count by groups ends a little beside the next number: 9, 18, 27, 35."""
    alike = {_last_skip(replace(state, drafts=state.drafts[:end])) for end in (-1, None)}
    if not world.groups or len(alike) > 1 or () in alike:
        return False
    (size,) = alike.pop()
    return size in world.sizes and skip not in _SKIPS and skip != size and 0 < skip < 2 * size


def _last_skip(state: State) -> tuple[Exact, ...]:
    """Return by how much the last step counted on."""
    last = state.drafts[-1] if state.drafts else None
    if last is None or not last.counted:
        return ()
    return tuple(one for one in leaves(last.left) if not isinstance(one, Blank))[1:]


def _count_begun(state: State, number: Quantity, value: Exact, world: World) -> Iterator[State]:
    """Yield the first number of a count that begins one past a number of the problem."""
    hop = world.hop
    if value in world.facts.numbers or world.groups or hop is None:
        return
    start = exact(value - 1 if hop is Sign.PLUS else value + 1)
    if start in world.facts.numbers:
        draft = Draft(Operation(hop, start, 1), BEGUN, number.span, number.leaf)
        cost = state.cost + weights.COUNTING - 1
        yield replace(state, drafts=(draft,), standing=number, so=False, cost=cost)
