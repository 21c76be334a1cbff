"""Numbers in two forms, both told with a point and then worked as decimals: 1/2 + 0.25."""

from collections.abc import Callable, Iterator

from waysaid.number import Form, Number, Operation, Sign, decimal, exact, has_form
from waysaid.ways import decimals
from waysaid.ways.fractions.amount import said_as
from waysaid.ways.fractions.two_forms import TwoForms
from waysaid.ways.maker import AnyMaker, Maker
from waysaid.ways.plan import Plan
from waysaid.ways.way import Family

LEFT_OUT = frozenset({Family.COLUMN, Family.THINK_ADD})
"""Families that a child would not go on with after naming a number anew; our choice."""


def _pointed(problem: TwoForms) -> tuple[Number, Number] | None:
    """Return both numbers with a point; None where one has none, or neither had one."""
    new = tuple(decimal(exact(one)) for one in problem.both)
    written = [has_form(one, Form.DECIMAL) for one in problem.both]
    if not any(written) or not all(
        isinstance(one, int) or has_form(one, Form.DECIMAL) for one in new
    ):
        return None
    return new[0], new[1]


def _plans(maker: AnyMaker) -> Callable[[TwoForms], Iterator[Plan]]:
    def plans(problem: TwoForms) -> Iterator[Plan]:
        """Yield the first way of the family for the decimals, each number named anew first."""
        new = _pointed(problem)
        if new is None or problem.sign not in (Sign.PLUS, Sign.MINUS):
            return
        pairs = zip(problem.both, new, strict=True)
        said = tuple(said_as(old, other) for old, other in pairs if old != other)
        for shape in decimals.shapes_of(Operation(problem.sign, *new)):
            for slug, moves in maker.of(shape):
                told = [maker.told(move, shape) for move in moves]
                yield f"pointed-{slug}", (*said, *told)
                break

    return plans


MAKERS: tuple[AnyMaker, ...] = tuple(
    Maker(maker.family, TwoForms, _plans(maker))
    for maker in decimals.MAKERS
    if maker.family not in LEFT_OUT
)
