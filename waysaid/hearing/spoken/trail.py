"""What is kept of the last lines heard, so that a line that goes on as one did is not heard anew.

A line is read with every key. What its first words may mean is the same each time, and only the
words behind the first that differs are listened to. The readings are the same with it and without.
"""

from collections import deque
from dataclasses import dataclass, field

from waysaid.hearing.spoken.item import Item
from waysaid.hearing.spoken.state import Said, State
from waysaid.hearing.spoken.world import World

Lattice = tuple[tuple[Item, ...], ...]
Taken = tuple[State, int, tuple[State, State] | None, int]
"""A state after an item, and its cost, what to go back to and how many numbers were heard."""
Beam = dict[tuple[object, ...], Taken]

_KEPT = 4
"""How many lines are kept: of as many desks as type at once. Our choice."""


@dataclass(slots=True, eq=False)
class Trail:
    """A line as it was searched.

    `waiting` holds, for each word, the beams that were not empty when its turn came, by place;
    `said` the numbers that the steps in them were given; `width` the states kept for a word.
    """

    world: World
    width: int
    items: Lattice = ()
    waiting: list[dict[int, Beam]] = field(default_factory=list)
    said: Said = field(default_factory=Said)

    def shared(self, items: Lattice) -> int:
        """Return for how many words a line goes on as this one did."""
        pairs = enumerate(zip(self.items, items, strict=False))
        return next((place for place, (one, other) in pairs if one != other), len(items))


_TRAILS: deque[Trail] = deque(maxlen=_KEPT)


def begun(items: Lattice, width: int, world: World) -> Trail:
    """Return the trail of a line to hear, as far as a line heard before goes with it.

    It is no longer kept for others until `keep` is called: two threads never share one.
    """
    for trail in tuple(_TRAILS):
        if trail.world is not world or trail.width != width:
            continue
        place = min(trail.shared(items), len(trail.waiting) - 1)
        if place > 0 and _took(trail):
            return Trail(world, width, items, trail.waiting[: place + 1], trail.said)
    return Trail(world, width, items, [{0: {(): (State(), 0, None, 0)}}])


def _took(trail: Trail) -> bool:
    """Take a trail from those kept; tell whether it was still there."""
    try:
        _TRAILS.remove(trail)
    except ValueError:
        return False
    return True


def keep(trail: Trail) -> None:
    """Keep a trail for the lines to come."""
    _TRAILS.append(trail)


def forget() -> None:
    """Forget the lines heard."""
    _TRAILS.clear()
