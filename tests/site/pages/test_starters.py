"""Starter strings: looked through by grade and focus, each whole, each ready to plan with."""

import pytest

from waysaid.site.models import Plan
from waysaid.strings import starters


@pytest.mark.parametrize("grade", range(7))
def test_every_starter_of_a_grade_is_on_its_page(cast, grade):
    page = cast.owner.get(f"/starters?grade={grade}").text
    for starter in starters():
        assert (f'href="/starters/{starter.slug}"' in page) is (starter.grade == grade)


def test_a_focus_leaves_the_others_out(cast):
    page = cast.owner.get("/starters?grade=2&focus=give-and-take").text
    for starter in starters():
        wanted = starter.grade == 2 and starter.focus.value == "give-and-take"
        assert (f'href="/starters/{starter.slug}"' in page) is wanted


def test_an_unknown_focus_shows_them_all(cast):
    page = cast.owner.get("/starters?grade=2&focus=%3Cb%3E").text
    assert page.count("Plan with this") == sum(each.grade == 2 for each in starters())


@pytest.mark.parametrize("language", ["en", "es"])
def test_a_starter_shows_purpose_reasons_ways_and_questions(cast, language):
    starter = starters()[40]
    cast.owner.post("/settings", {"language": language})
    page = cast.owner.get(f"/starters/{starter.slug}").text
    said = starter.english if language == "en" else starter.spanish
    for text in (said.purpose, *said.why, *said.questions):
        assert text.replace("'", "&#x27;").replace('"', "&quot;") in page
    assert page.count("<svg") >= len(starter.problems)


def test_a_plan_made_with_it_speaks_the_desks_language(cast):
    cast.school_class.desk_language = "es"
    cast.school_class.save()
    starter = starters()[40]
    made = cast.owner.post(f"/starters/{starter.slug}")
    plan = Plan.objects.get()
    assert made.headers["Location"] == f"/plans/{plan.pk}"
    assert plan.title == starter.spanish.title
    assert tuple(row["why"] for row in plan.problems) == starter.spanish.why


def test_a_starter_that_is_not_there_is_told(cast):
    assert cast.owner.get("/starters/nothing").status_code == 404


def test_problems_are_printed_for_the_eyes_of_the_reader(cast):
    cast.owner.post("/settings", {"language": "es"})
    page = cast.owner.get("/starters?grade=3").text
    assert "<span>4 × ▢ = 20</span>" in page
    assert "<span>image frame 10: 7</span>" in cast.owner.get("/starters?grade=0").text
    assert "<span>3/4 de 20</span>" in cast.owner.get("/starters?grade=5").text
