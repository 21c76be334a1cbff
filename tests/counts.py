"""How many cases a test tries in this run.

The environment variable WAYSAID_COUNTS chooses the size: quick, test (the default) or sweep.
"""

import os
from enum import Enum


class Size(Enum):
    """The three sizes of a run."""

    QUICK = "quick"
    TEST = "test"
    SWEEP = "sweep"


def size() -> Size:
    """Return the size of this run; raise ValueError for a word that is none of the three."""
    word = os.environ.get("WAYSAID_COUNTS") or Size.TEST.value
    try:
        return Size(word)
    except ValueError:
        accepted = ", ".join(one.value for one in Size)
        raise ValueError(f"WAYSAID_COUNTS is {word!r}; it takes one of {accepted}.") from None


def count(*, test: int, sweep: int) -> int:
    """Return how many cases to try: a tenth of `test` (at least 1) when quick."""
    match size():
        case Size.QUICK:
            return max(1, test // 10)
        case Size.TEST:
            return test
        case Size.SWEEP:
            return sweep
