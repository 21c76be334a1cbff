"""Who may do what in a class: one table, which every view asks through its guard.

The parts and their rights are our choice. The school's rules and local law come first: a school
that allows less gives a colleague less.
"""

from collections.abc import Mapping
from enum import StrEnum

from django.contrib.auth.base_user import AbstractBaseUser
from django.contrib.auth.models import AnonymousUser
from django.db.models import Q, QuerySet

from waysaid.site.models import SchoolClass
from waysaid.site.people_models import Member, Part

OWNER = "owner"
"""The part of whoever made the class."""


class Act(StrEnum):
    """What a page or an address is about."""

    TEACH = "teach"
    """Start a talk, its desk, its network."""
    PLAN = "plan"
    """Plans, composing, the year."""
    LOOK_BACK = "look back"
    """Talks of before and what children showed in them, with their names."""
    CLASS = "class"
    """The class list, what hangs round the board, the names of ways."""
    SHARE = "share"
    """Invite, and take an invitation or a part back."""
    KEEP = "keep"
    """Export, delete, how long things are kept, hand over: all that is named nowhere else, too."""
    BOARDS = "boards"
    """The boards of talks that are open."""
    SUMMARY = "summary"
    """Counts without names."""


RIGHTS: Mapping[str, frozenset[Act]] = {
    OWNER: frozenset(Act),
    Part.TEACHER: frozenset(Act),
    Part.CO_TEACHER: frozenset({Act.TEACH, Act.PLAN, Act.LOOK_BACK, Act.BOARDS}),
    Part.VISITOR: frozenset({Act.BOARDS}),
    Part.COACH: frozenset({Act.SUMMARY}),
}
"""The whole of it; who has no part has no right."""


def may(part: str | None, act: Act) -> bool:
    """Tell whether a part in a class includes an act; no part includes none."""
    return part is not None and act in RIGHTS.get(part, frozenset())


def part_in(person: AbstractBaseUser | AnonymousUser, school_class: SchoolClass) -> str | None:
    """Return the person's part in the class, or None."""
    if not person.is_authenticated:
        return None
    if school_class.owner_id == person.pk:
        return OWNER
    members = Member.objects.filter(school_class=school_class, person_id=person.pk)
    return members.values_list("part", flat=True).first()


def classes_for(person: AbstractBaseUser | AnonymousUser, act: Act) -> QuerySet[SchoolClass]:
    """Return the classes in which the person may do this, her own before those shared with her."""
    parts = [part for part in Part.values if act in RIGHTS[part]]
    shared = Member.objects.filter(person_id=person.pk, part__in=parts)
    both = Q(owner_id=person.pk) | Q(pk__in=shared.values("school_class"))
    return SchoolClass.objects.filter(both if person.is_authenticated else Q(pk__in=()))
