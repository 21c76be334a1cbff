"""A wrong answer that is a number of the problem: twelve take six is six and one more, so seven."""

from waysaid.hearing.draft import Draft
from waysaid.hearing.spoken.moved import pair_of
from waysaid.hearing.spoken.talk import Talk
from waysaid.hearing.spoken.world import World
from waysaid.number import Exact, Operation, Sign, exact


def put_wrong(value: Exact, drafts: tuple[Draft, ...], talk: Talk, world: World) -> bool:
    """Tell whether `so` promised a number of the problem that a difference put right wrongly is.

    Near what is taken was taken first, and what lacks of it put back: it should have been taken
    too. Other hops that end on a number of the problem only arrive at it.
    """
    asked, last = world.facts.asked, talk.promised.numeral if talk.promised else None
    if not isinstance(asked, Operation) or asked.sign is not Sign.MINUS or last is None:
        return False
    if exact(last.leaf) != value or len(drafts) != 2 or drafts[1].stands != value:
        return False
    first, second = map(pair_of, drafts)
    whole, taken = world.facts.numbers[0], world.facts.numbers[-1]
    if first is None or second is None or second[0] != drafts[0].stands:
        return False
    lacks = exact(taken - first[2])
    return first[:2] == (whole, Sign.MINUS) and second[1:] == (Sign.PLUS, lacks)
