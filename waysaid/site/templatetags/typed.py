"""The line under a field for a problem: examples, then what is understood as it is typed."""

from django import template
from django.utils.html import format_html
from django.utils.safestring import SafeString
from django.utils.translation import get_language
from django.utils.translation import gettext as _

from waysaid.number import Language
from waysaid.site.understood import EXAMPLES

register = template.Library()


@register.simple_tag
def understood_line(line_id: str) -> SafeString:
    """Return the line with this id; a field names it in `data-says` and `aria-describedby`."""
    examples = EXAMPLES[Language((get_language() or "en")[:2])]
    said = _("For example: %(problems)s") % {"problems": " · ".join(examples)}
    return format_html(
        '<span class="understood" id="{}" aria-live="polite">{}</span>', line_id, said
    )
