"""Which family of ways the steps belong to, where no way has these very steps.

Children say fewer steps than a way has, or more, in another order and with other results. The
family is that of the way which explains most of what was heard; the words of moving, halving,
carrying and counting tell apart what the steps alone do not.
"""

from collections.abc import Iterator
from fractions import Fraction

from waysaid.hearing.draft import Draft
from waysaid.hearing.match import explains
from waysaid.hearing.meaning import Meaning
from waysaid.hearing.spoken.frame import worth
from waysaid.hearing.spoken.world import World
from waysaid.number import (
    BLANK,
    Blank,
    Exact,
    Form,
    Operation,
    Sign,
    exact,
    has_form,
    leaves,
    written,
)
from waysaid.ways import Family

_LEAST = 1
"""How well a way must explain the steps to name them. Our choice."""

_MARKED = 2
"""What a word that belongs to a family counts. Our choice."""

_MARKS: dict[Meaning, tuple[Family, ...]] = {
    Meaning.GIVE: (Family.GIVE_AND_TAKE,),
    Meaning.BOTH: (Family.SHIFT_BOTH,),
    Meaning.CARRY: (Family.COLUMN,),
    Meaning.WRITE: (Family.COLUMN,),
    Meaning.BORROW: (Family.COLUMN,),
    Meaning.ROUND: (Family.ADJUST, Family.NEAR_FACT),
    Meaning.COUNT: (Family.COUNTING,),
    Meaning.DOUBLE: (Family.NEAR_DOUBLE, Family.DOUBLE_HALVE),
    Meaning.HALF: (Family.DOUBLE_HALVE, Family.FACTOR_STEPS),
}
"""Which families a word speaks for: common practice, no source."""


def likeliest(
    drafts: tuple[Draft, ...], found: Family | None, marks: frozenset[Meaning], world: World
) -> Family | None:
    """Return the family of the steps: `found` where a way has them all, else the likeliest."""
    shape = _moved(drafts, world) or _opposite(drafts, world)
    if shape is not None:
        return shape
    if found is Family.COUNTING and not all(draft.counted for draft in drafts):
        found = None
    if found is Family.BRIDGE and Meaning.GIVE in marks:
        return Family.GIVE_AND_TAKE
    if found is not None:
        return found
    if _by_place(drafts, world):
        return Family.SPLIT
    scores: dict[Family, int] = {}
    for way, score in explains(drafts, world.facts):
        if way.family is Family.COUNTING and not any(draft.counted for draft in drafts):
            continue
        marked = sum(_MARKED for mark in marks if way.family in _MARKS.get(mark, ()))
        scores[way.family] = max(scores.get(way.family, score + marked), score + marked)
    best = max(scores, key=lambda family: scores[family], default=None)
    if best is not None and scores[best] >= _LEAST:
        return best
    return _of_parts(drafts) or _in_turn(drafts, world)


def _moved(drafts: tuple[Draft, ...], world: World) -> Family | None:
    """Tell some moved from one number to the other, or both changed alike."""
    asked = world.facts.asked
    numbers = world.facts.numbers
    if not isinstance(asked, Operation) or len(numbers) != 2 or numbers[0] == numbers[1]:
        return None
    changes = {number: (sign, size) for number, sign, size in _changes(drafts, numbers)}
    if len(changes) != 2:
        return None
    (one, size), (other, same) = changes.values()
    if size != same:
        return None
    if asked.sign is Sign.PLUS and one is not other:
        return Family.GIVE_AND_TAKE
    if asked.sign is Sign.MINUS and one is other and size not in numbers:
        return Family.SHIFT_BOTH
    return None


def _changes(
    drafts: tuple[Draft, ...], numbers: tuple[Exact, ...]
) -> Iterator[tuple[Exact, Sign, Exact]]:
    """Yield the changes made to the numbers of the problem."""
    for draft in drafts:
        left = draft.left
        if not isinstance(left, Operation) or left.sign not in (Sign.PLUS, Sign.MINUS):
            continue
        values = [one for one in written(left) if not isinstance(one, Blank)]
        if len(values) == 2 and not isinstance(left.left, Operation):
            start, size = (exact(one) for one in values)
            if start in numbers and size not in numbers:
                yield start, left.sign, size


def _by_place(drafts: tuple[Draft, ...], world: World) -> bool:
    """Tell like places of the two numbers worked together, twice or more: 70 - 30 and 4 - 1."""
    numbers = world.facts.numbers
    if len(numbers) != 2:
        return False
    places: list[set[Exact]] = [{_digit(one, place) for one in numbers} for place in range(4)]
    places.append({exact(one - int(one)) for one in numbers})
    pairs = [
        {one for one in leaves(draft.left) if one != 0}
        for draft in drafts
        if isinstance(draft.left, Operation) and draft.left.sign in (Sign.PLUS, Sign.MINUS)
    ]
    return sum(any(pair == place - {0} for place in places) for pair in pairs) > 1


def _digit(number: Exact, place: int) -> int:
    """Return what the digit at a place is worth: the 30 of 37 at place 1."""
    size = (1, 10, 100, 1000)[place]
    return abs(int(number)) // size % 10 * size


def _of_parts(drafts: tuple[Draft, ...]) -> Family | None:
    """Tell percents of the whole, or what is missing to 1; or a number only written another way."""
    for draft in drafts:
        numbers = list(written(draft.left))
        operation = isinstance(draft.left, Operation)
        if operation and any(has_form(one, Form.PERCENT) for one in numbers if one is not BLANK):
            return Family.BENCHMARK
        if operation and numbers[0] == 1 and any(isinstance(one, Fraction) for one in numbers):
            return Family.BENCHMARK
    if drafts and not any(isinstance(draft.left, Operation) for draft in drafts):
        return Family.RENAME if not any(draft.whole for draft in drafts) else None
    return None


def _in_turn(drafts: tuple[Draft, ...], world: World) -> Family | None:
    """Tell a number of the problem multiplied and divided step by step."""
    ends: Exact | None = None
    for draft in drafts:
        left = draft.left
        if not isinstance(left, Operation) or left.sign not in (Sign.TIMES, Sign.OVER):
            return None
        start = worth(left.left)
        if start not in ((ends,) if ends is not None else world.facts.numbers):
            return None
        ends = draft.stands
    return Family.FACTOR_STEPS if len(drafts) > 1 and world.groups else None


def _opposite(drafts: tuple[Draft, ...], world: World) -> Family | None:
    """Tell one fact that undoes the problem: 7 + 6 = 13 for 13 - 7, 8 x 7 = 56 for 56 / 8."""
    asked, numbers = world.facts.asked, world.facts.numbers
    if len(drafts) != 1 or not isinstance(asked, Operation) or len(numbers) != 2:
        return None
    left = drafts[0].left
    opposite = {Sign.MINUS: Sign.PLUS, Sign.OVER: Sign.TIMES}.get(asked.sign)
    if not isinstance(left, Operation) or left.sign is not opposite:
        return None
    named = [exact(one) for one in written(left) if isinstance(one, int)]
    if numbers[1] not in named or drafts[0].stands != numbers[0]:
        return None
    return Family.THINK_ADD if opposite is Sign.PLUS else Family.THINK_TIMES
