"""What was said to fill the blank of an equation, and what both its sides come to."""

from collections.abc import Iterator

from waysaid.hearing.draft import Draft
from waysaid.hearing.reading import Part
from waysaid.hearing.spoken.state import State
from waysaid.hearing.spoken.talk import Talk
from waysaid.hearing.spoken.world import World
from waysaid.hearing.turned import turned_side
from waysaid.hearing.worth import worth
from waysaid.number import BLANK, Equation, Exact, Expression, Operation, fill, leaves, sides


def is_total(value: Exact | None, world: World) -> bool:
    """Tell whether a number is what the side without a blank comes to: the 12 of 8 + 4 = _ + 5."""
    problem = world.facts.problem
    if value is None or not isinstance(problem, Equation):
        return False
    return any(worth(side) == value for side in sides(problem))


def blank_filled(state: State, talk: Talk, world: World) -> Exact | None:
    """Return what fills the blank, where the last step says its side of the equation: nine and six.

    It must be said, and no number that stands on the board; a wrong one, where it is all that was
    worked with. A result is then what the other side comes to: seven and five is twelve, too.
    """
    problem = world.facts.problem
    last = state.drafts[-1] if state.drafts else None
    if last is None or last.whole or not isinstance(problem, Equation):
        return None
    if last.result is not None and not is_total(worth(last.result), world):
        return None
    for number in _said(last, talk, world):
        right = number == world.facts.answer
        meant = right or (len(state.drafts) == 1 and number not in world.facts.numbers)
        if meant and turned_side(last.left) == turned_side(_side_filled(problem, number)):
            return number
    return None


def _side_filled(problem: Equation, number: Exact) -> Expression:
    """Return the side with the blank, with a number in it."""
    filled = fill(problem, number)
    return filled.left if BLANK in leaves(problem.left) else filled.right


def _said(draft: Draft, talk: Talk, world: World) -> Iterator[Exact]:
    """Yield the numbers of a step that were said, in it or before it, the last first."""
    left, named = draft.left, {number for _, number in talk.longest}
    if not isinstance(left, Operation):
        return
    for part, side in ((Part.RIGHT, left.right), (Part.LEFT, left.left)):
        value = worth(side)
        own = value in world.facts.numbers
        told = part not in draft.open and not (own and draft.open)
        if value is not None and (told or (value in named and not own)):
            yield value
