"""What every template may use."""

from typing import Any

from django.conf import settings
from django.http import HttpRequest


def shared(request: HttpRequest) -> dict[str, Any]:
    """Return whether this is a school's server, with accounts to sign in and out of."""
    return {"school_server": settings.SCHOOL_SERVER}
