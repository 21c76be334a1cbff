"""Which steps of a line stand: none said again otherwise, none made of the words of the next."""

from itertools import pairwise

from waysaid.hearing.draft import Draft
from waysaid.hearing.reading import Part
from waysaid.hearing.spoken.change import replace
from waysaid.hearing.spoken.talk import Talk
from waysaid.hearing.turned import turned_side
from waysaid.number import Operation, Sign, leaves


def kept(drafts: tuple[Draft, ...], talk: Talk) -> tuple[Draft, ...]:
    """Return the steps that stand."""
    stand = tuple(one for one in drafts if not _said_again(one, drafts, talk))
    return _said_once(_without_result_withdrawn(stand, talk))


def _without_result_withdrawn(drafts: tuple[Draft, ...], talk: Talk) -> tuple[Draft, ...]:
    """Return the steps, the last without a result that was taken back and no other said.

    Of `18 times 10 is 181, I mean 18 times 10` the result does not stand.
    """
    last = drafts[-1] if drafts else None
    if last is None or last.result is None or last.whole or last.span[1] != talk.withdrawn:
        return drafts
    return (*drafts[:-1], replace(last, result=None))


def named_whole(drafts: tuple[Draft, ...], talk: Talk) -> tuple[Draft, ...]:
    """Return the steps, with the result of one whose parts said together are its name.

    Of `six and two hundred is eight hundred and seventy` the last step comes to what was said: 870.
    """
    return tuple(
        replace(one, result=one.forced) if one.result is None and _named(one, talk) else one
        for one in drafts
    )


def _named(one: Draft, talk: Talk) -> bool:
    """Tell whether the number that ends where the step does is what it comes to, and no part.

    Twenty four tens are a product rather than a name.
    """
    if not isinstance(one.left, Operation) or one.left.sign is not Sign.PLUS:
        return False
    return (one.span[1], one.forced) in talk.longest and one.forced not in leaves(one.left)


def _said_again(one: Draft, drafts: tuple[Draft, ...], talk: Talk) -> bool:
    """Tell whether a step was taken back and said again: 13 - 5 is 10, I mean 13 - 5 is 8."""
    if one.span[1] not in talk.taken_back or one.result is None:
        return False
    left = turned_side(one.left)
    return any(other.span[0] > one.span[1] and turned_side(other.left) == left for other in drafts)


def _said_once(drafts: tuple[Draft, ...]) -> tuple[Draft, ...]:
    """Return the steps without a hop up to a number from which the next one only starts.

    Of `eleven. From 33 I take eleven, 22` the 33 is where the second step starts, and no hop to it.
    """
    turned_back = {
        place for place, (one, after) in enumerate(pairwise(drafts)) if _goes_back(one, after)
    }
    return tuple(
        replace(draft, open=tuple(part for part in draft.open if part is not Part.LEFT))
        if place - 1 in turned_back
        else draft
        for place, draft in enumerate(drafts)
        if place not in turned_back
    )


def _goes_back(one: Draft, after: Draft) -> bool:
    """Tell whether a hop of which only its end was said is undone by the next from there."""
    if {Part.LEFT, Part.RIGHT} - set(one.open) or set(after.open) - {Part.LEFT}:
        return False
    if one.result is None or after.result is None:
        return False
    here, there = tuple(leaves(one.left)), tuple(leaves(after.left))
    if len(here) != 2 or len(there) != 2:
        return False
    return one.result == there[0] and {*here} == {there[1], after.result}
