"""Questions put to the database at every tap, made once: that takes longer than its answer."""

from collections.abc import Callable
from copy import copy
from typing import Any, Generic, TypeVar

from django.db import connection
from django.db.models import ForeignKey, Model, QuerySet

MOST_KEPT = 128
"""Objects that are kept (our choice: the talks of a large school at one time)."""
Row = TypeVar("Row", bound=Model)


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


_kept: dict[tuple[object, int], tuple[tuple[Any, ...], Any]] = {}


def forget_rows() -> None:
    """Keep no object any longer: what is erased for good waits nowhere either."""
    _kept.clear()


class Kept(Generic[Row]):
    """The object of one row's key, made again only where the database holds something else by now.

    Every call reads the whole row, and those of `beside`, foreign keys of it; making the objects
    takes longer than reading them.
    """

    def __init__(self, model: type[Row], *beside: str) -> None:
        self._beside = beside
        self._rows = model._default_manager.select_related(*beside)
        columns = [each.attname for each in model._meta.concrete_fields]
        for name in beside:
            field = model._meta.get_field(name)
            assert isinstance(field, ForeignKey)
            other = field.related_model._meta.concrete_fields
            columns += [f"{name}__{each.attname}" for each in other]
        self._held = Asked(lambda key: self._rows.filter(pk=key).values_list(*columns))

    def __call__(self, key: int) -> Row | None:
        """Return the object with what is beside it, the caller's own, or None for no such row.

        Only the lists in it are everybody's, and are not to be changed.
        """
        held = self._held(key)
        known, kept = _kept.get((self, key), (None, None))
        if not held or known != held[0]:
            kept = self._made(key, held)
        if kept is None:
            return None
        row: Row = copy(kept)
        for name in self._beside:
            setattr(row, name, copy(getattr(row, name)))
        return row

    def _made(self, key: int, held: list[tuple[Any, ...]]) -> Row | None:
        """Make the object, and keep it unless the row changed meanwhile."""
        _kept.pop((self, key), None)
        made = self._rows.filter(pk=key).first()
        if made is not None and self._held(key) == held:
            if len(_kept) >= MOST_KEPT:
                _kept.clear()
            _kept[self, key] = held[0], made
        return made
