"""Questions put to the database at every tap, made once: that takes longer than its answer."""

from collections.abc import Callable
from typing import Any

from django.db import connection
from django.db.models import QuerySet


class Asked:
    """A question about one row's key, as `make` puts it; called with a key, the rows it finds.

    The values are the database's own: SQLite says 0 or 1 for a truth value.
    """

    def __init__(self, make: Callable[[int], QuerySet[Any, Any]]) -> None:
        self._make = make
        self._sql = ""

    def __call__(self, key: int) -> list[tuple[Any, ...]]:
        """Return the rows for this key."""
        sql = self._sql or self._made()
        with connection.cursor() as cursor:
            cursor.execute(sql, (key,))
            return list(cursor.fetchall())

    def _made(self) -> str:
        self._sql, held = self._make(0).query.sql_with_params()
        assert held == (0,), "a question holds its key once and nothing else"
        return self._sql
