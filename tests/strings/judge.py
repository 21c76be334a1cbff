"""A judge of links that shares no code with them: numbers and values read from plain text."""

import re
from fractions import Fraction

_MIXED = re.compile(r"(?<![\d.])(\d+) (\d+)/(\d+)")
_PARTS = re.compile(r"(?<![\d.])(\d+)/(\d+)")
_PERCENT = re.compile(r"(\d+(?:\.\d+)?)%")
_NUMBER = re.compile(r"\d+ \d+/\d+|\d+/\d+|\d+(?:\.\d+)?%?")


def number(written: str) -> Fraction:
    """The value of one written number."""
    mixed = _MIXED.fullmatch(written)
    if mixed:
        whole, top, bottom = map(int, mixed.groups())
        return whole + Fraction(top, bottom)
    if written.endswith("%"):
        return Fraction(written[:-1]) / 100
    return Fraction(written)


def numbers(problem: str) -> list[Fraction]:
    """Every number of a text, from left to right."""
    return [number(found) for found in _NUMBER.findall(problem)]


def signs(problem: str) -> str:
    """The text with every number alike."""
    return _NUMBER.sub("n", problem)


def value(expression: str) -> Fraction:
    """The value of an expression without brackets: x, / and of first, then + and -."""
    tokens = re.split(r" (\+|-|x|/|of) ", expression)
    total, sign, part = Fraction(0), 1, number(tokens[0])
    for operator, written in zip(tokens[1::2], tokens[2::2], strict=True):
        size = number(written)
        if operator in ("x", "of"):
            part *= size
        elif operator == "/":
            part /= size
        else:
            total, sign, part = total + sign * part, (1 if operator == "+" else -1), size
    return total + sign * part


def apart(equation: str) -> Fraction:
    """By how much the left side is more than the right."""
    left, right = equation.split(" = ")
    return value(left) - value(right)


def true(equation: str) -> bool:
    """Tell whether both sides of an equation come to the same."""
    return apart(equation) == 0


def answer(problem: str) -> Fraction:
    """The value of an expression, or what fills the one blank of an equation."""
    if "_" not in problem:
        return value(problem)
    if " + " in problem or " - " in problem:
        none, one = (apart(problem.replace("_", blank)) for blank in ("0", "1"))
        return none / (none - one)
    at = _NUMBER.sub("n", problem).replace(" = ", " ").split(" ")[::2].index("_")
    given, is_product = numbers(problem), " x " in problem
    if is_product:
        product_last = problem.split(" = ")[1].isdigit()
        first, second = given if product_last else given[::-1]
        return second / first
    match at:
        case 0:
            return given[0] * given[1]
        case 1:
            return given[0] / given[1]
        case _:
            return given[0] / given[1]
