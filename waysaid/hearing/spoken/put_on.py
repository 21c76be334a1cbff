"""Wholes and a part said in one breath, as they were put together: three, three and a half."""

from collections.abc import Iterator
from fractions import Fraction
from typing import TypeGuard

from waysaid.hearing.draft import Draft
from waysaid.hearing.spoken import weights
from waysaid.hearing.spoken.change import replace
from waysaid.hearing.spoken.frame import Quantity
from waysaid.hearing.spoken.state import Bare, State
from waysaid.hearing.spoken.world import World
from waysaid.number import Exact, Expression, Form, Operation, Sign, Written, exact, leaves, parts


def part_put_on(state: State, number: Quantity, world: World) -> Iterator[State]:
    """Yield the step that puts a part of the problem on the wholes that stand.

    Or on what a number of the problem was treated as: seven eighths is like one, so one and five
    eighths.
    """
    leaf = number.leaf
    if world.hop is None or not _is_mixed(leaf):
        return
    whole, rest = int(exact(leaf)), exact(exact(leaf) % 1)
    if _stands(state, whole, rest, world) or _near(state, whole, rest, world):
        size = leaf.size if isinstance(leaf, Written) else Fraction(rest).denominator
        part = parts(int(Fraction(rest) * size), size)
        draft = Draft(Operation(Sign.PLUS, whole, part), (), number.span, leaf)
        after = state.stepped(draft, -weights.NEXT, standing=number, spoken=number)
        final = Bare(number, len(after.drafts), final=True)
        yield replace(after, bare=(*state.bare, final)) if state.so else after


def _is_mixed(leaf: Expression) -> TypeGuard[Fraction | Written]:
    """Tell whether a number was said as wholes and a part."""
    if isinstance(leaf, Written):
        return leaf.form is Form.PARTS and bool(leaf.whole)
    return isinstance(leaf, Fraction) and Fraction(leaf) > 1


def _stands(state: State, whole: int, rest: Exact, world: World) -> bool:
    """Tell whether the wholes were just worked out, and the part is one not yet worked with."""
    if not state.drafts or state.standing is None or state.standing.value != whole:
        return False
    own = {exact(Fraction(one) % 1) for one in world.facts.numbers}
    used = {one for draft in state.drafts for one in leaves(draft.left)}
    return rest in own - used and state.latest is None


def _near(state: State, whole: int, rest: Exact, world: World) -> bool:
    """Tell whether the part is one number of a sum, and the wholes are near the other.

    That is where a number was treated as another, or named before.
    """
    own = world.facts.numbers
    named = all(said.quantity.value in (whole, *own) for said in state.bare)
    if state.drafts or not named or not (state.bare or state.free):
        return False
    if world.hop is not Sign.PLUS or len(own) != 2:
        return False
    one, other = own
    return any(
        part == rest and 0 < abs(Fraction(whole) - Fraction(near)) < Fraction(1, 2)
        for part, near in ((one, other), (other, one))
    )
