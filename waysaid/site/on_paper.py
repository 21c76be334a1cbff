"""A plan as its papers need it: read off what its page shows, in the paper's own language."""

from collections.abc import Iterable
from dataclasses import replace
from datetime import date, datetime

from django.utils import translation

from waysaid.drawing import Scene, svg
from waysaid.number import Language
from waysaid.paper import Drawing, PlannedOnPaper, PlanOnPaper, SlipToHear, Way, problem_on_paper
from waysaid.site.image_view import image_scene
from waysaid.site.models import Plan
from waysaid.site.plan_view import RowShown, WayShown, links_shown, rows_shown, summary
from waysaid.site.planning import focus_of_plan
from waysaid.site.templatetags.pages import day
from waysaid.site.wording import wording_of

WHOLE = 800
"""How wide a drawing is that fills its column, in the drawing's own units."""
MOST_WAYS = 4
"""Ways of a problem in a substitute's pack: what is read while children think (our choice)."""


def plan_on_paper(plan: Plan, *, names: bool = False) -> PlanOnPaper:
    """Return a plan with all that its papers may show, in the desk's language.

    The names of the children are in it only where they are asked for.
    """
    school_class = plan.school_class
    language = Language(school_class.desk_language)
    wording = wording_of(school_class)
    listed = school_class.children.filter(active=True) if names else ()
    with translation.override(language.value):
        rows = rows_shown(plan.problems, wording, focus_of_plan(plan))
        links = links_shown(plan.problems, language)
        return PlanOnPaper(
            title=plan.title,
            under=_under(plan, summary(plan, wording)),
            language=language.value,
            problems=tuple(_problem(row, language) for row in rows),
            signals=tuple(str(each.get("word", "")) for each in school_class.signals),
            norms=tuple(str(each) for each in school_class.norms),
            questions=tuple(str(each) for each in plan.questions),
            links=tuple(f"{each.between}: {each.says}" for each in links),
            names=tuple(child.name for child in listed),
        )


def problems_on_paper(
    problems: Iterable[str], when: date | datetime | None, language: Language
) -> PlanOnPaper:
    """Return problems by their texts and their day and nothing else, in any language of ours."""
    bare = tuple(_bare(each, language) for each in problems)
    return PlanOnPaper("", day(when, language.value), language.value, bare)


def _under(plan: Plan, parts: list[str]) -> str:
    about = [plan.school_class.name, day(plan.made_for), *parts]
    return " · ".join(each for each in about if each)


def _bare(problem_text: str, language: Language) -> PlannedOnPaper:
    scene = image_scene(problem_text, language)
    drawing = None if scene is None else _drawing(scene)
    return PlannedOnPaper(problem_on_paper(problem_text, language), drawing=drawing)


def _problem(row: RowShown, language: Language) -> PlannedOnPaper:
    return replace(
        _bare(row.text, language),
        why=row.why or row.connects,
        ways=tuple(_way(way) for way in row.ways[:MOST_WAYS]),
        slips=tuple(SlipToHear(slip.wrong, slip.note) for slip in row.slips),
    )


def _way(way: WayShown) -> Way:
    drawing = None if way.scene is None else _drawing(way.scene)
    return Way(way.name, way.lines, drawing)


def _drawing(scene: Scene) -> Drawing:
    return Drawing(svg(scene), f"{scene.title}. {scene.desc}", min(100, scene.width * 100 // WHOLE))
