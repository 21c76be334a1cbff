"""Read what a teacher would type: `37+25`, `37 plus 25`, `62 – 25`, `7 + _ = 12`, `37 + 25 = ?`.

Thousands may be marked by a comma or a thin or no-break space before three digits (`1,000`); an
ordinary space would hide a sign left out (`37 250`). `1.250` is refused: it is a thousand and more
to some readers and a decimal to others. All of it is our choice.
"""

import re
from dataclasses import dataclass
from fractions import Fraction

from waysaid.number.errors import DEEPEST, LONGEST, MOST_DIGITS, Reason, Unreadable
from waysaid.number.expression import (
    BLANK,
    Equation,
    Expression,
    NoValue,
    Operation,
    Problem,
    Sign,
    blanks,
    exact,
    solve,
)

_SIGNS = {
    **dict.fromkeys(("+", "plus", "and", "más", "mas", "y"), Sign.PLUS),
    **dict.fromkeys(("-", "−", "–", "—", "minus", "take away", "menos"), Sign.MINUS),
    **dict.fromkeys(("x", "×", "*", "·", "times", "por"), Sign.TIMES),
    **dict.fromkeys(("/", "÷", ":", "divided by", "entre", "dividido entre"), Sign.OVER),
}
_EQUALS = ("=", "equals", "es igual a", "igual a")
_BLANKS = ("blank", "espacio en blanco")


def _phrases(*said: str) -> str:
    return "|".join(re.escape(one).replace(r"\ ", r"\s+") for one in said if " " in one)


_TOKEN = re.compile(
    r"\s*(?:(?P<mixed>[0-9]+ [0-9]+/[0-9]+)|(?P<fraction>[0-9]+/[0-9]+)"
    r"|(?P<point>[1-9][0-9]{0,2}(?:\.[0-9]{3})+(?![0-9]))|(?P<decimal>[0-9]+\.[0-9]+)"
    r"|(?P<groups>[1-9][0-9]{0,2}(?:(?:,[0-9]{3})+|(?:[\u00a0\u2009\u202f][0-9]{3})+)(?![0-9,]))"
    r"|(?P<comma>[0-9]*,[0-9,]*)|(?P<whole>[0-9]+)"
    r"|(?P<blank>_+|\?|□)|(?P<open>\()|(?P<close>\))"
    rf"|(?P<word>{_phrases(*_SIGNS, *_EQUALS, *_BLANKS)}|[^\W\d_]+|[=+\-−–—×*·/÷:]))",
    re.IGNORECASE,
)


@dataclass(frozen=True, slots=True)
class _Token:
    kind: str
    said: str
    at: tuple[int, int]


def parse(given: str) -> Problem:
    """Read a problem: an expression, or an equation with exactly one blank.

    An equals sign at the end, with or without a blank after it, is left out. Raises `Unreadable`,
    with the place, for anything else.
    """
    tokens = _asked(_tokens(given))
    reader = _Reader(given, tokens)
    equation = any(token.kind == "equals" for token in tokens)
    read: Problem = reader.equation() if equation else reader.expression()
    whole = (0, len(given))
    if blanks(read) != equation:
        raise Unreadable(given, whole, Reason.BLANKS)
    try:
        solve(read)
    except NoValue:
        raise Unreadable(given, whole, Reason.NO_ANSWER) from None
    return read


def parse_equation(given: str) -> Equation:
    """Read `expression = expression`, true or not, with any blanks. Raises `Unreadable`."""
    return _Reader(given, _tokens(given)).equation()


def parse_expression(given: str) -> Expression:
    """Read an expression with +, −, x, / and brackets, and any blanks. Raises `Unreadable`."""
    return _Reader(given, _tokens(given)).expression()


def _tokens(given: str) -> list[_Token]:
    if len(given) > LONGEST:
        raise Unreadable(given, (LONGEST, len(given)), Reason.TOO_LONG)
    if not given.strip():
        raise Unreadable(given, (len(given), len(given)), Reason.NOTHING)
    found, place = [], 0
    while given[place:].strip():
        match = _TOKEN.match(given, place)
        if match is None:
            start = place + len(given[place:]) - len(given[place:].lstrip())
            raise Unreadable(given, (start, start + 1), Reason.STRANGE)
        kind = str(match.lastgroup)
        found.append(_checked(given, _Token(kind, match.group(kind), match.span(kind))))
        place = match.end()
    found.append(_Token("end", "", (len(given), len(given))))
    return found


def _checked(given: str, token: _Token) -> _Token:
    """Give a word its kind; refuse a token that no problem can have."""
    said = " ".join(token.said.lower().split())
    if token.kind == "word":
        if said in _SIGNS:
            return _Token("sign", said, token.at)
        if said in _EQUALS or said in _BLANKS:
            return _Token("equals" if said in _EQUALS else "blank", said, token.at)
        raise Unreadable(given, token.at, Reason.STRANGE)
    if token.kind in ("comma", "point"):
        raise Unreadable(given, token.at, Reason.COMMA if token.kind == "comma" else Reason.POINT)
    digits = re.split(r"[ /.]", re.sub(r"[,\u00a0\u2009\u202f]", "", token.said))
    if max(map(len, digits)) > MOST_DIGITS and said[0].isdigit():
        raise Unreadable(given, token.at, Reason.TOO_MANY_DIGITS)
    return token


def _asked(tokens: list[_Token]) -> list[_Token]:
    """Leave out an equals sign at the end, and a blank after it, where it is the only one."""
    kinds = [token.kind for token in tokens]
    for end in (["equals", "end"], ["equals", "blank", "end"]):
        if kinds.count("equals") == 1 and kinds[-len(end) :] == end and len(kinds) > len(end):
            return [*tokens[: -len(end)], tokens[-1]]
    return tokens


class _Reader:
    """Reads tokens from left to right; products bind before sums."""

    def __init__(self, given: str, tokens: list[_Token]) -> None:
        self.given = given
        self.tokens = tokens
        self.place = 0
        self.depth = 0

    def equation(self) -> Equation:
        left = self._sum()
        self._expect("equals", Reason.NO_EQUALS)
        right = self._sum()
        self._expect("end", Reason.NO_END)
        return Equation(left, right)

    def expression(self) -> Expression:
        read = self._sum()
        self._expect("end", Reason.NO_SIGN)
        return read

    def _expect(self, kind: str, reason: Reason) -> None:
        token = self.tokens[self.place]
        if token.kind != kind:
            raise Unreadable(self.given, token.at, reason)
        self.place += 1

    def _sum(self) -> Expression:
        whole = self._product()
        while (sign := self._sign()) in (Sign.PLUS, Sign.MINUS):
            self.place += 1
            whole = Operation(sign, whole, self._product())
        return whole

    def _product(self) -> Expression:
        whole = self._number()
        while (sign := self._sign()) in (Sign.TIMES, Sign.OVER):
            self.place += 1
            whole = Operation(sign, whole, self._number())
        return whole

    def _sign(self) -> Sign | None:
        token = self.tokens[self.place]
        return _SIGNS[token.said] if token.kind == "sign" else None

    def _number(self) -> Expression:
        token = self.tokens[self.place]
        inner = token.kind == "open" or self._sign() is Sign.MINUS
        if inner and self.depth == DEEPEST:
            raise Unreadable(self.given, token.at, Reason.TOO_DEEP)
        self.depth += inner
        read = self._one(token)
        self.depth -= inner
        return read

    def _one(self, token: _Token) -> Expression:
        minus = self._sign() is Sign.MINUS
        self.place += 1
        if minus:
            size = self._number()
            if isinstance(size, (int, Fraction)):
                return -size
            raise Unreadable(self.given, token.at, Reason.NO_NUMBER)
        match token.kind:
            case "whole" | "groups":
                return int(re.sub(r"[,\u00a0\u2009\u202f]", "", token.said))
            case "fraction" | "decimal" | "mixed":
                return self._part(token)
            case "blank":
                return BLANK
            case "open":
                inside = self._sum()
                self._expect("close", Reason.NOT_CLOSED)
                return inside
        raise Unreadable(self.given, token.at, Reason.NO_NUMBER)

    def _part(self, token: _Token) -> Expression:
        whole, _, part = token.said.rpartition(" ")
        _, slash, bottom = part.partition("/")
        if slash and int(bottom) == 0:
            raise Unreadable(self.given, token.at, Reason.BOTTOM_ZERO)
        return exact(int(whole or 0) + Fraction(part))
