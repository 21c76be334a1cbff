"""Where a number goes when it is said: the slot awaited, a result, or a frame of its own."""

from collections.abc import Iterator
from fractions import Fraction

from waysaid.hearing.meaning import Meaning
from waysaid.hearing.spoken import weights
from waysaid.hearing.spoken.anew import bottom_of
from waysaid.hearing.spoken.apart import lacks
from waysaid.hearing.spoken.change import replace
from waysaid.hearing.spoken.close import closed
from waysaid.hearing.spoken.frame import HOPS, Frame, Quantity, Slot
from waysaid.hearing.spoken.meant import climbed, evened, pretended
from waysaid.hearing.spoken.moved import pair_of
from waysaid.hearing.spoken.part import base_of, base_value, is_part, part_step, taken_part
from waysaid.hearing.spoken.pieces import undoes
from waysaid.hearing.spoken.renamed import claim_anew, right_anew
from waysaid.hearing.spoken.rest import with_rest
from waysaid.hearing.spoken.scale import HALF, by_two, unnamed
from waysaid.hearing.spoken.sharing import each_gets, so_many, unit_named
from waysaid.hearing.spoken.sized import a_piece, hop_of, more_groups, size_named
from waysaid.hearing.spoken.state import State, counts
from waysaid.hearing.spoken.step import ends_earlier
from waysaid.hearing.spoken.verdict import JUDGING, judged_behind
from waysaid.hearing.spoken.world import World
from waysaid.hearing.turned import turned_side
from waysaid.hearing.worth import worth
from waysaid.number import Compare, Form, Operation, Sign, Written, exact


def number(state: State, said: Quantity, world: World) -> Iterator[State]:
    """Yield the states after a number; in a problem that divides, 60/4 is a division, too."""
    yield from _shared_on(state, said, world)
    pair = _shared(said, world)
    if pair is not None:
        if state.frame.empty:
            yield replace(state.framed(pair), spoken=said)
        else:
            for after in closed(state, world):
                yield replace(after.framed(pair), spoken=said)
        state = state.and_costs(weights.IGNORED)
    if not isinstance(said.leaf, int) and said.value == HALF:
        first = not state.drafts and state.frame.empty
        wholes = first and all(isinstance(one, int) for one in world.facts.written)
        state = state.and_costs(weights.UNSAID if world.whole or wholes else 0)
    for after in _placed(state, said, world):
        yield after.naming(said) if after.spoken is state.spoken else after


def _placed(state: State, said: Quantity, world: World) -> Iterator[State]:
    frame = state.frame
    match frame.wants:
        case Slot.RIGHT if frame.verb is Meaning.LEFT_OVER and state.so:
            yield state.framed(Frame(left=said))
        case Slot.RIGHT if frame.verb is Meaning.LEFT_OVER:
            yield from with_rest(replace(state, frame=Frame()), said, world)
        case Slot.RIGHT if frame.verb is Meaning.APART:
            yield from lacks(state, said, world)
        case Slot.RIGHT if frame.verb in JUDGING:
            yield from judged_behind(state, said, world)
        case Slot.RIGHT:
            yield from _right(state, said, world)
        case Slot.LEFT:
            yield from _left(state, said, world)
        case Slot.RESULT:
            yield from _result(state, said, world)
        case Slot.NONE if frame.paired:
            yield from _after_pair(state, said, world)
        case Slot.NONE if frame.bare is not None:
            yield from _after_number(state, said, world)
        case Slot.NONE if frame.verb is not None or frame.whole is not None:
            yield from _after_verb(state, said, world)
        case _:
            yield state.framed(Frame(left=said))
            named = state.knew and world.groups
            if said.many and (named or size_named(state, said)):
                yield state.and_costs(weights.REPEATED)


def _left(state: State, said: Quantity, world: World) -> Iterator[State]:
    """Take the number that a step starts from."""
    frame = state.frame
    if frame.verb in (Meaning.HALF, Meaning.DOUBLE):
        yield from _scaled(state, said, world)
    elif frame.verb is Meaning.EACH:
        yield from each_gets(state, said, world)
    elif _too_few(frame, said):
        return
    elif _less_than_groups(frame, said):
        for after in closed(state.framed(replace(frame, wants=Slot.NONE)), world):
            yield after.framed(Frame(left=said))
    else:
        yield state.framed(replace(frame, left=said, wants=Slot.NONE))


def _less_than_groups(frame: Frame, said: Quantity) -> bool:
    """Tell whether a number is too small to be what was shared: in five times, and two left."""
    groups, shared = frame.result and frame.result.value, said.value
    if frame.sign is not Sign.OVER or groups is None or shared is None:
        return False
    return shared < groups


def _too_few(frame: Frame, said: Quantity) -> bool:
    """Tell whether so many in a number are more than it: of `eight by eight` none is shared."""
    size, shared = frame.right and frame.right.value, said.value
    if frame.verb is not Meaning.BY or size is None or shared is None:
        return False
    once = frame.result is not None and frame.result.value == 1
    return shared < size or (shared == size and not once)


def _scaled(state: State, said: Quantity, world: World) -> Iterator[State]:
    """Take a number behind half or double: what is scaled, or what it comes to."""
    halved = state.frame.verb is Meaning.HALF
    if not state.frame.reach:
        yield state.framed(replace(by_two(halved, said, world), result=state.frame.result))
    stands = state.standing.value if state.standing is not None else None
    for left, more in unnamed(state, world, said.span) if said.value != stands else ():
        if not state.drafts and Sign.OVER in world.signs and left.value != world.facts.numbers[0]:
            continue
        scaled = by_two(halved, left, world)
        if scaled.comes_to == said.value:
            odd = max(0, more - weights.BASE)
            first = halved and not state.drafts and left.value == max(world.facts.numbers)
            odd -= weights.BASE if first else 0
            yield from closed(state.framed(replace(scaled, result=said), odd), world)


def _right(state: State, said: Quantity, world: World) -> Iterator[State]:
    frame = state.frame
    if frame.sign is Sign.OVER and said.value == 0:
        return
    after = state.framed(replace(frame, right=said, wants=Slot.NONE))
    yield from _times_what_stands(state, said, world)
    verbs = (Meaning.TAKE, Meaning.ADD, *((Meaning.GO,) if world.groups else ()))
    held = frame.verb in verbs and frame.left is None and not state.drafts
    if held and state.standing is None and said.value in world.facts.numbers:
        yield state.framed(Frame(left=said), 1)
    if state.dropped and frame.verb in (Meaning.TAKE, Meaning.ADD) and frame.left is None:
        yield from _other_way(state, said, world)
    if frame.verb is Meaning.ADD and frame.left is None:
        yield replace(state, so=True).framed(Frame(left=said), weights.FREE)
    if frame.verb is Meaning.GIVE and state.amount is not None and frame.left is None:
        given = replace(state.amount, said=False)
        taken = replace(frame, left=said, right=given, wants=Slot.NONE)
        own = said.value in world.facts.numbers and not world.groups
        last = state.drafts[-1] if state.drafts else None
        pair = pair_of(last) if last is not None and last.result is None else None
        own = own and pair is not None and pair[1] is Sign.MINUS and pair[0] != said.value
        yield state.framed(taken, -weights.STRANGE if own else 0)
    if frame.reach and frame.result is not None:
        for done in closed(after, world):
            yield replace(done, claimed=said) if undoes(done, world) else done
        if frame.left is not None or state.standing is not None:
            for done in closed(state, world):
                yield done.framed(Frame(left=said))
    else:
        yield after


def _other_way(state: State, said: Quantity, world: World) -> Iterator[State]:
    """Take the end of a hop taken back and made the other way: no, I take it off, five."""
    start, amount, frame = state.standing, state.amount, state.frame
    if start is None or amount is None:
        return
    hop = replace(frame, left=replace(start, said=False), right=replace(amount, said=False))
    if hop.comes_to == said.value:
        whole = replace(hop, result=said, wants=Slot.NONE)
        yield from closed(state.framed(whole), world)


def _times_what_stands(state: State, said: Quantity, world: World) -> Iterator[State]:
    """Take what so many times the number that stands comes to: five, three times fifteen."""
    frame, standing = state.frame, state.standing
    if frame.sign is not Sign.TIMES or frame.left is None or standing is None or frame.reach:
        return
    times, one = frame.left.value, standing.value
    if frame.result is not None or times is None or one is None or times * one != said.value:
        return
    right = replace(standing, said=False)
    step = Frame(left=frame.left, sign=Sign.TIMES, right=right, result=said)
    yield from closed(state.framed(step, weights.NEXT), world)


def _result(state: State, said: Quantity, world: World) -> Iterator[State]:
    """Take a result: the frame is done; or it goes unsaid, and something else begins."""
    frame = state.frame
    if frame.whole is not None and frame.right is None:
        yield state.framed(replace(frame, left=said, wants=Slot.NONE))
        return
    if frame.reach:
        yield state.framed(replace(frame, result=said, wants=Slot.RIGHT))
        return
    yield from _part_taken(state, said, world)
    yield from _of_tops(state, said, world)
    done = state.framed(replace(frame, result=said, wants=Slot.NONE))
    yield from closed(done, world)
    for after in closed(state.framed(replace(frame, wants=Slot.NONE)), world):
        total = climbed(after, said, world) is not None or ends_earlier(after, said)
        total = total or a_piece(frame, said, world)
        yield after.framed(Frame(left=said), 0 if total else weights.NO_RESULT)


def _after_pair(state: State, said: Quantity, world: World) -> Iterator[State]:
    """Take a number behind a whole pair: its result with no word before it, or something new."""
    frame = state.frame
    if unit_named(frame, said, world):
        yield state
    if frame.verb is Meaning.FROM and frame.left is None and said.value in world.facts.numbers:
        yield state.framed(replace(frame, verb=Meaning.ADD))
    some = more_groups(frame, said, state, world)
    if some is not None:
        yield from closed(state.framed(some), world)
    yield from right_anew(state, said)
    one_group = frame.sign in HOPS and said.value in world.sizes
    if (
        frame.right is not None
        and frame.right.value == 1
        and (one_group or _one_part(frame, said, world))
    ):
        yield state.framed(replace(frame, right=said))
    if said.many and world.groups:
        yield from _groups_scaled(state, said, world)
    if frame.right is not None and said.many and frame.sign in HOPS:
        whole = hop_of(frame.right, said, world) if frame.sign is Sign.MINUS else None
        if whole is not None:
            yield state.framed(replace(frame, right=whole))
        right = Quantity(
            Operation(Sign.TIMES, frame.right.leaf, said.leaf),
            (frame.right.span[0], said.span[1]),
        )
        apart = closed(state.framed(Frame(frame.verb, frame.left, frame.sign, right)), world)
        for after in apart:
            yield after.and_costs(weights.IGNORED)
    yield from _part_taken(state, said, world)
    yield from _of_tops(state, said, world)
    if frame.whole is None and frame.result is None:
        done = state.framed(replace(frame, result=said), weights.SHORTCUT)
        yield from closed(done, world)
    for after in closed(state, world):
        yield after.framed(Frame(left=said))


def _groups_scaled(state: State, said: Quantity, world: World) -> Iterator[State]:
    """Take the size of groups that are doubled or halved: double three eights."""
    frame = state.frame
    if frame.left is None or frame.right is None or frame.result is not None:
        return
    if frame.right.leaf != 2 or frame.right.span != frame.left.span or frame.sign in HOPS:
        return
    some = Frame(left=frame.left, sign=Sign.TIMES, right=said)
    for after in closed(state.framed(some), world):
        if after.standing is not None and len(after.drafts) > len(state.drafts):
            left = replace(after.standing, said=False)
            yield after.framed(by_two(frame.sign is Sign.OVER, left, world))


def _one_part(frame: Frame, said: Quantity, world: World) -> bool:
    """Tell whether a number names the part of which one more was said: and one more fifth."""
    hop = frame.sign in HOPS and frame.result is None
    compared = isinstance(world.facts.problem, Compare)
    return hop and is_part(said) and not said.many and not compared


def _of_tops(state: State, said: Quantity, world: World) -> Iterator[State]:
    """Take so many parts behind what their tops come to: five and two, seven eighths."""
    frame, bottom = state.frame, bottom_of(said.leaf)
    yield from claim_anew(state, said, world)
    top = None if bottom is None or said.value is None else exact(said.value * bottom)
    if top is None or frame.result is not None or frame.comes_to != top:
        return
    if isinstance(said.leaf, Written) and said.leaf.whole:
        return
    if world.pointed and bottom in _PLACES:
        for after in closed(state.framed(replace(frame, result=said._replace(leaf=top))), world):
            yield after.framed(Frame(left=said), weights.NEXT)
    if bottom in {bottom_of(one) for one in world.facts.written}:
        for after in closed(state.framed(replace(frame, wants=Slot.NONE)), world):
            yield replace(after, so=True).framed(Frame(left=said), -weights.UNSAID)


_PLACES = (10, 100, 1000)
"""The parts that stand behind a point: tenths, hundredths, thousandths."""


def _part_taken(state: State, said: Quantity, world: World) -> Iterator[State]:
    """Take what a part comes to that is taken off: take away a quarter, that's 6."""
    part, base = taken_part(state.frame, world), base_of(world)
    if part is None or base is None:
        return
    if said.value == exact(base):
        yield state
        return
    for after in closed(replace(state, frame=Frame(whole=part, left=said)), world):
        left = Quantity(base, said.span, said=False)
        yield after.framed(Frame(left=left, sign=Sign.MINUS, right=said))


def _after_number(state: State, said: Quantity, world: World) -> Iterator[State]:
    """Take a number behind a number: so many of it, 5 sixes; or the first stands alone."""
    left = state.frame.left
    if left is not None and said.many and left.value == 2 and not world.groups:
        yield state.framed(by_two(False, said, world))
    elif left is not None and left.value == 1 and not said.many and counts(state):
        if said.value in world.facts.numbers:
            yield state.and_costs(weights.POINTED)
    elif left is not None and said.many:
        if counts(state) and said.value in world.facts.numbers:
            yield state.and_costs(weights.POINTED)
        yield state.framed(Frame(left=left, sign=Sign.TIMES, right=said, op_said=True))
    elif left is not None and part_step(state, left, said, world) is not None:
        yield from closed(state.framed(Frame(whole=left, left=said)), world)
    for before, step, _ in pretended(left, said, state, world) if left is not None else ():
        yield from closed(before.framed(step), world)
    even = evened(left, said, state, world) if left is not None else None
    if even is not None:
        yield from closed(state.framed(even), world)
    for after in closed(state, world):
        yield after.framed(Frame(left=said))


def _after_verb(state: State, said: Quantity, world: World) -> Iterator[State]:
    """Take a number behind a verb or a whole that has had its parts."""
    frame = state.frame
    if frame.whole is not None and frame.left is None:
        yield state.framed(replace(frame, left=said))
        return
    if frame.verb is Meaning.SHARE and frame.left is not None:
        shared = so_many(frame.left, said, state, world)
        if shared is not None:
            yield from closed(state.framed(shared), world)
    if frame.verb is Meaning.SPLIT and frame.left is not None:
        opened = Frame(whole=frame.left, left=said)
        yield state.framed(opened)
        return
    if frame.left is not None and said.many and frame.sign is None:
        yield state.framed(replace(frame, verb=None, sign=Sign.TIMES, right=said))
        return
    for after in closed(state, world):
        yield after.framed(Frame(left=said))


def _shared_on(state: State, said: Quantity, world: World) -> Iterator[State]:
    """Yield the sharing of what was just worked out: three eights is twenty four over four."""
    frame, bottom = state.frame, bottom_of(said.leaf) if world.groups else None
    if bottom is None or said.value is None or frame.result is not None:
        return
    top = exact(said.value * bottom)
    if top != frame.comes_to or top <= bottom:
        return
    worked = replace(frame, result=said._replace(leaf=top), wants=Slot.NONE)
    for after in closed(state.framed(worked), world):
        left = said._replace(leaf=top)
        yield after.framed(Frame(left=left, sign=Sign.OVER, right=said._replace(leaf=bottom)))


def _shared(said: Quantity, world: World) -> Frame | None:
    """Return a fraction as the division it may be, where the problem divides whole numbers.

    Or numbers with a point, which some way makes whole first. Of a part that is multiplied, as the
    half of two and a half, it is rather so many. Wholes and parts, as one and a fifth, are none.
    """
    leaf = said.leaf
    if not isinstance(leaf, Written) or leaf.form is not Form.PARTS or leaf.whole:
        return None
    bottom, value = leaf.size, worth(leaf)
    top = None if value is None else value * bottom
    if top is None or top < bottom or top != int(top):
        return None
    left, right = Quantity(int(top), said.span), Quantity(bottom, said.span)
    part = Fraction(1, bottom)
    if Sign.TIMES in world.signs and part in (Fraction(one) % 1 for one in world.facts.numbers):
        return Frame(left=left, sign=Sign.TIMES, right=right._replace(leaf=part))
    whole = all(isinstance(one, int) for one in world.facts.written)
    if not (whole and Sign.OVER in world.signs):
        divided = turned_side(Operation(Sign.OVER, int(top), bottom))
        known = divided in world.lefts or top == base_value(world)
        pointed = world.pointed and Sign.OVER in world.signs
        own = world.numbers if pointed else world.facts.numbers
        if not known or top not in own or top == bottom:
            return None
    return Frame(left=left, sign=Sign.OVER, right=right)
