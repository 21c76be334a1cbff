"""Every test of the site that needs no browser, once more on PostgreSQL.

Each tries a tenth of the cases: what they draw is the same, and the database is what differs.
"""

import os
import subprocess
import sys
from pathlib import Path

import pytest

from tests.counts import Size
from tests.postgres import binaries, missing

HERE = Path(__file__).parent


@pytest.mark.postgres
@pytest.mark.slow
@pytest.mark.skipif(
    os.environ.get("WAYSAID_TEST_DATABASE") == "postgres", reason="this is that run"
)
def test_the_site_does_the_same_on_postgres():
    if binaries() is None:
        missing("PostgreSQL")
    files = [
        str(path) for path in sorted(HERE.rglob("test_*.py")) if path.name != Path(__file__).name
    ]
    done = subprocess.run(
        [
            sys.executable,
            "-m",
            "pytest",
            "-q",
            "-p",
            "no:cacheprovider",
            "-m",
            "not browser",
            *files,
        ],
        env={**os.environ, "WAYSAID_TEST_DATABASE": "postgres", "WAYSAID_COUNTS": Size.QUICK.value},
        cwd=HERE.parents[1],
        capture_output=True,
        text=True,
        check=False,
    )
    assert done.returncode == 0, done.stdout[-4000:] + done.stderr[-2000:]
