"""Every saying that generalises, proved for all numbers on the problem that its link is found in.

A rule says what is done to the numbers a link marks, and what the answer does then: symbols stand
in all places of the problem, and the answer is worked out anew from them. A fact is an equation of
its own, for links between problems of two forms. What does not generalise is listed with a reason.
"""

from collections.abc import Callable
from typing import NamedTuple

import pytest
import sympy
from hypothesis import given
from sympy import Expr

from tests.strings.products_made import strings as product_strings
from tests.strings.strings_made import strings
from waysaid.number import BLANK, Equation, Operation, Problem, Sign, parse
from waysaid.strings import Link, Saying, leaves_of, links

a, b, c, d, e, i, k, n, p, q, r = sympy.symbols("a b c d e i k n p q r", positive=True)

Numbers = list[Expr]


class Rule(NamedTuple):
    """A string with the link; what is done to its marked numbers, and to the answer.

    `effect` is given the answer and the first marked number. One that is not `everywhere` is
    written for the signs of its own string.
    """

    string: tuple[str, ...]
    change: Callable[[Numbers], Numbers]
    effect: Callable[[Expr, Expr], Expr]
    everywhere: bool = True


def rule(text: str, change, effect, *, everywhere: bool = True) -> Rule:
    return Rule(tuple(text.split("; ")), change, effect, everywhere)


def one(change):
    """Do it to the one number that is marked."""
    return lambda marked: [change(marked[0]), *marked[1:]]


def each(change):
    return lambda marked: [change(one) for one in marked]


def two(first, second):
    return lambda marked: [first(marked[0]), second(marked[1])]


def stays(answer, _first):
    return answer


def more(answer, _first):
    return answer + d


def less(answer, _first):
    return answer - d


def groups(by):
    """By so many times what there is one of: the answer over the number that counts it."""
    return lambda answer, first: answer + by * answer / first


def scaled(by):
    return lambda answer, _first: answer * by


RULES = {
    Saying.NUMBER_UP_ANSWER_UP: rule("40 + 25; 43 + 25", one(lambda m: m + d), more),
    Saying.NUMBER_DOWN_ANSWER_DOWN: rule("40 + 25; 37 + 25", one(lambda m: m - d), less),
    Saying.UP_MISSING_UP: rule("7 + _ = 12; 7 + _ = 15", one(lambda m: m + d), more),
    Saying.DOWN_MISSING_DOWN: rule("7 + _ = 12; 7 + _ = 11", one(lambda m: m - d), less),
    Saying.UP_MISSING_DOWN: rule("8 + _ = 13; 9 + _ = 13", one(lambda m: m + d), less),
    Saying.DOWN_MISSING_UP: rule("9 + _ = 13; 8 + _ = 13", one(lambda m: m - d), more),
    Saying.TAKE_MORE: rule("52 - 19; 52 - 20", one(lambda m: m + d), less),
    Saying.TAKE_LESS: rule("52 - 20; 52 - 19", one(lambda m: m - d), more),
    Saying.MOVED: rule("40 + 25; 37 + 28", two(lambda m: m - d, lambda m: m + d), stays),
    Saying.MOVED_BETWEEN_TWINS: rule(
        "35 + 35; 34 + 36", two(lambda m: m - d, lambda m: m + d), stays
    ),
    Saying.BOTH_UP: rule("62 - 25; 67 - 30", each(lambda m: m + d), stays),
    Saying.BOTH_DOWN: rule("67 - 30; 62 - 25", each(lambda m: m - d), stays),
    Saying.TWIN: rule(
        "50 + 30; 48 + 33",
        two(lambda m: m + d, lambda m: m + e),
        lambda answer, _first: answer + d + e,
        everywhere=False,
    ),
    Saying.TURNED: rule("37 + 25; 25 + 37", lambda marked: marked[::-1], stays, everywhere=False),
    Saying.TENS: rule("3 + 4; 30 + 40", each(lambda m: 10 * m), scaled(10)),
    Saying.HUNDREDS: rule("3 + 4; 300 + 400", each(lambda m: 100 * m), scaled(100)),
    Saying.DOUBLED: rule("4 + 3; 8 + 6", each(lambda m: 2 * m), scaled(2)),
    Saying.HALVED: rule("8 + 6; 4 + 3", each(lambda m: m / 2), scaled(sympy.Rational(1, 2))),
    Saying.MOVES_EACH_TIME: rule(
        "5 + 5; 6 + 4; 7 + 3", two(lambda m: m + n * d, lambda m: m - n * d), stays
    ),
    Saying.ALIKE_EACH_TIME: rule("50 - 20; 51 - 21; 52 - 22", each(lambda m: m + n * d), stays),
    Saying.UP_AND_UP: rule(
        "64 + 10; 64 + 20; 64 + 30", one(lambda m: m + n * d), lambda answer, _: answer + n * d
    ),
    Saying.DOWN_AND_DOWN: rule(
        "64 + 30; 64 + 20; 64 + 10", one(lambda m: m - n * d), lambda answer, _: answer - n * d
    ),
    Saying.UP_AND_DOWN: rule(
        "80 - 10; 80 - 20; 80 - 30", one(lambda m: m + n * d), lambda answer, _: answer - n * d
    ),
    Saying.DOWN_AND_UP: rule(
        "80 - 30; 80 - 20; 80 - 10", one(lambda m: m - n * d), lambda answer, _: answer + n * d
    ),
    Saying.ALL_UP: rule(
        "1 + 1; 2 + 3; 3 + 5",
        two(lambda m: m + n * d, lambda m: m + n * e),
        lambda answer, _: answer + n * (d + e),
        everywhere=False,
    ),
    Saying.ALL_DOWN: rule(
        "9 + 9; 8 + 7; 7 + 5",
        two(lambda m: m - n * d, lambda m: m - n * e),
        lambda answer, _: answer - n * (d + e),
        everywhere=False,
    ),
    Saying.ALL_STAY: rule(
        "5 + 5 + 9; 6 + 7 + 6; 7 + 9 + 3",
        lambda m: [m[0] + n * d, m[1] + n * e, m[2] - n * (d + e)],
        stays,
        everywhere=False,
    ),
    Saying.GROUP_MORE: rule("6 x 7; 7 x 7", one(lambda m: m + 1), groups(1)),
    Saying.GROUP_LESS: rule("7 x 7; 6 x 7", one(lambda m: m - 1), groups(-1)),
    Saying.GROUPS_MORE: rule("6 x 7; 9 x 7", one(lambda m: m + d), groups(d)),
    Saying.GROUPS_LESS: rule("9 x 7; 6 x 7", one(lambda m: m - d), groups(-d)),
    Saying.PART_MORE: rule("0.5 x 8; 0.75 x 8", one(lambda m: m + d), groups(d)),
    Saying.PART_LESS: rule("0.75 x 8; 0.5 x 8", one(lambda m: m - d), groups(-d)),
    Saying.SHARE_MORE: rule("60 / 6; 96 / 6", one(lambda m: m + d), groups(d)),
    Saying.SHARE_LESS: rule("96 / 6; 60 / 6", one(lambda m: m - d), groups(-d)),
    Saying.MISSING_GREW: rule(
        "_ x 6 = 54; _ x 6 = 60", one(lambda m: m + d), groups(d), everywhere=False
    ),
    Saying.MISSING_SHRANK: rule(
        "_ x 6 = 60; _ x 6 = 54", one(lambda m: m - d), groups(-d), everywhere=False
    ),
    Saying.ONE_DOUBLED: rule("2 x 7; 4 x 7", one(lambda m: 2 * m), scaled(2)),
    Saying.ONE_HALVED: rule("4 x 7; 2 x 7", one(lambda m: m / 2), scaled(sympy.Rational(1, 2))),
    Saying.BY_TWICE: rule("24 / 4; 24 / 8", one(lambda m: 2 * m), scaled(sympy.Rational(1, 2))),
    Saying.BY_HALF: rule("24 / 8; 24 / 4", one(lambda m: m / 2), scaled(2)),
    Saying.TWO_DOUBLED: rule("6 x 7; 12 x 14", each(lambda m: 2 * m), scaled(4)),
    Saying.TWO_HALVED: rule("12 x 14; 6 x 7", each(lambda m: m / 2), scaled(sympy.Rational(1, 4))),
    Saying.ONE_TIMES: rule("2 x 7; 6 x 7", one(lambda m: k * m), scaled(k)),
    Saying.ONE_OVER: rule("6 x 7; 2 x 7", one(lambda m: m / k), scaled(1 / k)),
    Saying.BY_TIMES: rule("48 / 4; 48 / 12", one(lambda m: k * m), scaled(1 / k)),
    Saying.BY_OVER: rule("48 / 12; 48 / 4", one(lambda m: m / k), scaled(k)),
    Saying.PLACES_UP: rule(
        "3 x 4; 3 x 40", one(lambda m: 10**i * m), scaled(10**i), everywhere=False
    ),
    Saying.PLACES_DOWN: rule(
        "3 x 40; 3 x 4", one(lambda m: m / 10**i), scaled(10**-i), everywhere=False
    ),
    Saying.PLACES_STAY: rule(
        "400 / 80; 40 / 8", each(lambda m: m / 10**i), stays, everywhere=False
    ),
    Saying.DOUBLE_AND_HALF: rule("16 x 5; 8 x 10", two(lambda m: m / 2, lambda m: m * 2), stays),
    Saying.TIMES_AND_OVER: rule("12 x 5; 4 x 15", two(lambda m: m / k, lambda m: m * k), stays),
    Saying.BOTH_DOUBLED: rule("90 / 6; 180 / 12", each(lambda m: 2 * m), stays),
    Saying.BOTH_HALVED: rule("180 / 12; 90 / 6", each(lambda m: m / 2), stays),
    Saying.BOTH_TIMES: rule("90 / 6; 270 / 18", each(lambda m: k * m), stays),
    Saying.BOTH_OVER: rule("270 / 18; 90 / 6", each(lambda m: m / k), stays),
    Saying.STEPS_UP: rule("5 x 6; 6 x 6; 7 x 6", one(lambda m: m + n * d), groups(n * d)),
    Saying.STEPS_DOWN: rule("7 x 6; 6 x 6; 5 x 6", one(lambda m: m - n * d), groups(-n * d)),
    Saying.GROWS: rule("2 x 7; 4 x 7; 8 x 7", one(lambda m: k**n * m), scaled(k**n)),
    Saying.SHRINKS: rule("8 x 7; 4 x 7; 2 x 7", one(lambda m: m / k**n), scaled(k**-n)),
    Saying.BY_GROWS: rule("80 / 2; 80 / 4; 80 / 8", one(lambda m: k**n * m), scaled(k**-n)),
    Saying.BY_SHRINKS: rule("80 / 8; 80 / 4; 80 / 2", one(lambda m: m / k**n), scaled(k**n)),
    Saying.BOTH_GROW: rule("90 / 6; 180 / 12; 360 / 24", each(lambda m: k**n * m), stays),
    Saying.BOTH_SHRINK: rule("360 / 24; 180 / 12; 90 / 6", each(lambda m: m / k**n), stays),
    Saying.TRADES: rule(
        "16 x 3; 8 x 6; 4 x 12", two(lambda m: m / k**n, lambda m: m * k**n), stays
    ),
}


class Fact(NamedTuple):
    """A string with the link, and expressions that are 0 for all numbers, or above 0."""

    string: tuple[str, ...]
    zero: tuple[Expr, ...] = ()
    above: tuple[Expr, ...] = ()


FACTS = {
    Saying.UNDOES: Fact(("36 + 28", "64 - 28"), ((a + b) - b - a,)),
    Saying.SAME_THREE: Fact(("13 - 8", "13 - 5"), (c - (c - a) - a,)),
    Saying.UNDOES_TIMES: Fact(("6 x 4", "24 / 6"), ((a * b) / a - b,)),
    Saying.SAME_THREE_TIMES: Fact(("24 / 6", "24 / 4"), (c / (c / a) - a,)),
    Saying.LEFT_OVER_MORE: Fact(("16 / 3", "17 / 3"), (((n * q + r + d) - n * q) - (r + d),)),
    Saying.LEFT_OVER_LESS: Fact(("17 / 3", "16 / 3"), (((n * q + r - d) - n * q) - (r - d),)),
    Saying.BY_MORE: Fact(("24 / 3", "24 / 4"), above=(a / b - a / (b + d),)),
    Saying.BY_LESS: Fact(("24 / 4", "24 / 3"), above=(a / b - a / (b + d),)),
    Saying.PERCENT_TURNED: Fact(("16% of 25", "25% of 16"), (p / 100 * q - q / 100 * p,)),
    Saying.TOGETHER: Fact(
        ("5 x 7", "2 x 7", "7 x 7"),
        (a * b + c * b - (a + c) * b, a / b + c / b - (a + c) / b),
    ),
}

TURNED_SIDES = {
    Saying.SIDES_TURNED: (("0.6 ? 0.65", "0.65 ? 0.6"), sympy.Lt(a, b), sympy.Gt(b, a)),
    Saying.CLAIM_TURNED: (
        ("29 + 14 = 30 + 13 ?", "30 + 13 = 29 + 14 ?"),
        sympy.Eq(a, b),
        sympy.Eq(b, a),
    ),
}

HERE_ALONE = {
    Saying.NUMBER_BACK: (
        ("12 + 25", "48 - 25"),
        "that a number comes back is so of these problems alone",
    ),
    Saying.NUMBER_BACK_WRITTEN: (
        ("1/4 x 36", "0.25 x 40"),
        "that a number comes back is so of these problems alone",
    ),
    Saying.TOTAL_BACK: (
        ("3 x 8", "20 + 4"),
        "that answers are equal is so of these problems alone",
    ),
    Saying.FEEDS: (
        ("28 + 2", "30 + 7"),
        "that an answer is a number of another is so of these problems alone",
    ),
    Saying.INSIDE: (
        ("30 + 20", "34 + 25"),
        "each way that a problem is a step of has its own steps, proved with the ways",
    ),
    Saying.ANSWERS_UP: (
        ("5 + 5", "5 + 6", "6 + 6"),
        "the answers step, and the numbers keep no rule that would go on",
    ),
    Saying.ANSWERS_DOWN: (
        ("6 + 6", "5 + 6", "5 + 5"),
        "the answers step, and the numbers keep no rule that would go on",
    ),
    Saying.ANSWERS_GROW: (
        ("5 x 1", "4 + 6", "20 x 1"),
        "the answers grow, and the numbers keep no rule that would go on",
    ),
    Saying.ANSWERS_SHRINK: (
        ("20 x 1", "4 + 6", "5 x 1"),
        "the answers grow, and the numbers keep no rule that would go on",
    ),
}
"""Sayings with no statement for all numbers: a string with the link, and the reason."""

EXAMPLES: dict[Saying, tuple[str, ...]] = {
    **{saying: said.string for saying, said in RULES.items()},
    **{saying: fact.string for saying, fact in FACTS.items()},
    **{saying: string for saying, (string, *_) in TURNED_SIDES.items()},
    **{saying: string for saying, (string, _) in HERE_ALONE.items()},
}
"""For every saying a string with a link that says it."""


def test_every_saying_has_its_general_statement_or_the_reason_why_there_is_none():
    tables = (RULES, FACTS, TURNED_SIDES, HERE_ALONE)
    assert set().union(*tables) == set(Saying)
    assert sum(map(len, tables)) == len(Saying)
    assert all(reason for _, reason in HERE_ALONE.values())
    assert all(link_of(*example) for example in EXAMPLES.items())


def link_of(saying: Saying, string: tuple[str, ...]) -> Link:
    found = links([parse(one) for one in string], every=True)
    return next(link for link in found if link.saying is saying)


def answer(problem: Problem, values: Numbers) -> Expr:
    """The answer with `values` in the places of the numbers; a blank's value is not used."""
    rest = iter(values)
    blank = sympy.Symbol("blank")

    def walk(part) -> Expr:
        if not isinstance(part, Operation):
            value = next(rest)
            return blank if part is BLANK else value
        left, right = walk(part.left), walk(part.right)
        match part.sign:
            case Sign.PLUS:
                return left + right
            case Sign.MINUS:
                return left - right
            case Sign.OVER:
                return left / right
            case _:
                return left * right

    if isinstance(problem, Equation):
        return sympy.solve(walk(problem.left) - walk(problem.right), blank)[0]
    return walk(problem)


def holds(link: Link, said: Rule, problem: Problem) -> bool:
    values = list(sympy.symbols(f"x0:{len(leaves_of(problem))}", positive=True))
    before = answer(problem, values)
    places = [place for row, place in link.marks if row == link.between[0]]
    marked = [values[place] for place in places]
    for place, new in zip(places, said.change(marked), strict=True):
        values[place] = new
    return sympy.simplify(answer(problem, values) - said.effect(before, marked[0])) == 0


@pytest.mark.parametrize("saying", RULES)
def test_what_is_done_to_the_numbers_does_that_to_the_answer_for_all_numbers(saying):
    said = RULES[saying]
    assert holds(link_of(saying, said.string), said, parse(said.string[0]))


@pytest.mark.parametrize("saying", FACTS)
def test_the_equation_that_joins_two_problems_holds_for_all_numbers(saying):
    fact = FACTS[saying]
    assert link_of(saying, fact.string).shows
    assert fact.zero or fact.above
    assert all(sympy.simplify(zero) == 0 for zero in fact.zero)
    assert all(sympy.factor(sympy.together(above)).is_positive for above in fact.above)


@pytest.mark.parametrize("saying", TURNED_SIDES)
def test_sides_can_be_turned_for_all_numbers(saying):
    string, before, after = TURNED_SIDES[saying]
    assert link_of(saying, string).shows
    assert before.reversed == after


@pytest.mark.parametrize("saying", [Saying.MOVED, Saying.BOTH_DOUBLED, Saying.TAKE_MORE])
def test_a_false_statement_would_not_pass(saying):
    said = RULES[saying]
    wrong = said._replace(effect=lambda answer, _first: answer + d / 3)
    assert not holds(link_of(saying, said.string), wrong, parse(said.string[0]))


@given(strings(longest=3))
def test_every_link_of_sums_is_an_instance_of_its_general_statement(string):
    check(string)


@given(product_strings(longest=3))
def test_every_link_of_products_is_an_instance_of_its_general_statement(string):
    check(string)


def check(string: list[Problem]) -> None:
    for link in links(string, every=True):
        said = RULES.get(link.saying)
        if said is not None and said.everywhere:
            assert holds(link, said, string[link.between[0]]), link
