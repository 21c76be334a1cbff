"""Read a line of shorthand: what a child said, as a teacher types it while listening."""

from waysaid.hearing.answer import answer_said
from waysaid.hearing.clause import clauses
from waysaid.hearing.draft import Draft
from waysaid.hearing.facts import facts_of
from waysaid.hearing.hear import hear
from waysaid.hearing.match import matched
from waysaid.hearing.reading import Reading, Told
from waysaid.hearing.token import spelling_of
from waysaid.number import Order, Problem, Unreadable, parse_equation, text


def read(problem: Problem, line: str) -> Reading:
    """Return what the line says about the problem; the line itself is kept whatever it says.

    Shorthand is numbers, +, −, x, / and `of`, equals signs, gaps and breaks (`, ; : | →`), and
    `5 r 1`, `>` or `true` for an answer; see `waysaid.hearing.hear`. Any other line is words: no
    steps, no answer. So is one with a step too long or too large to be kept as text. Never raises.
    """
    only_words = Reading((), None, None, line)
    spelling = spelling_of(problem)
    if spelling.answers is Order and line.strip() == Order.SAME:
        return Reading((), Order.SAME, None, line)
    said = clauses(line, spelling)
    if not said:
        return only_words
    facts = facts_of(problem)
    heard = hear(said, facts)
    if heard.lost or not (heard.drafts or heard.verdict or len(heard.bare) == 1):
        return only_words
    if not all(map(_can_be_kept, heard.drafts)):
        return only_words
    match = matched(heard.drafts, facts)
    told = tuple(
        Told(step, draft.unsaid, draft.span)
        for step, draft in zip(match.steps, heard.drafts, strict=True)
    )
    return Reading(told, answer_said(heard, facts, match.stops_short), match.family, line)


def _can_be_kept(draft: Draft) -> bool:
    """Tell whether the step can be written to a file and read again."""
    equation = draft.equation
    try:
        return parse_equation(text(equation)) == equation
    except Unreadable:
        return False
