"""What became of each number from one problem to another, and whether a claim of it is true."""

from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from fractions import Fraction

from waysaid.number import Exact, exact
from waysaid.strings.changes import Pair, changed
from waysaid.strings.factor_pairs import changed_factors
from waysaid.strings.noticed_claim import Claimed, How, Moved, Shift, Who
from waysaid.strings.sight import Sight


@dataclass(frozen=True, slots=True)
class Step:
    """A number, or the answer, in one problem and what it is in another."""

    old: Exact
    new: Exact
    place: int | None = None


@dataclass(frozen=True, slots=True)
class Became:
    """What became of the numbers and the answer from the problem `start` to `end`.

    `numbers` has every number that has another in its place or that changed into it; `changed`
    those alone that links see to have changed.
    """

    start: int
    end: int
    numbers: tuple[Step, ...]
    changed: tuple[Step, ...]
    answer: Step | None

    def back(self) -> "Became":
        """Return the same from the end to the start."""
        return Became(
            self.end,
            self.start,
            tuple(map(_back, self.numbers)),
            tuple(map(_back, self.changed)),
            None if self.answer is None else _back(self.answer),
        )


def _back(step: Step) -> Step:
    return Step(step.new, step.old, step.place)


def became(first: Sight, second: Sight) -> Became:
    """Return what became of the numbers and the answer from one problem to another."""
    pairs = _pairs(first, second)
    moved = tuple(Step(old.size, new.size, old.place) for old, new in pairs)
    by_place = tuple(_by_place(first, second))
    answer = None
    if first.answer is not None and second.answer is not None:
        answer = Step(first.answer, second.answer)
    numbers = tuple(dict.fromkeys((*by_place, *moved)))
    return Became(first.at, second.at, numbers, moved, answer)


def _pairs(first: Sight, second: Sight) -> Sequence[Pair]:
    return changed(first, second) or changed_factors(first, second) or ()


def _by_place(first: Sight, second: Sight) -> Iterator[Step]:
    if first.form == second.form:
        for had, has in ((first.terms, second.terms), (first.factors, second.factors)):
            for old, new in zip(had, has, strict=True):
                yield Step(old.size, new.size, old.place)


def holds(claim: Claimed, facts: Became) -> bool:
    """Tell whether all changes that a noticing claims are true; so many of as many numbers."""
    if claim.moved is not None and not _moved(claim.moved, facts):
        return False
    used = [_steps(shift, facts) for shift in claim.shifts]
    if not all(used):
        return False
    numbers = [
        steps
        for shift, steps in zip(claim.shifts, used, strict=True)
        if shift.who is Who.NUMBER and shift.how is not How.SAME
    ]
    return len({step for steps in numbers for step in steps}) >= len(numbers)


def _moved(moved: Moved, facts: Became) -> bool:
    """Tell whether one number lost what another gained, there or back."""
    return any(
        moved.by in (None, giver.old - giver.new)
        and moved.giver in (None, giver.old)
        and moved.taker in (None, taker.old)
        for one in (facts, facts.back())
        for giver in one.changed
        for taker in one.changed
        if giver.old - giver.new == taker.new - taker.old > 0
    )


def _steps(shift: Shift, facts: Became) -> tuple[Step, ...]:
    """Return the steps of which a claim is true; () where it is true of none."""
    if shift.base == facts.end or (shift.base is None and shift.row == facts.start):
        facts = facts.back()
    if shift.row not in (None, facts.end):
        return ()
    answers: tuple[Step, ...] = () if facts.answer is None else (facts.answer,)
    match shift.who:
        case Who.ANSWER:
            among = answers
        case Who.NUMBER:
            among = facts.numbers
        case Who.IT:
            among = (*facts.changed, *answers)
        case Who.BOTH:
            return _of_every(shift, facts)
    return tuple(step for step in among if _true(shift, step))


def _of_every(shift: Shift, facts: Became) -> tuple[Step, ...]:
    several = len(facts.changed) > 1
    every = several and all(_true(shift, step) for step in facts.changed)
    return facts.changed if every else ()


def _true(shift: Shift, step: Step) -> bool:
    if shift.other is not None:
        step = step if shift.other == step.old else _back(step)
        if shift.other != step.old or shift.value not in (None, step.new):
            return False
    elif shift.value not in (None, step.old):
        return False
    if shift.place not in (None, step.place) or shift.to not in (None, step.new):
        return False
    return _became(shift, step)


def _became(shift: Shift, step: Step) -> bool:
    match shift.how:
        case How.UP:
            return step.new > step.old and shift.by in (None, step.new - step.old)
        case How.DOWN:
            return step.new < step.old and shift.by in (None, step.old - step.new)
        case How.SAME:
            return step.new == step.old
        case How.TIMES:
            return _times(step.old, step.new, shift.by)
        case How.OVER:
            return _times(step.new, step.old, shift.by)


def _times(small: Exact, large: Exact, by: Exact | None) -> bool:
    return small not in (large, 0) and exact(Fraction(large) / small) == by
