"""A part of the number that the problem takes a part of: a fifth is six, ten percent is four."""

from fractions import Fraction
from typing import TypeGuard

from waysaid.hearing.draft import Draft
from waysaid.hearing.meaning import Meaning
from waysaid.hearing.spoken.change import replace
from waysaid.hearing.spoken.frame import Frame, Quantity
from waysaid.hearing.spoken.scale import HALF
from waysaid.hearing.spoken.state import State
from waysaid.hearing.spoken.world import World
from waysaid.hearing.worth import worth
from waysaid.number import (
    Blank,
    Exact,
    Form,
    Number,
    Operation,
    Sign,
    Written,
    exact,
    has_form,
    percent,
    written,
)


def base_of(world: World) -> Number | None:
    """Return the number that the problem takes a part of; None where it takes none."""
    return world.base


def base_value(world: World) -> Exact | None:
    """Return what the number is worth that the problem takes a part of."""
    base = base_of(world)
    return None if base is None else exact(base)


def is_part(number: Quantity) -> bool:
    """Tell whether a number is less than one and written as parts or a percentage.

    Half is told by words of its own.
    """
    leaf, value = number.leaf, number.value
    if not isinstance(leaf, Fraction | Written) or value is None or not 0 < value < 1:
        return False
    if leaf == HALF:
        return False
    return isinstance(leaf, Fraction) or leaf.form is not Form.DECIMAL


def part_step(state: State, part: Quantity, result: Quantity, world: World) -> Frame | None:
    """Return the step of a part of the base and what it is; None where it is no such part.

    So many of a part known already are so many times it: one fifth is six, two fifths twelve.
    """
    base = base_of(world)
    if base is None or isinstance(result.leaf, Operation):
        return None
    part = _as_percent(part, result, base, world)
    if not (is_part(part) or _of_more(part, result, world)):
        return None
    if result.value is None or result.value == part.value:
        return None
    if is_part(result):
        return None
    start = Quantity(base, (part.span[0], part.span[0]), said=False)
    one = _known_part(state, part, base, world)
    if one is None:
        return Frame(left=part, sign=Sign.OF, right=start, result=result)
    size, times = one
    left = Quantity(size, part.span, said=False)
    right = Quantity(times, part.span)
    return Frame(left=left, sign=Sign.TIMES, right=right, result=result)


def _as_percent(part: Quantity, result: Quantity, base: Number, world: World) -> Quantity:
    """Return a whole number as the percentage that it is short for: the ten is six, of 60."""
    asked, value = world.facts.asked, part.leaf
    if not isinstance(asked, Operation) or not has_form(asked.left, Form.PERCENT):
        return part
    if not isinstance(value, int) or isinstance(part.leaf, Written) or result.value is None:
        return part
    share = Fraction(value, 100)
    return part._replace(leaf=percent(share)) if share * exact(base) == result.value else part


def _known_part(
    state: State, part: Quantity, base: Number, world: World
) -> tuple[Number, int] | None:
    """Return the worth of a smaller part and how often it goes into this one."""
    whole = Fraction(part.value or 0)
    if has_form(part.leaf, Form.PERCENT) and part.value not in world.facts.numbers:
        return None
    for draft in reversed(state.drafts):
        share, ends = _share(draft, base), draft.ends
        if share and ends is not None and whole != share and whole % share == 0:
            return ends, int(whole / share)
    return None


def share_of(draft: Draft, world: World) -> Fraction | None:
    """Return which part of the base a step takes; None where it takes none."""
    base = base_of(world)
    return None if base is None else _share(draft, base)


def _share(draft: Draft, base: Number) -> Fraction | None:
    """Return which part of the base a step takes; None where it takes none."""
    left = draft.left
    if not isinstance(left, Operation):
        return None
    one, other = worth(left.left), worth(left.right)
    if one is None or other is None:
        return None
    if left.sign is Sign.OVER and one == exact(base) and other:
        return 1 / Fraction(other)
    if left.sign in (Sign.OF, Sign.TIMES) and exact(base) in (one, other):
        share = one if other == exact(base) else other
        return Fraction(share) if 0 < share < 1 else None
    return None


def so_many_parts(state: State, value: Exact, world: World) -> int | None:
    """Return how many of the part just told the problem takes: a fifth is eight, so sixteen."""
    asked = world.facts.asked
    if base_of(world) is None or not isinstance(asked, Operation) or not state.drafts:
        return None
    share, ends = share_of(state.drafts[-1], world), state.drafts[-1].stands
    whole = worth(asked.left)
    if state.latest is not None:
        return None
    if share is None or ends is None or whole is None or not share < whole:
        return None
    times = Fraction(whole) / share
    return int(times) if times.denominator == 1 and ends * times == value else None


def divided(drafts: tuple[Draft, ...], world: World) -> tuple[Draft, ...]:
    """Return the steps, one of several equal parts of the base written as what it is shared by."""
    base = base_of(world)
    if base is None:
        return drafts
    return tuple(_divided(draft, base) for draft in drafts)


def _divided(draft: Draft, base: Number) -> Draft:
    share = _share(draft, base)
    if share is None or share.numerator != 1:
        return draft
    return replace(draft, left=Operation(Sign.OVER, base, share.denominator))


def as_parts(drafts: tuple[Draft, ...], world: World) -> tuple[Draft, ...]:
    """Return the steps of a product with parts, what is shared written as a part: 1/2 x 18."""
    return tuple(map(_as_part, drafts)) if world.parted and base_of(world) is None else drafts


def _as_part(draft: Draft) -> Draft:
    left = draft.left
    if not isinstance(left, Operation) or left.sign is not Sign.OVER:
        return draft
    if not isinstance(left.right, int) or left.right < 2 or not isinstance(left.left, Number):
        return draft
    return replace(draft, left=Operation(Sign.TIMES, Fraction(1, left.right), left.left))


def of_base(left: Operation, world: World) -> bool:
    """Tell whether a left side is a part of the base, as any child may take one."""
    base = base_of(world)
    if base is None or left.sign is not Sign.OF:
        return False
    return worth(left.right) == exact(base)


def is_all(part: Quantity, result: Quantity, world: World) -> bool:
    """Tell whether all of the base is only named: a hundred percent is fifty."""
    base = base_of(world)
    whole = base is not None and part.value == 1 and result.value == exact(base)
    return whole and not takes_more(world)


def takes_more(world: World) -> bool:
    """Tell whether more than all of the base is asked for: 120 %."""
    asked = world.facts.asked
    part = worth(asked.left) if isinstance(asked, Operation) else None
    return base_of(world) is not None and part is not None and part > 1


def _of_more(part: Quantity, result: Quantity, world: World) -> bool:
    """Tell whether all of the base is a part like others, for more is asked: 100 %, of 120 %."""
    return takes_more(world) and part.value == 1 and result.value == base_value(world)


def all_and_part(state: State, world: World) -> tuple[Exact, ...]:
    """Return the base and the part last told, where more than all of the base is asked for."""
    base, last = base_value(world), state.drafts[-1] if state.drafts else None
    if base is None or last is None or last.stands is None or not takes_more(world):
        return ()
    return (base, last.stands) if share_of(last, world) is not None else ()


def taken_part(frame: Frame, world: World) -> Quantity | None:
    """Return the part of the base that is taken off, where a frame takes one: minus a quarter."""
    base = base_of(world)
    if base is None or frame.sign is not Sign.MINUS or frame.right is None:
        return None
    from_base = frame.left is None or frame.left.value in (exact(base), 1)
    return frame.right if from_base and is_part(frame.right) else None


def so_many_of(times: Quantity, ends: Quantity, state: State, world: World) -> Frame | None:
    """Return so many of the part just told and what they come to: a third is six, two are twelve.

    None where the problem asks for no part of a number.
    """
    one = state.standing
    if base_of(world) is None or not state.drafts or one is None or times.value is None:
        return None
    step = Frame(left=replace(one, said=False), sign=Sign.TIMES, right=times, result=ends)
    return step if times.value != 1 and step.comes_to == ends.value else None


def parts_taken(frame: Frame, one: Quantity, world: World) -> Frame | None:
    """Return so many of the parts a number was cut into, as many as the problem takes: took three.

    None where other things are taken, or as many parts as are no way of the problem.
    """
    many, asked = frame.right, world.facts.asked
    if frame.verb is not Meaning.TAKE or many is None or frame.left is not None:
        return None
    if not isinstance(asked, Operation) or not world.groups or frame.sign is not Sign.MINUS:
        return None
    tops = {Fraction(exact(side)).numerator for side in written(asked) if is_part_of(side)}
    if many.leaf == 1 or many.leaf not in tops:
        return None
    return replace(frame, verb=None, left=replace(one, said=False), sign=Sign.TIMES)


def is_part_of(number: Number | Blank) -> TypeGuard[Fraction | Written]:
    """Tell whether a number is less than one and written as parts."""
    if isinstance(number, Fraction):
        return 0 < number < 1
    return isinstance(number, Written) and number.form is Form.PARTS and 0 < exact(number) < 1
