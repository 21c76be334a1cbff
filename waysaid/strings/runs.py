"""Runs of problems in which each leads to the next in one way."""

from collections.abc import Iterator, Sequence

SHORTEST = 3
"""A pattern is one rule through three problems or more (the design's definition)."""


def runs(steps: Sequence[object]) -> Iterator[range]:
    """Yield the problems of each longest run of equal steps, as a range of their indexes.

    `steps[i]` leads from problem i to the next; None is no step. A run has `SHORTEST` problems or
    more.
    """
    start = 0
    for at in range(1, len(steps) + 1):
        if at == len(steps) or steps[at] != steps[start]:
            if steps[start] is not None and at - start + 1 >= SHORTEST:
                yield range(start, at + 1)
            start = at
