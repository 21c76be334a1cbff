"""Large, broken and endless requests: refused or taken, and the server goes on."""

import io
import socket

import pytest
from PIL import Image

from tests.site.made import answer, sent, way
from tests.site.server import begin

pytestmark = pytest.mark.slow

LINE = "\r\n"


@pytest.fixture
def room(serve):
    server = serve()
    teacher = server.teacher()
    return server, teacher, begin(teacher)


def raw(teacher, path, headers, body, read=True):
    """Send bytes as they are; return the first line of the answer."""
    head = [
        f"POST {path} HTTP/1.1",
        f"Host: 127.0.0.1:{teacher.port}",
        f"Origin: {teacher.origin}",
        f"Cookie: {teacher._cookie_line()}",
        f"X-CSRFToken: {teacher.token}",
        *headers,
    ]
    with socket.create_connection(("127.0.0.1", teacher.port), timeout=30) as connection:
        connection.sendall((LINE.join(head) + 2 * LINE).encode() + body)
        if not read:
            return ""
        return connection.recv(4096).decode(errors="replace").split(LINE)[0]


def still_there(teacher, desk):
    event = answer(desk["problems"][0]["id"], "66")
    return teacher.post(f"/talks/{desk['talk']}/events", sent(event)).status == 200


def form(teacher, content):
    mark = "boundary"
    parts = [
        (f'--{mark}{LINE}Content-Disposition: form-data; name="{name}"{LINE}{LINE}{value}{LINE}')
        for name, value in (("csrfmiddlewaretoken", teacher.token), ("kind", "background"))
    ]
    head = f'Content-Disposition: form-data; name="picture"; filename="a.png"{LINE}{LINE}'
    body = "".join(parts).encode() + f"--{mark}{LINE}{head}".encode() + content
    return f"multipart/form-data; boundary={mark}", body + f"{LINE}--{mark}--{LINE}".encode()


def noise(megabytes):
    """Return a picture of about this many megabytes, which nothing makes smaller."""
    import random

    side = int((megabytes * 1024 * 1024 / 3) ** 0.5)
    pixels = random.Random(1).randbytes(side * side * 3)
    written = io.BytesIO()
    Image.frombytes("RGB", (side, side), pixels).save(written, "PNG", compress_level=0)
    return written.getvalue()


def test_a_picture_of_almost_five_megabytes_goes_through(room):
    _server, teacher, desk = room
    kind, body = form(teacher, noise(4.9))
    assert teacher.ask("POST", "/class/picture", body, content_type=kind).status == 302
    assert still_there(teacher, desk)


def test_a_larger_one_is_refused(room):
    _server, teacher, desk = room
    kind, body = form(teacher, noise(5.5))
    assert teacher.ask("POST", "/class/picture", body, content_type=kind).status == 400
    first = raw(teacher, "/class/picture", ["Content-Length: 99999999"], b"")
    assert " 413 " in first
    assert still_there(teacher, desk)


def test_a_body_without_an_end_is_cut_off(room):
    _server, teacher, desk = room
    chunk = f"{1024 * 1024:x}".encode() + b"\r\n" + b"x" * 1024 * 1024 + b"\r\n"
    headers = ["Transfer-Encoding: chunked", "Content-Type: application/json"]
    path = f"/talks/{desk['talk']}/events"
    first = raw(teacher, path, headers, chunk * 8 + b"0\r\n\r\n")
    assert " 4" in first or first == ""
    assert still_there(teacher, desk)


def test_whoever_hangs_up_in_the_middle_saves_nothing(room):
    _server, teacher, desk = room
    path = f"/talks/{desk['talk']}/events"
    headers = ["Content-Type: application/json", "Content-Length: 5000"]
    for _ in range(10):
        raw(teacher, path, headers, b'{"client": "cut", "events": [', read=False)
    assert still_there(teacher, desk)
    state = teacher.get(f"/talks/{desk['talk']}/desk.json").json()
    assert "cut" not in state["saved_by"]


def test_a_delivery_of_a_whole_talk_goes_through(room):
    _server, teacher, desk = room
    problem = desk["problems"][0]["id"]
    events = [way(problem, None, number, words="w" * 1500) for number in range(200)]
    saved = teacher.post(f"/talks/{desk['talk']}/events", sent(*events))
    assert saved.status == 200
    assert len(saved.json()["saved"]) == 200


def test_a_delivery_larger_than_we_take_is_one_sentence(room):
    _server, teacher, desk = room
    given = {"client": "desk-1", "events": ["x" * 1024 * 1024 * 2]}
    refused = teacher.post(f"/talks/{desk['talk']}/events", given)
    assert refused.status == 413
    assert refused.json()["error"]
