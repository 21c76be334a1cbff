"""The report over several talks: what is in them, for whoever looks back on them, no one else."""

from datetime import timedelta

import pytest
from django.utils import timezone

from tests.paper.pdf_read import bare, check_tagged, opened, text_of
from tests.site.made import answer, child_id, problem_id, sent, way
from waysaid.site.models import Talk


@pytest.fixture
def told(cast):
    """A talk in which Bram told a way, Elif noticed something and Chidi chose to pass."""
    problem = problem_id(cast.talk)
    bram, elif_, chidi = (child_id(cast.school_class, name) for name in ("Bram", "Elif", "Chidi"))
    events = sent(
        way(problem, bram, 1),
        answer(problem, "56", 2, child=bram),
        {"sequence": 3, "kind": "noticed", "id": "n", "child": elif_, "words": "one <less>",
         "marks": [], "join": False},
        {"sequence": 4, "kind": "passed", "problem": problem, "child": chidi},
    )  # fmt: skip
    path = f"/talks/{cast.talk.pk}/events"
    assert cast.owner.post(path, events, content_type="application/json").status_code == 200
    return cast


def text(cast, asked=""):
    return text_of(opened(cast.owner.get(f"/talks/report.pdf{asked}").content))


def test_it_says_what_was_shown_and_by_whom_something_was_noticed(told):
    page = text(told)
    for words in ("39 + 27", "bridge", "once so far", "“one <less>” (Elif"):
        assert bare(words) in page
    heard, unheard = page.split(bare("Not heard in these talks"))
    assert "Bram" in heard
    assert "Elif" in heard
    assert "Aroha" in unheard
    assert "Bram" not in unheard
    assert "56" not in page


def test_it_is_tagged_and_speaks_the_desks_language(told):
    told.school_class.desk_language = "es"
    told.school_class.save()
    pdf = opened(told.owner.get("/talks/report.pdf?size=letter").content)
    check_tagged(pdf, "es")
    assert abs(float(pdf.pages[0].mediabox[2]) - 612) < 2


def test_only_talks_between_the_two_days_are_in_it_both_days_with_them(told):
    today = timezone.localdate()
    before = today - timedelta(days=10)
    Talk.objects.filter(pk=told.talk.pk).update(made_at=timezone.now() - timedelta(days=10))
    for first, last, inside in (
        (before, before, True),
        (before - timedelta(days=9), today, True),
        (before + timedelta(days=1), today, False),
        (before - timedelta(days=9), before - timedelta(days=1), False),
    ):
        assert (bare("39 + 27") in text(told, f"?from={first}&to={last}")) is inside


@pytest.mark.parametrize(
    ("asked", "sentence"),
    [
        ("?from=soon", "“soon” is no day of a report"),
        ("?to=0001-01-01", "is no day of a report"),
        ("?from=2026-02-01&to=2026-01-01", "begins with a day up to a year before"),
        ("?from=2020-01-01&to=2026-01-01", "begins with a day up to a year before"),
    ],
)
def test_days_that_do_not_fit_are_one_sentence(told, asked, sentence):
    refused = told.owner.get(f"/talks/report.pdf{asked}")
    assert refused.status_code == 400
    assert sentence in refused.text


def test_it_is_asked_for_where_the_talks_are_listed_and_holds_nothing_of_anothers_class(told):
    assert 'action="/talks/report.pdf"' in told.owner.get("/talks/").text
    other = text_of(opened(told.colleague.get("/talks/report.pdf").content))
    assert bare("39 + 27") not in other
    assert told.outsider.get("/talks/report.pdf").status_code == 403
