"""The targets of make that check, and the commands around a commit, typed in a small copy.

The copy has one layer, all scripts, and two tests that are written here, so that what runs is the
real thing from end to end and is quick. Of `make lint` it is the half without the site's types; the
other half is run by `make test` wherever that checks the whole repository, as CI does.
"""

import hashlib
import shutil
import subprocess
import sys
from pathlib import Path

import pytest

from tests.browser import driver_runs, program
from tests.postgres import binaries
from tests.whole.house import ROOT
from tests.whole.reader import Reader
from tests.whole.typed import commands_of

pytestmark = pytest.mark.slow

PROPERTY = '''"""A property that holds."""

from tests.counts import count


def test_twice_a_number_is_even(sweep_note):
    tried = range(count(test=20, sweep=1500))
    assert [each for each in tried if 2 * each % 2] == []
    sweep_note("twice a number is even", len(tried))
'''
IN_OFFICE = '''"""What the sweep runs by itself, after it has seen to an office program."""

from pathlib import Path

import pytest

from tests.counts import Size, size

pytestmark = pytest.mark.slow


def test_the_office_program_was_seen_to():
    assert size() is Size.SWEEP
    assert Path("build/set-up").read_text(encoding="utf-8") == "python\\noffice\\n"
'''
WRONG = '''"""A property that does not hold."""


def test_twice_a_number_is_odd(sweep_note):
    sweep_note("twice a number is odd", 7)
    assert 2 * 3 % 2 == 1
'''
CONTRIBUTING = commands_of(ROOT / "CONTRIBUTING.md")


@pytest.fixture
def developer(small_checkout, tmp_path):
    """Somebody at a small copy, which is a repository of git."""
    tests = small_checkout / "tests"
    (tests / "paper").mkdir()
    (tests / "paper" / "test_slides_in_office.py").write_text(IN_OFFICE, encoding="utf-8")
    (tests / "test_twice.py").write_text(PROPERTY, encoding="utf-8")
    developer = Reader(small_checkout, tmp_path)
    developer.types("git init -q && git config user.name A && git config user.email a@b.invalid")
    developer.types("git add .")
    return developer


def asked_of_setup(developer):
    """Return what the scripts asked `scripts/setup.sh` for, in turn."""
    return (developer.folder / "build" / "set-up").read_text(encoding="utf-8").split()


def test_lint_lets_through_what_is_in_order_and_names_what_is_not(developer):
    assert "0 broken" in developer.types("make lint")
    assert asked_of_setup(developer) == ["python"]
    planted = developer.folder / "waysaid" / "number" / "planted.py"
    for fault, said in (
        ('ONE: int = "one"\n', "planted.py:3: error"),
        ("import waysaid.ways\n", "F401"),
    ):
        planted.write_text(f'"""Planted."""\n\n{fault}', encoding="utf-8")
        assert said in developer.types("! make lint 2>&1")


@pytest.mark.parametrize("target", ["test", "quick"])
def test_the_tests_end_with_their_status(developer, target):
    (developer.folder / "tests" / "paper" / "test_slides_in_office.py").unlink()
    developer.types("git add .")
    assert "1 passed" in developer.types(f"make {target}")
    assert asked_of_setup(developer) == [{"test": "all", "quick": "python"}[target]]
    (developer.folder / "tests" / "test_wrong.py").write_text(WRONG, encoding="utf-8")
    said = developer.types(f"! make {target} 2>&1")
    assert "1 failed, 1 passed" in said
    assert "test_twice_a_number_is_odd" in said


def test_the_sweep_writes_its_report_and_ends_with_the_status_of_its_tests(developer):
    page = developer.folder / "docs" / "reference" / "sweep.md"
    row = "| twice a number is even | `test_twice` | 1,500 | 0 | yes | no commit |"
    assert "2 parts, 0 of them held" in developer.types("make sweep")
    assert row in page.read_text(encoding="utf-8")
    (developer.folder / "build" / "set-up").unlink()
    (developer.folder / "tests" / "test_wrong.py").write_text(WRONG, encoding="utf-8")
    assert "test_wrong.py: 1 of 1 failed" in developer.types("! make sweep 2>&1")
    told = page.read_text(encoding="utf-8")
    assert "2 properties, 1,507 cases, 1 failed." in told
    assert row in told
    assert "| twice a number is odd | `test_wrong` | 7 | 0 | **no** | no commit |" in told
    assert "- `tests/test_wrong.py` (no commit): test_twice_a_number_is_odd" in told


def test_the_sweep_runs_all_of_it_again_when_it_is_asked_to(developer):
    for command, held in (("make sweep", 0), ("make sweep", 2), ("make sweep ALL=1", 0)):
        (developer.folder / "build" / "set-up").unlink(missing_ok=True)
        assert f"2 parts, {held} of them held" in developer.types(command)


def test_a_sweep_runs_again_what_failed_and_what_rests_on_a_change(developer):
    number = developer.folder / "waysaid" / "number"
    resting = developer.folder / "tests" / "test_sign.py"
    resting.write_text(f"from waysaid.number.expression import Sign\n{PROPERTY}", encoding="utf-8")
    developer.types("scripts/sweep.sh tests/test_twice.py tests/test_sign.py")

    def waited(more=""):
        said = developer.types(f"scripts/sweep.sh {more} tests/test_twice.py tests/test_sign.py")
        return [name for name in ("twice", "sign") if f"test_{name}.py: held" in said]

    assert waited() == []
    assert waited("--all") == ["twice", "sign"]
    (number / "sample.txt").write_text("read as it runs", encoding="utf-8")
    assert waited() == ["sign"]
    with (developer.folder / "tests" / "counts.py").open("a", encoding="utf-8") as counts:
        counts.write("# Changed.\n")
    assert waited() == ["twice", "sign"]


def test_the_commit_hooks_look_at_a_commit(developer):
    developer.types(next(each for each in CONTRIBUTING if "pre-commit" in each))
    developer.types("git commit -q -m one 2>&1")
    (developer.folder / "planted.toml").write_text("a = \n", encoding="utf-8")
    developer.types("git add planted.toml")
    assert "planted.toml does not parse" in developer.types("! git commit -q -m two 2>&1")
    assert developer.types("git log --format=%s") == "one\n"


@pytest.mark.skipif(
    not (program() and driver_runs() and binaries()),
    reason="something of the system is not here, and make setup would install it",
)
@pytest.mark.postgres
@pytest.mark.browser
def test_setting_up_leaves_alone_what_is_there(developer):
    """From nothing, `make test` sets up wherever it runs, as on CI."""
    folder = developer.folder
    shutil.copy2(ROOT / "scripts" / "setup.sh", folder / "scripts")
    (folder / ".venv").unlink()
    (folder / ".venv").mkdir()
    for name in ("bin", "lib", "pyvenv.cfg"):
        (folder / ".venv" / name).symlink_to(Path(sys.prefix) / name)
    locked = [folder / "pyproject.toml", folder / "requirements" / "dev.txt"]
    content = b"".join(path.read_bytes() for path in locked)
    stamp = f"dev {hashlib.sha256(content).hexdigest()}\n"
    (folder / ".venv" / "waysaid-lock").write_text(stamp, encoding="utf-8")
    developer.environment["PIP_DRY_RUN"] = "1"
    assert developer.types("make setup 2>&1") == ""
    assert (folder / ".venv" / "waysaid-lock").read_text(encoding="utf-8") == stamp


def without_uv(folder):
    """Return a folder with the programs that the script needs before it looks for uv."""
    folder.mkdir()
    for name in ("bash", "dirname", "env"):
        (folder / name).symlink_to(shutil.which(name))
    return folder


def test_writing_the_lock_files_without_uv_says_what_it_needs(developer, tmp_path):
    (command,) = (each for each in CONTRIBUTING if "lock.sh" in each)
    environment = {**developer.environment, "PATH": str(without_uv(tmp_path / "programs"))}
    ask = [str(developer.folder / command)]
    done = subprocess.run(ask, env=environment, capture_output=True, text=True, check=False)
    assert (done.returncode, done.stdout) == (1, "")
    assert done.stderr.startswith("Writing the lock files needs uv on the PATH")
    locks = sorted((ROOT / "requirements").glob("*.txt"))
    kept = [developer.folder / path.relative_to(ROOT) for path in locks]
    assert [path.read_bytes() for path in kept] == [path.read_bytes() for path in locks]


@pytest.mark.skipif(not shutil.which("uv"), reason="uv, which lock.sh needs, is not here")
def test_the_lock_files_are_written_with_hashes_and_without_an_address(developer):
    (command,) = (each for each in CONTRIBUTING if "lock.sh" in each)
    ask = ["uv", "pip", "compile", "-q", "-"]
    if subprocess.run(ask, input=b"iniconfig\n", capture_output=True, check=False).returncode:
        pytest.skip("uv finds no packages from this machine, and lock.sh asks it for them")
    locks = sorted((developer.folder / "requirements").glob("*.txt"))
    for path in locks:
        path.unlink()
    developer.types(command)
    assert len(locks) == 3
    for path in locks:
        text = path.read_text(encoding="utf-8")
        assert "--hash=sha256:" in text
        assert "://" not in text
