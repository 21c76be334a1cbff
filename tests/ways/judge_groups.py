"""What a listener may take as explained in a product or a quotient, and what is too much at once.

Part of the judge: it reads equations and knows nothing of how ways are made.
"""

from collections.abc import Iterable

from waysaid.number import Equation, Expression, Operation, Problem, Sign, leaves
from waysaid.ways import Kind, Step, Way

SCALES = (*range(2, 13), 100, 1000)
"""By what a number is made larger or smaller in one breath."""
GROUPED = (Sign.TIMES, Sign.OVER)


def grouped(problem: Problem) -> bool:
    """Tell whether a problem multiplies or divides."""
    if isinstance(problem, Equation):
        return grouped(problem.left) or grouped(problem.right)
    return isinstance(problem, Operation) and problem.sign in GROUPED


def explained_by_groups(number: int, known: set[int], left: set[int], sharing: bool) -> bool:
    """Tell whether a number is one of groups: a factor, a scaled one, groups that fit, a share.

    Where nothing is shared it may also be part of a small factor, or the next to it.
    """
    return (
        any(_scaled(number, one) or _small_factor(number, one) for one in known)
        or (not sharing and any(number <= one + 1 <= 13 for one in known))
        or any(one * other == number for one in known for other in known if other < 6)
        or any(other and one == number * other for one in known | left for other in known)
        or any(_fits(number, one, group) for one in known | left for group in known)
        or any(_fits_shared(number, one, group) for one in known | left for group in known)
    )


def _small_factor(number: int, one: int) -> bool:
    return 0 < number <= 12 and one % number == 0


def _scaled(number: int, one: int) -> bool:
    """Tell whether a number is another times or over a small one, or without its zeros."""
    if any(number == one * by or number * by == one for by in SCALES):
        return True
    digits = str(one).rstrip("0")
    return str(number).rstrip("0") == digits != ""


def _fits(number: int, one: int, group: int) -> bool:
    """Tell whether so many groups fill a number nearly: the most, or the fewest, round ones.

    Or as many as make a multiple of ten; or the twenty-five, where one more or fewer fit.
    """
    if group < 2 or one < group:
        return False
    groups = one // group
    if number * group % 10 == 0 and number <= groups:
        return True
    if number == 25 and abs(groups - number) == 1:
        return True
    return any(
        number in (groups // unit * unit, -(-one // group) // -unit * -unit)
        for unit in (1, 10, 100, 1000)
    )


def _fits_shared(number: int, one: int, group: int) -> bool:
    """Tell whether a number is what groups that fit take: 60 of 96 in sixes."""
    return group > 1 and number % group == 0 and _fits(number // group, one, group)


def tells_what_is_left(problem: Problem, way: Way) -> bool:
    """Tell whether a division told with a remainder says its groups and what is left of it."""
    if not isinstance(problem, Operation) or way.remainder is None:
        return False
    whole, part = problem.left, problem.right
    if not isinstance(whole, int) or not isinstance(part, int):
        return False
    groups, left = divmod(whole, part)
    said = {one for step in way.steps for one in leaves(step.equation.left)}
    said |= {step.equation.right for step in way.steps}
    shown = (way.remainder.groups, way.remainder.left) == (groups, left)
    return shown and left > 0 and {groups, left} <= said


def taken(step: Step) -> int:
    """Return how much of the number shared a step deals with: 60 in 10 x 6 = 60 and 60 / 6 = 10."""
    whole, result = step.equation.left, step.equation.right
    if step.kind is not Kind.GROUP or not isinstance(whole, Operation):
        return 0
    dealt = result if whole.sign is Sign.TIMES else whole.left
    return dealt if isinstance(dealt, int) else 0


def long_product(problem: Problem) -> bool:
    """Tell whether two numbers over twelve are multiplied, one of them over a hundred."""
    if not isinstance(problem, Operation) or problem.sign is not Sign.TIMES:
        return False
    left, right = problem.left, problem.right
    if not isinstance(left, int) or not isinstance(right, int):
        return False
    small, large = sorted(int(str(one).rstrip("0") or "0") for one in (left, right))
    return small > 12 and large > 100


def too_much(step: Step, noted: bool = False) -> bool:
    """Tell whether a step multiplies or divides more than a child would in one go.

    In a long product, whose steps are noted down, a digit times up to four digits is not.
    """
    factors = _products((step.equation.left, step.equation.right))
    if noted and all(_digit_times(*pair) for pair in factors):
        return False
    return any(map(_too_much, factors))


def _digit_times(one: int, other: int) -> bool:
    small, large = sorted(int(str(number).rstrip("0") or "0") for number in (one, other))
    return small < 10 and large < 10_000


def _products(sides: Iterable[Expression]) -> list[tuple[int, int]]:
    """Return the factors of every product, and those behind every quotient, that has a result.

    A product said to be another product is not worked out.
    """
    one, other = sides
    if not isinstance(one, Operation) or not isinstance(other, int) or one.sign not in GROUPED:
        return []
    left, right = one.left, one.right
    if not isinstance(left, int) or not isinstance(right, int):
        return []
    return [(left, right) if one.sign is Sign.TIMES else (right, other)]


def _too_much(factors: tuple[int, int]) -> bool:
    """Tell whether two factors are too long: over one digit times two, or small times three."""
    bare = (int(str(factor).rstrip("0") or "0") for factor in factors)
    small, large = sorted(bare)
    if large <= 12 or small < 2:
        return False
    return small > 9 or large >= (1000 if small < 5 else 100)
