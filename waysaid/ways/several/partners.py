"""Partners: reorder three or more numbers so that those that go together are paired."""

from collections.abc import Iterator
from itertools import combinations

from waysaid.ways.place import is_friendly
from waysaid.ways.plan import MINUS, PLUS, Move, Moves, Plan, hops
from waysaid.ways.shape import Several
from waysaid.ways.step import Kind

SMALL = 30
"""The largest total for which a child would start from the largest number; our choice."""
EASY = 20
"""The largest sum a child would make of the last two for no other reason; our choice."""
CLOSE = 10
"""How close a number taken is to one added for them to be paired; our choice."""


def plans(problem: Several) -> Iterator[Plan]:
    """Yield one pair and then the rest, two pairs, and the largest number first."""
    terms = problem.terms
    if sum(terms) < 0:
        return
    yield from _added_first(terms)
    for pair in combinations(range(len(terms)), 2):
        first, second = (terms[place] for place in pair)
        rest = [term for place, term in enumerate(terms) if place not in pair]
        if _go_together(first, second):
            yield from _pair_first(terms, pair, rest)
            if len(rest) == 2 and _go_together(*rest):
                yield from _two_pairs((first, second), (rest[0], rest[1]))
    if len(terms) == 3 and min(terms) > 0 and sum(terms[1:]) <= EASY:
        together = terms[1] + terms[2]
        yield "last-two-first", (_pair(terms[1], terms[2]), *_put_together(terms[0], together))
    largest_first = tuple(sorted(terms, reverse=True))
    if min(terms) > 0 and sum(terms) <= SMALL and largest_first != terms:
        yield "largest-first", hops(*largest_first)


def _added_first(terms: tuple[int, ...]) -> Iterator[Plan]:
    """Add what is added before anything is taken, where the order given would fall below zero."""
    added = [term for term in terms if term > 0]
    taken = [term for term in terms if term < 0]
    if any(sum(terms[:end]) < 0 for end in range(1, len(terms))):
        yield "added-first", hops(*added, *taken, kind=Kind.JOIN)


def _go_together(first: int, second: int) -> bool:
    """Tell whether two terms make a friendly number, a double, nothing, or next to nothing."""
    together = first + second
    if first > 0 and second > 0:
        both = is_friendly(first) and is_friendly(second)
        return first == second or together % (100 if both else 10) == 0
    if first < 0 and second < 0:
        return is_friendly(together)
    return together >= 0 and (is_friendly(together) or together <= CLOSE)


def _pair(first: int, second: int) -> Move:
    """Return the step that pairs two terms; what is taken twice is added up first."""
    if first < 0 < second:
        first, second = second, first
    if (first > 0) == (second > 0):
        return (Kind.JOIN, abs(first), PLUS, abs(second))
    return (Kind.TAKE, first, MINUS, -second)


def _pair_first(terms: tuple[int, ...], pair: tuple[int, ...], rest: list[int]) -> Iterator[Plan]:
    """Pair two, then the others: 14 + 8 + 6 as 14 + 6, 20 + 8; or where they stood: 2 + 10."""
    first, second = (terms[place] for place in pair)
    together = first + second
    slug = f"pair-{pair[0] + 1}-{pair[1] + 1}"
    made = _pair(first, second)
    if not together:
        yield slug, (made, (Kind.JOIN, rest[0], PLUS, 0), *_put_together(*rest))
        return
    if together >= 0 and all(together + sum(rest[:end]) >= 0 for end in range(1, len(rest) + 1)):
        yield slug, (made, *_put_together(together, *rest))
    if 0 not in pair or pair[1] != 1:
        earlier = [terms[place] for place in range(pair[1]) if place not in pair]
        later = [terms[place] for place in range(pair[1] + 1, len(terms))]
        running = [*earlier, together, *later]
        if running[0] > 0 and all(sum(running[:end]) >= 0 for end in range(2, len(running) + 1)):
            yield f"{slug}-in-place", (made, *_put_together(*running))


def _two_pairs(one: tuple[int, int], other: tuple[int, int]) -> Iterator[Plan]:
    sums = sum(one), sum(other)
    if min(sums) <= 0:
        return
    last = _put_together(*sums)
    yield "two-pairs", (_pair(*one), _pair(*other), *last)


def _put_together(start: int, *changes: int) -> Moves:
    return hops(start, *changes, kind=Kind.JOIN)
