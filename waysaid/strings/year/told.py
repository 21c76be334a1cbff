"""A year as plain data, in the open form of `docs/reference/year.md`."""

from collections.abc import Sequence

from waysaid.number import Language, answer_text, text
from waysaid.strings.link import Link
from waysaid.strings.link_words import link_says
from waysaid.strings.links import links
from waysaid.strings.starter import starter_text, starters
from waysaid.strings.year.given import Source
from waysaid.strings.year.ideas import Curriculum, idea_name
from waysaid.strings.year.lay_out import Talk, Year

FORM = "waysaid-year-1"
"""The name of the form, in each file of it."""

Told = dict[str, object]

_FIRST = {
    Language.EN: "Everybody can begin here.",
    Language.ES: "Por aquí pueden empezar todos.",
}
_FROM = {
    Language.EN: "From problem {0}: {1}",
    Language.ES: "Del problema {0}: {1}",
}
_BY_ITSELF = {
    Language.EN: "This one stands by itself.",
    Language.ES: "Este va solo.",
}


def year_told(year: Year) -> Told:
    """Return a year as JSON has it."""
    return {
        "form": FORM,
        "grade": year.grade,
        "curriculum": year.curriculum.value,
        "seed": year.seed,
        "talks": [talk_told(talk) for talk in year.talks],
    }


def talk_told(talk: Talk) -> Told:
    """Return a talk of a year as JSON has it."""
    problems, idea, day = talk.given.problems, talk.idea, talk.day
    every = links(problems, every=True)
    return {
        "day": day.number,
        "date": None if day.date is None else day.date.isoformat(),
        "idea": idea.slug,
        "name": {one.value: idea_name(idea, one) for one in Language},
        "family": idea.family.value,
        "topic": idea.topic.value,
        "standards": {one.value: idea.standard(one).code for one in Curriculum},
        "time": talk.time,
        "lighter": talk.light,
        "from": talk.given.source.value,
        "starter": talk.given.starter or None,
        "best_possible": talk.given.best if talk.given.source is Source.COMPOSED else None,
        "problems": [text(problem) for problem in problems],
        "answers": [answer_text(problem) for problem in problems],
        "links": [
            {"kind": link.kind.value, "between": list(link.between), "shows": list(link.shows)}
            for link in links(problems)
        ],
        "why": {one.value: _why(talk, every, one) for one in Language},
    }


def _why(talk: Talk, every: Sequence[Link], language: Language) -> list[str]:
    """Return a sentence for each problem: a starter's own, else what the one before does for it."""
    many = len(talk.given.problems)
    for one in starters():
        if one.slug == talk.given.starter:
            return list(starter_text(one, language).why[:many])
    return [_from_before(every, at, language) for at in range(many)]


def _from_before(every: Sequence[Link], at: int, language: Language) -> str:
    if at == 0:
        return _FIRST[language]
    found = [link for link in every if link.between[1:] == (at,)]
    if not found:
        return _BY_ITSELF[language]
    nearest = max(found, key=lambda link: link.between[0])
    return _FROM[language].format(nearest.between[0] + 1, link_says(nearest, language))
