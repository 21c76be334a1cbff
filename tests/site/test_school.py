"""A school's server: accounts, signing in, one's own classes, and a limit on guesses."""

import os
import re
import subprocess
import sys

import pytest

from tests.postgres import free_port
from tests.site.server import Person, running

pytestmark = pytest.mark.slow

PASSWORD = "a long enough pass phrase"
ON_POSTGRES = os.environ.get("WAYSAID_TEST_DATABASE") == "postgres"
ADD = "import sys; from waysaid.site.launch import add_teacher; "
ADD += "sys.exit(add_teacher(sys.argv[1], password_from_input=True))"


def add(name, password, environment):
    """Make an account as whoever runs the server does."""
    return subprocess.run(
        [sys.executable, "-c", ADD, name],
        env=environment,
        input=password,
        capture_output=True,
        text=True,
        check=False,
    )


@pytest.fixture(scope="module")
def school(request, tmp_path_factory):
    port = free_port()
    address = request.getfixturevalue("new_database")() if ON_POSTGRES else ""
    environment = {
        "WAYSAID_DATA": str(tmp_path_factory.mktemp("data")),
        "WAYSAID_SERVER": "1",
        "WAYSAID_HOSTS": f"http://127.0.0.1:{port}",
        "WAYSAID_DATABASE_URL": address,
    }
    for name in ("owner", "colleague", "guessed"):
        made = add(name, PASSWORD, {**os.environ, **environment})
        assert made.returncode == 0, made.stderr
    server = running(environment, port=port)
    yield server
    server.kill()


def sign_in(server, name, password=PASSWORD):
    person = Person(server.port)
    person.get("/login")
    return person, person.send_form("/login", username=name, password=password)


def test_a_teacher_signs_in_and_sees_her_own_class_alone(school):
    owner, went = sign_in(school, "owner")
    assert went.status == 302
    owner.get("/welcome")
    assert owner.send_form("/welcome", name="2B", names="Bram", language="en").status == 302
    owner.get("/")
    talk = owner.send_form("/start", problem="39 + 27").headers["Location"]
    assert owner.get(talk).status == 200
    colleague, _went = sign_in(school, "colleague")
    assert colleague.get(talk).status == 404
    assert colleague.get("/").headers["Location"] == "/welcome"


def test_nobody_gets_in_without_signing_in(school):
    outsider = Person(school.port)
    assert outsider.get("/").headers["Location"].startswith("/login")
    assert outsider.get("/open/anything").status == 404
    _person, refused = sign_in(school, "owner", "wrong")
    assert refused.status == 200
    assert Person(school.port).get("/").status == 302


def test_guessing_is_slowed_down(school):
    for _ in range(10):
        sign_in(school, "guessed", "wrong")
    _person, refused = sign_in(school, "guessed")
    assert refused.status == 429
    _person, other = sign_in(school, "colleague")
    assert other.status == 302


def test_signing_out_ends_the_session(school):
    owner, _went = sign_in(school, "owner")
    owner.get("/welcome")
    assert owner.send_form("/logout").status == 302
    assert owner.get("/welcome").status == 302


def test_an_invitation_waits_for_her_to_sign_in(school):
    owner, _went = sign_in(school, "owner")
    owner.get("/welcome")
    owner.send_form("/welcome", name="Room 7", names="Bram", language="en")
    owner.get("/class/share")
    page = owner.send_form("/class/share", do="invite", account="colleague", part="visitor").text
    address = re.search(r'value="http://127[^"/]+(/invited/[^"]+)"', page)[1]
    outsider = Person(school.port)
    went = outsider.get(address)
    assert went.status == 302
    outsider.get(went.headers["Location"])
    back = outsider.send_form(
        "/login", username="colleague", password=PASSWORD, next=address
    ).headers["Location"]
    assert back == address
    assert "Room 7" in outsider.get(back).text
    assert outsider.send_form(back, do="accept").status == 302
    assert "Room 7" in outsider.get("/shared").text


@pytest.mark.parametrize(
    ("name", "password"),
    [("mira", "short"), ("mira", "password123"), ("", PASSWORD), ("a b", PASSWORD)],
)
def test_an_account_that_cannot_be_made_is_one_sentence(tmp_path, name, password):
    environment = {**os.environ, "WAYSAID_DATA": str(tmp_path)}
    refused = add(name, password, environment)
    assert refused.returncode == 2
    assert refused.stdout == ""
    assert len(refused.stderr.strip().splitlines()) == 1


def test_a_name_is_given_once(tmp_path):
    environment = {**os.environ, "WAYSAID_DATA": str(tmp_path)}
    assert add("mira", PASSWORD, environment).returncode == 0
    assert add("mira", PASSWORD, environment).returncode == 2
