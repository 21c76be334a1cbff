"""What a plan shows before the talk: the ways to expect, their drawings, slips, links."""

from dataclasses import dataclass
from functools import lru_cache

from django.utils.translation import gettext as _
from django.utils.translation import ngettext

from waysaid.drawing import Frame, Picture, Scene, Telling, draw, lines, suits
from waysaid.number import Language, NoValue, Problem, parse, say
from waysaid.site.chips import foreseen
from waysaid.site.image_view import image_scene
from waysaid.site.models import Plan
from waysaid.site.planning import Row, focus_of_plan, largest, problems_of
from waysaid.site.talk_rows import printed
from waysaid.site.wording import Wording
from waysaid.slips import foresee, slip_answer, slip_note
from waysaid.strings import Link, link_question, link_says, links, minutes_of
from waysaid.ways import Family, Way

SMALL = Frame(800, 360, 55)
"""A small drawing, in the drawing's own units."""
PICTURES = (
    Picture.DOTS,
    Picture.AREA,
    Picture.HOPS,
    Picture.NUMBER_LINE,
    Picture.NUMBER_BOND,
    Picture.PLACE_VALUE,
    Picture.TEN_FRAME,
    Picture.FRACTION_BAR,
    Picture.DOUBLE_BAR,
    Picture.HUNDRED_GRID,
    Picture.BAR,
)
"""Which drawing a foreseen way gets: the first that suits."""
MOST_WAYS = 8
MOST_SLIPS = 4
FAMILIES_NAMED = 3
ROUND_SIZES = (10, 20, 100, 1000)


@dataclass(frozen=True, slots=True)
class WayShown:
    """A foreseen way: its family's name, its equations and a drawing if one suits it."""

    name: str
    lines: tuple[str, ...]
    scene: Scene | None


@dataclass(frozen=True, slots=True)
class SlipShown:
    """An answer that may be heard, and what may lie behind it."""

    wrong: str
    note: str


@dataclass(frozen=True, slots=True)
class RowShown:
    """A problem of a plan, with what to expect of it."""

    id: str
    text: str
    shown: str
    spoken: str
    why: str
    connects: str
    locked: bool
    families: tuple[str, ...]
    ways: tuple[WayShown, ...]
    slips: tuple[SlipShown, ...]
    image: Scene | None = None


@dataclass(frozen=True, slots=True)
class LinkShown:
    """A link of a plan: the problems it joins, what it says, and a question that leads to it."""

    between: str
    says: str
    question: str


def rows_shown(rows: list[Row], wording: Wording, focus: Family | None = None) -> list[RowShown]:
    """Return the rows of a plan as its page shows them; what pays off in it is named first.

    A row without a reason of its own gets what connects it to one before, if anything does.
    """
    first = wording.name(focus) if focus is not None else ""
    said: dict[int, str] = {}
    for link in _links(rows):
        said.setdefault(link.between[-1], link_says(link, wording.language))
    return [_row(row, (first, said.get(at, "")), wording) for at, row in enumerate(rows)]


def _row(row: Row, first_and_link: tuple[str, str], wording: Wording) -> RowShown:
    problem_text = str(row["text"])
    first, connects = first_and_link
    told = ways_shown(problem_text, wording)
    names = sorted(dict.fromkeys(way.name for way in told), key=lambda name: name != first)
    return RowShown(
        id=str(row["id"]),
        text=problem_text,
        shown=printed(problem_text),
        spoken=say(parse(problem_text), wording.language),
        why=str(row.get("why") or ""),
        connects=connects,
        locked=bool(row.get("locked")),
        families=tuple(names[:FAMILIES_NAMED]),
        ways=told,
        slips=slips_shown(problem_text, wording.language),
        image=image_scene(problem_text, wording.language),
    )


@lru_cache(maxsize=512)
def ways_shown(problem_text: str, wording: Wording) -> tuple[WayShown, ...]:
    """Return the ways one may hear, one of each family first."""
    problem = parse(problem_text)
    known = foreseen(problem_text, wording.rest)[:MOST_WAYS]
    return tuple(_way(problem, way, wording) for way in known)


def _way(problem: Problem, way: Way, wording: Wording) -> WayShown:
    telling = Telling(problem, way.steps, (), way.number, way.seen)
    picture = next((each for each in PICTURES if suits(each, telling)), None)
    scene = draw(picture, telling, SMALL, wording.language) if picture is not None else None
    return WayShown(wording.name(way.family), lines(telling, wording.language), scene)


@lru_cache(maxsize=512)
def slips_shown(problem_text: str, language: Language) -> tuple[SlipShown, ...]:
    """Return the likeliest slips, one for each wrong answer."""
    found: dict[str, SlipShown] = {}
    problem = parse(problem_text)
    for slip in foresee(problem):
        wrong = slip_answer(slip, problem)
        found.setdefault(wrong, SlipShown(wrong, slip_note(slip, language)))
    return tuple(found.values())[:MOST_SLIPS]


def links_shown(rows: list[Row], language: Language) -> list[LinkShown]:
    """Return what connects the problems of a plan."""
    names = [printed(str(row["text"])) for row in rows]
    return [
        LinkShown(
            " · ".join(names[at] for at in link.between),
            link_says(link, language),
            link_question(link, language),
        )
        for link in _links(rows)
    ]


def _links(rows: list[Row]) -> tuple[Link, ...]:
    problems = problems_of(rows)
    if len(problems) != len(rows):
        return ()
    try:
        return links(problems)
    except NoValue:
        return ()


def summary(plan: Plan, wording: Wording) -> list[str]:
    """Return a plan in a few words: what pays off, how large, how many, how long."""
    problems = problems_of(plan.problems)
    if not problems:
        return []
    focus = focus_of_plan(plan)
    top = largest(problems)
    size = next((each for each in ROUND_SIZES if top <= each), top)
    many = len(problems)
    minutes = minutes_of(many)
    parts = [wording.name(focus)] if focus is not None else []
    parts.append(_("to %(size)s") % {"size": size})
    parts.append(ngettext("%(many)s problem", "%(many)s problems", many) % {"many": many})
    parts.append(
        ngettext("about %(minutes)s minute", "about %(minutes)s minutes", minutes)
        % {"minutes": minutes}
    )
    return parts
