"""From a talk as it stands to its chart: the problems, the ways as told, what was noticed."""

from collections.abc import Mapping
from dataclasses import dataclass, replace

from waysaid.drawing import Frame, Picture, answer_joint, draw, lines, nearest, svg
from waysaid.number import Language, Unreadable, parse
from waysaid.paper.chart import Chart, Connection, ProblemOnPaper, ToldOnPaper
from waysaid.paper.planned import problem_on_paper
from waysaid.talk import Mark, PlannedProblem, State, WayTold, ends_on, telling_of

_ROOM = Frame(width=600, height=290, label=80)
"""The room of a drawing; the paper scales it to the width of a column."""
_NOTICED = {Language.EN: "What we noticed", Language.ES: "Lo que notamos"}
_AND = {Language.EN: "and", Language.ES: "y"}


@dataclass(frozen=True, slots=True)
class Names:
    """The names to print by child id; an empty mapping prints a chart without names."""

    by_id: Mapping[str, str]

    def of(self, child: str | None) -> str:
        """Return the name, or nothing where there is none or none is wanted."""
        return self.by_id.get(child or "", "")


def chart_of(state: State, names: Names, subtitle: str = "") -> Chart:
    """Return the chart of a talk in the board's language; problems not shown are left out."""
    language = Language(state.board_language)
    shown = [item for item in state.problems if item.id in state.shown]
    return Chart(
        title=state.title,
        subtitle=subtitle,
        language=language.value,
        problems=tuple(_problem(state, item, names, language) for item in shown),
        connections_title=_NOTICED[language],
        connections=tuple(
            Connection(each.words, names.of(each.child), _about(state, each.marks, language))
            for each in state.noticings
            if each.words or each.marks
        ),
    )


def _problem(
    state: State, planned: PlannedProblem, names: Names, language: Language
) -> ProblemOnPaper:
    line = problem_on_paper(planned.text, language)
    given = ", ".join(state.given(planned.id))
    if given:
        line += f"{_joint(planned)}{given}"
    ways = tuple(_told(state, way, names, language) for way in state.ways_of(planned.id))
    return ProblemOnPaper(line, ways)


def _joint(planned: PlannedProblem) -> str:
    try:
        return answer_joint(parse(planned.text))
    except Unreadable:
        return " = "


def _told(state: State, way: WayTold, names: Names, language: Language) -> ToldOnPaper:
    also = f" {_AND[language]} ".join(name for child in way.agreed if (name := names.of(child)))
    tag = ToldOnPaper(names.of(way.child), f"{_AND[language]} {also}" if also else "")
    telling = telling_of(state, way)
    if telling is None or not way.steps or way.picture is Picture.WORDS:
        return replace(tag, words=way.words or way.answer or "")
    picture = nearest(way.picture, telling)
    if picture in (Picture.WORDS, Picture.EQUATIONS):
        return replace(tag, lines=(*lines(telling, language), *ends_on(way.answer)))
    scene = draw(picture, telling, _ROOM, language)
    words = f"{scene.title}. {scene.desc}"
    return replace(tag, svg=svg(scene), alt=words, width=min(scene.width, 600))


def _about(state: State, marks: tuple[Mark, ...], language: Language) -> str:
    """Name the problems that a noticing was about."""
    ids = dict.fromkeys(mark.problem for mark in marks)
    found = [item for each in ids if (item := state.problem(each)) is not None]
    return ", ".join(problem_on_paper(item.text, language) for item in found)
