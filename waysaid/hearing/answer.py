"""The answer that was said, never one that only arithmetic knows."""

from fractions import Fraction

from waysaid.hearing.clause import Said
from waysaid.hearing.draft import Draft
from waysaid.hearing.facts import Facts
from waysaid.hearing.hear import Heard
from waysaid.hearing.reading import AnswerSaid
from waysaid.hearing.worth import worth
from waysaid.number import (
    Claim,
    Compare,
    Equation,
    Number,
    Operation,
    Written,
    exact,
    fill,
    leaves,
)


def answer_said(heard: Heard, facts: Facts, stops_short: bool) -> AnswerSaid | None:
    """Return the last number that stands as a final result, or None.

    The last step's result is one where it was said and nothing is left over: the steps are not
    just the beginning of a way, every other result was used or reached a number of the problem,
    and the result itself is more than a number of the problem arrived at. A number said by itself
    is one too, unless it only names a number of the problem before the work. An answer that is no
    number, as `5 r 1`, comes before any number.
    """
    if heard.verdict is not None:
        return heard.verdict
    alone = [one for one in heard.answers if not _names_the_problem(one, heard, facts)]
    judged = isinstance(facts.problem, Compare | Claim)
    worked = _worked(heard, facts, stops_short) if heard.drafts and not judged else None
    after = bool(alone) and bool(heard.drafts) and alone[-1].span[0] >= heard.drafts[-1].span[1]
    if alone and (worked is None or after):
        return alone[-1].leaf
    return worked


def _worked(heard: Heard, facts: Facts, stops_short: bool) -> Number | None:
    """Return the last step's result, where it was said and stands as final."""
    last = _said_last(heard.drafts)
    if _fills(last, facts):
        return facts.answer
    said = None if last.whole else last.result
    if not isinstance(said, int | Fraction | Written):
        return None
    if exact(said) == facts.answer:
        return said
    final = last.counted or not stops_short
    own = exact(said) in facts.numbers and not _put_together(last, heard, facts)
    return said if final and not own and not _left_over(heard, facts) else None


def _put_together(last: Draft, heard: Heard, facts: Facts) -> bool:
    """Tell whether two results are put together to the number that is taken away, or divided by.

    It is then no number of the problem arrived at, but a wrong answer: 40 and 7, so 47.
    """
    asked = facts.asked
    if not isinstance(asked, Operation) or last.stands != worth(asked.right):
        return False
    ends, pair = {draft.stands for draft in heard.drafts if draft is not last}, leaves(last.left)
    return len({*pair}) > 1 and ends.issuperset(pair)


def _said_last(drafts: tuple[Draft, ...]) -> Draft:
    """Return the last step, or the one that only ended later, where no other goes on from it.

    Two off the fourteen onto the twenty eight, twelve: what is left of the fourteen was said last.
    """
    late = max(reversed(drafts), key=lambda draft: draft.span[1])
    ends = [draft for at, draft in enumerate(drafts) if not _goes_on(draft, drafts[at + 1 :])]
    return late if late in ends else ends[-1]


def _goes_on(draft: Draft, behind: tuple[Draft, ...]) -> bool:
    """Tell whether a step behind goes on from what a step comes to."""
    return any(draft.stands in leaves(other.left) for other in behind)


def _fills(last: Draft, facts: Facts) -> bool:
    """Tell whether the last step says the equation again with its blank filled."""
    if not isinstance(facts.problem, Equation) or facts.answer is None or last.unsaid:
        return False
    return last.equation == fill(facts.problem, facts.answer)


def _names_the_problem(number: Said, heard: Heard, facts: Facts) -> bool:
    """Tell whether a number by itself only names a number of the problem before the work."""
    before_all = bool(heard.drafts) and number.span[1] <= heard.drafts[0].span[0]
    return before_all and number.value in facts.numbers


def _left_over(heard: Heard, facts: Facts) -> bool:
    """Tell whether an earlier result was neither used later nor a number of the problem."""
    for place, draft in enumerate(heard.drafts[:-1]):
        used = {leaf for later in heard.drafts[place + 1 :] for leaf in leaves(later.left)}
        ends = draft.stands
        if ends is not None and ends not in used and ends not in facts.numbers:
            return True
    return False
