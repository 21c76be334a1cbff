"""From clauses to steps as said: which number is a result, where a hop starts, what was counted.

Nothing is corrected: a result that was said is kept, and the next hop goes on from it.
"""

from dataclasses import dataclass
from fractions import Fraction
from itertools import pairwise, takewhile

from waysaid.hearing.clause import Clause, Hop, Said, Side
from waysaid.hearing.draft import COUNTED, Draft
from waysaid.hearing.facts import Facts
from waysaid.hearing.reading import Part
from waysaid.number import (
    BLANK,
    Exact,
    Expression,
    NoValue,
    Operation,
    Sign,
    apply,
    value_of,
)
from waysaid.ways import Way

_SKIPS = (1, 2, 5, 10, 100)
"""What children count by: ones, twos, fives, tens, hundreds (common practice, no source)."""

_A_COUNT = 3
"""The fewest numbers, the start among them, that are heard as a count. Our choice."""

_NEAR = 10
"""How far from the right result a number after a gap may be and still be heard as that result,
however small the result; half of it otherwise. Our choice."""


@dataclass(frozen=True, slots=True)
class Heard:
    """The steps in order, the numbers said outside any step, and those that may be answers.

    A number may be an answer where it stands by itself, or last.
    """

    drafts: tuple[Draft, ...]
    bare: tuple[Said, ...]
    answers: tuple[Said, ...]


def hear(said: tuple[Clause, ...], facts: Facts) -> Heard:
    """Return the steps of the clauses, in the order said."""
    listener = _Listener(facts)
    place = 0
    while place < len(said):
        block = _block(said[place:])
        if block:
            place += len(block)
            listener.numbers(block, place == len(said))
        else:
            place += 1
            listener.clause(said[place - 1], said[place:])
    return Heard(tuple(listener.drafts), tuple(listener.bare), tuple(listener.answers))


def _block(said: tuple[Clause, ...]) -> tuple[Said, ...]:
    """Return the numbers alone that the clauses begin with."""
    found = []
    for clause in said:
        if clause.bare is None:
            break
        found.append(clause.bare)
    return tuple(found)


class _Listener:
    """Goes through the clauses once. `standing` is the number a hop would go on from."""

    def __init__(self, facts: Facts) -> None:
        self.facts = facts
        self.drafts: list[Draft] = []
        self.bare: list[Said] = []
        self.answers: list[Said] = []
        self.standing: Exact | None = None
        self.waiting = False

    def numbers(self, block: tuple[Said, ...], at_the_end: bool) -> None:
        """Take numbers that stand alone: a result awaited, a count, or an answer."""
        if self._awaited(block[0], None):
            self._end(block[0])
            block = block[1:]
        if not self._count(block):
            self.bare.extend(block)
            self.answers.extend(block[-1:] if at_the_end or len(block) == 1 else ())

    def clause(self, clause: Clause, after: tuple[Clause, ...]) -> None:
        """Take a clause with at least one hop or one equals sign."""
        first = clause.sides[0]
        if first.first and first.hops and self._awaited(first.first, first):
            self._end(first.first)
        place = 0
        while place < len(clause.sides):
            rest = clause.sides[place + 1 :]
            place += self._side(clause.sides[place], rest, after)

    def _side(self, side: Side, rest: tuple[Side, ...], after: tuple[Clause, ...]) -> int:
        """Take a side; return how many sides are done with."""
        then = rest[0] if rest else None
        if not side.hops:
            return self._number_first(side, then)
        if self._restates(side, then, after):
            self.standing = None
            return 1
        side = self._from_the_problem(side)
        if then is None:
            self._hops(side, None)
            return 1
        if self._same(side, then):
            return 1 if len(rest) > 1 else 2
        self._hops(side, then.first)
        return 2 if not then.hops and len(rest) == 1 else 1

    def _number_first(self, side: Side, then: Side | None) -> int:
        """Take `42 = 30 + 12`; a number that only ends a chain is done with already."""
        if then is None or side.first is None or then.first is None:
            return 1
        if then.first.value == side.first.value:
            return 1
        draft = Draft(
            side.first.value,
            (),
            (side.first.span[0], _end(then)),
            then.whole(then.first.value),
            whole=True,
        )
        self._add(draft, None)
        return 2

    def _restates(self, side: Side, then: Side | None, after: tuple[Clause, ...]) -> bool:
        """Tell whether the side only says the problem again before the work begins."""
        if side.first is None or side.whole(side.first.value) != self.facts.problem:
            return False
        if then is None:
            return bool(after) and after[0].bare is None
        arrived = then.first is not None and then.first.value == _worth(side)
        return bool(then.hops) and not arrived and not self._equal(side, then)

    def _from_the_problem(self, side: Side) -> Side:
        """Leave the problem out where hops go on from it: `62-25 -20 42` is `-20 42`."""
        for count in range(1, len(side.hops)):
            if (
                side.first
                and Side(side.first, side.hops[:count]).whole(side.first.value)
                == self.facts.problem
            ):
                self.standing = None
                return Side(None, side.hops[count:])
        return side

    def _equal(self, side: Side, then: Side) -> bool:
        if side.first is None or then.first is None:
            return False
        worth = _worth(side)
        return worth != then.first.value and worth == _worth(then)

    def _same(self, side: Side, then: Side) -> bool:
        """Take `62 - 25 = 67 - 30`, which is one true step and not a run-on equals sign."""
        if not (then.hops and side.first and then.first and self._equal(side, then)):
            return False
        left, right = side.whole(side.first.value), then.whole(then.first.value)
        self._add(Draft(left, (), (side.first.span[0], _end(then)), right, whole=True), None)
        return True

    def _hops(self, side: Side, result: Said | None) -> None:
        left, said, start = self._left(side, result)
        at_once = side.whole(left) in self.facts.lefts or side.whole(left) == self.facts.problem
        if len(side.hops) > 1 and at_once:
            self._step(side.whole(left), (said, start), side.hops[-1], result)
            return
        hops = list(side.hops)
        while hops:
            hop = hops.pop(0)
            whole = Operation(hop.sign, left, hop.number.value)
            said_result = _below_zero(whole, hops) if hops else result
            if hops and said_result:
                hops.pop(0)
            self._step(whole, (said, start), hop, said_result)
            left = BLANK if self.standing is None else self.standing
            said, start = False, None

    def _left(self, side: Side, result: Said | None) -> tuple[Expression, bool, int | None]:
        """Return where the hops start, whether it was said, and its place in the line."""
        if side.first:
            return side.first.value, True, side.first.span[0]
        if self.standing is not None:
            return self.standing, False, None
        return self._base(side, result), False, None

    def _base(self, side: Side, result: Said | None) -> Expression:
        """Choose the number of the problem that unsaid hops start from.

        The one that arrives at the result that was said; else the one with which the most hops
        begin a way; else the first.
        """
        numbers = self.facts.numbers
        if result:
            for number in numbers:
                if value_of(side.whole(number)) == result.value:
                    return number
        return max(numbers, key=lambda number: self._begins(number, side), default=BLANK)

    def _begins(self, number: Exact, side: Side) -> int:
        """Count the hops from the number that are the first steps of some way."""
        lefts: list[Expression] = []
        for hop in side.hops:
            lefts.append(Operation(hop.sign, number, hop.number.value))
            number = value_of(lefts[-1])
        return max((_alike(lefts, way) for way in self.facts.ways), default=0)

    def _step(
        self, left: Expression, start: tuple[bool, int | None], hop: Hop, result: Said | None
    ) -> None:
        said, place = start
        end = result.span[1] if result else hop.number.span[1]
        span = (hop.start if place is None else place, end)
        value = result.value if result else None
        self._add(Draft(left, () if said else (Part.LEFT,), span, value), result)

    def _add(self, draft: Draft, result: Said | None) -> None:
        self.drafts.append(draft)
        if not draft.whole:
            self.standing = draft.stands
        self.waiting = result is None and not draft.whole

    def _awaited(self, number: Said, side: Side | None) -> bool:
        """Tell whether a number after a gap is the result that the last step waits for.

        `side` is the side the number begins, or None where it stands alone.
        """
        if not self.waiting or not self.drafts:
            return False
        last = self.drafts[-1]
        forced = last.forced
        hop_alone = Part.LEFT in last.open
        tight = side is not None and side.hops[0].tight
        if forced is None or number.value in (forced, *self._otherwise(last.left)):
            return hop_alone or not tight
        if side is None:
            return number.value != self.facts.answer and _near(number.value, forced)
        apart = number.value in self.facts.pieces or (tight and not hop_alone)
        return not apart and _near(number.value, forced)

    def _end(self, number: Said) -> None:
        """Give the last step the result that was said."""
        last = self.drafts[-1]
        left = self._opened(last.left, number.value)
        span = (last.span[0], number.span[1])
        self.drafts[-1] = Draft(left, last.open, span, number.value)
        self.standing, self.waiting = number.value, False

    def _opened(self, left: Expression, result: int) -> Expression:
        """Choose the start of a first hop again, now that its result is known."""
        return self._otherwise(left).get(result, left)

    def _otherwise(self, left: Expression) -> dict[Exact, Expression]:
        """Return what a first hop from each number of the problem would come to."""
        hop_alone = len(self.drafts) == 1 and Part.LEFT in self.drafts[0].open
        if not (hop_alone and isinstance(left, Operation)):
            return {}
        starts = [Operation(left.sign, one, left.right) for one in reversed(self.facts.numbers)]
        return {value_of(start): start for start in starts}

    def _count(self, block: tuple[Said, ...]) -> bool:
        """Take numbers counted one after another; tell whether they were."""
        start = self._start(block)
        if start is None:
            return False
        values = [start[0], *(one.value for one in block[start[1] :])]
        if len(values) < _A_COUNT or not _even(values):
            return False
        sign = Sign.PLUS if values[1] > values[0] else Sign.MINUS
        skip = max(values[:2]) - min(values[:2])
        before = block[0] if start[1] else None
        said = bool(before or (self.drafts and self.drafts[-1].result is not None))
        for left, number in zip(values, block[start[1] :], strict=False):
            span = ((before or number).span[0], number.span[1])
            unsaid = COUNTED if said else (Part.LEFT, *COUNTED)
            self._add(Draft(Operation(sign, left, skip), unsaid, span, number.value), number)
            before, said = number, True
        return True

    def _start(self, block: tuple[Said, ...]) -> tuple[Exact, int] | None:
        """Return the number a count starts from, and 1 where it is the first of the block."""
        if not block:
            return None
        if self.standing is not None:
            return self.standing, 0
        if block[0].value in self.facts.numbers:
            return block[0].value, 1
        for number in self.facts.numbers:
            if _even([number, *(one.value for one in block)]):
                return number, 0
        return None


def _even(values: list[Exact]) -> bool:
    """Tell whether the numbers go on or back by one of the skips."""
    gaps = {apply(Sign.MINUS, after, before) for before, after in pairwise(values)}
    return len(gaps) == 1 and not gaps.isdisjoint(_SKIPS + tuple(-skip for skip in _SKIPS))


def _below_zero(whole: Operation, hops: list[Hop]) -> Said | None:
    """Return the result that looks like a hop: the -3 of `2-5 -3`."""
    number = Said(-hops[0].number.value, (hops[0].start, hops[0].number.span[1]))
    below = hops[0].sign is Sign.MINUS and number.value < 0 and not hops[0].tight
    return number if below and _value(whole) == number.value else None


def _alike(lefts: list[Expression], way: Way) -> int:
    """Count the first steps of a way that begin as the given ones do."""
    pairs = zip(lefts, way.steps, strict=False)
    return len(list(takewhile(lambda pair: pair[0] == pair[1].equation.left, pairs)))


def _near(number: int, forced: Exact) -> bool:
    gap = abs(Fraction(number - forced))
    return gap <= _NEAR or 2 * gap <= abs(Fraction(forced))


def _worth(side: Side) -> Exact | None:
    return _value(side.whole(side.first.value)) if side.first else None


def _value(expression: Expression) -> Exact | None:
    try:
        return value_of(expression)
    except NoValue:
        return None


def _end(side: Side) -> int:
    return side.hops[-1].number.span[1]
