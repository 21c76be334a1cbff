"""What is kept of a row is what the database holds, whoever changed it and however."""

import pytest
from django.contrib.auth.models import User
from django.db import connection
from django.test import Client
from django.test.utils import CaptureQueriesContext
from hypothesis import given, settings
from hypothesis import strategies as st

from tests.counts import count
from waysaid.site import asked, record
from waysaid.site.asked import MOST_KEPT, Kept
from waysaid.site.models import SchoolClass, Talk
from waysaid.site.opening import OWN_MACHINE, OwnMachine, local_teacher

CHANGES = {
    "title": lambda talk, text: Talk.objects.filter(pk=talk.pk).update(title=text),
    "norms": lambda talk, text: SchoolClass.objects.filter(pk=talk.school_class_id).update(
        norms=[text]
    ),
    "name": lambda talk, text: SchoolClass.objects.filter(pk=talk.school_class_id).update(
        name=text
    ),
}


@pytest.fixture
def kept():
    return Kept(Talk, "school_class")


def held(talk):
    """Return all that a talk and its class hold, as Django reads it."""
    return [
        {field.attname: getattr(row, field.attname) for field in row._meta.concrete_fields}
        for row in (talk, talk.school_class)
    ]


def test_what_is_kept_is_what_the_database_holds(cast, kept):
    @settings(max_examples=count(test=50, sweep=500), deadline=None)
    @given(st.lists(st.tuples(st.sampled_from(sorted(CHANGES)), st.text("abcñ", max_size=5))))
    def every_change_is_seen(changes):
        for what, text in changes:
            CHANGES[what](cast.talk, text)
            fresh = Talk.objects.select_related("school_class").get(pk=cast.talk.pk)
            assert held(kept(cast.talk.pk)) == held(kept(cast.talk.pk)) == held(fresh)

    every_change_is_seen()


def test_a_row_that_stays_is_made_once_and_read_with_one_question(cast, kept):
    kept(cast.talk.pk)
    with CaptureQueriesContext(connection) as questions:
        kept(cast.talk.pk)
    assert len(questions) == 1


def test_everyone_has_a_talk_of_her_own(cast, kept):
    mine, hers = kept(cast.talk.pk), kept(cast.talk.pk)
    mine.title = mine.school_class.name = "changed"
    assert hers.title != "changed" != hers.school_class.name
    assert kept(cast.talk.pk).title != "changed"


def test_what_is_gone_is_not_there_and_is_kept_nowhere(cast, kept):
    key = cast.talk.pk
    assert kept(key) is not None
    Talk.objects.all().delete()
    assert kept(key) is None
    assert kept(key + 1) is None


def test_what_is_erased_for_good_waits_nowhere(cast, kept):
    kept(cast.talk.pk)
    assert asked._kept
    record.forget_all()
    assert not asked._kept


def test_no_more_is_kept_than_is_promised(cast, kept):
    for number in range(MOST_KEPT + 2):
        talk = Talk.objects.create(school_class=cast.school_class, title=str(number))
        assert kept(talk.pk).title == str(number)
    assert len(asked._kept) <= MOST_KEPT


def test_an_account_that_may_no_longer_be_used_is_known_no_more(db):
    teacher = local_teacher()
    visitor = Client()
    visitor.force_login(teacher, backend=OWN_MACHINE)
    assert visitor.get("/settings").status_code == 200
    User.objects.filter(pk=teacher.pk).update(is_active=False)
    assert visitor.get("/settings").status_code == 403


def test_no_password_opens_the_machine(db):
    teacher = local_teacher()
    teacher.set_password("a long password")
    teacher.save()
    assert (
        OwnMachine().authenticate(None, username=teacher.username, password="a long password")
        is None
    )
