"""Random numbers, expressions and equations, small enough to be read back."""

from fractions import Fraction

from hypothesis import strategies as st

from waysaid.number import BLANK, Equation, Operation, Sign, exact

wholes = st.integers(-999, 9999)
fractions = st.fractions(min_value=-50, max_value=50, max_denominator=24).map(exact)
numbers = st.one_of(wholes, fractions)


def _joined(children):
    return st.builds(Operation, st.sampled_from(Sign), children, children)


def expressions(leaf=numbers, most=6):
    return st.recursive(leaf, _joined, max_leaves=most)


equations = st.builds(Equation, expressions(), expressions())
blank_equations = st.builds(
    Equation, expressions(st.one_of(st.just(BLANK), numbers)), expressions(numbers, 3)
)


def brute_force(equation, candidates):
    """Every candidate that fills the blanks and makes the equation true, by plain arithmetic."""
    return [one for one in candidates if _holds(equation, Fraction(one))]


def _holds(equation, value):
    try:
        return plain(equation.left, value) == plain(equation.right, value)
    except ZeroDivisionError:
        return False


def plain(expression, value=None):
    """The value by Python's own fractions; `value` stands for a blank."""
    if expression is BLANK:
        return value
    if not isinstance(expression, Operation):
        return Fraction(expression)
    left, right = plain(expression.left, value), plain(expression.right, value)
    return {
        Sign.PLUS: lambda: left + right,
        Sign.MINUS: lambda: left - right,
        Sign.TIMES: lambda: left * right,
        Sign.OVER: lambda: left / right,
    }[expression.sign]()
