"""What the documentation tells its reader to type, read as the site shows it."""

import html
import re
from collections.abc import Container
from functools import cache
from itertools import pairwise
from pathlib import Path

import markdown

from tests.whole.house import ROOT

PAGES = [
    ROOT / "README.md",
    ROOT / "CONTRIBUTING.md",
    ROOT / "SECURITY.md",
    *sorted(ROOT.glob("docs/**/*.md")),
]
GENERATED = ROOT / "docs/reference/command-line.md"
"""Its blocks are what each command says of itself: nothing to type."""

PROGRAM = re.compile(
    r"(?:[A-Z_]+=\S+ )*(?:\.?/?[\w.-]+/)*"
    r"(?:waysaid|make|pip|pipx|uv|python3?|pg_\w+|psql|(?:create|drop)(?:db|user)|sudo"
    r"|apt(?:-get)?|systemctl|useradd|git|pre-commit|docker|brew|npm|curl|bash|sh|cd|set|export"
    r"|[\w-]+\.(?:py|sh)) "
)
"""How a line begins that is to be typed, by the programs and words of a shell one may expect."""


@cache
def block_lines(page: Path) -> list[list[str]]:
    """Return the blocks of code that the site shows on a page, each as its lines."""
    if page == GENERATED:
        return []
    made = markdown.markdown(
        page.read_text(encoding="utf-8"), extensions=["fenced_code", "tables", "toc"]
    )
    found = re.findall(r"<pre><code[^>]*>(.*?)</code></pre>", made, re.DOTALL)
    return [html.unescape(each).splitlines() for each in found]


def command_of(line: str) -> str:
    """Return what is to be typed of a line: no prompt, no remark behind it."""
    return re.sub(r"\s+#\s.*$", "", line).removeprefix("$ ").strip()


def commands_of(page: Path, contents: Container[str] = ()) -> list[str]:
    """Return the commands of a page's blocks in their order.

    A block whose first line is one of `contents` is what a file holds or a picture in letters.
    """
    return [
        command_of(line)
        for block in block_lines(page)
        if block[0] not in contents
        for line in block
        if line.strip()
    ]


def inline_commands(page: Path) -> list[str]:
    """Return the commands in the text of a page: code that begins with a program and goes on."""
    if page == GENERATED:
        return []
    text = page.read_text(encoding="utf-8")
    found = [" ".join(each.split()) for each in re.findall(r"(?<!`)`((?:[^`\n]|\n(?!\n))+)`", text)]
    return [each for each in found if PROGRAM.match(each)]


def lost_lines(page: Path) -> list[str]:
    """Return the lines of a page meant as a block that the site runs together as plain text.

    A paragraph that goes on in a list begins with a capital letter, so that none is taken for one.
    """
    shown = {line.strip() for block in block_lines(page) for line in block}
    if page == GENERATED:
        return []
    lines = page.read_text(encoding="utf-8").splitlines()
    return [
        line.strip()
        for before, line in pairwise(lines)
        if re.match(r" {5}", line)
        or (line.startswith("    ") and PROGRAM.match(command_of(line.strip())))
        or (not before and re.match(r" {4}[^A-Z]", line))
        if line.strip() and line.strip() not in shown
    ]
