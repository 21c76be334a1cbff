"""What the children of a class showed, as a table for other programs."""

from dataclasses import replace
from pathlib import Path
from tempfile import TemporaryDirectory

from waysaid.growth import Shown
from waysaid.paper import evidence_csv, write_evidence_parquet
from waysaid.site.evidence import past_of_class
from waysaid.site.models import SchoolClass


def class_csv(school_class: SchoolClass, *, names: bool) -> bytes:
    """Return the table as CSV, the children with their names or as c1, c2 ..."""
    return evidence_csv(_shown(school_class, names=names))


def class_parquet(school_class: SchoolClass, *, names: bool) -> bytes:
    """Return the table as Parquet. Raises `TableError` where what writes it is not installed."""
    with TemporaryDirectory() as folder:
        file = Path(folder) / "evidence.parquet"
        write_evidence_parquet(_shown(school_class, names=names), file)
        return file.read_bytes()


def _shown(school_class: SchoolClass, *, names: bool) -> list[Shown]:
    shown = past_of_class(school_class).shown
    listed = {each.key: each.name for each in school_class.children.all()} if names else {}
    known: dict[str, str] = {}
    for piece in shown:
        if piece.child is not None:
            usual = f"c{len(known) + 1}"
            known.setdefault(piece.child, listed.get(piece.child, usual))
    return [
        piece if piece.child is None else replace(piece, child=known[piece.child])
        for piece in shown
    ]
