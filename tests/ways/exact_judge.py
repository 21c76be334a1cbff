"""A judge of steps of any numbers, on Python's own fractions and the printed text alone.

It shares no code with the engine: it reads what is printed as a child would read it.
"""

import re
from fractions import Fraction
from functools import lru_cache

_NUMBER = re.compile(r"-?(?:\d+ )?\d+/\d+|-?\d+(?:\.\d+)?%?")
_SIGNS = {"+", "-", "x", "/", "of"}


@lru_cache(maxsize=1 << 14)
def value(printed: str) -> Fraction:
    """The value of `3/4 + 7/8`, worked from left to right after products and parts."""
    tokens = _tokens(printed)
    found, place = _sum(tokens, 0)
    assert place == len(tokens), printed
    return found


def holds(equation: str) -> bool:
    """Whether both sides of a printed equation are worth the same."""
    left, right = equation.split(" = ")
    return value(left) == value(right)


@lru_cache(maxsize=1 << 14)
def number(printed: str) -> Fraction:
    """A printed number: `15%`, `1 2/4`, `0.65`, `-5`."""
    plain = printed.strip("()")
    sign = -1 if plain.startswith("-") else 1
    size = plain.removeprefix("-")
    if size.endswith("%"):
        return sign * Fraction(size[:-1]) / 100
    whole, _, part = size.rpartition(" ")
    return sign * (int(whole or 0) + Fraction(part))


@lru_cache(maxsize=1 << 12)
def numbers(printed: str) -> frozenset[Fraction]:
    """Every number of a printed problem, expression or equation; a blank is none."""
    sides = printed.removeprefix("about ").replace("_", "").replace("?", "=").split("=")
    tokens = [token for side in sides for token in _tokens(side)]
    return frozenset(number(token) for token in tokens if token not in _SIGNS | {"(", ")"})


def _tokens(printed: str) -> list[str]:
    found: list[str] = []
    rest = printed
    while rest := rest.strip():
        after_number = bool(found) and found[-1] not in _SIGNS and found[-1] != "("
        match = _NUMBER.match(rest)
        if match and not (after_number and rest.startswith("-")):
            token = match[0]
        else:
            token = "of" if rest.startswith("of") else rest[0]
        found.append(token)
        rest = rest[len(token) :]
    return found


def _sum(tokens: list[str], place: int) -> tuple[Fraction, int]:
    found, place = _product(tokens, place)
    while place < len(tokens) and tokens[place] in "+-":
        sign = tokens[place]
        more, place = _product(tokens, place + 1)
        found = found + more if sign == "+" else found - more
    return found, place


def _product(tokens: list[str], place: int) -> tuple[Fraction, int]:
    found, place = _one(tokens, place)
    while place < len(tokens) and tokens[place] in ("x", "/", "of"):
        sign = tokens[place]
        more, place = _one(tokens, place + 1)
        found = found / more if sign == "/" else found * more
    return found, place


def _one(tokens: list[str], place: int) -> tuple[Fraction, int]:
    if tokens[place] == "(":
        found, place = _sum(tokens, place + 1)
        assert tokens[place] == ")"
        return found, place + 1
    return number(tokens[place]), place + 1
