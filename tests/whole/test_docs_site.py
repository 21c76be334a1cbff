"""The documentation becomes a site that asks nothing of other machines."""

import re
import subprocess
import sys

import pytest

from tests.whole.house import ROOT
from tests.whole.typed import PAGES, lost_lines

ASKS = re.compile(
    r"<(?:script|link|img|iframe|source|video|audio)\b[^>]*\b(?:src|href)=\"(?:https?:)?//"
)


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


@pytest.mark.parametrize("page", PAGES, ids=lambda page: page.name)
def test_the_site_shows_each_block_as_a_block(page):
    assert lost_lines(page) == []


@pytest.mark.parametrize(("deep", "lost"), [(7, ["waysaid demo", "[Unit]"]), (8, [])])
def test_a_block_that_a_list_swallows_is_seen(tmp_path, deep, lost):
    page = tmp_path / "page.md"
    lines = ["1. Do it:", "waysaid demo", "[Unit]"]
    page.write_text(f"\n\n{' ' * deep}".join(lines), encoding="utf-8")
    assert lost_lines(page) == lost
    page = tmp_path / "after.md"
    page.write_text("1. Do it.\n\n    rsync x y\n\n    Then more.\n", encoding="utf-8")
    assert lost_lines(page) == ["rsync x y"]
