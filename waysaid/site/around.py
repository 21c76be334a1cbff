"""What is shown of a talk besides its events: its row, and the children of its class."""

from dataclasses import dataclass

from waysaid.site.asked import Asked
from waysaid.site.models import Child, SchoolClass, Talk

_LISTED = Asked(
    lambda key: Child.objects.filter(school_class=key).values_list("pk", "name", "active")
)


@dataclass(frozen=True, slots=True)
class OnList:
    """A child on the class list, by the id that events name it by."""

    key: str
    name: str
    active: bool


@dataclass(frozen=True, slots=True)
class Around:
    """A talk's row with its class, and everyone on its list, read at one moment."""

    talk: Talk
    children: tuple[OnList, ...]


def row_of(talk_id: int) -> Talk:
    """Return a talk's row with its class and its plan. Raises `Talk.DoesNotExist`."""
    return Talk.objects.select_related("school_class", "plan").get(pk=talk_id)


def on_list(school_class: SchoolClass) -> tuple[OnList, ...]:
    """Return everyone on the class list in its order, those who have left among them."""
    return tuple(
        OnList(str(key), name, bool(active)) for key, name, active in _LISTED(school_class.pk)
    )


def around(talk: Talk) -> Around:
    """Return what is around a talk whose row was read just now."""
    return Around(talk, on_list(talk.school_class))
