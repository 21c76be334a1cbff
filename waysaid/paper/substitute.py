"""The pack for whoever holds the talk in the teacher's place: no history, no child but by name."""

from collections.abc import Iterator

from waysaid.number import Language
from waysaid.paper.parts import (
    Caution,
    Heading,
    Names,
    Paper,
    Part,
    Points,
    Problem,
    Ways,
    Words,
)
from waysaid.paper.planned import PlannedOnPaper, PlanOnPaper
from waysaid.paper.words import PaperWords, paper_words


def substitute_pack(plan: PlanOnPaper) -> Paper:
    """Return the pack: how it goes, what to say and not to say, the string, what one may hear.

    How a talk goes and what is said in it are common practice, no source; the words are our own.
    """
    words = paper_words("substitute", Language(plan.language))
    parts = (*_how(plan, words), *_string(plan, words), *_besides(plan, words))
    return Paper(plan.title, plan.under, plan.language, parts)


def _how(plan: PlanOnPaper, words: PaperWords) -> Iterator[Part]:
    yield Caution(words["thanks"])
    yield Heading(words["goes"])
    yield Points(words.lists["steps"])
    if plan.signals:
        yield Words(words["signals"].format(" · ".join(plan.signals)))
    if plan.norms:
        yield Heading(words["norms"], 3)
        yield Points(plan.norms)
    yield Heading(words["say"])
    yield Points(words.lists["says"])
    yield Heading(words["not_say"])
    yield Points(words.lists["not_says"])


def _string(plan: PlanOnPaper, words: PaperWords) -> Iterator[Part]:
    yield Heading(words["string"])
    yield Words(words["alike"])
    for problem in plan.problems:
        yield Problem(problem.text, problem.why, problem.drawing)
        yield from _to_hear(problem, words)


def _to_hear(problem: PlannedOnPaper, words: PaperWords) -> Iterator[Part]:
    if problem.ways:
        yield Heading(words["hear"], 3)
        yield Ways(problem.ways)
    if problem.slips:
        yield Heading(words["slips"], 3)
        yield Points(tuple(words["slip"].format(slip.wrong, slip.note) for slip in problem.slips))


def _besides(plan: PlanOnPaper, words: PaperWords) -> Iterator[Part]:
    if plan.links:
        yield Heading(words["links"])
        yield Points(plan.links)
    if plan.questions:
        yield Heading(words["questions"])
        yield Points(plan.questions)
    if plan.names:
        yield Heading(words["names"])
        yield Names(plan.names)
    yield Heading(words["after"])
    yield Words(words["leave"])
