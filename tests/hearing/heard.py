"""What was heard, as plain text to compare with."""

from waysaid.hearing import read
from waysaid.number import parse


def heard(problem, line):
    """The steps with their unsaid parts, the answer and the family, as plain text."""
    reading = read(parse(problem), line)
    assert reading.words == line
    steps = []
    for told in reading.told:
        missing = f" without {' '.join(told.unsaid)}" if told.unsaid else ""
        steps.append(told.step.text + missing)
    return steps, reading.answer_text, reading.family


def w(step, *parts):
    """A step without the parts that nobody said."""
    return f"{step} without {' '.join(parts)}"
