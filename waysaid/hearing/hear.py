"""From clauses to steps as said: which number is a result, where a hop starts, what was counted.

Nothing is corrected: a result that was said is kept, and the next hop goes on from it.
"""

from dataclasses import dataclass
from fractions import Fraction

from waysaid.hearing.clause import Answered, Clause, Hop, Open, Piece, Said, Side
from waysaid.hearing.draft import COUNTED, Draft
from waysaid.hearing.facts import Facts
from waysaid.hearing.joined import joined
from waysaid.hearing.reading import Part
from waysaid.hearing.side import (
    alike,
    below_zero,
    end_of,
    even,
    order,
    whole_of,
    worth,
    worth_as_written,
)
from waysaid.hearing.turned import turned_side
from waysaid.hearing.worth import worth as value
from waysaid.number import (
    BLANK,
    Compare,
    Exact,
    Expression,
    Image,
    Number,
    Operation,
    Order,
    Remainder,
    Sign,
    Verdict,
    exact,
    negative,
)

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

    A number may be an answer where it stands by itself, or last. `verdict` is the last answer said
    that is no number; `lost` is whether something was said that no step can hold, as `50/6=8 r 2`.
    """

    drafts: tuple[Draft, ...]
    bare: tuple[Said, ...]
    answers: tuple[Said, ...]
    verdict: Remainder | Order | Verdict | None = None
    lost: bool = False


def hear(said: tuple[Piece, ...], facts: Facts) -> Heard:
    """Return the steps of the clauses, in the order said."""
    listener = _Listener(facts)
    place = 0
    while place < len(said):
        block = _block(said[place:])
        place += len(block) or 1
        piece = said[place - 1]
        if block:
            listener.numbers(block, place == len(said))
        elif isinstance(piece, Clause):
            listener.clause(piece, said[place:])
        elif isinstance(piece, Open):
            listener.open(piece)
        else:
            listener.answered(piece)
    found = (tuple(listener.drafts), tuple(listener.bare), tuple(listener.answers))
    return Heard(*found, listener.verdict, listener.lost)


def _block(said: tuple[Piece, ...]) -> tuple[Said, ...]:
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
        self.standing: Number | None = None
        self.waiting = False
        self.verdict: Remainder | Order | Verdict | None = None
        self.lost = False

    def numbers(self, block: tuple[Said, ...], at_the_end: bool) -> None:
        """Take numbers that stand alone: a result awaited, a count, or an answer."""
        if self._awaited(block[0], None):
            self._ended(block[0])
            block = block[1:]
        whole = joined(self.drafts, block[0], self.facts) if len(block) == 1 else None
        if whole is not None:
            self._add(whole)
        elif not self._count(block):
            self.bare.extend(block)
            self.answers.extend(block[-1:] if at_the_end or len(block) == 1 else ())

    def open(self, piece: Open) -> None:
        """Take an equation with something yet to be found."""
        self._add(Draft(piece.equation.left, (), piece.span, piece.equation.right, whole=True))
        self.standing = None

    def answered(self, piece: Answered) -> None:
        """Take an answer that is no number, where it was said of the problem or of nothing."""
        problem, said = self.facts.problem, piece.said
        if not isinstance(said, Remainder | Order | Verdict):
            return
        if len(piece.of) == 1:
            first = piece.of[0].first
            asked = first is not None and piece.of[0].whole(first.leaf) == self.facts.asked
            self.lost = self.lost or not asked
        elif len(piece.of) == 2:
            found = order(said, piece.of, problem)
            self.lost, said = self.lost or found is None, found or said
        self.verdict = said
        self.waiting = False

    def clause(self, clause: Clause, after: tuple[Piece, ...]) -> None:
        """Take a clause with at least one hop or one equals sign."""
        if isinstance(self.facts.problem, Compare) and len(clause.sides) == 2:
            left, right = map(worth_as_written, clause.sides)
            if {left, right} == {self.facts.problem.left, self.facts.problem.right}:
                self.verdict = Order.SAME
        first = clause.sides[0]
        if first.first and first.hops and self._awaited(first.first, first):
            self._ended(first.first)
        sides = (self._below(first), *clause.sides[1:])
        place = 0
        while place < len(sides):
            place += self._side(sides[place], sides[place + 1 :], after)

    def _below(self, side: Side) -> Side:
        """Return a side that begins with the number below zero that stands: `-5 +2` after -5."""
        if side.first or len(side.hops) < 2 or self.standing is None:
            return side
        hop, *rest = side.hops
        start = Said(negative(hop.number.leaf), (hop.start, hop.number.span[1]))
        begins = hop.sign is Sign.MINUS and start.value == exact(self.standing)
        return Side(start, tuple(rest)) if begins and start.value < 0 else side

    def _side(self, side: Side, rest: tuple[Side, ...], after: tuple[Piece, ...]) -> int:
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
        if not then.hops:
            return self._renamed(side.first, then.first)
        if then.first.value == side.first.value:
            return 1
        draft = Draft(
            side.first.leaf,
            (),
            (side.first.span[0], end_of(then)),
            then.whole(then.first.leaf),
            whole=True,
        )
        self._add(draft)
        return 2

    def _renamed(self, number: Said, other: Said) -> int:
        """Take `3/4 = 6/8`, or `10% = 8` of which nobody says that it is 10% of the whole."""
        span = (number.span[0], other.span[1])
        if number.leaf == other.leaf:
            return 1
        whole = whole_of(self.facts.problem)
        if whole is not None and number.value != other.value and not isinstance(number.leaf, int):
            of = Operation(Sign.OF, number.leaf, whole)
            self._add(Draft(of, (Part.OP, Part.RIGHT), span, other.leaf))
        else:
            self._add(Draft(number.leaf, (), span, other.leaf))
        self.waiting = False
        return 1

    def _restates(self, side: Side, then: Side | None, after: tuple[Piece, ...]) -> bool:
        """Tell whether the side only says the problem again before the work begins."""
        if side.first is None or side.whole(side.first.leaf) != self.facts.asked:
            return False
        if then is None:
            return bool(after) and after[0].bare is None
        arrived = then.first is not None and then.first.value == worth(side)
        return bool(then.hops) and not arrived and not self._equal(side, then)

    def _from_the_problem(self, side: Side) -> Side:
        """Leave the problem out where hops go on from it: `62-25 -20 42` is `-20 42`."""
        for count in range(1, len(side.hops)):
            begun = Side(side.first, side.hops[:count])
            if side.first and begun.whole(side.first.leaf) == self.facts.asked and not side.mixed:
                self.standing = None
                return Side(None, side.hops[count:])
        return side

    def _equal(self, side: Side, then: Side) -> bool:
        if side.first is None or then.first is None:
            return False
        here = worth(side)
        return here != then.first.value and here == worth(then)

    def _same(self, side: Side, then: Side) -> bool:
        """Take `62 - 25 = 67 - 30`, which is one true step and not a run-on equals sign."""
        if not (then.hops and side.first and then.first and self._equal(side, then)):
            return False
        left, right = side.whole(side.first.leaf), then.whole(then.first.leaf)
        self._add(Draft(left, (), (side.first.span[0], end_of(then)), right, whole=True))
        return True

    def _hops(self, side: Side, result: Said | None) -> None:
        left, said, start = self._left(side, result)
        whole = side.whole(left)
        at_once = whole in self.facts.lefts or whole == self.facts.asked or side.mixed
        if len(side.hops) > 1 and at_once:
            place = side.hops[0].start if start is None else start
            self._step(whole, (said, place), side.hops[-1], result)
            return
        hops = list(side.hops)
        while hops:
            hop = hops.pop(0)
            whole = Operation(hop.sign, left, hop.number.leaf)
            said_result = below_zero(whole, hops) if hops else result
            if hops and said_result:
                hops.pop(0)
            self._step(whole, (said, start), hop, said_result)
            left = BLANK if self.standing is None else self.standing
            said, start = False, None

    def _left(self, side: Side, result: Said | None) -> tuple[Expression, bool, int | None]:
        """Return where the hops start, whether it was said, and its place in the line."""
        if side.first:
            return side.first.leaf, True, side.first.span[0]
        if self.standing is not None:
            return self.standing, False, None
        return self._base(side, result), False, None

    def _base(self, side: Side, result: Said | None) -> Expression:
        """Choose the number of the problem that unsaid hops start from.

        The one that arrives at the result that was said; else the one with which the most hops
        begin a way; else the first.
        """
        numbers = self.facts.written
        if result:
            for number in numbers:
                if value(side.whole(number)) == result.value:
                    return number
        return max(numbers, key=lambda number: self._begins(number, side), default=BLANK)

    def _begins(self, number: Number, side: Side) -> int:
        """Count the hops from the number that are the first steps of some way."""
        lefts: list[Expression] = []
        for hop in side.hops:
            lefts.append(turned_side(Operation(hop.sign, number, hop.number.leaf)))
            worth = value(lefts[-1])
            if worth is None:
                return 0
            number = worth
        return max((alike(lefts, way) for way in self.facts.ways), default=0)

    def _step(
        self, left: Expression, start: tuple[bool, int | None], hop: Hop, result: Said | None
    ) -> None:
        said, place = start
        end = result.span[1] if result else hop.number.span[1]
        span = (hop.start if place is None else place, end)
        value = result.leaf if result else None
        self._add(Draft(left, () if said else (Part.LEFT,), span, value))

    def _add(self, draft: Draft) -> None:
        self.drafts.append(draft)
        if not draft.whole:
            self.standing = draft.ends
        self.waiting = draft.result is None

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
        near = self._near(number.value, forced, last)
        if side is None:
            return number.value != self.facts.answer and near
        begins = side.first is not None and side.whole(side.first.leaf) in self.facts.lefts
        apart = begins or number.value in self.facts.pieces or (tight and not hop_alone)
        return not apart and near

    def _near(self, number: Exact, forced: Exact, last: Draft) -> bool:
        """Tell whether a number after a gap may be a step's result, right or wrong."""
        gap = abs(Fraction(number - forced))
        sums = isinstance(last.left, Operation) and last.left.sign in (Sign.PLUS, Sign.MINUS)
        whole = all(isinstance(one, int) for one in self.facts.numbers)
        return (sums and whole and gap <= _NEAR) or 2 * gap <= abs(Fraction(forced))

    def _ended(self, number: Said) -> None:
        """Give the last step the result that was said."""
        last = self.drafts[-1]
        left = self._opened(last.left, number.value)
        span = (last.span[0], number.span[1])
        self.drafts[-1] = Draft(left, last.open, span, number.leaf)
        self.standing, self.waiting = number.leaf, False

    def _opened(self, left: Expression, result: Exact) -> Expression:
        """Choose the start of a first hop again, now that its result is known."""
        return self._otherwise(left).get(result, left)

    def _otherwise(self, left: Expression) -> dict[Exact, Expression]:
        """Return what a first hop from each number of the problem would come to."""
        hop_alone = len(self.drafts) == 1 and Part.LEFT in self.drafts[0].open
        if not (hop_alone and isinstance(left, Operation)):
            return {}
        starts = [Operation(left.sign, one, left.right) for one in reversed(self.facts.written)]
        worth = ((value(start), start) for start in starts)
        return {value: start for value, start in worth if value is not None}

    def _count(self, block: tuple[Said, ...]) -> bool:
        """Take numbers counted one after another; tell whether they were."""
        start = self._start(block)
        if start is None:
            return False
        values = [start[0], *(one.value for one in block[start[1] :])]
        if len(values) < _A_COUNT or not even(values, self._skips()):
            return False
        sign = Sign.PLUS if values[1] > values[0] else Sign.MINUS
        skip = exact(max(values[:2]) - min(values[:2]))
        before = block[0] if start[1] else None
        said = bool(before or (self.drafts and self.drafts[-1].result is not None))
        for left, number in zip(values, block[start[1] :], strict=False):
            span = ((before or number).span[0], number.span[1])
            unsaid = COUNTED if said else (Part.LEFT, *COUNTED)
            self._add(Draft(Operation(sign, left, skip), unsaid, span, number.leaf))
            before, said = number, True
        return True

    def _start(self, block: tuple[Said, ...]) -> tuple[Exact, int] | None:
        """Return the number a count starts from, and 1 where it is the first of the block."""
        if not block:
            return None
        if self.standing is not None:
            return exact(self.standing), 0
        if block[0].value in self.facts.numbers:
            return block[0].value, 1
        for number in self.facts.numbers:
            if even([number, *(one.value for one in block)], self._skips()):
                return number, 0
        if isinstance(self.facts.problem, Image):
            return block[0].value, 1
        return None

    def _skips(self) -> tuple[Exact, ...]:
        """Return what may be counted by: in a product or a share its own numbers, too."""
        asked = self.facts.asked
        groups = isinstance(asked, Operation) and asked.sign in (Sign.TIMES, Sign.OVER)
        return (*_SKIPS, *(self.facts.numbers if groups else ()))
