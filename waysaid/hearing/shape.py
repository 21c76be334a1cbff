"""The shape of a family, for steps that none of a problem's ways has."""

from dataclasses import dataclass

from waysaid.hearing.draft import Draft
from waysaid.hearing.facts import Facts
from waysaid.hearing.groups import grouped
from waysaid.number import Blank, Exact, Operation, Sign, exact
from waysaid.ways import Family


@dataclass(frozen=True, slots=True)
class _Hop:
    start: Exact
    sign: Sign
    size: Exact


def shaped(drafts: tuple[Draft, ...], facts: Facts) -> Family | None:
    """Return the family whose shape the steps have; None where they have none of them."""
    problem = facts.asked
    if not isinstance(problem, Operation):
        return None
    same = _same_problem(drafts[0], facts) or _kept_worth(drafts, facts)
    if same:
        return same
    hops = _hops(drafts)
    if problem.sign is Sign.TIMES and len(facts.numbers) == 2:
        return grouped(drafts, facts)
    if hops is None or len(facts.numbers) != 2 or not _in_turn(drafts, hops):
        return None
    if all(draft.counted for draft in drafts):
        return Family.COUNTING
    first, other = facts.numbers
    hopped = _hopped if all(isinstance(one, int) for one in facts.numbers) else _hopped_in_parts
    if problem.sign is Sign.PLUS and hops[0].start in (first, other):
        return hopped(hops, other if hops[0].start == first else first, Sign.PLUS)
    if problem.sign is Sign.MINUS and hops[0].start == first:
        return hopped(hops, other, Sign.MINUS)
    if problem.sign is Sign.MINUS and hops[0].start == other:
        return _up(hops, drafts[-1].stands == first)
    return None


def _same_problem(draft: Draft, facts: Facts) -> Family | None:
    """Tell a problem said to be another one: 37 + 25 = 40 + 22, or 62 - 25 = 67 - 30."""
    equation = draft.equation
    if not (draft.whole and equation.left == facts.asked):
        return None
    if not (isinstance(equation.left, Operation) and isinstance(equation.right, Operation)):
        return None
    if equation.left.sign is not equation.right.sign or isinstance(equation.right.left, Operation):
        return None
    return _SAME.get(equation.left.sign)


def _kept_worth(drafts: tuple[Draft, ...], facts: Facts) -> Family | None:
    """Tell a product or share turned into others worth the same: 300 x 4, 600 x 2, for 150 x 8."""
    problem, hops = facts.asked, _hops(drafts)
    if not isinstance(problem, Operation) or problem.sign not in (Sign.TIMES, Sign.OVER):
        return None
    if hops is None or len(hops) < _TURNED or drafts[0].left == problem:
        return None
    alike = all(hop.sign is problem.sign for hop in hops)
    kept = all(draft.forced == facts.answer for draft in drafts)
    return _SAME[problem.sign] if alike and kept else None


_TURNED = 2
"""From how many problems worth the same on they are turned into each other. Our choice."""

_SAME = {
    Sign.PLUS: Family.GIVE_AND_TAKE,
    Sign.MINUS: Family.SHIFT_BOTH,
    Sign.TIMES: Family.DOUBLE_HALVE,
    Sign.OVER: Family.SCALE_BOTH,
}


def _hops(drafts: tuple[Draft, ...]) -> list[_Hop] | None:
    """Return the steps as hops; None where one of them is none."""
    found: list[_Hop] = []
    for draft in drafts:
        left = draft.left
        if draft.whole or not isinstance(left, Operation):
            return None
        start, size = left.left, left.right
        if isinstance(start, Operation | Blank) or isinstance(size, Operation | Blank):
            return None
        found.append(_Hop(exact(start), left.sign, exact(size)))
    return found


def _in_turn(drafts: tuple[Draft, ...], hops: list[_Hop]) -> bool:
    """Tell whether every hop goes on from where the one before it ended."""
    ends = [draft.stands for draft in drafts]
    return all(hop.start == end for hop, end in zip(hops[1:], ends, strict=False))


def _hopped(hops: list[_Hop], amount: Exact, sign: Sign) -> Family | None:
    """Name hops that together make the amount, or a friendly hop and the rest."""
    if _over(hops, amount, sign):
        return Family.ADJUST
    if all(hop.sign is sign for hop in hops):
        if sum(hop.size for hop in hops) != amount or len(hops) == 1:
            return None
        if all(_is_place_value(hop.size) for hop in hops) and amount >= 10:
            return Family.JUMP
        return Family.BRIDGE if any(hop.start % 10 == 0 for hop in hops[1:]) else None
    return None


def _hopped_in_parts(hops: list[_Hop], amount: Exact, sign: Sign) -> Family | None:
    """Name two hops by a fraction or a number with a point, where wholes are friendly."""
    if len(hops) != 2 or hops[0].sign is not sign:
        return None
    first, second = hops
    if isinstance(first.size, int) and first.size - second.size == amount:
        return Family.ADJUST
    if second.sign is not sign or first.size + second.size != amount:
        return None
    arrived = isinstance(second.start, int) and not isinstance(first.start, int)
    return Family.BRIDGE if arrived else Family.JUMP


def _over(hops: list[_Hop], amount: Exact, sign: Sign) -> bool:
    """Tell a friendly hop that goes too far, and the rest of it put right, or the wrong way."""
    if len(hops) != 2 or hops[0].sign is not sign or hops[0].size % 10:
        return False
    return hops[0].size - hops[1].size == amount


def _up(hops: list[_Hop], arrives: bool) -> Family | None:
    """Name hops from the smaller number of a difference that arrive at the larger."""
    return Family.ADD_UP if arrives and all(hop.sign is Sign.PLUS for hop in hops) else None


def _is_place_value(size: Exact) -> bool:
    """Tell whether the number is some ones, some tens or some hundreds: 5, 20, 300."""
    return isinstance(size, int) and len(str(size).rstrip("0")) <= 1
