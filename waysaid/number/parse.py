"""Read what a teacher would type: `37+25`, `37 plus 25`, `62 – 25`, `7 + _ = 12`, `37 + 25 = ?`.

A question mark between two numbers compares them (`0.65 ? 0.7`), after an equation it asks whether
that is true (`29 + 14 = 30 + 13 ?`); elsewhere it is a blank. `about` asks for an estimate.

Thousands may be marked by a comma or a thin or no-break space before three digits (`1,000`); an
ordinary space would hide a sign left out (`37 250`). A point is a decimal point; so is a comma
before one or two digits (`1,5`). All of it is our choice.
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
    Sign,
    blanks,
)
from waysaid.number.image import Image, image_start, parse_image
from waysaid.number.problem import About, Claim, Compare, Problem, answer_of
from waysaid.number.written import Form, Number, Written, decimal, exact, mixed, negative, parts

_SIGNS = {
    **dict.fromkeys(("+", "plus", "and", "más", "mas", "y"), Sign.PLUS),
    **dict.fromkeys(("-", "−", "–", "—", "minus", "take away", "menos"), Sign.MINUS),
    **dict.fromkeys(("x", "×", "*", "·", "times", "por"), Sign.TIMES),
    **dict.fromkeys(("/", "÷", ":", "divided by", "entre", "dividido entre"), Sign.OVER),
    **dict.fromkeys(("of", "de"), Sign.OF),
}
_EQUALS = ("=", "equals", "es igual a", "igual a")
_BLANKS = ("blank", "espacio en blanco")
_PERCENTS = ("%", "percent", "per cent", "por ciento")
_ABOUT = ("about", "roughly", "cerca de", "aproximadamente")
_ASKED = "?"
_KINDS = {"equals": _EQUALS, "blank": _BLANKS, "percent": _PERCENTS, "about": _ABOUT}


def _phrases(*said: str) -> str:
    return "|".join(re.escape(one).replace(r"\ ", r"\s+") for one in said if " " in one)


_TOKEN = re.compile(
    r"\s*(?:(?P<mixed>[0-9]+ [0-9]+/[0-9]+)|(?P<fraction>[0-9]+/[0-9]+)"
    r"|(?P<point>[0-9]+(?:\.[0-9]+){2,})|(?P<decimal>[0-9]+(?:\.[0-9]+|,[0-9]{1,2}(?![0-9,])))"
    r"|(?P<groups>[1-9][0-9]{0,2}(?:(?:,[0-9]{3})+|(?:[\u00a0\u2009\u202f][0-9]{3})+)(?![0-9,]))"
    r"|(?P<comma>[0-9]*,[0-9,]*)|(?P<whole>[0-9]+)"
    r"|(?P<blank>_+|\?|□)|(?P<open>\()|(?P<close>\))"
    rf"|(?P<word>{_phrases(*_SIGNS, *_EQUALS, *_BLANKS, *_PERCENTS, *_ABOUT)}"
    r"|[^\W\d_]+|[=+\-−–—×*·/÷:%]))",
    re.IGNORECASE,
)


@dataclass(frozen=True, slots=True)
class _Token:
    kind: str
    said: str
    at: tuple[int, int]


def parse(given: str) -> Problem:
    """Read a problem of any kind; an equation has exactly one blank.

    An equals sign at the end, with or without a blank after it, is left out, and a lone `84/4`
    is a division. Raises `Unreadable`, with the place, for anything else.
    """
    if image_start(given) is not None:
        return parse_image(given)
    tokens = _asked(_tokens(given))
    read = _problem(given, tokens)
    whole = (0, len(given))
    if _blanks(read) != isinstance(read, Equation):
        raise Unreadable(given, whole, Reason.BLANKS)
    try:
        answer_of(read)
    except NoValue:
        raise Unreadable(given, whole, Reason.NO_ANSWER) from None
    return read


def _problem(given: str, tokens: list[_Token]) -> Problem:
    if tokens[0].kind == "about":
        return About(_Reader(given, tokens[1:]).expression())
    if any(token.kind == "equals" for token in tokens):
        if tokens[-2].said == _ASKED and _ends(tokens, len(tokens) - 2):
            return Claim(_Reader(given, [*tokens[:-2], tokens[-1]]).equation())
        return _Reader(given, tokens).equation()
    for place, token in enumerate(tokens):
        if token.said == _ASKED and _ends(tokens, place) and tokens[place + 1].kind != "end":
            left = [*tokens[:place], _Token("end", "", token.at)]
            return Compare(
                _Reader(given, left).expression(), _Reader(given, tokens[place + 1 :]).expression()
            )
    return _shared(_Reader(given, tokens).expression())


def _shared(read: Expression) -> Expression:
    """Return a lone `84/4` as the division that it can only mean; `3/4` stays a fraction."""
    if isinstance(read, Written) and read.form is Form.PARTS and read.top >= read.size:
        return Operation(Sign.OVER, read.top, read.size) if not read.whole else read
    return read


def _ends(tokens: list[_Token], place: int) -> bool:
    """Tell whether a side of something could end before the token at that place."""
    return place > 0 and tokens[place - 1].kind not in ("sign", "equals", "open", "end", "about")


def _blanks(read: Problem) -> int:
    match read:
        case Claim():
            return blanks(read.equation)
        case Compare():
            return blanks(read.left) + blanks(read.right)
        case About():
            return blanks(read.expression)
        case Image():
            return 0
        case _:
            return blanks(read)


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
        for kind, words in _KINDS.items():
            if said in words:
                return _Token(kind, said, token.at)
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
        while (sign := self._sign()) in (Sign.TIMES, Sign.OVER, Sign.OF):
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
            if isinstance(size, (int, Fraction, Written)):
                return negative(size)
            raise Unreadable(self.given, token.at, Reason.NO_NUMBER)
        match token.kind:
            case "whole" | "groups":
                return self._hundredths(int(re.sub(r"[,\u00a0\u2009\u202f]", "", token.said)))
            case "decimal":
                said = token.said.replace(",", ".")
                return self._hundredths(decimal(Fraction(said), len(said.partition(".")[2])))
            case "fraction" | "mixed":
                return self._part(token)
            case "blank":
                return BLANK
            case "open":
                inside = self._sum()
                self._expect("close", Reason.NOT_CLOSED)
                return inside
        raise Unreadable(self.given, token.at, Reason.NO_NUMBER)

    def _hundredths(self, number: Number) -> Number:
        """Return the number, as so many hundredths where a percent sign comes after it."""
        if self.tokens[self.place].kind != "percent":
            return number
        self.place += 1
        size = number.size if isinstance(number, Written) else 0
        return Written(exact(Fraction(exact(number)) / 100), Form.PERCENT, size)

    def _part(self, token: _Token) -> Number:
        whole, _, part = token.said.rpartition(" ")
        top, bottom = map(int, part.split("/"))
        if bottom == 0:
            raise Unreadable(self.given, token.at, Reason.BOTTOM_ZERO)
        return mixed(int(whole), top, bottom) if int(whole or 0) else parts(top, bottom)
