"""The page that goes home: what a number talk is, the problems, what to ask. No child is on it."""

from waysaid.number import Language
from waysaid.paper.parts import Heading, Lines, Paper, Points, Problem, Problems, Words
from waysaid.paper.planned import PlanOnPaper
from waysaid.paper.words import paper_words

_LINES = 6


def family_page(plan: PlanOnPaper) -> Paper:
    """Return the page in the plan's language; of the plan it has the problems and its `under`.

    What is asked at home and how one listens is common practice, no source; the words are our own.
    """
    words = paper_words("family", Language(plan.language))
    problems = tuple(Problem(each.text, "", each.drawing) for each in plan.problems)
    parts = (
        Heading(words["what"]),
        Words(words["talk"]),
        Heading(words["problems"]),
        Problems(problems),
        Heading(words["ask"]),
        Points(words.lists["asks"]),
        Heading(words["listen"]),
        Points(words.lists["listens"]),
        Heading(words["room"]),
        Lines(_LINES),
    )
    return Paper(words["title"], plan.under, plan.language, parts)
