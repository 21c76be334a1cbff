"""A teacher's corrections: events of the record, seen and erased in the settings, ties alone."""

import pytest

from tests.site.made import child_id, problem_id, sent, way
from waysaid.number import Language
from waysaid.site.ears import ears_for
from waysaid.site.erasing import forget_talks
from waysaid.site.history import history_before
from waysaid.site.leanings import leanings_of
from waysaid.site.models import Talk
from waysaid.site.record import at_hand
from waysaid.site.talks import start_talk
from waysaid.ways import Family


def post(cast, *events):
    path = f"/talks/{cast.talk.pk}/events"
    return cast.owner.post(path, sent(*events), content_type="application/json")


def corrected(cast, sequence=0, chosen="split", proposed="bridge"):
    """Record a way that was read as one family and chosen as another."""
    child = child_id(cast.school_class)
    told = way(problem_id(cast.talk), child, sequence, family=chosen, words="forty then")
    assert post(cast, {**told, "proposed": {"family": proposed}}).status_code == 200


def leaning(talk):
    return dict(ears_for(talk, at_hand(talk.pk).state, "39 + 27").leaning)


def keys(cast):
    return {one.key: one.times for one in leanings_of(cast.school_class)}


def erase(cast, who="owner", **asked):
    given = {"class": cast.school_class.pk, **asked}
    return getattr(cast, who).post("/settings/leanings", given)


def test_a_correction_is_kept_and_counts_in_the_same_talk_and_the_next(cast):
    corrected(cast)
    kept = at_hand(cast.talk.pk).state.ways[0]
    assert (kept.family, kept.proposed.family) == (Family.SPLIT, Family.BRIDGE)
    assert leaning(cast.talk) == {Family.SPLIT: 1}
    assert leaning(start_talk(cast.school_class, problems=["39 + 27"])) == {Family.SPLIT: 1}


def test_a_way_that_was_read_right_is_no_correction(cast):
    corrected(cast, chosen="bridge")
    assert leaning(cast.talk) == {}
    assert leanings_of(cast.school_class) == []


def test_a_correction_taken_back_counts_no_more(cast):
    corrected(cast)
    undo = {"sequence": 1, "kind": "undo", "event": {"client": "desk-1", "sequence": 0}}
    assert post(cast, undo).status_code == 200
    assert leaning(cast.talk) == {}


def test_on_a_substitutes_talk_no_talk_before_counts(cast):
    corrected(cast)
    later = start_talk(cast.school_class, problems=["39 + 27"])
    Talk.objects.filter(pk=later.pk).update(history=False)
    later.refresh_from_db()
    assert leaning(later) == {}


def test_the_settings_say_each_correction_in_plain_words(cast):
    corrected(cast)
    corrected(cast, 1)
    page = cast.owner.get("/settings").text
    assert "When two readings are equally good, this class leans to:" in page
    assert "you chose it 2 times" in page
    cast.owner.post("/settings", {"language": "es"})
    assert "usted la eligió 2 veces" in cast.owner.get("/settings").text


def test_one_correction_is_erased_and_the_others_stay(cast):
    corrected(cast)
    corrected(cast, 1, chosen="counting", proposed=None)
    assert keys(cast) == {"split<bridge": 1, "counting<": 1}
    assert erase(cast, key="split<bridge").status_code == 302
    assert keys(cast) == {"counting<": 1}
    cast.talk.refresh_from_db()
    assert leaning(cast.talk) == {Family.COUNTING: 1}


def test_what_was_erased_stays_erased_and_the_record_stays_whole(cast):
    corrected(cast)
    later = start_talk(cast.school_class, problems=["39 + 27"])
    assert leaning(later) == {Family.SPLIT: 1}
    erase(cast)
    assert history_before(later).corrections == {}
    assert at_hand(cast.talk.pk).state.ways[0].family is Family.SPLIT
    corrected(cast, 1)
    assert keys(cast) == {"split<bridge": 1}
    assert leaning(later) == {Family.SPLIT: 1}


def test_a_correction_in_an_earlier_talk_counts_at_once_in_one_that_is_going_on(cast):
    later = start_talk(cast.school_class, problems=["39 + 27"])
    assert leaning(later) == {}
    corrected(cast)
    assert leaning(later) == {Family.SPLIT: 1}
    erase(cast)
    assert leaning(later) == {}
    corrected(cast, 1)
    assert leaning(later) == {Family.SPLIT: 1}
    forget_talks([cast.talk])
    assert leaning(later) == {}


@pytest.mark.parametrize("who", ["colleague", "outsider", "panel"])
def test_nobody_else_erases(cast, who):
    corrected(cast)
    assert erase(cast, who).status_code in (302, 403, 404)
    assert keys(cast) == {"split<bridge": 1}


def test_a_class_that_is_none_is_refused(cast):
    assert cast.owner.post("/settings/leanings", {"class": "x"}).status_code == 404


def test_what_others_said_is_heard_in_same_as(cast):
    child = child_id(cast.school_class, "Bram")
    post(cast, way(problem_id(cast.talk), child, words="39 and 1"))
    ears = ears_for(cast.talk, at_hand(cast.talk.pk).state, "39 + 27")
    assert ears.language is Language.EN
    assert [name for name, _ in ears.before] == ["Bram"]
    at, problem = f"/talks/{cast.talk.pk}/read", problem_id(cast.talk)
    line = {"problem": problem, "line": "same as Bram"}
    read = cast.owner.post(at, line, content_type="application/json").json()
    assert read["family"] == "bridge"
    assert [step["equation"] for step in read["steps"]] == ["39 + 1 = 40", "40 + 26 = 66"]
