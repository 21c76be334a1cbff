"""What a string leaves wanting, in tenths of effort: the least is the best. One table.

A string is weighed problem by problem and meeting by meeting: what a problem asks of a child who
just heard the one before. All figures are our choice; each says what it stands for.
"""

from collections.abc import Sequence

from waysaid.strings.helps import Help
from waysaid.strings.link import LinkKind
from waysaid.strings.pool import Candidate, Pool

EASY = (10, 14, 16, 18, 18, 20, 20)
"""The effort, by grade, with which everybody can begin: about one fact, or one plain hop."""
ENTRY = 2
"""What a tenth above that costs in the first problem: whoever is lost there stays lost."""
GENTLE = 14
"""What the second problem may ask of a child who just heard the first."""
RISE = 2
"""How much more each further problem may ask."""
STEEP = 1
"""What a tenth more or less than that costs. Too little costs as well: then nothing is found."""
PAYS = 20
"""What the family in focus should save in the end against the usual ways."""
HOME = 1
"""What a tenth short of that costs in the last problem; before it the less, the earlier."""
NO_FOCUS = 30
"""How far short a problem is in which the family in focus has no way."""
TOO_SOON = 1
"""What each tenth costs that the focus saves in the first problem: the trick is given away."""
CLIMB = 5
"""How much more effort, by itself, each further problem should ask, to be worth its time."""
LOW = 1
"""What each tenth short of that costs."""
RIVALS = 3
"""So many families should come near the easiest way, so that there is something to compare."""
CLOSED_OFF = 4
"""What each family short of that costs."""
ALONE = 25
"""What a problem costs that the one before does not help with."""
NOT_OWN = 12
"""What a help costs that does not show the family in focus."""
STRETCH = 12
"""How much more than its place asks of it the last problem should ask by itself."""
AGAIN = 10
"""What it costs where one problem meets the next just as the two before met, or all three have one
answer: the third is then only said again."""


def of_place(one: Candidate, at: int, length: int, easy: int) -> int:
    """Return what a candidate leaves wanting at a place of a string, whatever its neighbours."""
    wanting = CLOSED_OFF * max(0, RIVALS - one.rivals)
    if at == 0:
        wanting += ENTRY * max(0, one.effort - easy)
        return wanting + TOO_SOON * max(0, one.pays or 0)
    short = NO_FOCUS if one.pays is None else min(NO_FOCUS, max(0, PAYS - one.pays))
    wanting += short * HOME * at // (length - 1)
    asked = easy + CLIMB * at + (STRETCH if at == length - 1 else 0)
    return wanting + LOW * max(0, asked - one.effort)


def of_meeting(one: Candidate, help_: Help | None, at: int) -> int:
    """Return what it leaves wanting that a candidate comes at a place, so helped."""
    left = one.effort if help_ is None else min(one.effort, help_.left)
    wanting = STEEP * abs(left - (GENTLE + RISE * (at - 1)))
    if help_ is None:
        return wanting + ALONE
    return wanting if help_.own else wanting + NOT_OWN


def of_run(before: Help | None, help_: Help | None) -> int:
    """Return what it leaves wanting that two meetings in a row are alike, or keep one answer."""
    if before is None or help_ is None or before.kind is not help_.kind:
        return 0
    alike = before.size == help_.size or help_.kind is LinkKind.BOTH_CHANGE
    return AGAIN if alike else 0


def of_string(pool: Pool, places: Sequence[int], easy: int) -> int:
    """Return what a string of candidates, by their places in the pool, leaves wanting."""
    helps = pool.met(places)
    wanting = 0
    for at, place in enumerate(places):
        one = pool.candidates[place]
        wanting += of_place(one, at, len(places), easy)
        if at:
            wanting += of_meeting(one, helps[at], at) + of_run(helps[at - 1], helps[at])
    return wanting
