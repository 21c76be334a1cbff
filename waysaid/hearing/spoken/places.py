"""Tens said as digits: the five and the three is eight, of 54 + 32, are 50 + 30 = 80."""

from collections.abc import Iterator

from waysaid.hearing.draft import Draft
from waysaid.hearing.reading import Part
from waysaid.hearing.spoken.change import replace
from waysaid.hearing.spoken.frame import HOPS, Frame, Quantity
from waysaid.hearing.spoken.state import State
from waysaid.hearing.spoken.world import World
from waysaid.number import Exact, Operation, Sign, exact, leaves

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


def as_digits(drafts: tuple[Draft, ...], alone: list[Exact | None]) -> tuple[Draft, ...]:
    """Return the steps, those told as digits as such where the work goes on with their digits.

    Of 27 + 35 `two and three is five, five and twelve` is 2 + 3 = 5, and no fifty; and so is four
    and three where the end is to write digits beside digits: seven and thirteen, 713. `alone` are
    the numbers said alone.
    """
    found = []
    for draft in drafts:
        digits = _digits_of(draft)
        kept = digits is not None and any(
            _joins(step, digits.stands, other.stands)
            or _beside(digits.stands, other.stands) in alone
            for other in drafts
            for step in drafts
        )
        found.append(digits if kept and digits is not None else draft)
    return tuple(found)


def _digits_of(draft: Draft) -> Draft | None:
    """Return a step of places as it was told, in digits; None where it was not told so."""
    left = draft.left
    if not draft.by_digits or not isinstance(left, Operation) or draft.result is None:
        return None
    numbers = (left.left, left.right, draft.result)
    whole = [one for one in numbers if isinstance(one, int)]
    place = next((one for one in PLACES[::-1] if all(part % one == 0 for part in whole)), 1)
    told = {Part.LEFT, Part.RIGHT, Part.RESULT} <= {*draft.open}
    if len(whole) < len(numbers) or place == 1 or not told:
        return None
    one, other, result = (number // place for number in whole)
    return replace(draft, left=Operation(left.sign, one, other), open=(), result=result)


def _joins(step: Draft, one: Exact | None, other: Exact | None) -> bool:
    """Tell whether a step puts a digit together with what another step came to."""
    return not step.by_digits and sorted(leaves(step.left), key=str) == sorted(
        (one, other), key=str
    )


def _beside(one: Exact | None, other: Exact | None) -> Exact | None:
    """Return the number that two whole ones make, written side by side; none that places make."""
    whole = isinstance(one, int) and isinstance(other, int) and other >= 10
    return int(f"{one}{other}") if whole else None


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
