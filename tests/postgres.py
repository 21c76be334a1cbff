"""A PostgreSQL server of the tests' own: a fresh cluster on a free port of this machine."""

import contextlib
import itertools
import os
import re
import shutil
import socket
import subprocess
import time
from collections.abc import Callable, Iterator
from pathlib import Path

import pytest

from tests.plain_user import as_nobody, folder_for, plain_argv

OWNER = "postgres"
SERVER_SETTINGS = {
    "listen_addresses": "127.0.0.1",
    "unix_socket_directories": "",
    "fsync": "off",
    "max_connections": "40",
    "shared_buffers": "32MB",
}


def binaries() -> Path | None:
    """Return the folder with the newest initdb and postgres, or None when there is none."""
    found = [path.parent for path in Path("/usr/lib/postgresql").glob("*/bin/initdb")]
    elsewhere = shutil.which("initdb")
    if not found and elsewhere:
        found = [Path(elsewhere).resolve().parent]
    newest = sorted(found, key=lambda folder: [int(n) for n in re.findall(r"\d+", str(folder))])
    return newest[-1] if newest else None


def missing(what: str) -> None:
    """Skip a test for want of a program; on CI, where none may be missing, fail it."""
    sentence = f"{what} is not on this machine; `make setup` installs it."
    if os.environ.get("CI"):
        pytest.fail(sentence)
    pytest.skip(sentence)


def free_port() -> int:
    """Return a port that was free on the loopback address a moment ago."""
    with socket.socket() as listener:
        listener.bind(("127.0.0.1", 0))
        return int(listener.getsockname()[1])


def answers(port: int) -> bool:
    """Tell whether something listens on a port of the loopback address."""
    with contextlib.suppress(OSError), socket.create_connection(("127.0.0.1", port), timeout=1):
        return True
    return False


def wait_until_up(server: "subprocess.Popen[bytes]", port: int, log: Path) -> None:
    """Return once the server answers; raise RuntimeError with its log when it never does."""
    for _ in range(600):
        if server.poll() is not None:
            break
        if answers(port):
            return
        time.sleep(0.05)
    server.kill()
    raise RuntimeError(f"PostgreSQL did not start:\n{log.read_text(errors='replace')}")


def make_cluster(bin_folder: Path, data: Path) -> None:
    """Make an empty cluster in `data`; raise RuntimeError with what initdb said."""
    command = [str(bin_folder / "initdb"), "-D", str(data), "-U", OWNER, "-A", "trust"]
    command += ["-E", "UTF8", "--locale=C.UTF-8", "--no-sync"]
    made = subprocess.run(as_nobody(command), capture_output=True, text=True, cwd="/", check=False)
    if made.returncode != 0:
        raise RuntimeError(f"initdb failed:\n{made.stdout}{made.stderr}")


@contextlib.contextmanager
def running_server() -> Iterator[str]:
    """Yield the address of a running server's first database; stop the server afterwards."""
    bin_folder = binaries()
    if bin_folder is None:
        missing("PostgreSQL")
        return
    with folder_for(as_nobody(["true"])) as folder:
        data, log, port = folder / "data", folder / "log", free_port()
        make_cluster(bin_folder, data)
        command = [str(bin_folder / "postgres"), "-D", str(data), "-p", str(port)]
        for name, value in SERVER_SETTINGS.items():
            command += ["-c", f"{name}={value}"]
        with log.open("wb") as said:
            server = subprocess.Popen(as_nobody(command), stdout=said, stderr=said, cwd="/")
        try:
            wait_until_up(server, port, log)
            yield f"postgresql://{OWNER}@127.0.0.1:{port}/postgres"
        finally:
            server.terminate()
            try:
                server.wait(timeout=10)
            except subprocess.TimeoutExpired:
                server.kill()
                server.wait()


@pytest.fixture(scope="session")
def postgres_server() -> Iterator[str]:
    """Return the address of a PostgreSQL server that lasts as long as the run."""
    with running_server() as address:
        yield address


@pytest.fixture(scope="session")
def new_database(postgres_server: str) -> Callable[[], str]:
    """Return a function that makes an empty database and returns its address."""
    import psycopg

    numbers = itertools.count(1)

    def make() -> str:
        name = f"waysaid_{next(numbers)}"
        with psycopg.connect(postgres_server, autocommit=True) as connection:
            connection.execute(f'CREATE DATABASE "{name}"')
        return postgres_server.rsplit("/", 1)[0] + f"/{name}"

    return make


@pytest.fixture(scope="session")
def postgres_url(new_database: Callable[[], str]) -> str:
    """Return the address of one database shared by the run."""
    return new_database()


@pytest.fixture
def fresh_postgres_url(new_database: Callable[[], str]) -> str:
    """Return the address of an empty database of this test's own."""
    return new_database()


@pytest.fixture
def plain_folder() -> Iterator[Path]:
    """Return an empty folder that belongs to the user `as_plain_user` runs commands as."""
    with folder_for(plain_argv(["true"])) as folder:
        yield folder
