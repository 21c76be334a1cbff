"""A wish in, the best string out, with the reason for each of its problems."""

from dataclasses import dataclass

from waysaid.number import Problem
from waysaid.strings.best import MOST_NODES, Asked, Best, best_string
from waysaid.strings.link import Link
from waysaid.strings.links import links
from waysaid.strings.pool import Pool, pool
from waysaid.strings.reasons import reasons
from waysaid.strings.wanting import EASY
from waysaid.strings.wish import Wish, check, nothing


@dataclass(frozen=True, slots=True)
class Composed:
    """A composed string.

    `why` has a sentence for each problem. `wanting` is what the string leaves wanting, in tenths
    of effort; `best_possible` whether it is proven that no string of the `candidates` leaves less;
    `nodes` how many beginnings were looked at for that.
    """

    problems: tuple[Problem, ...]
    why: tuple[str, ...]
    links: tuple[Link, ...]
    wanting: int
    best_possible: bool
    candidates: int
    nodes: int


def compose(wish: Wish, most_nodes: int = MOST_NODES) -> Composed:
    """Return the best string for a wish. Raises `WishError` where no string can meet it."""
    check(wish)
    found = pool(wish.grade, wish.focus, wish.musts, wish.lately)
    if sum(one.focus is not None for one in found.candidates) < wish.length:
        raise nothing(wish)
    asked = Asked(wish.length, EASY[wish.grade], _places(found, wish), most_nodes)
    best = best_string(found, asked, wish.seed)
    if not best.places:
        raise nothing(wish)
    return _composed(found, best, wish)


def _places(found: Pool, wish: Wish) -> tuple[int, ...]:
    places = [found.place(must) for must in dict.fromkeys(wish.musts)]
    return tuple(place for place in places if place is not None)


def _composed(found: Pool, best: Best, wish: Wish) -> Composed:
    chosen = tuple(found.candidates[place] for place in best.places)
    problems = tuple(one.plain.problem for one in chosen)
    return Composed(
        problems,
        reasons(chosen, found.met(best.places), wish.focus, wish.language),
        links(problems),
        best.wanting,
        best.proven,
        len(found.candidates),
        best.nodes,
    )
