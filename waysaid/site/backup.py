"""A whole copy of one teacher's data, made while the app goes on."""

import contextlib
import sqlite3
import tempfile
from pathlib import Path

from django.conf import settings
from django.contrib.sessions.models import Session
from django.db import connection

from waysaid.site.models import DeviceKey, Opening


def can_copy() -> bool:
    """Tell whether the data is one file of this machine's: SQLite, and no school's server."""
    return connection.vendor == "sqlite" and not settings.SCHOOL_SERVER


def copy_of_data() -> bytes:
    """Return a consistent copy of the database, without sessions and one-time addresses.

    What lets somebody in stays behind, so that a copy that is passed on opens no door.
    """
    with tempfile.TemporaryDirectory(prefix="waysaid-") as folder:
        path = Path(folder) / "copy.sqlite3"
        with (
            contextlib.closing(sqlite3.connect(settings.DATABASES["default"]["NAME"])) as source,
            contextlib.closing(sqlite3.connect(path, isolation_level=None)) as copy,
        ):
            source.backup(copy)
            for table in (Session, Opening, DeviceKey):
                copy.execute(f"DELETE FROM {table._meta.db_table}")
            copy.execute("PRAGMA journal_mode=DELETE")
            copy.execute("VACUUM")
        return path.read_bytes()
