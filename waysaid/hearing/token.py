"""Cut a line of shorthand into numbers, signs, equals signs and breaks."""

import re
from dataclasses import dataclass
from enum import Enum

from waysaid.number import MOST_DIGITS, Sign

LONGEST_LINE = 400
"""The most characters of a line of shorthand: twice a problem's, our choice."""


class Mark(Enum):
    """The kinds of token."""

    NUMBER = "number"
    SIGN = "sign"
    EQUALS = "equals"
    BLANK = "blank"
    BREAK = "break"
    COLON = "colon"
    END = "end"


@dataclass(frozen=True, slots=True)
class Token:
    """One token: a number's value or a sign's meaning, its span, and whether a gap is before it."""

    mark: Mark
    span: tuple[int, int]
    gap: bool
    value: int = 0
    sign: Sign = Sign.PLUS


_TOKEN = re.compile(
    r"(?P<break>[,;|→⟶]|[-=]+>)|(?P<colon>:)|(?P<equals>=)|(?P<blank>_+|\?|□)"
    r"|(?P<number>\([ ]*[-−–][ ]*[0-9]+[ ]*\)|[1-9],[0-9]{3}(?![0-9])|[0-9]+)"
    r"|(?P<sign>[+\-−–—xX×*])"
)
_SIGNS = {"+": Sign.PLUS, **dict.fromkeys("xX×*", Sign.TIMES)}
_BELOW_ZERO = re.compile(r"[-−–](?P<digits>[0-9]+)")


def tokens(line: str) -> tuple[Token, ...] | None:
    """Return the tokens of a line and an end; None where it is not shorthand at all.

    A minus sign after an equals sign or another sign belongs to its number: 3 - 8 = -5. A full
    stop at the end is left out. `1,000` is one number; any other comma is a break.
    """
    if len(line) > LONGEST_LINE:
        return None
    found: list[Token] = []
    end = len(line.rstrip().rstrip("."))
    place = 0
    while True:
        start = place + len(line[place:end]) - len(line[place:end].lstrip())
        if start >= end:
            return (*found, Token(Mark.END, (end, end), True))
        token = _token(line[:end], start, start > place, found)
        if token is None:
            return None
        found.append(token)
        place = token.span[1]


def _token(line: str, start: int, gap: bool, before: list[Token]) -> Token | None:
    mark = before[-1].mark if before else Mark.BREAK
    if mark in (Mark.EQUALS, Mark.SIGN) and (below := _BELOW_ZERO.match(line, start)):
        return _number(below.span(), gap, f"-{below['digits']}")
    match = _TOKEN.match(line, start)
    if match is None:
        return None
    kind = Mark(match.lastgroup)
    if kind is Mark.NUMBER:
        said = re.sub(r"[−–]", "-", re.sub(r"[ (),]", "", match.group()))
        return _number(match.span(), gap, said)
    return Token(kind, match.span(), gap, sign=_SIGNS.get(match.group(), Sign.MINUS))


def _number(span: tuple[int, int], gap: bool, said: str) -> Token | None:
    if len(said) > MOST_DIGITS + said.startswith("-"):
        return None
    return Token(Mark.NUMBER, span, gap, value=int(said))
