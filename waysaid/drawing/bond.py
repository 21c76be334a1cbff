"""Number bonds: numbers of the problem, opened into the parts a child made of them."""

from collections.abc import Sequence
from dataclasses import dataclass

from waysaid.drawing.fit import Drawn, largest, stroke_of
from waysaid.drawing.metrics import digit_height, text_width
from waysaid.drawing.problem import answer_mark, numbers_of, terms_of
from waysaid.drawing.scene import Scene
from waysaid.drawing.shape import Anchor, Box, Label, Line, Shape
from waysaid.drawing.story import Hop, Mark, hops_of, mark_of, story_of, terms_in
from waysaid.drawing.telling import Frame, Picture, Telling
from waysaid.drawing.words import listed, phrase, sentence, title_of
from waysaid.number import (
    BLANK,
    Blank,
    Exact,
    Language,
    Operation,
    Print,
    Sign,
    exact,
    number_text,
    sides,
    sign_text,
    written,
)
from waysaid.ways import Kind, Step

MOST = 4
"""A number is opened into no more parts than this (our choice: more are not seen as a bond)."""


@dataclass(frozen=True, slots=True)
class Token:
    """A number or a sign of the top row, and the parts under it, if any."""

    text: str
    parts: tuple[str, ...] = ()


Bond = tuple[Token, ...]
_Parts = tuple[Mark, ...]


def bond_of(telling: Telling) -> Bond | None:
    """Return the top row with its parts; None where the telling opens no number."""
    fact = _fact(telling)
    if fact is not None:
        return fact
    terms = terms_in(sides(telling.problem)[0]) if terms_of(telling) is not None else None
    if terms is None:
        return None
    parts = _parts(telling)
    if not any(parts):
        return None
    row: list[Token] = []
    for (sign, leaf), under in zip(terms, parts, strict=True):
        if row:
            row.append(Token(sign_text(sign, Print.TRUE)))
        shown = "_" if isinstance(leaf, Blank) else number_text(leaf, Print.TRUE)
        row.append(Token(shown, tuple(part.text for part in under)))
    answer = answer_mark(telling)
    if answer.said:
        row += [Token("="), Token(answer.text)]
    return tuple(row)


def _fact(telling: Telling) -> Bond | None:
    """Return a fact known in one step as its whole and its two parts."""
    if len(telling.steps) != 1:
        return None
    hops = hops_of(telling.steps[0], telling.unsaid(0))
    if len(hops) != 1 or telling.steps[0].kind is Kind.SPLIT:
        return None
    hop = hops[0]
    plus = hop.sign is Sign.PLUS
    whole, other = (hop.end, hop.start) if plus else (hop.start, hop.end)
    parts = (other, hop.amount) if plus else (hop.amount, other)
    return (Token(whole.text, tuple(part.text for part in parts)),)


def _parts(telling: Telling) -> list[_Parts]:
    """Return, for each number of the problem, the parts told for it."""
    numbers = numbers_of(telling)
    parts: list[_Parts] = [() for _ in numbers]
    for place, step in enumerate(telling.steps):
        whole, under = _opened(step, telling.unsaid(place))
        for at, number in enumerate(numbers):
            if under and number == whole and not parts[at]:
                parts[at] = under
                break
    if any(parts) or len(numbers) != 2:
        return parts
    return _by_hops(telling, numbers) or _by_place(telling, numbers) or parts


def _opened(step: Step, unsaid: frozenset[str]) -> tuple[Exact | Blank, _Parts]:
    """Return the number a step opens and its parts: 42 = 30 + 12, or 27 − 1 = 26."""
    left, right = step.equation.left, step.equation.right
    if step.kind is Kind.SPLIT and not isinstance(left, Operation):
        shown = "result" not in unsaid
        pieces = [leaf for leaf in written(right) if not isinstance(leaf, Blank)]
        opened = left if isinstance(left, Blank) else exact(left)
        return opened, tuple(mark_of(piece, shown) for piece in pieces) if len(pieces) > 1 else ()
    hops = hops_of(step, unsaid)
    if step.kind in (Kind.SPLIT, Kind.MOVE) and len(hops) == 1 and hops[0].sign is Sign.MINUS:
        return hops[0].start.value, (hops[0].amount, hops[0].end)
    return BLANK, ()


def _by_hops(telling: Telling, numbers: Sequence[Exact | Blank]) -> list[_Parts] | None:
    """Return the hops from one number as the parts of the other."""
    story, terms = story_of(telling), terms_of(telling)
    if story is None or terms is None or story.gaps or len(story.hops) < 2:
        return None
    sign, first = terms[1][0], story.hops[0].start.value
    if any(hop.sign is not sign for hop in story.hops):
        return None
    amounts = tuple(hop.amount for hop in story.hops)
    if len(amounts) > MOST:
        return None
    if first == numbers[0]:
        return [(), amounts]
    if first == numbers[1] and sign is Sign.PLUS:
        return [amounts, ()]
    if len(amounts) == 3 and sign is Sign.PLUS:
        return _then_jumped(story.hops, numbers)
    return None


def _then_jumped(hops: tuple[Hop, ...], numbers: Sequence[Exact | Blank]) -> list[_Parts]:
    """Return the parts of 30 + 20, + 7, + 5: the small pieces where their digits come from."""
    big, small, last = (hop.amount for hop in hops)
    ones = [number % 10 if isinstance(number, int) else None for number in numbers]
    if (small.value, last.value) == (ones[1], ones[0]):
        small, last = last, small
    return [(hops[0].start, small), (big, last)]


def _by_place(telling: Telling, numbers: Sequence[Exact | Blank]) -> list[_Parts] | None:
    """Return like pieces put together (30 + 20, 7 + 5) as the parts of both numbers."""
    terms = terms_of(telling)
    firsts: list[Mark] = []
    seconds: list[Mark] = []
    made: set[Exact] = set()
    for place, step in enumerate(telling.steps):
        hops = hops_of(step, telling.unsaid(place))
        if not hops or terms is None:
            return None
        fresh = hops[0].start.value not in made and hops[0].amount.value not in made
        if fresh and len(hops) == 1 and hops[0].sign is terms[1][0]:
            firsts.append(hops[0].start)
            seconds.append(hops[0].amount)
        made.add(hops[-1].end.value)
    whole = {hop.value for hop in (*firsts, *seconds)} & set(numbers)
    return [tuple(firsts), tuple(seconds)] if len(firsts) > 1 and not whole else None


def draw_bond(bond: Bond, telling: Telling, frame: Frame, lang: Language) -> Scene:
    """Return the top row with a ring for each part under its number."""
    drawn = largest(frame, lambda size, _: _laid(bond, size))
    title = title_of(Picture.NUMBER_BOND, telling.problem, lang)
    blank = phrase(lang, "blank")
    said = tuple(
        phrase(
            lang,
            "apart",
            whole=token.text or blank,
            parts=listed(tuple(part or blank for part in token.parts), lang),
        )
        for token in bond
        if token.parts
    )
    return Scene(drawn.width, drawn.height, title, sentence(said, lang), drawn.shapes)


def _laid(bond: Bond, size: int) -> Drawn:
    shapes: list[Shape] = []
    x = 0
    for place, token in enumerate(bond):
        x += size * 3 // 10 if place else 0
        width = _width(token, size)
        middle = x + width // 2
        if token.text or not token.parts:
            shapes.append(Label(middle, digit_height(size), size, Anchor.MIDDLE, token.text))
        else:
            shapes.append(
                Line(
                    middle - size // 2,
                    digit_height(size),
                    middle + size // 2,
                    digit_height(size),
                    stroke_of(size),
                )
            )
        shapes.extend(_under(token, x, middle, size))
        x += width
    deep = any(token.parts for token in bond)
    height = digit_height(size) + (size * 22 // 10 if deep else size // 4)
    return Drawn(x + stroke_of(size), height, tuple(shapes))


def _width(token: Token, size: int) -> int:
    rings = sum(_ring(part, size) for part in token.parts)
    gaps = max(0, len(token.parts) - 1) * (size * 3 // 20) + (stroke_of(size) if token.parts else 0)
    return max(text_width(token.text, size), size if token.parts else 0, rings + gaps)


def _ring(part: str, size: int) -> int:
    return max(size * 12 // 10, text_width(part, size) + size * 4 // 10)


def _under(token: Token, left: int, middle: int, size: int) -> list[Shape]:
    """Return the rings under a number, each tied to it by a line."""
    stroke = stroke_of(size)
    rings = [_ring(part, size) for part in token.parts]
    needed = sum(rings) + (len(rings) - 1) * (size * 3 // 20)
    x = max(left + stroke, middle - needed // 2)
    top = digit_height(size) + size * 8 // 10
    high = size * 12 // 10
    shapes: list[Shape] = []
    for part, wide in zip(token.parts, rings, strict=True):
        centre = x + wide // 2
        start = middle + (centre - middle) // 5
        shapes.append(Line(start, digit_height(size) + size // 5, centre, top, stroke))
        shapes.append(Box(x, top, wide, high, high // 2, False, stroke))
        if part:
            baseline = top + (high + digit_height(size)) // 2
            shapes.append(Label(centre, baseline, size, Anchor.MIDDLE, part))
        x += wide + size * 3 // 20
    return shapes
