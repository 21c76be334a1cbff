"""The languages that Waysaid speaks."""

from enum import StrEnum


class Language(StrEnum):
    """A language, by its two-letter code (ISO 639-1)."""

    EN = "en"
    ES = "es"
