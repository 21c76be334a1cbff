"""A real server of the tests' own, and a person with a browser's manners."""

import http.client
import json
import os
import re
import signal
import subprocess
import sys
import threading
from collections.abc import Iterator
from http.cookies import SimpleCookie
from typing import Any
from urllib.parse import urlencode, urlsplit

from tests.postgres import free_port

START = "import sys; from waysaid.site.launch import launch; sys.exit(launch({how}))"
HANG_SECONDS = 60
"""How long a test waits for what never comes; not a measure of anything."""


class Server:
    """A server process, its one address, and its port."""

    def __init__(self, process: "subprocess.Popen[str]", port: int, said: str) -> None:
        self.process = process
        self.port = port
        self.said = said
        found = re.search(r"https?://\S+", said)
        self.address = found[0] if found else ""
        self.people: list[Person] = []
        self.cookies: dict[str, str] = {}

    def kill(self) -> None:
        """End it at once, as a power cut does."""
        self.process.kill()
        self.process.wait(HANG_SECONDS)
        for person in self.people:
            person.leave()
        if self.process.stdout is not None:
            self.process.stdout.close()

    def stop(self) -> int:
        """Ask it to end, and return its exit status."""
        self.process.send_signal(signal.SIGTERM)
        return self.process.wait(HANG_SECONDS)

    def person(self, host: str = "127.0.0.1", port: int = 0) -> "Person":
        """Return somebody with a browser of her own."""
        person = Person(port or self.port, host)
        self.people.append(person)
        return person

    def teacher(self) -> "Person":
        """Return the person who opened the one-time address; the same one again, if asked again."""
        person = self.person()
        if self.cookies:
            person.cookies = dict(self.cookies)
            return person
        path = urlsplit(self.address).path
        got = person.get(path)
        assert got.status == 302, got.text
        self.cookies = dict(person.cookies)
        return person


def running(environment: dict[str, str], how: str = "open_browser=False", port: int = 0) -> Server:
    """Return a server that has printed its address; raise AssertionError with what it said."""
    port = port or free_port()
    inherited = {key: value for key, value in os.environ.items() if key != "WAYSAID_DATABASE_URL"}
    argv = [sys.executable, "-c", START.format(how=f"port={port}, {how}")]
    return started(argv, {**inherited, **environment}, port)


def started(argv: list[str], environment: dict[str, str], port: int = 0, **options: Any) -> Server:
    """Return the server that a command starts, once it has printed its address.

    Without a port it is the address's; `options` go to subprocess.Popen. Raises AssertionError with
    what the command said.
    """
    process = subprocess.Popen(
        argv,
        env={"PYTHONUNBUFFERED": "1", **environment},
        stdout=subprocess.PIPE,
        stderr=subprocess.STDOUT,
        text=True,
        **options,
    )
    assert process.stdout is not None
    said = ""
    for line in process.stdout:
        said += line
        if "ready:" in line:
            threading.Thread(target=_drain, args=(process,), daemon=True).start()
            return Server(process, port or int(re.findall(r":(\d+)/", line)[-1]), said)
    process.wait(HANG_SECONDS)
    raise AssertionError(f"The server did not start:\n{said}")


def _drain(process: "subprocess.Popen[str]") -> None:
    """Read what a server says, so that it never waits for room to say it."""
    try:
        for _line in process.stdout or ():
            pass
    except ValueError:
        pass


class Answer:
    """What came back."""

    def __init__(self, response: http.client.HTTPResponse) -> None:
        self.status = response.status
        self.headers = response.headers
        self.text = response.read().decode()

    def json(self) -> Any:
        """Return the answer read as JSON."""
        return json.loads(self.text)


class Person:
    """Somebody with cookies, who sends the Host and the Origin that a browser would."""

    def __init__(self, port: int, host: str = "127.0.0.1") -> None:
        self.port, self.host = port, host
        self.cookies: dict[str, str] = {}
        self.token = ""
        self.streams: list[Stream] = []

    @property
    def origin(self) -> str:
        """The origin of this person's pages."""
        return f"http://{self.host}:{self.port}"

    def ask(
        self, method: str, path: str, body: bytes | None = None, **headers: str | None
    ) -> Answer:
        """Send a request; a header given as None is left out (`content_type` for a dash)."""
        usual = {"Cookie": self._cookie_line(), "X-CSRFToken": self.token}
        if method == "POST":
            usual["Origin"] = self.origin
        changed = {name.replace("_", "-").title(): value for name, value in headers.items()}
        every = {key: value for key, value in {**usual, **changed}.items() if value is not None}
        connection = http.client.HTTPConnection(self.host, self.port, timeout=HANG_SECONDS)
        try:
            connection.request(method, path, body, every)
            response = connection.getresponse()
            self._keep(response)
            return Answer(response)
        finally:
            connection.close()

    def get(self, path: str, **headers: str | None) -> Answer:
        """Ask for a page, and keep the mark its forms carry."""
        answer = self.ask("GET", path, **headers)
        found = re.search(
            r'csrfmiddlewaretoken" value="(\w+)"|name="csrf" content="(\w+)"', answer.text
        )
        if found:
            self.token = found[1] or found[2]
        return answer

    def post(self, path: str, given: Any, **headers: str | None) -> Answer:
        """Send JSON."""
        body = json.dumps(given).encode()
        return self.ask("POST", path, body, **{"content_type": "application/json", **headers})

    def send_form(self, path: str, **given: str) -> Answer:
        """Send a form, with the mark of the page it was on."""
        body = urlencode({"csrfmiddlewaretoken": self.token, **given}).encode()
        return self.ask("POST", path, body, content_type="application/x-www-form-urlencoded")

    def watch(self, path: str) -> "Stream":
        """Open a live stream."""
        stream = Stream(self, path)
        self.streams.append(stream)
        return stream

    def leave(self) -> None:
        """Close every stream."""
        for stream in self.streams:
            stream.close()

    def _cookie_line(self) -> str:
        return "; ".join(f"{name}={value}" for name, value in self.cookies.items())

    def _keep(self, response: http.client.HTTPResponse) -> None:
        for line in response.headers.get_all("Set-Cookie") or ():
            for name, morsel in SimpleCookie(line).items():
                self.cookies[name] = morsel.value


class Stream:
    """An open live stream."""

    def __init__(self, person: Person, path: str) -> None:
        self.connection = http.client.HTTPConnection(person.host, person.port, timeout=HANG_SECONDS)
        headers = {"Cookie": person._cookie_line(), "Accept": "text/event-stream"}
        self.connection.request("GET", path, headers=headers)
        self.response = self.connection.getresponse()

    @property
    def status(self) -> int:
        """The answer's status."""
        return self.response.status

    def states(self) -> Iterator[Any]:
        """Yield each state as it comes; end when the stream ends."""
        while line := self.response.readline():
            if line.startswith(b"data: {"):
                yield json.loads(line[6:])

    def until(self, order: int) -> Any:
        """Return the first state at this order or later; raise if the stream ends before."""
        for state in self.states():
            if state["order"] >= order:
                return state
        raise AssertionError(f"The stream ended before order {order}.")

    def close(self) -> None:
        """Leave."""
        self.response.close()
        self.connection.close()


def begin(person: Person, problem: str = "39 + 27", names: str = "Bram\nElif\nOdd") -> Any:
    """Make a class and start a talk as a teacher would; return the desk's payload."""
    person.get("/welcome")
    made = person.send_form("/welcome", name="2B", names=names, language="en")
    assert made.status == 302, made.text
    person.get("/")
    started = person.send_form("/start", problem=problem)
    assert started.status == 302, started.text
    talk = started.headers["Location"].split("/")[2]
    desk = person.get(f"/talks/{talk}/desk.json").json()
    return {**desk, "talk": talk}
