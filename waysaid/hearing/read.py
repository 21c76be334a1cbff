"""Read what a child said about a problem: shorthand, or words as typed or dictated."""

from collections.abc import Mapping
from functools import lru_cache
from types import MappingProxyType

from waysaid.hearing.agree import agreed
from waysaid.hearing.answer import answer_said
from waysaid.hearing.clause import clauses
from waysaid.hearing.draft import Draft
from waysaid.hearing.facts import facts_of
from waysaid.hearing.hear import hear
from waysaid.hearing.lexicon import lexicon_of
from waysaid.hearing.match import matched
from waysaid.hearing.reading import Reading, Rival, Told
from waysaid.hearing.spoken import Explained, Share, alike, listen, shares
from waysaid.hearing.token import LONGEST_LINE, spelling_of
from waysaid.number import (
    Equation,
    Language,
    Order,
    Problem,
    Unreadable,
    parse_equation,
    text,
)
from waysaid.ways import Family, Step


def read(
    problem: Problem,
    line: str,
    language: Language = Language.EN,
    before: Mapping[str, Reading] = MappingProxyType({}),
    leaning: Mapping[Family, int] = MappingProxyType({}),
) -> Reading:
    """Return what the line says about the problem; the line itself is kept whatever it says.

    Shorthand is numbers, +, −, x, / and `of`, equals signs, gaps and breaks (`, ; : | →`), and
    `5 r 1`, `>` or `true` for an answer; see `waysaid.hearing.hear`. Any other line is words of the
    language; see `waysaid.hearing.spoken`. Words that hold no mathematics, and signs without a
    letter that are long or come to less than two steps, give no steps and no answer. Shorthand is
    sure of the family where a way has its steps, and as likely as not where none has: then it is,
    for parts of a whole, the family that words with the same steps would have. `before` is
    what the children of the class said of the problem, by name, for `same as Noor`. `leaning` says
    how often a family was meant in this class; it only orders readings that the words leave equal.
    Never raises.
    """
    short = _shorthand(problem, line)
    if short:
        return short
    words = _words(problem, line, language, leaning)
    signs = not any(map(str.isalpha, line))
    if signs and (len(words.told) < _STEPS_OF_SIGNS or len(line) > LONGEST_LINE):
        return Reading((), None, None, line)
    return agreed(words, lexicon_of(language), before)


_STEPS_OF_SIGNS = 2
"""The fewest steps that signs without a letter must come to, to be heard: our choice."""


def _shorthand(problem: Problem, line: str) -> Reading | None:
    """Return the reading of a line of shorthand; None where it is none, or cannot be kept."""
    spelling = spelling_of(problem)
    if spelling.answers is Order and line.strip() == Order.SAME:
        return Reading((), Order.SAME, None, line)
    said = clauses(line, spelling)
    if not said:
        return None
    facts = facts_of(problem)
    heard = hear(said, facts)
    if heard.lost or not (heard.drafts or heard.verdict or len(heard.bare) == 1):
        return None
    if not all(map(_can_be_kept, heard.drafts)):
        return None
    match = matched(heard.drafts, facts)
    told = _told(match.steps, heard.drafts)
    answer = answer_said(heard, facts, match.stops_short)
    sure = _EVEN if match.family is None and heard.drafts else 100
    return Reading(told, answer, match.family or alike(problem, heard.drafts), line, sure)


_EVEN = 50
"""How sure a line of shorthand is, in 100, whose steps are in no known way: what was done is plain,
what way was meant is not. Our choice; such lines are too few to measure."""


def _words(
    problem: Problem, line: str, language: Language, leaning: Mapping[Family, int]
) -> Reading:
    """Return the likeliest reading of free words, with its rivals."""
    heard = [one for one in listen(problem, line, language) if all(map(_can_be_kept, one.drafts))]
    if not heard:
        return Reading((), None, None, line)
    best, *others = leant(shares(heard), leaning)
    return Reading(
        _told(best.explained.steps, best.explained.drafts),
        best.explained.answer,
        best.explained.family,
        line,
        best.sure,
        best.explained.dropped,
        tuple(_rival(one.explained, one.sure) for one in others),
    )


def leant(found: list[Share], leaning: Mapping[Family, int]) -> list[Share]:
    """Return the shares, surest first; of those equal to the best, the one leant to comes first."""
    equal = [one for one in found if one.sure == found[0].sure]
    behind = [one for one in found if one.sure != found[0].sure]
    by_leaning = sorted(equal, key=lambda one: -_lean(one.explained.family, leaning))
    return [*by_leaning, *behind]


def _lean(family: Family | None, leaning: Mapping[Family, int]) -> int:
    return 0 if family is None else leaning.get(family, 0)


def _rival(heard: Explained, sure: int) -> Rival:
    return Rival(_told(heard.steps, heard.drafts), heard.answer, heard.family, sure)


def _told(steps: tuple[Step, ...], drafts: tuple[Draft, ...]) -> tuple[Told, ...]:
    return tuple(
        Told(step, draft.unsaid, draft.span, draft.by_digits)
        for step, draft in zip(steps, drafts, strict=True)
    )


def _can_be_kept(draft: Draft) -> bool:
    """Tell whether the step can be written to a file and read again."""
    return _is_read_again(draft.equation)


@lru_cache(maxsize=256)
def _is_read_again(equation: Equation) -> bool:
    try:
        return parse_equation(text(equation)) == equation
    except Unreadable:
        return False
