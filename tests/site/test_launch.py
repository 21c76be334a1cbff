"""Starting: one address, another port when one is taken, a plain sentence when it cannot be."""

import asyncio
import os
import socket
import subprocess
import sys
from pathlib import Path

import pytest

from tests.plain_user import plain_argv
from tests.site.server import START, running
from waysaid.site import launch, network

pytestmark = pytest.mark.slow

ROOT = Path(__file__).parents[2]


def start(folder, how, plain=False, **environment):
    """Run a start that ends by itself."""
    argv = [sys.executable, "-c", START.format(how=f"open_browser=False{how}")]
    usual = {"WAYSAID_DATA": str(folder), "PYTHONPATH": str(ROOT), "PYTHONDONTWRITEBYTECODE": "1"}
    return subprocess.run(
        plain_argv(argv) if plain else argv,
        env={**os.environ, **usual, **environment},
        capture_output=True,
        text=True,
        timeout=120,
        check=False,
        cwd="/",
    )


def test_a_second_start_opens_the_server_that_runs(tmp_path):
    first = running({"WAYSAID_DATA": str(tmp_path)})
    try:
        second = start(tmp_path, "")
        assert second.returncode == 0
        assert "running already" in second.stdout
        assert f"http://127.0.0.1:{first.port}/open/" in second.stdout
        path = second.stdout.strip().rsplit(str(first.port), 1)[1]
        assert first.person().get(path).status == 302
    finally:
        first.kill()


def test_a_server_that_was_killed_is_not_taken_for_a_running_one(tmp_path):
    running({"WAYSAID_DATA": str(tmp_path)}).kill()
    assert (tmp_path / "running.json").exists()
    again = running({"WAYSAID_DATA": str(tmp_path)})
    assert "ready" in again.said
    again.kill()


def test_a_server_that_was_stopped_leaves_no_mark(tmp_path):
    server = running({"WAYSAID_DATA": str(tmp_path)})
    assert server.stop() == 0
    server.kill()
    assert not (tmp_path / "running.json").exists()


def test_a_port_that_another_program_has_is_one_sentence(tmp_path):
    with socket.socket() as taken:
        taken.bind(("127.0.0.1", 0))
        taken.listen()
        said = start(tmp_path, f", port={taken.getsockname()[1]}")
    assert said.returncode == 2
    assert said.stdout == ""
    assert said.stderr.count("\n") == 1
    assert "--port" in said.stderr


def test_a_folder_that_may_not_be_written_is_one_sentence(plain_folder):
    closed = plain_folder / "closed"
    closed.mkdir(mode=0o500)
    closed.chmod(0o555)
    said = start(closed / "data", "", plain=True, HOME=str(plain_folder))
    assert said.returncode == 2
    assert said.stderr.count("\n") == 1
    assert "WAYSAID_DATA" in said.stderr


def test_the_data_folder_is_its_owners_alone(tmp_path):
    folder = tmp_path / "data"
    server = running({"WAYSAID_DATA": str(folder)})
    try:
        assert folder.stat().st_mode & 0o077 == 0
        for path in folder.iterdir():
            assert path.stat().st_mode & 0o077 == 0, path.name
    finally:
        server.kill()


def test_no_answer_waits_for_a_receipt_of_its_beginning(monkeypatch):
    async def accepted(listener):
        delays = asyncio.get_running_loop().create_future()

        def came(_reader, writer):
            chosen = writer.get_extra_info("socket")
            delays.set_result(chosen.getsockopt(socket.IPPROTO_TCP, socket.TCP_NODELAY))
            writer.close()

        async with await asyncio.start_server(came, sock=listener):
            _, writer = await asyncio.open_connection(*listener.getsockname())
            writer.close()
            return await delays

    monkeypatch.setattr(network, "own_network_address", lambda: "127.0.0.1")
    for listener in (launch._listen(0, exact=False), network._listener(0)):
        assert asyncio.run(accepted(listener)) != 0


def test_the_database_is_set_for_safety_over_speed(tmp_path):
    from django.db import connection

    if connection.vendor != "sqlite":
        pytest.skip("about SQLite's own settings")
    read = {}
    with connection.cursor() as cursor:
        for name in ("journal_mode", "synchronous", "foreign_keys", "busy_timeout"):
            cursor.execute(f"PRAGMA {name}")
            read[name] = cursor.fetchone()[0]
    connection.close()
    assert read["journal_mode"] == "wal"
    assert read["synchronous"] == 2
    assert read["foreign_keys"] == 1
    assert read["busy_timeout"] >= 5000
    assert connection.transaction_mode == "IMMEDIATE"


@pytest.mark.parametrize("days", ["sixty", "-1"])
def test_a_limit_that_cannot_be_read_is_one_sentence_and_nothing_starts(tmp_path, days):
    said = start(tmp_path, "", WAYSAID_KEEP_DAYS=days)
    assert said.returncode == 2
    assert said.stdout == ""
    assert said.stderr.count("\n") == 1
    assert "takes a whole number of days" in said.stderr
