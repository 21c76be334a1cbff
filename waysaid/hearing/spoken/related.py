"""Ways with groups told by what they have in common with the problem: a share like it, a double."""

from fractions import Fraction
from math import lcm

from waysaid.hearing.draft import Draft
from waysaid.hearing.spoken.frame import HOPS
from waysaid.hearing.spoken.moved import pair_of
from waysaid.hearing.spoken.outline import shared_of
from waysaid.hearing.spoken.tally import tallied
from waysaid.hearing.spoken.world import World
from waysaid.number import Exact, Operation, Sign, exact
from waysaid.ways import Family


def related(drafts: tuple[Draft, ...], world: World) -> Family | None:
    """Return the family of steps that go by a product or sharing related to the problem's."""
    return (
        _by_share(drafts, world)
        or _counted_off(drafts, world)
        or _quartered(drafts, world)
        or _doubled_once(drafts, world)
        or tallied(drafts, world)
        or _part_by_part(drafts, world)
        or _in_each_whole(drafts, world)
        or _tops_worked(drafts, world)
    )


def both_rounded(drafts: tuple[Draft, ...], world: World) -> Family | None:
    """Tell both numbers of a sum made larger and friendly, and what was too much taken off."""
    numbers, asked = world.facts.numbers, world.facts.asked
    first, last = (pair_of(draft) for draft in drafts) if len(drafts) == 2 else (None, None)
    if first is None or last is None or not isinstance(asked, Operation) or len(numbers) != 2:
        return None
    if asked.sign is not Sign.PLUS or first[1] is not Sign.PLUS or last[1] is not Sign.MINUS:
        return None
    if not {first[0], first[2]}.isdisjoint(numbers) or last[0] != drafts[0].stands:
        return None
    over = Fraction(first[0] + first[2] - sum(numbers))
    pairs = zip(map(Fraction, (first[0], first[2])), numbers, strict=True)
    close = sum(abs(one - own) for one, own in pairs)
    return Family.ADJUST if over == last[2] and close <= max(1, min(numbers)) else None


def _by_share(drafts: tuple[Draft, ...], world: World) -> Family | None:
    """Tell a sharing worked out from one that is like it.

    From one by so many times as many: 360 / 30 = 12, so 360 / 15 = 24, is scaled and undone. From
    one of a part that goes into the whole: 100 / 25 = 4, so three times four for 300 / 25.
    """
    shared = shared_of(world)
    first, last = (pair_of(draft) for draft in drafts) if len(drafts) == 2 else (None, None)
    if shared is None or first is None or last is None or first[1] in HOPS:
        return None
    whole, size = shared
    if first[:2] == (whole, Sign.OVER) and last == (whole, Sign.OVER, size) and first[2] != size:
        return Family.ADJUST
    product, ends = first[1] is Sign.TIMES, drafts[0].stands
    part = ends if product else first[0]
    count = (first[0] if first[2] == size else first[2]) if product else ends
    times = Fraction(whole) / Fraction(part or 1)
    if size not in first[::2] or last[1] is not Sign.TIMES or times.denominator != 1 or times == 1:
        return None
    return Family.FACTOR_STEPS if {last[0], last[2]} == {count, times} else None


def _counted_off(drafts: tuple[Draft, ...], world: World) -> Family | None:
    """Tell a product a little larger than what is shared, and the groups too many: 60 - 3 = 57."""
    shared = shared_of(world)
    first, last = (pair_of(draft) for draft in drafts) if len(drafts) == 2 else (None, None)
    if shared is None or first is None or last is None or first[1] is not Sign.TIMES:
        return None
    whole, size = shared
    off = last[1] is Sign.MINUS and last[0] == drafts[0].stands and last[2] in (size, 2 * size)
    return Family.NEAR_FACT if off and size in first and drafts[1].forced == whole else None


def _doubled_once(drafts: tuple[Draft, ...], world: World) -> Family | None:
    """Tell one factor doubled and no more said, where the other is even: 35 x 2, for 4 x 35."""
    asked, pair = world.facts.asked, pair_of(drafts[0]) if len(drafts) == 1 else None
    if pair is None or not isinstance(asked, Operation) or asked.sign is not Sign.TIMES:
        return None
    one, other = world.facts.numbers[0], world.facts.numbers[-1]
    groups = other if pair[0] == one else one
    twice = pair[1:] == (Sign.TIMES, 2) and pair[0] in (one, other)
    return Family.FACTOR_STEPS if twice and groups > 2 and groups % 2 == 0 else None


def _quartered(drafts: tuple[Draft, ...], world: World) -> Family | None:
    """Tell one factor made smaller as often as the other is made larger: 36 / 4 = 9, 9 x 100."""
    asked, numbers = world.facts.asked, world.facts.numbers
    pairs = [pair_of(draft) for draft in drafts]
    last = pairs[-1] if len(pairs) > 1 else None
    if last is None or last[1] is not Sign.TIMES or len(numbers) != 2:
        return None
    if not isinstance(asked, Operation) or asked.sign is not Sign.TIMES:
        return None
    if drafts[-1].forced != world.facts.answer or not {last[0], last[2]}.isdisjoint(numbers):
        return None
    cut = any(pair and pair[1] is Sign.OVER and pair[0] in numbers for pair in pairs[:-1])
    return Family.DOUBLE_HALVE if cut else None


def digits_multiplied(drafts: tuple[Draft, ...], world: World) -> bool:
    """Tell a digit that stands for tens multiplied as the digit it is: six times two for 27 x 6."""
    asked = world.facts.asked
    if not isinstance(asked, Operation) or asked.sign is not Sign.TIMES or not world.whole:
        return False
    tens = {exact(int(one) // 10 % 10) for one in world.facts.numbers} - {0}
    own = {*world.facts.numbers}
    pairs = [pair for pair in map(pair_of, drafts) if pair and pair[1] is Sign.TIMES]
    return any(one in tens and other in own for pair in pairs for one, other in _turns(pair))


def _part_by_part(drafts: tuple[Draft, ...], world: World) -> Family | None:
    """Tell a part taken of each piece of the other number: half of a half, and of a quarter."""
    asked, numbers = world.facts.asked, world.facts.numbers
    if not isinstance(asked, Operation) or asked.sign not in (Sign.OF, Sign.TIMES):
        return None
    if not world.parted or len(numbers) != 2:
        return None
    pairs = [pair for pair in map(pair_of, drafts) if pair is not None]
    for part, whole in (numbers, numbers[::-1]):
        pieces = [piece for pair in pairs if (piece := _piece(pair, part)) is not None]
        if len(pieces) > 1 and sum(pieces) == whole:
            return Family.BREAK_UP
    return None


def _piece(pair: tuple[Exact, Sign, Exact], part: Exact) -> Exact | None:
    """Return what a step takes the part of; None where it takes another, or none."""
    one, sign, other = pair
    if sign is Sign.OVER:
        return one if part * Fraction(other) == 1 else None
    if sign not in (Sign.OF, Sign.TIMES) or part not in (one, other):
        return None
    return other if part == one else one


def _in_each_whole(drafts: tuple[Draft, ...], world: World) -> Family | None:
    """Tell how many of the part are in one whole, and then what is asked: 1 is 4/4, 3 / 1/4."""
    asked, first = world.facts.asked, drafts[0]
    if not world.parted or not isinstance(asked, Operation) or asked.sign is not Sign.OVER:
        return None
    named = first.left == 1 or (first.result == 1 and not isinstance(first.left, int))
    return Family.CHUNK_OUT if named and len(drafts) > 1 and not first.whole else None


def _tops_worked(drafts: tuple[Draft, ...], world: World) -> Family | None:
    """Tell the tops of two fractions worked with, both in the same parts: five minus three sixths.

    Bottoms that are worked with, too, are no way.
    """
    numbers = [Fraction(one) for one in world.facts.numbers]
    if world.hop is None or not world.parted or len(numbers) != 2:
        return None
    bottom = lcm(*(one.denominator for one in numbers))
    tops = (exact(numbers[0] * bottom), exact(numbers[1] * bottom))
    pairs = [pair for pair in map(pair_of, drafts) if pair and pair[1] is world.hop]
    return Family.RENAME if [(one, other) for one, _, other in pairs] == [tops] else None


def _turns(pair: tuple[Exact, Sign, Exact]) -> tuple[tuple[Exact, Exact], ...]:
    return ((pair[0], pair[2]), (pair[2], pair[0]))
