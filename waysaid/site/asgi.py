"""The application: the live streams, and Django's pages in a few threads beside them."""

import os

import django
from a2wsgi import WSGIMiddleware
from django.core.wsgi import get_wsgi_application

os.environ.setdefault("DJANGO_SETTINGS_MODULE", "waysaid.site.settings")
django.setup(set_prefix=False)

from waysaid.site.gate import App, Receive, Scope, Send  # noqa: E402
from waysaid.site.live import live  # noqa: E402

WORKERS = 8
"""Threads that answer pages; each keeps a database connection."""

_pages: App = WSGIMiddleware(get_wsgi_application(), workers=WORKERS)  # type: ignore[arg-type,assignment]


async def application(scope: Scope, receive: Receive, send: Send) -> None:
    """Answer one request; a stream never enters Django."""
    if scope["path"].startswith("/live/"):
        await live(scope, receive, send)
    else:
        await _pages(scope, receive, send)
