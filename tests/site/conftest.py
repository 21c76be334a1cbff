"""The site in this process: its own data folder, a database for the run, a named cast."""

import atexit
import os
import shutil
import tempfile
from collections.abc import Callable, Iterator
from dataclasses import dataclass
from pathlib import Path

import pytest

_FOLDER = tempfile.mkdtemp(prefix="waysaid-site-")
atexit.register(shutil.rmtree, _FOLDER, ignore_errors=True)
os.environ["WAYSAID_DATA"] = _FOLDER
os.environ["DJANGO_SETTINGS_MODULE"] = "waysaid.site.settings"
for name in ("WAYSAID_DATABASE_URL", "WAYSAID_SERVER", "WAYSAID_HOSTS", "WAYSAID_DEBUG"):
    os.environ.pop(name, None)

import django  # noqa: E402

django.setup(set_prefix=False)

from django.conf import settings  # noqa: E402
from django.contrib.auth.models import User  # noqa: E402
from django.contrib.sessions.models import Session  # noqa: E402
from django.core.management import call_command  # noqa: E402
from django.db import connection, connections  # noqa: E402
from django.test import Client  # noqa: E402
from django.test.utils import setup_test_environment  # noqa: E402

from tests.site.made import make_class  # noqa: E402
from tests.site.server import Server, running  # noqa: E402
from waysaid.site import record  # noqa: E402
from waysaid.site.models import (  # noqa: E402
    DeviceKey,
    Opening,
    Role,
    SchoolClass,
    Talk,
    hashed,
)
from waysaid.site.pairing import PAIRING  # noqa: E402
from waysaid.site.place import database  # noqa: E402
from waysaid.site.talks import start_talk  # noqa: E402

ON_POSTGRES = os.environ.get("WAYSAID_TEST_DATABASE") == "postgres"
setup_test_environment(debug=False)


@pytest.fixture(scope="session")
def tables(request: pytest.FixtureRequest) -> None:
    """Make the tables, on SQLite or on the database that `WAYSAID_TEST_DATABASE` names."""
    if ON_POSTGRES:
        url = request.getfixturevalue("postgres_url")
        del connections["default"]
        chosen = connections.configure_settings({"default": database(url, Path(_FOLDER))})
        connections.settings = chosen
    call_command("migrate", interactive=False, verbosity=0)
    connection.close()


@pytest.fixture
def db(tables: None) -> Iterator[None]:
    """Let a test use the database; it is empty before and after."""
    yield
    for model in (User, Opening, Session):
        model.objects.all().delete()
    record.forget_all()
    PAIRING.__init__()  # type: ignore[misc]
    connections.close_all()


@dataclass
class Cast:
    """The owner of a class and its talk, a colleague with a class of her own, an outsider.

    The panel is a device that joined the talk as a board.
    """

    owner: Client
    colleague: Client
    outsider: Client
    panel: Client
    school_class: SchoolClass
    talk: Talk


@pytest.fixture
def cast(db: None) -> Cast:
    """Return the cast, with a talk on 39 + 27 that has just begun."""
    people = {}
    for name in ("owner", "colleague"):
        teacher = User.objects.create(username=name)
        people[name] = Client(raise_request_exception=False)
        people[name].force_login(teacher)
    school_class = make_class(User.objects.get(username="owner"))
    make_class(User.objects.get(username="colleague"), name="3A")
    talk = start_talk(school_class, problems=["39 + 27"])
    outsider, panel = (Client(raise_request_exception=False) for _ in range(2))
    DeviceKey.objects.create(talk=talk, role=Role.BOARD, key_hash=hashed("panel's key"))
    panel.cookies[settings.DEVICE_COOKIE_NAME] = "panel's key"
    return Cast(people["owner"], people["colleague"], outsider, panel, school_class, talk)


@pytest.fixture
def serve(request: pytest.FixtureRequest, tmp_path: Path) -> Iterator[Callable[..., Server]]:
    """Return a function that starts a real server in a folder of this test's own."""
    started: list[Server] = []

    def start(**environment: str) -> Server:
        chosen = {"WAYSAID_DATA": str(tmp_path / "data"), **environment}
        if ON_POSTGRES and "WAYSAID_DATABASE_URL" not in chosen:
            chosen["WAYSAID_DATABASE_URL"] = request.getfixturevalue("fresh_postgres_url")
        server = running(chosen)
        started.append(server)
        return server

    yield start
    for server in started:
        server.kill()


@pytest.fixture
def database_url(request: pytest.FixtureRequest) -> str:
    """Return the address of this test's own database; empty for SQLite."""
    return str(request.getfixturevalue("fresh_postgres_url")) if ON_POSTGRES else ""
