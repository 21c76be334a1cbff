"""Random numbers, expressions and equations, small enough to be read back."""

from fractions import Fraction

from hypothesis import strategies as st

from waysaid.number import (
    BLANK,
    About,
    Claim,
    Compare,
    Equation,
    Image,
    ImageKind,
    Operation,
    Sign,
    Written,
    arrange,
    decimal,
    exact,
    mixed,
    parts,
    percent,
)

wholes = st.integers(-999, 9999)
fractions = st.fractions(min_value=-50, max_value=50, max_denominator=24).map(exact)
written = st.one_of(
    st.builds(lambda n, size: decimal(Fraction(n, 10**size), size), wholes, st.integers(0, 3)),
    st.builds(parts, st.integers(0, 40), st.integers(1, 12)),
    st.builds(mixed, st.integers(1, 9), st.integers(1, 12), st.integers(1, 12)),
    st.builds(
        lambda n, size: percent(Fraction(n, 10**size)), st.integers(0, 999), st.integers(0, 4)
    ),
)
numbers = st.one_of(wholes, fractions, written)


def _joined(children):
    return st.builds(Operation, st.sampled_from(Sign), children, children)


def expressions(leaf=numbers, most=6):
    return st.recursive(leaf, _joined, max_leaves=most)


equations = st.builds(Equation, expressions(), expressions())
blank_equations = st.builds(
    Equation, expressions(st.one_of(st.just(BLANK), numbers)), expressions(numbers, 3)
)

claims = st.builds(Claim, equations)
compares = st.builds(Compare, expressions(), expressions())
estimates = st.builds(About, expressions())
images = st.one_of(
    st.builds(
        lambda kind, size, filled: Image(kind, (size, filled)),
        st.sampled_from((ImageKind.FRAME, ImageKind.PAIRS)),
        st.sampled_from((10, 20)),
        st.integers(1, 10),
    ),
    st.builds(
        lambda kind, first, second: Image(kind, (20, first, second)),
        st.sampled_from((ImageKind.FRAME, ImageKind.PAIRS)),
        st.integers(1, 10),
        st.integers(1, 10),
    ),
    st.builds(
        lambda faces: Image(ImageKind.DICE, tuple(faces)),
        st.lists(st.integers(1, 6), min_size=1, max_size=5),
    ),
    st.builds(lambda n, m: Image(ImageKind.ARRAY, (n, m)), st.integers(1, 12), st.integers(1, 12)),
    st.sets(st.tuples(st.integers(0, 20), st.integers(0, 12)), min_size=1, max_size=30).map(
        lambda places: Image(ImageKind.DOTS, tuple(5 * n for place in places for n in place))
    ),
    st.builds(
        lambda seed, groups: arrange(seed, *groups),
        st.integers(0, 10**6),
        st.lists(st.integers(1, 6), min_size=1, max_size=5),
    ),
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
        return Fraction(expression.value if isinstance(expression, Written) else expression)
    left, right = plain(expression.left, value), plain(expression.right, value)
    return {
        Sign.PLUS: lambda: left + right,
        Sign.MINUS: lambda: left - right,
        Sign.TIMES: lambda: left * right,
        Sign.OVER: lambda: left / right,
        Sign.OF: lambda: left * right,
    }[expression.sign]()
