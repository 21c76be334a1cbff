"""The answer said first, its reasons right behind it."""

from fractions import Fraction

from waysaid.hearing.match import Match
from waysaid.hearing.meaning import Meaning
from waysaid.hearing.reading import AnswerSaid
from waysaid.hearing.spoken.state import State
from waysaid.hearing.spoken.talk import Talk
from waysaid.hearing.spoken.world import World, slip_begun, told_in_tens
from waysaid.number import Exact, Number, Operation, Sign, Written, exact, leaves


def before_reasons(state: State, talk: Talk, world: World) -> Number | None:
    """Return the number said first, its reasons right behind it, where no other was promised.

    Nor is one the answer that the work itself went on from.
    """
    first = talk.claim.numeral if talk.claim else None
    if first is None or Meaning.CORRECT in talk.marks or told_in_tens(first, world):
        return None
    value, last = exact(first.leaf), talk.promised
    if any(value in leaves(draft.left) for draft in state.drafts[1:]):
        return None
    if last is not None and last.numeral is not None and exact(last.numeral.leaf) != value:
        return None
    if value in world.facts.numbers and value != world.facts.answer:
        return first.leaf if proved(value, state, world) else None
    return first.leaf


def proved(value: Exact, state: State, world: World) -> bool:
    """Tell whether a step puts a number and the other back together to the first: 8 x 8 = 72."""
    whole, other = world.facts.numbers[0], world.facts.numbers[-1]
    backs = (
        draft.stands == whole and leaves(draft.left) in ([value, other], [other, value])
        for draft in state.drafts
        if isinstance(draft.left, Operation) and draft.left.sign in (Sign.PLUS, Sign.TIMES)
    )
    return bool(world.signs & {Sign.MINUS, Sign.OVER}) and any(backs)


def begins(claimed: Number, state: State, match: Match, world: World) -> bool:
    """Tell whether a number before its reasons is only what the first of more steps comes to.

    Of 76 - 45, `thirty because I took forty off seventy` is the beginning of the work.
    """
    value = exact(claimed)
    if value == world.facts.answer or not (match.stops_short or slip_begun(state.drafts, world)):
        return False
    return any(draft.result is not None and draft.forced == value for draft in state.drafts)


def alike(said: AnswerSaid | None, other: Number) -> bool:
    """Tell whether an answer is the same number, maybe written another way: 3/9, so 1/3."""
    return isinstance(said, int | Fraction | Written) and exact(said) == exact(other)
