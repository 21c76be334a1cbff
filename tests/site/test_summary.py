"""A coach's summary: no name, nothing of what happens later, nothing by asking otherwise."""

from datetime import UTC, date, datetime, timedelta

import pytest
from django.contrib.auth.models import User

from tests.site.made import make_class, problem_id, way
from waysaid.site.erasing import forget_child
from waysaid.site.models import Child, Talk
from waysaid.site.people_models import Counted, Member
from waysaid.site.record import Sent, append
from waysaid.site.summary import count_what_is_over, summary_of
from waysaid.site.talks import start_talk
from waysaid.talk import body_from_json

THEN = datetime(2026, 9, 15, 9, tzinfo=UTC)
OVER = date(2026, 11, 20)
NAMES = tuple(f"Zyx{at}" for at in range(14))


@pytest.fixture
def coached(cast):
    """A class of fourteen: seven told a bridge in September, all gave an answer."""
    owner = User.objects.get(username="owner")
    school_class = make_class(owner, name="4C", names=NAMES)
    told_by(school_class, 7)
    Member.objects.create(
        school_class=school_class, person=User.objects.get(username="colleague"), part="coach"
    )
    return cast, school_class


def told_by(school_class, many, at=THEN):
    """Make a talk in which so many told a bridge, and everyone gave an answer."""
    talk = start_talk(school_class, problems=["39 + 27"])
    problem = problem_id(talk)
    children = list(school_class.children.all())
    bodies = [way(problem, child.key, place) for place, child in enumerate(children[:many])]
    bodies += [
        {"kind": "answer-heard", "id": f"a{place}", "problem": problem, "text": "66",
         "child": child.key} for place, child in enumerate(children)
    ]  # fmt: skip
    plain = [{key: what for key, what in body.items() if key != "sequence"} for body in bodies]
    sent = [Sent(place, body_from_json(body)) for place, body in enumerate(plain)]
    append(talk.pk, "test", sent, at)
    Talk.objects.filter(pk=talk.pk).update(made_at=at)
    return talk


def bands(school_class, today=OVER):
    (grade,) = summary_of([school_class], today)
    ((_name, terms),) = grade.classes
    return [(each.first, [(band.low, band.high) for band in each.bands]) for each in terms]


def test_it_is_told_once_the_half_term_is_settled_as_a_band(coached):
    _cast, school_class = coached
    assert bands(school_class, date(2026, 11, 14)) == []
    assert bands(school_class) == [(date(2026, 9, 1), [(5, 9)])]


def test_nothing_that_happens_later_changes_what_was_told(coached):
    _cast, school_class = coached
    before = bands(school_class)
    told_by(school_class, 14, THEN + timedelta(days=1))
    assert bands(school_class) == before
    Child.objects.create(school_class=school_class, name="New", order=20)
    assert bands(school_class) == before
    for child in school_class.children.all()[:4]:
        forget_child(child, said_too=True)
    assert bands(school_class) == before
    Talk.objects.all().delete()
    assert bands(school_class, OVER + timedelta(40)) == before


def test_the_page_has_no_name_and_takes_no_dates(coached):
    cast, school_class = coached
    count_what_is_over(school_class, OVER)
    page = cast.colleague.get("/shared/summary")
    assert page.status_code == 200
    assert "5 to 9" in page.text
    assert "4C" in page.text
    assert [name for name in NAMES if name in page.text] == []
    asked = cast.colleague.get("/shared/summary?from=2026-09-15&to=2026-09-16&class=1&talk=1")
    assert asked.text.split("</header>")[1] == page.text.split("</header>")[1]


def test_few_nearly_all_and_a_small_class_tell_nothing(cast):
    owner = User.objects.get(username="owner")
    for many, names in ((4, NAMES), (10, NAMES), (5, NAMES[:9])):
        school_class = make_class(owner, name="4D", names=names)
        told_by(school_class, many)
        assert bands(school_class) == [(date(2026, 9, 1), [])]


def test_classes_of_a_grade_together_add_up_what_each_tells(coached):
    _cast, school_class = coached
    other = make_class(school_class.owner, name="4D", names=NAMES)
    silent = make_class(school_class.owner, name="4E", names=NAMES)
    told_by(other, 6)
    told_by(silent, 4)
    (grade,) = summary_of([school_class, other, silent], OVER)
    (band,) = grade.together[0].bands
    assert (band.low, band.high) == (10, 18)
    assert all(set(row.cells) <= {"bridge"} for row in Counted.objects.all())
