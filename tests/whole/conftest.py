"""What a reader of the documentation begins with: a checkout in which everything is set up."""

import shutil
import sys
from pathlib import Path

import pytest

from tests.whole.house import ROOT, tracked


@pytest.fixture(scope="session")
def checkout(tmp_path_factory: pytest.TempPathFactory) -> Path:
    """Return a copy of the repository, with this run's own packages as its `.venv`.

    The tests run in what `scripts/setup.sh` made, so that of the copy has nothing left to do.
    """
    folder = tmp_path_factory.mktemp("checkout")
    for path in tracked():
        copy = folder / path.relative_to(ROOT)
        copy.parent.mkdir(parents=True, exist_ok=True)
        shutil.copy2(path, copy)
    (folder / "scripts" / "setup.sh").write_text("#!/bin/sh\n", encoding="utf-8")
    (folder / ".venv").symlink_to(sys.prefix)
    return folder
