"""Equations: the equals sign read as `write the answer`, numbers in sight added, moved awry."""

from collections.abc import Iterator

from waysaid.number import (
    BLANK,
    Equation,
    Exact,
    Expression,
    NoValue,
    Number,
    Operation,
    Problem,
    Sign,
    as_written_in,
    blanks,
    chain,
    exact,
    value_of,
    written,
)
from waysaid.slips.cases import Two, two_of
from waysaid.slips.slip import OUR_GUESS, Likely, Made, Rule, SlipName
from waysaid.slips.work import ended, says


def equation_of(problem: Problem) -> Equation | None:
    """Return an equation with one blank."""
    return problem if isinstance(problem, Equation) and blanks(problem) == 1 else None


def write_answer(equation: Equation) -> Iterator[Made]:
    """Work the side without the blank and write its answer: 7 + 6 = _ + 2 gives 13."""
    side = equation.right if blanks(equation.left) else equation.left
    value = _value(side)
    if isinstance(side, Operation) and value is not None:
        yield Made(value, (Equation(side, _like(equation, value)),))


def add_all(equation: Equation) -> Iterator[Made]:
    """Add every number in sight: 8 + 4 = _ + 5 gives 17."""
    sides = (*written(equation.left), *written(equation.right))
    numbers: list[Number] = [leaf for leaf in sides if leaf is not BLANK]
    signs = {*_signs(equation.left), *_signs(equation.right)}
    if len(numbers) > 1 and signs <= {Sign.PLUS, Sign.MINUS}:
        total = exact(sum(exact(number) for number in numbers))
        said = chain(numbers[0], *((Sign.PLUS, number) for number in numbers[1:]))
        yield Made(total, (Equation(said, _like(equation, total)),))


def _like(equation: Equation, value: Exact) -> Number:
    """Return a value as the equation would have it: with a point where a number has one."""
    return as_written_in(value, equation)


def _signs(part: Expression) -> Iterator[Sign]:
    if isinstance(part, Operation):
        yield part.sign
        yield from _signs(part.left)
        yield from _signs(part.right)


def moved_awry(equation: Equation) -> Iterator[Made]:
    """Put the difference of two numbers on where it comes off: 8 + 4 = _ + 5 gives 9."""
    for known, asked in ((equation.left, equation.right), (equation.right, equation.left)):
        two = two_of(known) if not blanks(known) else None
        if two is None or not isinstance(asked, Operation) or asked.sign is not two.sign:
            continue
        given = asked.right if asked.left is BLANK else asked.left
        if two.sign is Sign.PLUS and type(given) is int:
            yield from _moved(two, given)


def _moved(two: Two, given: int) -> Iterator[Made]:
    for kept, changed in ((two.left, two.right), (two.right, two.left)):
        if type(kept) is int and type(changed) is int and given != changed:
            off = abs(given - changed)
            sign = Sign.PLUS if given > changed else Sign.MINUS
            wrong = kept + off if sign is Sign.PLUS else kept - off
            first = says(max(given, changed), Sign.MINUS, min(given, changed), off)
            yield ended(wrong, first, says(kept, sign, off, wrong), at=1)


def near_miss(equation: Equation) -> Iterator[Made]:
    """Be one off where both sides are worked out."""
    if not (isinstance(equation.left, Operation) and isinstance(equation.right, Operation)):
        return
    known, asked = equation.left, equation.right
    if blanks(known):
        known, asked = asked, known
    value = _value(known)
    if not isinstance(value, int):
        return
    for off in (-1, 1):
        wrong = _blank_for(asked, value + off)
        if wrong is not None:
            first = Equation(known, value + off)
            given = asked.right if asked.left is BLANK else asked.left
            if isinstance(given, int):
                yield ended(wrong, first, _back(asked, value + off, wrong))


def _blank_for(asked: Operation, total: int) -> int | None:
    two = two_of(Equation(asked, total))
    if two is None or two.sign not in (Sign.PLUS, Sign.MINUS):
        return None
    value = _value(Operation(two.sign, two.left, two.right))
    return value if isinstance(value, int) else None


def _back(asked: Operation, total: int, wrong: int) -> Equation:
    two = two_of(Equation(asked, total))
    return says(two.left, two.sign, two.right, wrong) if two is not None else Equation(wrong, wrong)


def _value(side: Expression) -> Exact | None:
    try:
        return value_of(side)
    except NoValue:
        return None


EQUALITY: tuple[Rule[Equation], ...] = (
    Rule(SlipName.WRITE_ANSWER, write_answer, Likely.OFTEN, "equality"),
    Rule(SlipName.ADD_ALL, add_all, Likely.OFTEN, "equality"),
    Rule(SlipName.ADJUST_WRONG_WAY, moved_awry, Likely.SOMETIMES, OUR_GUESS),
    Rule(SlipName.NEAR_MISS, near_miss, Likely.RARE, OUR_GUESS),
)
