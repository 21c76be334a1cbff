"""Half and double, written as the problem's ways write them."""

from collections.abc import Iterator
from fractions import Fraction

from waysaid.hearing.meaning import Meaning
from waysaid.hearing.spoken import weights
from waysaid.hearing.spoken.frame import Frame, Quantity
from waysaid.hearing.spoken.state import State
from waysaid.hearing.spoken.world import World
from waysaid.number import Claim, Compare, Sign

HALF = Fraction(1, 2)
"""Among whole numbers rather an act than a number: cut it in half; three is half of six."""


def by_two(halved: bool, left: Quantity, world: World) -> Frame:
    """Return half or double of a number: 72 / 2; 6 + 6 in a sum, 8 x 2 in a product.

    The top and the bottom of a fraction compared are multiplied, too.
    """
    two = Quantity(2, left.span)
    if halved:
        return Frame(left=left, sign=Sign.OVER, right=two)
    if world.groups or isinstance(world.facts.problem, Compare | Claim):
        return Frame(left=left, sign=Sign.TIMES, right=two)
    return Frame(left=left, sign=Sign.PLUS, right=left)


def unnamed(state: State, world: World, span: tuple[int, int]) -> Iterator[tuple[Quantity, int]]:
    """Yield what half or double is of where nobody named it, and how odd that is.

    It is what stands, or a number of the problem.
    """
    if state.standing is not None:
        yield Quantity(state.standing.leaf, span, said=False), 0
    for one in dict.fromkeys(world.facts.written):
        yield Quantity(one, span, said=False), weights.BASE


def scaled_by_two(frame: Frame) -> Meaning | None:
    """Return the verb that doubles or halves, for the next number too: the three and the four."""
    left, right = frame.left, frame.right
    if left is None or right is None or frame.result is not None:
        return None
    if frame.sign is Sign.OVER and right.leaf == 2:
        return Meaning.HALF
    doubled = frame.sign is Sign.PLUS and left == right
    return Meaning.DOUBLE if doubled or (frame.sign is Sign.TIMES and right.leaf == 2) else None
