"""Ways with groups told in short: a factor opened and its products named, or the products alone."""

from fractions import Fraction

from waysaid.hearing.draft import Draft
from waysaid.hearing.spoken.frame import HOPS
from waysaid.hearing.spoken.moved import pair_of
from waysaid.hearing.spoken.outline import shared_of
from waysaid.hearing.spoken.world import World
from waysaid.number import Blank, Exact, Image, Operation, Sign, signed_terms
from waysaid.ways import Family

_MOST_OFF = 3
"""How many groups more or fewer make a neighbouring fact. Our choice."""


def _factors(world: World) -> tuple[Exact, ...] | None:
    """Return the two factors that are asked for; None in any other problem."""
    asked = world.facts.asked
    if not isinstance(asked, Operation) or asked.sign is not Sign.TIMES:
        return None
    return tuple(world.facts.numbers) if len(world.facts.numbers) == 2 else None


def products_alone(drafts: tuple[Draft, ...], world: World) -> Family | None:
    """Tell the products of a factor's tens and ones put together, neither told: 120 + 8.

    One group more than the tens is rather a neighbouring fact: 70 + 7 for 11 x 7.
    """
    pair, factors = pair_of(drafts[0]) if len(drafts) == 1 else None, _factors(world)
    if pair is None or factors is None or pair[1] is not Sign.PLUS:
        return None
    for one, other in (factors, factors[::-1]):
        ones = one % 10
        if one > 10 and ones > 1 and (pair[0], pair[2]) == ((one - ones) * other, ones * other):
            return Family.BREAK_UP
    return None


def from_neighbour(drafts: tuple[Draft, ...], world: World) -> Family | None:
    """Tell a hop from a neighbouring product, its size right or wrong: 70 - 9 for 9 x 7."""
    factors = _factors(world)
    hops = [draft for draft in drafts if not (factors and _groups_off(draft, factors))]
    pair = pair_of(hops[0]) if len(hops) == 1 else None
    if pair is None or factors is None or pair[1] not in HOPS or pair[0] in factors:
        return None
    for one, other in (factors, factors[::-1]):
        groups = Fraction(pair[0]) / Fraction(other or 1)
        off = groups - one if pair[1] is Sign.MINUS else one - groups
        if groups.denominator == 1 and 0 < off <= _MOST_OFF:
            return Family.NEAR_FACT
    return None


def _groups_off(draft: Draft, factors: tuple[Exact, ...]) -> bool:
    """Tell how many groups there are said as near others: nineteen is one less than twenty."""
    pair = pair_of(draft)
    near = pair is not None and pair[1] in HOPS and 0 < pair[2] <= _MOST_OFF
    return near and draft.stands in factors


def chunks_counted(drafts: tuple[Draft, ...], world: World) -> Family | None:
    """Tell groups taken out and then counted, a product right or wrong: ten fours, seven fours."""
    shared = shared_of(world)
    parts = [pair for pair in map(pair_of, drafts[:-1]) if pair is not None]
    terms = signed_terms(drafts[-1].left) if drafts and not drafts[-1].whole else None
    if shared is None or len(drafts) < 3 or len(parts) < len(drafts) - 1 or not terms:
        return None
    signs = {sign for _, sign, _ in parts}
    if len(terms) < 2 or len(signs) != 1 or any(sign is not Sign.PLUS for sign, _ in terms):
        return None
    if signs == {Sign.TIMES} and all(shared[1] in pair[::2] for pair in parts):
        counts = [pair[2] if pair[0] == shared[1] else pair[0] for pair in parts]
        alike = sorted(counts) == sorted(one for _, one in terms if not isinstance(one, Blank))
        return Family.CHUNK_OUT if alike else None
    if signs == {Sign.OVER} and all(pair[2] == shared[1] for pair in parts):
        return Family.BREAK_UP
    return None


def taken_off(drafts: tuple[Draft, ...], world: World) -> Family | None:
    """Tell groups taken off one by one from what is shared: 24 - 3 = 21, 21 - 3 = 18."""
    shared, here = shared_of(world), drafts[0].left if drafts else None
    if shared is None or here is None:
        return None
    whole, size = shared
    hops = [one for draft in drafts for one in (signed_terms(draft.left) or ())[1:]]
    first = signed_terms(here) or ()
    alike = all(hop == (Sign.MINUS, size) for hop in hops) and len(hops) >= len(drafts)
    begun = bool(first) and first[0] == (Sign.PLUS, whole)
    return Family.CHUNK_OUT if alike and begun and len(hops) >= _MOST_OFF else None


def counts_put_right(drafts: tuple[Draft, ...], world: World) -> Family | None:
    """Tell more groups than are shared, and some counted off: 100 / 4 = 25, 25 - 2, for 92 / 4.

    Or what was too much taken off the groups as it is, 25 - 8; how many groups that is may be told.
    """
    shared = shared_of(world)
    pairs = [pair for pair in map(pair_of, drafts) if pair is not None]
    if shared is None or len(pairs) < max(2, len(drafts)) or pairs[-1][1] not in HOPS:
        return None
    first, *between, last = pairs
    if first[1] is Sign.OVER and first[2] == shared[1]:
        count, whole = drafts[0].stands, first[0]
    elif first[1] is Sign.TIMES and shared[1] in first[::2]:
        count, whole = (first[2] if first[0] == shared[1] else first[0]), drafts[0].forced or 0
    else:
        return None
    told = all(_off(pair, drafts[0].stands, shared[1]) for pair in between)
    off = bool(between) and last[1] is Sign.MINUS
    few = last[2] <= _MOST_OFF or off or last[2] == abs(whole - shared[0])
    near = told and few and last[0] == count and (off or not between)
    return Family.NEAR_FACT if near and drafts[0].stands != shared[0] else None


def _off(pair: tuple[Exact, Sign, Exact], start: Exact | None, size: Exact) -> bool:
    """Tell a step to what is shared, from more or less of it, or the groups that it is."""
    return (pair[1] in HOPS and pair[0] == start) or (pair[1] is Sign.TIMES and size in pair[::2])


def rounded_whole(drafts: tuple[Draft, ...], world: World) -> Family | None:
    """Tell a number made friendly and put to the other one whole: 38 + 2 = 40, 27 + 40 = 67."""
    numbers = world.facts.numbers
    if len(drafts) != 2 or len(numbers) != 2 or world.hop is None:
        return None
    first, second = (pair_of(draft) for draft in drafts)
    if first is None or second is None or first[1] not in HOPS or first[0] not in numbers:
        return None
    other = numbers[1] if first[0] == numbers[0] else numbers[0]
    friendly = {drafts[0].stands, other} == {second[0], second[2]}
    return Family.ADJUST if friendly and second[1] is world.hop else None


def across(drafts: tuple[Draft, ...], world: World) -> bool:
    """Tell bottoms of fractions put together like tops, which is no way: 8 + 8 for 3/8 + 3/8.

    Nor is it one to multiply top and bottom by a whole number: 3 x 2 and 3 x 5 for 3 x 2/5.
    """
    numbers = [Fraction(one) for one in world.facts.numbers]
    if not world.parted or len(numbers) != 2:
        return False
    if Sign.TIMES in world.signs and max(numbers).denominator == 1:
        sides = [{max(numbers), one} for one in (min(numbers).numerator, min(numbers).denominator)]
        pairs = [pair for pair in map(pair_of, drafts) if pair and pair[1] is Sign.TIMES]
        return all(any({*pair[::2]} == side for pair in pairs) for side in sides)
    if max(numbers) > 1:
        return False
    bottoms = [one.denominator for one in numbers]
    pairs = [pair for pair in map(pair_of, drafts) if pair and pair[1] in HOPS]
    return min(bottoms) > 1 and any(sorted(pair[::2]) == sorted(bottoms) for pair in pairs)


def doublings(drafts: tuple[Draft, ...], world: World) -> Family | None:
    """Tell rows of a picture doubled and doubled again: 8 + 8 = 16, 16 + 16 = 32."""
    pairs = [pair_of(draft) for draft in drafts]
    if not isinstance(world.facts.problem, Image) or len(pairs) < 2 or not world.sizes:
        return None
    alike = all(pair and pair[1] is Sign.PLUS and pair[0] == pair[2] for pair in pairs)
    return Family.FACTOR_STEPS if alike else None


def double_and_rest(drafts: tuple[Draft, ...], world: World) -> Family | None:
    """Tell one addend doubled, and what the other has more put on: five and five, and three."""
    first, last = (pair_of(draft) for draft in drafts) if len(drafts) == 2 else (None, None)
    asked, numbers = world.facts.asked, world.facts.numbers
    if first is None or last is None or not isinstance(asked, Operation) or len(numbers) != 2:
        return None
    if asked.sign is not Sign.PLUS or first[1] is not Sign.PLUS or last[1] is not Sign.PLUS:
        return None
    one, more = min(numbers), max(numbers) - min(numbers)
    doubled = first[0] == first[2] == one and more < one
    on = last == (drafts[0].stands, Sign.PLUS, more)
    return Family.NEAR_DOUBLE if doubled and on else None
