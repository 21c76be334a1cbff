"""The text of a file that another program wrote, whatever signs it wrote it in.

Unicode says itself what it is. Of the old sets of signs, Windows-1252 (and Latin-1 within it) and
Mac Roman, that one is taken in which the names look most like names.
"""

import unicodedata

LARGEST_BYTES = 200_000
"""Bytes of a file: hundreds of times what a class list needs (our choice)."""
_MARKED = (
    (b"\xef\xbb\xbf", "utf-8-sig"),
    (b"\xff\xfe", "utf-16"),
    (b"\xfe\xff", "utf-16"),
)
_OLD = ("cp1252", "mac-roman", "latin-1")
"""The first goes before the others where they look alike."""
_SELDOM = frozenset("ƒˆ˜ŠšŒœŽžŸıˇ˘˙˚˝˛ºªµ")
"""Letters that stand in few names of English or Spanish speakers (our choice)."""


class BadListError(ValueError):
    """Raised for a file that is no text, or is far too long."""


def decoded(content: bytes) -> str:
    """Return a file's text. Raises `BadListError` for what is no text."""
    if len(content) > LARGEST_BYTES:
        raise BadListError
    for mark, encoding in _MARKED:
        if content.startswith(mark):
            return _plain(_read(content, encoding))
    if b"\0" in content:
        return _plain(_read(content, _without_mark(content)))
    text = _read(content, "utf-8")
    if text is None:
        read = [each for name in _OLD if (each := _read(content, name)) is not None]
        text = max(read, key=likeness)
    return _plain(text)


def _read(content: bytes, encoding: str) -> str | None:
    try:
        return content.decode(encoding)
    except UnicodeDecodeError:
        return None


def _without_mark(content: bytes) -> str:
    """Return which half of each UTF-16 sign comes first: that of the zeros is the upper one."""
    return "utf-16-be" if content[0::2].count(0) > content[1::2].count(0) else "utf-16-le"


def _plain(text: str | None) -> str:
    """Return the text, unless it has signs in it that no text has."""
    if text is None or any(
        unicodedata.category(one) == "Cc" and one not in "\t\r\n\f\x85" for one in text
    ):
        raise BadListError
    return text


def likeness(text: str) -> int:
    """Return how much the signs beyond ASCII stand as they do in names: our own measure."""
    around = zip(f" {text}", text, f"{text[1:]} ", strict=False)
    return sum(_fits(*signs) for signs in around if not signs[1].isascii())


def _fits(before: str, sign: str, after: str) -> int:
    """Return whether a sign fits between two others: a small letter in a word, a capital first."""
    if sign in _SELDOM or unicodedata.category(sign) == "Cc":
        return -2
    if sign.islower():
        return 2 if before.isalpha() and not after.isupper() else -1
    if sign.isupper():
        begins = not before.isalpha() and after.isalpha()
        return 2 if begins or before.isupper() else -2
    if sign in "’‘":
        return 2 if before.isalpha() and after.isupper() else -1
    return -2 if before.isalpha() or after.isalpha() else 0
