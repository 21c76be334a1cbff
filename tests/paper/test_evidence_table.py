"""Evidence as a table: read back as it was, and harmless to a spreadsheet."""

import csv
import io
import sys
from datetime import date

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from tests.counts import count
from waysaid.drawing import Picture
from waysaid.growth import How, Shown
from waysaid.number import Language
from waysaid.paper import (
    TableError,
    evidence_csv,
    read_evidence_csv,
    read_evidence_parquet,
    write_evidence_parquet,
)
from waysaid.paper.evidence_table import _SAID, COLUMNS, HARMFUL, LARGEST_TABLE, TableFault
from waysaid.ways import Family

words = st.text(st.characters(exclude_categories=["Cs"], exclude_characters="\0"), max_size=12)
some = words.filter(bool) | st.sampled_from([f"{sign}1+1" for sign in HARMFUL] + ["'", "''=1"])
pieces = st.builds(
    Shown,
    some,
    st.dates(date(1970, 1, 1), date(2099, 12, 31)),
    st.integers(0, 10**9 - 1),
    st.none() | some,
    st.sampled_from(How),
    words,
    st.none() | st.sampled_from(Family),
    words,
    st.none() | st.sampled_from(Picture),
    st.none() | st.booleans(),
    st.sampled_from(("en", "es")),
    st.booleans(),
)
tables = st.lists(pieces, max_size=8).map(tuple)
ONE = Shown("7", date(2026, 9, 14), 0, "Noor", How.SAID, "-3 + 5", Family.BRIDGE)


@given(tables)
def test_a_table_as_csv_is_read_back_as_it_was(shown):
    assert read_evidence_csv(evidence_csv(shown)) == shown


@settings(max_examples=count(test=25, sweep=1000))
@given(tables)
def test_a_table_as_parquet_is_read_back_as_it_was(tmp_path_factory, shown):
    file = tmp_path_factory.mktemp("table") / "it's.parquet"
    write_evidence_parquet(shown, file)
    assert read_evidence_parquet(file) == shown


@given(tables)
def test_no_cell_begins_as_a_formula_does(shown):
    for row in csv.reader(io.StringIO(evidence_csv(shown).decode("utf-8-sig"), newline="")):
        assert not any(cell.startswith(tuple(HARMFUL)) for cell in row)


def test_a_table_has_a_row_of_headings_and_plain_cells():
    assert evidence_csv([ONE]).decode("utf-8-sig") == (
        ",".join(COLUMNS) + "\r\n7,2026-09-14,0,Noor,said,'-3 + 5,bridge,,,,en,no\r\n"
    )
    assert evidence_csv([ONE]).startswith(b"\xef\xbb\xbf")


def test_the_same_rows_make_the_same_bytes(tmp_path):
    files = [tmp_path / name for name in ("a.parquet", "b.parquet")]
    for file in files:
        write_evidence_parquet([ONE] * 50, file)
    assert files[0].read_bytes() == files[1].read_bytes()


HEAD = ",".join(COLUMNS)
ROW = "7,2026-09-14,0,Noor,said,3 + 5,bridge,,,,en,no"
REFUSED = [
    (b" " * (LARGEST_TABLE + 1), TableFault.TOO_LARGE),
    (b"\xff\xfe", TableFault.NO_TEXT),
    (b"", TableFault.NO_COLUMNS),
    (b"talk,day\n", TableFault.NO_COLUMNS),
    (f"{HEAD}\n7,2026-09-14\n".encode(), TableFault.NO_ROW),
    (f'{HEAD}\n"7'.encode(), TableFault.NO_TABLE),
    (f"{HEAD}\n{'x' * 140_000}\n".encode(), TableFault.NO_TABLE),
    *(
        (f"{HEAD}\n{ROW.replace(old, new)}\n".encode(), TableFault.NO_CELL)
        for old, new in (
            ("2026-09-14", "20260914"),
            (",0,", ",first,"),
            (",0,", ",٣,"),
            ("said", "scored"),
            ("bridge", "=HYPERLINK(1)"),
            ("en,no", "fr,no"),
            ("en,no", "en,maybe"),
            ("3 + 5", "3" * 2001),
            ("7,2026", ",2026"),
        )
    ),
]


@pytest.mark.parametrize(("content", "fault"), REFUSED)
def test_what_is_no_such_table_is_refused_with_one_sentence(content, fault):
    with pytest.raises(TableError) as refused:
        read_evidence_csv(content)
    assert refused.value.fault is fault
    assert "\n" not in str(refused.value)
    assert refused.value.sentence(Language.ES) != str(refused.value)


def test_a_parquet_file_that_is_cut_or_of_others_is_refused(tmp_path):
    file = tmp_path / "table.parquet"
    write_evidence_parquet([ONE], file)
    whole = file.read_bytes()
    for damaged in (b"", whole[:-9], b"PAR1", b"talk,day\n1,2\n"):
        file.write_bytes(damaged)
        with pytest.raises(TableError) as refused:
            read_evidence_parquet(file)
        assert refused.value.fault is TableFault.NO_PARQUET


def test_parquet_without_duckdb_is_told_in_one_sentence(monkeypatch, tmp_path):
    monkeypatch.setitem(sys.modules, "duckdb", None)
    for ask in (lambda file: write_evidence_parquet([ONE], file), read_evidence_parquet):
        with pytest.raises(TableError) as refused:
            ask(tmp_path / "table.parquet")
        assert refused.value.fault is TableFault.NO_DUCKDB
        for language in Language:
            assert "“pipx inject waysaid duckdb”" in refused.value.sentence(language)
    assert not list(tmp_path.iterdir())


def test_every_fault_is_said_in_both_languages():
    assert all(set(_SAID[language]) == set(TableFault) for language in Language)
