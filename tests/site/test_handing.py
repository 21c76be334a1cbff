"""What is handed over is what was chosen: nothing else is in the file or on the other's pages."""

import json
from itertools import product

import pytest
from django.contrib.auth.models import User
from django.core.files.uploadedfile import SimpleUploadedFile
from hypothesis import given
from hypothesis import strategies as st

from tests.site.made import problem_id, sent, way
from waysaid.site import sharing
from waysaid.site.erasing import forget_child
from waysaid.site.handed_file import BadHandedError, read_handed
from waysaid.site.handing import FORM
from waysaid.site.models import Child, Plan, SchoolClass
from waysaid.site.people_models import HandedOver
from waysaid.site.views import pages_hand

WORDS, SECRET = "forty is friendlier", "confidential remark"
FIELDS = ("names", "ways", "picture", "strings")


@pytest.fixture
def told(cast, monkeypatch):
    """The cast on a server; Bram told a way and spoke of Aroha, and there is more of each."""
    for module in (sharing, pages_hand):
        monkeypatch.setattr(module, "can_share", lambda: True)
    problem = problem_id(cast.talk)
    bram, aroha = (cast.school_class.children.get(name=name).key for name in ("Bram", "Aroha"))
    events = (
        way(problem, bram, 0, words=f"{WORDS}, as Aroha says"),
        way(problem, aroha, 1, words="mine alone", family="jump"),
        {"sequence": 2, "kind": "noticed", "id": "n", "child": bram, "words": SECRET},
    )
    answered = cast.owner.post(
        f"/talks/{cast.talk.pk}/events", json.dumps(sent(*events)), content_type="application/json"
    )
    assert answered.status_code == 200
    return cast


def of(told, name):
    return str(told.school_class.children.get(name=name).pk)


def asked(told, *what, names=("Bram",), do="file", **more):
    form = {"what": what, "child": [of(told, name) for name in names], "do": do, **more}
    return told.owner.post("/class/hand-over", form)


def into(told, at=0):
    """Return the address at which the colleague takes what waits."""
    return f"/class/handed/{HandedOver.objects.all()[at].pk}"


@pytest.mark.parametrize("ticked", list(product((False, True), repeat=4)))
def test_a_file_holds_each_field_that_was_chosen_and_no_other(told, ticked):
    chosen = [field for field, on in zip(FIELDS, ticked, strict=True) if on]
    answer = asked(told, *chosen)
    if not chosen or (not ticked[0] and (ticked[1] or ticked[2])):
        assert answer.status_code == 400
        return
    file = answer.content.decode()
    assert ("Bram" in file) == ticked[0]
    assert (WORDS in file) == ticked[1]
    assert ('"families"' in file) == ticked[2]
    assert ('"strings"' in file) == ticked[3]
    for never in ("Aroha", "mine alone", SECRET, "Chidi", "2B", of(told, "Bram") + '"'):
        assert never not in file
    assert set(json.loads(file)) <= {"form", "children", "strings"}


def test_a_colleague_sees_what_was_chosen_and_takes_it_where_she_says(told):
    asked(told, "names", "ways", names=("Bram", "Elif"), do="colleague", account="Colleague")
    page = told.colleague.get(into(told)).text
    assert WORDS in page
    assert [each for each in (SECRET, "mine alone", "families") if each in page] == []
    other = SchoolClass.objects.get(owner=User.objects.get(username="colleague"))
    before = other.children.count()
    told.colleague.post(into(told), {"do": "take", "goes-0": "new", "goes-1": "out"})
    assert other.children.count() == before + 1
    new = other.children.order_by("-pk").first()
    assert new.name == "Bram (2)", "the list has a Bram"
    kept = HandedOver.objects.get()
    assert [row["child"] for row in kept.content["children"]] == [new.key]
    assert "Bram" not in json.dumps(kept.content)
    assert WORDS in told.colleague.get("/class/handed").text
    assert told.owner.get("/class/handed").text.count(WORDS) == 0


def test_strings_become_plans_and_nothing_waits_any_more(told):
    asked(told, "strings", do="colleague", account="colleague")
    told.colleague.post(into(told), {"do": "take"})
    plan = Plan.objects.get()
    assert [row["text"] for row in plan.problems] == ["39 + 27"]
    assert plan.school_class.owner.username == "colleague"
    assert not HandedOver.objects.exists()


def test_nobody_else_can_take_it_and_what_is_left_is_gone(told):
    asked(told, "names", "ways", do="colleague", account="nobody")
    assert told.colleague.get(into(told)).status_code == 404
    assert told.colleague.post(into(told), {"do": "take", "goes-0": "new"}).status_code == 404
    assert told.owner.get(into(told)).status_code == 404
    row = HandedOver.objects.get()
    assert told.colleague.post(f"/class/hand-over/{row.pk}/withdraw").status_code == 404
    assert told.owner.post(f"/class/hand-over/{row.pk}/withdraw").status_code == 302
    asked(told, "names", do="colleague", account="colleague")
    told.colleague.post(into(told), {"do": "leave"})
    assert not HandedOver.objects.exists()


@pytest.mark.parametrize("taken", [False, True])
def test_a_child_who_is_erased_is_gone_from_what_waits_and_from_what_was_taken(told, taken):
    asked(told, "names", "ways", "picture", do="colleague", account="colleague")
    child = told.school_class.children.get(name="Bram")
    if taken:
        other = SchoolClass.objects.get(owner=User.objects.get(username="colleague"))
        child = other.children.get(name="Bram")
        told.colleague.post(into(told), {"do": "take", "goes-0": child.key})
    assert WORDS in json.dumps(HandedOver.objects.get().content)
    forget_child(child, said_too=True)
    assert HandedOver.objects.get().content.get("children") == []


def test_a_file_goes_round_and_is_looked_at_first(told):
    file = asked(told, "names", "ways", "picture", "strings").content
    sent_file = SimpleUploadedFile("handed.json", file, "application/json")
    before = Child.objects.count()
    went = told.colleague.post("/class/handed", {"do": "file", "file": sent_file})
    assert went.status_code == 302
    assert Child.objects.count() == before
    page = told.colleague.get(went.headers["Location"]).text
    assert WORDS in page
    assert "39 + 27" in page
    assert read_handed(file) == json.loads(file)


@pytest.mark.parametrize(
    "content",
    [b"", b"[]", b"\xff\xfe", b"null", b"{" * 100_000, b'{"form": "other"}',
     json.dumps({"form": FORM, "children": "x"}).encode(),
     json.dumps({"form": FORM, "children": [{}] * 61}).encode(), b" " * 2_000_001],
)  # fmt: skip
def test_what_is_no_such_file_is_one_sentence_and_changes_nothing(told, content):
    sent_file = SimpleUploadedFile("x.json", content, "application/json")
    page = told.owner.post("/class/handed", {"do": "file", "file": sent_file})
    assert page.status_code == 400
    assert 'role="alert"' in page.text
    assert not HandedOver.objects.exists()


anything = st.recursive(
    st.none() | st.booleans() | st.integers() | st.text(max_size=8),
    lambda inner: (
        st.lists(inner, max_size=4)
        | st.dictionaries(
            st.sampled_from(
                ["name", "ways", "families", "family", "steps", "day", "words", "problems", "child"]
            ),
            inner,
            max_size=5,
        )
    ),
    max_leaves=20,
)


@given(anything, anything)
def test_whatever_a_file_holds_what_is_read_is_of_our_form(children, strings):
    content = json.dumps({"form": FORM, "children": children, "strings": strings}).encode()
    try:
        read = read_handed(content)
    except BadHandedError:
        return
    assert set(read) <= {"form", "children", "strings"}
    for row in read.get("children", ()):
        assert set(row) <= {"name", "ways", "families"}
        assert row["name"]
    assert read_handed(json.dumps(read).encode()) == read
