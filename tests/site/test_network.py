"""The school network's door: open for one talk while the teacher wants it, and for little."""

import time

import pytest

from tests.site.made import answer, sent
from tests.site.server import begin, running

pytestmark = pytest.mark.slow

ELSEWHERE = "127.0.0.2"
"""An address of this machine that stands for the one on the school network."""


@pytest.fixture(scope="module")
def school(tmp_path_factory):
    folder = str(tmp_path_factory.mktemp("data"))
    server = running({"WAYSAID_DATA": folder, "WAYSAID_LAN_ADDRESS": ELSEWHERE})
    yield server
    server.kill()


def shut(tablet):
    """Tell whether the door is shut, or soon is."""
    for _ in range(200):
        try:
            tablet.get("/join")
        except OSError:
            return True
        time.sleep(0.01)
    return False


class Room:
    """A teacher with a talk, and the door to it."""

    def __init__(self, server):
        self.server = server
        self.teacher = server.teacher()
        self.desk = begin(self.teacher)
        self.talk = self.desk["talk"]

    def switch(self, *, on):
        return self.teacher.post(f"/talks/{self.talk}/network", {"on": on})

    def code(self, role, **given):
        return self.teacher.post(f"/talks/{self.talk}/pairing", {"role": role, **given}).json()[
            "code"
        ]

    def device(self):
        """Return somebody with a tablet at the door's address."""
        address = self.switch(on=True).json()["address"]
        assert address.startswith(f"http://{ELSEWHERE}:")
        assert address.endswith("/join")
        port = int(address.split(":")[2].removesuffix("/join"))
        return self.server.person(ELSEWHERE, port)

    def joined(self, role, **given):
        tablet = self.device()
        tablet.get("/join")
        went = tablet.send_form("/join", code=self.code(role, **given))
        assert went.status == 302, went.text
        return tablet, went.headers["Location"]


@pytest.fixture
def room(school):
    made = Room(school)
    yield made
    made.switch(on=False)


def test_nothing_listens_until_the_teacher_switches_it_on_and_after_she_switches_it_off(room):
    stranger = room.server.person(ELSEWHERE)
    with pytest.raises(ConnectionRefusedError):
        stranger.get("/join")
    tablet = room.device()
    assert tablet.get("/join").status == 200
    assert room.switch(on=False).json()["on"] is False
    assert shut(tablet)


def test_a_tablet_joins_as_a_desk_and_records(room):
    tablet, place = room.joined("desk")
    assert place == f"/talks/{room.talk}/desk"
    page = tablet.get(place)
    assert page.status == 200
    event = answer(room.desk["problems"][0]["id"], "66")
    saved = tablet.post(f"/talks/{room.talk}/events", sent(event, client="tablet"))
    assert saved.status == 200
    theirs = tablet.get(f"/talks/{room.talk}/desk.json").json()
    assert theirs["board_token"] is None
    assert theirs["one_token"] is None
    assert theirs["network"]["code"] is None
    mine = room.teacher.get(f"/talks/{room.talk}/desk.json").json()
    assert theirs["answers"] == mine["answers"] != []


def test_a_substitutes_desk_tells_nothing_of_before(room):
    tablet, _place = room.joined("desk", history=False)
    theirs = tablet.get(f"/talks/{room.talk}/desk.json").json()
    assert theirs["history"] is False
    assert all("lately" not in child for child in theirs["roster"])
    assert theirs["private"]["not_heard"] == []
    assert theirs["think"]["usual"] is None


def test_a_tablet_joins_as_a_board_and_is_no_desk(room):
    tablet, place = room.joined("board")
    assert place == f"/board/{room.desk['board_token']}"
    assert tablet.get(place).status == 200
    assert tablet.watch(f"/live{place}").until(room.desk["order"])["problem"]
    for path in (f"/talks/{room.talk}/desk", f"/talks/{room.talk}/desk.json",
                 f"/live/desk/{room.talk}", f"/one/{room.desk['one_token']}",
                 "/", "/class", "/welcome", f"/talks/{room.talk}/network"):  # fmt: skip
        assert tablet.get(path).status == 404, path


def test_whoever_reads_the_boards_address_off_a_screen_does_not_get_in(room):
    tablet = room.device()
    for path in (f"/board/{room.desk['board_token']}", f"/live/board/{room.desk['board_token']}",
                 f"/one/{room.desk['one_token']}", f"/talks/{room.talk}/desk"):  # fmt: skip
        assert tablet.get(path).status == 404, path


def test_the_teachers_own_session_counts_for_nothing_at_this_door(room):
    tablet = room.device()
    tablet.cookies.update(room.teacher.cookies)
    assert tablet.get(f"/talks/{room.talk}/desk").status == 404
    assert tablet.get("/").status == 404


def test_switching_off_ends_the_devices_keys_and_streams(room):
    tablet, _place = room.joined("desk")
    stream = tablet.watch(f"/live/desk/{room.talk}")
    stream.until(room.desk["order"])
    room.switch(on=False)
    assert list(stream.states()) == []
    again = room.device()
    again.cookies = tablet.cookies
    assert again.get(f"/talks/{room.talk}/desk").status == 404


def test_the_app_ends_when_it_is_asked_to_with_the_door_open(serve):
    room = Room(serve(WAYSAID_LAN_ADDRESS=ELSEWHERE))
    tablet, _place = room.joined("desk")
    stream = tablet.watch(f"/live/desk/{room.talk}")
    stream.until(room.desk["order"])
    assert room.server.stop() == 0
    assert list(stream.states()) == []


def test_an_address_that_is_not_this_machines_is_one_sentence(serve):
    elsewhere = Room(serve(WAYSAID_LAN_ADDRESS="192.0.2.200"))
    refused = elsewhere.switch(on=True)
    assert refused.status == 409
    assert "192.0.2.200" in refused.json()["error"]


def test_the_door_shuts_when_the_talk_is_over(room):
    tablet = room.device()
    closed = sent({"sequence": 0, "kind": "closed"})
    room.teacher.post(f"/talks/{room.talk}/events", closed)
    assert shut(tablet)


def test_five_wrong_codes_end_the_code(room):
    tablet = room.device()
    tablet.get("/join")
    code = room.code("desk")
    wrong = f"{(int(code) + 1) % 1_000_000:06d}"
    for _ in range(5):
        assert tablet.post("/join", {"code": wrong}).status == 403
    assert tablet.post("/join", {"code": code}).status == 403


def test_a_code_is_good_once(room):
    tablet = room.device()
    tablet.get("/join")
    code = room.code("board")
    first = tablet.post("/join", {"code": code})
    assert first.json() == {"go": f"/board/{room.desk['board_token']}"}
    assert tablet.post("/join", {"code": code}).status == 403


def test_no_code_is_given_while_the_network_is_off(room):
    refused = room.teacher.post(f"/talks/{room.talk}/pairing", {"role": "desk"})
    assert refused.status == 409
    assert "network" in refused.json()["error"]


def test_the_door_is_for_one_talk_at_a_time(room):
    first = room.device()
    room.teacher.get("/")
    other = begin(room.teacher)
    answered = room.teacher.post(f"/talks/{other['talk']}/network", {"on": True}).json()
    assert answered["on"] is True
    assert room.teacher.get(f"/talks/{room.talk}/desk.json").json()["network"]["on"] is False
    moved = room.server.person(ELSEWHERE, int(answered["address"].split(":")[2].split("/")[0]))
    moved.cookies = first.cookies
    assert moved.get(f"/talks/{room.talk}/desk").status == 404


@pytest.mark.parametrize("given", [{}, {"on": "yes"}, {"on": 1}, {"on": None}])
def test_a_switch_is_on_or_off(room, given):
    assert room.teacher.post(f"/talks/{room.talk}/network", given).status == 400
