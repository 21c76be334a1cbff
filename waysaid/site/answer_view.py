"""What the desk offers for the answers to a problem: taps, a keyboard, the range of an estimate."""

from functools import lru_cache
from typing import Any

from waysaid.number import (
    About,
    Blank,
    Claim,
    Compare,
    Language,
    NoValue,
    Operation,
    Order,
    Print,
    Problem,
    Rest,
    Sign,
    Span,
    Verdict,
    answer_of,
    answer_text,
    number_text,
    sides,
    text,
    written,
)
from waysaid.site.desk_notes import problem_of

VERDICTS = {
    Language.EN: {Verdict.TRUE: "true", Verdict.FALSE: "false"},
    Language.ES: {Verdict.TRUE: "verdadero", Verdict.FALSE: "falso"},
}
"""What a class calls the answers to a claim; `waysaid.number.parse_said` reads them again."""


def in_words(answer: str | None, language: str) -> str | None:
    """Return an answer as a board in this language shows it: `true` is a word, the rest signs."""
    words = VERDICTS[Language(language)]
    return words[Verdict(answer)] if answer in (Verdict.TRUE, Verdict.FALSE) else answer


@lru_cache(maxsize=256)
def answer_view(problem_text: str, board_language: str, rest: Rest) -> dict[str, Any]:
    """Return what the desk needs to note an answer. Never changed.

    `choices` are taps for a problem with few answers, as {"text", "says"}; `whole` is whether a
    whole number is all that will be typed; `answer` is for the teacher alone, and so is `range`,
    from where to where an estimate is a sensible one.
    """
    problem = problem_of(problem_text)
    if problem is None:
        return {"choices": [], "whole": False, "answer": None, "range": None}
    return {
        "choices": _choices(problem, Language(board_language)),
        "whole": _whole(problem),
        "answer": _answer(problem, rest),
        "range": _range(problem),
    }


def _choices(problem: Problem, language: Language) -> list[dict[str, str]]:
    match problem:
        case Compare():
            left, right = (
                text(side, Print.TRUE, language) for side in (problem.left, problem.right)
            )
            return [{"text": each.value, "says": f"{left} {each.value} {right}"} for each in Order]
        case Claim():
            words = VERDICTS[language]
            return [{"text": words[each], "says": words[each]} for each in Verdict]
        case _:
            return []


def _whole(problem: Problem) -> bool:
    """Tell whether a keyboard of digits is enough for every answer, right or wrong."""
    if isinstance(problem, Compare | Claim):
        return False
    divides = any(isinstance(one, Operation) and one.sign is Sign.OVER for one in sides(problem))
    numbers = [one for side in sides(problem) for one in written(side)]
    return not divides and all(isinstance(one, int | Blank) for one in numbers)


def _answer(problem: Problem, rest: Rest) -> str | None:
    try:
        return answer_text(problem, Print.TRUE, rest)
    except NoValue:
        return None


def _range(problem: Problem) -> list[str] | None:
    found = answer_of(problem) if isinstance(problem, About) else None
    if not isinstance(found, Span):
        return None
    return [number_text(one, Print.TRUE) for one in (found.low, found.high)]
