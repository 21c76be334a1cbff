"""Each part in a class, and each outsider, tries every address and learns nothing beyond it."""

import json
import re

import pytest
from django.conf import settings
from django.contrib.auth.models import User
from django.test import Client
from django.urls import URLPattern, get_resolver

from tests.site.made import make_class, problem_id, sent, way
from waysaid.site import sharing
from waysaid.site.access import desk_seat, visitor_of_cookies
from waysaid.site.models import DeviceKey, Role, SchoolYear, hashed
from waysaid.site.people_models import HandedOver, Member, Part
from waysaid.site.rights import OWNER, RIGHTS, Act, may
from waysaid.site.talks import start_talk
from waysaid.site.views import pages_backups, pages_settings, pages_share

pytestmark = pytest.mark.slow

CANARY = "Zyxwvut"
CLASS_CANARY = "Qwopclass"
WORDS_CANARY = "vexing marmalade"
PRIVATE = (CANARY, CLASS_CANARY, WORDS_CANARY)

OPEN = {
    "", "welcome", "open/<str:token>", "running", "join", "class/choose", "settings", "shared",
    "settings/leanings", "settings/copy", "settings/old-talks", "typed", "invited/<str:token>",
    "year/busy", "settings/backups", "settings/backups/back",
}  # fmt: skip
"""Addresses that are about no class, or that hold nothing of one by themselves."""
DESK = {"desk", "desk.json", "events", "read", "typed", "links", "picture/<int:picture_id>"}
NEEDS = {
    "class": Act.CLASS,
    "class/picture": Act.CLASS,
    "class/picture/<int:picture_id>": Act.LOOK_BACK,
    "class/picture/<int:picture_id>/remove": Act.CLASS,
    "class/board": Act.CLASS,
    "class/words": Act.CLASS,
    "class/share": Act.SHARE,
    "class/showed": Act.LOOK_BACK,
    "class/showed/next": Act.PLAN,
    "class/child/<int:child_id>/ways": Act.LOOK_BACK,
    "class/record": Act.KEEP,
    "class/record.json": Act.KEEP,
    "class/forget": Act.KEEP,
    "class/handed": Act.CLASS,
    "class/handed/<int:handed_id>": Act.CLASS,
    "class/child/<int:child_id>/forget": Act.KEEP,
    "talks/start": Act.TEACH,
    "start": Act.TEACH,
    "talks/": Act.LOOK_BACK,
    "talks/report.pdf": Act.LOOK_BACK,
    "talks/written": Act.TEACH,
    "plans/<int:plan_id>/written": Act.TEACH,
    "plans/<int:plan_id>/written.json": Act.TEACH,
    "talks/<int:talk_id>/back": Act.LOOK_BACK,
    "talks/<int:talk_id>/back/board": Act.LOOK_BACK,
    "talks/<int:talk_id>/back/state.json": Act.LOOK_BACK,
    "talks/<int:talk_id>/chart.pdf": Act.LOOK_BACK,
    "talks/<int:talk_id>/family.pdf": Act.LOOK_BACK,
    "talks/<int:talk_id>/forget": Act.KEEP,
    "talks/<int:talk_id>/talk.json": Act.KEEP,
    "year/forget": Act.KEEP,
    "shared/<int:class_id>/boards": Act.BOARDS,
    "shared/summary": Act.SUMMARY,
    **dict.fromkeys(
        [f"talks/<int:talk_id>/{part}" for part in (*sorted(DESK), "network", "pairing", "resume")],
        Act.TEACH,
    ),
}  # fmt: skip
"""What an address asks for where that is not what `USUAL` says."""
USUAL = {
    "plans/": Act.PLAN, "starters": Act.PLAN, "year/": Act.PLAN, "ways/": Act.PLAN,
    "talks/<int:talk_id>/": Act.LOOK_BACK,
}  # fmt: skip
"""By how an address begins; one that begins otherwise is for whoever may do everything."""


def needed(route):
    """Return the act an address asks for, or None for one that is open or goes by its token."""
    if route in OPEN or route.startswith(("board/", "one/", "login", "logout")):
        return None
    usual = (act for start, act in USUAL.items() if route.startswith(start))
    return NEEDS.get(route) or next(usual, Act.KEEP)


def everyone(school_class, talk):
    """Return a browser for each who tries: those with a part, and those without one."""
    clients = {"signed out": Client(raise_request_exception=False)}
    for name in ("owner", "stranger", "revoked", *Part.values):
        person, _made = User.objects.get_or_create(username=name)
        clients[name] = Client(raise_request_exception=False)
        clients[name].force_login(person)
        if name in Part.values:
            Member.objects.create(school_class=school_class, person=person, part=name)
    for name in ("stranger", "revoked"):
        make_class(User.objects.get(username=name), name="3A", names=("Odd",))
    was = Member.objects.create(
        school_class=school_class, person=User.objects.get(username="revoked"), part=Part.TEACHER
    )
    sharing.take_back(was)
    talk.refresh_from_db()
    for role in Role.values:
        clients[role] = Client(raise_request_exception=False)
        clients[role].cookies[settings.DEVICE_COOKIE_NAME] = f"{role}'s key"
        DeviceKey.objects.create(talk=talk, role=role, key_hash=hashed(f"{role}'s key"))
    return clients


@pytest.fixture
def school(db, monkeypatch):
    """A class full of canaries, with everyone who may try at it."""
    for module in (sharing, pages_share):
        monkeypatch.setattr(module, "can_share", lambda: True)
    for page in (pages_settings, pages_backups):
        monkeypatch.setattr(page, "can_copy", lambda: False)
    owner = User.objects.create(username="owner")
    school_class = make_class(owner, name=CLASS_CANARY, names=(CANARY, "Bram"))
    plan = school_class.plans.create(
        title=WORDS_CANARY, problems=[{"id": "p", "text": "39 + 27", "why": WORDS_CANARY}]
    )
    SchoolYear.objects.create(
        school_class=school_class, grade=2, curriculum="ccss", first="2026-09-01", last="2027-06-20"
    )
    talk = start_talk(school_class, problems=["39 + 27"])
    child = school_class.children.get(name=CANARY)
    picture = school_class.pictures.create(
        kind="signal", content=CANARY.encode(), content_type="image/webp", width=1, height=1
    )
    clients = everyone(school_class, talk)
    told = way(problem_id(talk), child.key, 0, words=WORDS_CANARY)
    answered = clients["owner"].post(
        f"/talks/{talk.pk}/events", json.dumps(sent(told)), content_type="application/json"
    )
    assert answered.status_code == 200
    handed = HandedOver.objects.create(
        to="owner", came_from=school_class, content={"children": [{"name": CANARY}]}
    )
    given = {
        "talk_id": talk.pk, "plan_id": plan.pk, "child_id": child.pk, "picture_id": picture.pk,
        "class_id": school_class.pk, "handed_id": handed.pk, "token": "x", "slug": "bridge",
        "day": "2026-09-01",
    }  # fmt: skip
    return school_class, clients, given


def routes():
    """Return every address of the site as it is written in its list."""
    patterns = [each for each in get_resolver().url_patterns if isinstance(each, URLPattern)]
    return sorted(str(each.pattern) for each in patterns)


def filled(route, given):
    """Return the address with the things of the canaries' class in it."""
    return "/" + re.sub(r"<\w+:(\w+)>", lambda found: str(given[found[1]]), route)


IDS = {"handed_id", "talk_id", "plan_id", "child_id", "picture_id", "class_id"}
EMPTY = {"class/handed/<int:handed_id>": 404, "plans/warm": 400, "year/day/<str:day>": 404}
"""What answers so to whoever asks for nothing in particular."""
PARTS = ("owner", "stranger", "revoked", "signed out", *Role.values, *Part.values)


def allowed(who, route):
    """Tell whether the table lets this person in."""
    act = needed(route)
    if act is None:
        return True
    if who == Role.DESK and route.removeprefix("talks/<int:talk_id>/") in DESK:
        return True
    part = OWNER if who == "owner" else who if who in Part.values else None
    return may(part, act)


@pytest.mark.parametrize("method", ["get", "post"])
@pytest.mark.parametrize("who", PARTS)
def test_nobody_learns_or_changes_anything_beyond_their_part(school, who, method):
    school_class, clients, given = school
    client, wrong = clients[who], []
    before = set(school_class.children.values_list("name", flat=True))
    for route in routes():
        if allowed(who, route) and (who in ("owner", Part.TEACHER) or needed(route) is not None):
            continue
        answer = getattr(client, method)(filled(route, given))
        told = b"" if answer.streaming else answer.content
        shared_name = who in Part.values and needed(route) is None
        if who == Part.CO_TEACHER and route == "":
            continue
        leaks = [each for each in PRIVATE if each.encode() in told]
        if leaks and not (shared_name and leaks == [CLASS_CANARY]):
            wrong.append((route, answer.status_code, leaks))
        own = who in ("stranger", "revoked") and not {*re.findall(r"<\w+:(\w+)>", route)} & IDS
        if needed(route) and not own and answer.status_code == 200:
            wrong.append((route, answer.status_code, "let in"))
    assert wrong == []
    assert set(school_class.children.values_list("name", flat=True)) == before
    assert school_class.talks.count() == 1


@pytest.mark.parametrize("who", ["owner", Part.TEACHER, Part.CO_TEACHER])
def test_everybody_gets_what_their_part_includes(school, who):
    _class, clients, given = school
    refused = []
    for route in routes():
        if needed(route) is None or not allowed(who, route) or route == "starters/<slug:slug>":
            continue
        status = clients[who].get(filled(route, given)).status_code
        if status not in (200, 302, 405, EMPTY.get(route)):
            refused.append((route, status))
    assert refused == []


def test_the_table_names_every_part_and_gives_a_part_no_more_than_the_owner():
    assert set(RIGHTS) == {OWNER, *Part.values}
    assert all(rights <= RIGHTS[OWNER] for rights in RIGHTS.values())
    assert RIGHTS[Part.VISITOR] == {Act.BOARDS}
    assert RIGHTS[Part.COACH] == {Act.SUMMARY}
    assert not any(may(Part.CO_TEACHER, act) for act in (Act.KEEP, Act.SHARE, Act.CLASS))
    assert not any(may(None, act) for act in Act)


@pytest.mark.parametrize("who", [who for who in PARTS if who != "stranger"])
def test_a_part_in_one_class_is_none_in_another(school, who):
    _class, clients, given = school
    stranger = User.objects.get(username="stranger")
    other = stranger.classes.get()
    talk = start_talk(other, problems=["39 + 27"])
    child = other.children.create(name="Vexillum", order=5)
    plan = other.plans.create(title="Vexillum")
    theirs = given | {
        "talk_id": talk.pk, "child_id": child.pk, "plan_id": plan.pk, "class_id": other.pk
    }  # fmt: skip
    wrong = []
    for route in routes():
        if not {*re.findall(r"<\w+:(\w+)>", route)} & {
            "talk_id",
            "child_id",
            "plan_id",
            "class_id",
        }:
            continue
        for method in ("get", "post"):
            answer = getattr(clients[who], method)(filled(route, theirs))
            if b"Vexillum" in answer.content or answer.status_code == 200:
                wrong.append((route, method, answer.status_code))
    assert wrong == []
    assert other.children.filter(name="Vexillum").exists()
    assert other.talks.count() == other.plans.count() == 1


@pytest.mark.parametrize("who", PARTS)
def test_a_desks_stream_is_for_whoever_may_teach_and_a_joined_desk(school, who):
    school_class, clients, _given = school
    talk = school_class.talks.get()
    cookies = {name: each.value for name, each in clients[who].cookies.items()}
    seat = desk_seat(visitor_of_cookies(cookies, None), talk.pk)
    teaches = who in ("owner", Part.TEACHER, Part.CO_TEACHER)
    assert (seat is not None) == (teaches or who == Role.DESK)
    assert seat is None or seat.owner == teaches
