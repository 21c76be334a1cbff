"""Read what a teacher would type: `37+25`, `37 plus 25`, `62 – 25`, `7 + _ = 12`."""

import re
from dataclasses import dataclass
from fractions import Fraction

from waysaid.number.errors import Unreadable
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
    **dict.fromkeys(("/", "÷", ":", "divided by", "entre"), Sign.OVER),
}
_TOKEN = re.compile(
    r"\s*(?:(?P<mixed>\d+ \d+/\d+)|(?P<fraction>\d+/\d+)|(?P<decimal>\d+\.\d+)|(?P<whole>\d+)"
    r"|(?P<blank>_+|\?|□)|(?P<open>\()|(?P<close>\))|(?P<equals>=)"
    r"|(?P<sign>take away|divided by|[^\W\d_]+|[+\-−–—×*·/÷:]))",
    re.IGNORECASE,
)


@dataclass(frozen=True, slots=True)
class _Token:
    kind: str
    said: str
    at: tuple[int, int]


def parse(given: str) -> Problem:
    """Read a problem: an expression, or an equation with exactly one blank.

    A trailing equals sign is left out. Raises `Unreadable`, with the place, for anything else.
    """
    trimmed = re.sub(r"\s*=\s*[_?□]*\s*$", "", given) if given.count("=") == 1 else given
    read = parse_equation(trimmed) if "=" in trimmed else parse_expression(trimmed)
    end = (len(given), len(given))
    if isinstance(read, Equation) != (blanks(read) == 1):
        raise Unreadable(given, end, "one blank in an equation (7 + _ = 12), none elsewhere")
    try:
        solve(read)
    except NoValue:
        raise Unreadable(given, end, "a problem that has an answer") from None
    return read


def parse_equation(given: str) -> Equation:
    """Read `expression = expression`, true or not, with any blanks. Raises `Unreadable`."""
    reader = _Reader(given)
    left = reader.sum()
    reader.expect("equals", "an equals sign")
    right = reader.sum()
    reader.expect("end", "the end of the equation")
    return Equation(left, right)


def parse_expression(given: str) -> Expression:
    """Read an expression with +, −, x, / and brackets. Raises `Unreadable`."""
    reader = _Reader(given)
    read = reader.sum()
    reader.expect("end", "+, −, x or / and another number")
    return read


def _tokens(given: str) -> list[_Token]:
    found, place = [], 0
    while given[place:].strip():
        match = _TOKEN.match(given, place)
        if match is None:
            start = place + len(given[place:]) - len(given[place:].lstrip())
            raise Unreadable(given, (start, start + 1), "numbers with +, −, x or / between them")
        kind = str(match.lastgroup)
        said = match.group(kind)
        at = match.span(kind)
        if kind == "sign" and said.lower() not in _SIGNS:
            raise Unreadable(given, at, "numbers with +, −, x or / between them")
        found.append(_Token(kind, said, at))
        place = match.end()
    found.append(_Token("end", "", (len(given), len(given))))
    return found


class _Reader:
    """Reads tokens from left to right; products bind before sums."""

    def __init__(self, given: str) -> None:
        self.given = given
        self.tokens = _tokens(given)
        self.place = 0

    def sum(self) -> Expression:
        return self._joined((Sign.PLUS, Sign.MINUS))

    def expect(self, kind: str, wanted: str) -> _Token:
        token = self.tokens[self.place]
        if token.kind != kind:
            raise Unreadable(self.given, token.at, f"{wanted} would fit here")
        self.place += 1
        return token

    def _joined(self, signs: tuple[Sign, Sign]) -> Expression:
        under = self._product if signs[0] is Sign.PLUS else self._number
        whole = under()
        while (sign := self._sign()) in signs:
            self.place += 1
            whole = Operation(sign, whole, under())
        return whole

    def _product(self) -> Expression:
        return self._joined((Sign.TIMES, Sign.OVER))

    def _sign(self) -> Sign | None:
        token = self.tokens[self.place]
        return _SIGNS[token.said.lower()] if token.kind == "sign" else None

    def _number(self) -> Expression:
        token = self.tokens[self.place]
        if self._sign() is Sign.MINUS:
            self.place += 1
            size = self._number()
            if isinstance(size, (int, Fraction)):
                return -size
            raise Unreadable(self.given, token.at, "a number would fit here")
        self.place += 1
        match token.kind:
            case "whole":
                return int(token.said)
            case "fraction" | "decimal" | "mixed":
                return self._part(token)
            case "blank":
                return BLANK
            case "open":
                inside = self.sum()
                self.expect("close", "a closing bracket")
                return inside
        raise Unreadable(self.given, token.at, "a number would fit here")

    def _part(self, token: _Token) -> Expression:
        whole, _, part = token.said.rpartition(" ")
        if part.endswith("/0"):
            raise Unreadable(self.given, token.at, "a bottom number that is not 0")
        return exact(int(whole or 0) + Fraction(part))
