"""Ways to work with a number below zero."""

from collections.abc import Callable, Iterator

from waysaid.ways.from_below import own, turned
from waysaid.ways.from_below.shape import ByBelow, FromBelow, StaysBelow, shapes_of
from waysaid.ways.maker import AnyMaker, Maker
from waysaid.ways.plan import Plan
from waysaid.ways.way import Family

_OWN: tuple[Maker[FromBelow], ...] = (
    Maker(Family.KNOWN_FACT, FromBelow, own.known_plans),
    Maker(Family.COUNTING, FromBelow, own.counting_plans),
    Maker(Family.JUMP, FromBelow, own.jump_plans),
    Maker(Family.BRIDGE, FromBelow, own.bridge_plans),
)


def _first_said(maker: AnyMaker) -> Callable[[ByBelow], Iterator[Plan]]:
    def plans(problem: ByBelow) -> Iterator[Plan]:
        """Yield the ways of -2 - 4 for -2 + (-4), that said first; none turned a second time."""
        new = turned.below_first(problem)
        if new is not None:
            for slug, moves in maker.of(new):
                if not slug.startswith(turned.ROUND):
                    yield f"opposite-{slug}", (turned.said_first(problem), *moves)

    return plans


MAKERS: tuple[AnyMaker, ...] = (
    Maker(Family.KNOWN_FACT, StaysBelow, own.stays_plans),
    *_OWN,
    Maker(Family.ADD_UP, ByBelow, own.add_up_plans),
    *turned.MAKERS,
    *(Maker(maker.family, ByBelow, _first_said(maker)) for maker in _OWN),
    *(
        Maker(maker.family, ByBelow, _first_said(maker))
        for maker in turned.MAKERS
        if maker.shape is FromBelow
    ),
)

__all__ = ["MAKERS", "shapes_of"]
