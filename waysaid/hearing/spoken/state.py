"""How far a listener has come: the steps so far, the step being said, the numbers still loose."""

from collections.abc import Iterator
from dataclasses import dataclass
from typing import NamedTuple

from waysaid.hearing.draft import Draft
from waysaid.hearing.spoken.frame import Frame, Quantity
from waysaid.number import Exact, Order, Remainder, Verdict, exact, leaves


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
    in tenths or hundredths. `dropped` are the stretches of words taken back; `undo` holds the
    states to go back to: before the last number, and at the start of the
    clause.
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
    verdict: Remainder | Order | Verdict | None = None
    so: bool = False
    free: bool = False
    both: bool = False
    knew: bool = False
    unsure: bool = False
    apart: bool = False
    scaled: bool = False
    denied: bool = False
    dropped: tuple[tuple[int, int], ...] = ()
    undo: tuple["State", "State"] | None = None
    heard: int = 0

    def and_costs(self, more: int) -> "State":
        """Return the same state, so much less likely."""
        return State._make((self.cost + more, *self[1:])) if more else self

    def framed(self, frame: Frame, more: int = 0) -> "State":
        """Return the state with another frame."""
        return State._make((self.cost + more, frame, *self[2:]))

    def key(self) -> tuple[object, ...]:
        """Return what later words can tell apart: states alike in it differ only in cost."""
        steps = tuple((draft.left, draft.result) for draft in self.drafts)
        loose = tuple(one.quantity.leaf for one in self.bare)
        flags = (
            self.so,
            self.free,
            self.both,
            self.knew,
            self.unsure,
            self.verdict,
            self.apart,
            self.denied,
        )
        return (self.frame, steps, loose, flags, self.standing and self.standing.leaf, self.reason)


def results(state: State) -> Iterator[tuple[int, Exact]]:
    """Yield the place and the result, said or forced, of every step that ends on a number."""
    for place, draft in enumerate(state.drafts):
        ends = draft.stands
        if ends is not None:
            yield place, ends


def unused(state: State) -> tuple[Exact, ...]:
    """Return the results that no later step goes on from."""
    found = []
    for place, value in results(state):
        used = (one for later in state.drafts[place + 1 :] for one in leaves(later.left))
        if value not in used:
            found.append(value)
    return tuple(found)


def counts(state: State) -> tuple[Exact, ...]:
    """Return how many groups each step of groups took: the 10 and the 3 of 10 x 7 and 3 x 7."""
    found = []
    for draft in state.drafts:
        numbers = [one for one in leaves(draft.left) if isinstance(one, int)]
        if len(numbers) == 2:
            found.append(exact(numbers[0]))
    return tuple(found)
