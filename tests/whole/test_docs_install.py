"""Installing as the README says: the wheel is built, a teacher installs it, it opens and works.

The packages that the wheel needs come from wherever this machine's own pip takes them.
"""

import sys
from pathlib import Path

import pytest

from tests.whole.house import ROOT
from tests.whole.reader import Reader
from tests.whole.typed import commands_of, inline_commands

pytestmark = pytest.mark.slow


def said(page, start):
    """Return the first command of a page that begins so."""
    return next(each for each in commands_of(ROOT / page) if each.startswith(start))


@pytest.fixture(scope="module")
def reader(checkout, tmp_path_factory):
    """A reader in a fresh checkout, with pipx and nothing of Waysaid on the machine."""
    home = tmp_path_factory.mktemp("home")
    (home / "programs").mkdir()
    (home / "programs" / "pipx").symlink_to(Path(sys.prefix) / "bin" / "pipx")
    reader = Reader(checkout, home)
    reader.finds(home / "programs")
    return reader


@pytest.fixture(scope="module")
def teacher(reader):
    """A reader who built the wheel and installed it."""
    reader.types(said("README.md", "make wheel"))
    reader.types(said("README.md", "pipx install"))
    assert reader.types("command -v waysaid") == f"{reader.home}/.local/bin/waysaid\n"
    return reader


def test_a_teacher_installs_and_opens_it(teacher):
    assert teacher.types('waysaid ways "7 + 5"').startswith("7 + 5 = 12\n")
    with teacher.opens(said("README.md", "waysaid")) as server:
        assert server.teacher().get("/welcome").status == 200


def test_a_teacher_who_wants_parquet_is_told_how_to_have_it(teacher):
    write = "waysaid evidence monday.json --out shown.parquet"
    teacher.types('waysaid talk-file "37 + 25" --out monday.json')
    bring = said("docs/reference/evidence.md", "pipx inject")
    assert f"“{bring}”" in teacher.types(f"! {write} 2>&1")
    teacher.types(bring)
    teacher.types(write)
    assert (teacher.folder / "shown.parquet").read_bytes().startswith(b"PAR1")


def test_the_demo_opens_with_its_class_and_goes_on_with_it(reader):
    for _start in range(2):
        with reader.opens(said("README.md", "make demo")) as server:
            assert server.teacher().get("/class").status == 200


def test_the_documentation_becomes_a_site(reader):
    reader.types("make docs")
    assert (reader.folder / "build/docs/index.html").is_file()


def test_the_texts_of_a_language_are_read_and_compiled(reader):
    compiled = reader.folder / "waysaid/site/locale/es/LC_MESSAGES/django.mo"
    compiled.unlink()
    (typed,) = inline_commands(ROOT / "docs/how-to/add-a-language.md")
    assert "Every text is translated and compiled." in reader.types(typed)
    assert compiled.is_file()
