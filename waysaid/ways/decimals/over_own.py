"""Ways to divide with decimals that whole numbers have not, or in a form of their own."""

from collections.abc import Iterator
from fractions import Fraction

from waysaid.number import Equation, Exact, Operation, Sign, apply, decimal
from waysaid.ways.decimals.names import unit_name, worth
from waysaid.ways.decimals.over import in_whole
from waysaid.ways.decimals.shape import Over
from waysaid.ways.factor import can_do
from waysaid.ways.plan import OVER, TIMES, Plan
from waysaid.ways.share.break_up import plans as broken_up
from waysaid.ways.step import Kind, Step

GOES_IN = {
    Fraction(1, 2): 2,
    Fraction(1, 4): 4,
    Fraction(1, 5): 5,
    Fraction(1, 8): 8,
    Fraction(1, 10): 10,
    Fraction(1, 100): 100,
}
"""How many of a decimal make one, where a child knows it; our choice."""
SMALL = (2, 4, 5)
UP = (*SMALL, 10, 100, 1000)
"""By what a child would make both numbers larger to lose a point; our choice."""


def scale_plans(problem: Over) -> Iterator[Plan]:
    """Yield both numbers made larger alike until the second is whole: 4.8 / 0.6 as 48 / 6.

    Said of both at once, and of each by itself.
    """
    whole, part = problem.whole.value, problem.part.value
    if not problem.part.places:
        return
    for by in UP:
        more, other = apply(TIMES, whole, by), apply(TIMES, part, by)
        if not isinstance(other, int) or not _sensible(by, part, other):
            continue
        result = apply(OVER, more, other)
        last = _step(Kind.RECALL, OVER, more, other, result)
        old, new = _whole(OVER, whole, part), _whole(OVER, more, other)
        if other == 1:
            yield f"up-by-{by}-to-one", (_step(Kind.SCALE, TIMES, whole, by, more), last)
            continue
        yield f"up-by-{by}", (Step(Kind.SCALE, Equation(old, new)), last)
        first = _step(Kind.SCALE, TIMES, whole, by, more)
        second = _step(Kind.SCALE, TIMES, part, by, other)
        yield f"up-by-{by}-in-steps", (first, second, last)


def _sensible(by: int, part: Exact, other: int) -> bool:
    """Tell whether nothing smaller would do: a ten that is enough, a double, or what makes one."""
    if by in SMALL:
        return other == 1 or (by < 5 and (by == 2 or part * 2 % 1 != 0))
    return by == 10 or part * (by // 10) % 1 != 0


def rename_plans(problem: Over) -> Iterator[Plan]:
    """Yield the units shared, then what they are worth; and dividing by a part of one as times.

    4.8 / 4 as 48 / 4 and 12 / 10; 6 / 0.5 as 6 x 2, for two halves make one.
    """
    found = in_whole(problem)
    if found is not None and found[3] and found[0].part > 1:
        quotient, _, _, places = found
        last = worth(quotient.groups, places)
        slug = f"as-{unit_name(places)}"
        if can_do(quotient.part, quotient.groups):
            yield slug, ((Kind.GROUP, quotient.whole, OVER, quotient.part), last)
        else:
            for name, moves in broken_up(quotient):
                yield f"{slug}-{name}", (*moves, last)
                break
    times = GOES_IN.get(Fraction(problem.part.value))
    whole = problem.whole
    if times and can_do(whole.units, times):
        last_step = _step(Kind.SCALE, TIMES, whole.value, times, apply(TIMES, whole.value, times))
        yield f"as-times-{times}", (last_step,)
        ones = _step(Kind.RECALL, OVER, 1, problem.part.value, times)
        yield f"as-times-{times}-said", (ones, last_step)


def parts_plans(problem: Over) -> Iterator[Plan]:
    """Yield what a quotient without end comes to, as a part: 1 / 0.3 as 10 / 3, where none else."""
    if in_whole(problem) is None and not problem.part.places:
        whole, part = problem.whole.value, problem.part.value
        places = problem.whole.places
        if not places:
            return
        unit = 10**places
        more, other = apply(TIMES, whole, unit), apply(TIMES, part, unit)
        old, new = _whole(OVER, whole, part), _whole(OVER, more, other)
        last = _step(Kind.RECALL, OVER, more, other, apply(OVER, more, other))
        yield f"up-by-{unit}", (Step(Kind.SCALE, Equation(old, new)), last)


def _whole(sign: Sign, left: Exact, right: Exact) -> Operation:
    return Operation(sign, decimal(left), decimal(right))


def _step(kind: Kind, sign: Sign, left: Exact, right: Exact, result: Exact) -> Step:
    return Step(kind, Equation(_whole(sign, left, right), decimal(result)))
