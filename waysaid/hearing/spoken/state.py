"""How far a listener has come: the steps so far, the step being said, the numbers still loose."""

from collections.abc import Iterator
from dataclasses import dataclass, field
from typing import NamedTuple

from waysaid.hearing.draft import Draft
from waysaid.hearing.spoken.change import replace
from waysaid.hearing.spoken.frame import HOPS, Frame, Quantity
from waysaid.number import (
    Blank,
    Exact,
    Operation,
    Order,
    Remainder,
    Sign,
    Verdict,
    exact,
    leaves,
)


@dataclass(frozen=True, slots=True)
class Bare:
    """A number that stands alone, said when there were `after` steps.

    `final` is whether a word before it promised a result or an answer.
    """

    quantity: Quantity
    after: int
    final: bool


class State(NamedTuple):
    """One way to have heard the words so far, and what it costs.

    `standing` is the number a hop would go on from, `amount` the last number moved, `spoken` the
    last number named, `claimed` a result said before its reasons, `reason` one that the next step
    comes to. `so` is whether a result was promised, `free` whether a digit of column work comes,
    `both` whether the next hop is made from every number, `heard` how many numbers were said,
    `apart` whether what a number lacks was spoken of, `scaled` whether a number compared was said
    in tenths or hundredths, `rounded` the number that another was last treated as. `dropped` are
    the stretches of words taken back; `undo` holds the states to go back to: before the last
    number, and at the start of the clause.
    """

    cost: int = 0
    frame: Frame = Frame()
    drafts: tuple[Draft, ...] = ()
    bare: tuple[Bare, ...] = ()
    standing: Quantity | None = None
    amount: Quantity | None = None
    spoken: Quantity | None = None
    claimed: Quantity | None = None
    reason: Quantity | None = None
    scaled: bool = False
    verdict: Remainder | Order | Verdict | None = None
    so: bool = False
    free: bool = False
    both: bool = False
    knew: bool = False
    unsure: bool = False
    apart: bool = False
    denied: bool = False
    rounded: Quantity | None = None
    dropped: tuple[tuple[int, int], ...] = ()
    undo: tuple["State", "State"] | None = None
    heard: int = 0

    def and_costs(self, more: int) -> "State":
        """Return the same state, so much less likely."""
        return tuple.__new__(State, (self.cost + more, *self[1:])) if more else self

    def framed(self, frame: Frame, more: int = 0) -> "State":
        """Return the state with another frame."""
        return tuple.__new__(State, (self.cost + more, frame, *self[2:]))

    def naming(self, number: Quantity) -> "State":
        """Return the state in which a number is the last that was named."""
        return tuple.__new__(State, (*self[:6], number, *self[7:]))

    def stepped(self, draft: Draft, more: int = 0, **parts: object) -> "State":
        """Return the state with one more step and other parts changed, so much less likely.

        What was promised before it has come.
        """
        drafts = (*self.drafts, draft)
        return replace(self, drafts=drafts, so=False, free=False, cost=self.cost + more, **parts)

    def but_cost(self) -> tuple[object, ...]:
        """Return what tells states apart but for their cost and what they came from.

        The frame by what is in it, for it is made anew again and again; other parts by being the
        very same, so that the state must be kept as long as this.
        """
        return (self.frame, *map(id, self[2:-2]))

    def come_by(self, cost: int, undo: tuple["State", "State"] | None, heard: int) -> "State":
        """Return the state with another cost, states to go back to, and count of numbers."""
        return tuple.__new__(State, (cost, *self[1:-2], undo, heard))

    @property
    def latest(self) -> Bare | None:
        """The number that was said alone since the last step; None where none was."""
        last = self.bare[-1] if self.bare else None
        return last if last is not None and last.after == len(self.drafts) else None

    def key(self, steps: int) -> tuple[object, ...]:
        """Return what later words can tell apart: states alike in it differ only in cost.

        `steps` is a number for the steps so far, the same for the same steps: see `Said`.
        """
        loose = tuple([one.quantity.leaf for one in self.bare]) if self.bare else ()
        standing = self.standing and self.standing.leaf
        rounded = self.rounded and self.rounded.leaf
        flags = self[10:18]  # from the verdict to what is denied
        return (self.frame, steps, loose, flags, rounded, standing, self.reason)


@dataclass(slots=True)
class Said:
    """Numbers for the steps of states: one for all that are the same but for where they stand."""

    given: dict[object, int] = field(default_factory=dict)
    known: dict[int, tuple[tuple[Draft, ...], int]] = field(default_factory=dict)

    def number(self, drafts: tuple[Draft, ...]) -> int:
        """Return the number of the steps; the very same ones are looked at once."""
        found = self.known.get(id(drafts))
        if found is None:
            steps = tuple((draft.left, draft.result) for draft in drafts)
            found = (drafts, self.given.setdefault(steps, len(self.given)))
            self.known[id(drafts)] = found
        return found[1]


def results(state: State) -> Iterator[tuple[int, Exact]]:
    """Yield the place and the result, said or forced, of every step that ends on a number."""
    for place, draft in enumerate(state.drafts):
        ends = draft.stands
        if ends is not None:
            yield place, ends


def unused(state: State) -> tuple[Exact, ...]:
    """Return the results that no later step goes on from."""
    found, used = [], set[Exact | Blank]()
    for draft in reversed(state.drafts):
        ends = draft.stands
        if ends is not None and ends not in used:
            found.append(ends)
        used.update(leaves(draft.left))
    return tuple(reversed(found))


def before_last(state: State, frame: Frame) -> Quantity | None:
    """Return what the step before the last came to, for a hop by as much as the last one comes to.

    Of `eighty, that's two fours too many, minus eight` the eight comes off the eighty.
    """
    if frame.sign not in HOPS or frame.right is None or len(state.drafts) < 2:
        return None
    before, last = state.drafts[-2:]
    ends = before.ends
    used = before.stands in leaves(last.left)
    if ends is None or used or last.result is not None or last.stands != frame.right.value:
        return None
    return Quantity(ends, frame.right.span, said=False)


def counts(state: State, turned: bool = False) -> tuple[Exact, ...]:
    """Return how many groups each step of groups took: the 10 and the 3 of 10 x 7 and 7 x 3.

    One product alone may be said the other way round, with the groups behind: 9 x 10 is ten nines.
    """
    pairs = [
        [exact(one) for one in leaves(draft.left) if isinstance(one, int)]
        for draft in state.drafts
        if isinstance(draft.left, Operation) and draft.left.sign is Sign.TIMES
    ]
    pairs = [pair for pair in pairs if len(pair) == 2]
    alike = [one for one in pairs[0] if all(one in pair for pair in pairs)] if pairs else []
    if len(alike) != 1:
        return tuple(pair[int(turned)] for pair in pairs)
    return tuple(pair[1] if pair[0] == alike[0] else pair[0] for pair in pairs)
