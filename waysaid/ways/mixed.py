"""Problems of several operations: worked one after another, or put in a form that is easier.

`6 x 3 + 4`, `48 / 4 / 2`, `20 - (3 + 5)`, `_ x 3 + 4 = 19`. One operation is told in the way of
each family that asks least, the others in the way that asks least of all. The family is that of the
operation told; where each is told in the way that asks least, that of the one that asks most (our
choice: it is what a listener would name).
"""

from collections.abc import Callable, Iterator

from waysaid.number import (
    Blank,
    Expression,
    Form,
    NoValue,
    Number,
    Operation,
    Problem,
    Sign,
    decimal,
    exact,
    has_form,
    value_of,
)
from waysaid.ways.effort import tenths_of
from waysaid.ways.rewrites import opened_sum, rewrites
from waysaid.ways.step import Step
from waysaid.ways.undone import to_work_out, told_exactly
from waysaid.ways.way import Family, Way

MOST_OPERATIONS = 6
"""The most operations a problem may have to be worked so; our choice."""
GROUPED = (Sign.TIMES, Sign.OF, Sign.OVER)
Worked = tuple[Family, str, tuple[Step, ...]]
_Ways = Callable[[Problem], tuple[Way, ...]]


def mixed(problem: Problem, ways: _Ways) -> Iterator[Worked]:
    """Yield the ways of a problem of two or more operations, or of one that finds a blank.

    None for any other.

    `ways` gives the ways of a problem of one operation, the least effort first.
    """
    whole = to_work_out(problem)
    if whole is None:
        return
    if not _is_mixed(whole):
        if whole is not problem and isinstance(whole, Operation):
            for way in told_exactly(ways(whole)):
                yield way.family, way.variant, way.steps
        return
    try:
        parts = [_fitting(one, ways) for one in _in_order(whole)]
    except NoValue:
        return
    if len(parts) <= MOST_OPERATIONS and all(parts):
        yield from _together(whole, parts)
    for family, slug, form in rewrites(whole):
        yield from _rewritten(family, slug, form, ways)
    flat = opened_sum(whole)
    if flat is not None:
        for way in ways(flat):
            yield way.family, f"opened-{way.variant}", way.steps


def _rewritten(family: Family, slug: str, form: Expression, ways: _Ways) -> Iterator[Worked]:
    """Yield another form of the problem, each of its operations worked as it asks least."""
    try:
        parts = [_fitting(one, ways) for one in _in_order(form)]
    except NoValue:
        return
    if all(parts):
        yield family, slug, tuple([step for part in parts for step in part[0].steps])


def _is_mixed(whole: Expression) -> bool:
    return isinstance(whole, Operation) and (
        isinstance(whole.left, Operation) or isinstance(whole.right, Operation)
    )


def _in_order(whole: Expression) -> Iterator[Operation]:
    """Yield the operations in the order they are worked, each with two numbers.

    Raises `NoValue` for a division by zero.
    """
    if isinstance(whole, Operation):
        yield from _in_order(whole.left)
        yield from _in_order(whole.right)
        yield Operation(whole.sign, _worked(whole.left), _worked(whole.right))


def _worked(side: Expression) -> Expression:
    """Return the number a side comes to, with a point where one of its numbers has one."""
    if not isinstance(side, Operation):
        return side
    value = value_of(side)
    left, right = _worked(side.left), _worked(side.right)
    return decimal(value) if _pointed(left) or _pointed(right) else value


def _pointed(number: Expression | Number) -> bool:
    return has_form(number, Form.DECIMAL)


def _fitting(one: Operation, ways: _Ways) -> tuple[Way, ...]:
    """Return the way of each family that asks least of one operation, to go on from.

    Only those that end with its exact value.
    """
    value = value_of(one)
    found: dict[Family, Way] = {}
    for way in ways(one):
        last = way.steps[-1].equation.right
        if not isinstance(last, Operation | Blank) and exact(last) == value:
            found.setdefault(way.family, way)
    return tuple(found.values())


def _together(whole: Expression, parts: list[tuple[Way, ...]]) -> Iterator[Worked]:
    """Yield the ways with one operation told in each of its ways, the dearest operation first."""
    least = [part[0].steps for part in parts]
    factors = _only_grouped(whole) and all(len(steps) == 1 for steps in least)
    by_effort = sorted(range(len(parts)), key=lambda place: -tenths_of(parts[place][0]))
    for place in by_effort:
        for way in parts[place]:
            told = [*least[:place], way.steps, *least[place + 1 :]]
            plain = way is parts[place][0]
            family = Family.FACTOR_STEPS if factors and plain else way.family
            slug = "in-order" if plain else f"{place + 1}-{way.variant}"
            yield family, slug, tuple([step for steps in told for step in steps])


def _only_grouped(whole: Expression) -> bool:
    """Tell whether a problem only multiplies and divides."""
    if not isinstance(whole, Operation):
        return True
    return whole.sign in GROUPED and _only_grouped(whole.left) and _only_grouped(whole.right)
