"""Pieces put together of which only what they come to was said."""

from collections import Counter
from collections.abc import Iterator

from waysaid.hearing.draft import COUNTED, RESULT_ALONE, Draft
from waysaid.hearing.reading import Part
from waysaid.hearing.spoken import weights
from waysaid.hearing.spoken.anew import reckoned_anew
from waysaid.hearing.spoken.frame import Quantity
from waysaid.hearing.spoken.outline import shared_of
from waysaid.hearing.spoken.part import all_and_part, base_of
from waysaid.hearing.spoken.state import State, counts, results, unused
from waysaid.hearing.spoken.world import World, as_written
from waysaid.hearing.turned import turned_side
from waysaid.hearing.worth import worth
from waysaid.number import (
    Blank,
    Equation,
    Exact,
    Expression,
    Operation,
    Sign,
    Written,
    chain,
    exact,
)

_PIECES = range(2, 7)
"""How many pieces may be put together with only their sum said. Our choice."""


def joined(state: State, number: Quantity, value: Exact, world: World) -> Iterator[State]:
    """Pieces put together of which only what they come to was said."""
    anew = list(reckoned_anew(state, number, value, world))
    if anew:
        yield from anew
        return
    yield from _up_to(state, number, value, world)
    pools = [unused(state), hop_sizes(state, world)]
    if world.groups:
        pools.append(counts(state) if shared_of(world) else ())
        ends = tuple(ends for _, ends in results(state))
        pools += [ends, *_pairs(ends, value, world), all_and_part(state, world)]
    kept = _kept_whole(state, world) if world.groups else ()
    for pool in (*pools, kept):
        whole = _put_together(pool, value)
        if whole is not None and turned_side(whole) not in map(
            turned_side, (draft.left for draft in state.drafts)
        ):
            side = as_written(whole, world)
            draft = Draft(side, RESULT_ALONE, number.span, number.leaf)
            more = weights.JOINED - _borne_out(state, pool, world)
            bare = () if pool is kept and _shares_kept(state) else state.bare
            yield state.stepped(draft, more, standing=number, bare=bare)
            return


def joined_amiss(state: State, world: World) -> State:
    """Return the state with two results put together, as some way has it, to the last number said.

    Of `thirty by three ninety, four by three twelve, a hundred and three` it is 90 + 12, for what
    else was meant: the sum is marked as not true.
    """
    last, ends = state.latest, unused(state)
    told = all(one.result is not None and one.open[-2:] != COUNTED for one in state.drafts)
    if last is None or len(ends) != len(state.drafts) or len(ends) != 2 or not told:
        return state
    side, value = Operation(Sign.PLUS, *ends), last.quantity.value
    if value is None or last.quantity.many or value <= max(ends) or not world.groups:
        return state
    if turned_side(side) not in world.lefts or value in world.facts.numbers:
        return state
    draft = Draft(side, RESULT_ALONE, last.quantity.span, last.quantity.leaf)
    return state.stepped(draft, weights.SLIP, bare=state.bare[:-1], standing=last.quantity)


def kept_put_on(state: State, world: World) -> State:
    """Return the state with a number kept and what came of the rest of it put together.

    Of `forty, and the half is twenty` for 150 % of 40 nobody says what they come to.
    """
    whole = sum_of(_kept_whole(state, world)) if world.groups else None
    if whole is None or not _shares_kept(state):
        return state
    if worth(whole) != world.facts.answer or turned_side(whole) not in world.lefts:
        return state
    span = (state.bare[0].quantity.span[0], state.drafts[-1].span[1])
    return state.stepped(Draft(whole, (Part.OP, Part.RIGHT), span), bare=())


def _kept_whole(state: State, world: World) -> tuple[Exact, ...]:
    """Return a number of the problem named before the work, and what came of the rest of it.

    Of `six, and half of six is three, so nine` for 1.5 x 6 the six is kept and the three put on it.
    """
    one = state.bare[0] if len(state.bare) == 1 else None
    ends = unused(state)
    if one is None or one.after or one.quantity.value not in world.facts.numbers or len(ends) != 1:
        return ()
    return (one.quantity.value, ends[0])


def _shares_kept(state: State) -> bool:
    """Tell whether the last step shares the number that was kept: six, and half of six."""
    left = state.drafts[-1].left
    kept = state.bare[0].quantity.value
    return isinstance(left, Operation) and left.sign is Sign.OVER and worth(left.left) == kept


def _put_together(pool: tuple[Exact, ...], value: Exact) -> Expression | None:
    """Return the sum of all the pieces, or the difference of two, that comes to the value.

    Half of a number, said again, is no difference: twenty, half of that is ten, so ten.
    """
    whole = sum_of(pool)
    if whole is None:
        return None
    first = pool[0]
    if sum(pool) == value:
        return whole
    if len(pool) == 2 and first - pool[1] == value != pool[1] and pool[1]:
        return Operation(Sign.MINUS, first, pool[1])
    return None


def sum_of(pool: tuple[Exact, ...]) -> Operation | None:
    """Return all the pieces put together, those below zero taken off; None where one is nothing."""
    if len(pool) not in _PIECES or not all(pool):
        return None
    first, *rest = pool
    signed = ((Sign.MINUS, exact(-one)) if one < 0 else (Sign.PLUS, one) for one in rest)
    whole = chain(first, *signed)
    return whole if isinstance(whole, Operation) else None


def last_two(state: State, world: World) -> Operation | None:
    """Return the last two results put together, as some way has it: sixty, and half of it."""
    ends = [ends for _, ends in results(state)][-2:]
    side = Operation(Sign.PLUS, *ends) if len(ends) > 1 else None
    return side if side is not None and turned_side(side) in world.lefts else None


def _pairs(ends: tuple[Exact, ...], value: Exact, world: World) -> list[tuple[Exact, Exact]]:
    """Return the two parts of a number that come to the value, where no other two do."""
    if base_of(world) is None or len(ends) < 3:
        return []
    found: list[tuple[Exact, Exact]] = []
    before = Counter[Exact]()
    for other in ends:
        one = exact(value - other)
        found += [(one, other)] * before[one]
        before[other] += 1
    return found if len(found) == 1 else []


def _borne_out(state: State, pool: tuple[Exact, ...], world: World) -> int:
    """Return what the last hop's unsaid end does not cost where the sum of all hops was said."""
    last = state.drafts[-1] if state.drafts else None
    if last is None or last.result is not None or pool != hop_sizes(state, world):
        return 0
    return weights.UNSAID


_MOST_HOPS = 2
"""How many hops may be put together with only their sum said. Our choice."""


def hop_sizes(state: State, world: World) -> tuple[Exact, ...]:
    """Return the sizes of hops that go on from the number taken to the one it is taken from."""
    ends = _ends(world)
    if ends is None or not state.drafts:
        return ()
    here, there = ends
    sizes: list[Exact] = []
    for draft in state.drafts:
        left = draft.left
        if not isinstance(left, Operation) or not _starts(left, here):
            return ()
        if isinstance(left.right, Operation | Blank):
            return ()
        sizes.append(exact(left.right))
        here = draft.stands if draft.stands is not None else here
    return tuple(sizes) if here == there and len(sizes) <= _MOST_HOPS else ()


def _starts(left: Operation, here: Exact) -> bool:
    """Tell whether a side is a hop on from a number, however the number is written."""
    return (
        left.sign is Sign.PLUS
        and not isinstance(left.left, Operation | Blank)
        and exact(left.left) == here
    )


def _ends(world: World) -> tuple[Exact, Exact] | None:
    """Return where hops up to a difference begin and end; None where no difference is asked.

    Of a sum or difference with one part missing, the part that is there and the whole.
    """
    asked, numbers = world.facts.asked, world.facts.numbers
    problem = world.facts.problem
    if isinstance(problem, Equation) and len(numbers) == 2 and world.hop is not None:
        return min(numbers), max(numbers)
    if not isinstance(asked, Operation) or asked.sign is not Sign.MINUS or len(numbers) != 2:
        return None
    return numbers[1], numbers[0]


def _up_to(state: State, number: Quantity, value: Exact, world: World) -> Iterator[State]:
    """Yield a last hop of which only the size was said, and the sum of all: and then a half.

    A size that was itself renamed may be told for that alone: a quarter is two eighths.
    """
    ends, standing = _ends(world), state.standing
    if ends is None or standing is None or state.latest is None or standing.value is None:
        return
    size = state.latest.quantity
    if size.value is None:
        return
    if standing.value + size.value != ends[1]:
        return
    span = size.span
    hop = Draft(Operation(Sign.PLUS, exact(standing.value), size.leaf), (Part.LEFT, Part.OP), span)
    arrived = Quantity(ends[1], span, said=False)
    before = state.stepped(hop, bare=state.bare[:-1], standing=arrived)
    sizes = hop_sizes(before, world)
    whole = _put_together(sizes, value)
    if whole is None:
        return
    draft = Draft(as_written(whole, world), RESULT_ALONE, number.span, number.leaf)
    plainly = weights.HOPPED if not isinstance(size.leaf, Written) else 0
    yield before.stepped(draft, -plainly, standing=number)


def undoes(state: State, world: World) -> bool:
    """Tell whether one hop alone goes from the number taken to the one it is taken from."""
    return len(state.drafts) == 1 and bool(hop_sizes(state, world))
