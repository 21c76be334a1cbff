"""The answer that was said, never one that only arithmetic knows."""

from waysaid.hearing.draft import Draft
from waysaid.hearing.facts import Facts
from waysaid.hearing.hear import Heard
from waysaid.number import Equation, Exact, NoValue, Operation, fill, leaves, value_of


def answer_said(heard: Heard, facts: Facts, stops_short: bool) -> Exact | None:
    """Return the last number that stands as a final result, or None.

    A number said outside any step is one (unless it only names a number of the problem before the
    work). The last step's result is one where it was said and nothing is left over: the steps are
    not just the beginning of a way, every other result was used or reached a number of the
    problem, and the result itself is more than a number of the problem arrived at.
    """
    alone = [one for one in heard.bare if _outside(one.value, one.span[1], heard, facts)]
    if alone:
        return alone[-1].value
    if not heard.drafts:
        return None
    last = heard.drafts[-1]
    if isinstance(facts.problem, Equation):
        filled = facts.answer is not None and last.equation == fill(facts.problem, facts.answer)
        if filled and not last.unsaid:
            return facts.answer
    if last.result is None:
        return None
    said = _ends_on(last)
    if said is None or said == facts.answer:
        return said
    final = last.counted or not stops_short
    return said if final and said not in facts.numbers and not _left_over(heard, facts) else None


def _outside(value: int, end: int, heard: Heard, facts: Facts) -> bool:
    """Tell whether a number alone can be an answer: not one of the problem's, said at the start."""
    before_all = bool(heard.drafts) and end <= heard.drafts[0].span[0]
    return not (before_all and value in facts.numbers)


def _ends_on(last: Draft) -> Exact | None:
    """Return the number that the last step says it comes to."""
    equation = last.equation
    if last.whole:
        return None
    try:
        return value_of(equation.right)
    except NoValue:
        return None


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
