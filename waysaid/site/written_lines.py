"""A line of a talk that was written down by hand: who, and what was said.

`Noor, 37+3=40+22`: a way. `Noor & Ravi, ...`: the others did it the same way. `, 37+25`, or
shorthand alone: nobody is named. `Noor, 62`: only an answer. `= Ravi, Mei` or `Ravi, same`: as the
way above; `Ravi, same as Noor`: as that way. `Noor, pass`: was asked, and passed. The first letters
of a name do. The form of the lines is our own.
"""

import re
from collections.abc import Iterable, Sequence
from dataclasses import dataclass
from enum import Enum
from unicodedata import category, combining, normalize

from django.utils.translation import gettext as _

from waysaid.number import parse_said
from waysaid.site.around import OnList

LONGEST = 2000
"""Characters of one line: as many as the words of a way may have."""
WORDY = 3
"""From so many words on, what stands before a comma is talk and no name (our choice)."""
_BREAK = re.compile(r"[,:]")
_BETWEEN = re.compile(r"\s*[&+/;,]\s*|\s+(?:and|y|e)\s+", re.IGNORECASE)
_SAME = re.compile(
    r"(?:=|(?:the )?same(?: way)?(?: as)?|(?:lo )?(?:mismo|igual)(?: que)?)\s*(?P<name>.*)",
    re.IGNORECASE,
)
_PASSES = re.compile(r"[-–—]+|pass(?:ed|es)?|pas(?:a|o|ó)", re.IGNORECASE)


class What(Enum):
    """What a line says that a child did."""

    WAY = "way"
    ANSWER = "answer"
    AGREED = "agreed"
    PASSED = "passed"


class BadLineError(ValueError):
    """Raised for a line that cannot be taken down; its text is one sentence for the teacher."""


@dataclass(frozen=True, slots=True)
class Line:
    """A line in its parts: the children named, the first first; `said` as it was typed.

    `like` is the child whose way it is the same as, or None for the way above.
    """

    who: tuple[OnList, ...]
    what: What
    said: str
    like: OnList | None = None


def line_read(typed: str, listed: Sequence[OnList]) -> Line:
    """Return a line of a problem in its parts. Raises `BadLineError`."""
    typed = _short(typed)
    if typed.startswith("=") and not any(map(str.isdigit, typed)):
        return Line(_named_all(typed[1:], listed), What.AGREED, "")
    who, said = who_and_said(typed, listed)
    if _PASSES.fullmatch(said):
        if not who:
            raise BadLineError(_("Nobody is named who passed; “Noor, pass” would fit."))
        return Line(who, What.PASSED, "")
    same = _SAME.fullmatch(said)
    if same and who and _names_a_way(same["name"], listed):
        name = same["name"].strip()
        return Line(who, What.AGREED, "", _one(name, listed) if name else None)
    answer = said.removeprefix("=").strip()
    return Line(who, What.ANSWER, answer) if is_answer(answer) else Line(who, What.WAY, said)


def is_answer(said: str) -> bool:
    """Tell whether what was said is answers and nothing else: `62`, or `62, 52`."""
    return all(parse_said(each.strip()) is not None for each in said.split(","))


def who_and_said(typed: str, listed: Sequence[OnList]) -> tuple[tuple[OnList, ...], str]:
    """Return who a line names before its first comma or colon, and what it says after it.

    Raises `BadLineError`: for a name that is not on the list, or may be several children's.
    """
    typed = _short(typed)
    found = _BREAK.search(typed)
    if found is None:
        if _every(typed, listed):
            raise BadLineError(
                _("After “%(name)s” stands nothing that was said; put it behind a comma.")
                % {"name": typed}
            )
        return (), typed
    before, after = typed[: found.start()].strip(), typed[found.end() :].strip()
    who = _who(before, listed)
    if who is None:
        return (), typed
    if not after:
        raise BadLineError(_("Nothing stands behind the comma; what was said would fit there."))
    return who, after


def _names_a_way(name: str, listed: Sequence[OnList]) -> bool:
    """Tell whether `same as` goes on with a name, or with nothing, and not with more words."""
    return not name or name.isalpha() or bool(_meant(name, listed))


def _short(typed: str) -> str:
    if len(typed) > LONGEST:
        raise BadLineError(_("A line takes at most %(most)s characters.") % {"most": LONGEST})
    return " ".join("".join(" " if category(one) == "Cc" else one for one in typed).split())


def _who(before: str, listed: Sequence[OnList]) -> tuple[OnList, ...] | None:
    """Return the children named; None where it is no name but a part of what was said."""
    if not before:
        return ()
    if whole := _exactly(before, listed):
        return (whole,)
    if any(map(str.isdigit, before)) and not _every(before, listed):
        return None
    talk = len(before.split()) >= WORDY and not _any(before, listed)
    return None if talk else _named_all(before, listed)


def _named_all(names: str, listed: Sequence[OnList]) -> tuple[OnList, ...]:
    """Return each child of a row of names once. Raises `BadLineError`."""
    pieces = [each for each in _BETWEEN.split(names.strip()) if each]
    if not pieces:
        raise BadLineError(_("Nobody is named; “= Noor” would fit."))
    return tuple(dict.fromkeys(_one(each, listed) for each in pieces))


def _one(name: str, listed: Sequence[OnList]) -> OnList:
    """Return the child that a name, or its first letters, mean. Raises `BadLineError`."""
    found = _meant(name, listed)
    if len(found) == 1:
        return found[0]
    if found:
        names = _(" or ").join(each.name for each in found[:3])
        raise BadLineError(
            _("“%(name)s” may be %(names)s; a letter more would tell them apart.")
            % {"name": name, "names": names}
        )
    raise BadLineError(
        _("No child of the class is called “%(name)s”; begin with a comma to name nobody.")
        % {"name": name}
    )


def _meant(name: str, listed: Iterable[OnList]) -> list[OnList]:
    """Return those whose name begins so; a whole name wins, and who is in the class before."""
    wanted = plain(name)
    begins = [each for each in listed if wanted and plain(each.name).startswith(wanted)]
    whole = [each for each in begins if plain(each.name) == wanted]
    here = [each for each in (whole or begins) if each.active]
    return here or whole or begins


def _exactly(name: str, listed: Iterable[OnList]) -> OnList | None:
    return next((each for each in listed if plain(each.name) == plain(name)), None)


def _every(names: str, listed: Sequence[OnList]) -> bool:
    pieces = [each for each in _BETWEEN.split(names) if each]
    return bool(pieces) and all(_meant(each, listed) for each in pieces)


def _any(names: str, listed: Sequence[OnList]) -> bool:
    return any(_meant(each, listed) for each in _BETWEEN.split(names) if each)


def plain(text: str) -> str:
    """Return a name without accents and capitals, as it is typed in a hurry."""
    parted = normalize("NFD", text)
    return "".join(one for one in parted if not combining(one)).casefold().strip()
