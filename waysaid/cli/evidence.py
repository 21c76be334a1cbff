"""`waysaid evidence`: talk files in, a table of what was shown in them out."""

from collections.abc import Iterator
from datetime import UTC, datetime
from pathlib import Path
from typing import TYPE_CHECKING

from waysaid.cli.answers import Answer
from waysaid.cli.given import BadInputError, Given, language_in, words_in
from waysaid.cli.slides import write_bytes
from waysaid.cli.talk_file import talk_file_named
from waysaid.number import Language

if TYPE_CHECKING:
    from waysaid.growth import Shown

MOST_FILES = 2_000


def answer_evidence(given: Given) -> Answer:
    """Write what was shown in the talk files `files` into the table `out`, .csv or .parquet.

    Raises `BadInputError`.
    """
    from waysaid.paper import TableError, evidence_csv, write_evidence_parquet

    files, out = given.get("files"), words_in(given, "out", "a file to write")
    if not isinstance(files, list) or not 1 <= len(files) <= MOST_FILES:
        raise BadInputError(f"from 1 to {MOST_FILES} talk files would fit.")
    ending = Path(out).suffix
    if ending not in (".csv", ".parquet"):
        raise BadInputError(f"‘{out}’ ends in nothing known; .csv or .parquet would fit.")
    language = language_in(given)
    shown = [piece for name in files for piece in _shown(str(name), language)]
    if ending == ".csv":
        write_bytes(out, evidence_csv(shown))
    else:
        write_bytes(out, b"")
        try:
            write_evidence_parquet(shown, Path(out))
        except TableError as error:
            Path(out).unlink()
            raise BadInputError(error.sentence(language)) from None
    return {"files": len(files), "rows": len(shown), "out": out}


def show_evidence(answer: Answer, language: Language) -> Iterator[str]:
    """Yield one line: how many rows are where."""
    yield _SAID[language].format(**answer)


_SAID = {
    Language.EN: "{out}: rows: {rows}, from files: {files}.",
    Language.ES: "{out}: filas: {rows}, de archivos: {files}.",
}


def _shown(name: str, language: Language) -> Iterator["Shown"]:
    """Yield what a talk file shows; a child without a name goes by the file's and her own id."""
    from dataclasses import replace

    from waysaid.growth import Held, shown_in
    from waysaid.talk import fold

    talk = talk_file_named(name, language)
    if not talk.events:
        return
    stem = Path(name).stem
    began = datetime.fromtimestamp(talk.events[0].at // 1000, UTC).date()
    names = {each.id: each.name or f"{stem}:{each.id}" for each in talk.children}
    for piece in shown_in(Held(stem, talk.day or began, fold(talk.events))):
        yield replace(piece, child=None if piece.child is None else names[piece.child])
