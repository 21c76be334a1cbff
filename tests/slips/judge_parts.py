"""Slips with decimals, fractions and percents, worked again."""

from collections.abc import Callable
from fractions import Fraction
from math import lcm, prod

from tests.slips.judge_products import facts_near, whole_products, whole_quotients
from tests.slips.judge_reading import Answers, N, Two, work
from tests.slips.judge_sums import whole_sums


def of_two(slug: str, case: Two) -> Answers:
    """What a slip can give on two numbers of any form."""
    forms = case.a.text + case.b.text
    if "%" in forms:
        return _look(PERCENTS, slug, case)
    if "." in forms:
        return decimal_sums(slug, case) if case.sign in "+-" else _look(DECIMALS, slug, case)
    if "/" in forms:
        return _look(FRACTION_SUMS if case.sign in "+-" else FRACTION_PRODUCTS, slug, case)
    a, b = int(case.a.text), int(case.b.text)
    if case.sign in "+-":
        return whole_sums(slug, a, case.sign, b)
    return whole_products(slug, a, b) if case.sign in ("x", "of") else whole_quotients(slug, a, b)


Table = dict[str, Callable[[Two], Answers]]


def _look(table: Table, slug: str, case: Two) -> Answers:
    return table[slug](case) if slug in table else set()


def decimal_sums(slug: str, case: Two) -> Answers:
    a, b, size = case.a, case.b, max(case.a.places, case.b.places)
    way = 1 if case.sign == "+" else -1
    bare = a.bare + way * b.bare
    after = a.after + b.after if way > 0 else abs(a.after - b.after)
    found: Answers = {
        "ignore-point": {bare},
        "right-aligned": {Fraction(bare, 10**a.places), Fraction(bare, 10**b.places)},
        "point-as-whole": {Fraction(f"{max(0, a.before + way * b.before)}.{after}")},
        "drop-carry": {case.right - 1},
    }.get(slug, set())
    whole = [int(each.value * 10**size) for each in (a, b)]
    units = whole_sums(slug, whole[0], case.sign, whole[1])
    return found | {Fraction(one, 10**size) for one in units if isinstance(one, int)}


def _bare(case: Two) -> Fraction:
    return work(Fraction(case.a.bare), case.sign, Fraction(case.b.bare))


def _both_sides(case: Two) -> Answers:
    one, other = (case.a, case.b) if case.a.pointed else (case.b, case.a)
    said = [work(Fraction(part), case.sign, other.value) for part in (one.before, one.after)]
    return {Fraction(f"{said[0]}.{said[1]}")} if all(s.denominator == 1 for s in said) else set()


def _other_sign(case: Two) -> Answers:
    a, b = case.a.value, case.b.value
    return {a + b} if case.sign == "x" else {a * b, a - b}


def _places(case: Two) -> int:
    return max(case.a.places, case.b.places)


DECIMALS: Table = {
    "ignore-point": lambda c: {_bare(c)},
    "point-misplaced": lambda c: {c.right * 10, c.right / 10, _bare(c) / 10 ** _places(c)},
    "append-zero": lambda c: {c.a.value, c.b.value},
    "point-as-whole": _both_sides,
    "always-smaller": lambda c: {c.a.value * c.b.value},
    "wrong-operation": _other_sign,
    "larger-by-smaller": lambda c: {c.b.value / c.a.value},
    "neighbour-fact": lambda c: {
        Fraction(one, 10 ** (c.a.places + c.b.places)) for one in facts_near(c.a.bare, c.b.bare)
    },
}


class _Parts:
    """Both numbers as wholes, tops and bottoms, and the tops over a common bottom."""

    def __init__(self, case: Two) -> None:
        self.way = 1 if case.sign == "+" else -1
        (self.w1, self.t1, self.b1), (self.w2, self.t2, self.b2) = case.a.parts, case.b.parts
        self.wholes = self.w1 + self.way * self.w2
        self.tops = self.t1 + self.t2 if self.way > 0 else abs(self.t1 - self.t2)
        self.common = lcm(self.b1, self.b2)
        self.first = self.t1 * self.common // self.b1
        self.second = self.t2 * self.common // self.b2


def _over(bottom: Callable[[_Parts], int]) -> Callable[[Two], Answers]:
    def answers(case: Two) -> Answers:
        p = _Parts(case)
        return {p.wholes + Fraction(p.tops, bottom(p))} if bottom(p) else set()

    return answers


def _same_bottom(top: Callable[[_Parts], int]) -> Callable[[Two], Answers]:
    def answers(case: Two) -> Answers:
        p = _Parts(case)
        return {p.wholes + Fraction(top(p), p.common)}

    return answers


def _parts_alone(case: Two) -> Answers:
    p = _Parts(case)
    return {Fraction(p.t1, p.b1) + p.way * Fraction(p.t2, p.b2)}


def _whole_on_top(case: Two) -> Answers:
    p = _Parts(case)
    return {Fraction(p.w1 + p.t2, p.b2), Fraction(p.w2 + p.t1, p.b1)}


FRACTION_SUMS: Table = {
    "add-across": _over(lambda p: p.b1 + p.b2),
    "subtract-across": _over(lambda p: abs(p.b1 - p.b2)),
    "tops-over-larger": _over(lambda p: max(p.b1, p.b2)),
    "tops-unchanged": lambda c: _over(lambda p: p.common)(c) | _over(lambda p: p.b1 * p.b2)(c),
    "tops-only": lambda c: {_Parts(c).t1 + _Parts(c).t2},
    "bottoms-only": lambda c: {_Parts(c).b1 + _Parts(c).b2},
    "wholes-forgotten": _parts_alone,
    "parts-forgotten": lambda c: {_Parts(c).wholes},
    "drop-carry": lambda c: {c.right - 1},
    "whole-as-top": _whole_on_top,
    "smaller-from-larger": _same_bottom(lambda p: p.second - p.first),
    "no-regroup": _same_bottom(lambda p: p.common + p.first - p.second),
    "whole-as-ten": _same_bottom(lambda p: 10 + p.first - p.second - p.common),
    "near-miss": lambda c: {c.right + Fraction(off, _Parts(c).common) for off in (-1, 1)},
    "wrong-operation": lambda c: {abs(c.a.value - _Parts(c).way * c.b.value)},
}


def _some_multiplied(case: Two) -> Answers:
    p = _Parts(case)
    rest = [Fraction(p.t1, p.b1), Fraction(p.t2, p.b2)]
    wholes = Fraction(p.w1 * p.w2)
    return {wholes, wholes + (prod(rest) if all(rest) else sum(rest))}


def _either(work_on: Callable[[int, int, Fraction], Fraction]) -> Callable[[Two], Answers]:
    """A part, top and bottom, taken of the other number, whichever is the part."""

    def answers(case: Two) -> Answers:
        pairs: tuple[tuple[N, N], ...] = ((case.a, case.b), (case.b, case.a))
        return {work_on(*part.parts[1:], number.value) for part, number in pairs if part.parts[1]}

    return answers


FRACTION_PRODUCTS: Table = {
    "both-multiplied": lambda c: {c.a.value, c.b.value},
    "bottom-kept": lambda c: {c.right * _Parts(c).common},
    "crossed": lambda c: {c.a.value / c.b.value},
    "wrong-turned": lambda c: {c.b.value / c.a.value},
    "always-smaller": lambda c: {c.a.value * c.b.value},
    "wrong-operation": lambda c: {
        c.a.value + c.b.value if c.sign == "x" else c.a.value * c.b.value
    },
    "part-missing": _some_multiplied,
    "larger-by-smaller": lambda c: {c.b.value / c.a.value},
    "only-divided": _either(lambda top, bottom, number: number / bottom),
    "only-multiplied": _either(lambda top, bottom, number: number * top),
    "times-bottom": lambda c: (
        _either(lambda top, bottom, number: number * bottom)(c)
        | _either(lambda top, bottom, number: number * bottom / top)(c)
    ),
    "bottom-taken": _either(lambda top, bottom, number: number - bottom),
    "rest-instead": lambda c: {c.a.value - c.right, c.b.value - c.right},
}


def _rate(case: Two) -> tuple[Fraction, Fraction]:
    rate, number = (case.a, case.b) if case.a.percent else (case.b, case.a)
    return rate.value * 100, number.value


def _blocks(case: Two) -> Answers:
    rate, number = _rate(case)
    blocks = [block for block in (100, 50, 25, 10, 5, 1) if block < rate]
    return {number * part / 100 for block in blocks for part in (block, rate - block)}


PERCENTS: Table = {
    "percent-as-number": lambda c: {_rate(c)[0]},
    "divided-by-percent": lambda c: {_rate(c)[1] / _rate(c)[0]},
    "percent-taken": lambda c: {_rate(c)[1] - _rate(c)[0], _rate(c)[1] + _rate(c)[0]},
    "hundred-forgotten": lambda c: {_rate(c)[1] * _rate(c)[0]},
    "hundred-dropped": lambda c: {c.right - _rate(c)[1]},
    "point-misplaced": lambda c: {c.right * 10, c.right / 10},
    "rest-instead": lambda c: {_rate(c)[1] - c.right},
    "near-miss": lambda c: {c.right - 1, c.right + 1},
    "part-missing": _blocks,
}
