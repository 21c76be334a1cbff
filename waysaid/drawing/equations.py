"""A way as equations: the lines, how they flow into rows, and the drawing."""

from collections.abc import Sequence

from waysaid.drawing.metrics import digit_height, text_width
from waysaid.drawing.scene import Scene
from waysaid.drawing.shape import Anchor, Label
from waysaid.drawing.telling import Frame, Picture, Telling
from waysaid.drawing.words import sentence, title_of
from waysaid.number import BLANK, Expression, Language, Operation, Print, sign_text, text
from waysaid.ways import Step

Rows = tuple[tuple[str, ...], ...]


def lines(telling: Telling, lang: Language = Language.EN) -> tuple[str, ...]:
    """Return the steps as people read them, one a line: true signs, unsaid parts left out.

    `+ 3 = 40` where nobody said what the 3 was added to, `40 + 22` where nobody said what it
    makes, `8` where only a result was said and `7 → 8` where no more than where from. A number
    left out between a sign and `=` shows as `_`, so that the line still reads. The language is that
    of the word in `15% of 80`.
    """
    told = enumerate(telling.steps)
    made = (line_of(step, telling.unsaid(place), lang) for place, step in told)
    return tuple(line for line in made if line)


def line_of(step: Step, unsaid: frozenset[str], lang: Language = Language.EN) -> str:
    """Return one step as people read it; the parts in `unsaid`, and blanks, are left out."""
    left, result = step.equation.left, step.equation.right
    before, made = _left(left, unsaid, lang), text(result, Print.TRUE, lang)
    if result is BLANK or "result" in unsaid:
        return before.removesuffix("_").rstrip(", ")
    if isinstance(left, Operation) and {"op", "right"} <= _missing(left, unsaid):
        before = before.removesuffix("_").rstrip(", ")
        return f"{before} → {made}" if before else made
    return f"{before} = {made}" if before else made


def _missing(side: Operation, unsaid: frozenset[str]) -> frozenset[str]:
    blank = {"left": side.left is BLANK, "right": side.right is BLANK}
    return unsaid | {part for part, empty in blank.items() if empty}


def _left(side: Expression, unsaid: frozenset[str], lang: Language) -> str:
    if not isinstance(side, Operation):
        return "" if side is BLANK or "left" in unsaid else text(side, Print.TRUE, lang)
    whole = text(side, Print.TRUE, lang)
    sign = sign_text(side.sign, Print.TRUE, lang)
    first, _, last = whole.rpartition(f" {sign} ")
    missing = _missing(side, unsaid)
    first = "" if "left" in missing else first
    last = "_" if "right" in missing else last
    if "op" in unsaid:
        return ", ".join(part for part in (first, last) if part)
    return " ".join(part for part in (first, sign, last) if part)


def row_pitch(size: int) -> int:
    """Return the distance from one baseline to the next, 1.2 em (our choice)."""
    return size * 6 // 5


def row_gap(size: int) -> int:
    """Return the gap between two equations that share a row, 1.1 em (our choice)."""
    return size * 11 // 10


def equation_rows(equations: Sequence[str], width: int, size: int) -> Rows:
    """Return the rows that `equations` flow into, each the pieces that stand in it.

    Short equations share a row, a wide gap between them, in the order told. One that is wider
    than a row is broken before `=`, and if that is not enough before its signs; a piece that
    cannot be broken stands alone, however wide.
    """
    rows: list[list[str]] = []
    room = -1
    for equation in equations:
        pieces = broken(equation, width, size)
        needs = text_width(pieces[0], size) + row_gap(size)
        if len(pieces) == 1 and rows and needs <= room:
            rows[-1].append(equation)
            room -= needs
            continue
        rows.extend([piece] for piece in pieces)
        room = width - text_width(pieces[0], size) if len(pieces) == 1 else -1
    return tuple(tuple(row) for row in rows)


def broken(equation: str, width: int, size: int) -> tuple[str, ...]:
    """Return an equation whole where it fits, else broken before `=` and then before signs."""
    if text_width(equation, size) <= width:
        return (equation,)
    left, equals, right = equation.rpartition(" = ")
    if equals and left:
        return (*broken(left, width, size), f"= {right}")
    for sign in (" + ", " − ", " × ", " ÷ ", " of ", " de "):
        left, found, right = equation.rpartition(sign)
        if found and left:
            return (*broken(left, width, size), f"{sign.strip()} {right}")
    return (equation,)


def rows_height(rows: Rows, size: int) -> int:
    """Return how high rows of this size stand, from the top of a digit to a little under."""
    if not rows:
        return 0
    return (len(rows) - 1) * row_pitch(size) + digit_height(size) + size // 4


def draw_equations(telling: Telling, frame: Frame, lang: Language) -> Scene:
    """Return the equations, one under another; the scene is as large as they need."""
    said = lines(telling, lang)
    size, rows = _chosen(said, frame)
    shapes: list[Label] = []
    wide = 0
    for place, row in enumerate(rows):
        x, y = 0, digit_height(size) + place * row_pitch(size)
        for piece in row:
            shapes.append(Label(x, y, size, Anchor.START, piece))
            wide = max(wide, x + text_width(piece, size))
            x += text_width(piece, size) + row_gap(size)
    title = title_of(Picture.EQUATIONS, telling.problem, lang)
    return Scene(wide, rows_height(rows, size), title, sentence(said, lang), tuple(shapes))


def _chosen(said: tuple[str, ...], frame: Frame) -> tuple[int, Rows]:
    """Return the size and the rows for the first room that holds them.

    A row for each equation where they fit, else flowing. On the board the size is the frame's; a
    thumbnail may shrink to show all.
    """
    least = frame.least if frame.thumbnail else frame.label
    for room in frame.rooms:
        for size in range(frame.label, least - 1, -1):
            for rows in (_one_each(said, room.width, size), equation_rows(said, room.width, size)):
                if rows_height(rows, size) <= room.height:
                    return size, rows
    return size, rows


def _one_each(said: tuple[str, ...], width: int, size: int) -> Rows:
    return tuple((piece,) for line in said for piece in broken(line, width, size))
