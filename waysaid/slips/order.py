"""Several signs in one problem: their order, brackets, and a factor left out."""

from collections.abc import Iterator

from waysaid.number import (
    Equation,
    Exact,
    Expression,
    NoValue,
    Operation,
    Problem,
    Sign,
    apply,
    chain,
    value_of,
)
from waysaid.slips.slip import OUR_GUESS, Likely, Made, Rule, SlipName
from waysaid.slips.work import says

_Link = tuple[Sign, Exact]
_BY = (Sign.TIMES, Sign.OVER)


def mixed_of(problem: Problem) -> Operation | None:
    """Return a problem of three or more plain numbers with a product or a division in it."""
    if not isinstance(problem, Operation):
        return None
    signs = list(_signs(problem))
    if len(signs) < 2 or not any(sign in _BY for sign in signs) or Sign.OF in signs:
        return None
    return problem if all(type(leaf) is int for leaf in _plain(problem)) else None


def _signs(part: Expression) -> Iterator[Sign]:
    if isinstance(part, Operation):
        yield from _signs(part.left)
        yield part.sign
        yield from _signs(part.right)


def _plain(part: Expression) -> Iterator[object]:
    if isinstance(part, Operation):
        yield from _plain(part.left)
        yield from _plain(part.right)
    else:
        yield part


def left_to_right(problem: Operation) -> Iterator[Made]:
    """Work from left to right, whatever the signs: 3 + 4 x 2 gives 14."""
    if _has_bracket(problem):
        return
    numbers = [leaf for leaf in _plain(problem) if type(leaf) is int]
    value: Exact = numbers[0]
    steps = []
    for sign, number in zip(_signs(problem), numbers[1:], strict=True):
        if sign is Sign.OVER and not number:
            return
        after = apply(sign, value, number)
        steps.append(says(value, sign, number, after))
        value = after
    yield Made(value, tuple(steps))


def _has_bracket(part: Expression) -> bool:
    """Tell whether the problem is written with a bracket."""
    if not isinstance(part, Operation):
        return False
    light = (Sign.PLUS, Sign.MINUS)
    inner_left = isinstance(part.left, Operation) and part.sign in _BY and part.left.sign in light
    inner_right = isinstance(part.right, Operation) and (
        part.sign in _BY or part.right.sign in light
    )
    return inner_left or inner_right or _has_bracket(part.left) or _has_bracket(part.right)


def bracket_once(problem: Operation) -> Iterator[Made]:
    """Multiply only the number next to the sign: 2 x (3 + 4) gives 10."""
    left, right = problem.left, problem.right
    if problem.sign is not Sign.TIMES:
        return
    if isinstance(right, Operation) and right.sign in (Sign.PLUS, Sign.MINUS):
        first = Operation(Sign.TIMES, left, right.left)
        yield from _two_steps(first, right.sign, right.right)
    elif isinstance(left, Operation) and left.sign in (Sign.PLUS, Sign.MINUS):
        second = Operation(Sign.TIMES, left.right, right)
        try:
            product, before = value_of(second), value_of(left.left)
        except NoValue:
            return
        wrong = apply(left.sign, before, product)
        yield Made(wrong, (Equation(second, product), says(before, left.sign, product, wrong)))


def _two_steps(first: Operation, sign: Sign, other: Expression) -> Iterator[Made]:
    try:
        product, rest = value_of(first), value_of(other)
    except NoValue:
        return
    wrong = apply(sign, product, rest)
    yield Made(wrong, (Equation(first, product), says(product, sign, rest, wrong)))


def factor_missing(problem: Operation) -> Iterator[Made]:
    """Leave a factor out: 2 x 3 x 4 gives 6, 8 or 12."""
    numbers = _factors(problem)
    for at in range(len(numbers)):
        kept = numbers[:at] + numbers[at + 1 :]
        said = chain(kept[0], *((Sign.TIMES, number) for number in kept[1:]))
        yield Made(value_of(said), (Equation(said, value_of(said)),))


def factors_added(problem: Operation) -> Iterator[Made]:
    """Add instead of multiplying: 2 x 3 x 4 gives 9."""
    numbers = _factors(problem)
    if numbers:
        said = chain(numbers[0], *((Sign.PLUS, number) for number in numbers[1:]))
        yield Made(value_of(said), (Equation(said, value_of(said)),))


def _factors(problem: Operation) -> list[int]:
    if any(sign is not Sign.TIMES for sign in _signs(problem)):
        return []
    return [leaf for leaf in _plain(problem) if type(leaf) is int]


def near_miss(problem: Operation) -> Iterator[Made]:
    """Be one off, or ten off, somewhere on the way."""
    try:
        right = value_of(problem)
    except NoValue:
        return
    for off in (-1, 1, -10, 10):
        yield Made(right + off, (Equation(problem, right + off),))


ORDER: tuple[Rule[Operation], ...] = (
    Rule(SlipName.LEFT_TO_RIGHT, left_to_right, Likely.OFTEN, OUR_GUESS),
    Rule(SlipName.BRACKET_ONCE, bracket_once, Likely.SOMETIMES, OUR_GUESS),
    Rule(SlipName.PART_MISSING, factor_missing, Likely.SOMETIMES, OUR_GUESS),
    Rule(SlipName.WRONG_OPERATION, factors_added, Likely.SOMETIMES, OUR_GUESS),
    Rule(SlipName.NEAR_MISS, near_miss, Likely.SOMETIMES, OUR_GUESS),
)
