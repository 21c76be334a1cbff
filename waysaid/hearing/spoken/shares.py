"""Parts of a number worked with one by one, of which only what they come to was said."""

from collections.abc import Iterator

from waysaid.hearing.draft import RESULT_ALONE, Draft
from waysaid.hearing.reading import Part
from waysaid.hearing.spoken import weights
from waysaid.hearing.spoken.change import replace
from waysaid.hearing.spoken.frame import Frame, Quantity
from waysaid.hearing.spoken.state import State
from waysaid.hearing.spoken.step import with_step
from waysaid.hearing.spoken.world import World
from waysaid.hearing.worth import worth
from waysaid.number import Exact, Operation, Sign, exact, leaves

_WORKED = (Sign.TIMES, Sign.OVER)


def parts_worked(state: State, frame: Frame, left: Quantity, world: World) -> Iterator[State]:
    """Yield the steps of a number's parts where the two numbers joined are what they come to.

    Of `52 is forty and twelve, so ten and three` for 52 / 4 they are 40 / 4 and 12 / 4; of
    `thirteen is ten and three, so forty and twelve` for 13 x 4 they are 10 x 4 and 3 x 4.
    """
    right = frame.right
    if frame.sign is not Sign.PLUS or right is None or not state.drafts:
        return
    before = state
    for part, said in zip(_parts(state, world), (left, right), strict=False):
        side = _with_other(part, before, world)
        if side is None or worth(side) != said.value:
            return
        state = state.stepped(Draft(side, RESULT_ALONE, said.span, said.leaf), standing=said)
    if len(state.drafts) < len(before.drafts) + 2:
        return
    state = state.and_costs(-weights.NEXT)
    yield state if frame.result is None else with_step(state, frame, left, world)


def _parts(state: State, world: World) -> tuple[Exact, ...]:
    """Return the parts that a number of the problem was opened into by the last step."""
    last = state.drafts[-1]
    if not last.whole or worth(last.left) not in world.facts.numbers or last.result is None:
        return ()
    return tuple(exact(one) for one in leaves(last.result) if isinstance(one, int))


def _with_other(part: Exact, state: State, world: World) -> Operation | None:
    """Return a part of a factor times the other one, or of what is shared by how many share it."""
    asked, whole = world.facts.asked, worth(state.drafts[-1].left)
    if not isinstance(asked, Operation) or asked.sign not in _WORKED:
        return None
    one, other = world.facts.numbers[0], world.facts.numbers[-1]
    if whole != one and asked.sign is Sign.OVER:
        return None
    return Operation(asked.sign, part, other if whole == one else one)


def shared_alone(state: State, number: Quantity, world: World) -> Iterator[State]:
    """Yield the sharing of the number said before, of which the groups come: the twelve is two.

    It is the likelier where the number is all that was not shared before.
    """
    latest, asked = state.latest, world.facts.asked
    if latest is None or not isinstance(asked, Operation) or asked.sign is not Sign.OVER:
        return
    shared, divisor, whole = latest.quantity, world.facts.numbers[-1], world.facts.numbers[0]
    if shared.value is None or not 0 < shared.value < whole or divisor < 2 or number.many:
        return
    side = Operation(Sign.OVER, shared.leaf, divisor)
    if worth(side) == number.value:
        span = (shared.span[0], number.span[1])
        draft = Draft(side, (Part.OP, Part.RIGHT), span, number.leaf)
        used = [draft.left for draft in state.drafts if isinstance(draft.left, Operation)]
        rest = any(worth(one.left) == whole - shared.value for one in used)
        if number.value == 1 and not rest:
            return
        more = -weights.ARRIVED if rest else 0 if state.drafts else weights.HOPPED
        yield replace(state.stepped(draft, more, standing=number), bare=state.bare[:-1])
