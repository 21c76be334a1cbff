"""The plain equations a link shows, with every number in the form the string has it in."""

from waysaid.number import (
    Equation,
    Exact,
    Form,
    Number,
    Operation,
    Sign,
    Written,
    apply,
    decimal,
    exact,
    percent,
    text,
)


def gap(one: Exact, other: Exact) -> Exact:
    """Return how far apart two numbers are."""
    return exact(max(one, other) - min(one, other))


def like(value: Exact, *models: Number) -> Number:
    """Return a number written as its models are: per cent where all are, with a point where any is.

    Anything else is left as a whole number or a fraction in lowest terms.
    """
    forms = [model.form if isinstance(model, Written) else None for model in models]
    if forms and all(form is Form.PERCENT for form in forms):
        return percent(value)
    return decimal(value) if Form.DECIMAL in forms else exact(value)


def gap_shown(old: Number, new: Number) -> Number:
    """Return how far apart two numbers are, written as they are."""
    return like(gap(exact(old), exact(new)), old, new)


def change(old: Number, new: Number) -> str:
    """Return the equation that turns one number into another: `40 - 3 = 37`, `25 + 3 = 28`."""
    sign = Sign.PLUS if exact(new) >= exact(old) else Sign.MINUS
    return text(Equation(Operation(sign, old, gap_shown(old, new)), new))


def times(old: Number, by: Exact) -> str:
    """Return `old x by = ...`."""
    found = like(apply(Sign.TIMES, exact(old), by), old)
    return text(Equation(Operation(Sign.TIMES, old, by), found))


def scaling(old: Number, new: Number) -> str:
    """Return `old x k = new` or `old / k = new`, whichever has the larger k; neither may be 0."""
    small, large = sorted((exact(old), exact(new)))
    sign = Sign.TIMES if exact(new) >= exact(old) else Sign.OVER
    return text(Equation(Operation(sign, old, apply(Sign.OVER, large, small)), new))
