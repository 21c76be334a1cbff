"""Answers that are no number: which is larger, whether it is true."""

from collections.abc import Iterator
from fractions import Fraction

from waysaid.hearing.meaning import Meaning
from waysaid.hearing.spoken import weights
from waysaid.hearing.spoken.anew import bottom_of, named_anew, side_anew
from waysaid.hearing.spoken.change import replace
from waysaid.hearing.spoken.close import closed
from waysaid.hearing.spoken.frame import Frame, Quantity, Slot
from waysaid.hearing.spoken.gap import gainsays, missing
from waysaid.hearing.spoken.item import Item
from waysaid.hearing.spoken.scale import HALF
from waysaid.hearing.spoken.state import State
from waysaid.hearing.spoken.world import World
from waysaid.hearing.word import Pause
from waysaid.hearing.worth import worth
from waysaid.number import (
    Claim,
    Compare,
    Exact,
    Form,
    Order,
    Sign,
    Verdict,
    Written,
    exact,
    has_point,
    value_of,
)

_ORDERS = {
    Meaning.LARGER: Order.MORE,
    Meaning.SMALLER: Order.LESS,
    Meaning.EQUAL: Order.SAME,
}


def judged(state: State, item: Item, world: World) -> Iterator[State]:
    """Yield the states after a verdict; in a problem that asks for none, it is a hop's word."""
    problem = world.facts.problem
    assert item.meaning is not None
    if isinstance(problem, Claim):
        yield from _of_claim(state, item.meaning, world)
    elif isinstance(problem, Compare):
        yield from _of_comparison(state, item, problem, world)
    elif item.meaning in (Meaning.LARGER, Meaning.SMALLER) and state.frame.bare:
        sign = Sign.PLUS if item.meaning is Meaning.LARGER else Sign.MINUS
        yield state.framed(Frame(sign=sign, right=state.frame.left))
        yield state.and_costs(weights.IGNORED)
    else:
        yield state


def _of_claim(state: State, meaning: Meaning, world: World) -> Iterator[State]:
    said = {Meaning.FALSE: Verdict.FALSE, Meaning.TRUE: Verdict.TRUE, Meaning.EQUAL: Verdict.TRUE}
    if meaning not in said and (state.frame.whole or state.frame.bare):
        yield replace(state, frame=Frame(), free=True).and_costs(weights.NEXT)
    for after in closed(state, world):
        verdict = said.get(meaning)
        if verdict is None:
            yield after
        elif after.verdict is None or meaning is not Meaning.EQUAL:
            yield replace(after, verdict=verdict)
        else:
            yield after


def _of_comparison(state: State, item: Item, problem: Compare, world: World) -> Iterator[State]:
    """Say that the number last named is larger, smaller or the same, whatever it was called."""
    order = _ORDERS.get(item.meaning or Meaning.EQUAL)
    if order in (Order.LESS, Order.MORE):
        yield from _ordered(state, item, order, world)
        return
    for after in closed(state, world):
        same = order is Order.SAME
        yield replace(after, verdict=after.verdict or order, free=True) if same else after


def _ordered(state: State, item: Item, order: Order, world: World) -> Iterator[State]:
    """Yield the states after `larger` or `smaller`, said of a number, or before it."""
    subject, problem = state.frame.left or state.spoken, world.facts.problem
    assert isinstance(problem, Compare)
    side = None if subject is None else _side(subject.value, problem, state)
    if state.frame.left is not None and state.apart:
        for after in missing(replace(state, frame=Frame()), state.frame.left, world):
            yield replace(after, free=True)
    if state.frame.bare is not None:
        yield from _of_number(state, item, order, side, world)
    unnamed, apart = state.frame.left is None, item.pause is not Pause.NONE
    for after in closed(state, world):
        if (unnamed or apart or side is None) and not item.against:
            more = int(side is not None and not apart)
            yield after.framed(Frame(verb=item.meaning, wants=Slot.RIGHT), more)
        if unnamed:
            yield from (one.and_costs(int(apart)) for one in _of_none(after, item, order, world))
        else:
            yield _judged(after, order, side, world).and_costs(int(side is None or apart))


def _of_number(
    state: State, item: Item, order: Order, side: int | None, world: World
) -> Iterator[State]:
    """Yield the verdict on the number right before it; behind a pause rather on one to come."""
    left = state.frame.left
    alone = replace(state, frame=Frame(), spoken=left, so=False)
    anew = list(side_anew(alone, left, left.value, world)) if left and left.value else []
    for named in anew or [alone]:
        more = 0 if side is not None else weights.FREE
        after = _judged(named, order, side, world).and_costs(more)
        yield after.and_costs(int(item.against))
        if item.against:
            yield after.framed(Frame(verb=item.meaning, left=left, wants=Slot.RIGHT))
        elif item.pause is not Pause.NONE:
            yield named.framed(Frame(verb=item.meaning, wants=Slot.RIGHT), more)


def _of_none(state: State, item: Item, order: Order, world: World) -> Iterator[State]:
    """Yield the verdict with no number before it: on the one spoken of, or the first."""
    subject, problem = state.spoken, world.facts.problem
    assert isinstance(problem, Compare)
    side = None if subject is None else _side(subject.value, problem, state)
    if side is not None and not item.against:
        side = _borne_out(state, side, order, problem)
    judged_on = _judged(state, order, side, world).and_costs(int(side is None))
    if item.against and subject is not None:
        yield judged_on.framed(Frame(verb=item.meaning, left=subject, wants=Slot.RIGHT))
    if not item.against and state.verdict in (Order.LESS, Order.MORE):
        yield replace(state, free=True)
    elif side is None and _of_the_first(state):
        yield _judged(state, order, 0, world).and_costs(1)
    else:
        yield judged_on


def _borne_out(state: State, side: int, order: Order, problem: Compare) -> int:
    """Return which number `it's bigger` is said of, where both were just named in parts alike.

    Of `four fifths is eight tenths and the other only seven` it is what the parts bear out; else
    the one named last.
    """
    values = [value_of(problem.left), value_of(problem.right)]
    name, last = named_anew(state).get(values[1 - side]), state.spoken and state.spoken.value
    sizes = [bottom_of(name)] if name is not None else []
    sizes += _SIZES if isinstance(name, Written) and name.form is Form.DECIMAL else []
    alike = last in (values[side], *(exact(values[side] * one) for one in sizes if one))
    if name is None or not alike or worth(name) != values[1 - side]:
        return side
    larger = int(values[1] > values[0])
    return larger if order is Order.MORE else 1 - larger


def _of_the_first(state: State) -> bool:
    """Tell whether a verdict of which nobody said on what is on the first number: it's less.

    That is in a line's beginning, or promised; not where it is asked, or not known.
    """
    return state.verdict is None and not state.unsure and (state.so or not state.heard)


def judged_behind(state: State, named: Quantity, world: World) -> Iterator[State]:
    """Yield the verdict on a number said behind it: the larger is seven eighths.

    Behind `than` it is the other number, and what is said next is still of the first.
    """
    subject = state.frame.left
    if subject is not None:
        after = replace(state, frame=Frame(), so=False)
        for one in list(side_anew(after, named, exact(named.value or 0), world)) or [after]:
            yield replace(one, spoken=subject)
        return
    problem, order = world.facts.problem, _ORDERS.get(state.frame.verb or Meaning.EQUAL)
    assert isinstance(problem, Compare)
    side = _side(named.value, problem, state)
    if order is not None and side is not None:
        after = replace(state, frame=Frame(), spoken=named, so=False)
        for one in list(side_anew(after, named, exact(named.value or 0), world)) or [after]:
            yield _judged(one, order, side, world)


def _judged(state: State, order: Order, side: int | None, world: World) -> State:
    """Return the state with the verdict on one of the numbers compared; on no other number."""
    said = order if side == 0 else order.turned
    named = state.spoken
    whole = named is not None and isinstance(named.leaf, int) and side is not None
    verdict = state.verdict if side is None else said
    scaled = state.scaled or (whole and world.pointed)
    return replace(state, verdict=verdict, free=True, scaled=scaled)


def _side(value: Exact | None, problem: Compare, state: State) -> int | None:
    """Return which of the two numbers compared is meant: 0 the left, 1 the right.

    A number with a point is also meant by its tenths or hundredths, 70 for 0.7, and one of two with
    the same parts by how many it has: the five of 5/7.
    """
    sides = [value_of(problem.left), value_of(problem.right)]
    if value is None or sides[0] == sides[1]:
        return None
    sizes = _SIZES if has_point(problem) else ()
    ways = [sides, *([exact(one * size) for one in sides] for size in sizes)]
    tops = _tops(sides, state) or _top_beside_half(sides)
    if tops is not None:
        ways.append(tops)
    found = {named.index(value) for named in ways if value in named}
    return found.pop() if len(found) == 1 else None


def _tops(sides: list[Exact], state: State) -> list[Exact] | None:
    """Return how many parts each number has, as it was last named; None where they differ."""
    names = named_anew(state)
    bottoms = [bottom_of(names.get(one, one)) or Fraction(one).denominator for one in sides]
    if bottoms[0] != bottoms[1]:
        return None
    return [exact(one * bottom) for one, bottom in zip(sides, bottoms, strict=True)]


def _top_beside_half(sides: list[Exact]) -> list[Exact] | None:
    """Return the top of a fraction held against a half, and half its bottom; None of others."""
    bottoms = [Fraction(one).denominator for one in sides if one != HALF]
    if len(bottoms) != 1 or bottoms[0] == 1:
        return None
    return [exact(one * bottoms[0]) for one in sides]


def named_first(state: State, world: World) -> Iterator[State]:
    """Yield the state in which a number compared is named before its reasons: it is the larger."""
    problem, named = world.facts.problem, state.frame.left
    if not isinstance(problem, Compare) or state.frame.bare is None or named is None:
        return
    sides = [value_of(problem.left), value_of(problem.right)]
    if state.verdict is not None or state.drafts or named.value not in sides:
        return
    verdict = Order.MORE if named.value == sides[0] else Order.LESS
    yield replace(state, frame=Frame(), spoken=None, verdict=verdict, so=False)


def gainsaid(state: State, world: World) -> int:
    """Return how odd it is that a line ends on the number that its verdict makes the smaller one.

    Of `the other is sixty five, es mayor el cero coma siete` the larger is the one named last.
    """
    last = state.bare[-1] if state.bare else None
    if last is None or last.after < len(state.drafts):
        return 0
    return weights.RESTATED if gainsays(state, last.quantity, world) else 0


JUDGING = (Meaning.LARGER, Meaning.SMALLER)
"""Verdicts behind which the number they are on may come: gana tres cuartos."""

_SIZES = (10, 100, 1000)
"""The parts that a number with a point is said in: common practice, no source."""
