"""Products with decimals, worked as whole products are, each number in a unit of its own."""

from collections.abc import Callable, Iterator
from fractions import Fraction

from waysaid.number import Blank, Equation, Expression, Operation, Written, decimal, exact
from waysaid.ways.decimals import times_own
from waysaid.ways.decimals.shape import Times
from waysaid.ways.decimals.unit import all_in, made, pointed
from waysaid.ways.factor import bare, knows
from waysaid.ways.maker import AnyMaker, Maker
from waysaid.ways.plan import OVER, PLUS, TIMES, Move, Plan
from waysaid.ways.shape import Product
from waysaid.ways.step import Kind, Step
from waysaid.ways.times import adjust, break_up, counting, double_halve, near_fact
from waysaid.ways.way import Family

COUNTED_PLACES = 2
"""The most places a child counts in: nobody counts in thousandths; our choice."""
OF_ONES = ("two-and-rest", "nearly-halves")
"""Cuts that only whole numbers of groups are cut by; our choice."""
HALF = decimal(Fraction(1, 2))

_Told = Callable[[Move, Times, bool], Step]


def _mapped(
    plans: Callable[[Product], Iterator[Plan]],
    told: _Told,
    fits: Callable[[Times, str], bool],
    worth_it: Callable[[tuple[Step, ...], Times], bool] = lambda steps, problem: True,
) -> Callable[[Times], Iterator[Plan]]:
    """Return the plans for decimals that do with the units what others do with whole numbers.

    `told` makes the step of a move, knowing whether the first number is the one changed; `fits`
    tells by its slug whether a way makes sense for the numbers, and `worth_it` by its steps.
    """

    def mapped(problem: Times) -> Iterator[Plan]:
        for slug, moves in plans(Product(problem.left.units, problem.right.units)):
            if fits(problem, slug):
                first = not slug.startswith("second")
                steps = tuple([_step(move, problem, first, told) for move in moves])
                if worth_it(steps, problem):
                    yield slug, steps

    return mapped


def _step(move: Move | Step, problem: Times, first: bool, told: _Told) -> Step:
    if not isinstance(move, Step):
        return told(move, problem, first)
    whole, result = move.equation.left, move.equation.right
    if isinstance(whole, Operation) and isinstance(result, Operation):
        return Step(move.kind, Equation(_product(whole, problem), _product(result, problem)))
    if isinstance(whole, Operation):
        return all_in(move, problem.places)
    return all_in(move, (problem.left if first else problem.right).places)


def _product(side: Operation, problem: Times) -> Expression:
    one, other = side.left, side.right
    if not isinstance(one, int) or not isinstance(other, int):
        return side
    left, right = pointed(one, problem.left.places), pointed(other, problem.right.places)
    return Operation(side.sign, left, right)


def _joined(move: Move, problem: Times, first: bool) -> Step:
    """Return a step where a product is of both units, and all else in the unit of the answer."""
    kind, one, sign, other = move
    both = problem.places
    if sign is TIMES:
        left, right = (one, problem.left.places), (other, problem.right.places)
        return made(kind, left, sign, right, (one * other, both))
    if sign is OVER:
        return made(kind, (one, both), sign, (other, 0), (one // other, both))
    result = one + other if sign is PLUS else one - other
    return made(kind, (one, both), sign, (other, both), (result, both))


def _moved_across(move: Move, problem: Times, first: bool) -> Step:
    """Return a step where one number is made smaller and the other larger by a whole number."""
    kind, one, sign, other = move
    less, more = problem.left.places, problem.right.places
    if not first:
        less, more = more, less
    if kind is not Kind.SCALE:
        return _joined(move, problem, first)
    if sign is OVER:
        return made(kind, (one, less), sign, (other, 0), (one // other, less))
    return made(kind, (one, more), sign, (other, 0), (one * other, more))


def _any(problem: Times, slug: str) -> bool:
    return True


def _cut_fits(problem: Times, slug: str) -> bool:
    number = problem.right if slug.startswith("second") else problem.left
    return not number.places or not any(one in slug for one in OF_ONES)


def _count_fits(problem: Times, slug: str) -> bool:
    times = problem.left if slug == "by-second" else problem.right
    return not times.places and times.units > 1 and problem.places <= COUNTED_PLACES


def _near_fits(problem: Times, slug: str) -> bool:
    """Tell whether a fact close by is one: tenths and hundredths are no groups to have one more."""
    number = problem.right if slug.startswith("second") else problem.left
    return not number.places or ("one-fewer" not in slug and "one-more" not in slug)


def _easy_start(steps: tuple[Step, ...], problem: Times) -> bool:
    """Tell whether the product that is used has a whole number or a half in it."""
    whole = steps[0].equation.left
    if not isinstance(whole, Operation):
        return False
    friendly = any(type(side) is int or side == HALF for side in (whole.left, whole.right))
    return friendly and (len(steps) != 2 or _easy_mend(steps[1], problem))


def _easy_mend(mend: Step, problem: Times) -> bool:
    """Tell whether what is put right is known without a step: some of one of the numbers."""
    whole = mend.equation.left
    if not isinstance(whole, Operation) or isinstance(whole.right, Operation | Blank):
        return False
    units = int(exact(whole.right) * 10**problem.places)
    for number in (problem.left.units, problem.right.units):
        many, over = divmod(units, number)
        if not over and knows(bare(many), number):
            return True
    return False


def _rounder(steps: tuple[Step, ...], problem: Times) -> bool:
    """Tell whether the last product has fewer places after its points, or a ten or a one in it."""
    whole = steps[-1].equation.left
    if not isinstance(whole, Operation):
        return False
    sides = (whole.left, whole.right)
    places = sum(side.size for side in sides if isinstance(side, Written))
    return places < problem.places or any(type(side) is int and bare(side) == 1 for side in sides)


MAKERS: tuple[AnyMaker, ...] = (
    Maker(Family.COUNTING, Times, _mapped(counting.plans, _joined, _count_fits)),
    Maker(Family.ADJUST, Times, _mapped(adjust.plans, _joined, _any)),
    Maker(Family.FACTOR_STEPS, Times, times_own.factor_steps),
    Maker(Family.NEAR_FACT, Times, _mapped(near_fact.plans, _joined, _near_fits, _easy_start)),
    Maker(Family.BREAK_UP, Times, times_own.own_cuts),
    Maker(Family.BREAK_UP, Times, _mapped(break_up.plans, _joined, _cut_fits)),
    Maker(Family.DOUBLE_HALVE, Times, _mapped(double_halve.plans, _moved_across, _any, _rounder)),
    Maker(Family.DOUBLE_HALVE, Times, times_own.tens_across),
)
