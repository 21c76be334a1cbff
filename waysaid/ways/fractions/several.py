"""Three or more numbers: those that go together first, in turn, in parts of one size, split."""

from collections.abc import Iterator
from fractions import Fraction
from itertools import combinations
from math import lcm

from waysaid.number import Equation, Exact, Number, Sign, chain, exact, parts, value_of
from waysaid.ways.fractions.amount import Amount, amount, did
from waysaid.ways.fractions.shape import FractionFacts, FractionTerms
from waysaid.ways.fractions.units import Steps, cut_into, endings, together, tops_in
from waysaid.ways.plan import PLUS, TIMES, Plan
from waysaid.ways.step import Kind, Step

AT_ONCE = 4
"""The most numbers of one size put together in one breath; our choice."""

Term = tuple[Sign, Number]


def in_turn_plans(problem: FractionTerms) -> Iterator[Plan]:
    """Yield them one after another, in the order of the problem."""
    steps = _in_turn([(sign, one.number) for sign, one in problem.terms])
    if steps:
        yield "in-order", steps


def _in_turn(terms: list[Term]) -> Steps:
    """Return the steps from the first number on; none where one goes below zero."""
    (_, so_far), *rest = terms
    steps: list[Step] = []
    for place, (sign, number) in enumerate(rest, 1):
        change = exact(number) if sign is PLUS else -exact(number)
        after = exact(exact(so_far) + change)
        if after < 0 or (after == 0 and place < len(rest)):
            return ()
        unit = lcm(amount(so_far).bottom, amount(number).bottom)
        steps += together(Kind.JUMP, so_far, sign, number, unit)
        so_far = after
    return tuple(steps)


def partners_plans(problem: FractionTerms) -> Iterator[Plan]:
    """Yield two that make a whole, or have parts of one size, first; then the others in turn."""
    terms = problem.terms
    for one, other in combinations(range(len(terms)), 2):
        if (one, other) == (0, 1) or not _go_together(terms[one], terms[other]):
            continue
        rest = [
            (sign, number.number)
            for place, (sign, number) in enumerate(terms)
            if place not in (one, other)
        ]
        pair = [(sign, number.number) for sign, number in (terms[one], terms[other])]
        first = _in_turn(pair)
        total = _worth(pair)
        if first and pair[0][0] is PLUS and total > 0:
            yield f"{one + 1}-and-{other + 1}", (*first, *_after(total, rest))


def _worth(terms: list[Term]) -> Exact:
    signed = [exact(one) if sign is PLUS else -exact(one) for sign, one in terms]
    return exact(sum(signed, Fraction(0)))


def _after(total: Exact, rest: list[Term]) -> Steps:
    """Return the others in turn after a pair; the first of them may be said first."""
    return _in_turn([(PLUS, total), *rest])


def _go_together(one: tuple[Sign, Amount], other: tuple[Sign, Amount]) -> bool:
    whole = exact(one[1].value + other[1].value)
    alike = one[1].bottom == other[1].bottom
    return alike or (one[0] is other[0] and isinstance(whole, int))


def unit_plans(problem: FractionTerms) -> Iterator[Plan]:
    """Yield all of them in parts of one size, put together in one breath."""
    terms = problem.terms
    unit = lcm(*(one.bottom for _, one in terms))
    tops = [(sign, tops_in(one, unit)) for sign, one in terms]
    total = sum(top if sign is PLUS else -top for sign, top in tops)
    if len(terms) > AT_ONCE or total <= 0:
        return
    cuts = dict.fromkeys(step for _, one in terms for step in cut_into(one, unit))
    whole = chain(parts(tops[0][1], unit), *((sign, parts(top, unit)) for sign, top in tops[1:]))
    step = Step(Kind.JOIN, Equation(whole, parts(total, unit)))
    for how, ending in endings(total, unit):
        yield f"common-unit{how}", (*cuts, step, *ending)


def split_plans(problem: FractionTerms) -> Iterator[Plan]:
    """Yield the wholes together and the parts together, where all are added."""
    terms = [one for sign, one in problem.terms if sign is PLUS]
    wholes = [one.whole for one in terms if one.whole]
    pieces = [one.part for one in terms if one.top]
    if len(terms) < len(problem.terms) or min(len(wholes), len(pieces)) < 2:
        return
    both = [*_in_turn([(PLUS, one) for one in wholes]), *_in_turn([(PLUS, one) for one in pieces])]
    small = exact(sum((Fraction(exact(one)) for one in pieces), Fraction(0)))
    yield "wholes-and-parts", (*both, did(Kind.JOIN, sum(wholes), PLUS, small))


def facts_plans(problem: FractionFacts) -> Iterator[Plan]:
    """Yield the numbers multiplied in turn, from either end."""
    for slug, order in (("in-order", problem.factors), ("from-the-end", problem.factors[::-1])):
        yield slug, _multiplied(order)


def _multiplied(factors: tuple[Number, ...]) -> Steps:
    so_far, steps = factors[0], []
    for number in factors[1:]:
        step = did(Kind.SCALE, so_far, TIMES, number)
        steps.append(step)
        so_far = value_of(chain(so_far, (TIMES, number)))
    return tuple(steps)


def facts_partners_plans(problem: FractionFacts) -> Iterator[Plan]:
    """Yield two that make a whole number first: 1/4 x 7 x 8 as 1/4 x 8, times 7."""
    for one, other in combinations(range(len(problem.factors)), 2):
        pair = (problem.factors[one], problem.factors[other])
        if (one, other) == (0, 1) or not isinstance(_product(*pair), int):
            continue
        rest = [f for place, f in enumerate(problem.factors) if place not in (one, other)]
        yield f"{one + 1}-and-{other + 1}", _multiplied((*pair, *rest))


def _product(one: Number, other: Number) -> Exact:
    return value_of(chain(one, (TIMES, other)))
