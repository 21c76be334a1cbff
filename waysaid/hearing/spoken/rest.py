"""What is left over of a sharing: the groups, the rest, and the step that gave it."""

from collections.abc import Iterator

from waysaid.hearing.draft import RESULT_ALONE, Draft
from waysaid.hearing.meaning import Meaning
from waysaid.hearing.reading import AnswerSaid
from waysaid.hearing.spoken import weights
from waysaid.hearing.spoken.by_digit import shares_digits
from waysaid.hearing.spoken.change import replace
from waysaid.hearing.spoken.close import closed
from waysaid.hearing.spoken.frame import Frame, Quantity, Slot
from waysaid.hearing.spoken.item import Item
from waysaid.hearing.spoken.moved import pair_of
from waysaid.hearing.spoken.sharing import rest_shared
from waysaid.hearing.spoken.state import State, counts
from waysaid.hearing.spoken.world import World
from waysaid.hearing.worth import worth
from waysaid.number import (
    Equation,
    Exact,
    Form,
    Operation,
    Remainder,
    Sign,
    Written,
    exact,
    leaves,
)


def left_over(state: State, item: Item, world: World) -> Iterator[State]:
    """So many groups, and so many left over: before or behind the number left."""
    rest = state.frame.bare
    if Sign.OVER not in world.signs:
        if rest is not None and isinstance(world.facts.problem, Equation) and world.sizes:
            after = _taken_off(replace(state, frame=Frame()), rest, world)
            yield from (after,) if after.drafts != state.drafts else ()
        yield state
        return
    share = rest_shared(state, rest, world) if rest is not None else None
    if share is not None:
        yield state.framed(share, -weights.ARRIVED)
    for after in closed(state, world):
        yield after.and_costs(weights.IGNORED)
        yield after.framed(Frame(verb=Meaning.LEFT_OVER, wants=Slot.RIGHT))
    if rest is not None and not _groups_again(rest, state):
        yield from with_rest(replace(state, frame=Frame()), rest, world)


def _groups_again(number: Quantity, state: State) -> bool:
    """Tell whether a number is the groups once more, where the rest was said: three, and two."""
    told = state.verdict
    return isinstance(told, Remainder) and told.groups == number.value != told.left


def with_rest(state: State, rest: Quantity, world: World) -> Iterator[State]:
    """Yield the states in which the number is what is left over; none where no groups stand."""
    if not isinstance(rest.leaf, int):
        return
    if shares_digits(state.drafts, world) and state.latest is None:
        yield replace(state, spoken=rest).and_costs(weights.REPEATED)
        return
    groups, named = _groups(state, world), state.latest is not None
    if named:
        state = replace(state, bare=state.bare[:-1])
    after = _taken_off(state, rest, world)
    divisor = world.facts.numbers[-1]
    if groups is not None and groups * divisor > 2 * world.facts.numbers[0]:
        return
    wrong = after.cost > state.cost
    if groups is not None and (rest.leaf < divisor or after is state or wrong or named):
        whole = groups * divisor + rest.leaf == world.facts.numbers[0]
        slip = weights.SLIP if rest.leaf < divisor or whole else weights.FALSE
        cost = 0 if (whole and rest.leaf < divisor) or after is not state else slip
        found = Remainder(groups, rest.leaf)
        told = weights.NEXT if rest.leaf < divisor else 0
        yield replace(after, verdict=found, spoken=rest).and_costs(cost - told)
    elif after is not state:
        yield replace(after, spoken=rest)


def _groups(state: State, world: World) -> int | None:
    """Return how many groups stand: a number said alone since, or those of the last step."""
    if state.latest is not None:
        said = state.latest.quantity.value
        if said != world.facts.numbers[0]:
            return said if isinstance(said, int) and said else None
    if not state.drafts:
        return None
    for draft in reversed(state.drafts):
        if not isinstance(draft.left, Operation):
            continue
        if draft.counted and not {*leaves(draft.left)} <= {*counts(state), *_quotients(state)}:
            continue
        if draft.left.sign is Sign.TIMES:
            return _other_factor(draft.left, world)
        if draft.left.sign is not Sign.MINUS or draft.left.left in counts(state):
            return draft.stands if isinstance(draft.stands, int) else None
    return None


def _quotients(state: State) -> Iterator[Exact | None]:
    """Yield what each step that shares comes to: groups that may be put together."""
    for draft in state.drafts:
        if isinstance(draft.left, Operation) and draft.left.sign is Sign.OVER:
            yield draft.stands


def _other_factor(product: Operation, world: World) -> int | None:
    divisor = world.facts.numbers[-1]
    values = [worth(product.left), worth(product.right)]
    if divisor not in values:
        return None
    other = values[1 - values.index(divisor)]
    return other if isinstance(other, int) else None


def _taken_off(state: State, rest: Quantity, world: World) -> State:
    """Return the state with the step that leaves the rest: all there was, less what was used."""
    there, used = _there(state, world), _used(state)
    if used is None or used >= there or rest.value is None:
        return state
    left = Operation(Sign.MINUS, exact(there), exact(used))
    draft = Draft(left, RESULT_ALONE, rest.span, rest.leaf)
    cost = -1 if worth(left) == rest.value else weights.SLIP
    if cost < 0 and state.drafts and state.drafts[-1].result is None:
        cost -= weights.UNSAID
    return state.stepped(draft, cost, standing=rest)


def _there(state: State, world: World) -> Exact:
    for draft in reversed(state.drafts):
        if isinstance(draft.left, Operation) and draft.left.sign is Sign.MINUS:
            return draft.stands or 0
    others = [one for one in world.facts.numbers if one not in world.sizes]
    return others[0] if Sign.OVER not in world.signs and others else world.facts.numbers[0]


def _used(state: State) -> Exact | None:
    """Return what the last groups came to, or where the count stopped."""
    known = {*counts(state), *_quotients(state)}
    drafts = [one for one in state.drafts if not (one.counted and {*leaves(one.left)} <= known)]
    if not drafts:
        return None
    last = drafts[-1]
    product = isinstance(last.left, Operation) and last.left.sign is Sign.TIMES
    if not product and not last.counted:
        return None
    return last.stands if all(one != last.stands for one in leaves(last.left)) else None


def still_to_share(said: AnswerSaid | None, state: State, world: World) -> bool:
    """Tell whether a number is only what is not shared yet: ten each, 28 left; then the 24.

    One that was promised is the answer, right or wrong.
    """
    if Sign.OVER not in world.signs or len(world.facts.numbers) != 2 or not isinstance(said, int):
        return False
    last = state.bare[-1] if state.bare else None
    final = last and last.final and last.after == len(state.drafts)
    if said == world.facts.answer or (last and final and last.quantity.value == said):
        return False
    whole, divisor = world.facts.numbers
    if said == whole and not (last and last.final):
        return True
    if any(pair_of(draft) == (said, Sign.OVER, divisor) for draft in state.drafts):
        return True
    used = sum(_shared(pair_of(draft), draft.stands, divisor) for draft in state.drafts)
    ended = pair_of(state.drafts[-1]) if state.drafts else None
    if ended and ended[:2] == (whole, Sign.MINUS) and state.drafts[-1].stands == said:
        return True
    return 0 < used < whole and exact(whole - used) == said


def _shared(pair: tuple[Exact, Sign, Exact] | None, ends: Exact | None, divisor: Exact) -> Exact:
    """Return how much a step shares out; nothing where it is no sharing, or no groups."""
    if pair is None or divisor not in pair:
        return 0
    if pair[1] is Sign.TIMES:
        return ends or 0
    return pair[0] if pair[1:] == (Sign.OVER, divisor) else 0


def only_shared(said: AnswerSaid | None, world: World) -> bool:
    """Tell whether parts are rather a sharing than an answer: seventy two over eight, for 720 / 80.

    That is where whole numbers are shared, and the parts come to a whole number, or to more than
    one and not to the answer.
    """
    if Sign.OVER not in world.signs or not isinstance(said, Written) or said.whole:
        return False
    if said.form is not Form.PARTS or not all(isinstance(one, int) for one in world.facts.written):
        return False
    value = exact(said)
    return isinstance(value, int) or (value > 1 and value != world.facts.answer)


def went_on(told: Remainder, drafts: tuple[Draft, ...]) -> bool:
    """Tell whether groups with a rest were put to more groups in the end: ten, and three more."""
    last = pair_of(drafts[-1]) if len(drafts) > 1 else None
    ends = drafts[-1].result if last is not None else None
    if last is None or last[1] is not Sign.PLUS or not isinstance(ends, int):
        return False
    return told.groups in last[::2] and ends > told.groups
