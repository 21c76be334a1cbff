"""Tellings for the tests: by hand, foreseen, and changed as children's work may be."""

from decimal import Decimal
from random import Random

from tests.ways.asked import asked_in_groups
from waysaid.drawing import Picture, Telling, suits
from waysaid.number import (
    BLANK,
    Equation,
    Operation,
    Problem,
    parse,
    parse_equation,
)
from waysaid.ways import Kind, Step, ways

PARTS = ("left", "op", "right", "result")


def telling(problem: str, *steps: str, hidden: tuple[frozenset[str], ...] = ()) -> Telling:
    """A telling from text: telling("8 + 5", "jump 8 + 2 = 10", "jump 10 + 3 = 13")."""
    made = []
    for text in steps:
        kind, _, equation = text.partition(" ")
        made.append(Step(Kind(kind), parse_equation(equation)))
    return Telling(parse(problem), tuple(made), hidden)


def problem(random: Random) -> Problem:
    """A sum, a difference or a missing number, small or to a thousand."""
    most = random.choice((10, 20, 100, 100, 1000))
    left, right = random.randint(1, most - 1), random.randint(1, most - 1)
    high, low = max(left, right), min(left, right)
    texts = (f"{left} + {right}", f"{high} - {low}", f"{low} + _ = {high}")
    return parse(random.choice(texts))


def way(random: Random) -> Telling:
    """A foreseen way of a random problem, true and whole."""
    while True:
        asked = problem(random)
        foreseen = ways(asked)
        if foreseen:
            chosen = random.choice(foreseen)
            return Telling(asked, chosen.steps, (), chosen.answer)


def mutated(told: Telling, random: Random) -> Telling:
    """The same telling with wrong results, unsaid parts, lost, doubled or swapped steps."""
    steps = [_changed(step, random) for step in told.steps]
    for _ in range(random.choice((0, 0, 1, 2))):
        match random.randrange(3):
            case 0 if len(steps) > 1:
                steps.pop(random.randrange(len(steps)))
            case 1:
                steps.append(random.choice(steps))
            case _:
                random.shuffle(steps)
    hidden = tuple(
        frozenset(part for part in PARTS if random.random() < 0.15) for _ in range(len(steps))
    )
    return Telling(told.problem, tuple(steps), hidden, random.choice((None, told.answer, 7)))


def _changed(step: Step, random: Random) -> Step:
    left, right = step.equation.left, step.equation.right
    kind = random.choice(list(Kind)) if random.random() < 0.05 else step.kind
    if isinstance(right, int) and random.random() < 0.3:
        right = random.choice((BLANK, right + random.randint(-12, 12), random.randint(0, 1000)))
    if isinstance(left, Operation) and random.random() < 0.1:
        left = Operation(left.sign, left.left, random.choice((BLANK, random.randint(0, 99))))
    return Step(kind, Equation(left, right))


def way_of_any_kind(random: Random) -> Telling:
    """A foreseen way of a product, a quotient, or of numbers in parts; true and whole."""
    while True:
        asked = parse(_beyond(random))
        foreseen = ways(asked)
        if foreseen:
            chosen = random.choice(foreseen)
            return Telling(asked, chosen.steps, (), chosen.number)


def _beyond(random: Random) -> str:
    if random.random() < 0.6:
        return asked_in_groups(random.randrange(10**9), 1)[0]
    bottom = random.choice((2, 3, 4, 5, 6, 8, 10, 12))
    other = random.choice((bottom, bottom, random.choice((2, 3, 4, 8))))
    one, two = random.randint(1, bottom - 1), random.randint(1, other * 2 - 1)
    wide = random.choice((10, 100))
    left, right = (Decimal(random.randint(1, 3 * wide)) / wide for _ in range(2))
    texts = (
        f"{one}/{bottom} + {two}/{other}",
        f"{one}/{bottom} ? {two}/{other}",
        f"{one}/{bottom} of {bottom * random.randint(1, 20)}",
        f"{random.choice((5, 15, 20, 35, 75, 110))}% of {random.randint(1, 20) * 10}",
        f"{left} + {right}",
        f"{max(left, right)} - {min(left, right)}",
        f"{left} ? {right}",
        f"{left} x {random.randint(2, 40)}",
    )
    return random.choice(texts)


def suiting(told: Telling) -> list[Picture]:
    """The pictures that show something of their own; the others are drawn as these."""
    return [one for one in Picture if one is not Picture.WORDS and suits(one, told)]
