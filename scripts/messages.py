"""Bring the site's translations up to date: `messages.py`, or `messages.py --check`.

Reads every text to be translated from the site's modules and templates, updates the .po file of
each language and compiles it. With --check nothing is written: it says what is missing, not
translated, or not compiled, and ends with 1. Needs nothing but Babel and Django.
"""

import io
import re
import sys
from collections.abc import Iterator
from datetime import UTC, datetime
from pathlib import Path

from babel.messages.catalog import Catalog, Message
from babel.messages.extract import DEFAULT_KEYWORDS, extract
from babel.messages.mofile import write_mo
from babel.messages.pofile import read_po, write_po
from django.conf import settings
from django.utils.translation.template import templatize

ROOT = Path(__file__).parents[1]
SITE = ROOT / "waysaid" / "site"
LANGUAGES = ("es",)
DATED = tuple(
    f'"{name}'.encode()
    for name in (
        "POT-Creation",
        "PO-Revision",
        "Last-Trans",
        "Language-Team",
        "Report-",
        "Generated",
    )
)
"""Header lines that would change by themselves, or name nobody."""
LAZY = {f"{name}_lazy": spec for name, spec in DEFAULT_KEYWORDS.items() if "gettext" in name}
KEYWORDS = {**DEFAULT_KEYWORDS, **LAZY, "gettext_noop": None}
CALL = re.compile(
    r"\bn?p?gettext\((?:\s*(?:u?'(?:\\.|[^'\\])*'|u?\"(?:\\.|[^\"\\])*\"|\w+)\s*,?)+\)"
)


def sources() -> Iterator[tuple[str, bytes]]:
    """Yield each file's name and what of it is Python with texts in it."""
    for path in sorted(SITE.rglob("*.py")):
        yield path.relative_to(ROOT).as_posix(), path.read_bytes()
    for path in sorted((SITE / "templates").rglob("*.html")):
        name = path.relative_to(ROOT).as_posix()
        calls = CALL.findall(templatize(path.read_text(encoding="utf-8"), origin=name))
        yield name, "\n".join(calls).encode()


def template() -> Catalog:
    """Return every text as it stands in the sources."""
    catalog = Catalog(project="Waysaid", charset="utf-8")
    for name, python in sources():
        found = extract("python", io.BytesIO(python), KEYWORDS, ("Translators:",))
        for _line, texts, comments, context in found:
            catalog.add(texts, locations=[(name, 0)], auto_comments=comments, context=context)
    return catalog


HEADER = "# Spanish texts of Waysaid; brought up to date by scripts/messages.py."


def folder(language: str) -> Path:
    """Return where a language's texts are."""
    return SITE / "locale" / language / "LC_MESSAGES"


def current(language: str) -> Catalog:
    """Return the texts of a language as they are now."""
    path = folder(language) / "django.po"
    if not path.exists():
        return Catalog(locale=language, project="Waysaid", charset="utf-8")
    with path.open("rb") as file:
        return read_po(file, locale=language)


def compiled(catalog: Catalog) -> bytes:
    """Return the texts as gettext reads them: the same bytes at any hour."""
    catalog.creation_date = catalog.revision_date = datetime(2026, 1, 1, tzinfo=UTC)
    written = io.BytesIO()
    write_mo(written, catalog)
    return written.getvalue()


def write(language: str) -> None:
    """Update a language's texts and compile them; a translation that fits no text goes."""
    catalog = current(language)
    catalog.update(template(), no_fuzzy_matching=True)
    catalog.obsolete.clear()
    catalog.header_comment = HEADER
    catalog.fuzzy = False
    written = io.BytesIO()
    write_po(written, catalog, width=96, include_lineno=False, sort_output=True)
    kept = [line for line in written.getvalue().splitlines(True) if not line.startswith(DATED)]
    folder(language).mkdir(parents=True, exist_ok=True)
    (folder(language) / "django.po").write_bytes(b"".join(kept).rstrip() + b"\n")
    (folder(language) / "django.mo").write_bytes(compiled(current(language)))


def faults(language: str) -> list[str]:
    """Return what is wrong with a language's texts, a sentence each."""
    catalog, wanted = current(language), template()
    found = [
        f"{language}: not translated: {message.id!r}"
        for message in wanted
        if message.id and not _is_done(catalog.get(message.id, message.context))
    ]
    for message in catalog:
        if message.id and wanted.get(message.id, message.context) is None:
            found.append(f"{language}: no longer used: {message.id!r}")
        found += [f"{language}: {message.id!r}: {fault}" for fault in _mismatched(message)]
    path = folder(language) / "django.mo"
    if not path.exists() or path.read_bytes() != compiled(catalog):
        found.append(f"{language}: django.mo is not compiled from django.po.")
    return found


def _is_done(message: Message | None) -> bool:
    if message is None:
        return False
    texts = message.string if isinstance(message.string, tuple | list) else (message.string,)
    return bool(texts) and all(texts)


def _mismatched(message: Message) -> Iterator[str]:
    """Yield how the places to fill differ between a text and its translations."""
    ids = message.id if isinstance(message.id, tuple | list) else (message.id,)
    texts = message.string if isinstance(message.string, tuple | list) else (message.string,)
    wanted = set().union(*(_places(str(each)) for each in ids))
    for text in texts:
        if text and not _places(text) <= wanted:
            yield f"{text!r} has a place the text has not."
        if text and len(ids) == 1 and _places(text) != wanted:
            yield f"{text!r} lacks a place of the text."


def _places(text: str) -> set[str]:
    return set(re.findall(r"%\(\w+\)s|\{\w+\}", text))


def main() -> int:
    """Do what was asked; return the exit status."""
    settings.configure(USE_I18N=True)
    if sys.argv[1:] == ["--check"]:
        found = [fault for language in LANGUAGES for fault in faults(language)]
        print("\n".join(found) or "Every text is translated and compiled.")
        return 1 if found else 0
    for language in LANGUAGES:
        write(language)
    missing = [fault for language in LANGUAGES for fault in faults(language)]
    print("\n".join(missing) or "Every text is translated and compiled.")
    return 0


if __name__ == "__main__":
    sys.exit(main())
