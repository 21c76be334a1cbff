"""Sums and products with their numbers in one order, so that 6 x 10 is found for 10 x 6."""

from collections.abc import Iterator
from functools import lru_cache

from waysaid.number import (
    Blank,
    Equation,
    Exact,
    Expression,
    Operation,
    Sign,
    chain,
    exact,
    signed_terms,
)


def turned(equation: Equation) -> Equation:
    """Return the equation with every plain sum and product largest first: 12 = 5 + 7 as 7 + 5.

    Numbers are compared by their worth, but for a number that is only written another way.
    """
    if not isinstance(equation.left, Operation) and not isinstance(equation.right, Operation):
        return equation
    return Equation(turned_side(equation.left), turned_side(equation.right))


@lru_cache(maxsize=8192)
def turned_side(side: Expression) -> Expression:
    """Return one side of an equation, its sums and products largest first."""
    if not isinstance(side, Operation):
        return side if isinstance(side, Blank) else exact(side)
    numbers = list(_added(side) or ())
    if numbers:
        first, *rest = sorted(numbers, reverse=True)
        return chain(first, *((Sign.PLUS, number) for number in rest))
    factors = list(_factors(side))
    if len(factors) > 1 and not any(isinstance(one, Blank | Operation) for one in factors):
        largest, *others = sorted(map(_exact, factors), reverse=True)
        return chain(largest, *((Sign.TIMES, number) for number in others))
    return Operation(side.sign, turned_side(side.left), turned_side(side.right))


def _added(side: Expression) -> list[Exact] | None:
    """Return the numbers of a plain sum; None for anything else."""
    terms = signed_terms(side)
    if terms is None:
        return None
    plain = [one for sign, one in terms if sign is Sign.PLUS and not isinstance(one, Blank)]
    return plain if len(plain) == len(terms) else None


def _factors(side: Expression) -> Iterator[Expression]:
    """Yield what a plain product is of: 2, 3 and 4 for 2 x 3 x 4; part of a number is one."""
    if isinstance(side, Operation) and side.sign in (Sign.TIMES, Sign.OF):
        yield from _factors(side.left)
        yield from _factors(side.right)
    else:
        yield side


def _exact(leaf: Expression) -> Exact:
    assert not isinstance(leaf, Blank | Operation)
    return exact(leaf)
