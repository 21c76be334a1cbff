"""Commands run without root's right to pass over file permissions.

A test that needs a folder nobody may write to, or a server that refuses to run as root, uses these
also when the whole run is root's, as in a container.
"""

import contextlib
import os
import pwd
import shutil
import subprocess
import sys
import tempfile
from collections.abc import Iterator, Sequence
from pathlib import Path
from typing import Any

PLAIN = "nobody"


def is_root() -> bool:
    """Tell whether this process runs as root."""
    return os.geteuid() == 0


def reachable(path: Path) -> bool:
    """Tell whether any user may reach a file: every folder above it may be passed through."""
    return all(parent.stat().st_mode & 0o001 for parent in path.resolve().parents)


def as_nobody(argv: Sequence[str]) -> list[str]:
    """Return the command that runs `argv` as the user nobody (as it is when not root)."""
    if not is_root():
        return list(argv)
    group = pwd.getpwnam(PLAIN).pw_gid
    drop = ["setpriv", f"--reuid={PLAIN}", f"--regid={group}", "--clear-groups"]
    return [*drop, "--inh-caps=-all", "--bounding-set=-all", "--", *argv]


def plain_argv(argv: Sequence[str]) -> list[str]:
    """Return the command that runs `argv` bound by file permissions like anyone.

    As root it becomes nobody. Where nobody cannot reach this Python (one kept in root's home), it
    stays root by number but gives up every capability, so permissions bind it all the same.
    """
    if not is_root():
        return list(argv)
    if reachable(Path(sys.executable)) and reachable(Path(sys.prefix)):
        return as_nobody(argv)
    return ["setpriv", "--inh-caps=-all", "--bounding-set=-all", "--", *argv]


def as_plain_user(argv: Sequence[str], **options: Any) -> subprocess.CompletedProcess[str]:
    """Run `argv` bound by file permissions; return what it said, as text.

    `options` go to subprocess.run. Pass `env` with a HOME the command may write to, and folders
    from `plain_folder`: pytest's own temporary folders are closed to other users.
    """
    settings: dict[str, Any] = {"capture_output": True, "text": True, "timeout": 120, "cwd": "/"}
    return subprocess.run(plain_argv(argv), check=False, **(settings | options))


def give(path: Path, command: Sequence[str]) -> None:
    """Make `path` belong to the user that `command` (from the functions above) runs as."""
    if is_root() and any(word == f"--reuid={PLAIN}" for word in command):
        shutil.chown(path, PLAIN, pwd.getpwnam(PLAIN).pw_gid)


@contextlib.contextmanager
def folder_for(command: Sequence[str]) -> Iterator[Path]:
    """Yield an empty folder that `command` may write to, gone afterwards."""
    folder = Path(tempfile.mkdtemp(prefix="waysaid-"))
    try:
        give(folder, command)
        yield folder
    finally:
        for each in (folder, *(one for one in folder.rglob("*") if one.is_dir())):
            if not each.is_symlink():
                each.chmod(0o700)
        shutil.rmtree(folder)
