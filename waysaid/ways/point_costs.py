"""What a way with decimals asks: what it asks of whole numbers of the units, and for each point."""

from collections.abc import Iterator, Sequence
from dataclasses import replace
from fractions import Fraction

from waysaid.number import Equation, Expression, Form, Operation, Sign, Written, written
from waysaid.ways.costs import TENTHS, Charge
from waysaid.ways.step import Step
from waysaid.ways.way import Way

_POINT = TENTHS[Charge.POINT]
_LENGTHS = TENTHS[Charge.LENGTHS]
_GROUPED = frozenset({Sign.TIMES, Sign.OVER})
_MOST_MORE = 6
"""How many places more a share is looked for in; further it counts as shared without end."""


def has_points(steps: Sequence[Step]) -> bool:
    """Tell whether any number of the steps is written with a point."""
    for step in steps:
        left, right = step.equation.left, step.equation.right
        whole = type(left) is Operation and type(left.left) is int and type(left.right) is int
        if not (whole and type(right) is int) and any(_points(step.equation)):
            return True
    return False


def without_points(way: Way) -> tuple[Way, int]:
    """Return the way told with whole numbers of units, and the tenths for its points.

    What is added or taken is in one unit all through, so that numbers carried from step to step
    stay the same; the numbers of a product or quotient are each in a unit of their own.
    """
    places = 0
    tenths = 0
    for step in way.steps:
        sizes = [*_points(step.equation)]
        tenths += _POINT * len(sizes)
        if sizes and not _grouped(step.equation) and _in_one_unit(step.equation):
            places = max(places, *sizes)
            tenths += _LENGTHS if _unlike(step.equation.left) else 0
    steps = tuple([Step(step.kind, _whole(step.equation, places)) for step in way.steps])
    return replace(way, steps=steps), tenths


def _unlike(side: Expression) -> bool:
    """Tell whether two numbers with a point have not as many places."""
    return len(set(_sizes(side))) > 1


def _points(equation: Equation) -> Iterator[int]:
    """Yield the places of every number with a point."""
    yield from _sizes(equation.left)
    yield from _sizes(equation.right)


def _sizes(side: Expression) -> Iterator[int]:
    for leaf in (side,) if not isinstance(side, Operation) else written(side):
        if isinstance(leaf, Written) and leaf.form is Form.DECIMAL:
            yield leaf.size


def _grouped(equation: Equation) -> bool:
    side = equation.left if isinstance(equation.left, Operation) else equation.right
    return isinstance(side, Operation) and side.sign in _GROUPED


def _in_one_unit(equation: Equation) -> bool:
    """Tell whether every number is whole or has a point: none is a fraction or a percent."""
    return all(
        isinstance(leaf, int) or (isinstance(leaf, Written) and leaf.form is Form.DECIMAL)
        for side in (equation.left, equation.right)
        for leaf in written(side)
    )


def _whole(equation: Equation, places: int) -> Equation:
    left, right = equation.left, equation.right
    worked = isinstance(left, Operation) or isinstance(right, Operation)
    if not worked or not _in_one_unit(equation):
        return equation
    if not _grouped(equation):
        unit = 10**places
        return Equation(_in_units(left, unit), _in_units(right, unit))
    if not isinstance(left, Operation):
        return equation
    if isinstance(right, Operation):
        unit = 10 ** max([*_points(equation), 0])
        return Equation(_in_units(left, unit), _in_units(right, unit))
    return _group(left, equation)


def _in_units(side: Expression, unit: int) -> Expression:
    if isinstance(side, Operation):
        return Operation(side.sign, _in_units(side.left, unit), _in_units(side.right, unit))
    value = side.value if isinstance(side, Written) else side
    if isinstance(value, int | Fraction) and (value * unit).denominator == 1:
        return int(value * unit)
    return side


def _group(left: Operation, equation: Equation) -> Equation:
    """Return a product of the digits of its numbers, or a quotient that comes out even."""
    one, other = _value(left.left), _value(left.right)
    if one is None or other is None or not other:
        return equation
    if left.sign is Sign.TIMES:
        first, second = _digits(one), _digits(other)
        return Equation(Operation(Sign.TIMES, first, second), first * second)
    part = _digits(other)
    whole = one * part / other
    for more in range(_MOST_MORE + 1):
        share = whole * 10**more / part
        if share.denominator == 1 and (whole * 10**more).denominator == 1:
            return Equation(Operation(Sign.OVER, int(whole * 10**more), part), int(share))
    return Equation(Operation(Sign.OVER, int(whole), part), int(whole / part))


def _value(leaf: Expression) -> Fraction | None:
    if isinstance(leaf, Written):
        return Fraction(leaf.value)
    return Fraction(leaf) if isinstance(leaf, int | Fraction) else None


def _digits(value: Fraction) -> int:
    """Return the number without its point: 14 for 1.4."""
    places = 0
    while (value * 10**places).denominator > 1 and places < _MOST_MORE:
        places += 1
    return int(value * 10**places)
