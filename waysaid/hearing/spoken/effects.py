"""What each meaning does to the step being said. One function a meaning, or a few alike."""

from collections.abc import Callable, Iterator

from waysaid.hearing.draft import Draft
from waysaid.hearing.meaning import Meaning
from waysaid.hearing.spoken import weights
from waysaid.hearing.spoken.apart import apart
from waysaid.hearing.spoken.asides import done, knew, unsure, vague
from waysaid.hearing.spoken.change import replace
from waysaid.hearing.spoken.close import closed
from waysaid.hearing.spoken.frame import HOPS, Frame, Quantity, Slot
from waysaid.hearing.spoken.halving import again, scale_verb, unnamed_scaled
from waysaid.hearing.spoken.hops import go, more, off, on_or_back, onto, to, turned_into
from waysaid.hearing.spoken.item import Item
from waysaid.hearing.spoken.part import part_step, taken_part
from waysaid.hearing.spoken.pictured import lacked
from waysaid.hearing.spoken.pieces import last_two, sum_of
from waysaid.hearing.spoken.placed import place_named
from waysaid.hearing.spoken.refer import POINTING, both, refer
from waysaid.hearing.spoken.rest import left_over
from waysaid.hearing.spoken.scale import HALF, scaled_by_two
from waysaid.hearing.spoken.sharing import each
from waysaid.hearing.spoken.sized import groups, holds, how_often, shared_by, taken_so_often
from waysaid.hearing.spoken.state import State, unused
from waysaid.hearing.spoken.step import reasoned
from waysaid.hearing.spoken.verbs import by, scaling, verb
from waysaid.hearing.spoken.verdict import JUDGING, judged, named_first
from waysaid.hearing.spoken.world import World
from waysaid.hearing.spoken.zeros import zeros
from waysaid.hearing.word import Pause
from waysaid.number import BLANK, About, Compare, Operation, Sign

Effect = Callable[[State, Item, World], Iterator[State]]

_INFIX = {
    Meaning.PLUS: Sign.PLUS,
    Meaning.MINUS: Sign.MINUS,
    Meaning.TIMES: Sign.TIMES,
    Meaning.OVER: Sign.OVER,
    Meaning.OF: Sign.TIMES,
}


def effect(state: State, item: Item, world: World) -> Iterator[State]:
    """Yield the states after a meaning."""
    assert item.meaning is not None
    return _EFFECTS.get(item.meaning, _nothing)(state, item, world)


def _nothing(state: State, item: Item, world: World) -> Iterator[State]:
    yield state


def _infix(state: State, item: Item, world: World) -> Iterator[State]:
    assert item.meaning is not None
    if item.meaning is Meaning.TIMES:
        yield from _so_many_times(state, item)
        if state.frame.bare is not None and Sign.OVER in world.signs:
            yield state.and_costs(weights.NEXT)
        yield from how_often(state, world)
        yield from taken_so_often(state, world)
    yield from _signed(state, _INFIX[item.meaning], item, world)


def _so_many_times(state: State, item: Item) -> Iterator[State]:
    """How often a number goes into another: five goes into seventeen three times, or before it."""
    frame, last = state.frame, state.drafts[-1] if state.drafts else None
    if last and frame.empty and item.span[0] <= last.span[1] + 1 and _tells_groups(last):
        yield state
    if frame.sign is not Sign.OVER or frame.right is None or frame.left is None:
        return
    if frame.result is not None:
        yield state
    elif frame.right.span < frame.left.span and frame.right.said:
        yield state.framed(replace(frame, left=None, result=frame.left, wants=Slot.LEFT))


def _tells_groups(draft: Draft) -> bool:
    """Tell whether a step says how many groups there are."""
    left = draft.left
    return isinstance(left, Operation) and left.sign is Sign.OVER and draft.result is not None


def _of(state: State, item: Item, world: World) -> Iterator[State]:
    frame = state.frame
    if frame.verb in (Meaning.HALF, Meaning.DOUBLE, Meaning.SPLIT) or frame.left is None:
        yield state
    if taken_part(frame, world) is not None:
        yield state
    if frame.left is not None and frame.verb is None:
        halves = frame.left.value == HALF and HALF not in world.facts.numbers
        product = state.and_costs(weights.NEXT if halves else 0)
        yield from _signed(product, Sign.TIMES, item, world)
        yield state.and_costs(weights.IGNORED)


def _signed(state: State, sign: Sign, item: Item, world: World) -> Iterator[State]:
    """Take a sign: behind a number, behind a pair (a chain, or the next hop), or to begin one."""
    frame = state.frame
    if frame.whole is not None and frame.left is not None and frame.sign is None:
        yield from _in_whole(state, sign, world)
    elif frame.bare is not None:
        across = weights.ACROSS if item.pause is Pause.STOP else 0
        yield state.framed(replace(frame, sign=sign, wants=Slot.RIGHT), across)
        if item.pause is not Pause.NONE and sign in HOPS:
            for after in closed(state, world):
                yield after.framed(Frame(sign=sign, wants=Slot.RIGHT), weights.ACROSS)
    elif frame.paired:
        yield from _chained(state, sign)
        for after in closed(state, world):
            yield after.framed(Frame(sign=sign, wants=Slot.RIGHT))
    elif frame.wants in (Slot.RIGHT, Slot.LEFT) and not frame.empty:
        yield state.and_costs(weights.IGNORED)
    else:
        for after in closed(state, world):
            yield after.framed(Frame(sign=sign, wants=Slot.RIGHT))


def _in_whole(state: State, sign: Sign, world: World) -> Iterator[State]:
    """Go on with the parts of a whole: 25 is 3 and, 70 is 10 times."""
    frame = state.frame
    assert frame.whole is not None
    assert frame.left is not None
    part = part_step(state, frame.whole, frame.left, world)
    if frame.left.value == frame.whole.value or part is not None:
        for after in closed(state, world):
            yield after.framed(Frame(sign=sign, wants=Slot.RIGHT), weights.NEXT)
    elif sign in HOPS:
        yield state.framed(replace(frame, wants=Slot.RIGHT, sign=sign))
        for after in closed(state, world):
            yield after.framed(Frame(sign=sign, wants=Slot.RIGHT))
    elif not (isinstance(frame.whole.leaf, int) and frame.left.value == HALF):
        turned = Frame(left=frame.left, sign=sign, result=frame.whole, wants=Slot.RIGHT)
        yield state.framed(turned)


def _chained(state: State, sign: Sign) -> Iterator[State]:
    """Make a pair the left of the next: 30 and 20 and 7."""
    frame = state.frame
    if frame.left is None or frame.right is None or frame.sign is None or frame.result:
        return
    same = frame.sign in HOPS and sign in HOPS
    if not same and (sign in HOPS or frame.sign is not sign):
        return
    span = (min(frame.left.span[0], frame.right.span[0]), frame.right.span[1])
    leaf = Operation(frame.sign, frame.left.leaf, frame.right.leaf)
    left = Quantity(leaf, span, frame.left.said)
    yield state.framed(replace(frame, left=left, sign=sign, right=None, wants=Slot.RIGHT), 1)


def _and(state: State, item: Item, world: World) -> Iterator[State]:
    """`and`: plus, or between two things said."""
    frame = state.frame
    if frame.verb is Meaning.ADD and frame.right is not None and frame.left is None:
        both_named = Frame(left=frame.right, sign=Sign.PLUS, wants=Slot.RIGHT)
        yield state.framed(both_named)
    if frame.verb is Meaning.SPLIT or frame.wants is not Slot.NONE:
        yield state
        return
    yield from _signed(state, Sign.PLUS, item, world)
    scaled = scaled_by_two(frame)
    for after in closed(state, world):
        yield after.and_costs(weights.NEXT)
        if scaled is not None:
            yield after.framed(Frame(verb=scaled, wants=Slot.LEFT), weights.NEXT)


def _equals(state: State, item: Item, world: World) -> Iterator[State]:
    """Await a result; or what a number is made of; or it is only `it's`."""
    frame = state.frame
    if frame.sign is not None and frame.right is not None:
        yield state.framed(replace(frame, wants=Slot.RESULT))
    elif frame.verb is Meaning.EACH or (
        frame.wants is Slot.RIGHT and (frame.reach or frame.verb in JUDGING)
    ):
        yield state
    elif frame.verb is Meaning.HALF or frame.verb is Meaning.DOUBLE:
        yield from unnamed_scaled(state, item, world)
    elif frame.bare is not None:
        yield state.framed(Frame(whole=frame.left, wants=Slot.RESULT))
        yield from _promised(state, world)
    elif frame.empty:
        yield replace(state, so=state.so or bool(state.drafts))
    else:
        yield from _promised(state, world)


def _promised(state: State, world: World) -> Iterator[State]:
    """Close what is being said; a result or an answer comes."""
    for after in closed(state, world):
        yield after if after.so else replace(after, so=True)


def _into(state: State, item: Item, world: World) -> Iterator[State]:
    """How many of a number are in another: 4 into 72."""
    left = state.frame.bare
    if left is not None:
        yield state.framed(Frame(right=left, sign=Sign.OVER, wants=Slot.LEFT))
        yield from holds(state, left, world)
    elif state.frame.verb is Meaning.SPLIT:
        yield from by(state, item, world)
    else:
        shares = state.frame.sign is Sign.OVER and state.frame.paired
        odd = weights.NEXT if Sign.OVER in world.signs else weights.IGNORED
        yield state.and_costs(0 if shares else odd)
        for after in closed(state, world):
            divisor = shared_by(after, item.span)
            if divisor is not None:
                yield after.framed(Frame(right=divisor, sign=Sign.OVER, wants=Slot.LEFT))


def _split(state: State, item: Item, world: World) -> Iterator[State]:
    """Open the number before, or the one that comes; a word like `is` behind a pair opens none."""
    frame = state.frame
    if item.noise and frame.paired:
        return
    if frame.bare is not None:
        yield state.framed(Frame(whole=frame.left, wants=Slot.RESULT))
    for after in closed(state, world):
        yield after.framed(Frame(verb=Meaning.SPLIT, wants=Slot.LEFT))
        yield after.and_costs(1)


def _break(state: State, item: Item, world: World) -> Iterator[State]:
    frame = state.frame
    begun = frame.sign and not frame.right and not frame.left
    if item.meaning is Meaning.THEN and (begun or frame.verb is Meaning.SHARE):
        yield state
    if item.meaning is Meaning.SEE and frame.reach and frame.wants is Slot.RIGHT:
        yield state
    yield from closed(state, world)


def _so(state: State, item: Item, world: World) -> Iterator[State]:
    """Await a result of the pair just said, or an answer of all."""
    if state.frame.paired and state.frame.whole is None and state.frame.result is None:
        yield state.framed(replace(state.frame, wants=Slot.RESULT))
    yield from _promised(state, world)


def _together(state: State, item: Item, world: World) -> Iterator[State]:
    """Put together all results that nothing was made of yet; what they come to may be left out."""
    for after in closed(state, world):
        whole = sum_of(unused(after)) or last_two(after, world)
        if whole is not None:
            said = (Quantity(side, item.span, said=False) for side in (whole.left, whole.right))
            frame = Frame(Meaning.TOGETHER, next(said), Sign.PLUS, next(said), wants=Slot.RESULT)
            yield after.framed(frame, -weights.NO_RESULT - weights.UNSAID - 1)


def _because(state: State, item: Item, world: World) -> Iterator[State]:
    """Await what led to a result: to the step just said, or to a number said alone."""
    if state.frame.bare is not None and state.frame.left is not None:
        yield from reasoned(replace(state, frame=Frame()), state.frame.left)
        if not item.noise:
            yield from named_first(state, world)
        state = state.and_costs(1)
    for after in closed(replace(state, so=True), world):
        said = bool(after.drafts) and after.drafts[-1].result is not None and not after.bare
        yield replace(after, so=False, claimed=after.standing if said else after.claimed)


def _ask(state: State, item: Item, world: World) -> Iterator[State]:
    """Take a number asked for: eight and what; the arithmetic finds it where the result is said."""
    frame = state.frame
    if frame.wants is Slot.RIGHT and frame.left is not None and not frame.reach:
        unknown = Quantity(BLANK, item.span, said=False)
        yield state.framed(replace(frame, right=unknown, wants=Slot.NONE))
    else:
        yield state


def _unit(state: State, item: Item, world: World) -> Iterator[State]:
    """Name the parts that numbers are changed to; the name alone is seldom all that is said."""
    yield state.and_costs(weights.IGNORED if item.end - item.start == 1 else 0)


def _whole(state: State, item: Item, world: World) -> Iterator[State]:
    """Pass over one whole, that a number is only held against; or take it, where it is asked of."""
    if state.frame.whole is not None and isinstance(world.facts.problem, Compare):
        yield from closed(state.and_costs(weights.FREE), world)
        return
    near = world.parted and isinstance(world.facts.problem, About)
    yield state.and_costs(weights.NEXT if near else weights.IGNORED)
    if 1 in world.facts.numbers and state.frame.empty:
        yield state.framed(Frame(left=Quantity(1, item.span)), weights.NEXT)


def _denied(state: State, item: Item, world: World) -> Iterator[State]:
    """Deny what was just said, or comes: from two you can't take eight, you can't take 8 from 2."""
    yield state
    if state.frame.empty and (Sign.MINUS in world.signs or not state.drafts):
        yield replace(state, denied=True)
    if Sign.MINUS in world.signs and state.frame.paired:
        yield from closed(replace(state, denied=True), world)
    elif Sign.MINUS in world.signs and state.frame.left is not None:
        yield replace(state, denied=True)


def _point(state: State, item: Item, world: World) -> Iterator[State]:
    """Move the point one place: of the number that stands, or of one of the problem's."""
    for after in closed(state, world):
        starts = [after.standing.leaf] if after.standing else list(world.facts.written)
        for leaf in starts:
            left = Quantity(leaf, item.span, said=False)
            for sign in (Sign.OVER, Sign.TIMES):
                yield after.framed(Frame(left=left, sign=sign, right=Quantity(10, item.span)))
        yield after.and_costs(1)


def _free(state: State, item: Item, world: World) -> Iterator[State]:
    """Close what is being said; a number only named comes, a digit, or one rounded.

    Or that was carried which was just put on: and the two I carried, ten.
    """
    if item.meaning is Meaning.CARRY and state.frame.paired and state.frame.result is None:
        yield state
    for after in closed(state, world):
        yield replace(after, free=True)


_EFFECTS: dict[Meaning, Effect] = {
    **dict.fromkeys((Meaning.PLUS, Meaning.MINUS, Meaning.TIMES, Meaning.OVER), _infix),
    Meaning.OF: _of,
    Meaning.GROUPS: groups,
    Meaning.AND: _and,
    Meaning.EQUALS: _equals,
    **dict.fromkeys((Meaning.ADD, Meaning.TAKE, Meaning.GIVE), verb),
    **dict.fromkeys((Meaning.MULTIPLY, Meaning.SHARE), scaling),
    **dict.fromkeys((Meaning.HALF, Meaning.DOUBLE), scale_verb),
    Meaning.AGAIN: again,
    Meaning.BY: by,
    Meaning.INTO: _into,
    Meaning.SPLIT: _split,
    Meaning.GO: go,
    Meaning.UP: on_or_back,
    Meaning.BACK: on_or_back,
    Meaning.MORE: more,
    Meaning.LESS: more,
    Meaning.TO: to,
    Meaning.FROM: off,
    Meaning.ONTO: onto,
    **dict.fromkeys((Meaning.THEN, Meaning.BUT, Meaning.SEE, Meaning.COUNT), _break),
    Meaning.SO: _so,
    Meaning.THINK: _so,
    Meaning.BECAUSE: _because,
    Meaning.TOGETHER: _together,
    **dict.fromkeys((Meaning.WRITE, Meaning.CARRY, Meaning.BORROW, Meaning.ROUND), _free),
    Meaning.MADE: turned_into,
    Meaning.ASK: _ask,
    Meaning.NOT: _denied,
    **dict.fromkeys((Meaning.DONE, Meaning.LOST), done),
    Meaning.KNEW: knew,
    Meaning.UNSURE: unsure,
    Meaning.VAGUE: vague,
    Meaning.BOTH: both,
    Meaning.EACH: each,
    **dict.fromkeys(POINTING, refer),
    **dict.fromkeys(
        (Meaning.LARGER, Meaning.SMALLER, Meaning.EQUAL, Meaning.TRUE, Meaning.FALSE), judged
    ),
    Meaning.LEFT_OVER: left_over,
    Meaning.APART: apart,
    Meaning.EMPTY: lacked,
    **dict.fromkeys((Meaning.HUNDREDS, Meaning.TENS, Meaning.ONES, Meaning.PARTS), place_named),
    Meaning.UNIT: _unit,
    Meaning.WHOLE: _whole,
    Meaning.POINT: _point,
    **dict.fromkeys((Meaning.ZERO, Meaning.ZEROS), zeros),
}
