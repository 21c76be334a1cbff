"""The search for the least costly way to have heard a line: a beam over its lattice.

The work is bounded by counts alone: so many states a word, so many words.
"""

from collections.abc import Iterator

from waysaid.hearing.meaning import Meaning
from waysaid.hearing.reading import Part
from waysaid.hearing.spoken import weights
from waysaid.hearing.spoken.anew import tops_told
from waysaid.hearing.spoken.change import replace
from waysaid.hearing.spoken.close import closed
from waysaid.hearing.spoken.effects import effect
from waysaid.hearing.spoken.ending import begun_again, ends_there, even_count, joined_late, restates
from waysaid.hearing.spoken.frame import Frame, Quantity, Slot
from waysaid.hearing.spoken.item import Item
from waysaid.hearing.spoken.numbers import number
from waysaid.hearing.spoken.pieces import joined_amiss, kept_put_on
from waysaid.hearing.spoken.sharing import rest_told
from waysaid.hearing.spoken.state import Said, State
from waysaid.hearing.spoken.trail import Beam, Lattice, Taken, Trail, begun, keep
from waysaid.hearing.spoken.verdict import JUDGING, gainsaid
from waysaid.hearing.spoken.world import World, told_in_tens
from waysaid.hearing.word import Pause
from waysaid.hearing.worth import worth
from waysaid.number import Claim, Compare, Exact, Form, Operation, Sign, has_form

WIDTH = 24
"""The states kept for each word of a line of ordinary length. Our choice, by trial."""

_ORDINARY = 40
"""Up to how many words a line is ordinary; a longer one keeps fewer states, and fewer again, for
each holds more steps. Our choice."""

_FEWEST = 4
"""The states kept for each word of the longest lines. Our choice."""

MOST_WORDS = 90
"""The words of a line that are listened to: our choice; a child speaks some thirty or forty."""

_STATEMENT = (Meaning.THEN, Meaning.SO, Meaning.BUT, Meaning.BECAUSE)


def search(items: Lattice, world: World) -> list[State]:
    """Return the states at the end of the line, the least costly first."""
    items = items[:MOST_WORDS]
    trail = begun(items, _width(len(items)), world)
    world = replace(world, closed={}, made={}, costs={})
    for place in range(len(trail.waiting) - 1, len(items)):
        trail.waiting.append(_listened(place, trail, world))
    keep(trail)
    kept: Beam = {}
    for state in _best(trail.waiting[-1].get(len(items), {}), trail):
        for done in _finished(state, world):
            _keep(kept, (done, done.cost, done.undo, done.heard), trail.said)
    return [one[0] for one in sorted(kept.values(), key=lambda one: one[1])[: trail.width]]


def _listened(place: int, trail: Trail, world: World) -> dict[int, Beam]:
    """Return the beams behind a word, once all that may begin with it is heard."""
    here, waiting = trail.items[place], trail.waiting[place]
    beams = {at: dict(beam) for at, beam in waiting.items() if at > place}
    within = (one for one in here if one.end <= len(trail.items) and _may_stand(one, world))
    eased = [_eased(item, here, world) for item in within]
    meant = [(item, _said(item), beams.setdefault(item.end, {})) for item in eased]
    for state in _best(waiting.get(place, {}), trail):
        for item, said, beam in meant:
            for after in _taken(state, item, said, world):
                _keep(beam, after, trail.said)
    return beams


def _said(item: Item) -> Quantity | None:
    """Return the number that an item is; None where it is none."""
    one = item.numeral
    if one is None:
        return None
    return Quantity(one.leaf, item.span, many=one.many, noise=item.noise)


def _width(words: int) -> int:
    """Return how many states are kept for each word, so that a line of any length is bounded.

    What grows with the words of a line is the number of its states and the steps that each holds.
    """
    if words <= _ORDINARY:
        return WIDTH
    return max(_FEWEST, WIDTH * _ORDINARY**2 // words**2)


def _may_stand(item: Item, world: World) -> bool:
    """Tell whether an item may be meant: an odd number with a point only where there is one."""
    numeral = item.numeral
    if numeral is None or world.pointed or not (numeral.noise or numeral.places):
        return True
    return not has_form(numeral.leaf, Form.DECIMAL)


_SPELLED = 6
"""How much odder a number told in tens is where groups are worked with. Our choice."""


def _eased(item: Item, here: tuple[Item, ...], world: World) -> Item:
    """Return a number as less odd, or odder, for what else may be said here.

    Hundredths said in a measure are plain in a problem with a point, and the wholes in them odd:
    fifty of fifty cents. Beside a fraction six tenths are rather one. Where groups are worked with,
    24 tens are rather a product. That a number stands in a way makes it no likelier
    to be cut out of a longer one: that would mend wrong work.
    """
    if item.numeral is not None and told_in_tens(item.numeral, world):
        return replace(item, noise=item.noise + _SPELLED)
    if item.numeral is not None and world.pointed:
        if world.parted and item.numeral.places and has_form(item.numeral.leaf, Form.DECIMAL):
            return replace(item, noise=item.noise + 1)
        hundredths = [one for one in here if _in_measure(one)]
        if item in hundredths:
            return replace(item, noise=0)
        if item.noise == 1 and has_form(item.numeral.leaf, Form.DECIMAL):
            return replace(item, noise=0)
        if any(one.end > item.end for one in hundredths) or _short_of_point(item, here):
            return replace(item, noise=item.noise + 1)
    return item


def _short_of_point(item: Item, here: tuple[Item, ...]) -> bool:
    """Tell whether a number may as well be said without its point: two seventy five."""
    numeral = item.numeral
    if numeral is None or not (isinstance(numeral.leaf, int) or has_form(numeral.leaf, Form.PARTS)):
        return False
    numerals = (one.numeral for one in here if one.end == item.end and one.numeral)
    return any(has_form(one.leaf, Form.DECIMAL) for one in numerals)


def _in_measure(item: Item) -> bool:
    numeral = item.numeral
    return numeral is not None and numeral.places and has_form(numeral.leaf, Form.DECIMAL)


def _keep(beam: Beam, taken: Taken, said: Said) -> None:
    """Keep a state where it costs less than those alike."""
    key = taken[0].key(said.number(taken[0].drafts))
    if taken[1] < beam.setdefault(key, taken)[1]:
        beam[key] = taken


def _best(beam: Beam, trail: Trail) -> list[State]:
    """Return the states that cost the least, with their changes made."""
    compared = isinstance(trail.world.facts.problem, Compare)
    own = trail.world.facts.numbers
    key = (lambda one: _so_far(one, own)) if compared else _with_number
    likely = sorted(beam.values(), key=key)
    return [state.come_by(cost, undo, heard) for state, cost, undo, heard in likely[: trail.width]]


def _so_far(taken: Taken, own: tuple[Exact, ...]) -> int:
    """Return what a state costs, and what is still to pay of it: numbers alone, what cannot be.

    Of two numbers compared one is seldom put on something.
    """
    frame = taken[0].frame
    put_on = frame.right if frame.sign is Sign.PLUS else None
    odd = weights.STRANGE if put_on is not None and put_on.value in own else 0
    return taken[1] + odd + _owed(frame) + weights.RESTATED * max(0, len(taken[0].bare) - 1)


def _with_number(taken: Taken) -> int:
    """Return the same where a number just said is one of them; numbers compared are named alone."""
    frame = taken[0].frame
    loose = len(taken[0].bare) - (frame.sign is not None or not frame.left)
    return taken[1] + _owed(frame) + weights.RESTATED * max(0, loose)


def _owed(frame: Frame) -> int:
    """Return what a frame is still to pay: that of a number opened into more than it is."""
    return weights.FALSE if _too_much(frame) else 0


def _too_much(frame: Frame) -> bool:
    """Tell whether a number is being opened into more than it is: seven is fifteen and."""
    if frame.whole is None or frame.left is None or frame.sign is not Sign.PLUS:
        return False
    whole, part = frame.whole.value, frame.left.value
    return whole is not None and part is not None and part > whole


def _taken(state: State, item: Item, said: Quantity | None, world: World) -> Iterator[Taken]:
    """Yield the states after an item, each with what then changes in it: it may not be kept."""
    noise = item.noise * weights.NOISE
    if state.frame.verb in JUDGING and item.pause is not Pause.NONE:
        return
    if said is not None:
        value = said.value
        if value is not None and value < 0 and not _below_nothing(state.frame):
            noise += weights.IGNORED
        undo = (state, state.undo[1] if state.undo else state)
        for after in number(state, said, world):
            yield after, after.cost + noise, undo, state.heard + 1
    elif item.meaning is None:
        yield state, state.cost + weights.WORD, state.undo, state.heard
    elif item.meaning is Meaning.CORRECT:
        for after in (*_corrected(state, item), *_replaced(state, item, world)):
            yield after, after.cost, after.undo, after.heard
    else:
        for after in effect(state, item, world):
            begins = item.meaning in _STATEMENT or after.frame.verb is not state.frame.verb
            begins = begins or (state.frame.empty and after.frame.sign is not None)
            back = (state.undo[0], state) if begins and state.undo else after.undo
            yield after, after.cost + noise, back, after.heard


def _below_nothing(frame: Frame) -> bool:
    """Tell whether a number below nothing may be meant: the result of 8 take away 10 alone."""
    if frame.wants is not Slot.RESULT or (frame.left is None and frame.sign is Sign.PLUS):
        return False
    comes = frame.comes_to
    return comes is None or comes < 0


def _corrected(state: State, item: Item) -> Iterator[State]:
    """Take back the last number, the clause, or all; or nothing, where nothing was said."""
    yield state.and_costs(weights.IGNORED + weights.KEPT * item.anew)
    if state.undo is None:
        return
    last, clause = state.undo
    further = weights.WITHDRAWN * item.anew
    noise = item.noise * weights.NOISE
    for back in (last, clause):
        more = further + weights.WITHDRAWN + max(back is not last, state.heard - back.heard - 2)
        just_it = item.anew and back is last
        yield _gone_back(state, back, item, weights.FREE if just_it else more + noise)
    more = further + weights.WITHDRAWN_ALL + weights.WITHDRAWN * max(0, state.heard - 2)
    yield _gone_back(state, State(), item, more + noise)


def _replaced(state: State, item: Item, world: World) -> Iterator[State]:
    """Take back the number before the last, which was said in its stead: thirty, 36 I mean."""
    new, old = state.frame.bare or state.spoken, state.undo[0].spoken if state.undo else None
    last = state.undo[0].undo if state.undo else None
    if last is None or new is None or old is None or not _alike(old, new):
        return
    stretch = (_heard_until(last[0]), new.span[0])
    more = weights.WITHDRAWN + item.noise * weights.NOISE
    dropped = (*state.dropped, stretch)
    for after in number(last[0], new, world):
        yield replace(after, dropped=dropped, undo=last, heard=last[0].heard + 1).and_costs(more)


def _alike(old: Quantity, new: Quantity) -> bool:
    """Tell whether one number may have been said for another: of whole ones as many digits.

    Something parts the two, if only a comma.
    """
    whole = isinstance(old.leaf, int) and isinstance(new.leaf, int)
    apart = new.said and new.span[0] - old.span[1] > 1
    return apart and (not whole or len(str(old.leaf)) == len(str(new.leaf)))


def _gone_back(state: State, back: State, item: Item, more: int) -> State:
    dropped = (*state.dropped, (_heard_until(back), item.span[1]))
    back = replace(back, amount=state.amount or back.amount)
    return replace(
        back, cost=back.cost + more, dropped=dropped, knew=state.knew, unsure=state.unsure
    )


def _heard_until(state: State) -> int:
    """Return the place in the line behind the last number of a state."""
    places = [draft.span[1] for draft in state.drafts]
    places += [one.quantity.span[1] for one in state.bare]
    frame = state.frame
    said = (frame.left, frame.right, frame.result, frame.whole)
    places += [one.span[1] for one in said if one is not None]
    return max(places, default=0)


def _finished(state: State, world: World) -> Iterator[State]:
    """Yield a state at the end of the line, with what is then left unexplained."""
    for after in closed(state, world):
        if after.frame != Frame() or after.reason is not None:
            continue
        told = kept_put_on(joined_late(begun_again(restates(after, world)), world), world)
        done = joined_amiss(rest_told(told, world), world)
        done = done.and_costs(-1 if ends_there(done, world) else 0)
        judges = isinstance(world.facts.problem, Compare | Claim)
        if judges and done.verdict is None:
            done = done.and_costs(weights.NO_VERDICT)
        odd = 0 if even_count(done, world) else weights.LOOSE
        yield done.and_costs(_left_over(done, world) + odd + gainsaid(done, world))


_MANY = 100
"""From what number on so many hundreds are rather a product, as groups are worked with."""


def _names_a_side(state: State, world: World) -> bool:
    """Tell whether one of the numbers compared is named in the end, and no other verdict."""
    if not isinstance(world.facts.problem, Compare) or not state.bare:
        return False
    last = state.bare[-1]
    return state.verdict is None and last.final and last.quantity.value in world.facts.numbers


def _left_over(state: State, world: World) -> int:
    """Return what the numbers cost that nothing explains: all but an answer, and the problem's."""
    cost = 0
    ends = [draft.stands for draft in state.drafts]
    ends += [
        worth(draft.left.right)
        for draft in state.drafts[-1:]
        if isinstance(draft.left, Operation) and draft.open == (Part.RIGHT,)
    ]
    compared = isinstance(world.facts.problem, Compare)
    for place, one in enumerate(state.bare):
        last = place == len(state.bare) - 1
        if one.quantity.many and world.sizes and (one.quantity.value or 0) > _MANY:
            cost += weights.LOOSE
        if one.quantity.value in world.facts.numbers and not state.drafts[: one.after]:
            named = state.verdict is None or (place == 0 and one.final)
            cost += 0 if compared and named and last else weights.RESTATED
        elif not last and not one.final:
            cost += weights.LOOSE
        elif not last:
            cost += weights.RESTATED
        if compared and last and one.after and _names_a_side(state, world):
            continue
        if tops_told(state, one.quantity):
            continue
        if last and state.drafts and one.quantity.value not in ends[max(0, one.after - 1) :]:
            cost += weights.UNREACHED if one.after or one.final else weights.IGNORED
    return cost
