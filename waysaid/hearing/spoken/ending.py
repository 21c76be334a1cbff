"""What is settled at the end of a line: what was only said again, and sums said early."""

from collections.abc import Iterator
from itertools import pairwise

from waysaid.hearing.draft import COUNTED, Draft
from waysaid.hearing.reading import Part
from waysaid.hearing.spoken import weights
from waysaid.hearing.spoken.alone import BEGUN
from waysaid.hearing.spoken.change import replace
from waysaid.hearing.spoken.frame import HOPS
from waysaid.hearing.spoken.pieces import joined
from waysaid.hearing.spoken.places import PLACES
from waysaid.hearing.spoken.state import Bare, State
from waysaid.hearing.spoken.world import World, asks
from waysaid.hearing.turned import turned_side
from waysaid.number import Expression, Operation, leaves


def even_count(state: State, world: World) -> bool:
    """Tell whether every count has at least two steps: two numbers alone are no count."""
    opens = [(), *(draft.open for draft in state.drafts), ()]
    first = state.drafts[0] if state.drafts else None
    begun = first is not None and first.open == BEGUN and not asks(first.left, world)
    if begun and opens[2] != COUNTED:
        return False
    return not any(
        here == COUNTED and before[-2:] != COUNTED and after != COUNTED
        for (before, here), (_, after) in zip(pairwise(opens), pairwise(opens[1:]), strict=False)
    )


def ends_there(state: State, world: World) -> bool:
    """Tell whether the last thing said is the hop that would end the work: and then the seven."""
    if not state.drafts or state.latest:
        return False
    last = state.drafts[-1]
    return last.result is None and last.forced == world.facts.answer


def restates(state: State, world: World) -> State:
    """Return the state without what was only named: the problem, or a step said later, whole."""
    kept = tuple(
        draft
        for place, draft in enumerate(state.drafts)
        if draft.result is not None
        or (len(state.drafts) == 1 and not _unnamed(draft, (), world))
        or (
            not _unnamed(draft, state.drafts[:place], world)
            and not _asks(draft, world)
            and not _later(draft, state.drafts[place + 1 :])
        )
    )
    gone = len(state.drafts) - len(kept)
    if not gone:
        return state
    tens = {side for draft in state.drafts if draft not in kept for side in _in_tens(draft.left)}
    marked = tuple(
        replace(draft, by_digits=True) if turned_side(draft.left) in tens else draft
        for draft in kept
    )
    return replace(state, drafts=marked, cost=state.cost - gone * weights.UNSAID)


def _unnamed(draft: Draft, before: tuple[Draft, ...], world: World) -> bool:
    """Tell whether neither number of a step was said: the tens, and no more of them.

    Groups put on or taken off were said by their number: less two sevens. Nor were results of steps
    before it that are put together: and then add those.
    """
    if world.sizes and isinstance(draft.left, Operation) and draft.left.sign in HOPS:
        return False
    if before and {*leaves(draft.left)} <= {one.stands for one in before}:
        return False
    return Part.LEFT in draft.open and Part.RIGHT in draft.open and not draft.counted


def _asks(draft: Draft, world: World) -> bool:
    """Tell whether a step only says the problem, its factors in either order."""
    return asks(draft.left, world) if world.groups else draft.left == world.facts.asked


def _later(draft: Draft, others: tuple[Draft, ...]) -> bool:
    """Tell whether a step is said again later, or in digits first: three and two, so thirty..."""
    sides = {turned_side(draft.left), *_in_tens(draft.left)}
    return any(turned_side(other.left) in sides for other in others)


def _in_tens(side: Expression) -> Iterator[Expression]:
    """Yield the sum or difference of two digits as one of so many tens and hundreds."""
    if not isinstance(side, Operation) or side.sign not in HOPS:
        return
    left, right = side.left, side.right
    if (
        isinstance(left, int)
        and isinstance(right, int)
        and min(left, right) > 0
        and max(left, right) < 10
    ):
        for place in PLACES:
            yield turned_side(Operation(side.sign, left * place, right * place))


def begun_again(state: State) -> State:
    """Return the state without a number that was said again where the rest was taken back.

    Of `forty and fifty is a hundred, no wait forty and fifty` the first forty was taken back, too.
    """
    kept = tuple(one for one in state.bare if not _begun_again(one, state))
    return state if len(kept) == len(state.bare) else replace(state, bare=kept)


def _begun_again(one: Bare, state: State) -> bool:
    value, end = one.quantity.value, one.quantity.span[1]
    backs = [back for begin, back in state.dropped if begin == end]
    return any(
        draft.span[0] >= back and value in leaves(draft.left)
        for back in backs
        for draft in state.drafts
    )


def joined_late(state: State, world: World) -> State:
    """Return the state with pieces put together of which the sum was said before its pieces.

    What a later step works with is no such sum: you cut each quarter in half.
    """
    for one in state.bare:
        value = one.quantity.value
        named = not one.after and value in world.facts.numbers
        named = named or any(value in leaves(draft.left) for draft in state.drafts[one.after :])
        if one.after == len(state.drafts) or value is None or named:
            continue
        for after in joined(state, one.quantity, value, world):
            kept = tuple(other for other in state.bare if other is not one)
            return replace(after, bare=kept)
    return state
