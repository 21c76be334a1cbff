"""Groups counted up: of how many groups each step is, whatever made them."""

from fractions import Fraction

from waysaid.hearing.draft import Draft
from waysaid.hearing.spoken.frame import HOPS
from waysaid.hearing.spoken.moved import pair_of
from waysaid.hearing.spoken.outline import shared_of
from waysaid.hearing.spoken.world import World
from waysaid.number import About, Equation, Exact, Operation, Sign
from waysaid.ways import Family

_MOST_OFF = 3
"""How many groups are put on or taken off with no step of their own. Our choice."""

_Pair = tuple[Exact, Sign, Exact]


def tallied(drafts: tuple[Draft, ...], world: World) -> Family | None:
    """Tell groups made in some way, and the last put on or off: double, double, one more, for five.

    Wrong results go on as they were said.
    """
    scaled = any(pair and pair[1] not in HOPS for pair in map(pair_of, drafts))
    if len(drafts) < 2 or not scaled or any(draft.counted for draft in drafts[:-1]):
        return None
    shared = shared_of(world)
    if shared is not None:
        whole, size = shared
        last = _tally(drafts, size)
        if last is None or drafts[-1].forced != whole:
            return None
        return Family.NEAR_FACT if len(drafts) == 2 and abs(last[1]) == 1 else Family.CHUNK_OUT
    asked, numbers = world.facts.asked, world.facts.numbers
    if not isinstance(asked, Operation) or asked.sign is not Sign.TIMES or len(numbers) != 2:
        return None
    if not all(isinstance(one, int) for one in numbers):
        return None
    for groups, size in (numbers, numbers[::-1]):
        found = _tally(drafts, size)
        if found is not None and found[0] == groups:
            return Family.NEAR_FACT if found[1] < 0 else Family.BREAK_UP
    return None


def _tally(drafts: tuple[Draft, ...], size: Exact) -> tuple[Exact, Exact] | None:
    """Return how many groups the steps come to, and how many the last of them put on or off.

    None where a step is no number of groups, or the last puts none on and takes none off.
    """
    known: dict[Exact, Fraction] = {size: Fraction(1)}
    pair: _Pair | None = None
    groups: Fraction | None = None
    for draft in drafts:
        pair = pair_of(draft)
        groups = _groups(pair, size, known) if pair else None
        if groups is None or draft.stands is None:
            return None
        known[draft.stands] = groups
    if pair is None or groups is None or pair[1] not in HOPS:
        return None
    return groups, groups - known[pair[0]]


def _groups(pair: _Pair, size: Exact, known: dict[Exact, Fraction]) -> Fraction | None:
    """Return how many groups a step comes to; None where it is none."""
    one, sign, other = pair
    if sign is Sign.TIMES:
        for start, times in ((one, other), (other, one)):
            if start in known:
                return known[start] * times
        return None
    here = known.get(one)
    if here is None or not other:
        return None
    if sign is Sign.OVER:
        return here / Fraction(other)
    more = known.get(other)
    if more is None:
        more = Fraction(other) / Fraction(size or 1)
        if more.denominator > 1 or more > _MOST_OFF:
            return None
    return here + more if sign is Sign.PLUS else here - more


def told_alone(drafts: tuple[Draft, ...], world: World) -> Family | None:
    """Tell one step that a sharing or a missing factor was found by, and no more.

    A wrong fact, seven nines is fifty six for 7 x _ = 56, the division that gives the factor, or
    the sharing of a part that goes into the whole: four in a hundred for 400 / 25. Of an estimate,
    both numbers made friendly.
    """
    shared, pair = shared_of(world), pair_of(drafts[0]) if len(drafts) == 1 else None
    asked = world.facts.asked
    if pair is not None and isinstance(world.facts.problem, About):
        alike = isinstance(asked, Operation) and asked.sign is pair[1]
        return Family.ADJUST if alike and {*pair[::2]} != {*world.facts.numbers} else None
    if shared is None or pair is None or not pair[0]:
        return None
    whole, size = shared
    missing = isinstance(world.facts.problem, Equation) and pair[1] is Sign.TIMES
    if missing and size in pair[::2] and drafts[0].stands == whole:
        return Family.THINK_TIMES
    if isinstance(world.facts.problem, Equation) and pair == (whole, Sign.OVER, size):
        return Family.KNOWN_FACT
    times = Fraction(whole) / Fraction(pair[0])
    part = pair[1:] == (Sign.OVER, size) and times.denominator == 1 and times > 1
    return Family.FACTOR_STEPS if part else None
