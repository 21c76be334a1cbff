"""Slides opened by another program: LibreOffice turns them to pages without a word of complaint.

Only in the sweep, which installs it; the pages are kept in build/slides to be looked at.
"""

import shutil
import subprocess
from pathlib import Path

import pytest

from tests.counts import Size, size
from tests.paper.test_slides import AROUND, KINDS, made
from waysaid.number import Language
from waysaid.paper import Wordings

KEPT = Path(__file__).parents[2] / "build" / "slides"
SECONDS = 180

pytestmark = [
    pytest.mark.slow,
    pytest.mark.skipif(size() is not Size.SWEEP, reason="only in the sweep"),
    pytest.mark.skipif(shutil.which("soffice") is None, reason="LibreOffice is not there"),
]


@pytest.mark.parametrize("language", Language)
def test_an_office_program_shows_every_slide(language, tmp_path):
    KEPT.mkdir(parents=True, exist_ok=True)
    deck = KEPT / f"{language.value}.pptx"
    deck.write_bytes(made(*KINDS, wordings=Wordings(language, language), around=AROUND))
    profile = f"-env:UserInstallation={tmp_path.as_uri()}"
    ran("soffice", profile, "--headless", "--convert-to", "pdf", "--outdir", KEPT, deck)
    pages = ran("pdftotext", "-layout", deck.with_suffix(".pdf"), "-").split("\f")[:-1]
    assert len(pages) == len(KINDS) + 2
    assert "40 + 25" in pages[1]
    assert "65" not in pages[1]
    for page in pages[1:-1]:
        assert all(each.word in page for each in AROUND.signals)
    ran("pdftoppm", "-r", "60", "-png", deck.with_suffix(".pdf"), KEPT / language.value)
    assert len(list(KEPT.glob(f"{language.value}-*.png"))) == len(pages)


def ran(*command):
    done = subprocess.run(
        [str(each) for each in command], capture_output=True, text=True, timeout=SECONDS, check=True
    )
    return done.stdout
