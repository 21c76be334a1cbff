"""Three or more fractions, or numbers with a point, added as if they were other numbers."""

from collections.abc import Iterator
from dataclasses import dataclass

from waysaid.number import (
    Blank,
    Equation,
    Expression,
    Number,
    Operation,
    Problem,
    Sign,
    chain,
    decimal,
    exact,
    parts,
    written,
)
from waysaid.slips.cases import Part, is_pointed, part_of, places, unpointed
from waysaid.slips.decimals.sums import pointed
from waysaid.slips.slip import OUR_GUESS, Likely, Made, Rule, SlipName
from waysaid.slips.work import added, ended


@dataclass(frozen=True, slots=True)
class Sum:
    """A sum of three or more numbers, none below zero."""

    problem: Expression
    numbers: tuple[Number, ...]


def sum_of(problem: Problem) -> Sum | None:
    """Return a sum of three or more numbers, not all of them whole."""
    if not isinstance(problem, Operation) or not _all_plus(problem):
        return None
    numbers = tuple(leaf for leaf in written(problem) if not isinstance(leaf, Blank))
    plain = all(type(number) is int for number in numbers)
    fits = len(numbers) > 2 and not plain and min(map(exact, numbers)) >= 0
    return Sum(problem, numbers) if fits else None


def _all_plus(part: Expression) -> bool:
    if not isinstance(part, Operation):
        return not isinstance(part, Blank)
    return part.sign is Sign.PLUS and _all_plus(part.left) and _all_plus(part.right)


def _fractions(case: Sum) -> list[Part]:
    """Return the numbers as fractions below or above one; none where one is of another form."""
    found = [part_of(number) for number in case.numbers]
    kept = [part for part in found if part is not None and part.bottom > 1 and not part.whole]
    return kept if len(kept) == len(found) else []


def add_across(case: Sum) -> Iterator[Made]:
    """Add tops and add bottoms: 1/4 + 1/4 + 1/4 gives 3/12."""
    found = _fractions(case)
    if found:
        wrong = parts(sum(part.top for part in found), sum(part.bottom for part in found))
        yield ended(wrong, Equation(case.problem, wrong))


def tops_only(case: Sum) -> Iterator[Made]:
    """Add the tops alone: 1/4 + 1/4 + 1/4 gives 3."""
    tops = [part.top for part in _fractions(case)]
    if tops:
        yield ended(sum(tops), Equation(added(tops), sum(tops)))


def ignore_point(case: Sum) -> Iterator[Made]:
    """Add the digits without the points: 0.5 + 0.25 + 1 as 5 + 25 + 1."""
    if _pointed(case):
        bare = [unpointed(number) for number in case.numbers]
        yield ended(sum(bare), Equation(added(bare), sum(bare)))


def right_aligned(case: Sum) -> Iterator[Made]:
    """Line the last digits up, and put the point back where most places are."""
    if _pointed(case):
        bare = [unpointed(number) for number in case.numbers]
        wrong = pointed(sum(bare), max(map(places, case.numbers)))
        yield ended(wrong, Equation(added(bare), sum(bare)), Equation(case.problem, wrong))


def _pointed(case: Sum) -> bool:
    return all(is_pointed(number) or isinstance(number, int) for number in case.numbers)


def part_missing(case: Sum) -> Iterator[Made]:
    """Leave a number out."""
    for at in range(len(case.numbers)):
        first, *rest = case.numbers[:at] + case.numbers[at + 1 :]
        said = chain(first, *((Sign.PLUS, number) for number in rest))
        wrong = exact(sum(exact(number) for number in (first, *rest)))
        yield ended(wrong, Equation(said, decimal(wrong) if _pointed(case) else wrong))


SEVERAL: tuple[Rule[Sum], ...] = (
    Rule(SlipName.ADD_ACROSS, add_across, Likely.OFTEN, OUR_GUESS),
    Rule(SlipName.RIGHT_ALIGNED, right_aligned, Likely.SOMETIMES, OUR_GUESS),
    Rule(SlipName.IGNORE_POINT, ignore_point, Likely.SOMETIMES, OUR_GUESS),
    Rule(SlipName.PART_MISSING, part_missing, Likely.SOMETIMES, OUR_GUESS),
    Rule(SlipName.TOPS_ONLY, tops_only, Likely.RARE, OUR_GUESS),
)
