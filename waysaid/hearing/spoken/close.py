"""What becomes of a frame when the next thing is said: a step, several, or a number alone."""

from collections.abc import Iterator

from waysaid.hearing.draft import COUNTED, Draft
from waysaid.hearing.reading import Part
from waysaid.hearing.spoken import weights
from waysaid.hearing.spoken.anew import (
    as_problem_writes,
    held_against,
    in_parts,
    in_percents,
    in_small_parts,
    name_cost,
    nearly,
    point_put_back,
    said_anew,
    side_anew,
)
from waysaid.hearing.spoken.change import replace
from waysaid.hearing.spoken.cost import borne_out, step_cost
from waysaid.hearing.spoken.frame import Frame, Quantity, Slot, worth
from waysaid.hearing.spoken.gap import missing
from waysaid.hearing.spoken.meant import cannot, climbed, meant, pretended, regrouped
from waysaid.hearing.spoken.part import is_all, part_step
from waysaid.hearing.spoken.pieces import joined
from waysaid.hearing.spoken.places import in_other_places, in_places
from waysaid.hearing.spoken.state import Bare, State
from waysaid.hearing.spoken.world import World
from waysaid.hearing.turned import turned, turned_side
from waysaid.number import (
    BLANK,
    Blank,
    Equation,
    Exact,
    Operation,
    Sign,
    chain,
    exact,
    leaves,
    undone,
)

_SKIPS = (1, 2, 5, 10, 100)
"""What children count by: common practice, no source."""

BEGUN = (Part.LEFT, *COUNTED)
"""What nobody says of a count that begins one past its start: "six, seven, eight" for 5 + 3."""


def closed(state: State, world: World) -> Iterator[State]:
    """Yield the states in which what is being said has become a step, or a number alone.

    Many words close the same state; what it becomes is reckoned once.
    """
    known = world.closed.get(id(state))
    if known is None or known[0] is not state:
        known = world.closed[id(state)] = (state, tuple(_closed(state, world)))
    yield from known[1]


def _closed(state: State, world: World) -> Iterator[State]:
    frame = _reached(state)
    state = replace(state, frame=Frame())
    if frame.sign is not None and frame.right is not None:
        if frame.wants is not Slot.NONE:
            state = state.and_costs(weights.NO_RESULT)
        yield from _stepped(state, frame, world)
    elif frame.whole is not None:
        yield from _renamed(state, frame, world)
    elif frame.left is not None and frame.verb is None and frame.sign is None:
        yield from alone(state, frame.left, world)
    elif frame.left is not None:
        for after in alone(state, frame.left, world):
            yield after.and_costs(weights.ALONE)
    elif frame.sign is not None or frame.verb is not None:
        yield state.and_costs(weights.ALONE)
    else:
        yield state


def _reached(state: State) -> Frame:
    """Return the frame; a hop told only by where it ends has the size that arithmetic gives."""
    frame, start = state.frame, state.frame.left or state.standing
    if frame.right is not None and frame.right.leaf is BLANK:
        return _found(frame, frame.right)
    if not frame.reach or frame.result is None or frame.right is not None:
        return frame
    size = _fitting(frame.sign, start, frame.result)
    if size is None or size <= 0:
        return frame
    right = Quantity(size, frame.result.span, said=False)
    return replace(frame, right=right, wants=Slot.NONE)


def _found(frame: Frame, asked: Quantity) -> Frame:
    """Return the frame of `eight and what is thirteen`, with the one number that fits."""
    found = _fitting(frame.sign, frame.left, frame.result)
    if found is None:
        return replace(frame, right=None, sign=None, left=None, result=None, wants=Slot.NONE)
    return replace(frame, right=Quantity(found, asked.span, said=False), wants=Slot.NONE)


def _fitting(sign: Sign | None, left: Quantity | None, result: Quantity | None) -> Exact | None:
    """Return the number that goes with the left to come to the result; None where none does."""
    here, there = left and left.value, result and result.value
    if sign is None or here is None or there is None:
        return None
    return worth(undone(Operation(sign, here, BLANK), there))


def _stepped(state: State, frame: Frame, world: World) -> Iterator[State]:
    """Yield the step of a frame, its left side said, standing, or one of the problem's numbers."""
    if frame.left is None and state.both:
        yield both_changed(replace(state, both=False), frame, world)
        return
    if frame.whole is not None and frame.sign in (Sign.PLUS, Sign.MINUS) and frame.left:
        yield from _opened(state, frame, world)
        return
    if state.denied:
        state = replace(state, denied=False)
        if cannot(frame):
            yield state
    opened = regrouped(frame, world)
    if opened is not None:
        yield from _opened(state.and_costs(1), opened, world)
    if frame.left is not None:
        yield _with_step(state, frame, frame.left, world)
        for moved in in_places(frame, state.standing, world):
            if moved.left is not None:
                more = weights.PLACED if frame.result else weights.PLACED + weights.UNSAID
                placed = _with_step(state, moved, moved.left, world).and_costs(more)
                yield in_other_places(placed, frame, moved)
        for cut in in_parts(frame, world):
            yield _with_step(state, cut, frame.left, world).and_costs(weights.PLACED)
        return
    if state.standing is not None:
        start = replace(state.standing, said=False)
        yield _with_step(state, frame, start, world).and_costs(weights.GOES_ON)
        for moved in in_places(replace(frame, left=start), state.standing, world):
            placed = _with_step(state, moved, start, world).and_costs(weights.PLACED)
            yield in_other_places(placed, replace(frame, left=start), moved)
        for cut in in_parts(replace(frame, left=start), world):
            yield _with_step(state, cut, start, world).and_costs(weights.PLACED)
    assert frame.right is not None
    place = frame.right.span[0]
    for number in dict.fromkeys(world.facts.written):
        start = Quantity(number, (place, place), said=False)
        more = weights.BASE + (0 if state.standing is None else weights.BASE)
        yield _with_step(state, frame, start, world).and_costs(more)


def both_changed(state: State, frame: Frame, world: World) -> State:
    """Return the state in which every number of the problem was changed alike."""
    assert frame.right is not None
    for one in world.facts.written:
        state = _with_step(state, frame, Quantity(one, frame.right.span), world)
    first = len(state.drafts) == len(world.facts.written)
    return state.and_costs(-2 * weights.UNSAID if first else 0)


def _opened(state: State, frame: Frame, world: World) -> Iterator[State]:
    """Yield the step that opens a number into two parts: 25 = 3 + 22."""
    assert frame.left is not None
    assert frame.right is not None
    assert frame.sign is not None
    leaf = Operation(frame.sign, frame.left.leaf, frame.right.leaf)
    parts = Quantity(leaf, (frame.left.span[0], frame.right.span[1]))
    yield from _renamed(state, Frame(whole=frame.whole, left=parts), world)


def _with_step(state: State, frame: Frame, left: Quantity, world: World) -> State:
    state, frame = _answering(state, frame, left)
    assert frame.sign is not None
    assert frame.right is not None
    said = [one for one in (left, frame.right, frame.result, frame.whole) if one and one.said]
    places = [one.span for one in said] or [frame.right.span]
    open_parts = [Part.LEFT] * (not left.said) + [Part.OP] * (not frame.op_said)
    open_parts += [Part.RIGHT] * (not frame.right.said)
    result = frame.result or frame.whole
    draft = Draft(
        Operation(frame.sign, left.leaf, frame.right.leaf),
        tuple(open_parts),
        (min(start for start, _ in places), max(end for _, end in places)),
        result.leaf if result and result.said else None,
    )
    ends = draft.ends
    stands = None if ends is None else Quantity(ends, draft.span)
    state = _said_late(state, (left, frame.right))
    less = borne_out(draft, (left, frame.right, result), world) + _known_result(state, draft)
    return replace(
        state,
        drafts=(*state.drafts, draft),
        standing=stands or state.standing,
        spoken=stands or state.spoken,
        amount=frame.right,
        so=False,
        cost=state.cost + step_cost(draft, world) - less,
    )


def reasoned(state: State, number: Quantity) -> Iterator[State]:
    """Yield a number before its reasons: a claim, or the result of the step that comes next."""
    promised = loose(replace(state, so=True), number)
    yield promised
    yield replace(promised, bare=state.bare, reason=number)


def _answering(state: State, frame: Frame, left: Quantity) -> tuple[State, Frame]:
    """Return a step with the result that was said before it: it's eleven because two and eight.

    A number that the step itself holds is no result of it: seven because seven and four.
    """
    assert frame.right is not None
    if state.reason is None or frame.result is not None or frame.whole is not None:
        return state, frame
    held = state.reason.value in (left.value, frame.right.value)
    if held and state.reason.value != _comes_to(frame, left):
        return state, frame
    result = replace(state.reason)
    return replace(state, reason=None), replace(frame, result=result)


def _comes_to(frame: Frame, left: Quantity) -> Exact | None:
    if frame.sign is None or frame.right is None:
        return None
    return worth(Operation(frame.sign, left.leaf, frame.right.leaf))


def _known_result(state: State, draft: Draft) -> int:
    """Return what an unsaid result does not cost where it was named before: 8 x 10, halve 16."""
    if draft.result is not None or draft.forced is None:
        return 0
    named = (one for before in state.drafts for one in leaves(before.left))
    return weights.UNSAID if draft.forced in named else 0


def _said_late(state: State, numbers: tuple[Quantity, ...]) -> State:
    """Return the state in which numbers just said are the results that steps before left out."""
    for number in numbers:
        value = number.value
        if number.said and value is not None:
            for filled in _filled(state, number, value):
                state = replace(filled, standing=state.standing, so=state.so)
    return state


def _renamed(state: State, frame: Frame, world: World) -> Iterator[State]:
    """Yield a number opened into parts, 25 = 3 + 22, or written another way, 3/4 = 6/8."""
    whole, left = frame.whole, frame.left
    assert whole is not None
    if left is None:
        yield from alone(state, whole, world)
        return
    span = (min(whole.span[0], left.span[0]), max(whole.span[1], left.span[1]))
    taken = part_step(state, whole, left, world) or part_step(state, left, whole, world)
    if taken is not None and taken.left is not None:
        yield _with_step(state, taken, taken.left, world)
        return
    for before, hop, more in meant(whole, left, state, world):
        if hop.left is not None:
            yield _with_step(before, hop, hop.left, world).and_costs(more)
    if is_all(whole, left, world):
        yield replace(state, spoken=left, standing=left, so=False)
        return
    if in_small_parts(whole, left, world) or in_percents(whole, left):
        yield replace(state, spoken=left, so=False)
        return
    opened = isinstance(left.leaf, Operation)
    if not opened and as_problem_writes(whole, left, world):
        whole, left = left, whole
    draft = Draft(whole.leaf, (), span, left.leaf, whole=opened)
    cost = name_cost(whole, left, world)
    if not opened and whole.leaf == left.leaf:
        yield from alone(state, left, world)
        return
    standing = state.standing if opened or cost >= weights.FALSE else left
    yield replace(
        state,
        drafts=(*state.drafts, draft),
        spoken=whole if nearly(whole, left) else left,
        standing=standing,
        cost=state.cost + cost,
        so=False,
    )


def alone(state: State, number: Quantity, world: World) -> Iterator[State]:
    """Yield what a number said alone may be: a result, an end, a sum of pieces, or loose."""
    value = number.value
    if value is None:
        yield loose(state, number)
        return
    named = state.spoken
    state = replace(state, spoken=number)
    yield from _of_hops(state, number, named, world)
    if state.free and (value <= 10 or value % 10 == 0 or value in world.facts.numbers):
        yield replace(state, free=False, cost=state.cost + weights.FREE)
    if held_against(state, value, world):
        yield replace(state, apart=False)
        return
    explained = False
    for after in (
        *said_anew(state, number, world),
        *side_anew(state, number, value, world),
        *missing(state, number, world),
        *point_put_back(state, number, value, world),
        *_repeated(state, number, value, world),
        *_filled(state, number, value),
        *_hopped(state, number, value, world),
        *joined(state, number, value, world),
        *_arrived(state, number, value, world),
        *_counted(state, number, value, world),
    ):
        explained = True
        yield after
    if not explained or not state.drafts:
        yield loose(state, number)
    elif state.so:
        yield loose(state, number).and_costs(weights.ARRIVED)


def _of_hops(
    state: State, number: Quantity, named: Quantity | None, world: World
) -> Iterator[State]:
    """Yield what all the hops come to; or what a number used for another comes to."""
    climb = climbed(state, number, world)
    if climb is not None:
        sizes, unsaid = climb
        whole = chain(sizes[0], *((Sign.PLUS, one) for one in sizes[1:]))
        draft = Draft(whole, (Part.LEFT, Part.OP, Part.RIGHT), number.span, number.leaf)
        after = replace(state, drafts=(*state.drafts, draft), standing=number, so=False)
        yield after.and_costs(-unsaid * weights.UNSAID - 1)
    for before, step, more in pretended(named, number, state, world) if named else ():
        if step.left is not None:
            yield _with_step(before, step, step.left, world).and_costs(more)


def loose(state: State, number: Quantity) -> State:
    """Return the state with the number still to be explained."""
    one = Bare(number, len(state.drafts), state.so)
    return replace(state, bare=(*state.bare, one), so=False, spoken=number)


def _repeated(state: State, number: Quantity, value: Exact, world: World) -> Iterator[State]:
    """Yield a result said again; at the end it is the answer said again."""
    if state.standing is not None and state.standing.value == value and state.drafts:
        last = state.drafts[-1]
        if last.result is not None:
            yield loose(state, replace(number, said=True)).and_costs(weights.REPEATED)


def _filled(state: State, number: Quantity, value: Exact) -> Iterator[State]:
    """Yield the result of an earlier step whose result was not said."""
    for place in range(len(state.drafts) - 1, -1, -1):
        draft = state.drafts[place]
        if draft.result is not None or draft.whole or draft.forced != value:
            continue
        span = (draft.span[0], max(draft.span[1], number.span[1]))
        filled = replace(draft, result=number.leaf, span=span)
        drafts = (*state.drafts[:place], filled, *state.drafts[place + 1 :])
        cost = state.cost - weights.UNSAID + weights.FILLED
        yield replace(state, drafts=drafts, standing=number, so=False, cost=cost)
        return


def _hopped(state: State, number: Quantity, value: Exact, world: World) -> Iterator[State]:
    """Yield a hop said as its size and its end: after 1, `a third, one and a third`."""
    if not state.bare or state.standing is None or state.bare[-1].after != len(state.drafts):
        return
    size, here = state.bare[-1].quantity, state.standing.value
    if here is None or size.value is None or not state.drafts:
        return
    for sign, end in ((Sign.PLUS, here + size.value), (Sign.MINUS, here - size.value)):
        if end == value and size.value:
            frame = Frame(sign=sign, right=size, result=number, op_said=False)
            before = replace(state, bare=state.bare[:-1])
            start = replace(state.standing, said=False)
            yield _with_step(before, frame, start, world).and_costs(weights.HOPPED)


def _arrived(state: State, number: Quantity, value: Exact, world: World) -> Iterator[State]:
    """Where a hop from what stands ends that some way makes: 74, so 75."""
    if not state.drafts:
        yield from _set_off(state, number, value, world)
    if state.standing is None or state.standing.value is None or not state.drafts:
        return
    here, last = state.standing.value, state.drafts[-1]
    if here in world.facts.numbers or last.result is None:
        return
    sign, size = (Sign.PLUS, value - here) if value > here else (Sign.MINUS, here - value)
    if size > here:
        return
    hop = Operation(sign, here, exact(size))
    meant = Operation(sign, exact(last.forced or 0), exact(size))
    known = turned_side(hop) in world.lefts or turned(Equation(hop, exact(value))) in world.wrong
    known = known or (last.forced != here and turned_side(meant) in world.lefts)
    if size and hop != world.facts.asked and known:
        right = Quantity(exact(size), number.span, said=False)
        frame = Frame(sign=sign, right=right, result=number, op_said=False)
        start = replace(state.standing, said=False)
        yield _with_step(state, frame, start, world).and_costs(weights.ARRIVED)


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
        yield _with_step(before, frame, one, world).and_costs(weights.ARRIVED + 1)


def _counted(state: State, number: Quantity, value: Exact, world: World) -> Iterator[State]:
    """One more number of a count."""
    counting = bool(state.drafts) and state.drafts[-1].counted
    before = state.standing if counting else None
    if before is None and state.bare and state.bare[-1].after == len(state.drafts):
        before = state.bare[-1].quantity
    if before is None and not state.drafts and not state.bare:
        yield from _count_begun(state, number, value, world)
    if before is None or before.value is None:
        return
    here = before.value
    skip = value - here if value > here else here - value
    groups = (*world.facts.numbers, here, *_last_skip(state)) if world.groups else ()
    if skip not in (*_SKIPS, *groups) or not skip:
        return
    sign = Sign.PLUS if value > here else Sign.MINUS
    last = state.drafts[-1].left if counting else None
    if isinstance(last, Operation) and last.sign is not sign:
        return
    unsaid = COUNTED
    span = (before.span[0], number.span[1])
    draft = Draft(Operation(sign, here, exact(skip)), unsaid, span, number.leaf)
    known = turned_side(draft.left) in world.lefts
    first = 0 if counting else weights.COUNTING
    known = known or here in world.facts.numbers or (world.groups and skip == here)
    yield replace(
        state,
        drafts=(*state.drafts, draft),
        bare=state.bare if counting else state.bare[:-1],
        standing=number,
        so=False,
        cost=state.cost + first + (0 if known or counting else weights.STRANGE),
    )


def _last_skip(state: State) -> tuple[Exact, ...]:
    """Return by how much the last step counted on."""
    last = state.drafts[-1] if state.drafts else None
    if last is None or not last.counted:
        return ()
    return tuple(one for one in leaves(last.left) if not isinstance(one, Blank))[1:]


def _count_begun(state: State, number: Quantity, value: Exact, world: World) -> Iterator[State]:
    """Yield the first number of a count that begins one past a number of the problem."""
    signs = [sign for sign in (Sign.PLUS, Sign.MINUS) if sign in world.signs]
    if value in world.facts.numbers or world.groups or len(signs) != 1:
        return
    start = exact(value - 1 if signs[0] is Sign.PLUS else value + 1)
    if start in world.facts.numbers:
        draft = Draft(Operation(signs[0], start, 1), BEGUN, number.span, number.leaf)
        cost = state.cost + weights.COUNTING - 1
        yield replace(state, drafts=(draft,), standing=number, so=False, cost=cost)
