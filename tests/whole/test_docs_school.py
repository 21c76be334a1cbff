"""The school's guide, typed from its first command to its last, in the order in which they stand.

Its places are others here: folders of the test's own for `/opt/waysaid` and `/var/lib/waysaid`, a
server of the tests for PostgreSQL (which asks for no password), free ports, and `http` on this
machine for the school's own web server. No user of the system is made.
"""

import configparser
import re
import shutil
import subprocess

import pytest

from tests.postgres import binaries, free_port
from tests.site.server import begin
from tests.whole.house import ROOT
from tests.whole.reader import Reader
from tests.whole.typed import block_lines, commands_of

GUIDE = ROOT / "docs" / "how-to" / "school-server.md"
FIRST, ANEW = "a long enough pass phrase", "another pass phrase of hers"


def block(beginning):
    """Return the text of the guide's block that begins so: what a file is to hold."""
    (found,) = (lines for lines in block_lines(GUIDE) if lines[0].startswith(beginning))
    return "\n".join(found) + "\n"


SETTINGS, UNIT = block("WAYSAID_DATABASE_URL="), block("[Unit]")


@pytest.fixture(scope="module")
def school(postgres_server, checkout, tmp_path_factory):
    """The terminal at a school's server, beside the wheel, with PostgreSQL's own programs."""
    folder, home = tmp_path_factory.mktemp("school"), tmp_path_factory.mktemp("home")
    builder = Reader(checkout, home)
    builder.types("make wheel")
    (wheel,) = (checkout / "dist").glob("*.whl")
    shutil.copy2(wheel, folder)
    database = re.search(r"127\.0\.0\.1:(\d+)", postgres_server)
    port, tried = free_port(), free_port()
    places = {
        "/opt/waysaid": str(folder / "opt"),
        "/var/lib/waysaid": str(folder / "data"),
        "localhost": database[0],
        "https://talks.school.example": f"http://127.0.0.1:{port}",
        "--port 8765": f"--port {port}",
        "--port 8766": f"--port {tried}",
        "127.0.0.1:8766": f"127.0.0.1:{tried}",
    }
    school = Reader(folder, home, places)
    school.finds(binaries())
    school.environment |= {"PGHOST": "127.0.0.1", "PGPORT": database[1], "PGUSER": "postgres"}
    return school


def sign_in(server, password):
    """Return somebody who signed in as mira."""
    person = server.person()
    person.get("/login")
    assert person.send_form("/login", username="mira", password=password).status == 302
    return person


def set_up(school, steps):
    """Do what the guide says under "The server", and return how to start it."""
    school.types(next(steps), "secret", "secret")
    school.types(next(steps))
    school.types(next(steps))
    school.types(next(steps))
    (school.folder / "opt" / "settings.env").write_text(school.here(SETTINGS), encoding="utf-8")
    school.types(next(steps))
    return next(steps)


@pytest.mark.slow
@pytest.mark.postgres
def test_a_school_sets_up_dumps_tries_the_dump_and_goes_back_to_it(school):
    steps = iter(commands_of(GUIDE, {SETTINGS.splitlines()[0], UNIT.splitlines()[0]}))
    start = set_up(school, steps)
    with school.opens(start) as server:
        assert "mira can sign in now." in school.types(next(steps), FIRST, FIRST)
        sign_in(server, FIRST)
        school.types(next(steps), ANEW, ANEW)
        mira = sign_in(server, ANEW)
        kept = f"/talks/{begin(mira)['talk']}/desk.json"
        school.types(next(steps))
        later = mira.send_form("/start", problem="25 + 38").headers["Location"]
        assert mira.get(kept).status == mira.get(later).status == 200
        school.types(next(steps))
        beside = school.another()
        for _each in ("restore", "database", "address and folder"):
            beside.types(next(steps))
        with beside.opens(next(steps)) as second:
            mira = sign_in(second, ANEW)
            assert mira.get(kept).status == 200
            assert mira.get(later).status == 404
        school.types(next(steps))
    school.types(next(steps))
    with school.opens(start) as server:
        mira = sign_in(server, ANEW)
        assert mira.get(kept).status == 200
        assert mira.get(later).status == 404
    assert next(steps, None) is None


def test_the_unit_starts_what_is_installed_with_the_settings_that_are_written():
    """Parsed here; where systemd is, `systemd-analyze verify` looks at it too."""
    unit = configparser.ConfigParser()
    unit.optionxform = str
    unit.read_string(UNIT)
    assert unit["Service"]["ExecStart"] in commands_of(GUIDE, {UNIT.splitlines()[0]})
    assert f"`{unit['Service']['EnvironmentFile']}`" in GUIDE.read_text(encoding="utf-8")


@pytest.mark.skipif(not shutil.which("systemd-analyze"), reason="systemd is not on this machine")
def test_systemd_finds_no_fault_in_the_unit(tmp_path):
    program = tmp_path / "waysaid"
    program.write_text("#!/bin/sh\n", encoding="utf-8")
    program.chmod(0o755)
    here = UNIT.replace("/opt/waysaid/bin/waysaid", str(program)).replace("User=waysaid\n", "")
    (tmp_path / "waysaid.service").write_text(here, encoding="utf-8")
    look = ["systemd-analyze", "verify", "--man=no", str(tmp_path / "waysaid.service")]
    done = subprocess.run(look, capture_output=True, text=True, check=False)
    assert (done.returncode, done.stderr) == (0, "")
