"""Three or more numbers: one left out, a minus read as a plus, a total a little off."""

from collections.abc import Iterator
from dataclasses import dataclass

from waysaid.number import (
    Equation,
    Expression,
    Operation,
    Problem,
    Sign,
    chain,
    signed_terms,
    value_of,
)
from waysaid.slips.slip import OUR_GUESS, Likely, Made, Rule, SlipName
from waysaid.slips.work import ended

_Term = tuple[Sign, int]


@dataclass(frozen=True, slots=True)
class Terms:
    """A sum or difference of three or more whole numbers, and its terms in order."""

    problem: Expression
    terms: tuple[_Term, ...]


def terms_of(problem: Problem) -> Terms | None:
    """Return a sum or difference of three or more whole numbers from 0 up; None otherwise."""
    terms = signed_terms(problem) if isinstance(problem, Operation) else None
    kept = tuple((sign, term) for sign, term in terms or () if type(term) is int and term >= 0)
    if not isinstance(problem, Operation) or len(kept) < 3 or len(kept) != len(terms or ()):
        return None
    return Terms(problem, kept)


def near_miss(case: Terms) -> Iterator[Made]:
    """Be one off, or ten off, somewhere on the way."""
    total = value_of(case.problem)
    for off in (-1, 1, -10, 10):
        yield Made(total + off, (Equation(case.problem, total + off),))


def ten_lost(case: Terms) -> Iterator[Made]:
    """Add the ones and drop the tens from them: 7 + 26 + 8 gives 21."""
    if any(sign is not Sign.PLUS for sign, _ in case.terms):
        return
    numbers = [term for _, term in case.terms]
    ones = [(Sign.PLUS, number % 10) for number in numbers if number % 10]
    tens = [(Sign.PLUS, number - number % 10) for number in numbers if number > 9]
    total = sum(one for _, one in ones)
    if total < 10 or len(ones) < 2:
        return
    steps = [Equation(chain(ones[0][1], *ones[1:]), total % 10)]
    kept = [(sign, part) for sign, part in (*tens, (Sign.PLUS, total % 10)) if part]
    if len(kept) > 1:
        steps.append(Equation(chain(kept[0][1], *kept[1:]), sum(part for _, part in kept)))
    wrong = sum(part for _, part in kept)
    if steps[-1].right != wrong:
        steps.append(Equation(case.problem, wrong))
    yield ended(wrong, *steps)


def part_missing(case: Terms) -> Iterator[Made]:
    """Leave a number out."""
    for at in range(len(case.terms)):
        yield _said(case.terms[:at] + case.terms[at + 1 :])


def all_added(case: Terms) -> Iterator[Made]:
    """Read a minus as a plus."""
    if any(sign is Sign.MINUS for sign, _ in case.terms):
        yield _said(tuple((Sign.PLUS, term) for _, term in case.terms))


def _said(terms: tuple[_Term, ...]) -> Made:
    (sign, first), *rest = terms
    said = chain(first if sign is Sign.PLUS else -first, *rest)
    wrong = value_of(said)
    return Made(wrong, (Equation(said, wrong),))


SEVERAL: tuple[Rule[Terms], ...] = (
    Rule(SlipName.NEAR_MISS, near_miss, Likely.OFTEN, OUR_GUESS),
    Rule(SlipName.DROP_CARRY, ten_lost, Likely.OFTEN, OUR_GUESS),
    Rule(SlipName.PART_MISSING, part_missing, Likely.SOMETIMES, OUR_GUESS),
    Rule(SlipName.WRONG_OPERATION, all_added, Likely.SOMETIMES, OUR_GUESS),
)
