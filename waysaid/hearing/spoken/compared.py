"""The verdict on two numbers compared: a word for it, or the number that is named as the larger."""

from waysaid.hearing.meaning import Meaning
from waysaid.hearing.spoken.state import State
from waysaid.hearing.spoken.talk import Talk
from waysaid.hearing.worth import worth
from waysaid.number import Compare, Order, Remainder, Verdict, exact


def on_comparison(
    verdict: Remainder | Order | Verdict | None, state: State, talk: Talk, problem: Compare
) -> Remainder | Order | Verdict | None:
    """Return the verdict on a comparison: none only asked for, nor one that is agreement.

    Where none was told, one number said to be the other is the same: a half is two quarters.
    """
    if talk.wonders and not state.heard:
        return None
    if talk.side is not None:
        return talk.side
    if verdict is Order.SAME and _as_another(state, talk):
        return None
    named = _first_named(talk, problem) or _promised_side(state, talk, problem)
    if named is not None:
        return named
    compared = {problem.left, problem.right}
    same = any({draft.left, draft.result} == compared for draft in state.drafts)
    return Order.SAME if verdict is None and same else verdict


def _first_named(talk: Talk, problem: Compare) -> Order | None:
    """Return the number compared that was named with its reasons right behind it, as the larger."""
    first = talk.claim.numeral if talk.claim else None
    left, right = worth(problem.left), worth(problem.right)
    if first is None or left == right or exact(first.leaf) not in (left, right):
        return None
    return Order.MORE if exact(first.leaf) == left else Order.LESS


def _promised_side(state: State, talk: Talk, problem: Compare) -> Order | None:
    """Return the number compared that the line ends on behind `so`, as the larger one.

    What is smaller may be no number of the two: sevenths are smaller, so two fifths.
    """
    last = talk.promised.numeral if talk.promised else None
    left, right = worth(problem.left), worth(problem.right)
    named = bool(state.drafts) or any(
        one.quantity.value in (left, right) for one in state.bare[:-1]
    )
    only = not named and state.heard <= _TOLD
    if last is None or left == right or (Meaning.SMALLER in talk.marks and not only):
        return None
    if exact(last.leaf) not in (left, right):
        return None
    return Order.MORE if exact(last.leaf) == left else Order.LESS


_TOLD = 2
"""How many numbers a line may have in which nothing is smaller but parts of a kind. Our choice."""


def _as_another(state: State, talk: Talk) -> bool:
    """Tell whether `the same` is another child's way and no verdict: I thought the same as Leo."""
    agrees = not talk.marks.isdisjoint((Meaning.SAME_AS, Meaning.AGREE, Meaning.ALIKE))
    named = state.heard or state.spoken or state.both
    return agrees and Meaning.EQUAL not in talk.marks and not named
