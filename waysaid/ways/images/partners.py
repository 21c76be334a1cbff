"""Partners: of three or more groups, two that go together come first."""

from collections.abc import Iterator
from itertools import combinations

from waysaid.ways.images.groupings import Dots
from waysaid.ways.images.shape import Grouped
from waysaid.ways.plan import PLUS, Moves, SeenPlan, hops
from waysaid.ways.step import Kind


def grouped(picture: Grouped) -> Iterator[SeenPlan]:
    """Yield each pair that is a double or makes five or ten, then the others."""
    groups = picture.groups
    if len(groups) < 3:
        return
    for one, other in combinations(range(len(groups)), 2):
        pair = (groups[one], groups[other])
        if _go_together(*pair):
            rest = tuple(group for at, group in enumerate(groups) if at not in (one, other))
            sizes = [len(group) for group in rest]
            slug = f"{one + 1}-and-{other + 1}{picture.tag}"
            moves = hops(len(pair[0]), len(pair[1]), *sizes, kind=Kind.JOIN)
            yield slug, moves, (*pair, *rest)
            if len(rest) == 2:
                yield f"{slug}-two-pairs", _two_pairs(pair, (rest[0], rest[1])), (*pair, *rest)


def _go_together(one: Dots, other: Dots) -> bool:
    alike = len(one) == len(other) > 1
    return alike or len(one) + len(other) in (5, 10)


def _two_pairs(pair: tuple[Dots, Dots], rest: tuple[Dots, Dots]) -> Moves:
    """Return the moves that join both pairs, then what they make."""
    first, second, third, fourth = (len(group) for group in (*pair, *rest))
    return (
        (Kind.JOIN, first, PLUS, second),
        (Kind.JOIN, third, PLUS, fourth),
        (Kind.JOIN, first + second, PLUS, third + fourth),
    )
