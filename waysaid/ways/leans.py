"""What the steps of a way lean on: facts to know and friendly numbers to go through."""

from collections.abc import Iterator, Sequence
from dataclasses import dataclass

from waysaid.number import Equation, Operation, Sign
from waysaid.ways.factor import TABLES, bare
from waysaid.ways.place import is_friendly
from waysaid.ways.step import Kind, Step

_SIGNS = (Sign.PLUS, Sign.MINUS)
_GROUPED = (Sign.TIMES, Sign.OVER)
_FACTS = {
    (sign, left, right): Equation(
        Operation(sign, left, right), left + right if sign is Sign.PLUS else left - right
    )
    for sign in _SIGNS
    for left in range(20)
    for right in range(1, 10)
    if sign is Sign.MINUS or left < 10
}
"""Sums of two single digits, and what takes a digit from a number below 20."""


@dataclass(frozen=True, slots=True)
class Leans:
    """What a way leans on: facts that must be known, and friendly numbers it goes through."""

    facts: tuple[Equation, ...] = ()
    friendly: tuple[int, ...] = ()


def leans_of(steps: Sequence[Step]) -> Leans:
    """Return the facts in the order they are needed, and the friendly numbers gone through.

    A fact of tens or hundreds is given by its digits: 30 + 20 leans on 3 + 2.
    """
    facts: dict[Equation, None] = {}
    friendly: dict[int, None] = {}
    for place, step in enumerate(steps):
        facts.update(dict.fromkeys(_facts(step)))
        result = step.equation.right
        if isinstance(result, int) and result > 0 and place + 1 < len(steps):
            if is_friendly(result):
                friendly[result] = None
            if steps[place + 1].kind is Kind.MEND:
                friendly.update(dict.fromkeys(_friendly_operands(step)))
    return Leans(tuple(facts), tuple(friendly))


def _facts(step: Step) -> Iterator[Equation]:
    """Yield the digit facts of `left sign right`, column by column from the ones."""
    whole = step.equation.left
    if step.kind is Kind.COUNT or not isinstance(whole, Operation):
        return
    left, right, sign = whole.left, whole.right, whole.sign
    if not isinstance(left, int) or not isinstance(right, int):
        return
    if sign in _GROUPED:
        yield from _group_facts(sign, abs(left), abs(right))
        return
    left, right = abs(left), abs(right)
    while right:
        left, from_left = divmod(left, 10)
        right, from_right = divmod(right, 10)
        if sign is Sign.MINUS and from_left < from_right and left:
            from_left += 10
            left -= 1
        if from_left and from_right:
            yield _FACTS[sign, from_left, from_right]


def _group_facts(sign: Sign, left: int, right: int) -> Iterator[Equation]:
    """Yield the facts of a product, digit times digit; of a quotient, the product it undoes."""
    if not left or not right:
        return
    if sign is Sign.OVER:
        left //= right
    one, other = bare(left), bare(right)
    if max(one, other) <= TABLES:
        pairs = [(one, other)]
    else:
        pairs = [(int(a), int(b)) for b in reversed(str(other)) for a in reversed(str(one))]
    for first, second in pairs:
        if min(first, second) > 1:
            yield Equation(Operation(Sign.TIMES, first, second), first * second)


def _friendly_operands(step: Step) -> Iterator[int]:
    whole = step.equation.left
    if isinstance(whole, Operation):
        for number in (whole.left, whole.right):
            if isinstance(number, int) and number and is_friendly(number):
                yield number
