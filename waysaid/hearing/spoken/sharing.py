"""What is said short of a sharing: 21 are three, the 4 left is one, one group too many."""

from collections.abc import Iterator
from fractions import Fraction

from waysaid.hearing.draft import COUNTED, RESULT_ALONE, Draft
from waysaid.hearing.meaning import Meaning
from waysaid.hearing.reading import Part
from waysaid.hearing.spoken import weights
from waysaid.hearing.spoken.change import replace
from waysaid.hearing.spoken.frame import HOPS, Frame, Quantity, Slot
from waysaid.hearing.spoken.item import Item
from waysaid.hearing.spoken.moved import pair_of
from waysaid.hearing.spoken.outline import shared_of
from waysaid.hearing.spoken.state import State, counts
from waysaid.hearing.spoken.world import World
from waysaid.hearing.worth import worth
from waysaid.number import (
    Blank,
    Claim,
    Compare,
    Equation,
    Operation,
    Order,
    Remainder,
    Sign,
    exact,
    sides,
    signed_terms,
)


def so_many(whole: Quantity, groups: Quantity, state: State, world: World) -> Frame | None:
    """Return the step of a number that is so many groups: 70 would be ten, and 21 are three.

    It is written as the groups before it, 3 x 7 = 21 behind 10 x 7 = 70, else as 21 / 7 = 3.
    """
    shared = shared_of(world)
    if shared is None:
        return None
    divisor = Quantity(shared[1], groups.span, said=False)
    if worth(Operation(Sign.TIMES, groups.leaf, divisor.leaf)) != whole.value:
        return None
    one = whole.value == divisor.value and not all_that_is_left(state, whole, world)
    if whole.value is None or one or divisor.value in (0, 1):
        return None
    missing = isinstance(world.facts.problem, Equation)
    if missing and whole.value == shared[0]:
        return None
    if missing or counts(state):
        return Frame(left=groups, sign=Sign.TIMES, right=divisor, result=whole)
    return Frame(left=whole, sign=Sign.OVER, right=divisor, result=groups)


def all_that_is_left(state: State, number: Quantity, world: World) -> bool:
    """Tell whether a number is all that was not shared out yet: the 3 of 63, behind 60 / 3."""
    shared, used = shared_of(world), 0 * Fraction(1)
    if shared is None:
        return False
    for pair, draft in zip(map(pair_of, state.drafts), state.drafts, strict=True):
        if pair is not None and shared[1] in pair and pair[1] in (Sign.TIMES, Sign.OVER):
            used += pair[0] if pair[1] is Sign.OVER else draft.stands or 0
    return used > 0 and shared[0] - used == number.value


def factor_asked(frame: Frame, world: World) -> Quantity | None:
    """Return the factor that is asked for: what times six is 48. Another seven is none."""
    factor, whole = frame.right, frame.result
    if frame.sign is not Sign.TIMES or factor is None or whole is None:
        return None
    if factor.value == whole.value:
        return None
    if factor.value not in world.sizes or whole.value not in world.facts.numbers:
        return None
    found = worth(Operation(Sign.OVER, whole.leaf, factor.leaf))
    return None if found is None else Quantity(found, factor.span, said=False)


def rest_shared(state: State, rest: Quantity, world: World) -> Frame | None:
    """Return the sharing of what the number shared before left over: the 4 left is one each."""
    last = state.drafts[-1].left if state.drafts else None
    if not isinstance(last, Operation) or last.sign is not Sign.OVER:
        return None
    used, divisor = worth(last.left), worth(last.right)
    if used is None or divisor is None or len(world.facts.numbers) != 2:
        return None
    if divisor != world.facts.numbers[1] or exact(world.facts.numbers[0] - used) != rest.value:
        return None
    return Frame(left=rest, sign=Sign.OVER, right=Quantity(exact(divisor), rest.span, said=False))


def from_count(state: State, frame: Frame) -> Quantity | None:
    """Return the groups counted last, where the hop is made from them: one six too many, so 9."""
    size, end = frame.right, frame.result
    if size is None or end is None or frame.sign not in HOPS or size.many:
        return None
    for count in (*counts(state)[-1:], *counts(state, turned=True)[-1:]):
        if worth(Operation(frame.sign, count, size.leaf)) == end.value:
            return Quantity(count, size.span, said=False)
    return None


def rest_told(state: State, world: World) -> State:
    """Return the state with the step that left the rest, where the rest was said first."""
    told = state.verdict
    if not isinstance(told, Remainder) or len(state.drafts) != 1 or not world.facts.numbers:
        return state
    only = state.drafts[0]
    used, there = only.stands, world.facts.numbers[0]
    product = isinstance(only.left, Operation) and only.left.sign is Sign.TIMES
    if not product or used is None or there - used != told.left or not told.left:
        return state
    step = Draft(Operation(Sign.MINUS, there, used), COUNTED, only.span, told.left)
    return replace(state, drafts=(only, step))


def doubled(drafts: tuple[Draft, ...]) -> tuple[Draft, ...]:
    """Return the steps of one who kept doubling: 30 x 2 where a count has 30 + 30."""
    return tuple(_doubled(draft) for draft in drafts)


def _doubled(draft: Draft) -> Draft:
    left = draft.left
    if not isinstance(left, Operation) or left.sign is not Sign.PLUS or not draft.counted:
        return draft
    if worth(left.left) is None or worth(left.left) != worth(left.right):
        return draft
    return replace(draft, left=Operation(Sign.TIMES, left.left, 2))


def multiplied(drafts: tuple[Draft, ...]) -> tuple[Draft, ...]:
    """Return the steps, equal numbers put together as so many of them: 50 x 2 for 50 + 50."""
    return tuple(_multiplied(draft) for draft in drafts)


def parts_shared(drafts: tuple[Draft, ...], world: World) -> tuple[Draft, ...]:
    """Return the steps, a quarter of a number written as the number shared by four: 36 / 4.

    That is where all numbers of the problem are whole.
    """
    if not all(isinstance(one, int) for one in world.facts.written):
        return drafts
    return tuple(_part_shared(draft) for draft in drafts)


def _part_shared(draft: Draft) -> Draft:
    left = draft.left
    if not isinstance(left, Operation) or left.sign is not Sign.TIMES or draft.whole:
        return draft
    part, whole = left.left, left.right
    if not isinstance(part, Fraction) or part.numerator != 1 or not isinstance(whole, int):
        return draft
    return replace(draft, left=Operation(Sign.OVER, whole, part.denominator))


def _multiplied(draft: Draft) -> Draft:
    left = draft.left
    if not isinstance(left, Operation) or draft.counted or draft.whole:
        return draft
    terms = signed_terms(left) or ()
    if len(terms) < 2 or len(set(terms)) != 1 or isinstance(terms[0][1], Blank):
        return draft
    return replace(draft, left=Operation(Sign.TIMES, terms[0][1], len(terms)))


def parts_joined(drafts: tuple[Draft, ...], joins: dict[int, Sign]) -> tuple[Draft, ...]:
    """Return the steps, and the one that a plain sign between the last two products makes.

    Fourteen times six is ten times six plus four times six; what is said behind the second product
    is what both come to, where they do.
    """
    if len(drafts) < 2:
        return drafts
    one, other = drafts[-2:]
    sign, here, there = joins.get(other.span[0]), one.stands, other.forced
    if sign is None or here is None or there is None or here < there:
        return drafts
    if not all(_is_product(draft) for draft in (one, other)):
        return drafts
    joined = Draft(Operation(sign, here, there), (Part.LEFT, Part.RIGHT), other.span)
    if other.result not in (None, there):
        if other.stands != joined.forced:
            return drafts
        joined, other = replace(joined, result=other.result), replace(other, result=None)
    return (*drafts[:-1], other, joined)


def _is_product(draft: Draft) -> bool:
    left = draft.left
    return isinstance(left, Operation) and left.sign in (Sign.TIMES, Sign.OVER)


def unit_named(frame: Frame, said: Quantity, world: World) -> bool:
    """Tell whether a number only names what is in a group: one less seven."""
    if Sign.OVER not in world.signs or frame.left is not None or frame.result is not None:
        return False
    small = frame.right is not None and frame.right.value == 1
    return small and frame.sign is Sign.MINUS and said.value == world.facts.numbers[-1]


def dealt(state: State, number: Quantity, world: World) -> Iterator[State]:
    """Yield what so many each come to: ten each, and that's forty, where four share."""
    each = state.latest
    if each is None or Sign.OVER not in world.signs or len(world.facts.numbers) != 2:
        return
    count, divisor = each.quantity, world.facts.numbers[1]
    if count.value is None or count.value in (divisor, 1) or divisor in (0, 1):
        return
    if worth(Operation(Sign.TIMES, count.leaf, divisor)) != number.value:
        return
    left = Operation(Sign.TIMES, count.leaf, divisor)
    span = (count.span[0], number.span[1])
    draft = Draft(left, (Part.OP, Part.RIGHT), span, number.leaf)
    if number.value != world.facts.numbers[0]:
        yield state.stepped(draft, weights.HOPPED, bare=state.bare[:-1], standing=number)


def each(state: State, item: Item, world: World) -> Iterator[State]:
    """Take a number before or behind as what each gets of those who share: ten each."""
    yield state
    if Sign.OVER not in world.signs or len(world.facts.numbers) != 2:
        return
    frame = state.frame
    given = frame.left is None and frame.sign is Sign.PLUS and frame.result is None
    count = frame.right if given and frame.paired else frame.bare
    count = frame.left if frame.verb is Meaning.SHARE and frame.sign is None else count
    if count is not None:
        yield from each_gets(state, count, world)
    elif frame.empty:
        yield state.framed(Frame(verb=Meaning.EACH, wants=Slot.LEFT))


def each_gets(state: State, count: Quantity, world: World) -> Iterator[State]:
    """Yield the product of what each gets and how many share, or the number alone."""
    divisor, there = world.facts.numbers[-1], state.latest
    if there is not None and there.quantity.span[1] + 1 >= count.span[0]:
        there = None
    if (
        there is not None
        and worth(Operation(Sign.TIMES, count.leaf, divisor)) == there.quantity.value
    ):
        right = Quantity(divisor, count.span, said=False)
        shared = Frame(left=there.quantity, sign=Sign.OVER, right=right, result=count)
        yield replace(state, bare=state.bare[:-1]).framed(shared, -weights.NEXT)
    if isinstance(count.leaf, int) and divisor != 1:
        right = Quantity(divisor, count.span, said=False)
        yield state.framed(Frame(left=count, sign=Sign.TIMES, right=right), weights.NEXT)
    if state.frame.bare is None:
        yield state.framed(Frame(left=count))


def both_sides(state: State, number: Quantity, world: World) -> Iterator[State]:
    """Yield both sides worked out with what they come to: both make twelve.

    Two sums compared are then said to be the same.
    """
    problem = world.facts.problem
    if not state.both or not isinstance(problem, Claim | Compare) or state.drafts:
        return
    worked = sides(problem)
    if number.value not in map(worth, worked):
        return
    drafts = tuple(
        Draft(side, RESULT_ALONE, number.span, number.leaf)
        for side in worked
        if isinstance(side, Operation)
    )
    if not drafts:
        return
    cost = state.cost - weights.UNTRACED * all(worth(side) == number.value for side in worked)
    same = Order.SAME if isinstance(problem, Compare) else state.verdict
    done = replace(state, drafts=drafts, both=False, so=False, standing=number, cost=cost)
    yield replace(done, verdict=same)


def both_scaled(state: State, number: Quantity, world: World) -> Iterator[State]:
    """Yield the sharing of both numbers, halved or doubled, of which the answer was said."""
    if Sign.OVER not in world.signs or len(state.drafts) != 2:
        return
    lefts = [draft.left for draft in state.drafts]
    pairs = [one for one in lefts if isinstance(one, Operation)]
    ends = [draft.stands for draft in state.drafts]
    starts = [worth(one.left) for one in pairs]
    alike = len({(one.sign, worth(one.right)) for one in pairs}) == 1
    if starts != list(world.facts.numbers) or not alike or None in ends or not ends[1]:
        return
    if pairs[0].sign not in (Sign.TIMES, Sign.OVER):
        return
    left = Operation(Sign.OVER, exact(ends[0] or 0), exact(ends[1]))
    if worth(left) != number.value:
        return
    draft = Draft(left, COUNTED, number.span, number.leaf)
    yield state.stepped(draft, standing=number)
