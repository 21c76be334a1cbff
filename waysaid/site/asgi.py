"""The application: the live streams, and Django's pages in a few threads beside them."""

import asyncio
import os
from concurrent.futures import ThreadPoolExecutor
from io import BytesIO
from typing import Any

import django
from a2wsgi import WSGIMiddleware
from a2wsgi.wsgi import build_environ
from django.core.wsgi import get_wsgi_application

os.environ.setdefault("DJANGO_SETTINGS_MODULE", "waysaid.site.settings")
django.setup(set_prefix=False)

from waysaid.site.gate import App, Receive, Scope, Send  # noqa: E402
from waysaid.site.live import live  # noqa: E402

WORKERS = 8
"""Threads that answer pages; each keeps a database connection."""

READ_FIRST = ("/events", "/read")
"""How the addresses end whose answers somebody waits for at every tap or key."""

_django = get_wsgi_application()
_pages: App = WSGIMiddleware(_django, workers=WORKERS)  # type: ignore[arg-type,assignment]
_at_once = ThreadPoolExecutor(max_workers=WORKERS, thread_name_prefix="at-once")
"""Threads of their own for these: what one has read stays warm from tap to tap."""


async def application(scope: Scope, receive: Receive, send: Send) -> None:
    """Answer one request; a stream never enters Django."""
    if scope["path"].startswith("/live/"):
        await live(scope, receive, send)
    elif scope["path"].endswith(READ_FIRST):
        body = BytesIO(await _body(receive))
        environ = build_environ(scope, body)  # type: ignore[arg-type]
        loop = asyncio.get_running_loop()
        for message in await loop.run_in_executor(_at_once, _answer, environ):
            await send(message)
    else:
        await _pages(scope, receive, send)


def _answer(environ: Any) -> tuple[dict[str, Any], dict[str, Any]]:
    """Return Django's whole answer, so that a thread is asked once and asks for nothing."""
    head: dict[str, Any] = {"type": "http.response.start"}

    def start(status: str, headers: list[tuple[str, str]], _error: object = None) -> Any:
        head["status"] = int(status.split(" ", 1)[0])
        head["headers"] = [
            (name.lower().encode("latin-1"), value.encode("latin-1")) for name, value in headers
        ]

    answer = _django(environ, start)
    try:
        return head, {"type": "http.response.body", "body": b"".join(answer)}
    finally:
        answer.close()


async def _body(receive: Receive) -> bytes:
    """Read a body here: a thread that asked the loop for it would wait twice for its turn."""
    parts = []
    more = True
    while more:
        message = await receive()
        parts.append(message.get("body", b""))
        more = message.get("more_body", False)
    return b"".join(parts)
