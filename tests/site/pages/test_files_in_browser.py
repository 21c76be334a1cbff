"""Files in and out by keyboard, in both languages, on a narrow screen, with a real download."""

import json

import pytest

from tests.site.pages.test_in_browser import NARROW, TOO_WIDE
from tests.site.rosters import school_file
from waysaid.paper import (
    ChildInFile,
    TalkFile,
    read_evidence_csv,
    read_talk_file,
    talk_file_bytes,
)
from waysaid.talk import PlannedProblem, Record
from waysaid.talk import event as happened

pytestmark = pytest.mark.browser


@pytest.fixture(scope="module")
def talk():
    """A talk of elsewhere: one child who is on the list, one who is not, one without a name."""
    opened = happened.TalkOpened("Monday", "en", "en", (PlannedProblem("p", "40 + 25"),))
    bodies = [opened, *(happened.Noticed(f"n{at}", f"c{at}", "near") for at in (1, 2, 3))]
    events = tuple(
        Record(at, "d", at, body, 1_790_000_000_000) for at, body in enumerate(bodies, 1)
    )
    children = (ChildInFile("c1", "Bram"), ChildInFile("c2", "Zora"), ChildInFile("c3"))
    return TalkFile("Near forty", problems=opened.problems, children=children, events=events)


def faultless(page, axe):
    assert axe(page) == []
    assert page.evaluate(TOO_WIDE) == []


def give(page, name, content):
    page.set_input_files("#file", {"name": name, "mimeType": "", "buffer": content})


@pytest.mark.parametrize("language", ["en", "es"])
def test_a_talk_file_is_brought_in_with_the_keyboard_on_a_narrow_screen(
    house, enter, axe, talk, language
):
    house.teacher.get("/settings")
    house.teacher.send_form("/settings", language=language)
    try:
        page = enter("/talks/bring", viewport=NARROW)
        faultless(page, axe)
        give(page, "talk.json", b"{}")
        page.locator("main form button").focus()
        page.keyboard.press("Enter")
        page.locator("#wrong").wait_for()
        faultless(page, axe)
        give(page, "talk.json", talk_file_bytes(talk))
        page.locator("main form button").focus()
        page.keyboard.press("Enter")
        page.locator("select").first.wait_for()
        faultless(page, axe)
        chosen = [each.evaluate("one => one.value") for each in page.locator("select").all()]
        assert (bool(chosen[0]), bool(chosen[2])) == (True, False)
        if not chosen[1]:
            page.locator("select").nth(1).focus()
            page.keyboard.press("ArrowDown")
        page.locator("button[value=talk]").focus()
        page.keyboard.press("Enter")
        page.wait_for_url("**/back")
        assert "Zora" in page.locator(".steps").inner_text()
    finally:
        house.teacher.send_form("/settings", language="en")


@pytest.mark.parametrize("language", ["en", "es"])
def test_names_from_a_schools_file_are_chosen_and_looked_at(house, enter, axe, language):
    house.teacher.get("/settings")
    house.teacher.send_form("/settings", language=language)
    try:
        page = enter("/class", viewport=NARROW)
        give(page, "school.zip", school_file())
        page.locator("form[enctype] button[value=add]").click()
        page.locator("#section").wait_for()
        faultless(page, axe)
        page.keyboard.press("Tab")
        page.locator("main form button").focus()
        page.keyboard.press("Enter")
        page.locator("#child-1").wait_for()
        faultless(page, axe)
        assert page.locator("#child-1").input_value() == "Pepe"
    finally:
        house.teacher.send_form("/settings", language="en")


def downloaded(page, press):
    with page.expect_download() as waiting:
        press()
    return waiting.value.path().read_bytes()


def test_what_is_downloaded_is_what_is_there(house, enter):
    page = enter(f"{house.talk}/back")
    press = page.locator("form[action$='talk.json'] button")
    without = read_talk_file(downloaded(page, press.click))
    assert {each.name for each in without.children} == {""}
    page.locator("form[action$='talk.json'] input").check()
    named = read_talk_file(downloaded(page, press.click))
    assert named.events == without.events
    assert {each.name for each in named.children} == {"Bram"}
    page.goto(house.origin + house.plan)
    plan = json.loads(downloaded(page, page.locator("a[href$='plan.json']").click))
    assert [each["text"] for each in plan["problems"]] == ["40 + 26", "39 + 26", "39 + 27"]
    slides = downloaded(page, page.locator("a[href$='slides.pptx']").first.click)
    assert slides.startswith(b"PK")
    page.goto(house.origin + "/class/record")
    table = downloaded(page, page.locator("form[action$='evidence.csv'] button").first.click)
    assert read_evidence_csv(table)
