"""What the class showed, as a table: with names only where they are asked for."""

import sys

import pytest

from tests.site.pages.test_talk_files import told  # noqa: F401
from waysaid.growth import How
from waysaid.paper import read_evidence_csv, read_evidence_parquet


@pytest.mark.parametrize(("asked", "children"), [("?names=on", "Bram Elif"), ("", "c1 c2")])
def test_the_table_says_who_did_what(told, tmp_path, asked, children):  # noqa: F811
    answer = told.owner.get(f"/class/evidence.csv{asked}")
    assert answer.headers["Content-Type"].startswith("text/csv")
    shown = read_evidence_csv(answer.content)
    assert {piece.child for piece in shown} == set(children.split())
    assert {piece.how for piece in shown} == {How.SAID, How.AGREED, How.NOTICED, How.PASSED}
    file = tmp_path / "table.parquet"
    file.write_bytes(told.owner.get(f"/class/evidence.parquet{asked}").content)
    assert read_evidence_parquet(file) == shown


def test_no_name_is_in_a_table_without_names(told):  # noqa: F811
    assert b"Bram" not in told.owner.get("/class/evidence.csv").content
    assert b"Bram" not in told.owner.get("/class/evidence.parquet").content


def test_what_is_not_installed_is_told_on_a_page(told, monkeypatch):  # noqa: F811
    monkeypatch.setitem(sys.modules, "duckdb", None)
    page = told.owner.get("/class/evidence.parquet")
    assert page.status_code == 409
    assert "“pipx inject waysaid duckdb”" in page.text


def test_the_page_of_what_is_kept_offers_both(cast):
    page = cast.owner.get("/class/record").text
    assert 'action="/class/evidence.csv"' in page
    assert 'formaction="/class/evidence.parquet"' in page
