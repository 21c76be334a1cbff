"""What the tests of effort compare: the ways of a problem, or one way told step by step."""

from dataclasses import dataclass

from waysaid.number import parse, parse_equation
from waysaid.ways import Family, Kind, Step, Way, tenths_of, ways

READ, MEMORY = "read", "from memory"
"""How a finding is known to us."""


@dataclass(frozen=True, slots=True)
class Least:
    """The ways that are compared: those of a problem, in a family, of a variant."""

    problem: str
    families: tuple[Family, ...] = ()
    variant: str = ""

    def ways(self) -> list[Way]:
        return [
            way
            for way in ways(parse(self.problem))
            if (not self.families or way.family in self.families) and self.variant in way.variant
        ]

    def tenths(self) -> int:
        return min(tenths_of(way) for way in self.ways())


@dataclass(frozen=True, slots=True)
class Told:
    """One way as it is told, whoever makes it."""

    steps: tuple[str, ...]
    family: Family = Family.KNOWN_FACT

    @property
    def problem(self) -> str:
        return "; ".join(self.steps)

    def tenths(self) -> int:
        told = tuple(Step(_kind(one), parse_equation(one)) for one in self.steps)
        assert all(step.true for step in told)
        return tenths_of(Way(self.family, "", told, 0))


def told(*steps: str, family: Family = Family.KNOWN_FACT) -> Told:
    return Told(steps, family)


def _kind(step: str) -> Kind:
    """A number written another way is opened; anything else is put together."""
    signs = (" + ", " - ", " x ", " of ", " / ")
    return Kind.JOIN if any(sign in step for sign in signs) else Kind.SPLIT
