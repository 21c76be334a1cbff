"""What the class showed, as a page: nobody is ranked, small numbers are small, a tap composes."""

import re

import pytest

from tests.site.made import child_id, problem_id, sent, way
from waysaid.growth import Room, caution, lessons, suggested_next
from waysaid.number import Language
from waysaid.site import demo
from waysaid.site.evidence import past_of_class
from waysaid.site.following import wish_for
from waysaid.site.rights import OWNER, RIGHTS, Act
from waysaid.strings import compose
from waysaid.ways import Family

pytestmark = pytest.mark.slow


@pytest.fixture
def filled(cast, monkeypatch):
    """A class whose talks are simulated, where two children alone know a family."""
    keys = [child.key for child in cast.school_class.children.all()]
    room = Room(tuple(keys), 1, few={Family.ADJUST: tuple(keys[:2])})
    monkeypatch.setattr(demo, "Room", lambda children: room)
    demo.fill(cast.school_class, lessons()[:24], 2)
    cast.school_class.grade = 2
    cast.school_class.save()
    return cast


def test_before_the_first_talk_the_page_says_what_it_will_hold(cast):
    cast.talk.delete()
    page = cast.owner.get("/class/showed").text
    assert "No talk has been held so far." in page


def test_a_caution_stands_beside_every_statement_about_a_child(filled):
    for path in ("/class/showed", f"/class/child/{child_id(filled.school_class)}/ways"):
        assert caution(Language.EN).replace("'", "&#x27;") in filled.owner.get(path).text


def test_children_stand_in_the_order_of_the_class_list(filled):
    page = filled.owner.get("/class/showed").text
    voices = page[page.index('id="voices"') : page.index('id="ways"')]
    names = [child.name for child in filled.school_class.children.all()]
    assert re.findall(r"/ways\">(\w+)<", voices) == names


def test_no_page_holds_a_percentage_or_a_rank(filled):
    for path in ("/class/showed", f"/class/child/{child_id(filled.school_class)}/ways"):
        shown = re.sub(r"<[^>]*>", " ", filled.owner.get(path).text)
        assert not re.search(r"\d\s*%|\brank|\bscore|\bbest\b|\bbehind\b", shown)


def test_a_suggestion_points_to_the_talks_it_comes_from_and_a_tap_composes_it(filled):
    suggestion = suggested_next(past_of_class(filled.school_class))
    assert suggestion is not None
    page = filled.owner.get("/class/showed").text
    for reason in suggestion.reasons:
        for talk in reason.pointed:
            assert f'href="/talks/{talk}/back"' in page
    answered = filled.owner.post("/class/showed/next")
    assert answered.status_code == 302
    plan = filled.school_class.plans.get(pk=answered.headers["Location"].rsplit("/", 1)[1])
    assert plan.wish["focus"] == suggestion.family.value
    assert len(plan.problems) >= 3


def test_the_wish_is_like_the_problems_that_invited_the_family(filled):
    suggestion = suggested_next(past_of_class(filled.school_class))
    wish = wish_for(suggestion, filled.school_class, 2)
    assert wish.focus is suggestion.family
    assert wish.within in (20, 100)
    assert compose(wish).problems


def test_a_child_s_page_shows_her_ways_as_told_and_nobody_else_s(cast):
    problem = problem_id(cast.talk)
    events = [
        way(problem, child_id(cast.school_class), 1, words="one more, then the rest"),
        way(problem, child_id(cast.school_class, "Elif"), 2, words="something else"),
    ]
    path = f"/talks/{cast.talk.pk}/events"
    cast.owner.post(path, sent(*events), content_type="application/json")
    page = cast.owner.get(f"/class/child/{child_id(cast.school_class)}/ways").text
    assert "one more, then the rest" in page
    assert "39 + 1 = 40" in page
    assert "something else" not in page
    assert "Elif" not in page


def test_another_class_s_child_is_not_there(cast):
    assert cast.owner.get("/class/child/999999/ways").status_code == 404


def test_many_ways_come_in_pages(filled):
    child = max(
        filled.school_class.children.all(),
        key=lambda one: sum(p.child == one.key for p in past_of_class(filled.school_class).shown),
    )
    page = filled.owner.get(f"/class/child/{child.pk}/ways").text
    assert "?page=2" in page
    assert "?page=1" in filled.owner.get(f"/class/child/{child.pk}/ways?page=2").text


def test_who_may_not_erase_a_child_is_not_offered_it(cast, monkeypatch):
    path = f"/class/child/{child_id(cast.school_class)}/ways"
    assert "/forget" in cast.owner.get(path).text
    monkeypatch.setitem(RIGHTS, OWNER, frozenset({Act.LOOK_BACK}))
    assert "/forget" not in cast.owner.get(path).text
