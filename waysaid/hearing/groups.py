"""The shape of a multiplication's families: some of the groups, then the rest, or factor by factor.

Only the numbers that were worked with count, never what came out.
"""

from waysaid.hearing.draft import Draft
from waysaid.hearing.facts import Facts
from waysaid.number import Blank, Exact, Operation, Sign, apply, exact
from waysaid.ways import Family

_NEAR = 2
"""How many groups short of all a fact may be and still be a near one: our choice."""


def grouped(drafts: tuple[Draft, ...], facts: Facts) -> Family | None:
    """Return the family of the steps of a product of two numbers; None where none has them."""
    one, other = facts.numbers
    for groups, size in ((one, other), (other, one)):
        found = _in_factors(drafts, groups, size) or _in_pieces(drafts, groups, size)
        if found:
            return found
    return None


def _in_factors(drafts: tuple[Draft, ...], groups: Exact, size: Exact) -> Family | None:
    """Tell a number made larger factor by factor, each step from where the last one ended."""
    made: Exact = 1
    before: Exact | None = size
    for draft in drafts:
        pair = _pair(draft, Sign.TIMES)
        if pair is None or before not in pair:
            return None
        made = apply(Sign.TIMES, made, pair[1] if pair[0] == before else pair[0])
        before = draft.stands
    return Family.FACTOR_STEPS if len(drafts) > 1 and made == groups else None


def _in_pieces(drafts: tuple[Draft, ...], groups: Exact, size: Exact) -> Family | None:
    """Tell pieces that make all the groups, or nearly all and the rest put on or off."""
    pieces: list[Exact] = []
    rest = list(drafts)
    while rest and (pair := _pair(rest[0], Sign.TIMES)) and size in pair:
        pieces.append(pair[1] if pair[0] == size else pair[0])
        rest.pop(0)
    if len(pieces) > 1 and sum(pieces) == groups:
        return Family.BREAK_UP
    if len(pieces) != 1 or len(rest) != 1:
        return None
    off = apply(Sign.MINUS, groups, pieces[0])
    sign = Sign.PLUS if off > 0 else Sign.MINUS
    pair = _pair(rest[0], sign)
    rest_size = apply(Sign.TIMES, off if off > 0 else -off, size)
    mended = pair is not None and off != 0 and pair[1] == rest_size
    if not mended:
        return _ill_mended(pair, off, groups, drafts[0].stands, pieces[0])
    return Family.BREAK_UP if off > _NEAR else Family.NEAR_FACT


def _ill_mended(
    pair: tuple[Exact, Exact] | None, off: Exact, groups: Exact, made: Exact | None, piece: Exact
) -> Family | None:
    """Tell a fact a little too large, put right by a number that is not the size of a group.

    What is taken off is how many groups there were too many, or how many there should be: common
    practice, no source. The ones of a number put on as they are, behind its tens, are a part of it.
    """
    if pair is not None and off > 1 and piece % 10 == 0 and pair == (made, off):
        return Family.BREAK_UP
    if pair is None or not -_NEAR <= off < 0:
        return None
    return Family.NEAR_FACT if pair[0] == made and pair[1] in (-off, groups) else None


def _pair(draft: Draft, sign: Sign) -> tuple[Exact, Exact] | None:
    """Return the two numbers of a step with that sign; None for any other step."""
    left = draft.left
    if draft.whole or not isinstance(left, Operation) or left.sign is not sign:
        return None
    if isinstance(left.left, Operation | Blank) or isinstance(left.right, Operation | Blank):
        return None
    return exact(left.left), exact(left.right)
