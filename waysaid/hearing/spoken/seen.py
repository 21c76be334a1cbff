"""Which family the steps of a picture belong to, its groups counted right or wrong."""

from waysaid.hearing.draft import Draft
from waysaid.hearing.spoken.moved import pair_of
from waysaid.hearing.spoken.world import World
from waysaid.number import Image, ImageKind, Sign
from waysaid.ways import Family

_FRAMES = (ImageKind.FRAME, ImageKind.PAIRS)

_FRIENDLY = (5, 10)
"""What two groups that go together make, where they are not alike: as the ways of a picture."""


def put_together(drafts: tuple[Draft, ...], world: World) -> Family | None:
    """Tell the groups of a picture put together one after the other; two that go together first.

    A group may have been miscounted, and a result be wrong. Groups all alike are counted on. Of two
    dice, a third group is one that was cut off.
    """
    problem = world.facts.problem
    pairs = [pair for pair in map(pair_of, drafts) if pair is not None]
    if not isinstance(problem, Image) or not pairs or len(pairs) < len(drafts):
        return None
    first, *later = pairs
    ends = [draft.stands for draft in drafts[:-1]]
    if any(pair[1] is not Sign.PLUS for pair in pairs) or [pair[0] for pair in later] != ends:
        return None
    if later and first[0] == first[2] and all(pair[2] == first[0] for pair in later):
        return Family.COUNTING
    if problem.kind is ImageKind.ARRAY:
        return None
    if later and problem.kind is ImageKind.DICE and len(problem.numbers) == len(drafts):
        return None
    together = 1 < first[0] == first[2] or first[0] + first[2] in _FRIENDLY
    return Family.PARTNERS if later and together else Family.SPLIT


def thought_full(drafts: tuple[Draft, ...], world: World) -> Family | None:
    """Tell a frame's places without the empty ones, however many they are: 20 - 7 = 13."""
    problem, pair = world.facts.problem, pair_of(drafts[0]) if len(drafts) == 1 else None
    if pair is None or not isinstance(problem, Image) or problem.kind not in _FRAMES:
        return None
    taken = pair[1] is Sign.MINUS and pair[0] == problem.numbers[0]
    return Family.ADJUST if taken and 0 < pair[2] < pair[0] else None
