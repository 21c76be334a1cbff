"""What a hearing must never do: put words into a child's mouth. Each fault by its name."""

from collections import Counter
from collections.abc import Iterable
from enum import StrEnum
from fractions import Fraction

from tests.hearing.speaker import Line, Utterance
from waysaid.hearing import Part, Reading, Told, read
from waysaid.hearing.turned import turned_side
from waysaid.number import Operation, Written, answer_of, exact, parse


class Fault(StrEnum):
    """A way to lie about what was said."""

    WORDS = "the words were changed"
    TRUE_ANSWER = "the true answer was given, and nobody said it"
    ANSWER = "an answer was given whose number nobody said"
    TAKEN_BACK = "an answer was given that was taken back"
    NONE = "an answer was given where the child stopped before it"
    NUMBER = "a step holds a number as said that nobody said"
    CHANGED = "a step said with its result was given another result"
    REPAIRED = "a wrong step was given its true result as said"


def faults(said: Utterance, heard: Reading) -> set[Fault]:
    """Return the faults of a hearing of an utterance."""
    found = _of_answer(said, heard)
    if heard.words != said.said:
        found.add(Fault.WORDS)
    for told in heard.told:
        found |= _of_step(said, told)
    return found


def counted(listed: Iterable[Utterance]) -> tuple[int, Counter[Fault]]:
    """Return how many utterances there were, and how many of them had each fault."""
    number, found = 0, Counter[Fault]()
    for said in listed:
        number += 1
        found.update(faults(said, heard_of(said)))
    return number, found


def heard_of(said: Utterance) -> Reading:
    """Return the reading of an utterance."""
    return read(parse(said.problem), said.said, said.language)


def _of_answer(said: Utterance, heard: Reading) -> set[Fault]:
    found = set()
    answer = heard.number
    ever = said.spoken | said.taken_back
    if answer is not None:
        if answer not in ever:
            found.add(Fault.ANSWER)
            if answer == answer_of(parse(said.problem)):
                found.add(Fault.TRUE_ANSWER)
        elif answer not in said.spoken:
            found.add(Fault.TAKEN_BACK)
    if said.answer is None and heard.answer is not None:
        found.add(Fault.NONE)
    return found


def _of_step(said: Utterance, told: Told) -> set[Fault]:
    found = set()
    equation, ever = told.step.equation, said.spoken | said.taken_back
    sides: list[tuple[Part, object]] = [(Part.RESULT, equation.right)]
    if isinstance(equation.left, Operation):
        sides += [(Part.LEFT, equation.left.left), (Part.RIGHT, equation.left.right)]
    for part, number in sides:
        plain = isinstance(number, int | Fraction | Written)
        if part not in told.unsaid and plain and exact(number) not in ever:
            found.add(Fault.NUMBER)
    results = _results(said.lines, told)
    result = equation.right
    if not results or not isinstance(result, int | Fraction | Written):
        return found
    if exact(result) not in results | said.taken_back:
        found.add(Fault.CHANGED)
        if told.step.true and Part.RESULT not in told.unsaid:
            found.add(Fault.REPAIRED)
    return found


def _results(lines: Iterable[Line], told: Told) -> frozenset[Fraction | int]:
    """Return the results said of a step's left side; none where one of them was left out."""
    left = turned_side(told.step.equation.left)
    same = [line for line in lines if turned_side(line.equation.left) == left]
    if not all(line.result for line in same):
        return frozenset()
    return frozenset(exact(line.equation.right) for line in same)  # type: ignore[arg-type]
