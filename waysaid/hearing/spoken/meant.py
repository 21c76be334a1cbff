"""What one number said of another may mean: a hop and its end, a number turned into the next.

`Seventy takes you to eight hundred`, `eighty is twenty` on the way up, `nine turns into ten`
behind the one that was moved, `if it was sixty it'd be ninety four`.
"""

from collections.abc import Iterator

from waysaid.hearing.reading import Part
from waysaid.hearing.spoken import weights
from waysaid.hearing.spoken.change import replace
from waysaid.hearing.spoken.frame import HOPS, Frame, Quantity
from waysaid.hearing.spoken.moved import pair_of
from waysaid.hearing.spoken.state import State
from waysaid.hearing.spoken.world import World
from waysaid.hearing.worth import worth
from waysaid.number import Exact, Operation, Sign, exact, negative

_NEAR = 10
"""How far from a number of the problem one may be that is used for it. Our choice."""

Meant = tuple[State, Frame, int]
"""The state to go on from, the step that was meant, and how odd it is."""


def meant(one: Quantity, other: Quantity, state: State, world: World) -> Iterator[Meant]:
    """Yield the steps that `one is other` may mean where the two are not worth the same."""
    if world.groups or one.value == other.value:
        return
    yield from _turned(one, other, state, world)
    for size, end in ((one, other), (other, one)):
        yield from _hop(size, end, state, world)
    yield from pretended(one, other, state, world)


def _turned(one: Quantity, other: Quantity, state: State, world: World) -> Iterator[Meant]:
    """Yield a number of the problem that turns into another, by as much as was moved before."""
    if state.amount is None or one.value not in world.facts.numbers:
        return
    for sign in HOPS:
        hop = Frame(left=one, sign=sign, right=replace(state.amount, said=False), result=other)
        if hop.comes_to == other.value:
            yield state, hop, 0


def evened(one: Quantity, other: Quantity, state: State, world: World) -> Frame | None:
    """Return what the other number is made, by as much as one was made more: 40, the other 43.

    Nobody says by how much, of the second nor of the first.
    """
    last = state.drafts[-1] if state.drafts else None
    pair = pair_of(last) if last is not None and Part.RIGHT in last.open else None
    own = world.facts.numbers
    if pair is None or last is None or len(own) != 2 or one.value not in own:
        return None
    if world.hop is not Sign.PLUS or {pair[0], one.value} != {*own} or last.stands in own:
        return None
    sign = Sign.MINUS if pair[1] is Sign.PLUS else Sign.PLUS
    size = Quantity(pair[2], other.span, said=False)
    hop = Frame(left=one, sign=sign, right=size, result=other)
    return hop if hop.comes_to == other.value else None


def _hop(size: Quantity, end: Quantity, state: State, world: World) -> Iterator[Meant]:
    """Yield a hop of which the size and the end were said, from where one stands."""
    for before, start, more in _starts(state, world):
        for sign in HOPS:
            whole = Operation(sign, start.leaf, size.leaf)
            if size.value and worth(whole) == end.value and whole != world.facts.asked:
                left = replace(start, said=False)
                yield before, Frame(left=left, sign=sign, right=size, result=end), more


def _starts(state: State, world: World) -> Iterator[tuple[State, Quantity, int]]:
    """Yield where a hop may start: what stands, the number said before, one of the problem's."""
    if state.standing is not None and state.drafts:
        yield state, state.standing, 0
        return
    if state.bare:
        yield replace(state, bare=state.bare[:-1]), state.bare[-1].quantity, 0
    for number in dict.fromkeys(world.facts.written):
        yield state, Quantity(number, (0, 0), said=False), weights.BASE


def pretended(near: Quantity, end: Quantity, state: State, world: World) -> Iterator[Meant]:
    """Yield a number used for one of the problem's, and what it comes to with the other."""
    numbers = world.facts.numbers
    if len(numbers) != 2 or world.hop is None:
        return
    value = near.value
    if value is None or value in numbers:
        return
    for place, own in enumerate(numbers):
        if not -_NEAR < value - own < _NEAR:
            continue
        other = Quantity(world.facts.written[1 - place], near.span, said=False)
        first, second = (near, other) if place == 0 else (other, near)
        step = Frame(left=first, sign=world.hop, right=second, result=end)
        if step.comes_to == end.value:
            yield state, step, 0


def climbed(state: State, total: Quantity, world: World) -> tuple[tuple[Exact, ...], int] | None:
    """Return the hops that went from one number of the problem to another, `total` in all.

    With them, how many have no result of their own; None where it is no such climb.
    """
    numbers, unsaid = world.facts.numbers, 0
    sizes: list[Exact] = []
    end: Exact | None = None
    for draft in reversed(state.drafts):
        left = draft.left
        plus = isinstance(left, Operation) and left.sign is Sign.PLUS and not draft.counted
        if draft.whole or not isinstance(left, Operation) or not plus:
            break
        here, size = worth(left.left), worth(left.right)
        if size in numbers and here not in numbers:
            here, size = size, here
        if here is None or size is None or end not in (None, draft.forced):
            break
        if end is None and draft.forced not in numbers:
            break
        sizes.append(size)
        unsaid += draft.result is None
        end = here
    if len(sizes) < 2 or end not in numbers or sum(sizes) != total.value:
        return None
    return tuple(reversed(sizes)), unsaid


def cannot(frame: Frame) -> bool:
    """Tell whether more is to be taken off than there is, and nobody said what that leaves."""
    left, right = frame.left and frame.left.value, frame.right and frame.right.value
    if frame.sign is not Sign.MINUS or frame.result is not None or frame.whole is not None:
        return False
    return left is not None and right is not None and 0 <= left < right


def regrouped(frame: Frame, world: World) -> Frame | None:
    """Return a number of a difference, opened into the two parts just said: 40 and 12 for 52."""
    pair = (frame.left, frame.right)
    if frame.sign is not Sign.PLUS or frame.result is not None or frame.whole is not None:
        return None
    if Sign.MINUS not in world.signs or None in pair:
        return None
    plain = (one for one in pair if one is not None and not isinstance(one.leaf, Operation))
    numbers = [one.value for one in plain if one.said]
    known = [one for one in world.facts.written if exact(one) == sum(one or 0 for one in numbers)]
    if len(numbers) != 2 or not known or not set(world.facts.numbers).isdisjoint(numbers):
        return None
    assert frame.left is not None
    whole = Quantity(known[0], frame.left.span, said=False)
    return replace(frame, whole=whole)


def below(state: State) -> State | None:
    """Return the state in which the result just said lies below zero: three take eight, five less.

    None where it cannot.
    """
    if not state.drafts or not state.frame.empty:
        return None
    last = state.drafts[-1]
    said, forced = last.result, last.forced
    if not isinstance(said, int) or said <= 0 or forced != -said:
        return None
    under = Quantity(negative(said), last.span)
    drafts = (*state.drafts[:-1], replace(last, result=under.leaf))
    more = state.cost - weights.FALSE
    return state._replace(drafts=drafts, standing=under, spoken=under, cost=more)
