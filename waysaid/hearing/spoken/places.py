"""Tens said as digits: the five and the three is eight, of 54 + 32, are 50 + 30 = 80."""

from collections.abc import Iterator

from waysaid.hearing.reading import Part
from waysaid.hearing.spoken.change import replace
from waysaid.hearing.spoken.frame import HOPS, Frame, Quantity
from waysaid.hearing.spoken.state import State
from waysaid.hearing.spoken.world import World
from waysaid.number import Exact, Sign, exact

PLACES = (10, 100)
"""The places whose digits are told without their place: common practice, no source."""


def in_places(frame: Frame, standing: Quantity | None, world: World) -> Iterator[Frame]:
    """Yield a step of digits as the tens or hundreds that they stand for.

    The digits are those of the problem's two numbers at one place, in the problem's order in a
    difference; or what stands, as a digit, and the ten that was carried to it.
    """
    left, right = frame.left, frame.right
    if left is None or right is None or frame.sign not in HOPS:
        return
    if world.groups or len(world.facts.numbers) != 2 or not _digit(right):
        return
    said = (left.value, right.value)
    for place in PLACES:
        digits = digits_at(world, place)
        turned = digits[::-1] if frame.sign is Sign.PLUS else digits
        own = said in (digits, turned) and min(world.facts.numbers) >= place
        if own or (frame.sign is Sign.PLUS and said[1] == 1 and _carried(left, standing, place)):
            yield _moved(frame, place)


def in_other_places(state: State, said: Frame, moved: Frame) -> State:
    """Return the state with the parts of its last step unsaid that were moved to their place.

    Five and three were said of 50 + 30, and not fifty.
    """
    draft = state.drafts[-1]
    pairs = (
        (Part.LEFT, said.left, moved.left),
        (Part.RIGHT, said.right, moved.right),
        (Part.RESULT, said.result, moved.result),
    )
    changed = [part for part, one, other in pairs if one and other and one.leaf != other.leaf]
    parts = tuple(part for part in Part if part in changed or part in draft.open)
    return replace(state, drafts=(*state.drafts[:-1], replace(draft, open=parts)))


def _carried(left: Quantity, standing: Quantity | None, place: int) -> bool:
    """Tell whether a one added to a digit is a ten that was carried: eight and one, after 80."""
    if standing is None or standing.value is None or left.value is None:
        return False
    tens = standing.value % place == 0 and 0 < standing.value < 10 * place
    return tens and left.value in (standing.value, standing.value / place)


def _digit(number: Quantity) -> bool:
    return isinstance(number.leaf, int) and 0 < number.leaf < 10 and not number.many


def digits_at(world: World, place: int) -> tuple[Exact, ...]:
    """Return the digits of the problem's numbers at a place; none where one is not whole."""
    numbers = world.facts.numbers
    if not all(isinstance(one, int) for one in numbers):
        return ()
    return tuple(exact(int(one) // place % 10) for one in numbers)


def _moved(frame: Frame, place: int) -> Frame:
    assert frame.left is not None
    assert frame.right is not None
    result = frame.result and _times(frame.result, place)
    left, right = _times(frame.left, place), _times(frame.right, place)
    return replace(frame, left=left, right=right, result=result, by_digits=True)


def _times(number: Quantity, place: int) -> Quantity:
    """Return the number at its place; one already there stays."""
    leaf = number.leaf
    small = isinstance(leaf, int) and leaf < 2 * place
    return replace(number, leaf=leaf * place) if small else number  # type: ignore[operator]
