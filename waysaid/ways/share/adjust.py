"""Adjust: share by a friendly number, or share half, then scale back."""

from collections.abc import Iterator

from waysaid.ways.factor import bare, can_do, can_share
from waysaid.ways.plan import OVER, TIMES, Plan
from waysaid.ways.shape import Quotient
from waysaid.ways.step import Kind

INSTEAD = {5: (10, 2), 50: (100, 2), 25: (100, 4), 250: (1000, 4)}
"""What stands for a divisor, and by what the share is scaled back."""


def plans(problem: Quotient) -> Iterator[Plan]:
    """Yield / 5 as / 10 and doubled, and half of the number shared and then doubled."""
    whole, part = problem.whole, problem.part
    if part in INSTEAD:
        instead, back = INSTEAD[part]
        share = whole // instead
        if whole % instead == 0 and can_do(share, back):
            yield (
                f"as-{instead}",
                ((Kind.SCALE, whole, OVER, instead), (Kind.SCALE, share, TIMES, back)),
            )
    half, over = divmod(whole, 2)
    plain = half == part or 1 in (bare(part), bare(half))
    if not over and not plain and can_do(2, half) and can_share(half, part):
        halved = (Kind.SCALE, whole, OVER, 2)
        shared = (Kind.GROUP, half, OVER, part)
        yield "half-then-doubled", (halved, shared, (Kind.SCALE, half // part, TIMES, 2))
