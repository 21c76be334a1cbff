"""The units that decimals are counted in, and the step from so many of them to the number."""

from waysaid.ways.decimals.unit import made
from waysaid.ways.plan import OVER
from waysaid.ways.step import Kind, Step

UNITS = ("ones", "tenths", "hundredths", "thousandths")


def unit_name(places: int) -> str:
    """Return the slug of a unit: tenths for one place after the point."""
    return UNITS[places] if places < len(UNITS) else f"{places}-places"


def worth(units: int, places: int) -> Step:
    """Return the step from so many units to the number they are: 135 / 100 = 1.35."""
    return made(Kind.SCALE, (units, 0), OVER, (10**places, 0), (units, places))
