"""What an unlikely step costs: untrue, without a result, in no way, from nowhere."""

from waysaid.hearing.draft import Draft
from waysaid.hearing.reading import Part
from waysaid.hearing.spoken import weights
from waysaid.hearing.spoken.frame import worth
from waysaid.hearing.spoken.world import World
from waysaid.hearing.turned import turned, turned_side
from waysaid.number import Exact, leaves


def step_cost(draft: Draft, world: World) -> int:
    """Return how unlikely a step is: untrue, without a result, in no way, from nowhere."""
    cost = 0
    forced = draft.forced
    if draft.result is None:
        cost += weights.UNSAID
    elif forced is None or value_said(draft) != forced:
        known = turned(draft.equation) in world.wrong
        cost += weights.SLIP if known else weights.FALSE
    if turned_side(draft.left) not in world.lefts:
        named = draft.result is not None and Part.RIGHT not in draft.open
        if named and forced in world.numbers and value_said(draft) == forced:
            return cost + weights.UNTRACED
        cost += weights.STRANGE
        cost += weights.UNTRACED * sum(one not in world.numbers for one in leaves(draft.left))
    return cost


def value_said(draft: Draft) -> Exact | None:
    """Return what the result said is worth; None where none was."""
    return None if draft.result is None else worth(draft.result)
