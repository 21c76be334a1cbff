"""The true equation that a problem comes to."""

from fractions import Fraction

from waysaid.number import (
    BLANK,
    About,
    Answer,
    Claim,
    Compare,
    Equation,
    Exact,
    Expression,
    Image,
    ImageKind,
    NoValue,
    Operation,
    Problem,
    Sign,
    as_written_in,
    chain,
    is_true,
    value_of,
)
from waysaid.strings.leaf import with_leaves, written_of
from waysaid.ways import Family, ways


def as_number(found: Answer) -> Exact | None:
    """Return an answer that is a number, and None for one that is not."""
    return found if isinstance(found, int | Fraction) else None


def filled(problem: Problem, found: Answer) -> Equation:
    """Return a true equation that a problem and its answer come to.

    A comparison gives what lies between its two sides, a false claim what its left side comes
    to, an estimate the exact answer, a picture the numbers it is easiest seen as.
    """
    match problem:
        case Image():
            return _seen(problem)
        case Compare():
            return _between(problem)
        case About():
            return _with_value(problem, problem.expression)
        case Claim():
            true = is_true(problem.equation)
            return problem.equation if true else _with_value(problem, problem.equation.left)
        case Equation():
            return _completed(problem, as_number(found))
        case _:
            return _with_value(problem, problem)


def _with_value(problem: Problem, expression: Expression) -> Equation:
    value = value_of(expression)
    return Equation(expression, as_written_in(value, problem))


def _seen(image: Image) -> Equation:
    """Return the groups of a picture put together, or else the easiest way to see its one group."""
    groups = groups_of(image)
    if len(groups) > 1:
        sign = Sign.TIMES if image.kind is ImageKind.ARRAY else Sign.PLUS
        return Equation(chain(groups[0], *((sign, each) for each in groups[1:])), image.count)
    found = [way for way in ways(image) if way.family is not Family.COUNTING]
    if not found:
        return Equation(image.count, image.count)
    return found[0].steps[-1].equation


def groups_of(image: Image) -> tuple[int, ...]:
    """Return the dots of each frame or die, or the two sides of rows; () for scattered dots."""
    match image.kind:
        case ImageKind.FRAME | ImageKind.PAIRS:
            return image.numbers[1:]
        case ImageKind.DICE | ImageKind.ARRAY:
            return image.numbers
        case ImageKind.DOTS:
            return ()


def _between(problem: Compare) -> Equation:
    left, right = value_of(problem.left), value_of(problem.right)
    if left == right:
        return Equation(problem.left, problem.right)
    high, low = (problem.left, problem.right) if left > right else (problem.right, problem.left)
    return _with_value(problem, Operation(Sign.MINUS, high, low))


def _completed(problem: Equation, answer: Exact | None) -> Equation:
    if answer is None:
        raise NoValue("no number fills the blank")
    number = as_written_in(answer, problem)
    given = written_of(problem)
    full = with_leaves(problem, [number if leaf is BLANK else leaf for leaf in given])
    if not isinstance(full, Equation):
        raise TypeError("an equation stays one when it is filled")
    turned = isinstance(full.right, Operation) and not isinstance(full.left, Operation)
    return Equation(full.right, full.left) if turned else full
