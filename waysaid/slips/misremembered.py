"""One slip together with one misremembered fact: the ten lost, and 8 + 7 held to be 16.

The work of a slip is replayed with one of its one-digit facts a little off. A step that used the
old result uses the new one; where that is not clear, nothing is made up.
"""

from collections.abc import Iterator

from waysaid.number import Equation, Expression, Operation, Sign, value_of
from waysaid.slips.slip import Made, SlipName
from waysaid.slips.work import says, zeros

SYSTEMATIC = frozenset(
    {
        SlipName.SMALLER_FROM_LARGER, SlipName.NO_REGROUP, SlipName.ZERO_TO_NINE,
        SlipName.SKIP_ZERO, SlipName.ZERO_STAYS_TEN, SlipName.DROP_CARRY, SlipName.ZERO_TAKE,
        SlipName.PART_MISSING, SlipName.DIGITS_ALONE, SlipName.ADJUST_WRONG_WAY,
        SlipName.MOVED_ACROSS, SlipName.WRITE_ZERO,
    }
)  # fmt: skip
"""The slips that a misremembered fact may come on top of; the others are facts themselves."""

_FACT_SIGNS = (Sign.PLUS, Sign.MINUS, Sign.TIMES)


def with_fact_off(made: Made, wrong: int) -> Iterator[tuple[Made, Equation]]:
    """Yield the work that ends in `wrong` by one fact misremembered, and that fact: 8 + 7 = 16."""
    gap = wrong - made.wrong if isinstance(made.wrong, int) else 0
    if not gap:
        return
    for at, step in enumerate(made.steps):
        fact = _fact(step)
        for off in _misses(fact) if fact is not None else ():
            found = _replayed(made, at, off) if abs(off) == abs(gap) else None
            if fact is not None and found is not None and found.wrong == wrong:
                yield found, _recalled(fact, off)


_Fact = tuple[int, Sign, int, int]
"""The two small numbers of a fact, the sign between them, and the size of their unit."""


def _fact(step: Equation) -> _Fact | None:
    """Return the fact behind a step: 40 + 80 is 4 + 8 in tens; None for larger numbers."""
    operation = step.left
    if not isinstance(operation, Operation) or operation.sign not in _FACT_SIGNS:
        return None
    left, right = operation.left, operation.right
    if type(left) is not int or type(right) is not int or left < 1 or right < 1:
        return None
    if operation.sign is Sign.TIMES:
        size = 10 ** (zeros(left) + zeros(right))
        left, right = left // 10 ** zeros(left), right // 10 ** zeros(right)
        of_tables = min(left, right) >= 2 and max(left, right) <= 9
        return (left, operation.sign, right, size) if of_tables else None
    size = 10 ** min(zeros(left), zeros(right))
    left, right = left // size, right // size
    small = left < 10 or (operation.sign is Sign.MINUS and left < 19)
    return (left, operation.sign, right, size) if small and 1 <= right <= 9 else None


def _misses(fact: _Fact) -> tuple[int, ...]:
    """Return how far off the result may be: one, or one group in a product."""
    left, sign, right, size = fact
    if sign is Sign.TIMES:
        return tuple(dict.fromkeys((-left * size, left * size, -right * size, right * size)))
    return -size, size


def _recalled(fact: _Fact, off: int) -> Equation:
    left, sign, right, size = fact
    value = value_of(Operation(sign, left, right))
    return says(left, sign, right, value + off // size)


def _replayed(made: Made, at: int, off: int) -> Made | None:
    """Return the work with the result of one step so far off, and what follows from it."""
    old = made.steps[at].right
    if type(old) is not int or _crosses(made, at, off):
        return None
    new = old + off
    steps = list(made.steps)
    steps[at] = Equation(steps[at].left, new)
    changed = {old: new}
    for later in range(at + 1, len(steps)):
        left, right = steps[later].left, steps[later].right
        used = sum(_count(left, number) for number in changed)
        if not used:
            continue
        if used > 1 or type(right) is not int or value_of(left) != right:
            return None
        left = _swapped(left, changed)
        result = value_of(left)
        if type(result) is not int or result < 0:
            return None
        steps[later] = Equation(left, result)
        changed = {right: result}
    wrong = steps[-1].right
    if type(wrong) is not int or wrong == made.wrong:
        return None
    return Made(wrong, tuple(steps), made.at)


def _crosses(made: Made, at: int, off: int) -> bool:
    """Tell whether a digit that stands for a lost ten would fall below 0 or rise above 9."""
    step = made.steps[at]
    old, size = step.right, abs(off)
    if type(old) is not int:
        return True
    if value_of(step.left) == old:
        return old + off < 0
    return not 0 <= (old + off) // size <= 9 if old // size <= 9 else old + off < 0


def _count(part: Expression, number: int) -> int:
    if isinstance(part, Operation):
        return _count(part.left, number) + _count(part.right, number)
    return part == number


def _swapped(part: Expression, changed: dict[int, int]) -> Expression:
    if isinstance(part, Operation):
        return Operation(part.sign, _swapped(part.left, changed), _swapped(part.right, changed))
    return changed.get(part, part) if isinstance(part, int) else part
