"""The claims of the links, proved for all numbers: symbols stand where the numbers stood."""

import re

import pytest
import sympy
from hypothesis import given
from sympy.abc import a, b, c, d, e, k

from tests.strings.strings_made import strings
from waysaid.number import BLANK, Equation, Operation, Problem, Sign, parse
from waysaid.strings import Link, LinkKind, leaves_of, links

CLAIMS = {
    "one-changes: an addend": ((a + d) + b, (a + b) + d),
    "one-changes: what is taken from": ((a + d) - b, (a - b) + d),
    "one-changes: what is taken": (a - (b + d), (a - b) - d),
    "one-changes: a missing part, the whole up": ((c + d) - a, (c - a) + d),
    "one-changes: a missing part, the part up": (c - (a + d), (c - a) - d),
    "both-change: moved across": ((a - d) + (b + d), a + b),
    "both-change: both alike": ((a + d) - (b + d), a - b),
    "turned-around": (b + a, a + b),
    "turned-around: three": (a + c + b, a + b + c),
    "opposite": ((a + b) - a, b),
    "ten-times: sum": (10 * a + 10 * b, 10 * (a + b)),
    "ten-times: difference": (10 * a - 10 * b, 10 * (a - b)),
    "double-half": (2 * a + 2 * b, 2 * (a + b)),
    "friendly-twin: sum": ((a + d) + (b + e), (a + b) + (d + e)),
    "friendly-twin: difference": ((a + d) - (b + e), (a - b) + (d - e)),
    "pattern: one number steps": ((a + k * d) + b, (a + b) + k * d),
    "pattern: moved each time": ((a - k * d) + (b + k * d), a + b),
    "pattern: both alike each time": ((a + k * d) - (b + k * d), a - b),
    "pattern: all step": ((a + k * d) + (b + k * e), (a + b) + k * (d + e)),
}


@pytest.mark.parametrize("name", CLAIMS)
def test_the_general_statement_holds_for_all_numbers(name):
    left, right = CLAIMS[name]
    assert sympy.expand(left - right) == 0


def test_a_false_statement_would_not_pass():
    moved_in_a_difference = ((a - d) - (b + d), a - b)
    assert sympy.expand(moved_in_a_difference[0] - moved_in_a_difference[1]) != 0


def answer(problem: Problem, values: list) -> sympy.Expr:
    """The answer with `values` in the places of the numbers; a blank's value is not used."""
    rest = iter(values)
    blank = sympy.Symbol("blank")

    def walk(part) -> sympy.Expr:
        if isinstance(part, Operation):
            left, right = walk(part.left), walk(part.right)
            return left + right if part.sign is Sign.PLUS else left - right
        value = next(rest)
        return blank if part is BLANK else value

    if isinstance(problem, Equation):
        return sympy.solve(walk(problem.left) - walk(problem.right), blank)[0]
    return walk(problem)


def symbols_for(problem: Problem) -> list:
    return list(sympy.symbols(f"n0:{len(leaves_of(problem))}"))


def places_in(link: Link, at: int) -> list[int]:
    return [place for row, place in link.marks if row == link.between[at]]


@given(strings(longest=3))
def test_in_every_one_changes_the_answer_follows_whatever_the_other_numbers_are(string):
    for link in links(string, every=True):
        if link.kind is LinkKind.ONE_CHANGES:
            problem = string[link.between[0]]
            old, new, _ = link.numbers
            values = symbols_for(problem)
            before = answer(problem, values)
            values[places_in(link, 0)[0]] += d
            follows = sympy.expand(answer(problem, values) - before)
            assert follows in (d, -d)
            told = str(link.saying)
            up = new > old
            goes_up = re.search("answer-up|missing-up|less", told) is not None
            assert (follows == d) == (goes_up == up)


@given(strings(longest=3))
def test_in_every_both_change_the_answer_stays_whatever_the_numbers_are(string):
    for link in links(string, every=True):
        if link.kind is LinkKind.BOTH_CHANGE:
            problem = string[link.between[0]]
            one, other = places_in(link, 0)
            values = symbols_for(problem)
            before = answer(problem, values)
            values[one] += d
            values[other] += -d if link.saying.value.startswith("moved") else d
            assert sympy.expand(answer(problem, values) - before) == 0


def test_the_symbolic_answer_agrees_with_plain_numbers():
    assert answer(parse("58 + 47 - 38"), [58, 47, 38]) == 67
    assert answer(parse("7 + _ = 12"), [7, None, 12]) == 5
