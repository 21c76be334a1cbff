"""Both numbers written alike: the same unit, the same places, or both with a point."""

from collections.abc import Iterator
from math import lcm

from waysaid.number import Form, Number, Written, decimal, has_form, parts, percent, places_of
from waysaid.ways.compare.shape import Two, is_fraction, top_and_bottom
from waysaid.ways.plan import Plan
from waysaid.ways.step import Step, renamed

_LARGEST_UNIT = 100
"""The smallest parts a child would cut both into where larger ones would do; our choice."""
_MOST_PLACES = 3
"""Decimals to thousandths."""


def plans(two: Two) -> Iterator[Plan]:
    """Yield every way to write both alike that a child would."""
    yield from _common_unit(two)
    yield from _same_places(two)
    yield from _pointed(two)
    yield from _hundred(two)


def _common_unit(two: Two) -> Iterator[Plan]:
    if not any(is_fraction(one) for one in two.both):
        return
    bottoms = [top_and_bottom(one)[1] for one in two.both]
    units = {"common-unit": lcm(*bottoms)}
    if bottoms[0] != bottoms[1]:
        units["product-unit"] = bottoms[0] * bottoms[1]
    for slug, unit in units.items():
        if unit <= _LARGEST_UNIT or slug == "common-unit":
            yield from _renamed(slug, two, [parts(int(value * unit), unit) for value in two.values])


def _same_places(two: Two) -> Iterator[Plan]:
    """Yield both with as many places: 0.7 as 0.70."""
    if not all(has_form(one, Form.DECIMAL) or isinstance(one, int) for one in two.both):
        return
    sizes = [one.size if isinstance(one, Written) else 0 for one in two.both]
    yield from _renamed("same-places", two, [decimal(value, max(sizes)) for value in two.values])
    unit = 10 ** max(sizes)
    if unit > 1:
        yield from _renamed("as-parts", two, [parts(int(v * unit), unit) for v in two.values])


def _pointed(two: Two) -> Iterator[Plan]:
    """Yield fractions and percents as decimals."""
    if all(has_form(one, Form.DECIMAL) or isinstance(one, int) for one in two.both):
        return
    places = [places_of(value) for value in two.values]
    if all(size is not None and size <= _MOST_PLACES for size in places):
        yield from _renamed("with-a-point", two, [decimal(value) for value in two.values])


def _hundred(two: Two) -> Iterator[Plan]:
    """Yield both as percents, where one of them is a percent."""
    if any(has_form(one, Form.PERCENT) for one in two.both):
        yield from _renamed("as-percents", two, [percent(value) for value in two.values])


def _renamed(slug: str, two: Two, new: list[Number]) -> Iterator[Plan]:
    steps: list[Step] = [
        renamed(old, other) for old, other in zip(two.both, new, strict=True) if old != other
    ]
    if steps:
        yield slug, tuple(steps)
