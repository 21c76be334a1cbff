"""Every way there is, listed by hand; where two come to the same steps, the first one keeps them.

The order settles where families meet: a double is a double before it is a jump (30 + 28 from
30 + 30), tens that go on are a jump before they are a bridge (40 + 67 through 100).
"""

from collections.abc import Callable, Iterator
from dataclasses import dataclass
from typing import Generic, TypeVar

from waysaid.ways.add import bridge as add_bridge
from waysaid.ways.add import jump as add_jump
from waysaid.ways.plan import Plan
from waysaid.ways.shape import Difference, Missing, Nothing, Several, Shape, Sum
from waysaid.ways.take import bridge as take_bridge
from waysaid.ways.take import jump as take_jump
from waysaid.ways.way import Family

S = TypeVar("S", Sum, Difference, Nothing, Several, Missing)


@dataclass(frozen=True, slots=True)
class Maker(Generic[S]):
    """One way: its family, the shape of problem it is for, and what plans it for one."""

    family: Family
    shape: type[S]
    plans: Callable[[S], Iterator[Plan]]

    def of(self, shape: Shape) -> Iterator[Plan]:
        """Return the plans for a problem of any shape: none where it is not this way's shape."""
        return self.plans(shape) if isinstance(shape, self.shape) else iter(())


CATALOGUE: tuple[
    Maker[Sum] | Maker[Difference] | Maker[Nothing] | Maker[Several] | Maker[Missing], ...
] = (
    Maker(Family.JUMP, Sum, add_jump.plans),
    Maker(Family.JUMP, Difference, take_jump.plans),
    Maker(Family.BRIDGE, Sum, add_bridge.plans),
    Maker(Family.BRIDGE, Difference, take_bridge.plans),
)
