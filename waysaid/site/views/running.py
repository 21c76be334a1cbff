"""Say which server this is, so that a second start finds the first."""

import secrets

from django.http import HttpRequest, HttpResponse
from django.views.decorators.http import require_safe

RUNNING_KEY = secrets.token_hex(16)
"""Made anew by each process; also written, for its owner alone, in the data folder."""


@require_safe
def running(request: HttpRequest) -> HttpResponse:
    """Answer with this process's key."""
    return HttpResponse(RUNNING_KEY, content_type="text/plain")
