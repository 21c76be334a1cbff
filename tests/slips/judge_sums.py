"""Slips of sums and differences of whole numbers, worked again on their digits."""

import re
from collections.abc import Callable

from tests.slips.judge_reading import Answers

Rule = Callable[[list[int], list[int], int, int], int | None]


def columns(
    a: int, b: int, borrow: str, rule: Rule = lambda top, first, at, low: None
) -> int | None:
    first = [int(digit) for digit in str(a)]
    top = [*first]
    lows = [int(digit) for digit in str(b).rjust(len(top), "0")]
    start = len(top) - len(str(b))
    said = ""
    for at in range(len(top) - 1, -1, -1):
        low = lows[at]
        digit = rule(top, first, at, low) if at >= start else None
        if digit is None:
            if top[at] < low:
                if not _fetch(top, at, borrow):
                    return None
                top[at] += 10
            digit = top[at] - low
        said = str(digit) + said if digit < 10 else f"({digit})" + said
    return _worth(said)


def _worth(said: str) -> int:
    digits = [int(found.strip("()")) for found in re.findall(r"\(\d+\)|\d", said)]
    return sum(digit * 10**place for place, digit in enumerate(reversed(digits)))


def _fetch(top: list[int], at: int, borrow: str) -> bool:
    if borrow == "nowhere":
        return True
    if borrow == "nine" and at and top[at - 1] == 0:
        top[at - 1] = 9
        return True
    if borrow == "first":
        if at == 0 or top[0] < 1:
            return False
        top[0] -= 1
        return True
    source = next((place for place in range(at - 1, -1, -1) if top[place] > 0), None)
    if source is None:
        return False
    top[source] -= 1
    for place in range(source + 1, at):
        top[place] = {"skip": 0, "ten": 10}.get(borrow, 9)
    return True


def _turn(top: list[int], first: list[int], at: int, low: int) -> int | None:
    return low - top[at] if top[at] < low else None


def _turn_by_zero(top: list[int], first: list[int], at: int, low: int) -> int | None:
    return _turn(top, first, at, low) if at and top[at - 1] == 0 and any(top[:at]) else None


def _zero(gives: str) -> Rule:
    def rule(top: list[int], first: list[int], at: int, low: int) -> int | None:
        if top[at] == first[at] == 0 and low:
            return low if gives == "n" else 0
        return None

    return rule


def _take_zero(top: list[int], first: list[int], at: int, low: int) -> int | None:
    return 0 if top[at] and not low else None


def _too_small(top: list[int], first: list[int], at: int, low: int) -> int | None:
    return 0 if top[at] < low else None


DIFFERENCES: dict[str, list[tuple[str, Rule]]] = {
    "smaller-from-larger": [("right", _turn), ("right", _turn_by_zero)],
    "no-regroup": [("nowhere", lambda top, first, at, low: None)],
    "zero-to-nine": [("nine", lambda top, first, at, low: None)],
    "skip-zero": [("skip", lambda top, first, at, low: None)],
    "zero-stays-ten": [("ten", lambda top, first, at, low: None)],
    "borrow-leftmost": [("first", lambda top, first, at, low: None)],
    "zero-take": [
        ("right", _zero("n")),
        ("skip", _zero("n")),
        ("right", _zero("0")),
        ("right", _take_zero),
    ],
    "write-zero": [("right", _too_small)],
}


def pieces(number: int) -> list[int]:
    plain = str(number)
    return [
        int(digit) * 10 ** (len(plain) - 1 - at) for at, digit in enumerate(plain) if digit != "0"
    ]


def whole_sums(slug: str, a: int, sign: str, b: int) -> Answers:
    """What a slip can give on a sum or a difference of whole numbers."""
    way = 1 if sign == "+" else -1
    found: Answers = set()
    if sign == "-" and a >= b and slug in DIFFERENCES:
        found |= {columns(a, b, borrow, rule) for borrow, rule in DIFFERENCES[slug]}
    return found | (SUMS[slug](a, way, b) if slug in SUMS else set())


def _turned(a: int, way: int, b: int) -> Answers:
    return {b - a} if a < b and way < 0 else set()


def _near_miss(a: int, way: int, b: int) -> Answers:
    return {a + way * b + off * 10**k for k in range(4) for off in (-1, 1)}


def _friendly(times: int) -> Callable[[int, int, int], Answers]:
    """Once the way to the friendly number for a forgotten one, twice for one put right awry."""

    def answers(a: int, way: int, b: int) -> Answers:
        found: Answers = set()
        for size in (10, 100, 1000, 10_000, 100_000):
            for near in (b // size * size, -(-b // size) * size):
                found.add(a + way * b + times * way * (near - b))
            for near in (a // size * size, -(-a // size) * size):
                found.add(a + b + times * (near - a) if way > 0 else None)
        if way > 0:
            found |= {a + b + times * (a - b), a + b + times * (b - a)}
        return found

    return answers


def _missing(a: int, way: int, b: int) -> Answers:
    big = {pieces(a)[0] + way * pieces(b)[0]} if a and b else set()
    hops: Answers = set()
    if way < 0 and a >= b:
        up = min(-(-b // 10) * 10, a)
        down = max(a - (a - up) % 10, up)
        hops = {a - b - hop for hop in (up - b, down - up, a - down)}
    return {a + way * b - way * piece for piece in pieces(b)} | big | hops


def _alone(a: int, way: int, b: int) -> Answers:
    return {a + way * sum(map(int, str(b))), sum(map(int, str(a) + str(b)))}


def _left(a: int, way: int, b: int) -> Answers:
    size = max(len(str(a)), len(str(b)))
    return {int(str(a).ljust(size, "0")) + way * int(str(b).ljust(size, "0"))}


def _blanks(a: int, way: int, b: int) -> Answers:
    return {a - b - sum(10**place for place in range(len(str(b)), len(str(a))))}


def _digits_over(a: int, b: int) -> list[tuple[int, int]]:
    size = max(len(str(a)), len(str(b)))
    return [
        (int(x), int(y))
        for x, y in zip(str(a).rjust(size, "0"), str(b).rjust(size, "0"), strict=True)
    ]


def _dropped(a: int, b: int) -> Answers:
    """All that carries out of a column that is not the first, or one of them, taken away."""
    over = _digits_over(a, b)
    lost = [10 ** (len(over) - at) for at, (x, y) in enumerate(over) if at and x + y > 9]
    return {a + b - sum(lost)} | {a + b - one for one in lost}


def _in_full(a: int, b: int) -> int:
    return int("".join(str(x + y) for x, y in _digits_over(a, b)))


SUMS: dict[str, Callable[[int, int, int], Answers]] = {
    "smaller-from-larger": _turned,
    "drop-carry": lambda a, way, b: _dropped(a, b),
    "near-miss": _near_miss,
    "adjust-wrong-way": _friendly(2),
    "moved-across": _friendly(2),
    "forget-adjust": _friendly(1),
    "count-start": lambda a, way, b: {a + way * b - way},
    "part-missing": _missing,
    "wrong-operation": lambda a, way, b: {abs(a - b) if way > 0 else a + b},
    "ones-taken": lambda a, way, b: {a - a % 10 - (b - b % 10) - a % 10 - b % 10},
    "digits-alone": _alone,
    "write-carry": lambda a, way, b: {_in_full(a, b)},
    "misaligned": _left,
    "stops-short": lambda a, way, b: {a % 10 ** len(str(b)) - b},
    "lowers-blank": _blanks,
}
