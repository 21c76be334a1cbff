"""A wish in, the best string out, with the reason for each of its problems."""

from collections.abc import Callable, Iterator
from dataclasses import dataclass, replace
from functools import lru_cache

from waysaid.number import Problem
from waysaid.strings.best import MOST_NODES, Asked, Best, Idea, best_string
from waysaid.strings.bounds import Frame
from waysaid.strings.link import Link
from waysaid.strings.links import links
from waysaid.strings.look import look
from waysaid.strings.pool import Candidate, Pool, candidates_of, pool, pool_with, problems_in
from waysaid.strings.reasons import reasons
from waysaid.strings.topic import Topic, topics_of
from waysaid.strings.wanting import EASY, Row, rows_of
from waysaid.strings.wish import Wish, WishError, check, clash, no_answer, nothing, unlike
from waysaid.ways import Family, grades_of


@dataclass(frozen=True, slots=True)
class Composed:
    """A composed string.

    `why` has a sentence for each problem. `wanting` is what the string leaves wanting, in tenths
    of effort, and `rows` the same by each row of the table; `best_possible` whether it is proven
    that no string of the `candidates` leaves less; `nodes` how many beginnings were looked at for
    that. `idea` is the kind of link by which each problem after the first is met.
    """

    problems: tuple[Problem, ...]
    topic: Topic
    why: tuple[str, ...]
    links: tuple[Link, ...]
    wanting: int
    rows: tuple[tuple[Row, int], ...]
    best_possible: bool
    candidates: int
    nodes: int
    idea: Idea


def compose(
    wish: Wish, most_nodes: int = MOST_NODES, ideas: frozenset[Idea] = frozenset()
) -> Composed:
    """Return the best string for a wish, of none of the `ideas` that are taken.

    Raises `WishError` where no string can meet it.
    """
    check(wish)
    topic = topic_of(wish)
    found = pool_for(wish, topic)
    best = _best(found, wish, most_nodes, ideas)
    if not best.places:
        raise _clash(found, wish)
    chosen = tuple(found.candidates[place] for place in best.places)
    problems = tuple(one.problem for one in chosen)
    met = found.met(best.places)
    return Composed(
        problems,
        topic,
        reasons(chosen, met, wish.focus, wish.language),
        links(problems),
        best.wanting,
        tuple(rows_of(found, best.places, EASY[wish.grade]).items()),
        best.proven,
        len(found.candidates),
        best.nodes,
        tuple(None if help_ is None else help_.kind for help_ in met[1:]),
    )


def alternatives(wish: Wish, many: int, most_nodes: int = MOST_NODES) -> tuple[Composed, ...]:
    """Return the best string, and the best that differ in idea from those before it.

    No two of them have one idea, or a problem in common but for those wished for by name; there are
    fewer than `many` where the wish allows no more. Raises `WishError` where it allows none.
    """
    found = [compose(wish, most_nodes)]
    named = set(_named(wish))
    while len(found) < many:
        used = {problem for one in found for problem in one.problems} - named
        try:
            ideas = frozenset(one.idea for one in found)
            other = replace(wish, lately=wish.lately | used)
            found.append(compose(other, most_nodes, ideas))
        except WishError:
            break
    return tuple(found)


def topic_of(wish: Wish) -> Topic:
    """Return what the string is about: the first topic that has what must be in it.

    Raises `WishError` where the grade has too few problems for the family.
    """
    topics = topics_of(wish.focus) if wish.topic is None else (wish.topic,)
    fit = [one for one in topics if composable(wish.grade, one, wish.focus, wish.many)]
    if not fit:
        raise nothing(wish)
    holding = [one for one in fit if set(wish.musts) <= set(problems_in(wish.grade, one))]
    return (holding or fit)[0]


@lru_cache(maxsize=512)
def composable(grade: int, topic: Topic, family: Family, length: int) -> bool:
    """Tell whether a grade has problems enough of a topic that the family has ways for."""
    suit = 0
    for problem in problems_in(grade, topic):
        suit += family in look(problem).families
        if suit == length:
            return True
    return False


def pool_for(wish: Wish, topic: Topic) -> Pool:
    """Return the pool of a wish, with the problems it names. Raises `WishError` for one unfit."""
    found = pool(wish.grade, topic, wish.focus)
    more = tuple(problem for problem in _named(wish) if problem not in found.places)
    forms = {one.shape.key.form for one in found.candidates}
    for problem in more:
        made = candidates_of((problem,), wish.focus)
        if not made or _too_low(made[0], wish.grade):
            raise no_answer(wish, problem)
        if problem in wish.musts and made[0].shape.key.form not in forms:
            raise unlike(wish, problem, topic)
    return pool_with(wish.grade, topic, wish.focus, more) if more else found


def _too_low(one: Candidate, grade: int) -> bool:
    """Tell whether an answer is below zero in a grade that has no such numbers yet."""
    answer = one.shape.answer
    return answer is not None and answer < 0 and grade < grades_of(one.problem).first


def _named(wish: Wish) -> tuple[Problem, ...]:
    """Return the problems that a wish names, each once."""
    return tuple(dict.fromkeys((*wish.musts, *(problem for _, problem in wish.kept))))


def _best(found: Pool, wish: Wish, most_nodes: int, ideas: frozenset[Idea]) -> Best:
    places = found.places
    frame = Frame(
        wish.many,
        EASY[wish.grade],
        tuple(places[must] for must in dict.fromkeys(wish.musts)),
        tuple((at, places[problem]) for at, problem in wish.kept),
        wish.surprise,
        frozenset(_outside(found, wish)),
    )
    barred = frozenset(places[problem] for problem in wish.lately if problem in places)
    return best_string(found, Asked(frame, barred, ideas, most_nodes), wish.seed)


def _outside(found: Pool, wish: Wish) -> Iterator[int]:
    """Yield the candidates that are outside what the string is about, but for those named."""
    if wish.within is None and not wish.line:
        return
    named = _named(wish)
    for place, one in enumerate(found.candidates):
        largest = max(*one.shape.numbers, one.shape.answer or 0)
        above = wish.within is not None and largest > wish.within
        if ((wish.line and one.focus is None) or above) and one.problem not in named:
            yield place


_WITHOUT: dict[str, Callable[[Wish], Wish]] = {
    "surprise": lambda wish: replace(wish, surprise=False),
    "lately": lambda wish: replace(wish, lately=frozenset()),
    "within": lambda wish: replace(wish, within=None),
    "musts": lambda wish: replace(wish, musts=()),
    "kept": lambda wish: replace(wish, kept=()),
}
"""How a wish is without one of its parts, the smallest first. Our choice."""


def _clash(found: Pool, wish: Wish) -> WishError:
    """Return the error that names the fewest wishes that no string meets at once."""
    left, blamed = wish, []
    for name, without in _WITHOUT.items():
        fewer = without(left)
        if fewer == left:
            continue
        if _best(found, fewer, 0, frozenset()).places:
            blamed.append(name)
        else:
            left = fewer
    return clash(wish, tuple(blamed)) if blamed else nothing(wish)
