"""Headers that keep a page to itself: no outside request, no inline script, no frame."""

from collections.abc import Callable

from django.http import HttpRequest, HttpResponseBase

CONTENT_SECURITY_POLICY = "; ".join(
    (
        "default-src 'none'",
        "script-src 'self'",
        "style-src 'self'",
        "img-src 'self'",
        "font-src 'self'",
        "connect-src 'self'",
        "form-action 'self'",
        "base-uri 'none'",
        "frame-ancestors 'none'",
        "require-trusted-types-for 'script'",
        "trusted-types 'none'",
    )
)
SAFE_HEADERS = {
    "Content-Security-Policy": CONTENT_SECURITY_POLICY,
    # With no-referrer a browser sends `Origin: null` with every form, and the exact check of the
    # Origin would be lost; same-origin tells other sites just as little.
    "Referrer-Policy": "same-origin",
    "X-Content-Type-Options": "nosniff",
    "Cross-Origin-Opener-Policy": "same-origin",
    "Cross-Origin-Resource-Policy": "same-origin",
    "Permissions-Policy": "camera=(), geolocation=(), microphone=(), payment=(), usb=()",
}


class SafeHeaders:
    """Puts the headers on every answer, static files and refusals included."""

    def __init__(self, get_response: Callable[[HttpRequest], HttpResponseBase]) -> None:
        self.get_response = get_response

    def __call__(self, request: HttpRequest) -> HttpResponseBase:
        """Return the answer with the headers; a view's own Referrer-Policy stays."""
        response = self.get_response(request)
        for name, value in SAFE_HEADERS.items():
            response.headers.setdefault(name, value)
        if not response.headers.get("Cache-Control"):
            response.headers["Cache-Control"] = "no-store"
        return response
