"""A step made of its frame: what was said of it, what stands then, and what it costs."""

from collections.abc import Iterator

from waysaid.hearing.draft import Draft
from waysaid.hearing.reading import Part
from waysaid.hearing.spoken import weights
from waysaid.hearing.spoken.anew import bottom_of
from waysaid.hearing.spoken.change import replace
from waysaid.hearing.spoken.cost import borne_out, follows, step_cost
from waysaid.hearing.spoken.frame import HOPS, Frame, Quantity
from waysaid.hearing.spoken.moved import pair_of
from waysaid.hearing.spoken.state import Bare, State
from waysaid.hearing.spoken.world import World, asks
from waysaid.hearing.worth import worth
from waysaid.number import (
    Claim,
    Equation,
    Exact,
    Operation,
    Sign,
    leaves,
)


def with_step(state: State, frame: Frame, left: Quantity, world: World) -> State:
    """Return the state after the step of a frame, with its left side, and what the step costs."""
    state, frame = _answering(state, frame, left, world)
    made = world.made.get((frame, left))
    if made is None:
        made = world.made[frame, left] = _made(frame, left, world)
    draft, stands, cost, known = made
    assert frame.right is not None
    state = _said_late(state, (left, frame.right))
    less = known if left.said or state.drafts else 0
    less += _known_result(state, draft, world) or _told_by_problem(draft, world)
    less += follows(draft, state.drafts, world)
    return state.stepped(
        draft,
        cost - less,
        standing=stands or state.standing,
        spoken=stands or state.spoken,
        amount=frame.right,
    )


def _made(frame: Frame, left: Quantity, world: World) -> tuple[Draft, Quantity | None, int, int]:
    """Return the step of a frame, where it ends, its cost, and what of it is borne out."""
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
        by_digits=frame.by_digits,
    )
    ends = draft.ends
    stands = None if ends is None else Quantity(ends, draft.span)
    known = borne_out(draft, (left, frame.right, result), world)
    return draft, stands, step_cost(draft, world), known


def _answering(state: State, frame: Frame, left: Quantity, world: World) -> tuple[State, Frame]:
    """Return a step with the result that was said before it: it's eleven because two and eight.

    A number that the step itself holds is no result of it: seven because seven and four; unless it
    is all that is asked. Nor is one that other steps came after, unless the step does come to it;
    nor so many parts, of which the step only works out the top: three ninths, because seven take
    away four.
    """
    assert frame.right is not None
    assert frame.sign is not None
    if state.reason is None or frame.result is not None or frame.whole is not None:
        return state, frame
    if _of_its_tops(state.reason, replace(frame, left=left)):
        claim = Bare(state.reason, len(state.drafts), final=True)
        return replace(state, reason=None, bare=(*state.bare, claim)), frame
    side = Operation(frame.sign, left.leaf, frame.right.leaf)
    asked = world.groups and asks(side, world)
    held = state.reason.value in (left.value, frame.right.value) and not asked
    others = bool(state.drafts) and state.drafts[-1].span[0] > state.reason.span[1]
    odd = held or others or not left.said
    true = state.reason.value == replace(frame, left=left).comes_to
    if odd and not true:
        return state, frame
    if not true and _of_more(state.reason, side, world):
        claim = Bare(state.reason, len(state.drafts), final=True)
        return replace(state, reason=None, bare=(*state.bare, claim)), frame
    result = replace(state.reason)
    return replace(state, reason=None), replace(frame, result=result)


def _of_more(reason: Quantity, side: Operation, world: World) -> bool:
    """Tell whether a number said before its reasons is the answer, and the step only part of it.

    Of `sixteen because the eight and the two` for 8 + 6 + 2 nobody says that two make sixteen.
    """
    return reason.value == world.facts.answer and not asks(side, world)


def _of_its_tops(reason: Quantity, frame: Frame) -> bool:
    """Tell whether a step of whole numbers comes to the top of a number said before it."""
    bottom, top = bottom_of(reason.leaf), frame.comes_to
    if bottom is None or not isinstance(top, int) or reason.value is None:
        return False
    wholes = isinstance(frame.left and frame.left.leaf, int)
    return wholes and top == reason.value * bottom != reason.value


def _known_result(state: State, draft: Draft, world: World) -> int:
    """Return what an unsaid result does not cost where it was named before: 8 x 10, halve 16."""
    if draft.result is not None or draft.forced is None:
        return 0
    rests = [before.result for before in state.drafts[-1:] if _leaves(before, draft)]
    named = draft.forced in rests or any(draft.forced in leaves(one.left) for one in state.drafts)
    return weights.UNSAID if named or _count_filled(state, draft, world) else 0


def _count_filled(state: State, draft: Draft, world: World) -> bool:
    """Tell whether a hop from the end of a count is what is taken from: 54 and six, for 60."""
    last, pair = state.drafts[-1] if state.drafts else None, pair_of(draft)
    if last is None or pair is None or not last.counted or Sign.MINUS not in world.signs:
        return False
    return pair[:2] == (last.stands, Sign.PLUS) and draft.forced == world.facts.numbers[0]


def _told_by_problem(draft: Draft, world: World) -> int:
    """Return what an unsaid result does not cost where it stands on the board: 38 and 2, to 40.

    That is in a problem with two sides, for a hop from a number of it to another.
    """
    if draft.result is not None or not isinstance(world.facts.problem, Equation | Claim):
        return 0
    left, own = draft.left, world.facts.numbers
    hop = isinstance(left, Operation) and left.sign in HOPS and worth(left.left) in own
    return weights.UNSAID if hop and draft.forced in own else 0


def _leaves(before: Draft, draft: Draft) -> bool:
    """Tell whether a step takes away, and what it leaves is then so many groups: 32 left, 8 fours.

    Or shares, and what comes of it is: half is 21, that's seven threes.
    """
    if not isinstance(before.left, Operation) or not isinstance(draft.left, Operation):
        return False
    shared = before.left.sign is Sign.OVER and draft.left.sign is Sign.TIMES
    return shared or before.left.sign is Sign.MINUS


def _said_late(state: State, numbers: tuple[Quantity, ...]) -> State:
    """Return the state in which numbers just said are the results that steps before left out."""
    for number in numbers:
        value = number.value
        if number.said and value is not None:
            for late in filled(state, number, value):
                state = replace(late, standing=state.standing, so=state.so)
    return state


def filled(state: State, number: Quantity, value: Exact) -> Iterator[State]:
    """Yield the result of an earlier step whose result was not said."""
    for place in range(len(state.drafts) - 1, -1, -1):
        draft = state.drafts[place]
        if draft.result is not None or draft.whole or draft.forced != value:
            continue
        if any(later.left == draft.left for later in state.drafts[place + 1 :]):
            continue
        span = (draft.span[0], max(draft.span[1], number.span[1]))
        told = replace(draft, result=number.leaf, span=span)
        drafts = (*state.drafts[:place], told, *state.drafts[place + 1 :])
        cost = state.cost - weights.UNSAID + weights.FILLED
        yield replace(state, drafts=drafts, standing=number, so=False, cost=cost)
        return


def ends_earlier(state: State, number: Quantity) -> bool:
    """Tell whether a number is what a step before the last comes to, whose result was not said."""
    return any(one.result is None and one.forced == number.value for one in state.drafts[:-1])


def loose(state: State, number: Quantity) -> State:
    """Return the state with the number still to be explained."""
    one = Bare(number, len(state.drafts), state.so)
    return replace(state, bare=(*state.bare, one), so=False, spoken=number, denied=False)


def reasoned(state: State, number: Quantity) -> Iterator[State]:
    """Yield a number before its reasons: a claim, or the result of the step that comes next."""
    promised = loose(replace(state, so=True), number)
    yield promised
    yield replace(promised, bare=state.bare, reason=number)
