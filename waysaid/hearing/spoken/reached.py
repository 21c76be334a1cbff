"""What a number alone is reached by where groups are worked with: twelve, so twelve hundred."""

from collections.abc import Iterator
from fractions import Fraction

from waysaid.hearing.draft import RESULT_ALONE, Draft
from waysaid.hearing.spoken import weights
from waysaid.hearing.spoken.change import replace
from waysaid.hearing.spoken.frame import Frame, Quantity
from waysaid.hearing.spoken.moved import pair_of
from waysaid.hearing.spoken.state import State, unused
from waysaid.hearing.spoken.step import with_step
from waysaid.hearing.spoken.world import World
from waysaid.hearing.turned import turned_side
from waysaid.number import About, Exact, Operation, Sign

_OFTEN = (2, 10, 100, 1000)
"""By what a number is made larger without a word for it. Our choice."""


def reached(state: State, number: Quantity, value: Exact, world: World) -> Iterator[State]:
    """Yield the step that some way has from what stands to a number alone, or from two results."""
    if not world.sizes:
        return
    yield from _set_off(state, number, value, world)
    yield from _of_named(state, number, value, world)
    here = state.standing.value if state.standing is not None and state.drafts else None
    if here is not None and state.drafts[-1].result is not None:
        side = _known(here, value, world)
        if side is not None:
            yield _from(state, side, number, world).and_costs(weights.ARRIVED)
    yield from _both(state, number, value, world)
    yield from _of_parts(state, number, value, world)


def _known(here: Exact, there: Exact, world: World) -> Operation | None:
    """Return how a way multiplies or shares one number to come to the other."""
    if here <= 1 or there < 1 or here == there:
        return None
    sign = Sign.TIMES if there > here else Sign.OVER
    times = Fraction(max(here, there), min(here, there))
    if times not in (_OFTEN if there > here else _OFTEN[:1]):
        return None
    side = Operation(sign, here, int(times))
    return side if turned_side(side) in world.lefts else None


def _from(state: State, side: Operation, end: Quantity, world: World) -> State:
    """Return the state after a step from what stands of which only the end was said."""
    start = Quantity(side.left, end.span, said=False)
    right = Quantity(side.right, end.span, said=False)
    frame = Frame(left=start, sign=side.sign, right=right, result=end, op_said=False)
    return with_step(state, frame, start, world)


def _both(state: State, number: Quantity, value: Exact, world: World) -> Iterator[State]:
    """Yield the product or quotient of two results of which only what it comes to was said."""
    ends = unused(state)
    if len(ends) != 2 or 1 in ends:
        return
    for sign in (Sign.TIMES, Sign.OVER):
        if sign not in world.signs or not ends[1]:
            continue
        side = Operation(sign, *ends)
        draft = Draft(side, RESULT_ALONE, number.span, number.leaf)
        if draft.forced == value and turned_side(side) in world.lefts:
            yield state.stepped(draft, weights.JOINED, standing=number)


def _of_parts(state: State, number: Quantity, value: Exact, world: World) -> Iterator[State]:
    """Yield the product of two facts that share a part: four 25s, and four fours in 16, so 400."""
    pairs = [pair_of(draft) for draft in state.drafts]
    if len(pairs) != 2 or any(pair is None or pair[1] is not Sign.TIMES for pair in pairs):
        return
    for part, whole in ((state.drafts[1], state.drafts[0]), (state.drafts[0], state.drafts[1])):
        ends = whole.stands
        if part.stands not in world.facts.numbers or ends is None or ends == part.stands:
            continue
        for times in dict.fromkeys(pair_leaves(part)):
            side = Operation(Sign.TIMES, ends, times)
            draft = Draft(side, RESULT_ALONE, number.span, number.leaf)
            if draft.forced == value and turned_side(side) in world.lefts:
                yield state.stepped(draft, weights.JOINED, standing=number)
                return


def pair_leaves(draft: Draft) -> tuple[Exact, ...]:
    """Return the two numbers of a step."""
    pair = pair_of(draft)
    return () if pair is None else (pair[0], pair[2])


def _of_named(state: State, number: Quantity, value: Exact, world: World) -> Iterator[State]:
    """Yield what the numbers named last come to: rounded to 400, kept the 21, so 8400."""
    asked = world.facts.asked
    named = [one.quantity for one in state.bare if one.after == len(state.drafts)][-2:]
    if not named or not isinstance(asked, Operation):
        return
    about = isinstance(world.facts.problem, About)
    whole = Frame(left=named[0], sign=asked.sign, right=named[-1], result=number, op_said=False)
    if len(named) == 2 and named[0] != named[1] and whole.comes_to == value:
        side = Operation(asked.sign, named[0].leaf, named[1].leaf)
        if side != asked and (about or turned_side(side) in world.lefts):
            yield with_step(replace(state, bare=state.bare[:-2]), whole, named[0], world)
    for place, own in enumerate(world.facts.written[:2] if about else ()):
        kept = Quantity(own, number.span, said=False)
        left, right = (kept, named[-1]) if place == 0 else (named[-1], kept)
        frame = Frame(left=left, sign=asked.sign, right=right, result=number, op_said=False)
        if frame.comes_to == value:
            yield with_step(replace(state, bare=state.bare[:-1]), frame, left, world)


def as_factors(frame: Frame, world: World) -> Iterator[Frame]:
    """Yield the product of two numbers joined by `and`: six across and six down, so 36."""
    if frame.sign is not Sign.PLUS or frame.left is None or frame.right is None:
        return
    pair = (frame.left.value, frame.right.value)
    made = replace(frame, sign=Sign.TIMES)
    if not all(one in world.sizes for one in pair) or frame.comes_to == made.comes_to:
        return
    if frame.result is None:
        side = turned_side(Operation(Sign.TIMES, frame.left.leaf, frame.right.leaf))
        if len(world.sizes) > 2 and side in world.lefts:
            yield made
    elif frame.result.value == made.comes_to:
        yield made


def _set_off(state: State, number: Quantity, value: Exact, world: World) -> Iterator[State]:
    """Yield two steps by the same factor from a number of the problem: 1000, of 500 and 250."""
    one = state.bare[0].quantity if len(state.bare) == 1 and not state.drafts else None
    if one is None or one.value is None or one.value in world.facts.numbers:
        return
    for start in dict.fromkeys(world.facts.numbers):
        first, second = _known(start, one.value, world), _known(one.value, value, world)
        if first is None or second is None or first.right != second.right:
            continue
        if first.sign is second.sign:
            before = _from(replace(state, bare=()), first, one, world)
            yield _from(before, second, number, world).and_costs(weights.ARRIVED)
