"""The documentation becomes a site that asks nothing of other machines; each command in it runs."""

import os
import re
import shlex
import subprocess
import sys
from datetime import date
from pathlib import Path

import pytest

from waysaid.cli import main
from waysaid.growth import How, Shown
from waysaid.paper import write_evidence_parquet
from waysaid.ways import Family

ROOT = Path(__file__).parents[2]
PAGES = [ROOT / "README.md", *sorted(ROOT.glob("docs/**/*.md"))]
COMMAND = re.compile(r"^ +(?:\$ )?(waysaid(?: .*)?)$", re.MULTILINE)
INLINE = re.compile(r"`(waysaid [a-z-]+ [^`]+)`")
ASKS = re.compile(
    r"<(?:script|link|img|iframe|source|video|audio)\b[^>]*\b(?:src|href)=\"(?:https?:)?//"
)
STAYS_OPEN = {
    "waysaid": "tests/site/test_launch.py",
    "waysaid --port 8765": "tests/site/test_launch.py",
    "waysaid adduser mira": "tests/site/test_school.py",
}
"""Commands that open the app or ask for a password, and the tests that run them."""


def commands():
    """Return every command of the documentation, without the remark behind it."""
    found = {}
    for page in PAGES:
        text = page.read_text(encoding="utf-8")
        for line in [*COMMAND.findall(text), *INLINE.findall(text)]:
            command = " ".join(line.split("   ")[0].split())
            if "FILE" not in command.split():
                found.setdefault(command, page.name)
    return found


def prepare(command, folder):
    """Put the files there that a command reads."""
    if command.startswith(("waysaid evidence", "waysaid months")):
        for name in ("monday.json", "tuesday.json"):
            assert main(["talk-file", "37 + 25", "--out", str(folder / name)]) == 0
    if command.startswith("waysaid months"):
        grade = folder / "district" / "grade=2"
        grade.mkdir(parents=True)
        piece = Shown("t", date(2026, 9, 7), 0, "1", How.SAID, "37 + 25", Family.BRIDGE)
        write_evidence_parquet([piece] * 12, grade / "2b.parquet")


@pytest.fixture(scope="module")
def site(tmp_path_factory):
    """The documentation as a site."""
    folder = tmp_path_factory.mktemp("docs")
    command = [sys.executable, "-m", "mkdocs", "build", "-q", "-d", str(folder)]
    done = subprocess.run(command, cwd=ROOT, capture_output=True, text=True, check=False)
    assert done.returncode == 0, done.stderr
    return folder


def test_every_page_of_the_docs_is_in_the_site_and_in_its_list(site):
    listed = (ROOT / "mkdocs.yml").read_text(encoding="utf-8")
    pages = [page.relative_to(ROOT / "docs") for page in PAGES if "docs" in page.parts]
    apart = {page for page in pages if page.parts[:2] == ("reference", "ways")}
    assert [page for page in pages if page not in apart and f": {page}" not in listed] == []
    for page in pages:
        made = "index.html" if page.name == "README.md" else str(page.with_suffix(".html"))
        assert (site / made).is_file()


def test_no_page_of_the_site_asks_another_machine_for_anything(site):
    pages = sorted(site.rglob("*.html"))
    assert len(pages) > 40
    wrong = [page.name for page in pages if ASKS.search(page.read_text(encoding="utf-8"))]
    assert wrong == []
    assert ASKS.search('<script defer src="https://example.test/x.js">')


def test_no_style_of_the_site_asks_another_machine_for_anything(site):
    asks = re.compile(r"(?:url\(|@import )[\"']?(?:https?:)?//")
    wrong = [p.name for p in site.rglob("*.css") if asks.search(p.read_text(encoding="utf-8"))]
    assert wrong == []


def test_the_documentation_names_commands():
    assert len(commands()) >= 12


@pytest.mark.parametrize("command", sorted(commands()))
def test_every_command_in_the_docs_runs(command, tmp_path, monkeypatch, capsys):
    if command in STAYS_OPEN:
        assert (ROOT / STAYS_OPEN[command]).is_file()
        return
    monkeypatch.chdir(tmp_path)
    prepare(command, tmp_path)
    capsys.readouterr()
    assert main(shlex.split(command)[1:]) == 0, capsys.readouterr().err
    told, wrong = capsys.readouterr()
    assert wrong == ""
    assert told or any(tmp_path.iterdir())


def test_a_password_can_be_set_anew_as_the_guide_says(tmp_path):
    guide = (ROOT / "docs/how-to/school-server.md").read_text(encoding="utf-8")
    assert "python -m django changepassword mira" in guide
    done = subprocess.run(
        [sys.executable, "-m", "django", "changepassword", "--help"],
        env={
            **os.environ,
            "DJANGO_SETTINGS_MODULE": "waysaid.site.settings",
            "WAYSAID_DATA": str(tmp_path),
        },
        capture_output=True,
        text=True,
        check=False,
    )
    assert done.returncode == 0, done.stderr


def test_every_target_of_make_in_the_docs_is_one():
    made = set(re.findall(r"^([a-z-]+):", (ROOT / "Makefile").read_text("utf-8"), re.MULTILINE))
    asked = set()
    for page in [*PAGES, ROOT / "CONTRIBUTING.md"]:
        text = page.read_text(encoding="utf-8")
        asked |= set(re.findall(r"(?:^ +|`)make ([a-z-]+)", text, re.MULTILINE))
    assert len(asked) >= 5
    assert asked <= made
