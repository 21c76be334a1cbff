"""What the tests of single ways share: the steps a family gives for a problem, as text."""

from dataclasses import dataclass

from waysaid.number import parse
from waysaid.ways import Family, ways


@dataclass(frozen=True, slots=True)
class Told:
    """One worked way as a source has it; `read` is False where it comes from memory.

    A source of "ours" is no outside authority: it fixes what we chose.
    """

    problem: str
    steps: str
    source: str
    read: bool = True


def told(problem: str, family: Family) -> list[str]:
    """Return the ways of one family, each as its steps with `; ` between, least effort first."""
    return [
        "; ".join(step.text for step in way.steps)
        for way in ways(parse(problem))
        if way.family is family
    ]
