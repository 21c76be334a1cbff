"""What an expression comes to, where it comes to anything."""

from waysaid.number import Blank, Exact, Expression, NoValue, Operation, exact, value_of


def worth(expression: Expression) -> Exact | None:
    """Return what an expression comes to; None where it has no value."""
    if type(expression) is int:
        return expression
    if isinstance(expression, Operation):
        try:
            return value_of(expression)
        except NoValue:
            return None
    return None if isinstance(expression, Blank) else exact(expression)
