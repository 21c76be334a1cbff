"""Another name of a number inside a step, or of so many parts said before their reasons."""

from collections.abc import Iterator

from waysaid.hearing.draft import Draft
from waysaid.hearing.spoken import weights
from waysaid.hearing.spoken.anew import other_writing, tops_told
from waysaid.hearing.spoken.change import replace
from waysaid.hearing.spoken.close import closed
from waysaid.hearing.spoken.frame import Quantity, Slot
from waysaid.hearing.spoken.state import State
from waysaid.hearing.spoken.world import World


def right_anew(state: State, said: Quantity) -> Iterator[State]:
    """Take another name of the number just said: five minus five quarters, one and a quarter.

    Not where a number goes with itself: a half and a half, two quarters, is a sum gone wrong.
    """
    left, right = state.frame.left, state.frame.right
    if left is None or right is None or state.frame.result is not None or not right.said:
        return
    if right.value != said.value or left.value == right.value:
        return
    if other_writing(right.leaf, said.leaf):
        draft = Draft(right.leaf, (), (right.span[0], said.span[1]), said.leaf)
        yield replace(state.stepped(draft), spoken=said)


def claim_anew(state: State, said: Quantity, world: World) -> Iterator[State]:
    """Take another name of so many parts said before their reasons: six eighths, three and three.

    Of `four thirds because two and two, that's one and a third` it is no result of the sum.
    """
    claim = state.reason
    if claim is None or state.frame.result is not None or claim.value != said.value:
        return
    if not other_writing(claim.leaf, said.leaf):
        return
    for after in closed(state.framed(replace(state.frame, wants=Slot.NONE)), world):
        if after.reason is None and tops_told(after, claim):
            draft = Draft(claim.leaf, (), (claim.span[0], said.span[1]), said.leaf)
            yield replace(after, standing=said).stepped(draft, -weights.UNSAID, spoken=said)
