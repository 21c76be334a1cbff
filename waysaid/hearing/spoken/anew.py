"""Numbers said again in another writing: 6/8 as 3/4, 12/10 as 1.2, 41 as 4.1, 1/2 as 3/6."""

from collections.abc import Iterator
from fractions import Fraction

from waysaid.hearing.draft import RESULT_ALONE, Draft
from waysaid.hearing.meaning import Meaning
from waysaid.hearing.reading import Part
from waysaid.hearing.spoken import weights
from waysaid.hearing.spoken.change import replace
from waysaid.hearing.spoken.frame import HOPS, Frame, Quantity
from waysaid.hearing.spoken.gap import MARKS
from waysaid.hearing.spoken.scale import HALF
from waysaid.hearing.spoken.sharing import doubled
from waysaid.hearing.spoken.state import State
from waysaid.hearing.spoken.world import World
from waysaid.hearing.worth import worth
from waysaid.number import (
    Claim,
    Compare,
    Exact,
    Expression,
    Form,
    Number,
    Operation,
    Sign,
    Written,
    decimal,
    exact,
    has_form,
    parts,
    sides,
    text,
    written,
)


def said_anew(state: State, number: Quantity, world: World) -> Iterator[State]:
    """Yield the state in which the last result is said in another writing: 6/5, one and a fifth."""
    before = state.standing
    judged = isinstance(world.facts.problem, Compare | Claim)
    if not judged:
        yield from _alone_anew(state, number, world)
    if judged or before is None or not state.drafts or _named_by(state.drafts[-1], number):
        return
    if not other_writing(before.leaf, number.leaf):
        return
    span = (before.span[0], number.span[1])
    draft = Draft(before.leaf, (), span, number.leaf)
    yield state.stepped(draft, standing=number)


def _alone_anew(state: State, number: Quantity, world: World) -> Iterator[State]:
    """Yield the other name of a number said alone just before: twelve eighths, one and a half."""
    last = state.latest
    if last is None:
        return
    if not other_writing(last.quantity.leaf, number.leaf):
        return
    draft = Draft(last.quantity.leaf, (), (last.quantity.span[0], number.span[1]), number.leaf)
    yield state.stepped(draft, bare=state.bare[:-1], standing=number)
    for before in asked_alone(replace(state, bare=state.bare[:-1]), last.quantity, world):
        yield before.stepped(draft, -weights.NEXT, standing=number)


def _named_by(draft: Draft, number: Quantity) -> bool:
    """Tell whether a step only gave a number the other name that is said here again."""
    return not isinstance(draft.left, Operation) and text(draft.left) == text(number.leaf)


def other_writing(one: Expression, other: Expression) -> bool:
    """Tell whether two numbers are of one worth, and one is no plain point or whole number."""
    if isinstance(one, Operation) or isinstance(other, Operation) or worth(one) != worth(other):
        return False
    plain = [isinstance(leaf, int) or _point(leaf) for leaf in (one, other)]
    return not all(plain) and text(one) != text(other)


def _point(leaf: Expression) -> bool:
    return isinstance(leaf, Written) and leaf.form is Form.DECIMAL


def point_put_back(state: State, number: Quantity, value: Exact, world: World) -> Iterator[State]:
    """Yield the step that puts back a point that was left out: 33, so 3.3."""
    before = state.standing
    if before is None or not state.drafts or not isinstance(before.value, int):
        return
    if not _point(number.leaf) or not before.value:
        return
    for size in _moved_by(world):
        if exact(Fraction(before.value, size)) == value:
            draft = Draft(
                Operation(Sign.OVER, before.value, size), RESULT_ALONE, number.span, number.leaf
            )
            yield state.stepped(draft, standing=number)


def _moved_by(world: World) -> set[int]:
    """Return what the problem's ways divide by to put a point back."""
    sizes = (
        one.right for one in world.lefts if isinstance(one, Operation) and one.sign is Sign.OVER
    )
    return {one for one in sizes if isinstance(one, int) and one in _POINTS}


_POINTS = (10, 100, 1000)
"""By how much a point is moved: as many places as a class writes. Our choice."""


def asked_anew(state: State, value: Exact, world: World) -> Expression | None:
    """Return what is asked with its numbers as they were renamed, where it comes to the value."""
    asked = world.facts.asked
    if not isinstance(asked, Operation):
        return None
    names = named_anew(state)
    if not names:
        return None
    left, right = (names.get(worth(side), side) for side in (asked.left, asked.right))
    if left is asked.left and right is asked.right:
        return None
    sign = Sign.TIMES if asked.sign is Sign.OF else asked.sign
    anew = Operation(sign, left, right)
    return anew if worth(anew) == value else None


def named_anew(state: State) -> dict[Exact | None, Number]:
    """Return the numbers that were said to be others: 2/4 for 1/2."""
    found: dict[Exact | None, Number] = {}
    for draft in state.drafts:
        result = draft.result
        if draft.whole or isinstance(draft.left, Operation):
            continue
        if isinstance(result, Number):
            found[worth(draft.left)] = result
    return found


def in_parts(frame: Frame, world: World) -> Iterator[Frame]:
    """Yield a hop whose size is so many of the parts it starts from: eight eighths, minus three.

    Or hundredths behind a number with a point: one twenty five, and fifty.
    """
    left, right = frame.left, frame.right
    if left is None or right is None or frame.sign not in HOPS:
        return
    bottom = bottom_of(left.leaf)
    size = right.leaf
    if world.pointed and _point(left.leaf) and isinstance(size, int) and 10 <= size < 100:
        yield replace(frame, right=right._replace(leaf=decimal(Fraction(size, 100), 2)))
    if bottom is None or not isinstance(size, int) or not 0 < size <= bottom or right.many:
        return
    if all(isinstance(one, int) for one in world.facts.numbers):
        return
    yield replace(frame, right=right._replace(leaf=parts(size, bottom)))


def bottom_of(leaf: Expression) -> int | None:
    """Return the bottom number of a number written in parts; None of any other."""
    if isinstance(leaf, Fraction):
        return leaf.denominator
    if isinstance(leaf, Written) and leaf.form is Form.PARTS:
        return leaf.size
    return None


def made_of(leaf: Expression, drafts: tuple[Draft, ...]) -> bool:
    """Tell whether what the steps come to are the two numbers that a number is written with.

    Of `two sixths, one and one is two and three and three is six` they are its top and bottom; of
    `five point fourteen, three plus two and eight plus six` what stands before and behind a point.
    """
    bottom, value = bottom_of(leaf), worth(leaf)
    if value is None:
        return False
    if isinstance(leaf, Written) and leaf.form is Form.DECIMAL:
        pair = {int(value), exact(value % 1 * 10**leaf.size)}
    else:
        pair = {exact(value * bottom), bottom} if bottom else set()
    return len(pair) == 2 and pair == {draft.stands for draft in drafts}


def as_problem_writes(whole: Quantity, named: Quantity, world: World) -> bool:
    """Tell whether a name was said before the problem's own number: four quarters make a whole."""
    own = [text(one) for one in world.facts.written]
    return text(named.leaf) in own and text(whole.leaf) not in own


def without_last_names(drafts: tuple[Draft, ...]) -> tuple[Draft, ...]:
    """Return the steps without the other names that the last result was given at the end."""
    kept = len(drafts)
    while kept and not isinstance(drafts[kept - 1].left, Operation):
        kept -= 1
    return drafts[:kept]


def told_anew(
    drafts: tuple[Draft, ...], marks: frozenset[Meaning], world: World
) -> tuple[Draft, ...]:
    """Return the steps, before them the names that a child changed the problem's numbers to.

    Only where the change itself was said: I made them sixths, 3/6 and 2/6; both decimals.
    """
    asked = world.facts.asked
    if Meaning.DOUBLE in marks and world.groups:
        drafts = doubled(drafts)
    form = Meaning.PARTS in marks and not marks.isdisjoint((Meaning.ROUND, Meaning.BOTH))
    if not (form or Meaning.UNIT in marks) or not isinstance(asked, Operation):
        return drafts
    known = {text(one.left) for one in drafts if not isinstance(one.left, Operation)}
    for place, draft in enumerate(drafts):
        if not isinstance(draft.left, Operation):
            continue
        names = [one for one in written(draft.left) if isinstance(one, int | Fraction | Written)]
        changed = [
            Draft(own, (Part.LEFT,), draft.span, name)
            for own in dict.fromkeys(world.facts.written)
            for name in dict.fromkeys(names)
            if other_writing(own, name) and text(own) not in known
        ]
        return (*drafts[:place], *changed, *drafts[place:])
    return drafts


def reckoned_anew(state: State, number: Quantity, value: Exact, world: World) -> Iterator[State]:
    """Yield the step asked, its numbers renamed, of which only the result was said."""
    anew = asked_anew(state, value, world)
    if anew is None or any(draft.left == anew for draft in state.drafts):
        return
    if tops_told(state, number):
        return
    draft = Draft(anew, RESULT_ALONE, number.span, number.leaf)
    yield state.stepped(draft, weights.JOINED, standing=number)


def asked_alone(state: State, number: Quantity, world: World) -> Iterator[State]:
    """Yield what is asked, of which only the result was said, for that is then named anew.

    Of `six eighths, which is three quarters` the first is what 3/8 and 3/8 come to.
    """
    asked = world.facts.asked
    if state.drafts or not isinstance(asked, Operation) or number.value != world.facts.answer:
        return
    if bottom_of(number.leaf) is not None and not isinstance(number.leaf, Fraction):
        yield state.stepped(Draft(asked, RESULT_ALONE, number.span, number.leaf), standing=number)


def tops_told(state: State, number: Quantity) -> bool:
    """Tell whether the step before already put the tops together: two and three, five eighths."""
    bottom, value = bottom_of(number.leaf), number.value
    last = state.drafts[-1] if state.drafts else None
    if bottom is None or value is None or last is None or not isinstance(last.left, Operation):
        return False
    wholes = all(isinstance(one, int) for one in written(last.left))
    return wholes and last.stands == value * bottom


def side_anew(state: State, number: Quantity, value: Exact, world: World) -> Iterator[State]:
    """Yield the state in which a number compared is said in another writing: seventy hundredths."""
    if not isinstance(world.facts.problem, Compare) and not _as_fraction(number, world):
        return
    yield from _side_worked_out(state, number, value, world)
    own = [one for one in world.facts.written if exact(one) == value]
    if len(own) != 1 or text(own[0]) == text(number.leaf):
        return
    if odd_writing(own[0], number.leaf):
        return
    draft = Draft(own[0], (Part.LEFT,), number.span, number.leaf)
    if any(draft.left == one.left for one in state.drafts):
        yield replace(state, spoken=number, so=False).and_costs(weights.REPEATED)
        return
    yield state.stepped(draft, spoken=number)


def _side_worked_out(state: State, number: Quantity, value: Exact, world: World) -> Iterator[State]:
    """Yield the side of a comparison that a number is the worth of: 54 and 56, of 6 x 9 and 7 x 8.

    The first such side that was not worked out yet.
    """
    problem, done = world.facts.problem, [draft.left for draft in state.drafts]
    if not isinstance(problem, Compare) or value in world.facts.numbers:
        return
    for side in sides(problem):
        if isinstance(side, Operation) and worth(side) == value and side not in done:
            draft = Draft(side, RESULT_ALONE, number.span, number.leaf)
            yield state.stepped(draft, spoken=number)
            return


def _as_fraction(number: Quantity, world: World) -> bool:
    """Tell whether a fraction is named for a percentage, or behind a point: a quarter."""
    if not isinstance(number.leaf, Fraction) or number.leaf == HALF or number.noise:
        return False
    own = [one for one in world.facts.written if exact(one) == number.value]
    return any(_point(one) or has_form(one, Form.PERCENT) for one in own)


def odd_writing(own: Expression, name: Expression) -> int:
    """Return what it costs that hundredths of a number with a point are written as parts."""
    if isinstance(name, Written) and name.form is Form.PARTS and name.size in _POINTS:
        return weights.STRANGE if _point(own) else 0
    return 0


def name_cost(whole: Quantity, name: Quantity, world: World) -> int:
    """Return how odd it is that a number is said to be another: false, or strangely written."""
    compared = isinstance(world.facts.problem, Compare)
    if nearly(whole, name):
        return weights.NEXT
    if compared and {whole.value, name.value} == {*world.facts.numbers}:
        return weights.ARRIVED
    if whole.value == name.value:
        return odd_writing(whole.leaf, name.leaf)
    if isinstance(name.leaf, Operation) and not isinstance(whole.leaf, int):
        return weights.FALSE + weights.STRANGE
    wholes = all(isinstance(one.leaf, int) or _point(one.leaf) for one in (whole, name))
    return weights.FALSE + (weights.LOOSE if wholes else 0)


def in_percents(whole: Quantity, name: Quantity) -> bool:
    """Tell whether a percentage is only taken apart: twenty five percent is twenty and five."""
    if not has_form(whole.leaf, Form.PERCENT) or not isinstance(name.leaf, Operation):
        return False
    return whole.value is not None and name.value == whole.value * 100


def nearly(own: Quantity, name: Quantity) -> bool:
    """Tell whether a name is a number cut off behind a few places: 0.33 for 1/3."""
    if not isinstance(name.leaf, Written) or not _point(name.leaf) or own.value is None:
        return False
    apart = abs(Fraction(own.value) - Fraction(exact(name.leaf)))
    return 0 < apart < Fraction(1, 10**name.leaf.size) and name.leaf.size > 1


def held_against(state: State, value: Exact, world: World) -> bool:
    """Tell whether a number said behind `away from` is only what another is held against."""
    return state.apart and isinstance(world.facts.problem, Compare) and value in map(exact, MARKS)


def in_small_parts(whole: Quantity, named: Quantity, world: World) -> bool:
    """Tell whether a number compared is only said in tenths or hundredths: the other is 75."""
    one, other = whole.value, named.value
    if not isinstance(world.facts.problem, Compare) or one is None or not isinstance(other, int):
        return False
    return any(exact(one * size) == other for size in _POINTS)
