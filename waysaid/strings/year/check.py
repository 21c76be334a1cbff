"""A year that was written as data, read again: each of its statements is worked out anew."""

from collections.abc import Iterator, Mapping, Sequence
from typing import cast

from waysaid.number import Problem, Unreadable, Verdict, answer_of, answer_text, parse
from waysaid.strings.year.given import SHARED, in_grade
from waysaid.strings.year.ideas import Curriculum, Idea
from waysaid.strings.year.table import ideas

_Row = Mapping[str, object]


def faults(told: _Row) -> Iterator[str]:
    """Yield a sentence for each statement of a year, as JSON has it, that does not hold.

    Each talk: its answers, the equations that its links show, its grade, its standards. The whole:
    what an idea needs came first, no string comes twice, no two of an idea share too much.
    """
    grade, curriculum = int(str(told["grade"])), Curriculum(str(told["curriculum"]))
    met: dict[str, list[frozenset[str]]] = {}
    strings: set[tuple[str, ...]] = set()
    for talk in cast("Sequence[_Row]", told["talks"]):
        where, idea = f"Day {talk['day']}", ideas()[str(talk["idea"])]
        problems = cast("list[str]", talk["problems"])
        yield from (f"{where}: {said}" for said in _in_talk(talk, idea, grade, curriculum))
        yield from (f"{where}: {said}" for said in _in_order(idea, met, grade, curriculum))
        if tuple(problems) in strings:
            yield f"{where}: the same string came before."
        strings.add(tuple(problems))
        mine, others = frozenset(problems), met.setdefault(idea.slug, [])
        if any(len(mine & other) > SHARED[idea.ccss.grade] for other in others):
            yield f"{where}: it has too much in common with another talk of its idea."
        others.append(mine)


def _in_talk(talk: _Row, idea: Idea, grade: int, curriculum: Curriculum) -> Iterator[str]:
    shown, answers = cast("list[str]", talk["problems"]), cast("list[str]", talk["answers"])
    read = [_read(one) for one in shown]
    for one, problem, answer in zip(shown, read, answers, strict=True):
        if problem is None or answer_text(problem) != answer:
            yield f"{one} does not make {answer}."
    if not in_grade([one for one in read if one is not None], idea, grade, curriculum):
        yield f"{'; '.join(shown)} is outside grade {grade}."
    for link in cast("list[_Row]", talk["links"]):
        for equation in cast("list[str]", link["shows"]):
            claim = _read(f"{equation} ?")
            if claim is None or answer_of(claim) is not Verdict.TRUE:
                yield f"{equation} does not hold."


def _in_order(
    idea: Idea, met: Mapping[str, object], grade: int, curriculum: Curriculum
) -> Iterator[str]:
    for need in idea.needs:
        asked = ideas()[need].standard(curriculum).grade
        if asked == grade and need not in met:
            yield f"{idea.slug} needs {need}, which did not come yet."


def _read(given: str) -> Problem | None:
    try:
        return parse(given)
    except Unreadable:
        return None
