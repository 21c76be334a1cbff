"""Ways told by a fact that undoes what is asked, by groups found in it, or by its places."""

from waysaid.hearing.draft import Draft
from waysaid.hearing.spoken.frame import HOPS
from waysaid.hearing.spoken.moved import pair_of
from waysaid.hearing.spoken.outline import opposite, shared_of
from waysaid.hearing.spoken.world import World, asks
from waysaid.number import Exact, Operation, Sign
from waysaid.ways import Family


def undone_beside(drafts: tuple[Draft, ...], world: World) -> Family | None:
    """Tell the fact that undoes what is asked, and besides only what is asked: 8 + 6 = 14, 14 - 8.

    It goes with a word of asking (eight and what makes fourteen) or with the answer to prove.
    """
    rest = tuple(draft for draft in drafts if draft.whole or not asks(draft.left, world))
    return opposite(rest, world) if len(rest) == 1 and len(drafts) > 1 else None


def chunks_seen(drafts: tuple[Draft, ...], world: World) -> Family | None:
    """Tell groups found in pieces of what is shared: thirty is ten threes, eighteen is six threes.

    What the pieces make may be told, what is left when one is taken out, and what the counts make;
    results may be wrong. A product that is all that is shared is a fact thought of rather.
    """
    shared = shared_of(world)
    if shared is None:
        return None
    whole, size = shared
    pairs = [pair for pair in map(pair_of, drafts) if pair is not None]
    groups = [pair for pair in pairs if pair[1] is Sign.TIMES]
    hops = [pair for pair in pairs if pair[1] in HOPS]
    if len(pairs) < len(drafts) or not groups or len(groups) + len(hops) < len(pairs):
        return None
    if not all(size in pair[::2] for pair in groups) or size in _counts(groups, size):
        return None
    if not hops or whole in {draft.forced for draft in drafts if pair_of(draft) in groups}:
        return None
    here = {draft.stands for draft in drafts} | {whole, *_counts(groups, size)}
    left = [pair[0] for pair in hops if pair[1] is Sign.MINUS]
    if any(start > whole for start in left) or not (whole in left or len(groups) > 1):
        return None
    if not all({*pair[::2]} <= here for pair in hops):
        return None
    return Family.CHUNK_OUT


def _counts(groups: list[tuple[Exact, Sign, Exact]], size: Exact) -> list[Exact]:
    """Return how many groups each product is of."""
    return [pair[2] if pair[0] == size else pair[0] for pair in groups]


def run_on(drafts: tuple[Draft, ...], world: World) -> Family | None:
    """Tell the hundreds and tens of two numbers put together, then the rest one by one.

    Of 256 + 178: 200 + 100 = 300, and 50 more, and 70, and 6, and 8.
    """
    asked, numbers = world.facts.asked, world.facts.numbers
    if not isinstance(asked, Operation) or asked.sign is not Sign.PLUS or len(numbers) != 2:
        return None
    pairs = [pair for pair in map(pair_of, drafts) if pair is not None]
    ends = [draft.stands for draft in drafts[:-1]]
    on = all(pair[1] is Sign.PLUS for pair in pairs) and [pair[0] for pair in pairs[1:]] == ends
    if not on or len(pairs) < 3 or len(pairs) < len(drafts) or not world.whole:
        return None
    told = sorted([pairs[0][0], *(pair[2] for pair in pairs)])
    pieces = sorted(piece for number in numbers for piece in _by_place(int(number)))
    return Family.SPLIT_THEN_JUMP if told == pieces else None


def _by_place(number: int) -> list[int]:
    """Return what each digit of a whole number is worth: 200, 50 and 6 of 256."""
    digits = str(number)
    return [int(one) * 10**at for at, one in enumerate(reversed(digits)) if one != "0"]
