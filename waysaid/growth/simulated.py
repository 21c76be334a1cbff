"""A simulated class: talks as a desk would have written them down, from a seed.

Each child chooses among several ways by how strong each has become, divided by what it asks, and a
way told or heard grows stronger. That children hold several strategies at once, choose among them
by strength, and shift by degrees to those that ask less is the published picture (Siegler and
Shrager 1984; Siegler 1996; from memory); every number is our choice. It is invented from end to
end: nothing of any real class is in it.
"""

from collections.abc import Iterator, Mapping, Sequence
from dataclasses import dataclass
from fractions import Fraction
from functools import cache, lru_cache
from importlib import resources
from random import Random

from waysaid.drawing import Picture
from waysaid.number import Equation, Exact, Problem, number_text, parse, said_text, text
from waysaid.slips import foresee
from waysaid.talk import (
    AnswerHeard,
    Body,
    Closed,
    Mark,
    Noticed,
    Passed,
    Phase,
    PhaseSet,
    PlannedProblem,
    ProblemShown,
    Relation,
    SaidStep,
    TalkOpened,
    WayAgreed,
    WayShared,
)
from waysaid.ways import Family, Way, weighed_ways

FROM_START = {Family.COUNTING: 12, Family.KNOWN_FACT: 14}
"""How strong what every child comes with is."""
AT_HOME = 3
"""One child in so many has a family from elsewhere at the start."""
TOLD_ADDS, HEARD_ADDS = 3, 1
STRONGEST = 60
"""By how much telling a way, and hearing one already known, makes it stronger, and how far."""
CATCHES_ON = 18
"""One child in so many takes up a family she did not know when she hears it."""
NEW = 8
"""How strong what was just taken up is."""
SLIPS_OF_100 = 8
SLIPS_PLANTED = 75
"""Ways in a hundred that end elsewhere; and those of a family whose slipping is planted."""
SPEAKERS = (2, 3, 3, 4)
"""Children who tell a way, a problem."""
NOTICED = (
    "the answers go up by the same",
    "the first one helps with the next one",
    "you can do that to all of them",
    "two of them have the same answer",
)
PICTURES = (Picture.EQUATIONS, Picture.EQUATIONS, Picture.NUMBER_LINE)

Timed = tuple[int, Body]
"""The seconds since what was before, and what """


@dataclass(frozen=True, slots=True)
class Lesson:
    """A string to talk about, and the family it is about."""

    problems: tuple[Problem, ...]
    focus: Family | None = None


@dataclass(frozen=True, slots=True)
class Room:
    """A class to simulate: children by id and what is planted in it.

    One child in `one_in` knows a family at the start; with 1, every child knows them all. Nobody
    knows, or ever takes up, a family in `unknown`; only these children know one in `few`; ways of
    a family in `slipping` mostly end elsewhere.
    """

    children: tuple[str, ...]
    one_in: int = AT_HOME
    unknown: frozenset[Family] = frozenset()
    few: Mapping[Family, tuple[str, ...]] | None = None
    slipping: frozenset[Family] = frozenset()


class Simulated:
    """A class that talks, day after day; the same seed makes the same talks."""

    def __init__(self, room: Room, seed: int) -> None:
        self.room = room
        self.dice = Random(seed)
        self.strength = {child: self._at_start(child) for child in room.children}
        self.talkative = {child: self.dice.choice((1, 2, 2, 3, 5)) for child in room.children}
        self._told = 0

    def talk(self, lesson: Lesson, title: str) -> tuple[Timed, ...]:
        """Return the talk about a string, from its opening to its end."""
        planned = tuple(
            PlannedProblem(f"p{place}", text(problem))
            for place, problem in enumerate(lesson.problems, 1)
        )
        opened = TalkOpened(title, "en", "en", planned)
        script: list[Timed] = [(0, opened)]
        for item, problem in zip(planned, lesson.problems, strict=True):
            script += self._problem(item.id, problem)
        script += [*self._noticed(planned), (20, Closed())]
        return tuple(script)

    def _at_start(self, child: str) -> dict[Family, int]:
        known = dict(FROM_START)
        for family in Family:
            if family not in known and self.dice.randrange(self.room.one_in) == 0:
                known[family] = self.dice.randrange(NEW, 3 * NEW)
        for family in self.room.unknown:
            known.pop(family, None)
        for family, children in (self.room.few or {}).items():
            known.pop(family, None)
            if child in children:
                known[family] = 3 * NEW
        return known

    def _problem(self, where: str, problem: Problem) -> Iterator[Timed]:
        ways = easiest_ways(problem)
        yield 20, ProblemShown(where)
        answer = self._turn(1)[0]
        if ways:
            said = said_text(ways[0][1].answer, problem)
            heard = AnswerHeard(f"{where}-a", where, said, answer)
            yield self.dice.randrange(8, 25), heard
        told: list[tuple[str, Way]] = []
        for child in self._turn(self.dice.choice(SPEAKERS)):
            if self.dice.randrange(12) == 0:
                yield 4, Passed(where, child)
            elif (way := self._chosen(child, ways)) is not None:
                changed = bool(told) and self.dice.randrange(10) == 0
                relation = Relation.CHANGES if changed else Relation.OWN
                shared = self._shared(where, problem, child, way, relation)
                yield self.dice.randrange(20, 55), shared
                told.append((shared.id, way))
                self._grow(child, way.family, TOLD_ADDS)
        yield from self._agreed(told, ways)

    def _turn(self, many: int) -> list[str]:
        """Return children who speak: the more talkative more often."""
        weights = [self.talkative[child] for child in self.room.children]
        found: dict[str, None] = {}
        while len(found) < min(many, len(self.room.children)):
            found.setdefault(self.dice.choices(self.room.children, weights)[0])
        return list(found)

    def _chosen(self, child: str, ways: Sequence[tuple[int, Way]]) -> Way | None:
        """Return the way a child takes: the stronger and the easier, the likelier."""
        known = self.strength[child]
        open_to = [(tenths, way) for tenths, way in ways if known.get(way.family)]
        if not open_to:
            return None
        weights = [known[way.family] * 1000 // (10 + tenths) ** 2 + 1 for tenths, way in open_to]
        return self.dice.choices([way for _, way in open_to], weights)[0]

    def _shared(
        self, where: str, problem: Problem, child: str, way: Way, relation: Relation
    ) -> WayShared:
        self._told += 1
        planted = way.family in self.room.slipping
        slips = self.dice.randrange(100) < (SLIPS_PLANTED if planted else SLIPS_OF_100)
        wrong = self._slipped(problem) if slips else None
        equations = [step.equation for step in way.steps]
        if wrong is not None:
            equations[-1] = Equation(equations[-1].left, wrong)
        said = tuple(
            SaidStep(step.kind, equation)
            for step, equation in zip(way.steps, equations, strict=True)
        )
        answer = said_text(way.answer, problem) if wrong is None else number_text(wrong)
        return WayShared(
            f"{where}-w{self._told}",
            where,
            child,
            relation,
            steps=said,
            family=way.family,
            answer=answer,
            picture=self.dice.choice(PICTURES),
            foreseen=True,
        )

    def _slipped(self, problem: Problem) -> Exact | None:
        """Return what a slip makes of a problem, the likeliest more often; None where none does."""
        known = wrong_answers(problem)
        return known[min(self.dice.randrange(len(known)) for _ in range(2))] if known else None

    def _agreed(
        self, told: Sequence[tuple[str, Way]], ways: Sequence[tuple[int, Way]]
    ) -> Iterator[Timed]:
        """Yield who thought the same; all who listened may take a way up."""
        for shared, way in told:
            for child in self.room.children:
                if child in self.strength and self.strength[child].get(way.family):
                    self._grow(child, way.family, HEARD_ADDS)
                elif self._takes_up(way.family):
                    self.strength[child][way.family] = NEW
            if self.dice.randrange(3) == 0:
                child = self._turn(1)[0]
                same = self._chosen(child, ways)
                if same is not None and same.family is way.family:
                    yield 6, WayAgreed(shared, child)

    def _takes_up(self, family: Family) -> bool:
        held_back = family in self.room.unknown or family in (self.room.few or {})
        return not held_back and self.dice.randrange(CATCHES_ON) == 0

    def _grow(self, child: str, family: Family, by: int) -> None:
        if family not in FROM_START:
            self.strength[child][family] = min(self.strength[child].get(family, 0) + by, STRONGEST)

    def _noticed(self, planned: Sequence[PlannedProblem]) -> Iterator[Timed]:
        yield 30, PhaseSet(Phase.CONNECT)
        pair = self.dice.sample(range(len(planned)), min(2, len(planned)))
        marks = tuple(Mark(planned[place].id, "answer") for place in sorted(pair))
        words = self.dice.choice(NOTICED)
        yield 25, Noticed("n1", self._turn(1)[0], words, marks, join=True)


@cache
def lessons() -> tuple[Lesson, ...]:
    """Return strings to simulate talks about: the first eighty of a laid-out year of grade 2."""
    source = resources.files("waysaid.growth").joinpath("data/grade-2.txt")
    return tuple(_lesson(line) for line in source.read_text(encoding="utf-8").splitlines())


def _lesson(line: str) -> Lesson:
    focus, problems = line.split(" | ")
    return Lesson(tuple(parse(each) for each in problems.split("; ")), Family(focus))


@lru_cache(maxsize=4096)
def easiest_ways(problem: Problem) -> tuple[tuple[int, Way], ...]:
    """Return the easiest way of each family with its effort in tenths, the least first."""
    first: dict[Family, tuple[int, Way]] = {}
    for tenths, way in weighed_ways(problem):
        first.setdefault(way.family, (tenths, way))
    return tuple(first.values())


@lru_cache(maxsize=4096)
def wrong_answers(problem: Problem) -> tuple[Exact, ...]:
    """Return the numbers that slips make of a problem, the likeliest first."""
    found = [slip.wrong for slip in foresee(problem)]
    return tuple(wrong for wrong in found if isinstance(wrong, int | Fraction))
