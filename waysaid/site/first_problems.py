"""Ready first problems for a talk with no plan: the openings of our own starter strings."""

from django.http import HttpRequest

from waysaid.number import text
from waysaid.site.models import SchoolClass
from waysaid.strings import GRADES, starters

MOST = 6
"""Problems to choose from: few enough to choose at a glance (our choice)."""
USUAL = 1
"""The grade that is offered when nothing says which."""


def ready_problems(grade: int) -> tuple[str, ...]:
    """Return up to six different first problems of a grade, as plain text."""
    first = [text(each.problems[0]) for each in starters() if each.grade == grade]
    return tuple(dict.fromkeys(first))[:MOST]


def grade_of(request: HttpRequest, school_class: SchoolClass) -> int:
    """Return the grade to offer: the one asked for, the class's own, used last, or last planned."""
    asked = request.GET.get("grade", "")
    key = f"grade-{school_class.pk}"
    if asked.isdigit() and int(asked) in GRADES:
        request.session[key] = int(asked)
        return int(asked)
    if school_class.grade in GRADES:
        return int(school_class.grade)
    kept = request.session.get(key)
    return kept if kept in GRADES else _planned_grade(school_class)


def _planned_grade(school_class: SchoolClass) -> int:
    used = school_class.plans.exclude(starter="").order_by("-changed_at").first()
    slug = used.starter if used is not None else ""
    return next((each.grade for each in starters() if each.slug == slug), USUAL)
