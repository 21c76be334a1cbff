"""Ways that turn a problem into one worth the same: some moved across, or both numbers changed."""

from collections.abc import Iterator

from waysaid.hearing.draft import Draft
from waysaid.hearing.spoken.frame import HOPS
from waysaid.hearing.spoken.world import World
from waysaid.number import Exact, Number, Operation, Sign, apply, exact
from waysaid.ways import Family

_ALIKE = {
    Sign.PLUS: Family.GIVE_AND_TAKE,
    Sign.MINUS: Family.SHIFT_BOTH,
    Sign.TIMES: Family.DOUBLE_HALVE,
    Sign.OVER: Family.SCALE_BOTH,
}


_TEN = 10


def moved(drafts: tuple[Draft, ...], world: World, told: bool = False) -> Family | None:
    """Tell some moved from one number to the other, or both changed alike.

    Where no word for both told it, both made smaller so that the first comes down to a ten are what
    is taken in two hops: 52 - 2 = 50, and four still to go, for 52 - 6.
    """
    asked, numbers = world.facts.asked, world.facts.numbers
    if not isinstance(asked, Operation) or len(numbers) != 2 or numbers[0] == numbers[1]:
        return None
    changes = {number: (sign, size) for number, sign, size in _changes(drafts, numbers)}
    if len(changes) != 2:
        return None
    (one, size), (other, same) = changes.values()
    if size != same or size in numbers:
        return None
    if asked.sign in HOPS and one is not other:
        return Family.GIVE_AND_TAKE
    if asked.sign is not Sign.MINUS:
        return None
    down = one is Sign.MINUS and (numbers[0] - size) % _TEN == 0 and 0 < numbers[1] - size < _TEN
    return Family.BRIDGE if down and not told else Family.SHIFT_BOTH


def _changes(
    drafts: tuple[Draft, ...], numbers: tuple[Exact, ...]
) -> Iterator[tuple[Exact, Sign, Exact]]:
    """Yield the changes made to the numbers of the problem; none by a hop on from another."""
    ends: Exact | None = None
    for draft in drafts:
        pair, before = pair_of(draft), ends
        ends = draft.stands
        if pair and pair[0] == before:
            continue
        if pair and pair[1] in HOPS:
            start, sign, size = pair
            if start in numbers and size not in numbers:
                yield start, sign, size


def restated(drafts: tuple[Draft, ...], world: World) -> Family | None:
    """Tell two other numbers that come to what is asked, neither of them first worked out."""
    asked, numbers = world.facts.asked, world.facts.numbers
    if not isinstance(asked, Operation) or len(numbers) != 2:
        return None
    ends: set[Exact | None] = set()
    for draft in drafts:
        pair = pair_of(draft)
        if pair and pair[1] is asked.sign and not {pair[0], pair[2]} & {*numbers, *ends}:
            one, sign, other = pair
            like = sign in HOPS or _in_step(one, other, numbers)
            if like and draft.forced == world.facts.answer:
                return _ALIKE.get(sign)
        ends.add(draft.stands)
    return None


def _in_step(one: Exact, other: Exact, numbers: tuple[Exact, ...]) -> bool:
    """Tell whether each number is one of the problem's, made so many times larger or smaller."""
    return all(
        any(apply(Sign.OVER, max(made, number), min(made, number)) % 1 == 0 for number in numbers)
        for made in (one, other)
        if made > 0
    )


def pair_of(draft: Draft) -> tuple[Exact, Sign, Exact] | None:
    """Return the two numbers of a step and its sign; None where it is no such step."""
    left = draft.left
    if draft.whole or not isinstance(left, Operation):
        return None
    if isinstance(left.left, Number) and isinstance(left.right, Number):
        return exact(left.left), left.sign, exact(left.right)
    return None
