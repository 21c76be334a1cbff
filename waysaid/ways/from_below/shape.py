"""What a problem with a number below zero is about: `-3 + 5`, `-3 - 4`, `5 - (-3)`, `-3 x 2`."""

from dataclasses import dataclass

from waysaid.number import Problem, Sign
from waysaid.ways.plan import MINUS, OVER, PLUS, TIMES
from waysaid.ways.shape import to_do

ADDED = (PLUS, MINUS)


@dataclass(frozen=True, slots=True)
class FromBelow:
    """A number `start` below zero, so many more or fewer: -3 + 5, -3 - 4; both above 0 here."""

    start: int
    sign: Sign
    change: int


@dataclass(frozen=True, slots=True)
class ByBelow:
    """A number more or less by one that is below zero: 5 - (-3), -2 + (-4); the first is not 0."""

    left: int
    sign: Sign
    right: int


@dataclass(frozen=True, slots=True)
class GroupsBelow:
    """A product, or a quotient without remainder, where a number is below zero and none is 0."""

    left: int
    sign: Sign
    right: int


@dataclass(frozen=True, slots=True)
class StaysBelow:
    """A problem where nothing has to be worked: -3 + 0, -3 x 1, 0 - (-3) and the like."""

    left: int
    sign: Sign
    right: int


BelowShape = FromBelow | ByBelow | GroupsBelow | StaysBelow


def shapes_of(problem: Problem) -> tuple[BelowShape, ...]:
    """Return the shape of two whole numbers one of which is below zero; none for any other."""
    asked = to_do(problem)
    if asked is None:
        return ()
    left, sign, right = asked.left, asked.sign, asked.right
    if type(left) is not int or type(right) is not int or min(left, right) >= 0:
        return ()
    if sign in ADDED:
        return (_added(left, sign, right),)
    return _grouped(left, sign, right) if sign in (TIMES, OVER) else ()


def _added(left: int, sign: Sign, right: int) -> BelowShape:
    if not right or (not left and sign is PLUS):
        return StaysBelow(left, sign, right)
    if right < 0:
        return ByBelow(left, sign, right) if left else StaysBelow(left, sign, right)
    return FromBelow(-left, sign, right)


def _grouped(left: int, sign: Sign, right: int) -> tuple[BelowShape, ...]:
    if sign is OVER and (not right or left % right):
        return ()
    plain = not left or not right or right == 1 or (left == 1 and sign is TIMES)
    return ((StaysBelow if plain else GroupsBelow)(left, sign, right),)
