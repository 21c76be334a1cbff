"""Read the text of a problem for the judges of slips; nothing of the engine is used here."""

import re
from dataclasses import dataclass
from fractions import Fraction

Answers = set[object]


@dataclass(frozen=True)
class N:
    """A number as it is written."""

    text: str

    @property
    def percent(self) -> bool:
        return self.text.endswith("%")

    @property
    def pointed(self) -> bool:
        return "." in self.text and not self.percent

    @property
    def value(self) -> Fraction:
        if self.percent:
            return Fraction(self.text[:-1]) / 100
        return sum((Fraction(part) for part in self.text.split()), Fraction(0))

    @property
    def places(self) -> int:
        return len(self.text.partition(".")[2]) if self.pointed else 0

    @property
    def bare(self) -> int:
        return int(self.text.replace(".", ""))

    @property
    def before(self) -> int:
        return int(self.text.partition(".")[0])

    @property
    def after(self) -> int:
        return int(self.text.partition(".")[2] or 0)

    @property
    def parts(self) -> tuple[int, int, int]:
        """Wholes, top and bottom."""
        found = re.fullmatch(r"(?:(\d+) )?(\d+)/(\d+)", self.text)
        if not found:
            return int(self.text), 0, 1
        whole, top, bottom = int(found[1] or 0), int(found[2]), int(found[3])
        return whole, top, bottom


NUMBER = r"\d+ \d+/\d+|\d+/\d+|\d+(?:\.\d+)?%?"


def numbers(text: str) -> list[N]:
    return [N(found) for found in re.findall(NUMBER, text)]


def signs(text: str) -> list[str]:
    return re.findall(r"(?<= )(?:[-+x/]|of)(?= )", text)


def work(a: Fraction, sign: str, b: Fraction) -> Fraction:
    return {"+": a + b, "-": a - b, "x": a * b, "of": a * b, "/": a / b if b else Fraction(0)}[sign]


@dataclass(frozen=True)
class Two:
    """Two numbers and what to do with them."""

    a: N
    sign: str
    b: N

    @property
    def right(self) -> Fraction:
        return work(self.a.value, self.sign, self.b.value)


def two(text: str) -> Two | None:
    """The two numbers of a problem, or of what finds its blank."""
    if "_" in text:
        return _asked(text)
    said, between = numbers(text), signs(text)
    return Two(said[0], between[0], said[1]) if len(said) == 2 and len(between) == 1 else None


def _asked(text: str) -> Two | None:
    left, _, other = (part.strip() for part in text.partition("="))
    if "_" in other:
        left, other = other, left
    said, between = numbers(left), signs(left)
    if len(said) != 1 or len(between) != 1 or signs(other):
        return None
    known, total, sign = said[0], N(other), between[0]
    if sign in "+x":
        return Two(total, {"+": "-", "x": "/"}[sign], known)
    if left.startswith("_"):
        return Two(total, {"-": "+", "/": "x"}[sign], known)
    return Two(known, sign, total)
