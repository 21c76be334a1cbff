"""Whole copies of one teacher's data: to take along, and the backups this machine makes itself.

A backup is a file of the day's data that was opened and counted before it is called one. What is
erased for good is erased in the backups too, wherever they can be reached.
"""

import contextlib
import json
import os
import re
import shutil
import sqlite3
import tempfile
import threading
from dataclasses import dataclass
from datetime import date
from pathlib import Path

from django.conf import settings
from django.contrib.sessions.models import Session
from django.db import connection
from django.utils.translation import gettext as _

from waysaid.site import place
from waysaid.site.backup_days import to_keep
from waysaid.site.models import Child, DeviceKey, EventRow, Opening, Talk
from waysaid.site.people_models import Invitation

FOLDER = "backups"
INDEX = "index.json"
CHOICE = "choice.json"
NAMED = re.compile(r"waysaid-(\d{4}-\d\d-\d\d)(-before)?\.sqlite3")
AT_THE_SHELF = threading.RLock()
"""Held while backups are made or changed: none is copied before an erasure and put down after."""
COUNTED = {"talks": Talk, "children": Child, "events": EventRow}


class BadBackupError(ValueError):
    """Raised for a file that does not open as a whole copy; its text says what is wrong."""


class BadFolderError(ValueError):
    """Raised with one sentence for a folder that cannot take copies."""


@dataclass(frozen=True, slots=True)
class Backup:
    """A backup: its file, its day, and whether it was made before going back to another."""

    path: Path
    day: date
    before: bool = False

    @property
    def name(self) -> str:
        """The file's name, which is its name in a form."""
        return self.path.name


def can_copy() -> bool:
    """Tell whether the data is one file of this machine's: SQLite, and no school's server."""
    return connection.vendor == "sqlite" and not settings.SCHOOL_SERVER


def copy_of_data() -> bytes:
    """Return a consistent copy of the database, without sessions and one-time addresses."""
    with tempfile.TemporaryDirectory(prefix="waysaid-") as folder:
        path = Path(folder) / "copy.sqlite3"
        copy_to(path)
        return path.read_bytes()


def copy_to(path: Path) -> None:
    """Write a consistent copy of the database.

    What lets somebody in stays behind, so that a copy that is passed on opens no door.
    """
    with (
        contextlib.closing(sqlite3.connect(settings.DATABASES["default"]["NAME"])) as source,
        contextlib.closing(sqlite3.connect(path, isolation_level=None)) as copy,
    ):
        source.backup(copy)
        copy.execute("PRAGMA secure_delete=ON")
        for table in (Session, Opening, DeviceKey, Invitation):
            copy.execute(f"DELETE FROM {table._meta.db_table}")
        copy.execute("PRAGMA journal_mode=DELETE")
        copy.execute("VACUUM")


def counted(path: Path) -> dict[str, int]:
    """Open a copy, check the whole of it, and return how many rows it has of what matters.

    Raises `BadBackupError`.
    """
    try:
        with contextlib.closing(
            sqlite3.connect(f"{path.absolute().as_uri()}?mode=ro", uri=True)
        ) as copy:
            said = copy.execute("PRAGMA integrity_check").fetchone()[0]
            if said != "ok":
                raise BadBackupError(said)
            return {
                name: int(copy.execute(f"SELECT count(*) FROM {of._meta.db_table}").fetchone()[0])
                for name, of in COUNTED.items()
            }
    except sqlite3.Error as error:
        raise BadBackupError(str(error)) from None


def shelf() -> Path:
    """Return the folder of this machine's backups."""
    return Path(settings.DATA) / FOLDER


def backups(folder: Path | None = None) -> list[Backup]:
    """Return the backups in a folder (this machine's own), the newest first."""
    where = folder or shelf()
    found = []
    with contextlib.suppress(OSError):
        for path in where.iterdir():
            named = NAMED.fullmatch(path.name)
            if named:
                found.append(Backup(path, date.fromisoformat(named[1]), bool(named[2])))
    return sorted(found, key=lambda each: (each.day, not each.before), reverse=True)


def make_backup(today: date, *, before: bool = False) -> Backup:
    """Return today's backup, made anew and opened; those that need not stay go.

    Raises `BadBackupError` where the copy does not open, and OSError where it cannot be written.
    """
    with AT_THE_SHELF:
        return _made(today, before=before)


def _made(today: date, *, before: bool) -> Backup:
    shelf().mkdir(mode=0o700, parents=True, exist_ok=True)
    made = shelf() / f"waysaid-{today}{'-before' if before else ''}.sqlite3"
    half = made.with_suffix(".half")
    try:
        half.unlink(missing_ok=True)
        copy_to(half)
        counted(half)
        half.replace(made)
    finally:
        half.unlink(missing_ok=True)
    _tidy(shelf())
    write_index()
    where = copies_folder(choice().folder)
    if where is not None:
        with contextlib.suppress(OSError):
            _put_in(where, made)
    return Backup(made, today, before)


def _put_in(folder: Path, made: Path) -> None:
    folder.mkdir(mode=0o700, exist_ok=True)
    half = folder / f"{made.name}.half"
    try:
        shutil.copyfile(made, half)
        half.replace(folder / made.name)
    finally:
        half.unlink(missing_ok=True)
    _tidy(folder)


def copies_folder(chosen: str) -> Path | None:
    """Return where in a chosen folder this installation's copies are, apart from any other's."""
    mark = place.cookie_mark(settings.SECRET_KEY)
    return Path(chosen) / f"waysaid-{mark}" if chosen else None


def _tidy(folder: Path) -> None:
    """Let go what need not stay; of those made before going back, the newest stays."""
    there = backups(folder)
    stay = to_keep(each.day for each in there if not each.before)
    before = [each for each in there if each.before]
    for each in there:
        if each not in before[:1] and (each.before or each.day not in stay):
            each.path.unlink(missing_ok=True)


def write_index() -> None:
    """Write down what the backups hold, by numbers alone; each is opened for it."""
    rows = [{"file": each.name, **_counts(each)} for each in backups()]
    half = shelf() / f"{INDEX}.half"
    half.write_text(json.dumps(rows, indent=1), encoding="utf-8")
    half.replace(shelf() / INDEX)


def _counts(backup: Backup) -> dict[str, int | str]:
    try:
        return {**counted(backup.path), "opens": "yes"}
    except BadBackupError as error:
        return {"opens": f"no: {error}"}


def index() -> dict[str, dict[str, int | str]]:
    """Return what was counted in each backup, by its file's name."""
    try:
        rows = json.loads((shelf() / INDEX).read_text(encoding="utf-8"))
        return {str(row["file"]): row for row in rows}
    except (OSError, ValueError, TypeError, KeyError):
        return {}


@dataclass(frozen=True, slots=True)
class Choice:
    """What the teacher chose: whether backups are made, and a folder for copies of them.

    `past` are folders chosen before: copies may still be in them.
    """

    on: bool = True
    folder: str = ""
    past: tuple[str, ...] = ()


def choice() -> Choice:
    """Return what was chosen; on, and no folder, where nothing was."""
    try:
        given = json.loads((shelf() / CHOICE).read_text(encoding="utf-8"))
        past = tuple(str(each) for each in given.get("past", ()))
        return Choice(given["on"] is not False, str(given["folder"]), past)
    except (OSError, ValueError, TypeError, KeyError, AttributeError):
        return Choice()


def choose(wanted: Choice) -> None:
    """Keep a choice. Raises `BadFolderError` for a folder that copies cannot be put in."""
    if wanted.folder:
        folder = Path(wanted.folder)
        inside = folder.is_absolute() and folder.resolve().is_relative_to(
            Path(settings.DATA).resolve()
        )
        if not folder.is_absolute() or not folder.is_dir() or inside:
            raise BadFolderError(
                _(
                    "Give the whole path of a folder that is there, outside of Waysaid’s own, "
                    "such as one on a stick."
                )
            )
        if not os.access(folder, os.W_OK):
            raise BadFolderError(_("Waysaid may not write in this folder; choose another."))
    shelf().mkdir(mode=0o700, parents=True, exist_ok=True)
    known = choice()
    past = dict.fromkeys([*known.past, known.folder])
    kept = [each for each in past if each and each != wanted.folder]
    text = json.dumps({"on": wanted.on, "folder": wanted.folder, "past": kept})
    (shelf() / CHOICE).write_text(text, encoding="utf-8")


def every_folder() -> list[Path]:
    """Return the folders in which backups of this installation are and can be reached now."""
    known = choice()
    copies = [copies_folder(each) for each in (known.folder, *known.past)]
    return [each for each in (shelf(), *copies) if each is not None and each.is_dir()]


def out_of_reach() -> list[str]:
    """Return the folders chosen, now or before, that cannot be reached now."""
    known = choice()
    return [each for each in (known.folder, *known.past) if each and not Path(each).is_dir()]
