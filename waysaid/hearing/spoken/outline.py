"""The outline of a way, where no way of the problem is alike: what its steps have in common."""

from fractions import Fraction

from waysaid.hearing.draft import Draft
from waysaid.hearing.spoken.frame import HOPS
from waysaid.hearing.spoken.gap import MARKS
from waysaid.hearing.spoken.moved import pair_of
from waysaid.hearing.spoken.part import base_of, share_of
from waysaid.hearing.spoken.state import State
from waysaid.hearing.spoken.world import World
from waysaid.hearing.turned import turned_side
from waysaid.hearing.worth import worth
from waysaid.number import (
    BLANK,
    Blank,
    Compare,
    Equation,
    Exact,
    Expression,
    Form,
    Image,
    Number,
    Operation,
    Order,
    Sign,
    Written,
    exact,
    has_form,
    leaves,
    sides,
    written,
)
from waysaid.ways import Family

_COUNT = 3
"""From how many hops alike on a count is meant: our choice."""


def written_anew(drafts: tuple[Draft, ...], world: World) -> bool:
    """Tell the problem itself, its numbers written another way: 5/5 - 2/5 for 1 - 2/5.

    Or a part taken of the number that was renamed for it: 3/4 is 6/8, and half of that.
    """
    names = [draft for draft in drafts if not isinstance(draft.left, Operation)]
    core = drafts[len(names) :]
    if len(core) != 1 or any(draft.whole for draft in names):
        return False
    left, asked = core[0].left, world.facts.asked
    if not isinstance(left, Operation) or not isinstance(asked, Operation):
        return False
    said, meant = _numbers(left), _numbers(asked)
    alike = left.sign is asked.sign or {left.sign, asked.sign} == {Sign.TIMES, Sign.OF}
    if not alike:
        return bool(names) and _shares_renamed(left, asked, [draft.result for draft in names])
    same_worth = sorted(map(exact, said)) == sorted(map(exact, meant))
    return same_worth and not all(one in meant for one in said)


def _shares_renamed(left: Operation, asked: Operation, names: list[Expression | None]) -> bool:
    """Tell whether a renamed number is shared by as many as the part that is asked for."""
    part, size = worth(asked.left), worth(left.right)
    if (
        left.sign is not Sign.OVER
        or asked.sign not in (Sign.OF, Sign.TIMES)
        or not part
        or not size
    ):
        return False
    same = left.left in names and worth(left.left) == worth(asked.right)
    return same and Fraction(part) * Fraction(size) == 1


def _numbers(side: Expression) -> list[Number]:
    return [one for one in written(side) if not isinstance(one, Blank)]


def counted(drafts: tuple[Draft, ...]) -> bool:
    """Tell hops all alike, each from where the last one ended."""
    pairs = [pair_of(draft) for draft in drafts]
    scaled = (pair is not None and pair[1] not in HOPS for pair in pairs)
    if any(draft.counted and not one for draft, one in zip(drafts, scaled, strict=True)):
        return True
    sizes = {pair[1:] for pair in pairs if pair}
    return len(pairs) >= _COUNT and None not in pairs and len(sizes) == 1


def places_alike(drafts: tuple[Draft, ...], world: World) -> int:
    """Return how many steps put like places of two numbers together: 70 - 30, 4 - 1, 7 + 3.

    Digits may be said for their places, and one may have been given ten more: 14 - 8.
    """
    numbers = world.facts.numbers
    if len(numbers) != 2:
        return 0
    places: list[set[Exact]] = [{_digit(one, size) for one in numbers} for size in _SIZES]
    digits = [
        {exact(Fraction(one) / size) for one in place}
        for size, place in zip(_SIZES, places, strict=True)
    ]
    digits.append({exact(Fraction(one) % 1 * 10) for one in numbers} if world.pointed else set())
    fuller = [{max(two), min(two) + 10} for two in digits if len(two) == 2]
    places.append({exact(one - int(one)) for one in numbers})
    places.append(_behind_point(world))
    alike = [place - {0} for place in (*places, *digits, *fuller)]
    pairs = [
        {one for one in leaves(draft.left) if one != 0}
        for draft in drafts
        if isinstance(draft.left, Operation) and draft.left.sign in HOPS
    ]
    return sum(pair in alike for pair in pairs)


def exchanged(drafts: tuple[Draft, ...], world: World) -> Family | None:
    """Tell digits taken off one by one, a ten exchanged: thirteen take seven, seven take four."""
    asked = world.facts.asked
    if not isinstance(asked, Operation) or asked.sign is not Sign.MINUS or not world.whole:
        return None
    one, other = world.facts.numbers[:2]
    pairs = [pair[::2] for draft in drafts if (pair := pair_of(draft)) and pair[1] is Sign.MINUS]
    ones = (_digit(one, _SIZES[1]) + 10, _digit(other, _SIZES[1]))
    tens = ((int(one) // 10) % 10 - 1, (int(other) // 10) % 10)
    lowered = tens in pairs or (tens[0] * 10, tens[1] * 10) in pairs
    return Family.COLUMN if ones in pairs and lowered and ones[1] > ones[0] - 10 else None


def _behind_point(world: World) -> set[Exact]:
    """Return what stands behind the points as a whole number: the 25 and the 1 of 3.25 - 1.1."""
    pointed = [one for one in world.facts.written if isinstance(one, Written)]
    rests = [(exact(one) % 1, one.size) for one in pointed if one.form is Form.DECIMAL]
    return {exact(rest * 10**size) for rest, size in rests}


_SIZES = (Fraction(1, 10), Fraction(1), Fraction(10), Fraction(100), Fraction(1000))


def _digit(number: Exact, size: Fraction) -> Exact:
    """Return what the digit of a place is worth: the 30 of 37 for tens."""
    return exact(int(abs(Fraction(number)) / size) % 10 * size)


def put_right(drafts: tuple[Draft, ...], world: World) -> bool:
    """Tell a hop too far, and the rest of it put right: 2 - 1 = 1, 1 + 2/5, for 2 - 3/5.

    It is put right, too, where that is done the wrong way: 1 - 2/5.
    """
    first, second = (pair_of(draft) for draft in drafts) if len(drafts) == 2 else (None, None)
    if first is None or second is None:
        return False
    (start, sign, far), (here, back, rest) = first, second
    hops = sign is world.hop and back in HOPS
    whole = start in world.facts.numbers and here == drafts[0].stands
    return hops and whole and far > rest and exact(far - rest) in world.facts.numbers


def percents(state: State, world: World) -> bool:
    """Tell whether another percentage than the problem's was worked with: ten percent is five."""
    said = [one.quantity.leaf for one in state.bare] + [draft.left for draft in state.drafts]
    said += [draft.result for draft in state.drafts if draft.result is not None]
    found = {
        exact(one)
        for side in said
        for one in written(side)
        if not isinstance(one, Blank) and has_form(one, Form.PERCENT)
    }
    return bool(found - {*world.facts.numbers})


def of_parts(drafts: tuple[Draft, ...], world: World) -> Family | None:
    """Tell percents of the whole, or what is missing to 1; or a number only written another way."""
    for draft in drafts:
        numbers = list(written(draft.left))
        operation = isinstance(draft.left, Operation)
        if operation and any(has_form(one, Form.PERCENT) for one in numbers if one is not BLANK):
            return Family.BENCHMARK
        if operation and numbers[0] == 1 and any(isinstance(one, Fraction) for one in numbers):
            return Family.BENCHMARK
        if operation and world.halves and turned_side(draft.left) in world.halves:
            return Family.BENCHMARK
    if drafts and not any(isinstance(draft.left, Operation) for draft in drafts):
        return Family.RENAME if not any(draft.whole for draft in drafts) else None
    return None


def percent_renamed(drafts: tuple[Draft, ...], world: World) -> bool:
    """Tell a percentage taken as the part it is: 25 % is a quarter, or 84 shared by four at once.

    A tenth is what others are worked out from rather.
    """
    asked, first = world.facts.asked, drafts[0]
    if not isinstance(asked, Operation) or not has_form(asked.left, Form.PERCENT):
        return False
    if not isinstance(first.left, Operation):
        return first.left == asked.left and not first.whole
    pair = pair_of(first) if len(drafts) == 1 else None
    if pair is None or pair[0] != worth(asked.right) or pair[1] is not Sign.OVER:
        return False
    return pair[2] != _TENTH and Fraction(1) / Fraction(pair[2]) == worth(asked.left)


_TENTH = 10


def said_truly(state: State, world: World) -> bool:
    """Tell whether the verdict said on two numbers is the true one."""
    problem = world.facts.problem
    if not isinstance(problem, Compare):
        return False
    left, right = worth(problem.left), worth(problem.right)
    if left is None or right is None:
        return False
    true = Order.SAME if left == right else Order.MORE if left > right else Order.LESS
    return state.verdict is true


def against_mark(state: State, world: World) -> bool:
    """Tell one number compared that is a half or a whole, and the other held against it.

    Of 0.5 and 0.45: it's a half, and the other isn't quite.
    """
    if not isinstance(world.facts.problem, Compare) or state.verdict is Order.SAME:
        return False
    only = state.drafts[0] if len(state.drafts) == 1 else None
    named = only is not None and not only.whole and not isinstance(only.left, Operation)
    return named and only is not None and only.result in MARKS and not state.scaled


def share_repeated(drafts: tuple[Draft, ...], world: World) -> Family | None:
    """Tell one share of the number that a part is taken of, added on and on: five, ten, fifteen."""
    base = base_of(world)
    if len(drafts) < 2 or base is None:
        return None
    size, later = drafts[0].stands, drafts[1:]
    if share_of(drafts[0], world) is None:
        first = pair_of(drafts[0])
        size, later = (first[0] if first else None), drafts
        if not size or (exact(base) / Fraction(size)) % 1:
            return None
    hops = [pair_of(draft) for draft in later]
    alike = all(hop is not None and hop[1:] == (Sign.PLUS, size) for hop in hops)
    return Family.FACTOR_STEPS if alike else None


def added_on(drafts: tuple[Draft, ...], world: World) -> Family | None:
    """Tell a number added to itself as often as the problem multiplies it: 3/4 and 3/4 and 3/4.

    Or the parts of each whole that is divided by a part: four, eight, twelve, for 3 / 1/4.
    """
    in_parts = world.parted and Sign.OVER in world.signs
    if not (in_parts or Sign.TIMES in world.signs) or len(drafts) < 2:
        return None
    hops = [pair_of(draft) for draft in drafts]
    size = hops[0][0] if hops[0] else None
    alike = all(hop is not None and hop[1:] == (Sign.PLUS, size) for hop in hops)
    known = world.sizes if in_parts else world.facts.numbers
    return Family.COUNTING if alike and size in known else None


def in_turn(drafts: tuple[Draft, ...], world: World) -> Family | None:
    """Tell a number of the problem multiplied and divided step by step."""
    ends: Exact | None = None
    for draft in drafts:
        left = draft.left
        if not isinstance(left, Operation) or left.sign not in (Sign.TIMES, Sign.OVER):
            return None
        start = worth(left.left)
        if start not in ((ends,) if ends is not None else world.facts.numbers):
            return None
        ends = draft.stands
    return Family.FACTOR_STEPS if len(drafts) > 1 and world.groups else None


def from_fact(drafts: tuple[Draft, ...], world: World) -> Family | None:
    """Tell the fact that the asked one was worked out from: 5 x 7 = 35, so 6 x 7 = 42."""
    if len(drafts) != 2:
        return None
    known, asked = (pair_of(draft) for draft in drafts)
    if known is None or asked is None or known[1] is not asked[1] or asked[1] in HOPS:
        return None
    one, other = {known[0], known[2]}, {asked[0], asked[2]}
    if len(one - other) != 1 or len(other - one) > 1:
        return None
    here, there = (one - other).pop(), ((other - one) or one & other).pop()
    times = Fraction(max(here, there)) / Fraction(min(here, there) or 1)
    doubled = times.denominator == 1 and here < there
    return Family.FACTOR_STEPS if doubled else Family.NEAR_FACT


def multiplied_up(drafts: tuple[Draft, ...], world: World) -> Family | None:
    """Tell a known product and the groups put on it to reach what is shared: 49, and 7 more, 56."""
    shared = shared_of(world)
    if shared is None or len(drafts) < 2:
        return None
    first, *hops = (pair_of(draft) for draft in drafts)
    whole, size = shared
    if first is None or first[1] is not Sign.TIMES or size not in first:
        return None
    if not all(hop and hop[1] is Sign.PLUS and hop[2] % size == 0 for hop in hops):
        return None
    if drafts[-1].forced != whole:
        return None
    one_more = len(hops) == 1 and hops[0] is not None and hops[0][2] == size
    return Family.NEAR_FACT if one_more else Family.CHUNK_OUT


def shared_of(world: World) -> tuple[Exact, Exact] | None:
    """Return what is shared and by how many, or a product and its one known factor."""
    problem, numbers = world.facts.problem, world.facts.numbers
    if len(numbers) != 2 or not numbers[-1]:
        return None
    if isinstance(problem, Equation):
        product = [side for side in sides(problem) if isinstance(side, Operation)]
        times = any(one.sign is Sign.TIMES and BLANK in leaves(one) for one in product)
        return (max(numbers), min(numbers)) if times else None
    return (numbers[0], numbers[1]) if Sign.OVER in world.signs else None


def from_double(drafts: tuple[Draft, ...], world: World) -> Family | None:
    """Tell a double in a picture, and what it has more or less: two sixes, and one is missing.

    Or one near what is taken from, or to be reached: seven and seven is fourteen, for 15 - 7.
    """
    if not isinstance(world.facts.problem, Image):
        halved = len(drafts) == 1 and world.hop and turned_side(drafts[0].left) in world.halves
        return Family.NEAR_DOUBLE if halved or _near_whole(drafts[0], world) else None
    if len(drafts) != 2:
        return None
    first, second = (pair_of(draft) for draft in drafts)
    if first is None or second is None or second[1] not in HOPS:
        return None
    twice = first[1] is Sign.PLUS and first[0] == first[2]
    twice = twice or (first[1] is Sign.TIMES and 2 in (first[0], first[2]))
    return Family.NEAR_DOUBLE if twice and second[0] == drafts[0].stands else None


def _near_whole(draft: Draft, world: World) -> bool:
    """Tell whether a step doubles a number, in a problem that starts from a sum of two."""
    pair = pair_of(draft)
    asked = world.facts.asked
    if pair is None or draft.open or world.groups or not world.whole:
        return False
    taken = isinstance(asked, Operation) and asked.sign is Sign.MINUS
    missing = isinstance(world.facts.problem, Equation)
    return (taken or missing) and pair[1] is Sign.PLUS and pair[0] == pair[2]


def opposite(drafts: tuple[Draft, ...], world: World, exactly: bool = True) -> Family | None:
    """Tell one fact that undoes the problem: 7 + 6 = 13 for 13 - 7, 8 x 7 = 56 for 56 / 8.

    With `exactly` False any product of the number that is divided by will do: 8 x 4 for 31 / 4.
    """
    asked, numbers = world.facts.asked, world.facts.numbers
    if len(drafts) != 1 or not isinstance(asked, Operation) or len(numbers) != 2:
        return None
    undoes = {Sign.MINUS: Sign.PLUS, Sign.OVER: Sign.TIMES}.get(asked.sign)
    pair = pair_of(drafts[0])
    if pair is None or pair[1] is not undoes or numbers[1] not in pair:
        return None
    if exactly and drafts[0].stands != numbers[0]:
        return None
    if not exactly and undoes is Sign.PLUS:
        return Family.ADD_UP
    return Family.THINK_ADD if undoes is Sign.PLUS else Family.THINK_TIMES


def climbed_up(drafts: tuple[Draft, ...], world: World) -> Family | None:
    """Tell hops in parts up from the number taken to the one it is taken from, of any size.

    What they come to together may be told behind them: an eighth to a half, and a half, five
    eighths.
    """
    asked, numbers = world.facts.asked, world.facts.numbers
    if not isinstance(asked, Operation) or asked.sign is not Sign.MINUS or len(numbers) != 2:
        return None
    if all(isinstance(one, int) for one in numbers):
        return None
    here, sizes = numbers[1], list[Exact]()
    for place, pair in enumerate(map(pair_of, drafts)):
        if pair is None or pair[1] is not Sign.PLUS:
            return None
        if here == numbers[0]:
            whole = place == len(drafts) - 1 and pair[0] + pair[2] == sum(sizes)
            return Family.ADD_UP if whole and _uneven(sizes) else None
        if here not in pair[::2] or (ends := drafts[place].stands) is None:
            return None
        sizes.append(pair[2] if pair[0] == here else pair[0])
        here = ends
    return Family.ADD_UP if here == numbers[0] and _uneven(sizes) else None


def _uneven(sizes: list[Exact]) -> bool:
    """Tell whether hops are two, or not all alike, as those of a count are."""
    return len(sizes) == 2 or len({*sizes}) > 1
