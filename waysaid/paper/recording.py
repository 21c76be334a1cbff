"""The sheet on which a talk is written down by hand, where no screen is."""

from collections.abc import Iterator

from waysaid.number import Language
from waysaid.paper.parts import (
    Heading,
    Lines,
    Names,
    Paper,
    Part,
    Points,
    Problem,
    Room,
    Words,
)
from waysaid.paper.planned import PlannedOnPaper, PlanOnPaper
from waysaid.paper.words import PaperWords, paper_words

WAYS_EACH = 10
"""Rows for a problem: more than the ways most talks bring (our choice)."""
_WIDTHS = (3, 11, 3)
_NOTICED_LINES = 5


def recording_sheet(plan: PlanOnPaper) -> Paper:
    """Return the sheet: each problem with room for its ways, who spoke, what was noticed.

    No answer is on it; its lines are the ones that are typed in afterwards.
    """
    words = paper_words("recording", Language(plan.language))
    return Paper(plan.title, plan.under, plan.language, tuple(_parts(plan, words)))


def empty_sheet(under: str, language: Language, problems: int) -> Paper:
    """Return a sheet for a talk without a plan, with room for so many problems."""
    words = paper_words("recording", language)
    rooms = (words["problem"].format(nth) for nth in range(1, problems + 1))
    empty = tuple(PlannedOnPaper(each) for each in rooms)
    return recording_sheet(PlanOnPaper(words["title"], under, language.value, empty))


def _parts(plan: PlanOnPaper, words: PaperWords) -> Iterator[Part]:
    yield Words(words["how"])
    if plan.signals:
        yield Words(words["signals"].format(" · ".join(plan.signals)))
    for problem in plan.problems:
        yield _room(problem, words)
    yield Heading(words["noticed"])
    yield Words(words["noticed_how"])
    yield Lines(_NOTICED_LINES)
    if plan.questions:
        yield Heading(words["questions"])
        yield Points(plan.questions)
    if plan.names:
        yield Heading(words["who"])
        yield Names(plan.names, boxes=True)


def _room(problem: PlannedOnPaper, words: PaperWords) -> Room:
    shown = Problem(problem.text, problem.why, problem.drawing)
    heads = (words["name"], words["way"], words["agree"])
    return Room(shown, words["answers"], heads, _WIDTHS, WAYS_EACH)
