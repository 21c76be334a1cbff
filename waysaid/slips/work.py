"""Build the equations of wrong work; here an equation may be false."""

from waysaid.number import Equation, Expression, Operation, Sign, chain
from waysaid.slips.slip import Made, Pair


def digits(number: int) -> tuple[int, ...]:
    """Return the digits of a whole number, the ones first."""
    return tuple(int(digit) for digit in reversed(str(number)))


def column(pair: Pair) -> tuple[tuple[int, int], ...]:
    """Return the digits over one another, the ones first; an empty place counts as 0."""
    top, bottom = digits(pair.left), digits(pair.right)
    size = max(len(top), len(bottom))
    pad = (0,) * size
    return tuple(zip((top + pad)[:size], (bottom + pad)[:size], strict=True))


def says(left: int, sign: Sign, right: int, result: int) -> Equation:
    """Return `left sign right = result`, true or not."""
    return Equation(Operation(sign, left, right), result)


def whole(pair: Pair, wrong: int) -> Equation:
    """Return the pair with the wrong answer after the equals sign."""
    return says(pair.left, pair.sign, pair.right, wrong)


def put_together(pair: Pair, steps: list[Equation], parts: list[int], at: int = 0) -> Made:
    """Return the work `steps`, ended by the sum of its parts (largest first), as a slip."""
    kept = sorted((part for part in parts if part), reverse=True)
    wrong = sum(kept)
    if len(kept) > 1:
        steps = [*steps, Equation(_sum(kept), wrong)]
    elif not steps or steps[-1].right != wrong:
        steps = [*steps, whole(pair, wrong)]
    return Made(wrong, tuple(steps), at)


def _sum(parts: list[int]) -> Expression:
    return chain(parts[0], *((Sign.PLUS, part) for part in parts[1:]))
