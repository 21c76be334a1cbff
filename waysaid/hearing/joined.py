"""The sum that ends a line of shorthand: `30+20 50 7+5 12 62`."""

from waysaid.hearing.clause import Said
from waysaid.hearing.draft import RESULT_ALONE, Draft
from waysaid.hearing.facts import Facts
from waysaid.number import Exact, Operation, Sign, exact, leaves


def joined(drafts: list[Draft], number: Said, facts: Facts) -> Draft | None:
    """Return the step that puts the last two results together where the number is their sum.

    Only results that were said, that no later step goes on from, and that are no number of the
    problem; None where there are not two.
    """
    ends: list[Exact] = []
    for place, draft in enumerate(drafts):
        used = {one for later in drafts[place + 1 :] for one in leaves(later.left)}
        if draft.whole or draft.result is None or draft.counted:
            continue
        if draft.stands is not None and draft.stands not in (*used, *facts.numbers):
            ends.append(draft.stands)
    if len(ends) != 2 or ends[0] + ends[1] != number.value or not all(ends):
        return None
    side = Operation(Sign.PLUS, exact(ends[0]), exact(ends[1]))
    return Draft(side, RESULT_ALONE, number.span, number.leaf)
