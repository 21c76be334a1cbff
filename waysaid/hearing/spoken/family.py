"""Which family of ways the steps belong to, where no way has these very steps.

Children say fewer steps than a way has, or more, in another order and with other results. The
family is that of the way which explains most of what was heard; the words of moving, halving,
carrying and counting tell apart what the steps alone do not.
"""

from waysaid.hearing.draft import Draft
from waysaid.hearing.match import explains
from waysaid.hearing.meaning import Meaning
from waysaid.hearing.spoken.anew import without_last_names
from waysaid.hearing.spoken.by_digit import told_by_digits
from waysaid.hearing.spoken.change import replace
from waysaid.hearing.spoken.frame import HOPS
from waysaid.hearing.spoken.moved import moved, pair_of, restated
from waysaid.hearing.spoken.outline import (
    added_on,
    against_mark,
    climbed_up,
    counted,
    exchanged,
    from_double,
    from_fact,
    in_turn,
    multiplied_up,
    of_parts,
    opposite,
    percent_renamed,
    percents,
    places_alike,
    put_right,
    said_truly,
    share_repeated,
    shared_of,
    written_anew,
)
from waysaid.hearing.spoken.part import share_of
from waysaid.hearing.spoken.related import both_rounded, digits_multiplied, related
from waysaid.hearing.spoken.scaled import halved_on, scaled, top_and_bottom
from waysaid.hearing.spoken.seen import put_together, thought_full
from waysaid.hearing.spoken.short import (
    across,
    chunks_counted,
    counts_put_right,
    double_and_rest,
    doublings,
    from_neighbour,
    products_alone,
    rounded_whole,
    taken_off,
)
from waysaid.hearing.spoken.state import State
from waysaid.hearing.spoken.tally import told_alone
from waysaid.hearing.spoken.undone import chunks_seen, run_on, undone_beside
from waysaid.hearing.spoken.world import World, asks
from waysaid.hearing.turned import turned
from waysaid.number import (
    About,
    Claim,
    Compare,
    Equation,
    Exact,
    Image,
    Operation,
    Sign,
    fill,
    sides,
)
from waysaid.ways import Family

_LEAST = 1
"""How well a way must explain the steps to name them. Our choice."""

_MARKED = 2
"""What a word that belongs to a family counts. Our choice."""

_MARKS: dict[Meaning, tuple[Family, ...]] = {
    Meaning.GIVE: (Family.GIVE_AND_TAKE,),
    Meaning.BOTH: (Family.SHIFT_BOTH, Family.SCALE_BOTH),
    Meaning.CARRY: (Family.COLUMN,),
    Meaning.WRITE: (Family.COLUMN,),
    Meaning.BORROW: (Family.COLUMN,),
    Meaning.ROUND: (Family.ADJUST, Family.NEAR_FACT),
    Meaning.COUNT: (Family.COUNTING,),
    Meaning.DOUBLE: (Family.NEAR_DOUBLE, Family.DOUBLE_HALVE),
    Meaning.WHOLE: (Family.BENCHMARK,),
    Meaning.HALF: (Family.DOUBLE_HALVE, Family.BENCHMARK),
    Meaning.EMPTY: (Family.ADJUST,),
}
"""Which families a word speaks for: common practice, no source."""

_ON_PAPER = frozenset((Meaning.CARRY, Meaning.WRITE, Meaning.BORROW))

_LESS_SAID = (None, Family.ADD_UP)
"""What is told where no more than the equation itself was said, its number filled in."""

_ALONE = 2
"""How many numbers alone must be a way's to name it. Our choice."""


def likeliest(
    state: State, found: Family | None, marks: frozenset[Meaning], world: World
) -> Family | None:
    """Return the family of the steps: `found` where a way has them all, else the likeliest.

    Where no step was said, the numbers and words that were said alone may still tell it. Fractions
    are not worked in columns: on top is their top.
    """
    if world.parted:
        marks -= _ON_PAPER
    if across(state.drafts, world):
        return None
    held = Family.BENCHMARK if against_mark(state, world) else None
    family = held or doublings(state.drafts, world) or _likeliest(state, found, marks, world)
    if family is Family.BENCHMARK and put_right(without_last_names(state.drafts), world):
        return Family.ADJUST
    rough = family in (Family.BREAK_UP, None) and marks & _ON_PAPER
    if rough and digits_multiplied(state.drafts, world):
        return Family.COLUMN
    if told_by_digits(state.drafts, world):
        return Family.COLUMN if marks & _ON_PAPER else Family.BREAK_UP
    near = not marks.isdisjoint((Meaning.ROUND, Meaning.ABOUT))
    if family is Family.BRIDGE and near and rounded_whole(state.drafts, world):
        return Family.ADJUST
    if family is Family.BRIDGE and state.drafts:
        even = Meaning.MORE not in marks and _even(state.drafts[0], world)
        return Family.GIVE_AND_TAKE if even or Meaning.GIVE in marks else family
    return family


def _likeliest(
    state: State, found: Family | None, marks: frozenset[Meaning], world: World
) -> Family | None:
    if state.scaled and found is None and said_truly(state, world):
        return Family.RENAME
    state = replace(state, drafts=without_last_names(state.drafts) or state.drafts)
    drafts = state.drafts
    if not drafts:
        return _without_steps(state, marks, world)
    sure = _sure(drafts, marks, world)
    if sure is not None:
        return sure
    if written_anew(drafts, world) or percent_renamed(drafts, world):
        return Family.RENAME
    if _is_asked(drafts[-1], world) and (world.groups or len(drafts) == 1):
        return _to_the_asked(state, found, marks, world)
    if _one_side(state, world):
        # Of `true, because eight and four is twelve` no way to judge a claim is told.
        return None if isinstance(world.facts.problem, Claim) else Family.KNOWN_FACT
    if _both_known(drafts, world) or (found in _LESS_SAID and _filled_in(drafts, world)):
        return Family.KNOWN_FACT
    on_paper = not marks.isdisjoint(_ON_PAPER)
    by_place = (None, Family.SPLIT, *((Family.RENAME,) if world.pointed else ()))
    if found in by_place and places_alike(drafts, world) > (0 if on_paper else 1):
        return Family.COLUMN if on_paper else Family.SPLIT
    other = _otherwise(drafts, found, world)
    if other is not None:
        return other
    counts = found is Family.COUNTING
    if found is not None and (not counts or counted(drafts)):
        return found
    if percents(state, world) or _roughly_a_part(drafts, world):
        return Family.BENCHMARK
    other = _unforeseen(state, marks, world)
    return other or (Family.COUNTING if counts else None)


def _otherwise(drafts: tuple[Draft, ...], found: Family | None, world: World) -> Family | None:
    """Return the family whose steps these are as well, where it says more of them."""
    if found in (Family.NEAR_FACT, Family.COUNTING) and added_on(drafts, world):
        return Family.COUNTING
    if found not in (None, Family.SPLIT):
        return None
    return double_and_rest(drafts, world) or (put_together(drafts, world) if found else None)


def _unforeseen(state: State, marks: frozenset[Meaning], world: World) -> Family | None:
    """Return the family that steps have in common with ways that were not foreseen."""
    drafts = state.drafts
    return (
        related(drafts, world)
        or both_rounded(drafts, world)
        or put_together(drafts, world)
        or thought_full(drafts, world)
        or run_on(drafts, world)
        or from_double(drafts, world)
        or _explaining(state, marks, world)
        or restated(drafts, world)
        or from_neighbour(drafts, world)
        or counts_put_right(drafts, world)
        or chunks_counted(drafts, world)
        or chunks_seen(drafts, world)
        or taken_off(drafts, world)
        or told_alone(drafts, world)
        or of_parts(drafts, world)
        or exchanged(drafts, world)
        or share_repeated(drafts, world)
        or added_on(drafts, world)
        or in_turn(drafts, world)
        or multiplied_up(drafts, world)
        or opposite(drafts, world, exactly=False)
    )


def _carried(marks: frozenset[Meaning]) -> bool:
    """Tell whether a ten was carried or opened, and the work not given up."""
    given_up = not marks.isdisjoint((Meaning.UNSURE, Meaning.LOST))
    return not marks.isdisjoint((Meaning.CARRY, Meaning.BORROW)) and not given_up


def _without_steps(state: State, marks: frozenset[Meaning], world: World) -> Family | None:
    """Return the family that words and numbers alone tell."""
    whole = world.whole and not isinstance(world.facts.problem, Image | Compare)
    if whole and _carried(marks):
        return Family.COLUMN
    near = _near_wholes(state, marks, world)
    return Family.BENCHMARK if near else _explaining(state, marks, world)


def _roughly_a_part(drafts: tuple[Draft, ...], world: World) -> bool:
    """Tell a part near the one asked for, where what is asked is only roughly: half, for 49 %."""
    rough = isinstance(world.facts.problem, About) and len(drafts) == 1
    return rough and share_of(drafts[0], world) is not None


def _near_wholes(state: State, marks: frozenset[Meaning], world: World) -> bool:
    """Tell fractions roughly put together as the wholes that they are near: almost one each."""
    if not world.parted or not isinstance(world.facts.problem, About):
        return False
    said = [one.quantity.value for one in state.bare]
    told = Meaning.WHOLE in marks or {Meaning.ABOUT, Meaning.BOTH} <= marks
    return told or 1 in said


def _sure(drafts: tuple[Draft, ...], marks: frozenset[Meaning], world: World) -> Family | None:
    """Return the family of steps whose shape alone tells it, whatever ways have them, too."""
    return (
        moved(drafts, world, told=Meaning.BOTH in marks)
        or scaled(drafts, marks, world)
        or opposite(drafts, world)
        or undone_beside(drafts, world)
        or products_alone(drafts, world)
        or halved_on(drafts, world)
        or climbed_up(drafts, world)
        or top_and_bottom(drafts, world)
    )


def _to_the_asked(
    state: State, found: Family | None, marks: frozenset[Meaning], world: World
) -> Family | None:
    """Return the family of steps that end in all that is asked: a fact, or what led to it."""
    drafts = state.drafts
    if len(drafts) == 1:
        return _at_once(drafts[0], found, marks, world)
    before = replace(state, drafts=drafts[:-1])
    return (
        related(drafts, world)
        or from_fact(drafts, world)
        or _explaining(before, marks, world)
        or found
    )


def _is_asked(draft: Draft, world: World) -> bool:
    """Tell whether a step is all that is asked, in either order of a sum."""
    return not draft.whole and asks(draft.left, world)


def _one_side(state: State, world: World) -> bool:
    """Tell a side of an equation or claim without the blank worked out, and no more said."""
    problem, drafts = world.facts.problem, state.drafts
    if not isinstance(problem, Equation | Claim) or len(drafts) != 1 or drafts[0].whole:
        return False
    both = [side for side in sides(problem) if isinstance(side, Operation)]
    if len(both) != 2 or drafts[0].left not in both:
        return False
    return all(one.quantity.value == drafts[0].stands for one in state.bare)


def _filled_in(drafts: tuple[Draft, ...], world: World) -> bool:
    """Tell the equation itself, said with its number: 63 - 35 = 28, for 63 - _ = 28."""
    problem, answer = world.facts.problem, world.facts.answer
    if not isinstance(problem, Equation) or answer is None or len(drafts) != 1:
        return False
    return not drafts[0].whole and turned(drafts[0].equation) == turned(fill(problem, answer))


def _both_known(drafts: tuple[Draft, ...], world: World) -> bool:
    """Tell a missing number worked out at once from the two that are there: 12 - 7, or 7 + 12."""
    numbers = world.facts.numbers
    if not isinstance(world.facts.problem, Equation) or len(numbers) != 2 or len(drafts) != 1:
        return False
    pair = pair_of(drafts[0])
    return pair is not None and pair[1] in HOPS and {pair[0], pair[2]} == {*numbers}


def _even(draft: Draft, world: World) -> bool:
    """Tell two other numbers put together that come to the answer: 30 and 32 for 28 + 34."""
    pair = pair_of(draft)
    if pair is None or {pair[0], pair[2]} & {*world.facts.numbers}:
        return False
    return pair[1] is Sign.PLUS and draft.forced == world.facts.answer


def _at_once(
    draft: Draft, found: Family | None, marks: frozenset[Meaning], world: World
) -> Family | None:
    """Return the family where all was worked out in one step: a fact, or a double.

    A wrong result of fractions or decimals tells no way; one in tenths, that they were renamed.
    """
    if world.pointed and Meaning.UNIT in marks and draft.stands == world.facts.answer:
        return Family.RENAME
    if not all(isinstance(one, int) for one in world.facts.numbers):
        return (found or Family.KNOWN_FACT) if draft.stands == world.facts.answer else None
    if found is None and Meaning.DOUBLE in marks:
        return Family.NEAR_DOUBLE
    return found or Family.KNOWN_FACT


def _explaining(state: State, marks: frozenset[Meaning], world: World) -> Family | None:
    """Return the family of the way that explains most of what was said, if any does.

    Where no step was said, numbers that are no answer must tell it, or, of a picture or a verdict,
    the words alone.
    """
    loose = _loose(state, world)
    if not state.drafts and isinstance(world.facts.problem, Compare):
        marks -= {Meaning.BOTH}
    if not state.drafts and loose <= {world.facts.answer}:
        loose = frozenset()
        if not isinstance(world.facts.problem, Image | Claim | Compare):
            return None
    count = not state.drafts or counted(state.drafts)
    groups = len(state.drafts) == 1 and Meaning.BOTH not in marks and _is_groups(state, world)
    unlikely = {Family.SCALE_BOTH} if groups else set()
    scores = [
        (score + _marked(way.family, marks), way.family)
        for way, score in explains(state.drafts, loose, world.facts)
        if (count or way.family is not Family.COUNTING) and way.family not in unlikely
    ]
    most, best = max(scores, key=lambda one: one[0], default=(0, None))
    return best if most >= (_LEAST if state.drafts else _ALONE) else None


def _is_groups(state: State, world: World) -> bool:
    """Tell whether the first step is some of the groups that are shared out: four 25s, for / 25."""
    pair, shared = pair_of(state.drafts[0]), shared_of(world)
    if pair is None or shared is None:
        return False
    return pair[1] is Sign.TIMES and shared[1] in pair and shared[0] not in pair


def _marked(family: Family, marks: frozenset[Meaning]) -> int:
    return sum(_MARKED for mark in marks if family in _MARKS.get(mark, ()))


def _loose(state: State, world: World) -> frozenset[Exact]:
    """Return the numbers said alone that are neither the problem's nor an end of a step."""
    said = {one.quantity.value for one in state.bare}
    ends = {draft.stands for draft in state.drafts}
    return frozenset(one for one in said - ends - {*world.facts.numbers} if one is not None)
