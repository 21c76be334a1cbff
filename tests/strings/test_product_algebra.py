"""The claims of links between products, proved for all numbers: symbols for the numbers."""

import pytest
import sympy
from hypothesis import example, given
from sympy.abc import a, b, c, d, i, j, k, n, p, q, r

from tests.strings.judge import number
from tests.strings.products_made import strings
from waysaid.number import BLANK, Equation, Operation, Problem, Sign, number_text, parse
from waysaid.strings import LinkKind, Saying, leaves_of, links

CLAIMS = {
    "one-changes: a factor": ((a + d) * b, a * b + d * b),
    "one-changes: what is shared out": ((a + d) / b, a / b + d / b),
    "one-changes: left over": ((n * q + r + d) - n * q, r + d),
    "one-changes: a missing factor": ((a + d) / b - a / b, d / b),
    "one-changes: times as big": ((k * a) * b, k * (a * b)),
    "one-changes: divided by times as many": (a / (k * b), (a / b) / k),
    "both-change: one times, the other over": ((k * a) * (b / k), a * b),
    "both-change: both times": ((k * a) / (k * b), a / b),
    "turned-around": (b * a, a * b),
    "turned-around: per cent": (p / 100 * q, q / 100 * p),
    "opposite": ((a * b) / a, b),
    "ten-times": ((10**i * a) * (10**j * b), 10 ** (i + j) * (a * b)),
    "double-half: both": ((2 * a) * (2 * b), 4 * (a * b)),
    "inside-a-way: together": ((a + c) * b, a * b + c * b),
    "inside-a-way: shared together": ((a + c) / b, a / b + c / b),
    "pattern: a factor steps": ((a + k * d) * b, a * b + k * (d * b)),
    "pattern: both grow": ((k**n * a) / (k**n * b), a / b),
    "pattern: trades": ((k**n * a) * (b / k**n), a * b),
}


@pytest.mark.parametrize("name", CLAIMS)
def test_the_general_statement_holds_for_all_numbers(name):
    left, right = CLAIMS[name]
    assert sympy.simplify(sympy.expand(left - right)) == 0


def test_a_false_statement_would_not_pass():
    assert sympy.simplify((k * a) * (k * b) - a * b) != 0
    assert sympy.simplify((k * a) / (b / k) - a / b) != 0


def answer(problem: Problem, values: list) -> sympy.Expr:
    """The answer with `values` in the places of the numbers; a blank's value is not used."""
    rest = iter(values)
    blank = sympy.Symbol("blank", positive=True)

    def walk(part) -> sympy.Expr:
        if isinstance(part, Operation):
            left, right = walk(part.left), walk(part.right)
            return left / right if part.sign is Sign.OVER else left * right
        value = next(rest)
        return blank if part is BLANK else value

    if isinstance(problem, Equation):
        return sympy.solve(walk(problem.left) - walk(problem.right), blank)[0]
    return walk(problem)


def symbols_for(problem: Problem) -> list:
    return list(sympy.symbols(f"n0:{len(leaves_of(problem))}", positive=True))


GROUPS = (Saying.GROUP_MORE, Saying.GROUP_LESS, Saying.GROUPS_MORE, Saying.GROUPS_LESS)
PARTS = (Saying.PART_MORE, Saying.PART_LESS, Saying.SHARE_MORE, Saying.SHARE_LESS)


@given(strings(longest=3))
def test_in_a_group_more_the_answer_follows_whatever_the_other_numbers_are(string):
    for link in links(string, every=True):
        if link.saying in (*GROUPS, *PARTS):
            problem = string[link.between[0]]
            place = next(at for row, at in link.marks if row == link.between[0])
            values = symbols_for(problem)
            before = answer(problem, values)
            slope = sympy.simplify(before / values[place])
            values[place] += d
            assert sympy.simplify(answer(problem, values) - before - d * slope) == 0
            given_sizes = dict(zip(symbols_for(problem), leaves_of(problem), strict=True))
            told, by = (number(number_text(link.numbers[at])) for at in (4, 2))
            rest = slope.subs({key: sympy.Rational(value) for key, value in given_sizes.items()})
            assert rest * sympy.Rational(by) == sympy.Rational(told)


@given(strings(longest=3))
def test_in_every_both_change_the_answer_stays_whatever_the_numbers_are(string):
    for link in links(string, every=True):
        if link.kind is LinkKind.BOTH_CHANGE:
            problem = string[link.between[0]]
            one, other = (at for row, at in link.marks if row == link.between[0])
            values = symbols_for(problem)
            before = answer(problem, values)
            traded = link.saying in (Saying.DOUBLE_AND_HALF, Saying.TIMES_AND_OVER)
            values[one] *= k
            values[other] *= 1 / k if traded else k
            assert sympy.simplify(answer(problem, values) - before) == 0


@given(strings(longest=3))
@example([parse("24 / 4"), parse("24 / 8"), parse("12 / 8")])
@example([parse("6 x 7"), parse("12 x 14"), parse("12 x 7")])
def test_in_every_double_or_half_the_answer_follows_whatever_the_numbers_are(string):
    for link in links(string, every=True):
        if link.kind is LinkKind.DOUBLE_HALF:
            first = link.between[0]
            problem = string[first]
            values = symbols_for(problem)
            before = answer(problem, values)
            changed = [at for row, at in link.marks if row == first]
            for place in changed:
                values[place] *= 2
            by = sympy.simplify(answer(problem, values) / before)
            halves = link.saying in (Saying.BY_TWICE, Saying.BY_HALF)
            assert by == (sympy.Rational(1, 2) if halves else 2 ** len(changed))
