"""Estimates: a zero lost or added, another sign, the front digits alone, tops or bottoms alone.

An answer is no slip where it lies in the span that a class would settle for.
"""

from collections.abc import Iterator

from waysaid.number import About, Exact, Operation, Problem, Sign, estimates, value_of
from waysaid.slips.cases import Parts, Two, parts_in, two_of
from waysaid.slips.fractions import sums
from waysaid.slips.slip import OUR_GUESS, Likely, Made, Rule, SlipName
from waysaid.slips.work import one_step


def about_of(problem: Problem) -> Operation | None:
    """Return what is to be estimated, where it is two numbers and a sign."""
    if not isinstance(problem, About) or two_of(problem.expression) is None:
        return None
    return problem.expression if isinstance(problem.expression, Operation) else None


def fractions_about(problem: Problem) -> Parts | None:
    """Return two fractions whose sum is to be estimated."""
    return parts_in(problem.expression) if isinstance(problem, About) else None


def _eased(expression: Operation) -> Iterator[Two]:
    for eased in estimates(expression):
        two = two_of(eased)
        if two is not None:
            yield two


def zero_dropped(expression: Operation) -> Iterator[Made]:
    """Round, and lose a zero or more: about 398 x 21 gives 800."""
    for two in _eased(expression):
        value = _worked(two)
        if expression.sign in (Sign.TIMES, Sign.OVER) and isinstance(value, int):
            for size in (10, 100):
                if value and value % size == 0:
                    yield one_step(two.left, two.sign, two.right, value // size)


def zero_added(expression: Operation) -> Iterator[Made]:
    """Round, and write a zero too many: about 398 x 21 gives 80000."""
    for two in _eased(expression):
        value = _worked(two)
        grows = expression.sign in (Sign.TIMES, Sign.OVER)
        if grows and isinstance(value, int) and value and value % 10 == 0:
            yield one_step(two.left, two.sign, two.right, value * 10)


def _worked(two: Two) -> Exact:
    return value_of(Operation(two.sign, two.left, two.right))


_OTHER = {
    Sign.TIMES: Sign.PLUS,
    Sign.OVER: Sign.MINUS,
    Sign.PLUS: Sign.MINUS,
    Sign.MINUS: Sign.PLUS,
}


def wrong_operation(expression: Operation) -> Iterator[Made]:
    """Round, and work with another sign: about 398 x 21 gives 420."""
    for two in _eased(expression):
        sign = _OTHER.get(two.sign, Sign.TIMES)
        wrong = value_of(Operation(sign, two.left, two.right))
        yield one_step(two.left, sign, two.right, wrong)


def rounded_down(expression: Operation) -> Iterator[Made]:
    """Keep the first digits and make the others zeros: about 398 x 21 as 300 x 20."""
    two = two_of(expression)
    if two is None or not isinstance(two.left, int) or not isinstance(two.right, int):
        return
    left, right = (int(str(each)[0]) * 10 ** (len(str(each)) - 1) for each in (two.left, two.right))
    if right or two.sign is not Sign.OVER:
        wrong = value_of(Operation(two.sign, left, right))
        yield one_step(left, two.sign, right, wrong)


ABOUT: tuple[Rule[Operation], ...] = (
    Rule(SlipName.ZERO_DROPPED, zero_dropped, Likely.OFTEN, OUR_GUESS),
    Rule(SlipName.ROUNDED_DOWN, rounded_down, Likely.OFTEN, OUR_GUESS),
    Rule(SlipName.ZERO_ADDED, zero_added, Likely.SOMETIMES, OUR_GUESS),
    Rule(SlipName.WRONG_OPERATION, wrong_operation, Likely.SOMETIMES, OUR_GUESS),
)

ABOUT_FRACTIONS: tuple[Rule[Parts], ...] = (
    Rule(SlipName.TOPS_ONLY, sums.tops_only, Likely.OFTEN, "nsw-cont"),
    Rule(SlipName.BOTTOMS_ONLY, sums.bottoms_only, Likely.OFTEN, "nsw-cont"),
    Rule(SlipName.ADD_ACROSS, sums.add_across, Likely.SOMETIMES, OUR_GUESS),
)
