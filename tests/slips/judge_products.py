"""Slips of products and divisions of whole numbers, worked again."""

from collections.abc import Callable
from fractions import Fraction
from itertools import product

from tests.slips.judge_reading import Answers
from tests.slips.judge_sums import pieces


def whole_products(slug: str, a: int, b: int) -> Answers:
    """What a slip can give on a product of whole numbers."""
    return PRODUCTS[slug](a, b) if slug in PRODUCTS else set()


def whole_quotients(slug: str, a: int, b: int) -> Answers:
    """What a slip can give on a division of whole numbers; a remainder is a pair."""
    return QUOTIENTS[slug](a, b) if slug in QUOTIENTS else set()


def _near_miss(a: int, b: int) -> Answers:
    return {a * b + off * 10**k for k in range(len(str(a * b))) for off in (-1, 1)}


def _zero_times(a: int, b: int) -> Answers:
    found: Answers = set() if a * b else {a + b}
    for one, other in ((a, b), (b, a)):
        places = [place for place, digit in enumerate(str(one)[::-1]) if digit == "0"]
        found.add(one * other + sum(other * 10**place for place in places))
    return found


def _alone(a: int, b: int) -> Answers:
    return {one * sum(map(int, str(other))) for one, other in ((a, b), (b, a))}


def _in_full(a: int, b: int) -> Answers:
    return {int("".join(str(int(d) * o) for d in str(one))) for one, o in ((a, b), (b, a))}


def facts_near(a: int, b: int) -> Answers:
    found: Answers = set()
    scales = {10**k for k in range(8)}
    for one, other in product(scales, scales):
        if a % one == 0 and b % other == 0:
            near = product(range(-2, 3), range(-2, 3))
            found |= {(a // one + x) * (b // other + y) * one * other for x, y in near}
    return found


def _products_missing(a: int, b: int) -> Answers:
    found: Answers = set()
    for split in ([(a, p) for p in pieces(b)], [(p, b) for p in pieces(a)],
                  [*product(pieces(a), pieces(b))]):  # fmt: skip
        parts = [x * y for x, y in split]
        found |= {sum(parts) - part for part in parts}
    short = zip(str(a)[::-1], str(b)[::-1], strict=False)
    found |= {sum(int(x) * int(y) * 100**at for at, (x, y) in enumerate(short))}
    return found


def _near_products(slug: str, a: int, b: int) -> Answers:
    found: Answers = set()
    for changed, kept in ((a, b), (b, a)):
        for off in range(-3, 4):
            if (changed + off) % 10 and changed + off != 5:
                continue
            near = (changed + off) * kept
            found |= {
                "forget-adjust": {near},
                "adjust-wrong-way": {near + off * kept},
                "adjust-by-ones": {near - off},
            }[slug]
        if slug == "forget-adjust":
            found |= {kept * large for small, large in ((5, 10), (25, 100), (50, 100))
                      if changed == small}  # fmt: skip
    return found


def _products_dropped(long: int, short: int) -> int:
    total = 0
    for by, times in enumerate(str(short)[::-1]):
        for at, digit in enumerate(str(long)[::-1]):
            one = int(digit) * int(times)
            kept = one if at == len(str(long)) - 1 else one % 10
            total += kept * 10 ** (at + by)
    return total


def _carried_first(long: int, times: int) -> int:
    carry, said = 0, ""
    for digit in str(long)[::-1]:
        one = (int(digit) + carry) * times
        said, carry = str(one % 10) + said, one // 10
    return int((str(carry) if carry else "") + said)


PRODUCTS: dict[str, Callable[[int, int], Answers]] = {
    "wrong-operation": lambda a, b: {a + b},
    "group-off": lambda a, b: {a * b + off for off in (-a, a, -b, b)},
    "neighbour-fact": facts_near,
    "near-miss": _near_miss,
    "zero-times": _zero_times,
    "zero-dropped": lambda a, b: {Fraction(a * b, 10**k) for k in range(1, 8)},
    "zero-added": lambda a, b: {a * b * 10},
    "digits-alone": _alone,
    "part-missing": _products_missing,
    "forget-adjust": lambda a, b: _near_products("forget-adjust", a, b),
    "adjust-wrong-way": lambda a, b: _near_products("adjust-wrong-way", a, b),
    "adjust-by-ones": lambda a, b: _near_products("adjust-by-ones", a, b),
    "one-side-only": lambda a, b: {a * b * 2, Fraction(a * b, 2)},
    "drop-carry": lambda a, b: {_products_dropped(max(a, b), min(a, b))},
    "write-carry": _in_full,
    "carry-first": lambda a, b: {
        _carried_first(one, other) for one, other in ((a, b), (b, a)) if other < 10
    },
}


def _told(groups: int, left: int) -> object:
    return (groups, left) if left else groups


def _off(a: int, b: int) -> Answers:
    q, r = divmod(a, b)
    off = {_told(q + miss, r) for miss in (-10, -1, 1, 10)}
    return off | {_told(q, r + 1), _told(q, r - 1)}


def _zeros_lost(a: int, b: int) -> Answers:
    plain = str(a // b)
    kept = plain.rstrip("0")
    inner = int((kept.replace("0", "") or "0") + "0" * (len(plain) - len(kept)))
    return {Fraction(a // b, 10**k) for k in range(1, 8)} | {inner}


def _turned_over(a: int, b: int) -> Answers:
    found: Answers = {Fraction(b, a), divmod(b, a)} if a else set()
    digits = [int(digit) for digit in str(a)]
    if 0 not in digits:
        shares = [Fraction(max(digit, b), min(digit, b)) for digit in digits]
        if all(share.denominator == 1 for share in shares):
            found |= {int("".join(map(str, shares)))}
    return found


QUOTIENTS: dict[str, Callable[[int, int], Answers]] = {
    "wrong-operation": lambda a, b: {a * b, a - b},
    "near-miss": _off,
    "neighbour-fact": lambda a, b: {a // b + off for off in (-2, -1, 1, 2)},
    "group-off": lambda a, b: {a // b - 1, a // b + 1},
    "larger-by-smaller": _turned_over,
    "zero-times": lambda a, b: set() if a else {b},
    "zero-dropped": _zeros_lost,
    "zero-added": lambda a, b: {a // b * 10**k for k in range(1, 8)},
    "digits-alone": lambda a, b: {sum(Fraction(int(digit), b) for digit in str(a))},
    "part-missing": lambda a, b: {a // b - piece for piece in pieces(a // b)},
    "one-side-only": lambda a, b: {a // b * 2, Fraction(a // b, 2)},
    "divisor-split": lambda a, b: {sum(Fraction(a, piece) for piece in pieces(b))},
    "rest-forgotten": lambda a, b: {a // b},
    "rest-as-point": lambda a, b: {Fraction(f"{a // b}.{a % b}")},
    "rest-wrong-bottom": lambda a, b: {
        a // b + Fraction(a % b, bottom) for bottom in (a // b, a) if bottom
    },
    "rest-too-large": lambda a, b: {(a // b - off, a % b + off * b) for off in (1, 2)},
    "rest-as-group": lambda a, b: {a // b + 1},
    "rest-not-carried": lambda a, b: {int("".join(str(int(digit) // b) for digit in str(a)))},
}
