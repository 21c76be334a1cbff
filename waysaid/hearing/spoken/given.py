"""What one number gave to the other: the half of it that was not told, seen in what came of it.

One who says that one was slid over, `fifty plus twenty six`, has said both: 49 and 1 more is 50,
and 27 less 1 is 26. Nothing is added whose result was not said.
"""

from collections.abc import Iterator
from itertools import pairwise

from waysaid.hearing.draft import COUNTED, RESULT_ALONE, Draft
from waysaid.hearing.meaning import Meaning
from waysaid.hearing.reading import Part
from waysaid.hearing.spoken.moved import pair_of
from waysaid.hearing.spoken.world import World, as_written
from waysaid.hearing.turned import turned_side
from waysaid.number import Blank, Exact, Operation, Sign, apply, exact, leaves

_OTHER = {Sign.PLUS: Sign.MINUS, Sign.MINUS: Sign.PLUS}


def given(drafts: tuple[Draft, ...], marks: frozenset[Meaning], world: World) -> tuple[Draft, ...]:
    """Return the steps, and the other half of what was given from one number to the other."""
    asked, numbers = world.facts.asked, world.facts.numbers
    told = Meaning.GIVE in marks
    if not isinstance(asked, Operation) or len(numbers) != 2:
        return drafts
    if Meaning.ALIKE in marks:
        return _alike(drafts, asked, world)
    if asked.sign is not Sign.PLUS and not (told and asked.sign is Sign.MINUS):
        return drafts
    for place, draft in enumerate(drafts):
        for half in _halves(draft, drafts[:place], drafts[place + 1 :], told, world):
            if all(turned_side(other.left) != turned_side(half.left) for other in drafts):
                return (*drafts[: place + 1], half, *drafts[place + 1 :])
    return drafts


def counted_from(drafts: tuple[Draft, ...], world: World) -> tuple[Draft, ...]:
    """Return the steps, and the first of a count that begins one past a number of the problem.

    Of `ten eleven twelve` for 12 - 9 the count starts at nine, which nobody said.
    """
    first = next((place for place, one in enumerate(drafts) if one.open == COUNTED), None)
    pair = pair_of(drafts[first]) if first is not None else None
    if first is None or pair is None or world.groups:
        return drafts
    begins, sign, size = pair
    start = exact(apply(_OTHER[sign], begins, size))
    known = {*world.facts.numbers, *(one.stands for one in drafts[:first])}
    if begins in known or start not in world.facts.numbers:
        return drafts
    begun = Draft(Operation(sign, start, size), RESULT_ALONE, drafts[first].span, exact(begins))
    return (*drafts[:first], begun, *drafts[first:])


def cut_short(drafts: tuple[Draft, ...]) -> bool:
    """Tell whether a step starts from the number that the count before it would come to next.

    Of `45, 55, 65, 75, then eight more` the 75 is counted like those before it.
    """
    return any(
        one.counted and Part.LEFT not in after.open and _goes_on(one, after)
        for one, after in pairwise(drafts)
    )


def _goes_on(one: Draft, after: Draft) -> bool:
    """Tell whether the first number of a step is one more hop from where a counted one ended."""
    pair, sides = pair_of(one), (after.left, after.result) if after.whole else (after.left,)
    if pair is None or pair[1] not in _OTHER or one.stands is None:
        return False
    starts = [next(iter(leaves(side))) for side in sides if side is not None]
    return apply(pair[1], one.stands, pair[2]) in starts


def _halves(
    draft: Draft, before: tuple[Draft, ...], later: tuple[Draft, ...], told: bool, world: World
) -> Iterator[Draft]:
    """Yield what giving makes of the other number, where a later step has it.

    Where giving was not told but taking, that step must put both new numbers together; so must one
    before: fifty and twenty four, I moved two.
    """
    pair = pair_of(draft)
    numbers = world.facts.numbers
    if pair is None or pair[1] not in _OTHER:
        return
    ways = [(pair[0], pair[2])]
    if pair[1] is Sign.PLUS:
        ways.append((pair[2], pair[0]))
    for one, size in ways:
        if one in numbers and size not in numbers:
            other = numbers[1 - numbers.index(one)]
            sign = _OTHER[pair[1]]
            left = exact(apply(sign, other, size))
            for step in (*later, *(one for one in before if draft.stands in _whole_leaves(one))):
                ends = _whole_leaves(step)
                taken = pair[1] is Sign.MINUS and draft.stands in ends
                if left in ends and (told or taken):
                    side = as_written(Operation(sign, other, size), world)
                    yield Draft(side, RESULT_ALONE, step.span, as_written(left, world))
                    return


def _whole_leaves(step: Draft) -> tuple[Exact, ...]:
    return tuple(one for one in leaves(step.left) if not isinstance(one, Blank))


def _alike(drafts: tuple[Draft, ...], asked: Operation, world: World) -> tuple[Draft, ...]:
    """Return the steps, the first of them said to be worth what is asked: the same as 54 - 20."""
    first = drafts[0] if drafts else None
    if first is None or not isinstance(first.left, Operation) or first.whole:
        return drafts
    own = set(world.facts.numbers)
    if first.left.sign is not asked.sign or not own.isdisjoint(leaves(first.left)):
        return drafts
    if first.forced != world.facts.answer:
        return drafts
    return (Draft(asked, (Part.LEFT,), first.span, first.left, whole=True), *drafts)
