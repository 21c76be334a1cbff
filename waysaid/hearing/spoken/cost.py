"""What an unlikely step costs: untrue, without a result, in no way, from nowhere."""

from waysaid.hearing.draft import Draft
from waysaid.hearing.reading import Part
from waysaid.hearing.spoken import weights
from waysaid.hearing.spoken.by_digit import goes_in
from waysaid.hearing.spoken.change import replace
from waysaid.hearing.spoken.frame import Quantity
from waysaid.hearing.spoken.part import of_base
from waysaid.hearing.spoken.world import World
from waysaid.hearing.turned import turned, turned_side
from waysaid.hearing.worth import worth
from waysaid.number import Exact, Expression, Operation, Sign, leaves


def step_cost(draft: Draft, world: World) -> int:
    """Return how unlikely a step is: untrue, without a result, in no way, from nowhere."""
    step = (draft.left, draft.result, draft.open)
    cost = world.costs.get(step)
    if cost is None:
        cost = world.costs[step] = _step_cost(draft, world)
    return cost


def _step_cost(draft: Draft, world: World) -> int:
    cost = 0
    forced = draft.forced
    if draft.result is None:
        cost += weights.UNSAID
    elif forced is None or value_said(draft) not in (forced, goes_in(draft, world)):
        known = turned(draft.equation) in world.wrong
        cost += weights.SLIP if known else weights.FALSE
    if not _known(draft, world):
        named = draft.result is not None and Part.RIGHT not in draft.open
        if named and forced in world.numbers and value_said(draft) == forced:
            return cost + weights.UNTRACED
        cost += weights.STRANGE
        cost += weights.UNTRACED * sum(one not in world.numbers for one in leaves(draft.left))
    return cost


def borne_out(draft: Draft, numbers: tuple[Quantity | None, ...], world: World) -> int:
    """Return how much less odd misheard numbers are in a true step of a way, said in full."""
    whole = Part.OP not in draft.open and Part.RIGHT not in draft.open
    right = (draft.forced, goes_in(draft, world))
    if not whole or draft.result is None or value_said(draft) not in right:
        return 0
    if not _known(draft, world):
        return 0
    return sum(min(one.noise, _MISHEARD) for one in numbers if one) * weights.NOISE * 2 // 3


def follows(draft: Draft, before: tuple[Draft, ...], world: World) -> int:
    """Return how much less odd a step is that goes on rightly from a result said wrong."""
    left, last = draft.left, before[-1] if before else None
    if last is None or last.whole or not isinstance(left, Operation) or last.forced is None:
        return 0
    if last.stands == last.forced or worth(left.left) != last.stands or _known(draft, world):
        return 0
    meant = replace(draft, left=replace(left, left=last.forced), result=None)
    known = _known(meant, world)
    return step_cost(replace(draft, result=None), world) - weights.UNSAID if known else 0


_MISHEARD = 3
"""The most noise of a number that a true step bears out; any beyond is no mishearing."""


def _known(draft: Draft, world: World) -> bool:
    """Tell whether a step is what is asked, or stands in a way."""
    if isinstance(draft.left, Operation) and of_base(draft.left, world):
        return True
    if turned_side(draft.left) in world.halves or goes_in(draft, world) is not None:
        return True
    side, asked = turned_side(draft.left), world.facts.asked
    twice = _twice(draft.left) if world.sizes else None
    if twice is not None and turned_side(twice) in world.lefts:
        return True
    return side in world.lefts or (asked is not None and side == turned_side(asked))


def _twice(left: Expression) -> Operation | None:
    """Return a number put together with itself as two of it; None where it is no such sum."""
    if not isinstance(left, Operation) or left.sign is not Sign.PLUS or left.left != left.right:
        return None
    return Operation(Sign.TIMES, left.left, 2)


def value_said(draft: Draft) -> Exact | None:
    """Return what the result said is worth; None where none was."""
    return None if draft.result is None else worth(draft.result)
