"""What a reader of the documentation begins with: a checkout in which everything is set up."""

import shutil
import sys
from collections.abc import Iterable
from pathlib import Path

import pytest

from tests.whole.house import ROOT, tracked

SETUP = """#!/bin/sh
mkdir -p build
echo "$1" >>build/set-up
"""
"""The tests run in what `scripts/setup.sh` made, so that of a copy only says what it was asked."""

SMALL = (
    *("Makefile", "pyproject.toml", "mypy-site.ini", ".gitignore", ".pre-commit-config.yaml"),
    *("scripts/*.sh", "scripts/check_files.py", "scripts/sweep*.py", "requirements/*"),
    *("tests/__init__.py", "tests/conftest.py", "tests/counts.py", "tests/sweep.py"),
    *("tests/postgres.py", "tests/browser.py", "tests/plain_user.py"),
    *("waysaid/__init__.py", "waysaid/number/*.py"),
)
"""The repository without all but its first layer, and with no tests but those that are written."""


def copied(paths: Iterable[Path], folder: Path) -> Path:
    """Copy files of the repository into a folder, with this run's own packages as its `.venv`."""
    for path in paths:
        copy = folder / path.relative_to(ROOT)
        copy.parent.mkdir(parents=True, exist_ok=True)
        shutil.copy2(path, copy)
    (folder / "scripts" / "setup.sh").write_text(SETUP, encoding="utf-8")
    (folder / ".venv").symlink_to(sys.prefix)
    return folder


@pytest.fixture(scope="session")
def checkout(tmp_path_factory: pytest.TempPathFactory) -> Path:
    """Return a copy of the repository in which everything is set up."""
    return copied(tracked(), tmp_path_factory.mktemp("checkout"))


@pytest.fixture
def small_checkout(tmp_path: Path) -> Path:
    """Return a copy of as much as the targets of make need, in which everything is set up."""
    return copied((path for each in SMALL for path in ROOT.glob(each)), tmp_path / "small")
