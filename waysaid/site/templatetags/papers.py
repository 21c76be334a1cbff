"""The form for a report over several talks, wherever a page would offer it."""

from datetime import date

from django import template

from waysaid.site.class_report import half_term

register = template.Library()


@register.inclusion_tag("waysaid/_report_form.html")
def report_form() -> dict[str, tuple[date, date]]:
    """Return the form with its usual days in it."""
    return {"half_term": half_term()}
