"""Three or more numbers: one left out, a minus read as a plus, a total a little off."""

from collections.abc import Iterator

from waysaid.number import Equation, Expression, Operation, Sign, chain, signed_terms, value_of
from waysaid.slips.slip import OUR_GUESS, Likely, Slip, SlipName

_Term = tuple[Sign, int]


def slips_of(problem: Expression) -> Iterator[Slip]:
    """Yield the slips of a sum or difference of three or more whole numbers; none otherwise."""
    terms = _whole_terms(problem)
    if len(terms) < 3:
        return
    total = value_of(problem)
    for off in (-1, 1, -10, 10):
        steps = (Equation(problem, total + off),)
        yield Slip(SlipName.NEAR_MISS, total + off, steps, Likely.OFTEN, OUR_GUESS)
    if all(sign is Sign.PLUS for sign, _ in terms):
        yield from _ten_lost(tuple(term for _, term in terms))
    for index in range(len(terms)):
        yield _said(terms[:index] + terms[index + 1 :], SlipName.PART_MISSING, Likely.SOMETIMES)
    if any(sign is Sign.MINUS for sign, _ in terms):
        added = tuple((Sign.PLUS, term) for _, term in terms)
        yield _said(added, SlipName.WRONG_OPERATION, Likely.SOMETIMES)


def _ten_lost(numbers: tuple[int, ...]) -> Iterator[Slip]:
    """Yield the sum whose ones are added and the tens from them dropped."""
    ones = tuple((Sign.PLUS, number % 10) for number in numbers if number % 10)
    tens = tuple((Sign.PLUS, number - number % 10) for number in numbers if number > 9)
    total = sum(one for _, one in ones)
    if total < 10 or len(ones) < 2:
        return
    steps = [Equation(chain(ones[0][1], *ones[1:]), total % 10)]
    kept = (*tens, (Sign.PLUS, total % 10))
    wrong = sum(part for _, part in kept)
    if len(kept) > 1:
        steps.append(Equation(chain(kept[0][1], *kept[1:]), wrong))
    yield Slip(SlipName.DROP_CARRY, wrong, tuple(steps), Likely.OFTEN, OUR_GUESS)


def _whole_terms(problem: Expression) -> tuple[_Term, ...]:
    terms = signed_terms(problem) if isinstance(problem, Operation) else None
    kept = tuple((sign, term) for sign, term in terms or () if type(term) is int and term >= 0)
    return kept if terms is not None and len(kept) == len(terms) else ()


def _said(terms: tuple[_Term, ...], slug: SlipName, likely: Likely) -> Slip:
    (sign, first), *rest = terms
    said = chain(first if sign is Sign.PLUS else -first, *rest)
    wrong = value_of(said)
    return Slip(slug, wrong, (Equation(said, wrong),), likely, OUR_GUESS)
