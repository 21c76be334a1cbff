"""A string under the teacher's hand: what it leaves wanting, what a change costs, the rest anew."""

from dataclasses import dataclass, replace

from waysaid.number import Problem
from waysaid.strings.compose import Composed, compose, pool_for, topic_of
from waysaid.strings.pool import Pool
from waysaid.strings.reasons import reasons
from waysaid.strings.wanting import EASY, Row, rows_of
from waysaid.strings.wish import Wish

MOST_NODES_OF_A_TAP = 4_000
"""The nodes that are searched for an answer to a tap: about a tenth of a second. Our choice."""


@dataclass(frozen=True, slots=True)
class Cost:
    """What a string leaves wanting more (less, below zero) than another, whole and by row.

    In tenths of effort; rows that stay the same are left out.
    """

    wanting: int
    rows: tuple[tuple[Row, int], ...]


def weigh(wish: Wish, problems: tuple[Problem, ...]) -> dict[Row, int]:
    """Return what a string leaves wanting for a wish, by each row of the table.

    Raises `WishError` for a problem that no string can hold.
    """
    found, places = _in_pool(wish, problems)
    return rows_of(found, places, EASY[wish.grade])


def why_now(wish: Wish, problems: tuple[Problem, ...]) -> tuple[str, ...]:
    """Return why each problem of a string stands where it does: a sentence each.

    Raises `WishError` for a problem that no string can hold.
    """
    if not problems:
        return ()
    found, places = _in_pool(wish, problems)
    chosen = [found.candidates[place] for place in places]
    return reasons(chosen, found.met(places), wish.focus, wish.language)


def _in_pool(wish: Wish, problems: tuple[Problem, ...]) -> tuple[Pool, list[int]]:
    """Return a pool that has these problems, and their places in it."""
    held = replace(wish, length=None, minutes=None, musts=(), kept=tuple(enumerate(problems)))
    found = pool_for(held, topic_of(replace(wish, musts=problems)))
    return found, [found.places[problem] for problem in problems]


def cost(wish: Wish, before: tuple[Problem, ...], after: tuple[Problem, ...]) -> Cost:
    """Return what it costs to have one string in the place of another.

    Raises `WishError` for a problem that no string can hold.
    """
    had, has = weigh(wish, before), weigh(wish, after)
    rows = tuple((row, has[row] - had[row]) for row in Row if has[row] != had[row])
    return Cost(sum(has.values()) - sum(had.values()), rows)


def recompose(
    wish: Wish,
    problems: tuple[Problem, ...],
    kept: frozenset[int],
    most_nodes: int = MOST_NODES_OF_A_TAP,
) -> Composed:
    """Return the best string that has the problems at these places (from 0) as they are.

    Raises `WishError` where no string can.
    """
    held = tuple((at, problem) for at, problem in enumerate(problems) if at in kept)
    musts = tuple(must for must in wish.musts if must not in dict(held).values())
    return compose(replace(wish, length=len(problems), musts=musts, kept=held), most_nodes)
