"""Answers that are no number: which is larger, whether it is true."""

from collections.abc import Iterator

from waysaid.hearing.meaning import Meaning
from waysaid.hearing.spoken import weights
from waysaid.hearing.spoken.change import replace
from waysaid.hearing.spoken.close import closed
from waysaid.hearing.spoken.frame import Frame
from waysaid.hearing.spoken.item import Item
from waysaid.hearing.spoken.state import State
from waysaid.hearing.spoken.world import World
from waysaid.number import Claim, Compare, Exact, Order, Sign, Verdict, value_of

_OPPOSITE = {Order.LESS: Order.MORE, Order.SAME: Order.SAME, Order.MORE: Order.LESS}
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
        yield from _of_comparison(state, item.meaning, problem, world)
    elif item.meaning in (Meaning.LARGER, Meaning.SMALLER) and state.frame.bare:
        sign = Sign.PLUS if item.meaning is Meaning.LARGER else Sign.MINUS
        yield state.framed(Frame(sign=sign, right=state.frame.left))
        yield state.and_costs(weights.IGNORED)
    else:
        yield state


def _of_claim(state: State, meaning: Meaning, world: World) -> Iterator[State]:
    said = {Meaning.FALSE: Verdict.FALSE, Meaning.TRUE: Verdict.TRUE, Meaning.EQUAL: Verdict.TRUE}
    for after in closed(state, world):
        verdict = said.get(meaning)
        if verdict is None:
            yield after
        elif after.verdict is None or meaning is not Meaning.EQUAL:
            yield replace(after, verdict=verdict)
        else:
            yield after


def _of_comparison(
    state: State, meaning: Meaning, problem: Compare, world: World
) -> Iterator[State]:
    """Say that the number last named is larger, smaller or the same, whatever it was called."""
    order = _ORDERS.get(meaning)
    subject = state.frame.left or state.spoken
    for after in closed(state, world):
        if order is None:
            yield after
            continue
        side = None if subject is None else _side(subject.value, problem)
        if order is Order.SAME:
            yield replace(after, verdict=after.verdict or order, free=True)
        elif side is None:
            yield replace(after, verdict=after.verdict, free=True, cost=after.cost + 1)
        else:
            said = order if side == 0 else _OPPOSITE[order]
            yield replace(after, verdict=said, free=True)


def _side(value: Exact | None, problem: Compare) -> int | None:
    """Return which of the two numbers compared has the value: 0 the left, 1 the right."""
    sides = [value_of(problem.left), value_of(problem.right)]
    return sides.index(value) if value in sides else None
