"""A problem with a number below zero, turned to one without: -3 + 5 as 5 - 3, 5 - (-3) as 5 + 3.

What it is turned to is worked in the first way of each family of whole numbers.
"""

from collections.abc import Callable, Iterator

from waysaid.number import Equation, Operation, Sign
from waysaid.ways.from_below.shape import ByBelow, FromBelow, GroupsBelow
from waysaid.ways.maker import AnyMaker, Maker
from waysaid.ways.plan import MINUS, PLUS, TIMES, Moves, Plan
from waysaid.ways.shape import Shape, shapes
from waysaid.ways.step import Kind, Step
from waysaid.ways.way import Family
from waysaid.ways.whole import WHOLE

LEFT_OUT = frozenset({Family.COLUMN, Family.THINK_ADD})
"""Families that a child would not go on with after turning a problem; our choice."""
ROUND = "turned-round"
"""How the slugs start of ways that take the number below zero from the other."""
_Turned = tuple[str, Moves, Operation, Moves]
"""A slug, the steps before, the problem without a number below zero, and the steps after."""


def _by_below(problem: ByBelow) -> Iterator[_Turned]:
    """Yield 5 - (-3) as 5 + 3 and 5 + (-3) as 5 - 3, where the start is above zero."""
    new = _opposite(problem)
    if problem.left > 0:
        yield "opposite", (_said(problem, new),), new, ()


def below_first(problem: ByBelow) -> FromBelow | None:
    """Return -2 + (-4) as what it is, -2 - 4; None where the start is above zero."""
    return (
        FromBelow(-problem.left, _other(problem.sign), -problem.right) if problem.left < 0 else None
    )


def said_first(problem: ByBelow) -> Step:
    """Return the step that says so: -2 + (-4) = -2 - 4."""
    return _said(problem, _opposite(problem))


def _opposite(problem: ByBelow) -> Operation:
    return Operation(_other(problem.sign), problem.left, -problem.right)


def _other(sign: Sign) -> Sign:
    return MINUS if sign is PLUS else PLUS


def _said(problem: ByBelow | FromBelow | GroupsBelow, new: Operation) -> Step:
    if isinstance(problem, FromBelow):
        old = Operation(problem.sign, -problem.start, problem.change)
    else:
        old = Operation(problem.sign, problem.left, problem.right)
    return Step(Kind.SPLIT, Equation(old, new))


def _from_below(problem: FromBelow) -> Iterator[_Turned]:
    """Yield -3 + 5 as 5 - 3; -3 - 4 as 3 + 4, and -7 + 5 as 7 - 5, that far below zero."""
    start, change = problem.start, problem.change
    if problem.sign is PLUS and change > start:
        new = Operation(MINUS, change, start)
        yield ROUND, (_said(problem, new),), new, ()
    elif problem.sign is MINUS or change < start:
        new = Operation(_other(problem.sign), start, change)
        far = start + change if problem.sign is MINUS else start - change
        yield "as-far-below", (), new, ((Kind.TAKE, 0, MINUS, far),)


def _groups_below(problem: GroupsBelow) -> Iterator[_Turned]:
    """Yield -3 x 2 as 3 x 2, that far below zero; -3 x (-2) as 3 x 2."""
    left, sign, right = problem.left, problem.sign, problem.right
    new = Operation(sign, abs(left), abs(right))
    if (left < 0) == (right < 0):
        yield "both-opposite", (_said(problem, new),), new, ()
    else:
        size = abs(left * right) if sign is TIMES else abs(left // right)
        yield "as-far-below", (), new, ((Kind.TAKE, 0, MINUS, size),)


def _plans(
    maker: AnyMaker, turned: Callable[..., Iterator[_Turned]]
) -> Callable[..., Iterator[Plan]]:
    def plans(problem: FromBelow | ByBelow | GroupsBelow) -> Iterator[Plan]:
        """Yield the first way of the family, with what is said before and after."""
        for slug, before, new, after in turned(problem):
            for shape in _shapes(new, maker):
                for variant, moves in maker.of(shape):
                    yield f"{slug}-{variant}", (*before, *moves, *after)
                    break

    return plans


def _shapes(new: Operation, maker: AnyMaker) -> tuple[Shape, ...]:
    return tuple(shape for shape in shapes(new) if isinstance(shape, maker.shape))


def _family(maker: AnyMaker) -> Family:
    """Return the family: of a fact simply known, the thought is that it was turned to it."""
    return Family.RENAME if maker.family is Family.KNOWN_FACT else maker.family


_TURNS: tuple[tuple[type, Callable[..., Iterator[_Turned]]], ...] = (
    (FromBelow, _from_below),
    (ByBelow, _by_below),
    (GroupsBelow, _groups_below),
)
MAKERS: tuple[AnyMaker, ...] = tuple(
    Maker(_family(maker), shape, _plans(maker, turned))
    for shape, turned in _TURNS
    for maker in WHOLE
    if maker.family not in LEFT_OUT
)
