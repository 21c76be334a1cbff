"""Build the equations of wrong work; here an equation may be false."""

from waysaid.number import Equation, Expression, Number, Operation, Said, Sign, chain, exact
from waysaid.slips.slip import Made, Pair


def digits(number: int) -> tuple[int, ...]:
    """Return the digits of a whole number, the ones first."""
    return tuple(int(digit) for digit in reversed(str(number)))


def pieces(number: int) -> tuple[int, ...]:
    """Return the place-value pieces of a number, the largest first: 125 is 100, 20 and 5."""
    places = enumerate(digits(number))
    return tuple(digit * 10**place for place, digit in reversed(tuple(places)) if digit)


def zeros(number: int) -> int:
    """Return how many zeros a number from 1 up ends in."""
    plain = str(number)
    return len(plain) - len(plain.rstrip("0"))


def column(pair: Pair) -> tuple[tuple[int, int], ...]:
    """Return the digits over one another, the ones first; an empty place counts as 0."""
    top, bottom = digits(pair.left), digits(pair.right)
    size = max(len(top), len(bottom))
    pad = (0,) * size
    return tuple(zip((top + pad)[:size], (bottom + pad)[:size], strict=True))


def says(left: Number, sign: Sign, right: Number, result: Number) -> Equation:
    """Return `left sign right = result`, true or not."""
    return Equation(Operation(sign, left, right), result)


def whole(pair: Pair, wrong: Number) -> Equation:
    """Return the pair with the wrong answer after the equals sign."""
    return says(pair.left, pair.sign, pair.right, wrong)


def one_step(left: Number, sign: Sign, right: Number, result: Number) -> Made:
    """Return work of one step; its result is the wrong answer."""
    return Made(exact(result), (says(left, sign, right, result),))


def ended(wrong: Number, *steps: Equation, at: int = 0) -> Made:
    """Return work whose wrong answer may be written in a form of its own."""
    said: Said = exact(wrong)
    return Made(said, steps, at)


def added(parts: list[int] | tuple[int, ...]) -> Expression:
    """Return the sum of one or more parts, as written."""
    return chain(parts[0], *((Sign.PLUS, part) for part in parts[1:]))


def put_together(pair: Pair, steps: list[Equation], parts: list[int], at: int = 0) -> Made:
    """Return the work `steps`, ended by the sum of its parts (largest first), as a slip."""
    kept = sorted((part for part in parts if part), reverse=True)
    wrong = sum(kept)
    if len(kept) > 1:
        steps = [*steps, Equation(added(kept), wrong)]
    elif not steps or steps[-1].right != wrong:
        steps = [*steps, whole(pair, wrong)]
    return Made(wrong, tuple(steps), at)
