"""The documentation says what is there: pages read off the code are fresh, and links lead on."""

import re
import subprocess
import sys
from pathlib import Path

import pytest

ROOT = Path(__file__).parents[2]
PAGES = [ROOT / "README.md", ROOT / "CONTRIBUTING.md", *sorted(ROOT.glob("docs/**/*.md"))]


def test_the_pages_read_off_the_code_are_fresh() -> None:
    checked = subprocess.run(
        [sys.executable, "scripts/reference.py", "--check"],
        cwd=ROOT,
        capture_output=True,
        text=True,
        check=False,
    )
    assert checked.returncode == 0, checked.stderr


@pytest.mark.parametrize("page", PAGES, ids=lambda page: page.name)
def test_every_link_leads_to_a_file(page: Path) -> None:
    targets = re.findall(r"\]\(([^)#]+?)(?:#[^)]*)?\)", page.read_text(encoding="utf-8"))
    missing = [each for each in targets if not (page.parent / each).exists()]
    assert missing == []


def test_every_setting_from_the_environment_has_its_row() -> None:
    code = "\n".join(path.read_text(encoding="utf-8") for path in ROOT.glob("waysaid/**/*.py"))
    read = set(re.findall(r"\"(WAYSAID_[A-Z_]+)\"", code))
    settings = (ROOT / "docs/reference/settings.md").read_text(encoding="utf-8")
    assert read <= set(re.findall(r"^\| `(WAYSAID_[A-Z_]+)`", settings, re.MULTILINE))
