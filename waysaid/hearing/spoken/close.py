"""What becomes of a frame when the next thing is said: a step, several, or a number alone."""

from collections.abc import Iterator

from waysaid.hearing.draft import Draft
from waysaid.hearing.meaning import Meaning
from waysaid.hearing.spoken import weights
from waysaid.hearing.spoken.alone import alone
from waysaid.hearing.spoken.anew import (
    as_problem_writes,
    asked_alone,
    in_parts,
    in_percents,
    in_small_parts,
    name_cost,
    nearly,
)
from waysaid.hearing.spoken.change import replace
from waysaid.hearing.spoken.frame import EMPTY, HOPS, Frame, Quantity, Slot
from waysaid.hearing.spoken.meant import cannot, meant, regrouped
from waysaid.hearing.spoken.part import (
    base_of,
    is_all,
    part_step,
    parts_taken,
    so_many_of,
    taken_part,
)
from waysaid.hearing.spoken.places import in_other_places, in_places
from waysaid.hearing.spoken.put_on import part_put_on
from waysaid.hearing.spoken.reached import as_factors
from waysaid.hearing.spoken.scale import by_two
from waysaid.hearing.spoken.shares import parts_worked
from waysaid.hearing.spoken.sharing import factor_asked, from_count, so_many
from waysaid.hearing.spoken.sized import (
    by_groups,
    in_groups,
    named_groups,
    onto_groups,
)
from waysaid.hearing.spoken.state import State, before_last
from waysaid.hearing.spoken.step import with_step
from waysaid.hearing.spoken.world import World
from waysaid.hearing.turned import turned_side
from waysaid.hearing.worth import worth
from waysaid.number import (
    BLANK,
    Blank,
    Claim,
    Equation,
    Exact,
    Number,
    Operation,
    Sign,
    sides,
    undone,
    written,
)


def closed(state: State, world: World) -> Iterator[State]:
    """Yield the states in which what is being said has become a step, or a number alone.

    Many words close the same state, or one that came to it otherwise; what it becomes is reckoned
    once.
    """
    known = world.closed.setdefault(state.but_cost(), [])
    if not known:
        known += (state, *_closed(state, world))
        yield from known[1:]
        return
    first, *found = known
    more = state.cost - first.cost
    for after in found:
        yield after.come_by(after.cost + more, state.undo, state.heard)


def _closed(state: State, world: World) -> Iterator[State]:
    frame = _reached(state)
    state = state.framed(EMPTY)
    if frame.sign is not None and frame.right is not None:
        if frame.wants is not Slot.NONE:
            state = state.and_costs(weights.NO_RESULT)
        yield from _stepped(state, frame, world)
    elif frame.whole is not None:
        yield from _renamed(state, frame, world)
    elif frame.left is not None and frame.verb is None and frame.sign is None:
        yield from alone(state, frame.left, world)
    elif frame.left is not None:
        shares = frame.verb is Meaning.SHARE and Sign.OVER in world.signs
        for after in alone(state, frame.left, world):
            yield after.and_costs(weights.NEXT if shares else weights.ALONE)
    elif frame.reach and frame.verb in (Meaning.HALF, Meaning.DOUBLE):
        yield state.and_costs(2 * weights.ALONE)
    elif frame.sign is not None or frame.verb is not None:
        yield from _half_of_base(state, frame, world)
        yield from _scaled_again(state, frame, world)
        yield state.and_costs(weights.NEXT if _scaled_before(state, frame) else weights.ALONE)
    else:
        yield state


def _half_of_base(state: State, frame: Frame, world: World) -> Iterator[State]:
    """Yield half of the number that a part is taken of, said behind its worth: 43 is half."""
    base, ends = base_of(world), frame.result or state.reason
    if frame.verb is not Meaning.HALF or ends is None or base is None:
        return
    left = Quantity(base, ends.span, said=False)
    halved = replace(by_two(True, left, world), result=frame.result)
    yield with_step(state, halved, left, world)


def _scaled_again(state: State, frame: Frame, world: World) -> Iterator[State]:
    """Yield half or double of what stands, where nothing more was said: 28, and then double."""
    start = state.standing
    if frame.verb not in (Meaning.HALF, Meaning.DOUBLE) or not state.drafts or not world.groups:
        return
    if start is not None:
        left = replace(start, said=False)
        scaled = with_step(state, by_two(frame.verb is Meaning.HALF, left, world), left, world)
        known = turned_side(scaled.drafts[-1].left) in world.lefts
        if known or state.drafts[-1].result is not None:
            yield scaled.and_costs(-weights.ARRIVED if known else 0)


def _scaled_before(state: State, frame: Frame) -> bool:
    """Tell whether half or double only names what was done: 56, 28, 14, half half half."""
    left = state.drafts[-1].left if state.drafts else None
    sign = {Meaning.HALF: Sign.OVER, Meaning.DOUBLE: Sign.TIMES}.get(frame.verb or Meaning.IT)
    return isinstance(left, Operation) and left.sign is sign and left.right == 2


def _reached(state: State) -> Frame:
    """Return the frame; a hop told only by where it ends has the size that arithmetic gives."""
    frame, start = state.frame, state.frame.left or state.standing
    if frame.right is not None and frame.right.leaf is BLANK:
        return _found(frame, frame.right)
    if not frame.reach or frame.result is None or frame.right is not None:
        return frame
    size = _fitting(frame.sign, start, frame.result)
    if size is None or size <= 0:
        return frame
    right = Quantity(size, frame.result.span, said=False)
    return replace(frame, right=right, wants=Slot.NONE)


def _found(frame: Frame, asked: Quantity) -> Frame:
    """Return the frame of `eight and what is thirteen`, with the one number that fits."""
    found = _fitting(frame.sign, frame.left, frame.result)
    if found is None:
        return replace(frame, right=None, sign=None, left=None, result=None, wants=Slot.NONE)
    return replace(frame, right=Quantity(found, asked.span, said=False), wants=Slot.NONE)


def _fitting(sign: Sign | None, left: Quantity | None, result: Quantity | None) -> Exact | None:
    """Return the number that goes with the left to come to the result; None where none does."""
    here, there = left and left.value, result and result.value
    if sign is None or here is None or there is None:
        return None
    return worth(undone(Operation(sign, here, BLANK), there))


def _stepped(state: State, frame: Frame, world: World) -> Iterator[State]:
    """Yield the step of a frame, its left side said, standing, or one of the problem's numbers."""
    if frame.left is None and state.both:
        yield both_changed(replace(state, both=False), frame, world)
        return
    if frame.whole is not None and frame.sign in HOPS and frame.left:
        yield from _opened(state, frame, world)
        return
    if state.denied:
        state = replace(state, denied=False)
        if cannot(frame):
            yield state
    opened = regrouped(frame, world)
    if opened is not None:
        yield from _opened(state.and_costs(1), opened, world)
    if frame.left is not None:
        yield from _with_left(state, frame, frame.left, world)
        return
    if state.standing is not None:
        yield from _from_standing(state, frame, replace(state.standing, said=False), world)
    earlier = before_last(state, frame)
    if earlier is not None:
        yield with_step(state, frame, earlier, world)
    factor = factor_asked(frame, world)
    if factor is not None:
        named = weights.LOOSE if state.latest is not None else 0
        yield with_step(state, frame, factor, world).and_costs(named)
    assert frame.right is not None
    place = frame.right.span[0]
    for number in dict.fromkeys(world.facts.written):
        start = Quantity(number, (place, place), said=False)
        more = weights.BASE + (0 if state.standing is None else weights.BASE)
        more += weights.IGNORED if frame.right.many and frame.sign in HOPS else 0
        yield with_step(state, frame, start, world).and_costs(more)


def _from_standing(state: State, frame: Frame, start: Quantity, world: World) -> Iterator[State]:
    """Yield the step of a frame from what stands: as said, in groups or parts, or in places."""
    yield with_step(state, frame, start, world).and_costs(weights.GOES_ON)
    yield from _in_groups(state, frame, start, world)
    parts = parts_taken(frame, start, world) if world.groups and state.drafts else None
    if parts is not None:
        yield with_step(state, parts, start, world)
    for moved in in_places(replace(frame, left=start), state.standing, world):
        placed = with_step(state, moved, start, world).and_costs(weights.PLACED)
        yield in_other_places(placed, replace(frame, left=start), moved)
    for cut in in_parts(replace(frame, left=start), world):
        yield with_step(state, cut, start, world).and_costs(weights.PLACED)


def _in_groups(state: State, frame: Frame, start: Quantity, world: World) -> Iterator[State]:
    """Yield a hop from what stands that is one of whole groups, or of how many there are."""
    if not world.sizes:
        return
    count = from_count(state, frame) if world.groups else None
    if count is not None:
        yield with_step(state, frame, count, world).and_costs(weights.PLACED)
    for sized in by_groups(frame, start, state, world):
        yield with_step(state, sized, start, world).and_costs(weights.PLACED)
    groups = in_groups(frame, state, world)
    if groups is not None and groups.left is not None:
        yield with_step(state, groups, groups.left, world).and_costs(weights.PLACED)


def _with_left(state: State, frame: Frame, left: Quantity, world: World) -> Iterator[State]:
    """Yield the step of a frame with its left side said: as said, or digits for their places."""
    yield with_step(state, frame, left, world)
    if world.parted:
        for before in part_put_on(state, left, world):
            yield with_step(before, frame, left, world)
    if frame.result is None and taken_part(frame, world) is not None:
        yield state.and_costs(weights.NEXT)
    yield from parts_worked(state, frame, left, world)
    onto = onto_groups(frame, state, world)
    if onto is not None and onto.left is not None:
        yield with_step(state, onto, onto.left, world).and_costs(weights.PLACED)
    for made in as_factors(frame, world):
        yield with_step(state, made, left, world).and_costs(weights.PLACED)
    for moved in in_places(frame, state.standing, world):
        if moved.left is not None:
            more = weights.PLACED if frame.result else weights.PLACED + weights.UNSAID
            placed = with_step(state, moved, moved.left, world).and_costs(more)
            yield in_other_places(placed, frame, moved)
    for cut in in_parts(frame, world):
        yield with_step(state, cut, left, world).and_costs(weights.PLACED)


def both_changed(state: State, frame: Frame, world: World) -> State:
    """Return the state in which every number of the problem was changed alike.

    Of a problem with two sides, those of the side that is then like the other.
    """
    assert frame.right is not None
    before = state
    changed, alike = _alike(frame, world)
    for one in changed:
        state = with_step(state, frame, Quantity(one, frame.right.span), world)
    if alike:
        return state.and_costs(min(0, before.cost - state.cost))
    first = 0 < len(state.drafts) == len(changed)
    return state.and_costs(-2 * weights.UNSAID if first else 0)


def _alike(frame: Frame, world: World) -> tuple[list[Number], bool]:
    """Return the numbers that are changed: of two sides those that all make the other's.

    With them, whether there are such. Of two fractions they are the top and the bottom of one.
    """
    problem = world.facts.problem
    for one, other in (world.fractions, world.fractions[::-1]) if world.fractions else ():
        if all(_made(number, frame) == made for number, made in zip(one, other, strict=True)):
            return list(one), True
    if not isinstance(problem, Equation | Claim):
        return list(world.facts.written), False
    for side in sides(problem):
        found = [one for one in written(side) if not isinstance(one, Blank)]
        if len(found) > 1 and all(_made(one, frame) in world.facts.numbers for one in found):
            return found, True
    return list(world.facts.written), False


def _made(number: Number, frame: Frame) -> Exact | None:
    return replace(frame, left=Quantity(number, (0, 0))).comes_to


def _opened(state: State, frame: Frame, world: World) -> Iterator[State]:
    """Yield the step that opens a number into two parts: 25 = 3 + 22.

    Two numbers of the problem are no parts but put together: ten is the six and the four.
    """
    assert frame.left is not None
    assert frame.right is not None
    assert frame.sign is not None
    assert frame.whole is not None
    own, whole = world.facts.numbers, frame.whole.value
    if (
        frame.sign is Sign.PLUS
        and whole not in own
        and {frame.left.value, frame.right.value} <= {*own}
    ):
        yield with_step(state, frame, frame.left, world)
        return
    leaf = Operation(frame.sign, frame.left.leaf, frame.right.leaf)
    parts = Quantity(leaf, (frame.left.span[0], frame.right.span[1]))
    yield from _renamed(state, Frame(whole=frame.whole, left=parts), world)


def _renamed(state: State, frame: Frame, world: World) -> Iterator[State]:
    """Yield a number opened into parts, 25 = 3 + 22, or written another way, 3/4 = 6/8."""
    whole, left = frame.whole, frame.left
    assert whole is not None
    if left is None:
        yield from alone(state, whole, world)
        return
    span = (min(whole.span[0], left.span[0]), max(whole.span[1], left.span[1]))
    for step in _worked_out(state, whole, left, world):
        if step is not None and step.left is not None:
            yield with_step(state, step, step.left, world)
            return
    for before, hop, more in meant(whole, left, state, world):
        if hop.left is not None:
            yield with_step(before, hop, hop.left, world).and_costs(more)
    if is_all(whole, left, world):
        yield replace(state, spoken=left, standing=left, so=False)
        return
    if in_small_parts(whole, left, world) or in_percents(whole, left):
        scaled = state.scaled or not isinstance(left.leaf, Operation)
        yield replace(state, spoken=left, so=False, scaled=scaled)
        return
    opened = isinstance(left.leaf, Operation)
    if not opened and (whole.leaf == left.leaf or _unlike(whole, left, world)):
        yield from _each_alone(state, whole, left, world)
        return
    if not opened and as_problem_writes(whole, left, world):
        whole, left = left, whole
    draft = Draft(whole.leaf, (), span, left.leaf, whole=opened)
    cost = name_cost(whole, left, world)
    standing = state.standing if opened or cost >= weights.FALSE else left
    spoken = whole if nearly(whole, left) else left
    yield state.stepped(draft, cost, spoken=spoken, standing=standing)
    for after in () if opened or cost else _come_to(state, whole, world):
        yield after.stepped(draft, -weights.NEXT, spoken=spoken, standing=standing)


def _worked_out(
    state: State, whole: Quantity, left: Quantity, world: World
) -> Iterator[Frame | None]:
    """Yield what `one is other` may tell of groups and parts: a fifth is six, 21 are three."""
    yield part_step(state, whole, left, world) or part_step(state, left, whole, world)
    yield so_many(whole, left, state, world)
    yield so_many_of(whole, left, state, world)
    yield named_groups(whole, left, state, world)


def _come_to(state: State, whole: Quantity, world: World) -> Iterator[State]:
    """Yield the states in which a number was come to first that is then named anew.

    Of `four fifths, six fifths, eight fifths, which is one and three fifths` it ends the count.
    """
    if whole.value in world.facts.numbers:
        return
    for after in (*alone(state, whole, world), *asked_alone(state, whole, world)):
        if len(after.drafts) > len(state.drafts) and after.drafts[-1].stands == whole.value:
            yield after


def _unlike(whole: Quantity, left: Quantity, world: World) -> bool:
    """Tell whether one number is not the other anew, as no number of a product of wholes is."""
    wholes = bool(world.sizes) and all(isinstance(one, int) for one in world.facts.written)
    return wholes and whole.value != left.value


def _each_alone(state: State, whole: Quantity, left: Quantity, world: World) -> Iterator[State]:
    """Yield a number said twice as said alone, or two that are not the same one by one."""
    if whole.leaf == left.leaf:
        yield from alone(state, left, world)
        return
    for after in alone(state, whole, world):
        yield from alone(after.and_costs(weights.IGNORED), left, world)
