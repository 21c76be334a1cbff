"""Damaged files of every kind: each is answered with one sentence at most, and nothing changes.

Some damage leaves a file that can be read: then it is shown, and still nothing is kept.
"""

import itertools
import re
import time
from html import unescape

import pytest
from django.apps import apps
from django.contrib.sessions.models import Session
from django.core.files.uploadedfile import SimpleUploadedFile

from tests.counts import count
from tests.site import damaged
from waysaid.number import Language
from waysaid.paper import (
    CalendarError,
    TableError,
    TalkFileError,
    evidence_csv,
    read_calendar,
    read_evidence_csv,
    read_evidence_parquet,
    read_talk_file,
    talk_file_bytes,
    write_evidence_parquet,
)
from waysaid.site.models import SchoolYear


def everything():
    """Every row of the database but the sessions' own."""
    models = [model for model in apps.get_models() if model is not Session]
    return {model.__name__: list(model.objects.order_by("pk").values_list()) for model in models}


def told(page):
    """The sentence that a page tells; it fails where there is not one, or it is no sentence."""
    found = re.findall(r'<p class="wrong" role="alert" id="wrong">(.*?)</p>', page.text, re.DOTALL)
    assert len(found) == 1, page.text[:400]
    check(unescape(found[0]))


def check(sentence):
    assert sentence.strip() == sentence != ""
    assert "\n" not in sentence
    assert len(sentence) < 700
    assert sentence.endswith((".", "?", "!", "”", "csv", "parquet"))
    assert "Traceback" not in sentence


def sent(client, address, content, **more):
    file = SimpleUploadedFile("file", content)
    return client.post(address, {"file": file, **more})


NAMES = {"do": "add", "step": "look"}
SENT = {
    "talk file": ("/talks/bring", damaged.talk_file, {}, 80),
    "school's file": ("/class", damaged.one_roster, NAMES, 60),
    "list": ("/class", lambda chance: damaged.text_file(damaged.ROSTER, chance), NAMES, 5),
}
"""Where a file goes, what damages it, what goes with it, and how many in a hundred are refused."""


@pytest.mark.parametrize("kind", SENT)
def test_a_damaged_file_is_told_or_shown_and_nothing_is_kept(cast, sweep_note, kind):
    address, make, more, least = SENT[kind]
    many = count(test=45, sweep=450)
    before, refused = everything(), 0
    for content in damaged.several(make, many):
        page = sent(cast.owner, address, content, **more)
        assert page.status_code in (200, 400), page.text[:400]
        if page.status_code == 400:
            refused += 1
            told(page)
    assert everything() == before
    assert refused * 100 >= least * many
    sweep_note("a damaged file is told in a sentence or shown, and nothing is kept", many)


def test_a_damaged_calendar_is_told_by_its_line_and_no_year_is_kept(cast, sweep_note):
    many, refused = count(test=35, sweep=350), 0
    before = everything()
    for content in damaged.several(damaged.calendar_file, many):
        try:
            read_calendar(content)
        except CalendarError as error:
            refused += 1
            for language in Language:
                check(error.sentence(language))
            page = cast.owner.post(
                "/year/", {"grade": "0", "calendar": SimpleUploadedFile("days.ics", content)}
            )
            assert page.status_code == 400
            told(page)
    assert everything() == before
    assert not SchoolYear.objects.exists()
    assert refused * 2 >= many
    sweep_note("a damaged calendar is told by its line, and no year is kept", many)


def test_a_damaged_table_of_evidence_is_told_and_never_read_as_more_than_it_says(sweep_note):
    many, refused = count(test=25, sweep=250), 0
    for content in damaged.several(lambda chance: damaged.text_file(damaged.TABLE, chance), many):
        try:
            read = read_evidence_csv(content)
        except TableError as error:
            refused += 1
            check(str(error))
        else:
            assert read_evidence_csv(evidence_csv(read)) == read
    assert refused * 2 >= many
    sweep_note("a damaged table of evidence is told in a sentence", many)


def test_a_damaged_parquet_file_is_told(tmp_path, sweep_note):
    many, file = count(test=5, sweep=50), tmp_path / "table.parquet"
    write_evidence_parquet(damaged.SHOWN, file)
    whole = file.read_bytes()
    for content in damaged.several(lambda chance: damaged.cut(whole, chance), many):
        file.write_bytes(content)
        with pytest.raises(TableError) as error:
            read_evidence_parquet(file)
        check(str(error.value))
    sweep_note("a cut Parquet file is told in a sentence", many)


def test_a_damaged_talk_file_that_is_read_is_read_whole():
    for content in damaged.several(damaged.talk_file, count(test=45, sweep=450), seed=8):
        try:
            talk = read_talk_file(content)
        except TalkFileError as error:
            for language in Language:
                check(error.sentence(language))
        else:
            assert read_talk_file(talk_file_bytes(talk)) == talk


def test_the_same_damage_comes_in_every_run(monkeypatch):
    hours = itertools.count(step=3600)
    monkeypatch.setattr(time, "time", lambda: 1_800_000_000.0 + next(hours))
    makers = (damaged.talk_file, damaged.one_roster, damaged.calendar_file)
    for make in makers:
        assert damaged.several(make, 4) == damaged.several(make, 4)
    assert len(set(damaged.several(damaged.calendar_file, 20))) > 10
