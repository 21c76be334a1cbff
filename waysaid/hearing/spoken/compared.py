"""The verdict on two numbers compared: a word for it, or the number that is named as the larger."""

from waysaid.hearing.meaning import Meaning
from waysaid.hearing.spoken.state import Bare, State
from waysaid.hearing.spoken.talk import Talk
from waysaid.hearing.worth import worth
from waysaid.number import Compare, Order, Remainder, Verdict, exact


def on_comparison(state: State, talk: Talk, problem: Compare) -> Remainder | Order | Verdict | None:
    """Return the verdict on a comparison: none only asked for, nor one that is agreement.

    Where none was told, one number said to be the other is the same: a half is two quarters.
    """
    if talk.wonders and not state.heard:
        return None
    if talk.side is not None:
        return talk.side
    verdict = _verdict(state, talk, problem)
    if verdict is Order.SAME and (_as_another(state, talk) or _of_bottoms(talk)):
        return None
    named = _first_named(talk, problem) or _promised_side(state, talk, problem)
    if named is not None:
        return named
    compared = {problem.left, problem.right}
    same = any({draft.left, draft.result} == compared for draft in state.drafts)
    return Order.SAME if verdict is None and same else verdict


def _verdict(state: State, talk: Talk, problem: Compare) -> Remainder | Order | Verdict | None:
    """Return the verdict said, if any; also the number that is named last, as the larger one.

    A line that ends on `the same` says so, whatever number came before it; not where that is a
    reason, as of tops.
    """
    if talk.even and Meaning.BECAUSE not in talk.marks and state.verdict in (None, Order.SAME):
        return Order.SAME
    last = state.bare[-1] if state.bare else None
    if last is None or (state.verdict is not None and not _overrules(last, state)):
        return state.verdict
    value = last.quantity.value
    sides = [worth(problem.left), worth(problem.right)]
    if value not in sides or sides[0] == sides[1]:
        return state.verdict
    return Order.MORE if sides.index(value) == 0 else Order.LESS


def _overrules(last: Bare, state: State) -> bool:
    """Tell whether a number named in the end goes before `the same`: same tops, so a third."""
    return state.verdict is Order.SAME and last.final and len(state.bare) == 1


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


def _of_bottoms(talk: Talk) -> bool:
    """Tell whether `the same` is only of what is made alike: the same on the bottom."""
    return Meaning.UNIT in talk.marks and Meaning.EQUAL not in talk.marks
