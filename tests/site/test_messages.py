"""Every text of the site is there in Spanish, with the same places to fill, and compiled."""

import subprocess
import sys
from pathlib import Path

ROOT = Path(__file__).parents[2]


def test_every_text_is_translated_and_compiled():
    script = str(ROOT / "scripts" / "messages.py")
    done = subprocess.run(
        [sys.executable, script, "--check"], capture_output=True, text=True, check=False, cwd=ROOT
    )
    assert done.returncode == 0, done.stdout + done.stderr
