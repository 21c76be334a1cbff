"""A wish for a string: read from the fields of a form, kept with a plan, shown again."""

import re
from collections.abc import Mapping
from typing import Any

from django.utils.translation import gettext as _

from waysaid.number import Language, text
from waysaid.site.models import Plan
from waysaid.site.planning import focus_of_plan, grade_of_plan, largest, problems_of, rows_typed
from waysaid.site.wording import Wording
from waysaid.strings import (
    FOCUSES,
    GRADES,
    HOMES,
    LONGEST,
    SHORTEST,
    USUAL,
    Topic,
    Wish,
    WishError,
    minutes_of,
    topic_name,
    topics_of,
)
from waysaid.ways import Family

WHOLE = re.compile(r"[0-9]{1,9}")
MOST_TYPED = 500
"""Characters of the problems that must be in a string: more than those it may have (our choice)."""
SUGGESTED = Family.GIVE_AND_TAKE
"""What a form begins with where nothing says what pays off: at home in every grade (our choice)."""

Fields = dict[str, str]
"""What the fields of a form hold, by their names without `wish-`."""
NAMES = ("grade", "focus", "topic", "length", "musts", "within", "line", "surprise", "fresh")


def typed_wish(given: Mapping[str, Any]) -> Fields:
    """Return what a form holds, as it was typed."""
    return {name: str(given.get(f"wish-{name}", ""))[:MOST_TYPED] for name in NAMES}


def wish_in(fields: Mapping[str, str], language: Language) -> Wish:
    """Return the wish that fields say. Raises `WishError` or `UnreadableLineError`."""
    problems = problems_of(rows_typed(fields["musts"]))
    return Wish(
        grade=_whole(fields["grade"]),
        focus=_focus(fields["focus"]),
        length=_whole(fields["length"]) if fields["length"] else None,
        musts=tuple(dict.fromkeys(problems)),
        language=language,
        topic=_topic(fields["topic"]),
        within=_whole(fields["within"]) if fields["within"].strip() else None,
        line=bool(fields["line"]),
        surprise=bool(fields["surprise"]),
    )


def fields_of(wish: Wish, fresh: bool = True) -> Fields:
    """Return the fields that say a wish: `wish_in` reads them back.

    `fresh` wishes for no problem that the class was shown lately: which those are is looked up when
    the string is composed.
    """
    return {
        "grade": str(wish.grade),
        "focus": wish.focus.value,
        "topic": wish.topic.value if wish.topic else "",
        "length": str(wish.many),
        "musts": "\n".join(text(must) for must in wish.musts),
        "within": "" if wish.within is None else str(wish.within),
        "line": "yes" if wish.line else "",
        "surprise": "yes" if wish.surprise else "",
        "fresh": "yes" if fresh else "",
    }


def kept_wish(plan: Plan) -> Wish | None:
    """Return the wish a plan was composed for, about what it then was; None for no such wish."""
    if not plan.wish:
        return None
    fields = {name: str(plan.wish.get(name, "")) for name in NAMES}
    fields["topic"] = str(plan.wish.get("about", ""))
    try:
        return wish_in(fields, Language(plan.school_class.desk_language))
    except ValueError:
        return None


def suggested(plan: Plan) -> Fields:
    """Return the fields to begin with for a plan: its own wish, else what its problems suggest."""
    if plan.wish:
        return {name: str(plan.wish.get(name, "")) for name in NAMES}
    problems = problems_of(plan.problems)
    focus = focus_of_plan(plan) if problems else None
    fields = fields_of(first_wish(grade_of_plan(plan), focus))
    many = len(problems) or USUAL
    top = largest(problems)
    return {
        **fields,
        "length": str(min(LONGEST, max(SHORTEST, many))),
        "within": next((str(size) for size in (20, 100, 1000) if 0 < top <= size), ""),
    }


def first_wish(grade: int, focus: Family | None = None) -> Wish:
    """Return the wish to begin with in a grade."""
    return Wish(grade, focus if focus in FOCUSES else SUGGESTED)


def choices(wording: Wording) -> dict[str, object]:
    """Return what the form offers to choose from, in a class's words."""
    return {
        "wish_grades": GRADES,
        "wish_focuses": [
            (each.value, wording.name(each), " ".join(topics_of(each))) for each in FOCUSES
        ],
        "wish_topics": [(each.value, topic_name(each, wording.language)) for each in HOMES],
        "wish_lengths": [(many, minutes_of(many)) for many in range(SHORTEST, LONGEST + 1)],
    }


def _whole(typed: str) -> int:
    """Return the whole number that was typed. Raises `WishError`."""
    if not WHOLE.fullmatch(typed.strip()):
        raise WishError(_("“%s” is no whole number; one such as 100 would fit.") % typed.strip())
    return int(typed)


def _focus(typed: str) -> Family:
    if typed not in {each.value for each in Family}:
        raise WishError(_("“%s” is no idea of ours; one of the list would fit.") % typed)
    return Family(typed)


def _topic(typed: str) -> Topic | None:
    if typed and typed not in {each.value for each in Topic}:
        raise WishError(
            _("Strings about “%s” are not composed; one of the list would fit.") % typed
        )
    return Topic(typed) if typed else None
