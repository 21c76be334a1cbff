"""Where a teacher's data lives on this machine, and what the environment asks for."""

import contextlib
import hashlib
import os
import secrets
from pathlib import Path
from typing import Any
from urllib.parse import urlsplit
from zoneinfo import available_timezones

import dj_database_url
import platformdirs

APP = "waysaid"
KEY_FILE = "secret-key"
DATABASE_FILE = "waysaid.sqlite3"
KEEP_DAYS = "WAYSAID_KEEP_DAYS"
COPY_FILE = "copy.sqlite3"
BUSY_SECONDS = 10
"""How long a write waits for another to end (at least 5 is promised)."""


def switched_on(name: str) -> bool:
    """Tell whether an environment variable is set to something that means yes."""
    return os.environ.get(name, "").strip().lower() in {"1", "yes", "true", "on"}


def words_of(name: str) -> tuple[str, ...]:
    """Return the words of an environment variable, parted by commas or spaces."""
    return tuple(os.environ.get(name, "").replace(",", " ").split())


def data_folder() -> Path:
    """Return the folder of the data: `WAYSAID_DATA`, else the user's own data folder."""
    given = os.environ.get("WAYSAID_DATA")
    return Path(given).expanduser() if given else Path(platformdirs.user_data_dir(APP))


def secret_key(folder: Path) -> str:
    """Return this installation's secret, made on the first run and readable by its owner alone.

    Where the folder cannot be written, the secret lasts as long as this process: everyone is
    signed out when it ends, and nothing else is lost.
    """
    path = folder / KEY_FILE
    with contextlib.suppress(OSError):
        kept = path.read_text(encoding="ascii").strip()
        if len(kept) >= 50:
            return kept
    made = secrets.token_urlsafe(64)
    with contextlib.suppress(OSError):
        folder.mkdir(mode=0o700, parents=True, exist_ok=True)
        half = folder / f"{KEY_FILE}.{secrets.token_hex(4)}"
        descriptor = os.open(half, os.O_WRONLY | os.O_CREAT | os.O_EXCL, 0o600)
        with os.fdopen(descriptor, "w", encoding="ascii") as file:
            file.write(made)
        half.replace(path)
    return made


def cookie_mark(key: str) -> str:
    """Return a short name for this installation, so that two on one machine share no cookie."""
    return hashlib.sha256(f"cookie {key}".encode()).hexdigest()[:8]


def database(url: str, folder: Path) -> dict[str, Any]:
    """Return Django's settings for the database at `url`, or for SQLite in `folder` if empty."""
    if url:
        return {**dj_database_url.parse(url, conn_max_age=600, conn_health_checks=True)}
    pragmas = (
        "PRAGMA journal_mode=WAL;PRAGMA synchronous=FULL;PRAGMA foreign_keys=ON;"
        f"PRAGMA busy_timeout={BUSY_SECONDS * 1000}"
    )
    return {
        "ENGINE": "django.db.backends.sqlite3",
        "NAME": folder / DATABASE_FILE,
        "CONN_MAX_AGE": 600,
        "OPTIONS": {
            "transaction_mode": "IMMEDIATE",
            "timeout": BUSY_SECONDS,
            "init_command": pragmas,
        },
    }


def copy_database(folder: Path) -> dict[str, Any]:
    """Return Django's settings for a backup; which one is said as it is opened."""
    pragmas = "PRAGMA journal_mode=DELETE;PRAGMA foreign_keys=ON;PRAGMA secure_delete=ON"
    usual = database("", folder)
    options = {**usual["OPTIONS"], "init_command": pragmas}
    return {**usual, "NAME": folder / COPY_FILE, "CONN_MAX_AGE": 0, "OPTIONS": options}


def school_origins() -> tuple[str, ...]:
    """Return the addresses a server install answers to, from `WAYSAID_HOSTS`.

    Each is a host, with a port if it has one; https is meant unless it starts with http://.
    """
    return tuple(host if "://" in host else f"https://{host}" for host in words_of("WAYSAID_HOSTS"))


def is_school_server() -> bool:
    """Tell whether this is a server install, with accounts, and not one teacher's machine."""
    on_postgres = os.environ.get("WAYSAID_DATABASE_URL", "").startswith(("postgres", "pgsql"))
    return switched_on("WAYSAID_SERVER") or (on_postgres and bool(words_of("WAYSAID_HOSTS")))


def most_days() -> int | None:
    """Return the most days after a year's end that a school lets talks be kept, if it says so."""
    given = os.environ.get(KEEP_DAYS, "").strip()
    return int(given) if given.isascii() and given.isdigit() and len(given) < 5 else None


def time_zone() -> str:
    """Return the name of this machine's time zone, so that a talk falls on the teacher's day."""
    names = (os.environ.get("TZ", ""), str(Path("/etc/localtime").resolve()).split("zoneinfo/")[-1])
    return next((name for name in names if name in available_timezones()), "UTC")


def host_of(origin: str) -> str:
    """Return the Host header that a browser sends to this origin."""
    return urlsplit(origin).netloc.lower()
