"""In turn: from the first number, on and back with the others in the order they are written."""

from collections.abc import Iterator

from waysaid.ways.plan import Plan, hops
from waysaid.ways.shape import Several


def plans(problem: Several) -> Iterator[Plan]:
    """Yield the terms in turn, below zero only where the total is there too."""
    terms = problem.terms
    if sum(terms) < 0 or _stays_up(terms):
        yield "in-turn", hops(*terms)


def _stays_up(terms: tuple[int, ...]) -> bool:
    return all(sum(terms[: end + 1]) >= 0 for end in range(len(terms)))
