"""The answer that was said in a line of talk: a number, or a verdict; none where none was said."""

from fractions import Fraction

from waysaid.hearing.answer import answer_said
from waysaid.hearing.clause import Said
from waysaid.hearing.hear import Heard
from waysaid.hearing.match import Match
from waysaid.hearing.meaning import Meaning
from waysaid.hearing.reading import AnswerSaid
from waysaid.hearing.spoken.anew import made_of
from waysaid.hearing.spoken.blank import blank_filled, is_total
from waysaid.hearing.spoken.compared import on_comparison
from waysaid.hearing.spoken.frame import Quantity
from waysaid.hearing.spoken.plain_answer import explained_behind, never_said, plain_answer
from waysaid.hearing.spoken.reasons import alike, before_reasons, begins
from waysaid.hearing.spoken.rest import only_shared, still_to_share, went_on
from waysaid.hearing.spoken.state import Bare, State
from waysaid.hearing.spoken.talk import Talk
from waysaid.hearing.spoken.turned_back import put_wrong
from waysaid.hearing.spoken.world import World, asks, slip_begun
from waysaid.number import (
    Blank,
    Claim,
    Compare,
    Form,
    Number,
    Operation,
    Order,
    Remainder,
    Verdict,
    Written,
    exact,
    has_form,
    leaves,
)

_STORY = 2
"""From how many unknown words on a number alone belongs to a story. Our choice."""


def outcome(state: State, talk: Talk, match: Match, world: World) -> AnswerSaid | None:
    """Return the answer that was said: a verdict where one is asked for, else a number."""
    verdict = state.verdict
    if isinstance(world.facts.problem, Claim):
        return _on_claim(verdict, talk)
    if isinstance(world.facts.problem, Compare):
        return on_comparison(state, talk, world.facts.problem)
    said = _number(state, talk, match, world)
    plain = plain_answer(said, state, talk, world)
    if plain is not None:
        return plain
    if said is None and state.drafts:
        return explained_behind(state, world)
    return None if never_said(said, state, talk, world) else said


def _number(state: State, talk: Talk, match: Match, world: World) -> AnswerSaid | None:
    """Return the number, or groups and what is left of them, that was heard as the answer."""
    said = _worked_out(state.verdict, state, talk, match, world)
    if still_to_share(said, state, world) or only_shared(said, world):
        said = None
    before = before_reasons(state, talk, world)
    if before is not None and not begins(before, state, match, world):
        return said if alike(said, before) else before
    if said is None:
        return _ended_on(state, talk, match, world)
    if _acted_on(said, state, talk, world):
        return None
    return _ended_apart(said, state, talk, match, world) or said


def _ended_apart(
    said: AnswerSaid, state: State, talk: Talk, match: Match, world: World
) -> Number | None:
    """Return the number that ends the line where the work came to another, said before it."""
    last = _ended_on(state, talk, match, world)
    reasons = state.claimed is not None or Meaning.BECAUSE in talk.marks
    if last is None or reasons or not isinstance(said, int | Fraction | Written):
        return None
    return None if said == _told_first(state, world) or alike(said, last) else last


def _acted_on(said: AnswerSaid, state: State, talk: Talk, world: World) -> bool:
    """Tell whether the line ends with an act that goes on from a number said, to none."""
    if not talk.acts or not isinstance(said, int | Fraction | Written) or not state.drafts:
        return False
    if state.claimed is not None or Meaning.BECAUSE in talk.marks:
        return False
    value = exact(said)
    ends = [draft.stands for draft in state.drafts]
    used = value in ends[:-1] and value != ends[-1]
    acted = value not in talk.acts or (
        value != world.facts.answer and (used or value in talk.acted)
    )
    return acted and said != _told_first(state, world)


def _ended_on(state: State, talk: Talk, match: Match, world: World) -> Number | None:
    """Return the number that ends the line where it stands as a result and the work is whole.

    A number on the way to the answer, as a way or a slip has it, may be where the child stopped.
    """
    last = talk.ends.numeral if talk.ends else None
    if last is None or match.stops_short or not state.drafts or talk.unfinished:
        return None
    value = exact(last.leaf)
    shared = only_shared(last.leaf, world) or still_to_share(last.leaf, state, world)
    if put_wrong(value, state.drafts, talk, world):
        return last.leaf
    return None if value in world.midway or shared or value in world.facts.numbers else last.leaf


def _worked_out(
    verdict: Remainder | Order | Verdict | None,
    state: State,
    talk: Talk,
    match: Match,
    world: World,
) -> AnswerSaid | None:
    """Return the verdict, or the number that the work came to or that was promised."""
    state = _standing(state, talk, world)
    promised = any(one.final for one in state.bare)
    if isinstance(verdict, Remainder) and (
        _shared_out(state, verdict) or went_on(verdict, state.drafts)
    ):
        verdict = None
    alone = not state.drafts and not promised
    if alone and _of_a_story(state, talk):
        return verdict
    if talk.lost:
        return _told_first(state, world)
    if alone and _seconds(state, talk):
        return verdict
    claimed = state.claimed.leaf if state.claimed and not promised else None
    if state.claimed and any(one.span[1] <= state.claimed.span[0] for one in state.drafts):
        claimed = None
    if verdict is None and isinstance(claimed, int | Fraction | Written):
        return claimed
    first = _told_first(state, world)
    if talk.unfinished and state.drafts and verdict is None and not promised:
        return first
    worked = any(draft.result is not None for draft in state.drafts)
    if (talk.hangs or talk.asked) and not worked and not promised:
        return verdict
    heard = Heard(state.drafts, _said(state.bare), _answers(state, world), verdict)
    short = not talk.done and (match.stops_short or slip_begun(state.drafts, world))
    said = answer_said(heard, world.facts, short)
    if said is None and first is None and not short:
        said = _last_said(state, world)
    return _or_else(said, first, state, talk, world)


def _or_else(
    said: AnswerSaid | None, first: Number | None, state: State, talk: Talk, world: World
) -> AnswerSaid | None:
    """Return the answer that was said, or what fills the blank where it is only both sides' total.

    Where none was heard, it is the last number that `so` promised, or the first.
    """
    ended = any(one.final and one.after == len(state.drafts) for one in state.bare)
    total = isinstance(said, int | Fraction) and is_total(said, world) and not ended
    filled = blank_filled(state, talk, world) if said is None or total else None
    if filled is not None:
        return filled
    if first is not None and made_of(first, state.drafts):
        return first
    if said is None:
        said = _said_again(state, talk)
    return first if said is None else said


def _on_claim(verdict: Remainder | Order | Verdict | None, talk: Talk) -> AnswerSaid | None:
    """Return the verdict on a claim: none in doubt, I don't know if it's true; and none turned.

    What is true only inside a longer phrase that denies it is false: I don't think it's true.
    """
    true = not talk.marks.isdisjoint((Meaning.TRUE, Meaning.EQUAL))
    false = Meaning.FALSE in talk.marks
    if Meaning.UNSURE in talk.marks and not true and not false:
        return None
    if verdict is Verdict.TRUE and false and not true:
        return Verdict.FALSE
    return verdict or talk.judged


def _seconds(state: State, talk: Talk) -> bool:
    """Tell whether a number is another child's, agreed with: I agree with 75. Not 75, same as Bo.

    Nor is one that was promised: I agree, it's 75.
    """
    got = talk.got and Meaning.NOT not in talk.marks
    own = state.bare and state.bare[-1].quantity.span[1] <= talk.seconded
    apart = talk.ends is not None and Meaning.NOT not in talk.marks
    return Meaning.AGREE in talk.marks and not (got or own or apart)


def _of_a_story(state: State, talk: Talk) -> bool:
    """Tell whether a number without a step belongs to other talk: can we do a different one."""
    if talk.strange and state.bare and state.bare[-1].quantity.span in talk.doubtful:
        return True
    return talk.strange >= _STORY and not state.knew


def _told_first(state: State, world: World) -> Number | None:
    """Return the answer said before the work: as a whole equation, or as what the work comes to."""
    for draft in state.drafts:
        result = draft.result
        if draft.whole or not isinstance(result, int | Fraction | Written):
            continue
        if asks(draft.left, world):
            return result
    late = state.drafts[-1] if len(state.drafts) > 1 else None
    late = late if late is not None and late.result is not None else None
    if late is not None and all(late.span[1] <= one.span[0] for one in state.drafts[:-1]):
        used = any(late.stands in leaves(one.left) for one in state.drafts[:-1])
        return None if used else late.ends
    first = state.bare[0] if state.bare else None
    if first is None or first.after or first.quantity.many:
        return None
    if not state.drafts:
        return _new_alone(first, state, world)
    value, leaf, ends = first.quantity.value, first.quantity.leaf, state.drafts[-1].stands
    if value in world.facts.numbers:
        meant = value == world.facts.answer and ends in world.facts.numbers
    else:
        meant = value in (world.facts.answer, ends)
    meant = meant or made_of(leaf, state.drafts)
    return leaf if meant and not isinstance(leaf, Operation | Blank) else None


def _new_alone(first: Bare, state: State, world: World) -> Number | None:
    """Return the answer said first, where all numbers behind it are the problem's: 77, two 7s."""
    leaf = first.quantity.leaf
    behind = state.bare[1:]
    if first.quantity.value != world.facts.answer or isinstance(leaf, Operation | Blank):
        return None
    return leaf if behind and all(_named_again(one, state, world) for one in behind) else None


def _said_again(state: State, talk: Talk) -> Number | None:
    """Return the last number, promised by `so`, where it is not only the end of the last step."""
    last = talk.promised
    if last is None or last.numeral is None or not state.drafts or last.numeral.many:
        return None
    if state.drafts[-1].stands == exact(last.numeral.leaf):
        return None
    return last.numeral.leaf


def _standing(state: State, talk: Talk, world: World) -> State:
    """Return the state without the numbers alone that were taken back, and a claim that stands.

    A number beside a sign is no answer either, only one that was worked with: the nine of two times
    nine.

    A result that later work went on from was no claim of the answer; a proof that comes to a number
    of the problem is no such work.
    """
    claimed = state.claimed
    gone = claimed is not None and (
        claimed.span[1] in talk.taken_back
        or _outdone(claimed, talk)
        or any(
            draft.span[0] > claimed.span[0]
            and claimed.value in leaves(draft.left)
            and draft.stands not in world.facts.numbers
            for draft in state.drafts
        )
    )
    bare = tuple(one for one in state.bare if _stands_alone(one, state, talk, world))
    return state._replace(bare=bare, claimed=None if gone else claimed)


def _outdone(claimed: Quantity, talk: Talk) -> bool:
    """Tell whether `so` promised another number in the end than was claimed."""
    last = talk.promised.numeral if talk.promised else None
    return last is not None and exact(last.leaf) != claimed.value


def _stands_alone(one: Bare, state: State, talk: Talk, world: World) -> bool:
    """Tell whether a number alone was not taken back, nor only worked with, nor cut short."""
    if one.quantity.span in talk.cut or one.quantity.span[1] in talk.vague | talk.handed:
        return False
    if world.whole and not isinstance(one.quantity.leaf, int):
        return False
    if one.quantity.span in talk.denied and not state.drafts:
        return False
    if one.quantity.span[1] in talk.extra and one.quantity.value in world.facts.numbers:
        return False
    signed = one.quantity.span[0] in talk.joins
    meant = (one.final and not signed) or one.quantity.value == world.facts.answer
    promised = meant and bool(state.drafts)
    if one.quantity.span[0] in talk.worked and not promised:
        return False
    return one.quantity.span[1] not in talk.taken_back


def _said(bare: tuple[Bare, ...]) -> tuple[Said, ...]:
    return tuple(
        Said(one.quantity.leaf, one.quantity.span)
        for one in bare
        if not isinstance(one.quantity.leaf, Operation | Blank)
    )


def _answers(state: State, world: World) -> tuple[Said, ...]:
    """Return the numbers alone that may be answers: the last, and those a word promised.

    A plural never is: `I like tens`; nor is a number of the problem that is only named again.
    """
    last = state.bare[-1:]
    ends = max((draft.span[1] for draft in state.drafts), default=0)
    return _said(
        tuple(
            one
            for one in state.bare
            if (one.final or one in last)
            and ((one.final and one.quantity.span[1] > ends) or not _named_again(one, state, world))
            and not one.quantity.many
            and not _total_named(one, state, world)
            and not _percentage(one, world)
        )
    )


def _percentage(one: Bare, world: World) -> bool:
    """Tell whether a number is a percentage, which is no answer to 15% of 80."""
    asked = any(has_form(number, Form.PERCENT) for number in world.facts.written)
    return asked and has_form(one.quantity.leaf, Form.PERCENT)


def _total_named(one: Bare, state: State, world: World) -> bool:
    """Tell whether a number behind the answer is only what both sides come to: it has to be 12."""
    before = (other for other in state.bare if other.quantity.span < one.quantity.span)
    answered = any(other.final for other in before)
    return answered and is_total(one.quantity.value, world)


def _named_again(one: Bare, state: State, world: World) -> bool:
    """Tell whether a number is one of the problem's, beside others, and ends no step.

    Parts worth a whole number, beside steps, are a division rather: 198 over 3.
    """
    value, leaf = one.quantity.value, one.quantity.leaf
    parts = isinstance(leaf, Written) and leaf.form is Form.PARTS
    if parts and state.drafts and isinstance(value, int):
        return True
    if leaf not in world.facts.written or value == world.facts.answer:
        return False
    ends = (draft.stands for draft in state.drafts)
    return value not in ends and len(state.bare) + len(state.drafts) > 1


def _shared_out(state: State, told: Remainder) -> bool:
    """Tell whether what was left over is shared out in the end: two left, so six and a half."""
    last = state.bare[-1] if state.bare else None
    value = last.quantity.value if last is not None and last.after == len(state.drafts) else None
    if last is None or value is None:
        return False
    if isinstance(value, int):
        return told.groups < value <= told.groups + told.left
    return last.final and told.groups < value < told.groups + 1


def _last_said(state: State, world: World) -> Number | None:
    """Return the result of the last step said, where it is new and nothing went on from it."""
    if not state.drafts or isinstance(world.facts.problem, Compare | Claim):
        return None
    last = max(reversed(state.drafts), key=lambda draft: draft.span[1])
    result = last.result
    if last.whole or not isinstance(result, int | Fraction | Written):
        return None
    left_out = any(draft.result is None for draft in state.drafts)
    return None if left_out or exact(result) in world.facts.numbers else result
