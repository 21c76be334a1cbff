"""The application: the live streams, and Django's pages in a few threads beside them."""

import os
from collections.abc import Iterable
from io import BytesIO
from typing import Any

import django
from a2wsgi import WSGIMiddleware
from django.core.wsgi import get_wsgi_application

os.environ.setdefault("DJANGO_SETTINGS_MODULE", "waysaid.site.settings")
django.setup(set_prefix=False)

from waysaid.site.gate import App, Receive, Scope, Send  # noqa: E402
from waysaid.site.live import live  # noqa: E402

WORKERS = 8
"""Threads that answer pages; each keeps a database connection."""

READ_FIRST = ("/events", "/read")
"""How the addresses end whose answers somebody waits for at every tap or key."""

BODY = "waysaid.body"
"""The key in the scope for a body that was read before a thread was asked to answer."""

_django = get_wsgi_application()


def _with_body(environ: dict[str, Any], start_response: Any) -> Iterable[bytes]:
    body = environ["asgi.scope"].get(BODY)
    if body is not None:
        environ["wsgi.input"] = BytesIO(body)
    return _django(environ, start_response)


_pages: App = WSGIMiddleware(_with_body, workers=WORKERS)  # type: ignore[arg-type,assignment]


async def application(scope: Scope, receive: Receive, send: Send) -> None:
    """Answer one request; a stream never enters Django."""
    if scope["path"].startswith("/live/"):
        await live(scope, receive, send)
    elif scope["path"].endswith(READ_FIRST):
        await _pages({**scope, BODY: await _body(receive)}, receive, send)
    else:
        await _pages(scope, receive, send)


async def _body(receive: Receive) -> bytes:
    """Read a body here: a thread that asked the loop for it would wait twice for its turn."""
    parts = []
    more = True
    while more:
        message = await receive()
        parts.append(message.get("body", b""))
        more = message.get("more_body", False)
    return b"".join(parts)
