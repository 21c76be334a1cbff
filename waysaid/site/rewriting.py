"""Open a backup as a database of its own: to change it, and to go back to it."""

import contextlib
import shutil
import sqlite3
import tempfile
import threading
from collections.abc import Callable, Iterator
from datetime import date
from pathlib import Path
from typing import Any

from django.conf import settings
from django.core.cache import cache
from django.core.management import call_command
from django.db import DatabaseError, connection, connections, transaction
from django.db.migrations.executor import MigrationExecutor

from waysaid.site.backups import (
    AT_THE_SHELF,
    Backup,
    BadBackupError,
    backups,
    can_copy,
    counted,
    every_folder,
    make_backup,
    out_of_reach,
    write_index,
)
from waysaid.site.hub import HUB
from waysaid.site.models import Talk
from waysaid.site.record import forget_all

COPY = "copy"
"""Django's name for the database of the backup that is open."""
_ONE_AT_A_TIME = threading.Lock()


def rewrite_backups(change: Callable[[str], Any]) -> list[str]:
    """Make a change in every backup that can be reached, given Django's name for its database.

    Each is changed as a copy, checked, and only then put in the old one's place. Return the names
    of those that still are as they were, and the chosen folder if it is out of reach.
    """
    if not can_copy():
        return []
    left = []
    with AT_THE_SHELF:
        for folder in every_folder():
            for backup in backups(folder):
                try:
                    _rewrite(backup.path, change)
                except (OSError, DatabaseError, BadBackupError):
                    left.append(str(backup.path))
        with contextlib.suppress(OSError):
            if backups():
                write_index()
    return left + out_of_reach()


def _rewrite(path: Path, change: Callable[[str], Any]) -> None:
    half = path.with_suffix(".half")
    try:
        shutil.copyfile(path, half)
        with contextlib.suppress(OSError):
            half.chmod(0o600)
        with opened(half) as alias:
            with transaction.atomic(using=alias):
                change(alias)
            with connections[alias].cursor() as cursor:
                cursor.execute("VACUUM")
        counted(half)
        half.replace(path)
    finally:
        half.unlink(missing_ok=True)
        Path(f"{half}-journal").unlink(missing_ok=True)


@contextlib.contextmanager
def opened(path: Path) -> Iterator[str]:
    """Give Django's name for a copy's database, brought up to date, for as long as it is used."""
    with _ONE_AT_A_TIME:
        connections.databases[COPY]["NAME"] = path
        try:
            executor = MigrationExecutor(connections[COPY])
            if executor.migration_plan(executor.loader.graph.leaf_nodes()):
                call_command("migrate", database=COPY, interactive=False, verbosity=0)
            yield COPY
        finally:
            connections[COPY].close()
            del connections[COPY]


def go_back_to(backup: Backup, today: date) -> None:
    """Put a backup in the place of the data, after a backup of how it is now.

    Ids given since stay given, so that none ever stands for another child in another backup.
    Everybody is signed out. Raises `BadBackupError`, and changes nothing, for one that does not
    open.
    """
    with AT_THE_SHELF:
        _go_back_to(backup, today)
    cache.clear()


def _go_back_to(backup: Backup, today: date) -> None:
    counted(backup.path)
    with tempfile.TemporaryDirectory(prefix="waysaid-", dir=settings.DATA) as folder:
        kept = Path(folder) / "kept.sqlite3"
        shutil.copyfile(backup.path, kept)
        make_backup(today, before=True)
        watched = list(Talk.objects.values_list("pk", flat=True))
        given = _given()
        connection.close()
        with (
            contextlib.closing(sqlite3.connect(kept)) as source,
            contextlib.closing(sqlite3.connect(_file(), timeout=10)) as live,
        ):
            source.backup(live)
    call_command("migrate", interactive=False, verbosity=0)
    with connection.cursor() as cursor:
        for table, last in given:
            cursor.execute(
                "UPDATE sqlite_sequence SET seq = max(seq, %s) WHERE name = %s", [last, table]
            )
            cursor.execute(
                "INSERT INTO sqlite_sequence (name, seq) SELECT %s, %s "
                "WHERE NOT EXISTS (SELECT 1 FROM sqlite_sequence WHERE name = %s)",
                [table, last, table],
            )
    forget_all()
    for talk in watched:
        HUB.empty(talk)


def _given() -> list[tuple[str, int]]:
    """Return the highest id that each table gave."""
    with connection.cursor() as cursor:
        cursor.execute("SELECT name, seq FROM sqlite_sequence")
        return list(cursor.fetchall())


def _file() -> Path:
    return Path(settings.DATABASES["default"]["NAME"])
