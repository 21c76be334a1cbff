"""What makes the ways of one family for problems of one shape."""

from collections.abc import Callable, Iterator
from dataclasses import dataclass
from typing import Any, Generic, TypeVar

from waysaid.ways.plan import Move, Plan, SeenPlan, plainly
from waysaid.ways.step import Step
from waysaid.ways.way import Family

S = TypeVar("S")


@dataclass(frozen=True, slots=True)
class Maker(Generic[S]):
    """One way: its family, the shape of problem it is for, and what plans it for one.

    `told` makes the step of a move; makers share it where they tell a move alike, whatever the
    shape that one problem is seen as.
    """

    family: Family
    shape: type[S]
    plans: Callable[[S], Iterator[Plan]]
    told: Callable[[Move | Step, S], Step] = plainly

    def of(self, shape: object) -> Iterator[Plan]:
        """Return the plans for a problem of any shape: none where it is not this way's shape."""
        return self.plans(shape) if isinstance(shape, self.shape) else iter(())


@dataclass(frozen=True, slots=True)
class SeenMaker(Generic[S]):
    """One way to see a quick image: as a `Maker`, its plans with the groups that are seen."""

    family: Family
    shape: type[S]
    plans: Callable[[S], Iterator[SeenPlan]]
    told: Callable[[Move | Step, S], Step] = plainly

    def of(self, shape: object) -> Iterator[SeenPlan]:
        """Return the plans for a picture seen in any shape: none where it is not this way's."""
        return self.plans(shape) if isinstance(shape, self.shape) else iter(())


AnyMaker = Maker[Any]
AnySeenMaker = SeenMaker[Any]
