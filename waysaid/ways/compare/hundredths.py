"""Both numbers ten, a hundred or a thousand times as large, so that they are whole."""

from collections.abc import Iterator

from waysaid.number import Form, Sign, Written, has_form
from waysaid.ways.compare.shape import Two
from waysaid.ways.plan import Plan
from waysaid.ways.step import Kind, worked


def plans(two: Two) -> Iterator[Plan]:
    """Yield both scaled alike: 0.65 x 100 = 65 and 0.7 x 100 = 70."""
    if not all(has_form(one, Form.DECIMAL) for one in two.both):
        return
    places = max(one.size for one in two.both if isinstance(one, Written))
    by = 10**places
    yield "times-the-same", tuple(worked(Kind.SCALE, Sign.TIMES, one, by) for one in two.both)
