"""Quick images: a dot skipped or counted twice, a group missed, the empty places counted."""

from collections.abc import Iterator

from waysaid.number import Equation, Image, ImageKind, Problem, Sign
from waysaid.slips.slip import OUR_GUESS, Likely, Made, Rule, SlipName
from waysaid.slips.work import added, ended, one_step

_ROW = 5
_FRAMES = (ImageKind.FRAME, ImageKind.PAIRS)


def image_of(problem: Problem) -> Image | None:
    """Return a quick image."""
    return problem if isinstance(problem, Image) else None


def one_to_one(image: Image) -> Iterator[Made]:
    """Skip a dot, or count one twice."""
    for wrong in (image.count - 1, image.count + 1):
        if wrong > 0:
            yield one_step(wrong - 1, Sign.PLUS, 1, wrong)


def _groups(image: Image) -> tuple[int, ...]:
    """Return the groups that stand out: the dice, two frames, the fives of a frame and the rest."""
    if image.kind is ImageKind.DICE:
        return image.numbers
    if image.kind in _FRAMES and len(image.numbers) > 2:
        return image.numbers[1:]
    if image.kind is ImageKind.FRAME:
        fives, rest = divmod(image.count, _ROW)
        return (_ROW,) * fives + ((rest,) if rest else ())
    return ()


def group_missed(image: Image) -> Iterator[Made]:
    """Leave a group out: a die, a row of five, a ten."""
    groups = _groups(image)
    for at in range(len(groups)):
        kept = groups[:at] + groups[at + 1 :]
        if kept:
            yield ended(sum(kept), Equation(added(kept), sum(kept)))
    if image.kind in _FRAMES and len(image.numbers) == 2 and image.count > 10:
        for wrong in (10, image.count - 10):
            yield ended(wrong, Equation(wrong, wrong))


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
    """Count the empty places of a frame."""
    if image.kind in _FRAMES:
        size, filled = image.numbers[0], image.count
        yield one_step(size, Sign.MINUS, filled, size - filled)
        if size == 20 and filled < 10:
            yield one_step(10, Sign.MINUS, filled, 10 - filled)


def frame_full(image: Image) -> Iterator[Made]:
    """Say the places of the frame instead of its dots."""
    if image.kind in _FRAMES:
        yield ended(image.numbers[0], Equation(image.numbers[0], image.numbers[0]))


IMAGES: tuple[Rule[Image], ...] = (
    Rule(SlipName.ONE_TO_ONE, one_to_one, Likely.OFTEN, OUR_GUESS),
    Rule(SlipName.GROUP_MISSED, group_missed, Likely.SOMETIMES, OUR_GUESS),
    Rule(SlipName.GROUP_OFF, group_off, Likely.SOMETIMES, OUR_GUESS),
    Rule(SlipName.EMPTY_COUNTED, empty_counted, Likely.SOMETIMES, OUR_GUESS),
    Rule(SlipName.WRONG_OPERATION, sides_added, Likely.RARE, OUR_GUESS),
    Rule(SlipName.FRAME_FULL, frame_full, Likely.RARE, OUR_GUESS),
)
