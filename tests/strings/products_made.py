"""Random strings of products, quotients, missing factors and parts of numbers."""

from fractions import Fraction

from hypothesis import strategies as st

from waysaid.number import (
    BLANK,
    Equation,
    Operation,
    Problem,
    Sign,
    chain,
    decimal,
    percent,
)

TIMES, OVER = Sign.TIMES, Sign.OVER


def sizes(largest: int = 12):
    return st.integers(1, largest)


@st.composite
def products(draw) -> Problem:
    return Operation(TIMES, draw(sizes(40)), draw(sizes()))


@st.composite
def quotients(draw) -> Problem:
    """Some with a remainder."""
    by, each = draw(sizes()), draw(sizes())
    return Operation(OVER, by * each + draw(st.sampled_from([0, 0, 0, 1])), by)


@st.composite
def three(draw) -> Problem:
    return chain(draw(sizes()), (TIMES, draw(sizes())), (TIMES, draw(sizes(5))))


@st.composite
def missing(draw) -> Problem:
    one, other = draw(sizes()), draw(sizes())
    match draw(st.integers(0, 3)):
        case 0:
            return Equation(Operation(TIMES, one, BLANK), one * other)
        case 1:
            return Equation(Operation(TIMES, BLANK, one), one * other)
        case 2:
            return Equation(Operation(OVER, one * other, BLANK), one)
        case _:
            return Equation(Operation(OVER, BLANK, one), other)


@st.composite
def parts_of(draw) -> Problem:
    whole = draw(st.sampled_from([16, 20, 25, 36, 40, 50, 60, 80, 100]))
    if draw(st.booleans()):
        hundredths = draw(st.sampled_from([1, 5, 10, 15, 16, 20, 25, 40, 50, 75, 80]))
        return Operation(Sign.OF, percent(Fraction(hundredths, 100)), whole)
    return Operation(
        TIMES, decimal(Fraction(draw(sizes(9)), draw(st.sampled_from([4, 10])))), whole
    )


def problems():
    return st.one_of(products(), quotients(), three(), missing(), parts_of())


def strings(longest: int = 4):
    """Of one form or of many."""
    alike = st.sampled_from([products(), quotients(), missing(), parts_of()])
    return st.one_of(
        alike.flatmap(lambda one: st.lists(one, min_size=2, max_size=longest)),
        st.lists(problems(), min_size=2, max_size=longest),
    )
