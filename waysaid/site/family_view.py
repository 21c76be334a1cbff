"""What the page of a family shows, read off the engine."""

from dataclasses import dataclass
from functools import lru_cache

from waysaid.drawing import Picture, Scene, Telling, draw, lines, suits
from waysaid.number import Language, Print, parse, text
from waysaid.site.chips import foreseen
from waysaid.site.plan_view import PICTURES, SMALL
from waysaid.site.wording import Wording
from waysaid.ways import FAMILY_NOTES, SOURCES, Family, Named, Vocabulary, how_said, published_names


@dataclass(frozen=True, slots=True)
class ExampleShown:
    """One worked example: the problem, the equations, how it might be said, and its drawing."""

    problem: str
    lines: tuple[str, ...]
    said: str
    scene: Scene | None


@dataclass(frozen=True, slots=True)
class FamilyShown:
    """A family as its page shows it: no `source` is our guess, `leads_to` are slugs and names."""

    slug: str
    name: str
    does: str
    grade: int
    source: str
    names: tuple[tuple[Vocabulary, Named], ...]
    leads_to: tuple[tuple[str, str], ...]
    examples: tuple[ExampleShown, ...]


def family_shown(family: Family, wording: Wording) -> FamilyShown:
    """Return the page of a family in the words of a class."""
    note = FAMILY_NOTES[family]
    return FamilyShown(
        slug=family.value,
        name=wording.name(family),
        does=note.does(wording.language),
        grade=note.grade,
        source=SOURCES.get(note.source, ""),
        names=tuple(published_names(family).items()),
        leads_to=tuple((each.value, wording.name(each)) for each in note.leads_to),
        examples=tuple(
            shown
            for given in note.examples
            if (shown := _example(given, family, wording.language)) is not None
        ),
    )


@lru_cache(maxsize=256)
def _example(given: str, family: Family, language: Language) -> ExampleShown | None:
    problem = parse(given)
    way = next((way for way in foreseen(given) if way.family is family), None)
    if way is None:
        return None
    telling = Telling(problem, way.steps, (), way.number)
    picture = next((each for each in PICTURES if suits(each, telling)), None)
    scene = draw(picture, telling, SMALL, language) if isinstance(picture, Picture) else None
    shown = text(problem, Print.TRUE, language)
    return ExampleShown(shown, lines(telling, language), how_said(way, language), scene)
