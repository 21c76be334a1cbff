"""What a way with decimals asks: what it asks of whole numbers of the units, and for each point."""

from collections.abc import Sequence

from waysaid.number import Equation, Expression, Form, Operation, Sign, Written
from waysaid.ways.costs import TENTHS, Charge
from waysaid.ways.step import Step
from waysaid.ways.way import Way

_POINT = TENTHS[Charge.POINT]
_LENGTHS = TENTHS[Charge.LENGTHS]
_PLACED = TENTHS[Charge.PLACED]
_GROUPED = frozenset({Sign.TIMES, Sign.OVER})
_MOST_MORE = 6
"""How many places more a share is looked for in; further it counts as shared without end."""


def has_points(steps: Sequence[Step]) -> bool:
    """Tell whether any number of the steps is written with a point."""
    for step in steps:
        left, right = step.equation.left, step.equation.right
        whole = type(left) is Operation and type(left.left) is int and type(left.right) is int
        if not (whole and type(right) is int) and (_points(left)[0] or _points(right)[0]):
            return True
    return False


def without_points(way: Way) -> tuple[Way, int, bool]:
    """Return the way told with whole numbers of units, and the tenths for its points.

    What is added or taken is in one unit all through, and where that is all there is (the last
    value), numbers carried from step to step stay the same; the numbers of a product or quotient
    are each in a unit of their own.
    """
    places = tenths = 0
    same = True
    in_one_unit: list[bool] = []
    for step in way.steps:
        equation = step.equation
        on_left, whole = _points(equation.left)
        on_right, also = _points(equation.right)
        sizes, one_unit, grouped = on_left + on_right, whole and also, _grouped(equation)
        in_one_unit.append(one_unit)
        if grouped or not one_unit:
            same = False
        elif sizes:
            places = max(places, *sizes)
            tenths += _LENGTHS if len(set(on_left)) > 1 else 0
        if sizes:
            tenths += _POINT * len(sizes) + (_PLACED if grouped else 0)
    told = zip(way.steps, in_one_unit, strict=True)
    steps = tuple(
        [Step(step.kind, _whole(step.equation, places)) if one else step for step, one in told]
    )
    return Way(way.family, way.variant, steps, way.answer), tenths, same


_Points = tuple[tuple[int, ...], bool]
_WHOLE: _Points = ((), True)
_OTHER: _Points = ((), False)


def _points(side: Expression) -> _Points:
    """Return the places of every number with a point; and whether all others are whole numbers."""
    if type(side) is int:
        return _WHOLE
    if type(side) is Operation:
        left, whole = _points(side.left)
        right, also = _points(side.right)
        return left + right, whole and also
    if type(side) is Written and side.form is Form.DECIMAL:
        return (side.size,), True
    return _OTHER


def _grouped(equation: Equation) -> bool:
    side = equation.left if type(equation.left) is Operation else equation.right
    return type(side) is Operation and side.sign in _GROUPED


def _whole(equation: Equation, places: int) -> Equation:
    """Return an equation of whole numbers and decimals in units."""
    left, right = equation.left, equation.right
    if type(left) is not Operation and type(right) is not Operation:
        return equation
    if not _grouped(equation):
        unit = 10**places
        return Equation(_in_units(left, unit), _in_units(right, unit))
    if type(left) is not Operation:
        return equation
    if type(right) is Operation:
        unit = 10 ** max((0, *_points(left)[0], *_points(right)[0]))
        return Equation(_in_units(left, unit), _in_units(right, unit))
    return _group(left, equation)


def _in_units(side: Expression, unit: int) -> Expression:
    if type(side) is Operation:
        return Operation(side.sign, _in_units(side.left, unit), _in_units(side.right, unit))
    if type(side) is Written:
        value = side.value
        return value.numerator * unit // value.denominator
    return side * unit if type(side) is int else side


def _group(left: Operation, equation: Equation) -> Equation:
    """Return a product of the digits of its numbers, or a quotient that comes out even."""
    one, other = left.left, left.right
    if isinstance(one, Operation) or isinstance(other, Operation):
        return equation
    first, second = _digits(one), _digits(other)
    if left.sign is Sign.TIMES or not second:
        return Equation(Operation(Sign.TIMES, first, second), first * second)
    places, more = _places(one), _places(other)
    for further in range(_MOST_MORE + 1):
        whole, over = divmod(first * 10 ** (more + further), 10**places)
        if not over and whole % second == 0:
            return Equation(Operation(Sign.OVER, whole, second), whole // second)
    whole = first * 10**more // 10**places
    return Equation(Operation(Sign.OVER, whole, second), whole // second)


def _places(leaf: Expression) -> int:
    return leaf.size if type(leaf) is Written else 0


def _digits(leaf: Expression) -> int:
    """Return a number without its point: 14 for 1.4."""
    whole = _in_units(leaf, 10 ** _places(leaf))
    return whole if type(whole) is int else 0
