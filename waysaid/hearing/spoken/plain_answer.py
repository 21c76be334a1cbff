"""An answer that is plain from where it stands, and a number that is none however it stands."""

from collections.abc import Iterable
from fractions import Fraction

from waysaid.hearing.meaning import Meaning
from waysaid.hearing.reading import AnswerSaid
from waysaid.hearing.spoken.reasons import proved
from waysaid.hearing.spoken.state import State
from waysaid.hearing.spoken.talk import Talk
from waysaid.hearing.spoken.world import World
from waysaid.hearing.worth import worth
from waysaid.number import (
    Exact,
    Expression,
    Form,
    Number,
    Operation,
    Remainder,
    Sign,
    Written,
    exact,
    leaves,
)


def plain_answer(said: AnswerSaid | None, state: State, talk: Talk, world: World) -> Number | None:
    """Return the number that is plainly the answer, whatever else was heard as one; else None.

    It ends the line behind a pause or a word for a result, has its reasons right behind it, or
    opens the line with a pause behind it where none ends it. What could be heard more than one way
    is the right answer there, for it is what the work comes to.
    """
    out = talk.out
    if talk.lost or not talk.marks.isdisjoint((Meaning.AGREE, Meaning.NOT)):
        return None
    if _is_right(said, world) or _left_undone(state, world):
        return None
    worked = bool(state.drafts) or talk.ends is not None
    ended = _right(out.ends, world) if worked else None
    if ended is not None:
        return ended
    if _worked_with(said, state, talk) and talk.promised and talk.promised.numeral:
        return talk.promised.numeral.leaf
    reasoned = [one for one in out.reasoned if _meant(one, state, world)]
    if reasoned and talk.promised is None:
        return reasoned[-1]
    if Meaning.CORRECT in talk.marks or talk.ends is not None:
        return None
    opened = _right(out.opens, world)
    if opened is None and out.only and said is None and not state.drafts:
        return next(iter(out.opens), None)
    return opened


def _is_right(said: AnswerSaid | None, world: World) -> bool:
    return isinstance(said, int | Fraction | Written) and exact(said) == world.facts.answer


def _worked_with(said: AnswerSaid | None, state: State, talk: Talk) -> bool:
    """Tell whether a number was only worked with, and `so` promised another: put one on, so 86."""
    last = talk.promised.numeral if talk.promised else None
    if last is None or last.many or not isinstance(said, int | Fraction | Written):
        return False
    value = exact(said)
    alone = any(one.quantity.value == value and not one.final for one in state.bare)
    return alone and value not in {exact(last.leaf), *(one.stands for one in state.drafts)}


def _left_undone(state: State, world: World) -> bool:
    """Tell whether the work ends on a step of which nobody said that it comes to the right answer.

    What could be heard as the answer is then what it is made of: so it's nine tens.
    """
    return any(
        one.result is None
        and one.forced == world.facts.answer
        and isinstance(one.left, Operation)
        and one.left.sign in (Sign.TIMES, Sign.OVER)
        for one in state.drafts
    )


def _right(found: Iterable[Number], world: World) -> Number | None:
    """Return the right answer among numbers, where it is none of the problem's."""
    answer = world.facts.answer
    if answer is None or answer in world.facts.numbers:
        return None
    return next((one for one in found if exact(one) == answer and not _parts(one)), None)


def _parts(number: Number) -> bool:
    """Tell whether a whole number is written as parts: 14 over 2."""
    parts = isinstance(number, Written) and number.form is Form.PARTS
    return parts and isinstance(exact(number), int)


def _meant(number: Number, state: State, world: World) -> bool:
    """Tell whether a number with reasons is the right answer, proved where the problem has it."""
    value = exact(number)
    if value != world.facts.answer:
        return False
    return value not in world.facts.numbers or proved(value, state, world)


def explained_behind(state: State, world: World) -> Number | None:
    """Return the right answer, where all steps behind only tell where its numbers come from.

    Of `sixty five minus thirty, thirty five, I just put one on both` it is the 35.
    """
    for place, draft in enumerate(state.drafts[:-1]):
        behind = {one.stands for one in state.drafts[place + 1 :]}
        result = draft.result
        if (
            isinstance(draft.left, Operation)
            and isinstance(result, int | Fraction | Written)
            and draft.stands == world.facts.answer
            and behind <= {*leaves(draft.left)}
        ):
            return result
    return None


def never_said(said: AnswerSaid | None, state: State, talk: Talk, world: World) -> bool:
    """Tell whether what was heard as an answer is only what one would go on with, or a division.

    `42, then 5` where nobody said what is left; `so it's one more`; `so 48 over 6`; `no, nothing`;
    the three of `it's ten and three`; or of two left that were not told as an answer: and there
    are two left, so.
    """
    if isinstance(said, Remainder):
        return talk.hangs
    if not isinstance(said, int | Fraction | Written):
        return False
    value = exact(said)
    if value == world.facts.answer:
        return False
    if talk.out.wanting or _half_told(value, talk, world):
        return True
    if not state.drafts:
        return value == 0 and Meaning.CORRECT in talk.marks
    last = state.drafts[-1]
    if last.span[1] in talk.extra and last.stands == value and _is_apart(last.left):
        return True
    return _only_asked(said, state) or _goes_on(value, state, talk, world)


def _half_told(value: Exact, talk: Talk, world: World) -> bool:
    """Tell whether a number is the second of two that the line ends on, both the right answer."""
    if talk.paired is None:
        return False
    first, second = map(exact, talk.paired)
    return value == second and first + second == world.facts.answer


def _only_asked(said: Number, state: State) -> bool:
    """Tell whether a number is a division of which nobody said what it comes to: 48 over 6."""
    return _parts(said) and any(
        one.result is None and isinstance(one.left, Operation) and one.left.sign is Sign.OVER
        for one in state.drafts
    )


def _goes_on(value: Exact, state: State, talk: Talk, world: World) -> bool:
    """Tell whether a number only was to be put to what stands, to come to the right answer."""
    if talk.ends is not None or any(one.stands == value for one in state.drafts):
        return False
    stands = state.drafts[-1].stands
    if stands is None:
        return False
    signs = (Sign.PLUS, Sign.MINUS, Sign.TIMES)
    comes = (worth(Operation(sign, stands, value)) for sign in signs)
    return world.facts.answer in comes


def _is_apart(left: Expression) -> bool:
    """Tell whether a step finds how far two numbers are apart: it's one more."""
    return isinstance(left, Operation) and left.sign is Sign.MINUS
