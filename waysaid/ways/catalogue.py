"""Every way there is, kind by kind; of two with the same steps the first keeps them."""

from waysaid.ways import about, compare, decimals, fractions, images, percents, rounds, two_sides
from waysaid.ways.maker import AnyMaker, AnySeenMaker
from waysaid.ways.whole import WHOLE

CATALOGUE: tuple[AnyMaker | AnySeenMaker, ...] = (
    *WHOLE,
    *rounds.MAKERS,
    *decimals.MAKERS,
    *fractions.MAKERS,
    *percents.MAKERS,
    *two_sides.MAKERS,
    *compare.MAKERS,
    *about.MAKERS,
    *images.MAKERS,
)
"""Every kind of problem, in the order in which its ways are tried."""
