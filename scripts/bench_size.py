"""How much a measurement measures: all of it, or a handful of cases where WAYSAID_COUNTS is quick.

A handful shows that every part still runs and says what it should; its figures mean nothing, and
what it prints says so.
"""

import json
from collections.abc import Mapping
from typing import Any, TypeVar

from tests.counts import Size, size

SMALL = size() is Size.QUICK
"""Whether this run is of a handful of cases."""
_Count = TypeVar("_Count")


def sized(whole: _Count, small: _Count) -> _Count:
    """Return how many there are to be in this run."""
    return small if SMALL else whole


def tell(found: Mapping[str, Any]) -> None:
    """Print what was measured as one JSON object; that of a small run begins with `small_run`."""
    told = {"small_run": True, **found} if SMALL else found
    print(json.dumps(told, indent=2, ensure_ascii=False))
