"""From a string to its slides: what the class sees, and what the presenter's notes say."""

from collections.abc import Callable, Sequence
from dataclasses import dataclass

from waysaid.drawing import Telling, draw_image, lines
from waysaid.number import (
    BLANK,
    Image,
    Language,
    NoValue,
    Print,
    Problem,
    Rest,
    picture_name,
    remainder_of,
    say,
    text,
)
from waysaid.paper.slides import PICTURE_ROOM, ProblemOnSlide, SignalOnSlide, Slides
from waysaid.slips import foresee, slip_answer, slip_note
from waysaid.strings import leaves_of, link_question, link_says, links
from waysaid.ways import Family, Way, effort_of, family_name, way_says, ways

MOST_WAYS, MOST_SLIPS, MOST_LINKS = 8, 4, 4
"""What one slide's notes say at most: what can be taken in at a glance (our choice)."""
SECONDS = 3
MOST_STEPS = 3
"""Steps that a teacher takes in at a glance."""
FROM_ELSEWHERE = 3
"""Tenths of effort that it counts to begin with another number than the problem (our choice)."""


@dataclass(frozen=True, slots=True)
class Wordings:
    """The board's language, the notes', and how this class calls a family and a remainder."""

    board: Language = Language.EN
    notes: Language = Language.EN
    name: Callable[[Family], str] | None = None
    rest: Rest = Rest.LEFT_OVER
    seconds: int = SECONDS

    def family(self, family: Family) -> str:
        """Return what the notes call a family."""
        return family_name(family, self.notes) if self.name is None else self.name(family)


@dataclass(frozen=True, slots=True)
class Around:
    """What hangs round a class's board: its signals, norms and background picture."""

    signals: tuple[SignalOnSlide, ...] = ()
    norms: tuple[str, ...] = ()
    background: bytes | None = None


_SAID: dict[Language, dict[str, str]] = {
    Language.EN: {
        "talk": "Number talk",
        "notice": "What do you notice?",
        "why": "Why it is here: {0}",
        "ways": "Ways you may hear:",
        "slips": "Slips to listen for:",
        "slip": "– if {0}: {1}",
        "links": "What connects them:",
        "links_asked": "Questions that lead there:",
        "said": "Say: {0}",
        "look": "A quick look: {0} s, then make the screen black (in most programs the key B).",
        "yours": "For you alone: what may be heard, not what should be. Wait, listen, and write "
        "each way down as it is said.",
    },
    Language.ES: {
        "talk": "Charla numérica",
        "notice": "¿Qué notan?",
        "why": "Por qué está aquí: {0}",
        "ways": "Maneras que quizá oiga:",
        "slips": "Descuidos a los que prestar oído:",
        "slip": "– si {0}: {1}",
        "links": "Lo que los une:",
        "links_asked": "Preguntas que llevan ahí:",
        "said": "Diga: {0}",
        "look": "Una mirada rápida: {0} s, y después la pantalla en negro (en casi todos los "
        "programas, la tecla B).",
        "yours": "Solo para usted: lo que quizá se oiga, no lo que deba oírse. Espere, escuche y "
        "escriba cada manera tal como se diga.",
    },
}


def string_slides(
    problems: Sequence[Problem],
    wordings: Wordings,
    why: Sequence[str] = (),
    around: Around | None = None,
) -> Slides:
    """Return the deck of a string; `why` are the reasons of its first problems.

    No answer is on a slide, and the title does not tell the string's idea: only the notes, which
    the class does not see, say what may be heard.
    """
    board, around = _SAID[wordings.board], around or Around()
    reasons = [*why, *[""] * (len(problems) - len(why))]
    return Slides(
        title=board["talk"],
        closing=board["notice"],
        language=wordings.board,
        problems=tuple(
            _on_slide(each, reason, wordings)
            for each, reason in zip(problems, reasons, strict=False)
        ),
        notes=_links_said(problems, wordings.notes),
        signals=around.signals,
        norms=around.norms,
        background=around.background,
    )


def _on_slide(problem: Problem, why: str, wordings: Wordings) -> ProblemOnSlide:
    notes = _notes(problem, why, wordings)
    if isinstance(problem, Image):
        scene = draw_image(problem, *PICTURE_ROOM, wordings.board)
        return ProblemOnSlide(picture_name(problem, wordings.board), notes, scene)
    printed = text(problem, Print.TRUE, wordings.board).replace(BLANK.value, "▢")
    return ProblemOnSlide(printed, notes)


def _notes(problem: Problem, why: str, wordings: Wordings) -> str:
    said = _SAID[wordings.notes]
    image = isinstance(problem, Image)
    told = [said["look"].format(wordings.seconds) if image else ""]
    told += ["" if image else said["said"].format(say(problem, wordings.notes))]
    told += [said["why"].format(why) if why else ""]
    heard = [_way(problem, each, wordings) for each in _foreseen(problem, wordings.rest)]
    slips = [
        said["slip"].format(slip_answer(each, problem, Print.TRUE), slip_note(each, wordings.notes))
        for each in foresee(problem)[:MOST_SLIPS]
    ]
    told += [said["ways"], *heard] if heard else []
    told += [said["slips"], *slips] if slips else []
    return "\n".join([*(each for each in told if each), said["yours"]])


def _foreseen(problem: Problem, rest: Rest) -> list[Way]:
    """Return the easiest way of each family, those that say a remainder as the class does."""
    found = ways(problem)
    if remainder_of(problem) is not None:
        left_over = rest is Rest.LEFT_OVER
        found = tuple(way for way in found if (way.remainder is not None) == left_over) or found
    first: dict[Family, Way] = {}
    for each in sorted(found, key=lambda way: _plainness(way, problem)):
        if not _idle(each):
            first.setdefault(each.family, each)
    return list(first.values())[:MOST_WAYS]


def _idle(way: Way) -> bool:
    """Tell whether a step takes nothing on or off, as in 0 + 5: nobody would say it."""
    return any(0 in leaves_of(step.equation.left) for step in way.steps)


def _plainness(way: Way, problem: Problem) -> tuple[bool, int]:
    """Rank ways by few steps and little effort, those from the problem's first number on first."""
    elsewhere = bool(way.steps) and leaves_of(way.steps[0].equation)[:1] != leaves_of(problem)[:1]
    return len(way.steps) > MOST_STEPS, effort_of(way).tenths + FROM_ELSEWHERE * elsewhere


def _way(problem: Problem, way: Way, wordings: Wordings) -> str:
    telling = Telling(problem, way.steps, (), way.number, way.seen)
    told = "; ".join(lines(telling, wordings.notes))
    return f"– {wordings.family(way.family)}: {told or way_says(way, problem, wordings.rest)}"


def _links_said(problems: Sequence[Problem], language: Language) -> str:
    try:
        found = links(problems)[:MOST_LINKS]
    except NoValue:
        found = ()
    if not found:
        return ""
    said = _SAID[language]
    asked = dict.fromkeys(f"– {link_question(each, language)}" for each in found)
    return "\n".join(
        [
            said["links"],
            *(f"– {link_says(each, language)}" for each in found),
            said["links_asked"],
            *asked,
        ]
    )
