"""What is told of a picture by what it lacks: three empty places, one missing."""

from collections.abc import Iterator

from waysaid.hearing.spoken.change import replace
from waysaid.hearing.spoken.frame import Frame, Quantity, Slot
from waysaid.hearing.spoken.item import Item
from waysaid.hearing.spoken.state import State
from waysaid.hearing.spoken.world import World
from waysaid.number import Image, ImageKind, Sign


def lacked(state: State, item: Item, world: World) -> Iterator[State]:
    """Take a number before or behind as what is not there: of a frame's places, or what stands."""
    yield state
    if not isinstance(world.facts.problem, Image):
        return
    frame = state.frame
    start = _full(state, item, world.facts.problem)
    if frame.bare is not None:
        yield state.framed(Frame(left=start, sign=Sign.MINUS, right=frame.left))
    elif frame.paired and frame.sign is Sign.PLUS and frame.result is None:
        yield state.framed(replace(frame, sign=Sign.MINUS))
    elif frame.empty:
        yield state.framed(Frame(left=start, sign=Sign.MINUS, wants=Slot.RIGHT), 1)


def _full(state: State, item: Item, image: Image) -> Quantity | None:
    """Return how many dots a full frame has, where nothing was worked out yet."""
    if state.drafts or image.kind not in (ImageKind.FRAME, ImageKind.PAIRS):
        return None
    return Quantity(image.numbers[0], item.span, said=False)
