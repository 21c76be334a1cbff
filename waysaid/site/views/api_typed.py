"""What a field asks for while a problem is typed in it: what was understood so far."""

from django.http import HttpRequest, HttpResponse, JsonResponse
from django.utils import translation
from django.utils.translation import get_language
from django.views.decorators.http import require_safe

from waysaid.number import LONGEST, Language
from waysaid.site.understood import understood
from waysaid.site.views.guards import asks, plain, seat_at


@require_safe
@asks(None)
def typed(request: HttpRequest) -> HttpResponse:
    """Answer a page around the talks, in its language."""
    return _answer(request, Language((get_language() or "en")[:2]))


@require_safe
@plain
def typed_at_desk(request: HttpRequest, talk_id: int) -> HttpResponse:
    """Answer a desk, in its language."""
    language = seat_at(request, talk_id).talk.school_class.desk_language
    with translation.override(language):
        return _answer(request, Language(language))


def _answer(request: HttpRequest, language: Language) -> HttpResponse:
    # One character more than fits, so that a longer line is said to be too long.
    found = understood(request.GET.get("text", "")[: LONGEST + 1], language)
    return JsonResponse({"says": found.says, "wrong": found.wrong})
