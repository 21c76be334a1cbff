"""Live streams: beside Django, without a thread each, and gone when the server stops."""

import asyncio
from pathlib import Path

import pytest

from tests.counts import count
from tests.site.made import answer, sent
from tests.site.server import begin, running
from waysaid.site import live
from waysaid.site.hub import LONGEST_QUEUE, Frame, Hub, Looking, Room

pytestmark = pytest.mark.slow

ROOM = Room(1, Looking.BOARD)


def threads_of(pid):
    status = Path(f"/proc/{pid}/status").read_text(encoding="ascii")
    return int(next(line.split()[1] for line in status.splitlines() if line.startswith("Threads")))


def test_an_open_stream_holds_no_thread(serve):
    server = serve()
    teacher = server.teacher()
    desk = begin(teacher)
    first = teacher.watch(f"/live/board/{desk['board_token']}")
    first.until(desk["order"])
    for _ in range(8):
        teacher.get(f"/talks/{desk['talk']}/desk.json")
    before = threads_of(server.process.pid)
    many = [
        teacher.watch(f"/live/board/{desk['board_token']}")
        for _ in range(count(test=100, sweep=400))
    ]
    for stream in many:
        stream.until(desk["order"])
    assert threads_of(server.process.pid) <= before + 8
    event = answer(desk["problems"][0]["id"], "66")
    saved = teacher.post(f"/talks/{desk['talk']}/events", sent(event)).json()
    for stream in many:
        assert stream.until(saved["order"])["answers"] == [{"text": "66", "names": []}]


def test_a_server_with_open_streams_ends_when_it_is_asked_to(serve):
    server = serve()
    teacher = server.teacher()
    desk = begin(teacher)
    streams = [
        teacher.watch(f"/live/{where}")
        for where in (f"desk/{desk['talk']}", f"board/{desk['board_token']}")
    ]
    for stream in streams:
        stream.until(desk["order"])
    assert server.stop() == 0
    for stream in streams:
        assert list(stream.states()) == []


def test_a_quiet_stream_pings_as_an_event_that_a_page_can_hear(monkeypatch):
    monkeypatch.setattr(live, "PING_SECONDS", 0.01)
    sent = []

    async def work(hub):
        watcher = hub.join(ROOM)
        hung_up = asyncio.Event()

        async def receive():
            await hung_up.wait()
            return {"type": "http.disconnect"}

        async def send(message):
            sent.append(message.get("body", b""))
            if len(sent) > 4:
                hung_up.set()

        await live._stream(watcher, Frame(1, b"first"), receive, send)

    in_a_loop(work)
    assert sent[1] == live.HELLO + b"first"
    assert sent[2:5] == [live.PING] * 3
    assert live.PING.startswith(b"event: ping\ndata: ")


def test_a_frame_older_than_the_first_state_is_left_out():
    sent = []

    async def work(hub):
        watcher = hub.join(ROOM)

        async def receive():
            await asyncio.Event().wait()

        async def send(message):
            sent.append(message.get("body", b""))

        for version in (4, 5, 6):
            watcher.queue.put_nowait(Frame(version, b"%d" % version))
        watcher.queue.put_nowait(None)
        await live._stream(watcher, Frame(5, b"first"), receive, send)

    in_a_loop(work)
    assert sent == [b"", live.HELLO + b"first", b"6", b""]


def test_a_stream_is_only_for_whoever_may_look(serve):
    server = serve()
    desk = begin(server.teacher())
    stranger = server.person()
    for path in (
        f"/live/desk/{desk['talk']}",
        f"/live/desk/{desk['board_token']}",
        f"/live/one/{desk['board_token']}",
        f"/live/board/{desk['one_token']}",
        f"/live/board/{desk['board_token']}/more",
        "/live/board/",
        "/live/",
        "/live/desk/99999999999999999999",
    ):
        assert stranger.ask("GET", path).status == 404, path
    assert stranger.watch(f"/live/board/{desk['board_token']}").status == 200


@pytest.mark.parametrize("wide", ["", "0", "-1", "x", "99999999", "%EF%BC%91", "1778"])
def test_any_width_gives_a_board(serve_once, wide):
    server, desk = serve_once
    stream = server.person().watch(f"/live/board/{desk['board_token']}?wide={wide}")
    assert stream.until(desk["order"])["layout"]


@pytest.fixture(scope="module")
def serve_once(tmp_path_factory):
    server = running({"WAYSAID_DATA": str(tmp_path_factory.mktemp("data"))})
    yield server, begin(server.teacher())
    server.kill()


def in_a_loop(work):
    async def run():
        hub = Hub()
        hub.open(asyncio.get_running_loop())
        await work(hub)

    asyncio.run(run())


def test_a_reader_that_falls_behind_is_dropped_and_the_others_are_not():
    async def work(hub):
        slow, quick = hub.join(ROOM), hub.join(ROOM)
        for number in range(LONGEST_QUEUE + 1):
            hub.send(ROOM, Frame(number, b"x"))
            await asyncio.sleep(0)
            assert (await quick.queue.get()).version == number
        assert slow.over
        assert await slow.queue.get() is None
        assert slow.queue.empty()
        assert hub.watchers() == 1

    in_a_loop(work)


def test_whoever_joins_a_hub_that_is_closing_is_told_at_once():
    async def work(hub):
        early = hub.join(ROOM)
        hub.close()
        await asyncio.sleep(0)
        late = hub.join(ROOM)
        assert await early.queue.get() is None
        assert await late.queue.get() is None
        assert hub.watchers() == 0

    in_a_loop(work)


def test_shutting_the_networks_door_ends_only_the_devices_streams():
    async def work(hub):
        owner = hub.join(Room(1, Looking.DESK, owner=True))
        device = hub.join(Room(1, Looking.DESK, owner=False))
        other = hub.join(Room(2, Looking.DESK, owner=False))
        hub.empty(1, devices_only=True)
        await asyncio.sleep(0)
        assert (owner.over, device.over, other.over) == (False, True, False)

    in_a_loop(work)
