"""The log of what went wrong: where in the code, and never whose talk or which words.

Messages of errors and addresses of requests can hold a child's name, her words or a board's
token, so that none of them is written: only what kind of thing happened, and at which lines.
"""

import logging
from collections.abc import Iterator
from logging.handlers import RotatingFileHandler
from pathlib import Path
from traceback import walk_tb

LOG_FILE = "waysaid.log"
LARGEST_BYTES = 1_000_000
"""Of a log before it makes way for the next; one before it is kept (our choice)."""


class WordlessFormatter(logging.Formatter):
    """Writes the time, the level, where it was logged, and the lines that led to an error."""

    def format(self, record: logging.LogRecord) -> str:
        """Return one line, and one more for each error and each place that it came through."""
        status = getattr(record, "status_code", "")
        place = f"{record.name}:{record.lineno}"
        lines = [f"{self.formatTime(record)} {record.levelname} {place} {status}".rstrip()]
        error = record.exc_info[1] if record.exc_info else None
        return "\n".join([*lines, *_trail(error)])


def _trail(error: BaseException | None) -> Iterator[str]:
    """Yield an error and its places, the innermost last, then the errors that it came from."""
    met: set[int] = set()
    while error is not None and id(error) not in met:
        met.add(id(error))
        yield f"  {type(error).__module__}.{type(error).__qualname__}"
        for frame, line in walk_tb(error.__traceback__):
            yield f"    {frame.f_globals.get('__name__', '?')}:{line} {frame.f_code.co_qualname}"
        error = error.__cause__ or error.__context__


class QuietFile(RotatingFileHandler):
    """A log file for its owner alone; a disk that refuses it stops nothing and prints nothing."""

    def __init__(self, folder: str) -> None:
        path = Path(folder) / LOG_FILE
        super().__init__(path, maxBytes=LARGEST_BYTES, backupCount=1, encoding="utf-8", delay=True)

    def handleError(self, record: logging.LogRecord) -> None:  # noqa: N802 - logging's own name
        """Let it go: the person was told on the page, and the terminal is no place for it."""


def logging_settings(folder: Path, *, debug: bool) -> dict[str, object]:
    """Return Django's `LOGGING`: the file in the data folder, or the terminal for developers."""
    file = {"()": "waysaid.site.logs.QuietFile", "folder": str(folder), "formatter": "wordless"}
    handler = {"class": "logging.StreamHandler"} if debug else file
    return {
        "version": 1,
        "disable_existing_loggers": False,
        "formatters": {"wordless": {"()": "waysaid.site.logs.WordlessFormatter"}},
        "handlers": {"log": handler},
        "root": {"handlers": ["log"], "level": "WARNING"},
        "loggers": {
            name: {"handlers": [], "level": "WARNING", "propagate": True}
            for name in ("django", "django.server", "uvicorn", "uvicorn.error")
        },
    }
