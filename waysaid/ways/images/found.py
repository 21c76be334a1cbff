"""The groups behind what was said of a picture, found again from the steps alone.

Only what is put together counts, not what it is said to make: a child who saw 4 and 3 and said 8
saw the same groups as one who said 7. Where several groupings fit, the teacher knows which.
"""

from collections.abc import Iterator
from functools import lru_cache
from itertools import chain

from waysaid.number import Blank, Equation, Expression, Image, Number, Operation, Sign, layout_of
from waysaid.ways.explore import ways
from waysaid.ways.images import MAKERS, shapes_of
from waysaid.ways.images.groupings import Seen, groupings
from waysaid.ways.images.shape import Grid
from waysaid.ways.step import Step, step

_Term = Sign | Number | Blank | None
_Side = tuple[_Term, ...]
_Pattern = tuple[_Side, ...]
_BEFORE = None
"""Stands for the result of an earlier step."""
MOST_OFFERED = 4
"""How many groupings a teacher is asked to choose between: our choice, what one glance takes in."""


@lru_cache(maxsize=512)
def groups_seen(image: Image, steps: tuple[Step, ...]) -> Seen | None:
    """Return the groups of the least way with these steps, whatever they are said to make.

    Groups are of dots, and of empty places behind them; None where no way goes like that.
    """
    return next(iter(groups_fitting(image, steps)), None)


@lru_cache(maxsize=512)
def groups_fitting(image: Image, steps: tuple[Step, ...]) -> tuple[Seen, ...]:
    """Return the different groupings that fit what was said, `MOST_OFFERED` at most.

    That of the least way comes first, then those of other ways that go like this, then those with
    the two numbers of a sum or a product the other way round, then any with groups as large as the
    numbers put together.
    """
    if not steps:
        return ()
    said = _pattern(steps)
    found: dict[frozenset[frozenset[int]], Seen] = {}
    for seen in _fitting(image, said):
        found.setdefault(frozenset(frozenset(group) for group in seen), seen)
    return tuple(found.values())[:MOST_OFFERED]


def can_be_seen(image: Image, seen: Seen) -> bool:
    """Tell whether these are groups of the picture: none empty, none twice, of its own places."""
    places = len(layout_of(image).places)
    return (
        0 < len(seen) <= places
        and len({frozenset(group) for group in seen}) == len(seen)
        and all(0 < len(group) == len(set(group)) for group in seen)
        and all(0 <= dot < places for dot in chain.from_iterable(seen))
    )


def _fitting(image: Image, said: _Pattern) -> Iterator[Seen]:
    known = _known(image)
    yield from (way.seen for way in ways(image) if _pattern(way.steps) == said)
    yield from (seen for pattern, seen in known if pattern == said)
    turned = _turned(said)
    yield from (seen for pattern, seen in known if _turned(pattern) == turned)
    sizes = _summed(said)
    if sizes is not None:
        every = (*groupings(image), *_lines(image), *(seen for _, seen in known))
        yield from (seen for seen in every if sorted(map(len, seen)) == sizes)


@lru_cache(maxsize=128)
def _known(image: Image) -> tuple[tuple[_Pattern, Seen], ...]:
    """Return what is put together in each way of a picture, two with the same steps both."""
    found = []
    for shape in shapes_of(image):
        for maker in MAKERS:
            for _, moves, seen in maker.of(shape):
                steps = [move if isinstance(move, Step) else step(*move) for move in moves]
                found.append((_pattern(steps), seen))
    return tuple(found)


def _lines(image: Image) -> Iterator[Seen]:
    """Yield the rows of an array, and its columns."""
    for shape in shapes_of(image):
        if isinstance(shape, Grid):
            yield shape.row_groups(*[1] * shape.rows)
            yield shape.column_groups(*[1] * shape.columns)


def _pattern(steps: tuple[Step, ...] | list[Step]) -> _Pattern:
    made: list[Expression] = []
    pattern = []
    for each in steps:
        equation: Equation = each.equation
        pattern.append(tuple(_terms(equation.left, made)))
        made.append(equation.right)
    return tuple(pattern)


def _terms(side: Expression, made: list[Expression]) -> list[_Term]:
    if isinstance(side, Operation):
        return [*_terms(side.left, made), side.sign, *_terms(side.right, made)]
    return [_BEFORE if side in made else side]


def _turned(pattern: _Pattern) -> _Pattern:
    """Return the same for a sum or a product of two numbers, whichever is said first."""
    return tuple(_smaller_first(side) for side in pattern)


def _smaller_first(side: _Side) -> _Side:
    if len(side) != 3 or side[1] not in (Sign.PLUS, Sign.TIMES):
        return side
    one, sign, other = side
    first, last = sorted((one, other), key=str)
    return first, sign, last


def _summed(pattern: _Pattern) -> list[int] | None:
    """Return the numbers put together from the least up; None where it is no sum of numbers."""
    numbers: list[int] = []
    for side in pattern:
        if len(side) < 3 or any(sign is not Sign.PLUS for sign in side[1::2]):
            return None
        for term in side[0::2]:
            if isinstance(term, int):
                numbers.append(term)
            elif term is not _BEFORE:
                return None
    return sorted(numbers)
