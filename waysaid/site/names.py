"""One child's name: made plain, and told apart from the others on the list."""

import re
import unicodedata
from collections.abc import Collection, Iterable

MOST_NAMES = 60
LONGEST_NAME = 60


class BadNamesError(ValueError):
    """Raised when a list holds too many names; its text is the number found."""


def clean(name: str) -> str:
    """Return a name without odd spaces, bullets or numbering, at most `LONGEST_NAME` long.

    Letters and their marks become one sign where there is one (Unicode's NFC), so that two names
    that look alike are told apart.
    """
    whole = unicodedata.normalize("NFC", name)
    printable = "".join(each if each.isprintable() else " " for each in whole)
    bare = re.sub(r"^\s*(?:(?:[-*•·]|\d{1,3}[.)])\s+)+", "", printable)
    return " ".join(bare.split())[:LONGEST_NAME].strip()


def told_apart(names: Iterable[str], taken: Collection[str] = ()) -> tuple[str, ...]:
    """Return the names with a number behind each that is there already: Noor, Noor (2)."""
    used = {name.casefold() for name in taken}
    apart = []
    for name in names:
        given, nth = name, 1
        while given.casefold() in used:
            nth += 1
            mark = f" ({nth})"
            given = name[: LONGEST_NAME - len(mark)] + mark
        used.add(given.casefold())
        apart.append(given)
    return tuple(apart)
