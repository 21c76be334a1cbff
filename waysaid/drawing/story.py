"""A told way as hops along a line: what starts where, and which numbers were said.

A way is a story for a line when each hop starts where the one before it ended. Steps that only
say how a number was opened or what is left over (split, the other half of a give and take) are
no hops; the sum of the hops (gather) is kept apart, and so is the gap of a shift. Several pieces
put together at once are no hops either: where they meet on the way was never said. Groups that
are counted in the end are no distance along the line.
"""

from dataclasses import dataclass, field, replace

from waysaid.drawing.telling import Telling
from waysaid.number import (
    BLANK,
    Blank,
    Exact,
    Expression,
    Number,
    Operation,
    Print,
    Problem,
    Sign,
    apply,
    exact,
    number_text,
    sides,
    sign_text,
    signed_terms,
    written,
)
from waysaid.ways import Kind, Step


@dataclass(frozen=True, slots=True)
class Mark:
    """A number of the telling; `said` tells whether it may be written.

    `form` is the number as it was written, where that is more than its value.
    """

    value: Exact
    said: bool
    form: Number | None = field(default=None, compare=False)

    @property
    def text(self) -> str:
        """The number as people read it; nothing where nobody said it."""
        form = self.value if self.form is None else self.form
        return number_text(form, Print.TRUE) if self.said else ""


UNSAID = Mark(0, False)
"""A number that nobody said, and that nothing can be worked out for."""


def mark_of(leaf: Number, said: bool) -> Mark:
    """Return a number as a mark that keeps the form it was written in."""
    return Mark(exact(leaf), said, leaf)


@dataclass(frozen=True, slots=True)
class Hop:
    """One hop: where from, by how much, and where to, as told (true or not).

    `count` equal hops may stand for one, as four sixes do for 24; `name` is what is written on
    them then.
    """

    start: Mark
    sign: Sign
    amount: Mark
    end: Mark
    sign_said: bool
    count: int = 1
    name: str | None = None

    @property
    def label(self) -> str:
        """What is written on the hop: `+3`, `3` where the sign was not said, or nothing."""
        if self.name is not None:
            return self.name
        sign = sign_text(self.sign, Print.TRUE) if self.sign_said else ""
        return f"{sign}{self.amount.text}" if self.amount.said else ""

    @property
    def forward(self) -> bool:
        """Whether it goes to the right."""
        return self.end.value > self.start.value

    @property
    def still(self) -> bool:
        """Whether it ends where it started."""
        return self.end.value == self.start.value


@dataclass(frozen=True, slots=True)
class Gap:
    """A stretch of the line marked over the hops, and what is written on it."""

    low: Mark
    high: Mark
    label: str


@dataclass(frozen=True, slots=True)
class Story:
    """The hops in the order told, and the gaps marked over them, lowest first."""

    hops: tuple[Hop, ...]
    gaps: tuple[Gap, ...] = ()


_Told = list[tuple[Step, tuple[Hop, ...]]]


def story_of(telling: Telling) -> Story | None:
    """Return the told steps as hops along a line; None where they are no such story."""
    hidden = [telling.unsaid(place) for place in range(len(telling.steps))]
    told = [(step, hops_of(step, away)) for step, away in zip(telling.steps, hidden, strict=True)]
    if any(step.kind is Kind.SHIFT for step, _ in told):
        return _shifted(told, hidden)
    if in_groups(telling.problem) and any(step.kind is Kind.GATHER for step, _ in told):
        return None
    chain: list[Hop] = []
    for place, (step, hops) in enumerate(told):
        if step.kind in (Kind.SPLIT, Kind.GATHER) or renames(step):
            continue
        if step.kind is Kind.JOIN and len(hops) > 1:
            return None
        if step.kind is Kind.MOVE and not _goes_on(hops, told[place + 1 :]):
            continue
        joined = _joined(chain, hops)
        if not joined:
            return None
        chain.extend(joined)
    if not chain or any(hop.still for hop in chain):
        return None
    return Story(tuple(chain), _gathered(told, chain))


def renames(step: Step) -> bool:
    """Tell whether a step only writes a number another way: 1/2 = 2/4."""
    sides_of = (step.equation.left, step.equation.right)
    return not any(isinstance(side, Operation | Blank) for side in sides_of)


def in_groups(problem: Problem) -> bool:
    """Tell whether a problem multiplies or divides."""
    grouping = (Sign.TIMES, Sign.OVER, Sign.OF)
    return any(isinstance(one, Operation) and one.sign in grouping for one in sides(problem))


def _goes_on(hops: tuple[Hop, ...], later: _Told) -> bool:
    """Tell whether a later hop starts where this one ends."""
    starts = {more[0].start.value for _, more in later if more}
    return bool(hops) and hops[-1].end.value in starts


def _joined(chain: list[Hop], hops: tuple[Hop, ...]) -> tuple[Hop, ...]:
    """Return the hops if they go on from the chain, turned round where 5 + 57 was said for it."""
    if not chain or not hops or hops[0].start.value == chain[-1].end.value:
        return hops
    first = hops[0]
    if first.sign is Sign.PLUS and first.amount.value == chain[-1].end.value:
        return (replace(first, start=first.amount, amount=first.start), *hops[1:])
    return ()


def hops_of(step: Step, unsaid: frozenset[str]) -> tuple[Hop, ...]:
    """Return `a + b = c` as one hop, `a + b + c = d` as two; none where it is no such equation."""
    terms = terms_in(step.equation.left)
    result = step.equation.right
    if terms is None or len(terms) < 2 or isinstance(result, Operation):
        return ()
    marks = _filled(terms, result)
    if not marks:
        return ()
    here = replace(marks[0], said=marks[0].said and "left" not in unsaid)
    made: list[Hop] = []
    for (sign, _), amount in zip(terms[1:], marks[1:], strict=True):
        there = Mark(apply(sign, here.value, amount.value), False)
        made.append(Hop(here, sign, amount, there, True))
        here = there
    last = made[-1]
    amount = replace(last.amount, said=last.amount.said and "right" not in unsaid)
    end = last.end if isinstance(result, Blank) else mark_of(result, "result" not in unsaid)
    made[-1] = Hop(last.start, last.sign, amount, end, "op" not in unsaid)
    return tuple(made)


def terms_in(expression: Expression) -> tuple[tuple[Sign, Number | Blank], ...] | None:
    """Return the signed terms of a sum or difference as they were written, or None."""
    terms = signed_terms(expression)
    if terms is None:
        return None
    return tuple((sign, leaf) for (sign, _), leaf in zip(terms, written(expression), strict=True))


def _filled(
    terms: tuple[tuple[Sign, Number | Blank], ...], result: Number | Blank
) -> tuple[Mark, ...]:
    """Return the terms as marks, one blank among them filled in unsaid by what the step makes."""
    known: Exact = 0
    for sign, leaf in terms:
        known = known if isinstance(leaf, Blank) else apply(sign, known, exact(leaf))
    empty = sum(leaf is BLANK for _, leaf in terms)
    if empty > 1 or (empty and isinstance(result, Blank)):
        return ()
    total = known if isinstance(result, Blank) else exact(result)
    return tuple(
        Mark(apply(sign, 0, total - known), False)
        if isinstance(leaf, Blank)
        else mark_of(leaf, True)
        for sign, leaf in terms
    )


def _gathered(told: _Told, chain: list[Hop]) -> tuple[Gap, ...]:
    """Return the stretch that the hops cover, with what they make together if that was said."""
    sums = [hops[-1].end.text for step, hops in told if hops and _sums_up(step, hops, chain)]
    low, high = _ordered(chain[0].start, chain[-1].end)
    if not sums or not sums[-1] or low.value == high.value:
        return ()
    return (Gap(low, high, sums[-1]),)


def _sums_up(step: Step, hops: tuple[Hop, ...], chain: list[Hop]) -> bool:
    """Tell whether a step adds up hops, or says what is left of one: + 40, − 3, so 40 − 3 = 37."""
    amounts = {hop.amount.value for hop in chain}
    left_over = step.kind is Kind.SPLIT and {hops[0].start.value, hops[0].amount.value} <= amounts
    return step.kind is Kind.GATHER or left_over


def _ordered(one: Mark, other: Mark) -> tuple[Mark, Mark]:
    return (one, other) if one.value <= other.value else (other, one)


@dataclass(slots=True)
class _Shift:
    """What is known of a shift so far: its hops, its gaps, and where each new number was."""

    moves: list[Hop]
    gaps: list[Gap]
    before: dict[Exact, Mark]

    def add_gap(self, high: Mark, low: Mark, label: str) -> bool:
        """Add a gap, over it the one before the shift; False where it is not a new one."""
        if self.gaps or low.value == high.value:
            return False
        self.gaps.append(Gap(*_ordered(low, high), label))
        if low.value in self.before and high.value in self.before:
            old = _ordered(self.before[low.value], self.before[high.value])
            if old[0].value != old[1].value:
                self.gaps.append(Gap(*old, ""))
        return True


def _shifted(told: _Told, hidden: list[frozenset[str]]) -> Story | None:
    """Return both shifts as hops, the new gap over them and the old one over that."""
    shift = _Shift([], [], {})
    at_once: list[Hop] = []
    for (step, hops), unsaid in zip(told, hidden, strict=True):
        if step.kind is Kind.SHIFT and not hops:
            at_once = _both(step, unsaid)
            if not at_once:
                return None
            shift.before.update({hop.end.value: hop.start for hop in at_once})
        elif len(hops) != 1:
            return None
        elif step.kind is Kind.SHIFT and not hops[0].still:
            shift.moves.append(hops[0])
            shift.before[hops[0].end.value] = hops[0].start
        elif hops[0].sign is Sign.PLUS or not shift.add_gap(
            hops[0].start, hops[0].amount, hops[0].end.text
        ):
            return None
    if at_once and not shift.gaps and not shift.add_gap(at_once[0].end, at_once[1].end, ""):
        return None
    return Story(tuple(shift.moves), tuple(shift.gaps)) if shift.before else None


def _both(step: Step, unsaid: frozenset[str]) -> list[Hop]:
    """Return `62 - 25 = 67 - 30` as two moves, 62 to 67 and 25 to 30; none for other shapes."""
    old, new = terms_in(step.equation.left), terms_in(step.equation.right)
    if old is None or new is None or len(old) != 2 or len(new) != 2:
        return []
    if old[1][0] is not Sign.MINUS or new[1][0] is not Sign.MINUS:
        return []
    made: list[Hop] = []
    for part, (_, start), (_, end) in zip(("left", "right"), old, new, strict=True):
        if isinstance(start, Blank) or isinstance(end, Blank):
            return []
        first, last = mark_of(start, part not in unsaid), mark_of(end, "result" not in unsaid)
        made.append(Hop(first, Sign.PLUS, Mark(last.value - first.value, False), last, False))
    return made
