"""Fold letters: lower case, without accents, every character still one character."""

import unicodedata
from functools import lru_cache

GONE = "\0"
"""Stands for a character that belongs to a word and is not read: an accent written apart."""

_ALIKE = {
    **dict.fromkeys("’‘‛ʼ′´`＇", "'"),
    **dict.fromkeys("‐‑‒–﹣－", "-"),
    **dict.fromkeys("\t\r\v\f", " "),
    "―": "—",
    "\n": "\n",
    "\u2028": "\n",
    "\u2029": "\n",
    "\u0085": "\n",
    "\0": " ",
    "⁄": "/",
    "∕": "/",
    "∗": "*",
    "⋅": "·",
    "•": "·",
}
"""Characters that are written for one another. A dash of any width between digits is a minus."""


def fold(written: str) -> str:
    """Return the text folded, character for character: as long as what goes in."""
    if written.isascii():
        return written.lower().translate(_ASCII)
    return "".join(map(_one, written))


def letters(folded: str) -> str:
    """Return a folded word without its apostrophes and its accents that stand apart."""
    return folded.replace("'", "").replace(GONE, "")


@lru_cache(maxsize=4096)
def _one(character: str) -> str:
    if character in _ALIKE:
        return _ALIKE[character]
    kind = unicodedata.category(character)
    if kind in {"Mn", "Cf"}:
        return GONE
    if kind == "Zs":
        return " "
    if kind == "Nd":
        return str(unicodedata.decimal(character))
    plain = unicodedata.normalize("NFKD", character)[:1] if kind[0] == "L" else character
    lower = plain.lower()
    return lower if len(lower) == 1 else lower[0]


_ASCII = {ord(one): alike for one, alike in _ALIKE.items() if ord(one) < 128}
