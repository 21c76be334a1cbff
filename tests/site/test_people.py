"""A teacher sees her own classes; to a colleague and an outsider they are not there."""

import json

import pytest

from waysaid.site.models import Picture, PictureKind

JSON = "application/json"


def paths(cast):
    talk = cast.talk.pk
    return [
        ("get", f"/talks/{talk}/desk"),
        ("get", f"/talks/{talk}/desk.json"),
        ("get", f"/talks/{talk}/links"),
        ("post", f"/talks/{talk}/events"),
        ("post", f"/talks/{talk}/read"),
        ("post", f"/talks/{talk}/network"),
        ("post", f"/talks/{talk}/pairing"),
    ]


@pytest.mark.parametrize("who", ["colleague", "outsider", "panel"])
def test_whoever_is_not_the_owner_finds_nothing(cast, who):
    client = getattr(cast, who)
    for method, path in paths(cast):
        if method == "get":
            answered = client.get(path)
        else:
            answered = client.post(path, json.dumps({"on": True}), content_type=JSON)
        assert answered.status_code == 404, path


def test_what_is_anothers_looks_like_what_is_not_there(cast):
    theirs = cast.colleague.get(f"/talks/{cast.talk.pk}/desk")
    nothing = cast.colleague.get("/talks/99999/desk")
    assert theirs.status_code == nothing.status_code == 404
    assert theirs.content == nothing.content


def test_the_owner_finds_her_talk(cast):
    assert cast.owner.get(f"/talks/{cast.talk.pk}/desk").status_code == 200
    assert cast.owner.get(f"/talks/{cast.talk.pk}/desk.json").json()["title"] == cast.talk.title


def test_nobody_begins_a_talk_in_anothers_class(cast):
    started = cast.colleague.post("/start", {"class": cast.school_class.pk, "problem": "1+1"})
    assert started.status_code == 302
    assert cast.school_class.talks.count() == 1
    assert cast.colleague.post("/class/choose", {"class": cast.school_class.pk}).status_code == 404


def test_nobody_begins_a_talk_on_anothers_plan(cast):
    plan = cast.school_class.plans.create(title="x", problems=[{"id": "a", "text": "1 + 1"}])
    assert cast.colleague.post("/start", {"plan": plan.pk}).status_code == 404


def test_a_picture_of_anothers_class_is_not_there(cast):
    picture = Picture.objects.create(
        school_class=cast.school_class,
        kind=PictureKind.SIGNAL,
        content=b"RIFF",
        content_type="image/webp",
        width=1,
        height=1,
    )
    assert cast.owner.get(f"/class/picture/{picture.pk}").status_code == 200
    assert cast.colleague.get(f"/class/picture/{picture.pk}").status_code == 404
    assert cast.colleague.post(f"/class/picture/{picture.pk}/remove").status_code == 404
    assert cast.outsider.get(f"/class/picture/{picture.pk}").status_code == 403


def test_an_outsider_is_told_how_to_get_in(cast):
    for path in ("/", "/welcome", "/class"):
        assert cast.outsider.get(path).status_code == 403
