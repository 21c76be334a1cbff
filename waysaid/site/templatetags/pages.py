"""Filters: days and numbers as a language writes them (CLDR, through Babel), and drawings."""

from datetime import date, datetime

from babel.dates import format_date
from babel.numbers import format_decimal
from django import template
from django.utils import timezone
from django.utils.safestring import SafeString, mark_safe
from django.utils.translation import get_language

from waysaid.drawing import Scene, svg
from waysaid.number import Language, Print, parse_equation
from waysaid.number import text as written
from waysaid.site.talk_rows import printed

register = template.Library()

DAYS = {
    "en": ("EEEE d MMMM", "EEEE d MMMM y"),
    "es": ("EEEE d 'de' MMMM", "EEEE d 'de' MMMM 'de' y"),
}
"""A day of this year, and one of another year."""


@register.filter
def day(moment: date | datetime | str | None, language: str | None = None) -> str:
    """Return a day as people say it: Thursday 25 November; with the year if it is not this one.

    A text is a day as ISO 8601 writes it.
    """
    if not moment:
        return ""
    if isinstance(moment, str):
        moment = date.fromisoformat(moment)
    when = timezone.localtime(moment).date() if isinstance(moment, datetime) else moment
    speaks = (language or get_language() or "en")[:2]
    near, far = DAYS.get(speaks, DAYS["en"])
    pattern = near if when.year == timezone.localdate().year else far
    return format_date(when, pattern, locale=speaks)


@register.filter
def short_day(day: date | None) -> str:
    """Return a day in few letters, for many of them beside each other: 4 Sept."""
    speaks = (get_language() or "en")[:2]
    return "" if day is None else format_date(day, "d MMM", locale=speaks)


@register.filter
def number(value: int) -> str:
    """Return a count as the language groups its digits."""
    return format_decimal(value, locale=(get_language() or "en")[:2])


@register.filter
def problem(text: str) -> str:
    """Return a problem, kept as plain text, as a screen shows it."""
    return printed(text)


@register.filter
def equation(text: str) -> str:
    """Return an equation, kept as plain text, with the signs that a screen shows."""
    language = Language((get_language() or "en")[:2])
    return written(parse_equation(text), Print.TRUE, language)


@register.filter
def drawn(scene: Scene) -> SafeString:
    """Return a scene as SVG; `svg` escapes every text in it."""
    return mark_safe(svg(scene))
