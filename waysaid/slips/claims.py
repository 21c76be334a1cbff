"""True or false: judged by `the answer comes next`, or by moving some across awry."""

from collections.abc import Iterator

from waysaid.number import (
    Claim,
    Equation,
    Exact,
    Expression,
    NoValue,
    Operation,
    Problem,
    Sign,
    Verdict,
    exact,
    leaves,
    value_of,
)
from waysaid.slips.cases import two_of
from waysaid.slips.slip import OUR_GUESS, Likely, Made, Rule, SlipName
from waysaid.slips.work import says


def claim_of(problem: Problem) -> Claim | None:
    """Return a claim."""
    return problem if isinstance(problem, Claim) else None


def _verdict(holds: bool) -> Verdict:
    return Verdict.TRUE if holds else Verdict.FALSE


def write_answer(claim: Claim) -> Iterator[Made]:
    """Look for the answer next to the equals sign: 29 + 14 = 30 + 13 is held to be false."""
    left, right = claim.equation.left, claim.equation.right
    value = _value(left)
    if isinstance(left, Operation) and isinstance(right, Operation) and value is not None:
        following = leaves(right)[0]
        yield Made(_verdict(value == following), (Equation(left, value),))


def answer_first(claim: Claim) -> Iterator[Made]:
    """Hold that the answer stands on the right alone: 8 = 5 + 3 is held to be false."""
    left, right = claim.equation.left, claim.equation.right
    if isinstance(right, Operation) and not isinstance(left, Operation):
        yield Made(Verdict.FALSE, (Equation(right, left),))


def moved_across(claim: Claim) -> Iterator[Made]:
    """Judge by moving some across where that does not keep the answer: 62 - 25 and 64 - 23."""
    yield from _judged(claim, across=True, misfit=(Sign.MINUS, Sign.TIMES, Sign.OVER))


def shifted_alike(claim: Claim) -> Iterator[Made]:
    """Judge by changing both alike where that does not keep the answer: 29 + 14 and 30 + 15."""
    yield from _judged(claim, across=False, misfit=(Sign.PLUS, Sign.TIMES, Sign.OVER))


def _judged(claim: Claim, *, across: bool, misfit: tuple[Sign, ...]) -> Iterator[Made]:
    """Yield the verdict of a false rule: both changes are opposite, or both are alike."""
    left, right = two_of(claim.equation.left), two_of(claim.equation.right)
    if left is None or right is None or left.sign is not right.sign or left.sign not in misfit:
        return
    first = exact(right.left) - exact(left.left)
    second = exact(right.right) - exact(left.right)
    if not first or not second or abs(first) != abs(second):
        return
    steps = (
        says(exact(left.left), *_change(exact(first)), exact(right.left)),
        says(exact(left.right), *_change(exact(second)), exact(right.right)),
    )
    yield Made(_verdict((first == -second) is across), steps)


def _change(off: Exact) -> tuple[Sign, Exact]:
    return (Sign.PLUS, off) if off > 0 else (Sign.MINUS, -off)


def _value(side: Expression) -> Exact | None:
    try:
        return value_of(side)
    except NoValue:
        return None


CLAIMS: tuple[Rule[Claim], ...] = (
    Rule(SlipName.WRITE_ANSWER, write_answer, Likely.OFTEN, "equality"),
    Rule(SlipName.ANSWER_FIRST, answer_first, Likely.OFTEN, "equality"),
    Rule(SlipName.MOVED_ACROSS, moved_across, Likely.SOMETIMES, OUR_GUESS),
    Rule(SlipName.SHIFTED_ALIKE, shifted_alike, Likely.SOMETIMES, OUR_GUESS),
)
