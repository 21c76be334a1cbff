"""What was understood of a problem while it is typed: how it will stand, and how it is said."""

from dataclasses import dataclass

from django.utils.translation import gettext as _
from django.utils.translation import ngettext

from waysaid.number import BLANK, Image, ImageKind, Language, Print, Unreadable, parse, say, text
from waysaid.paper import string_line

_ANYWHERE = ("37 + 25", "7 + _ = 12", "16 / 3", "3/4 ? 5/8", "29 + 14 = 30 + 13 ?")
EXAMPLES = {
    Language.EN: (*_ANYWHERE, "15% of 80", "about 398 x 21", "image frame 10: 7"),
    Language.ES: (*_ANYWHERE, "15% de 80", "cerca de 398 x 21", "imagen marco 10: 7"),
}
"""One problem of each kind, as it may be typed."""


@dataclass(frozen=True, slots=True)
class Understood:
    """One line to show under a field; `wrong` where the problem cannot be read."""

    says: str
    wrong: bool


def understood(typed: str, language: Language) -> Understood:
    """Return what was understood: `14 × 6: fourteen times six`, or one sentence on what was not.

    A reason behind a bar is no part of the problem.
    """
    try:
        problem = parse(string_line(typed)[0])
    except Unreadable as error:
        return Understood(error.sentence(language), True)
    if isinstance(problem, Image):
        return Understood(_picture(problem), False)
    shown = text(problem, Print.TRUE, language).replace(BLANK.value, "▢")
    return Understood(f"{shown}: {say(problem, language)}", False)


def _picture(image: Image) -> str:
    """Return a quick image in words, its dots counted: for the teacher alone."""
    kind = {
        ImageKind.FRAME: _("ten frame"),
        ImageKind.PAIRS: _("ten frame filled two by two"),
        ImageKind.DICE: _("dice patterns"),
        ImageKind.ARRAY: _("rows"),
        ImageKind.DOTS: _("dots placed by you"),
    }[image.kind]
    count = image.count
    return ngettext(
        "picture: %(kind)s, %(count)s dot", "picture: %(kind)s, %(count)s dots", count
    ) % {"kind": kind, "count": count}
