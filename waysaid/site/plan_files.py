"""A plan for elsewhere: as slides, and as text to paste."""

from waysaid.number import Language
from waysaid.paper import Around, SignalOnSlide, Wordings, slides_pptx, string_slides, string_text
from waysaid.site.models import Picture, Plan, SchoolClass
from waysaid.site.planning import problems_of
from waysaid.site.wall import MOST_SIGNALS
from waysaid.site.wording import wording_of


def plan_slides(plan: Plan) -> bytes:
    """Return a plan's slides with its class's own signals, norms and background picture."""
    school_class, wording = plan.school_class, wording_of(plan.school_class)
    wordings = Wordings(
        Language(school_class.board_language),
        wording.language,
        wording.name,
        wording.rest,
        school_class.image_seconds,
    )
    why = [str(row.get("why") or "") for row in plan.problems]
    deck = string_slides(problems_of(plan.problems), wordings, why, _around(school_class))
    return slides_pptx(deck)


def plan_text(plan: Plan) -> str:
    """Return a plan's problems as lines to paste, each with its reason."""
    return string_text(
        problems_of(plan.problems), [str(row.get("why") or "") for row in plan.problems]
    )


def _around(school_class: SchoolClass) -> Around:
    pictures = {each.pk: bytes(each.content) for each in school_class.pictures.all()}
    signals = [
        SignalOnSlide(
            str(each.get("word", "")),
            str(each.get("icon") or ""),
            pictures.get(each.get("picture")),
        )
        for each in school_class.signals[:MOST_SIGNALS]
    ]
    background: Picture | None = school_class.background
    return Around(
        tuple(signals),
        tuple(str(norm) for norm in school_class.norms),
        None if background is None else bytes(background.content),
    )
