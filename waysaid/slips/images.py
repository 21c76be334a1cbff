"""Quick images: a dot skipped or counted twice, a group missed, the empty places counted."""

from collections.abc import Iterator

from waysaid.number import Equation, Image, ImageKind, Problem, Sign
from waysaid.slips.slip import OUR_GUESS, Likely, Made, Rule, SlipName
from waysaid.slips.work import added, ended, one_step

_ROW = 5
_TEN = 10
_IN_FRAMES = (ImageKind.FRAME, ImageKind.PAIRS)
_FRAMES = (ImageKind.FRAME, ImageKind.PAIRS)


def image_of(problem: Problem) -> Image | None:
    """Return a quick image."""
    return problem if isinstance(problem, Image) else None


def one_to_one(image: Image) -> Iterator[Made]:
    """Skip a dot, or count one twice."""
    for wrong in (image.count - 1, image.count + 1):
        if wrong > 0:
            yield one_step(wrong - 1, Sign.PLUS, 1, wrong)


def _frames(image: Image) -> tuple[int, ...]:
    """Return the dots in each frame of ten: 14 fill one and put four in the next."""
    first, *rest = image.numbers[1:]
    return (first, *rest) if rest or first <= _TEN else (_TEN, first - _TEN)


def _groups(image: Image) -> Iterator[tuple[int, ...]]:
    """Yield the groups that stand out: dice, frames of ten, fives or pairs in the frames."""
    if image.kind is ImageKind.DICE:
        yield image.numbers
    if image.kind in _IN_FRAMES:
        frames = _frames(image)
        yield frames
        size = 2 if image.kind is ImageKind.PAIRS else _ROW
        shares = [divmod(filled, size) for filled in frames]
        yield tuple(group for many, over in shares for group in (*(size,) * many, over) if group)


def group_missed(image: Image) -> Iterator[Made]:
    """Leave a group out: a die, a row of five, a pair, a ten."""
    for groups in _groups(image):
        for at in range(len(groups)):
            kept = tuple(group for group in groups[:at] + groups[at + 1 :] if group)
            if kept:
                yield ended(sum(kept), Equation(added(kept), sum(kept)))


def group_off(image: Image) -> Iterator[Made]:
    """Count a row or a column too few or too many."""
    if image.kind is ImageKind.ARRAY:
        rows, columns = image.numbers
        for groups, size in ((rows, columns), (columns, rows)):
            for off in (-1, 1):
                if groups + off > 0:
                    yield one_step(groups + off, Sign.TIMES, size, (groups + off) * size)


def sides_added(image: Image) -> Iterator[Made]:
    """Add rows and columns instead of multiplying."""
    if image.kind is ImageKind.ARRAY:
        rows, columns = image.numbers
        yield one_step(rows, Sign.PLUS, columns, rows + columns)


def empty_counted(image: Image) -> Iterator[Made]:
    """Count the empty places of a frame, or of all."""
    if image.kind in _IN_FRAMES:
        size, filled = image.numbers[0], image.count
        pairs = [(size, filled), *((_TEN, frame) for frame in _frames(image))]
        for places, dots in pairs:
            if places > dots:
                yield one_step(places, Sign.MINUS, dots, places - dots)


def frame_full(image: Image) -> Iterator[Made]:
    """Say the places of the frame instead of its dots."""
    if image.kind in _IN_FRAMES:
        yield ended(image.numbers[0], Equation(image.numbers[0], image.numbers[0]))


IMAGES: tuple[Rule[Image], ...] = (
    Rule(SlipName.ONE_TO_ONE, one_to_one, Likely.OFTEN, OUR_GUESS),
    Rule(SlipName.GROUP_MISSED, group_missed, Likely.SOMETIMES, OUR_GUESS),
    Rule(SlipName.GROUP_OFF, group_off, Likely.SOMETIMES, OUR_GUESS),
    Rule(SlipName.EMPTY_COUNTED, empty_counted, Likely.SOMETIMES, OUR_GUESS),
    Rule(SlipName.SIDES_ADDED, sides_added, Likely.RARE, OUR_GUESS),
    Rule(SlipName.FRAME_FULL, frame_full, Likely.RARE, OUR_GUESS),
)
