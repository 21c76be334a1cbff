"""Half and double, written as the problem's ways write them."""

from collections.abc import Iterator

from waysaid.hearing.meaning import Meaning
from waysaid.hearing.spoken.change import replace
from waysaid.hearing.spoken.frame import Frame, Quantity
from waysaid.hearing.spoken.world import World
from waysaid.number import Sign


def twos(halved: bool, left: Quantity, world: World) -> Iterator[Frame]:
    """Yield half or double of a number: 72 / 2; 6 + 6 in a sum, 8 x 2 in a product."""
    two = Quantity(2, left.span)
    if halved:
        yield Frame(left=left, sign=Sign.OVER, right=two)
    elif world.groups:
        yield Frame(left=left, sign=Sign.TIMES, right=two)
    else:
        yield Frame(left=left, sign=Sign.PLUS, right=replace(left))


def scaled_by_two(frame: Frame) -> Meaning | None:
    """Return the verb that doubles or halves, for the next number too: the three and the four."""
    left, right = frame.left, frame.right
    if left is None or right is None or frame.result is not None:
        return None
    if frame.sign is Sign.OVER and right.leaf == 2:
        return Meaning.HALF
    doubled = frame.sign is Sign.PLUS and left == right
    return Meaning.DOUBLE if doubled or (frame.sign is Sign.TIMES and right.leaf == 2) else None
