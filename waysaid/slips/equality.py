"""Problems with a blank: the equals sign read as `write the answer`, and numbers in sight added."""

from collections.abc import Iterator

from waysaid.number import (
    BLANK,
    Equation,
    Expression,
    NoValue,
    Operation,
    Sign,
    blanks,
    chain,
    leaves,
    value_of,
)
from waysaid.slips.slip import Made, Pair


def write_answer(equation: Equation) -> Iterator[Made]:
    """Work the side without the blank and write its answer: 7 + 6 = _ + 2 gives 13."""
    side = equation.right if blanks(equation.left) else equation.left
    value = _whole(side)
    if isinstance(side, Operation) and value is not None:
        yield Made(value, (Equation(side, value),))


def add_all(equation: Equation) -> Iterator[Made]:
    """Add every number in sight: 8 + 4 = _ + 5 gives 17."""
    sides = (*leaves(equation.left), *leaves(equation.right))
    numbers = [leaf for leaf in sides if type(leaf) is int]
    if len(numbers) == len(sides) - 1 and len(numbers) > 1:
        total = sum(numbers)
        said = chain(numbers[0], *((Sign.PLUS, number) for number in numbers[1:]))
        yield Made(total, (Equation(said, total),))


def asked(equation: Equation) -> Pair | None:
    """Return the sum or difference that finds the blank: `7 + _ = 12` asks for 12 - 7.

    None where the equation has another shape than three numbers and one sign.
    """
    side, other = equation.left, equation.right
    if not isinstance(side, Operation):
        side, other = other, side
    if not isinstance(side, Operation) or type(other) is not int or side.sign in _PRODUCTS:
        return None
    known = side.right if side.left is BLANK else side.left
    if type(known) is not int or not blanks(side) or known < 0 or other < 0:
        return None
    if side.sign is Sign.PLUS:
        return Pair(other, Sign.MINUS, known)
    if side.left is BLANK:
        return Pair(other, Sign.PLUS, known)
    return Pair(known, Sign.MINUS, other)


_PRODUCTS = (Sign.TIMES, Sign.OVER)


def _whole(side: Expression) -> int | None:
    try:
        value = value_of(side)
    except NoValue:
        return None
    return value if isinstance(value, int) else None
