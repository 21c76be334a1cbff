"""The answer that was said, never one that only arithmetic knows."""

from waysaid.hearing.clause import Said
from waysaid.hearing.facts import Facts
from waysaid.hearing.hear import Heard
from waysaid.number import Equation, Exact, Operation, fill, leaves


def answer_said(heard: Heard, facts: Facts, stops_short: bool) -> Exact | None:
    """Return the last number that stands as a final result, or None.

    The last step's result is one where it was said and nothing is left over: the steps are not
    just the beginning of a way, every other result was used or reached a number of the problem,
    and the result itself is more than a number of the problem arrived at. A number said by itself
    is one too, unless it only names a number of the problem before the work.
    """
    alone = [one for one in heard.answers if not _names_the_problem(one, heard, facts)]
    worked = _worked(heard, facts, stops_short) if heard.drafts else None
    after = bool(alone) and bool(heard.drafts) and alone[-1].span[0] > heard.drafts[-1].span[0]
    if alone and (worked is None or after):
        return alone[-1].value
    return worked


def _worked(heard: Heard, facts: Facts, stops_short: bool) -> Exact | None:
    """Return the last step's result, where it was said and stands as final."""
    last = heard.drafts[-1]
    if isinstance(facts.problem, Equation):
        filled = facts.answer is not None and last.equation == fill(facts.problem, facts.answer)
        if filled and not last.unsaid:
            return facts.answer
    said = None if last.whole or last.result is None else last.stands
    if said is None or said == facts.answer:
        return said
    final = last.counted or not stops_short
    return said if final and said not in facts.numbers and not _left_over(heard, facts) else None


def _names_the_problem(number: Said, heard: Heard, facts: Facts) -> bool:
    """Tell whether a number by itself only names a number of the problem before the work."""
    before_all = bool(heard.drafts) and number.span[1] <= heard.drafts[0].span[0]
    return before_all and number.value in facts.numbers


def _left_over(heard: Heard, facts: Facts) -> bool:
    """Tell whether an earlier result was neither used later nor a number of the problem."""
    for place, draft in enumerate(heard.drafts[:-1]):
        used = {
            leaf
            for later in heard.drafts[place + 1 :]
            if isinstance(later.left, Operation)
            for leaf in leaves(later.left)
        }
        ends = draft.stands
        if ends is not None and ends not in used and ends not in facts.numbers:
            return True
    return False
