"""What the site of the docs needs of a page: a link out of `docs/` says its path instead."""

import posixpath
import re
from typing import Any

LINK = re.compile(r"\[([^\]]+)\]\((\.\.[^)#]*)(#[^)]*)?\)")


def on_page_markdown(markdown: str, page: Any, **_more: Any) -> str:
    """Return a page's text in which a link to a file beside `docs/` is its text and its path."""
    folder = posixpath.dirname(page.file.src_uri)

    def plain(found: re.Match[str]) -> str:
        path = posixpath.normpath(posixpath.join("docs", folder, found[2]))
        if path.startswith("docs/"):
            return found[0]
        return f"{found[1]} (`{path}`)"

    return LINK.sub(plain, markdown)
