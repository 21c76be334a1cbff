"""Ways told by numbers made larger or smaller: both alike, one against the other, or halved on.

The order in which the steps were said does not count: three times five, for half of six is three.
"""

from fractions import Fraction

from waysaid.hearing.draft import Draft
from waysaid.hearing.meaning import Meaning
from waysaid.hearing.spoken.moved import pair_of
from waysaid.hearing.spoken.world import World
from waysaid.number import Claim, Exact, Operation, Sign, apply
from waysaid.ways import Family

_AGAINST = {Sign.TIMES: Sign.OVER, Sign.OVER: Sign.TIMES}
"""What undoes a number made larger or smaller."""

Change = tuple[Sign, Exact]
"""What was done to a number: multiplied or divided, and by how much."""


def scaled(drafts: tuple[Draft, ...], marks: frozenset[Meaning], world: World) -> Family | None:
    """Return the family of steps that scale both numbers of the problem; None of any other.

    What is shared and by how many are scaled both where that is told: by a word for both, or by the
    sharing that is left. Three thirds, and two times three, are not. Factors, one as many times
    larger as the other is smaller, are doubled and halved.
    """
    asked, numbers = world.facts.asked, world.facts.numbers
    if not isinstance(asked, Operation) or asked.sign not in _AGAINST or len(numbers) != 2:
        return None
    if Meaning.BOTH in marks and asked.sign is Sign.OVER and _shared_alike(drafts[-1], numbers):
        return Family.SCALE_BOTH
    one, other = (_change(drafts, number) for number in numbers)
    if one is None or other is None or one[1] != other[1] or numbers[0] == numbers[1]:
        return None
    ends = (apply(one[0], numbers[0], one[1]), apply(other[0], numbers[1], other[1]))
    if min(ends) < 1:
        return None
    left = any(_works(draft, asked.sign, ends) for draft in drafts)
    if asked.sign is Sign.OVER:
        told = left or Meaning.BOTH in marks
        return Family.SCALE_BOTH if told and one == other else None
    return Family.DOUBLE_HALVE if left and other[0] is _AGAINST[one[0]] else None


def _shared_alike(draft: Draft, numbers: tuple[Exact, ...]) -> bool:
    """Tell whether a step is the sharing asked with both numbers made smaller alike: 24 / 3."""
    pair, (whole, size) = pair_of(draft), numbers
    if pair is None or pair[1] is not Sign.OVER or not 1 < pair[2] < size:
        return False
    return Fraction(whole) * pair[2] == Fraction(size) * pair[0]


def _change(drafts: tuple[Draft, ...], number: Exact) -> Change | None:
    """Return by how much a number of the problem was multiplied or divided; None where by none."""
    for pair in map(pair_of, drafts):
        if pair is None or pair[1] not in _AGAINST:
            continue
        if pair[0] == number and pair[2] > 1:
            return pair[1:]
        if pair[1] is Sign.TIMES and pair[2] == number and pair[0] > 1:
            return pair[1], pair[0]
    return None


def _works(draft: Draft, sign: Sign, ends: tuple[Exact, Exact]) -> bool:
    """Tell whether a step works out what is asked with both numbers scaled."""
    pair = pair_of(draft)
    if pair is None or pair[1] is not sign:
        return False
    return pair[::2] == ends or (sign is Sign.TIMES and pair[::2] == ends[::-1])


def halved_on(drafts: tuple[Draft, ...], world: World) -> Family | None:
    """Tell a number of a product halved and halved again: 36, 18, 9 for 0.25 x 36."""
    if Sign.TIMES not in world.signs or len(drafts) < 2:
        return None
    pairs = [pair_of(draft) for draft in drafts]
    starts = [pair[0] for pair in pairs if pair and pair[1:] == (Sign.OVER, 2)]
    ends = [draft.stands for draft in drafts[:-1]]
    whole = len(starts) == len(pairs) and starts[0] in world.facts.numbers
    return Family.FACTOR_STEPS if whole and starts[1:] == ends else None


def top_and_bottom(drafts: tuple[Draft, ...], world: World) -> Family | None:
    """Tell top and bottom of one fraction made those of the other: 2 x 2 = 4, 3 x 2 = 6.

    Or, of a claim, a top made of its own bottom: 3/6, for half of six is three.
    """
    if not world.fractions:
        return None
    pairs = [(pair_of(draft), draft.forced) for draft in drafts]
    made = {
        (start, ends)
        for pair, ends in pairs
        if pair and pair[1] in _AGAINST
        for start in pair[:: 2 if pair[1] is Sign.TIMES else 3]
    }
    for one, other in (world.fractions, world.fractions[::-1]):
        if set(zip(one, other, strict=True)) <= made:
            return Family.RENAME
    top_of_bottom = {(bottom, top) for top, bottom in world.fractions if top > 1}
    claimed = isinstance(world.facts.problem, Claim) and not made.isdisjoint(top_of_bottom)
    return Family.RENAME if claimed else None
