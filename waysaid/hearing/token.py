"""Cut a line of shorthand into numbers, signs, equals signs, answers and breaks."""

import re
from dataclasses import dataclass
from enum import Enum
from fractions import Fraction

from waysaid.number import (
    Blank,
    Claim,
    Compare,
    Exact,
    Form,
    NoValue,
    Number,
    Operation,
    Order,
    Problem,
    Remainder,
    Said,
    Sign,
    Unreadable,
    Verdict,
    Written,
    apply,
    exact,
    has_point,
    parse_expression,
    parse_said,
    sides,
    written,
)

LONGEST_LINE = 400
"""The most characters of a line of shorthand: twice a problem's, our choice."""

_GROUPED = 10_000
"""From which number on a problem's thousands are thought to be marked: our choice."""


class Mark(Enum):
    """The kinds of token."""

    NUMBER = "number"
    SIGN = "sign"
    EQUALS = "equals"
    BLANK = "blank"
    ANSWER = "answer"
    BREAK = "break"
    COLON = "colon"
    END = "end"


@dataclass(frozen=True, slots=True)
class Token:
    """One token: a number, a sign's meaning or an answer that is no number.

    `gap` tells whether a gap is before it.
    """

    mark: Mark
    span: tuple[int, int]
    gap: bool
    value: Number = 0
    sign: Sign = Sign.PLUS
    said: Said = 0


class Slash(Enum):
    """When `a/b` written close together is a division, and not a fraction."""

    NEVER = "in a problem with fractions, or one that compares"
    OF_A_WHOLE = "where nothing is left over of a whole number that is multiplied by a part"
    SHARES_OUT = "where nothing is left over, for a part of a number"
    TOP_HEAVY = "where a is not less than b, in a problem without fractions"
    ON_A_SIDE = "there, or with an equals sign behind it, in a problem that divides"


@dataclass(frozen=True, slots=True)
class Spelling:
    """How the numbers of a problem let a line about it be read.

    `comma` is whether a comma may be a decimal comma, `grouped` whether one may mark thousands
    behind two or three digits, and `answers` the answers to it that are no number.
    `wholes` are its whole numbers: of them something may be shared out, as in 80/100.
    """

    slash: Slash = Slash.TOP_HEAVY
    comma: bool = False
    grouped: bool = False
    answers: type | None = None
    wholes: frozenset[int] = frozenset()


def spelling_of(problem: Problem) -> Spelling:
    """Return how a line about the problem is to be read."""
    numbers = [one for side in sides(problem) for one in written(side)]
    parts = any(map(_in_parts, numbers))
    of = isinstance(problem, Operation) and problem.sign is Sign.OF
    renamed = parts or isinstance(problem, Compare)
    slash = Slash.SHARES_OUT if of else Slash.NEVER if renamed else Slash.TOP_HEAVY
    if parts and isinstance(problem, Operation) and problem.sign is Sign.TIMES:
        slash = Slash.OF_A_WHOLE
    large = any(isinstance(one, int) and abs(one) >= _GROUPED for one in numbers)
    over = isinstance(problem, Operation) and problem.sign is Sign.OVER
    if over and not parts:
        slash = Slash.ON_A_SIDE
    wholes = frozenset(one for one in numbers if isinstance(one, int))
    return Spelling(slash, has_point(problem), large, _answers(problem, over), wholes)


def _answers(problem: Problem, over: bool) -> type | None:
    if isinstance(problem, Compare | Claim):
        return Order if isinstance(problem, Compare) else Verdict
    return Remainder if over else None


def _in_parts(number: Number | Blank) -> bool:
    if isinstance(number, Written):
        return number.form is Form.PARTS
    return isinstance(number, Fraction)


_MINUS = "-−–"
_SIZE = r"[0-9]+ [0-9]+/[0-9]+|[0-9]+/[0-9]+|[0-9]+\.[0-9]+[ ]?%?|[0-9]+[ ]?%|[0-9]+"
_TOKEN = re.compile(
    r"(?P<break>[,;|→⟶]|[-=]+>)|(?P<colon>:)|(?P<equals>=)|(?P<blank>_+|\?|□)"
    r"|(?P<rest>[0-9]+\s*(?:remainder|rem|r|left|resto|sobran?)\.?\s*[0-9]+)"
    rf"|(?P<number>\([ ]*[{_MINUS}][ ]*(?:{_SIZE})[ ]*\)|[1-9],[0-9]{{3}}(?![0-9])|{_SIZE})"
    r"|(?P<order>[<>])|(?P<sign>[+\-−–—×*÷/])|(?P<word>[^\W\d_]+)",
    re.IGNORECASE,
)
_SIGNS = {
    "+": Sign.PLUS,
    **dict.fromkeys("xX×*", Sign.TIMES),
    **dict.fromkeys("/÷", Sign.OVER),
    **dict.fromkeys(("of", "de"), Sign.OF),
}
_BELOW_ZERO = re.compile(rf"[{_MINUS}](?:{_SIZE})")
_COMMA = re.compile(r"(?<![0-9.,])([0-9]+),([0-9]+)(?![0-9.,])")
_THOUSANDS = re.compile(r"(?<![0-9.,])[1-9][0-9]{0,2}(?:,[0-9]{3})+(?![0-9.,])")


def tokens(line: str, spelling: Spelling) -> tuple[Token, ...] | None:
    """Return the tokens of a line and an end; None where it is not shorthand at all.

    A minus sign after an equals sign or another sign belongs to its number: 3 - 8 = -5. A full
    stop at the end is left out. `1,000` is one number; any other comma is a break, but for a
    decimal comma in a problem with decimals, on a line without a point.
    """
    if len(line) > LONGEST_LINE:
        return None
    found: list[Token] = []
    end = len(line.rstrip().rstrip("."))
    place = 0
    reader = _Cutter(line[:end], spelling)
    while True:
        start = place + len(line[place:end]) - len(line[place:end].lstrip())
        if start >= end:
            return (*found, Token(Mark.END, (end, end), True))
        token = reader.token(start, start > place, found)
        if token is None:
            return None
        found.append(token)
        place = token.span[1]


class _Cutter:
    def __init__(self, line: str, spelling: Spelling) -> None:
        self.line = line
        self.spelling = spelling
        self.comma = spelling.comma and not re.search(r"[0-9]\.[0-9]", line)

    def token(self, start: int, gap: bool, before: list[Token]) -> Token | None:
        """Return the token that starts there; None where none does."""
        mark = before[-1].mark if before else Mark.BREAK
        if mark in (Mark.EQUALS, Mark.SIGN) and (below := _BELOW_ZERO.match(self.line, start)):
            return self._number((start, below.end()), gap, before)
        commas = [_COMMA] if self.comma else [_THOUSANDS] if self.spelling.grouped else []
        for pattern in commas:
            if match := pattern.match(self.line, start):
                return self._number(match.span(), gap, before)
        match = _TOKEN.match(self.line, start)
        if match is None:
            return None
        kind = str(match.lastgroup)
        if kind in ("word", "order"):
            return self._word(match.group(), match.span(), gap)
        if kind == "rest":
            return self._answer(match.group(), match.span(), gap)
        if kind == "number":
            return self._number(match.span(), gap, before)
        return Token(Mark(kind), match.span(), gap, sign=_SIGNS.get(match.group(), Sign.MINUS))

    def _word(self, word: str, span: tuple[int, int], gap: bool) -> Token | None:
        sign = _SIGNS.get(word.lower())
        if sign:
            return Token(Mark.SIGN, span, gap, sign=sign)
        return self._answer(word, span, gap)

    def _answer(self, said: str, span: tuple[int, int], gap: bool) -> Token | None:
        read = parse_said(said)
        if read is None or type(read) is not self.spelling.answers:
            return None
        return Token(Mark.ANSWER, span, gap, said=read)

    def _number(self, span: tuple[int, int], gap: bool, before: list[Token]) -> Token | None:
        """Return a number's token, which other tokens may have come before."""
        start, end = span
        plain = re.sub(rf"[{_MINUS}]\s*", "-", self.line[start:end].strip("() "))
        plain = plain.replace(",", "." if self.comma else "")
        plain = plain.replace(" %", "%")
        if " " in plain and not self._mixed(plain, end, before):
            end = start + self.line[start:end].index(" ")
            plain = self.line[start:end]
        if "/" in plain and self._divides(plain, end, before):
            end = start + self.line[start:end].index("/")
            plain = self.line[start:end]
        try:
            read = parse_expression(plain)
        except Unreadable:
            return None
        if isinstance(read, Operation | Blank):
            return None
        return Token(Mark.NUMBER, (start, end), gap, value=read)

    def _mixed(self, plain: str, end: int, before: list[Token]) -> bool:
        """Tell whether `5 1/3` is one number, and not 5 and then 1/3 or 36/6 of a next step."""
        if _comes_to(before) == int(plain.split(maxsplit=1)[0]):
            return False
        top, bottom = map(int, plain.rsplit(maxsplit=1)[-1].split("/"))
        if self.spelling.slash in (Slash.NEVER, Slash.OF_A_WHOLE):
            return True
        of = self.spelling.slash is Slash.SHARES_OUT
        return top < bottom and (of or not self._goes_on(end))

    def _goes_on(self, end: int) -> bool:
        """Tell whether an equals sign comes behind that place."""
        return self.line[end:].lstrip().startswith("=")

    def _divides(self, plain: str, end: int, before: list[Token]) -> bool:
        """Tell whether the slash of `60/6` is a division sign."""
        if not re.fullmatch(r"[0-9]+/[0-9]+", plain) or self.spelling.slash is Slash.NEVER:
            return False
        top, bottom = map(int, plain.split("/"))
        if any(self.line[slice(*token.span)] == plain for token in before):
            return False
        if self.spelling.slash is Slash.OF_A_WHOLE:
            begins = not before or before[-1].mark is Mark.BREAK
            whole = begins and (top in self.spelling.wholes or _comes_to(before[:-2]) == top)
            return whole and top > bottom > 0 == top % bottom and self._goes_on(end)
        begins = not before or before[-1].mark is not Mark.SIGN
        result = bool(before) and before[-1].mark is Mark.EQUALS
        if self.spelling.slash is Slash.SHARES_OUT and result and _comes_to(before) != top:
            return False
        if result and [token.value for token in before[-4:-1:2]] == [top, bottom]:
            return False
        if bottom and begins and top in self.spelling.wholes:
            return True
        if self.spelling.slash is Slash.SHARES_OUT:
            more = top > bottom or (top == bottom and self._goes_on(end))
            return bottom != 0 and more and top % bottom == 0
        if self.spelling.slash is Slash.ON_A_SIDE and begins and self._goes_on(end):
            return True
        return top >= bottom


def _comes_to(before: list[Token]) -> Exact | None:
    """Return what an operation with an equals sign behind it comes to: 1 for `3/4 + 1/4 =`."""
    if len(before) < 4:
        return None
    left, sign, right, equals = before[-4:]
    marks = (left.mark, sign.mark, right.mark, equals.mark)
    if marks != (Mark.NUMBER, Mark.SIGN, Mark.NUMBER, Mark.EQUALS):
        return None
    try:
        return apply(sign.sign, exact(left.value), exact(right.value))
    except NoValue:
        return None
