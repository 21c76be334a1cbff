"""Random strings of sums, differences, three numbers and missing numbers, for the properties."""

from hypothesis import strategies as st

from waysaid.number import BLANK, Equation, Operation, Problem, Sign, chain

PLUS, MINUS = Sign.PLUS, Sign.MINUS


def numbers(largest: int = 40):
    return st.integers(0, largest)


@st.composite
def sums(draw, largest: int = 40) -> Problem:
    return Operation(PLUS, draw(numbers(largest)), draw(numbers(largest)))


@st.composite
def differences(draw, largest: int = 40) -> Problem:
    left = draw(numbers(largest))
    return Operation(MINUS, left, draw(st.integers(0, left)))


@st.composite
def three(draw, largest: int = 20) -> Problem:
    one, two, last = (draw(numbers(largest)) for _ in range(3))
    sign = draw(st.sampled_from([PLUS, MINUS])) if last <= one + two else PLUS
    return chain(one, (PLUS, two), (sign, last))


@st.composite
def missing(draw, largest: int = 40) -> Problem:
    part, whole = sorted((draw(numbers(largest)), draw(numbers(largest))))
    match draw(st.integers(0, 4)):
        case 0:
            return Equation(Operation(PLUS, part, BLANK), whole)
        case 1:
            return Equation(Operation(PLUS, BLANK, part), whole)
        case 2:
            return Equation(Operation(MINUS, whole, BLANK), part)
        case 3:
            return Equation(Operation(MINUS, BLANK, whole), part)
        case _:
            return Equation(whole, Operation(PLUS, part, BLANK))


def problems(largest: int = 40):
    return st.one_of(sums(largest), differences(largest), three(), missing(largest))


def strings(largest: int = 12, longest: int = 5):
    """Small numbers, so that links are many."""
    return st.lists(problems(largest), min_size=2, max_size=longest)
