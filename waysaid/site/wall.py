"""What hangs round a talk's board: the class's signals, norms, sentence starters and names."""

from collections.abc import Iterable
from typing import Any

from django.utils import translation
from django.utils.translation import gettext as _

from waysaid.site.around import OnList
from waysaid.site.models import SchoolClass
from waysaid.talk import Signal, Wall

ICONS = ("way", "thinking", "agree", "same", "another", "question")
MOST_SIGNALS = 6
"""A board shows none to six signals (promised)."""


def wall_of(school_class: SchoolClass, children: Iterable[OnList], pictures: str) -> Wall:
    """Return the wall of a class and its children.

    `pictures` is the address its pictures are under.
    """
    starters = school_class.starters or standard_starters(school_class.board_language)
    return Wall(
        signals=tuple(_signal(each, pictures) for each in school_class.signals[:MOST_SIGNALS]),
        norms=tuple(str(norm) for norm in school_class.norms),
        starters=tuple(str(starter) for starter in starters),
        background=_address(school_class.background_id, pictures),
        names={each.key: each.name for each in children},
    )


def standard_signals(language: str) -> list[dict[str, Any]]:
    """Return the signals a new class starts with, in the language of its board."""
    with translation.override(language):
        words = {
            "thinking": _("still thinking"),
            "way": _("I have a way"),
            "agree": _("I agree"),
            "another": _("another way"),
        }
    return [{"word": word, "icon": icon, "picture": None} for icon, word in words.items()]


def standard_norms(language: str) -> list[str]:
    """Return the norms a new class starts with (common practice, no source)."""
    with translation.override(language):
        return [
            _("We give everyone time to think."),
            _("We listen to each other."),
            _("There is more than one way."),
        ]


def standard_starters(language: str) -> list[str]:
    """Return beginnings of sentences for children who would like one."""
    with translation.override(language):
        return [_("I noticed …"), _("I did it another way: …"), _("I agree, because …")]


def empty_class(owner_id: int, name: str, desk: str, board: str) -> SchoolClass:
    """Return a new class, not yet saved, with the standard wall in the board's language."""
    return SchoolClass(
        owner_id=owner_id,
        name=name,
        desk_language=desk,
        board_language=board,
        signals=standard_signals(board),
        norms=standard_norms(board),
    )


def _signal(kept: dict[str, Any], pictures: str) -> Signal:
    icon = kept.get("icon")
    return Signal(
        word=str(kept.get("word", "")),
        icon=icon if icon in ICONS else None,
        picture=_address(kept.get("picture"), pictures),
    )


def _address(picture: Any, pictures: str) -> str | None:
    return f"{pictures}/{picture}" if isinstance(picture, int) else None
