"""Every way there is, kind by kind; of two with the same steps the first keeps them."""

from waysaid.ways import (
    about,
    compare,
    decimals,
    fractions,
    from_below,
    images,
    long_times,
    percents,
    point_times,
    rounds,
    two_sides,
    with_a_point,
)
from waysaid.ways.maker import AnyMaker, AnySeenMaker
from waysaid.ways.whole import WHOLE

CATALOGUE: tuple[AnyMaker | AnySeenMaker, ...] = (
    *WHOLE,
    *rounds.MAKERS,
    *from_below.MAKERS,
    *long_times.MAKERS,
    *decimals.MAKERS,
    *point_times.MAKERS,
    *fractions.MAKERS,
    *with_a_point.MAKERS,
    *percents.MAKERS,
    *two_sides.MAKERS,
    *compare.MAKERS,
    *about.MAKERS,
    *images.MAKERS,
)
"""Every kind of problem, in the order in which its ways are tried."""


_BY_SHAPE = {
    kind: tuple(maker for maker in CATALOGUE if maker.shape is kind)
    for kind in {maker.shape for maker in CATALOGUE}
}


def makers_for(kind: type) -> tuple[AnyMaker | AnySeenMaker, ...]:
    """Return the makers for one shape of problem, in the order of the catalogue."""
    return _BY_SHAPE.get(kind, ())
