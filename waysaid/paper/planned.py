"""A plan as its papers need it: plain values, its words in the language of the paper."""

from dataclasses import dataclass

from waysaid.number import Image, Language, Print, Unreadable, parse, picture_name, text
from waysaid.paper.parts import Drawing, Way


@dataclass(frozen=True, slots=True)
class SlipToHear:
    """An answer that may be heard, and what may lie behind it: a note to listen with."""

    wrong: str
    note: str


@dataclass(frozen=True, slots=True)
class PlannedOnPaper:
    """A problem of a plan: as it is shown, why it is there, what one may hear of it."""

    text: str
    why: str = ""
    drawing: Drawing | None = None
    ways: tuple[Way, ...] = ()
    slips: tuple[SlipToHear, ...] = ()


@dataclass(frozen=True, slots=True)
class PlanOnPaper:
    """A plan: `title` and `under` as a page shows them, then what hangs round the board.

    `links` say what connects the problems; `names` is empty where no names are wanted.
    """

    title: str
    under: str
    language: str
    problems: tuple[PlannedOnPaper, ...]
    signals: tuple[str, ...] = ()
    norms: tuple[str, ...] = ()
    questions: tuple[str, ...] = ()
    links: tuple[str, ...] = ()
    names: tuple[str, ...] = ()


def problem_on_paper(problem_text: str, language: Language) -> str:
    """Return a problem as paper shows it; one that cannot be read as it was typed."""
    try:
        problem = parse(problem_text)
    except Unreadable:
        return problem_text
    if isinstance(problem, Image):
        return picture_name(problem, language)
    return text(problem, Print.TRUE, language)
