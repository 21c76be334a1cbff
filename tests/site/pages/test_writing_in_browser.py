"""Typing in a talk held on paper: read as it is typed, kept by keyboard alone."""

import re

import pytest
from playwright.sync_api import expect

pytestmark = [pytest.mark.browser]


def test_lines_are_read_as_they_are_typed_and_kept_with_the_keyboard_alone(house, enter):
    page = enter(f"{house.plan}/written")
    field = page.get_by_role("textbox", name="39 + 26")
    field.focus()
    page.keyboard.type("Ar, 39+1=40+25\n= Bram\nZz, 65")
    read = field.locator("xpath=..").locator("ol > li")
    expect(read).to_have_count(3)
    expect(read.nth(0)).to_contain_text("Aroha: 39 + 1 = 40, 40 + 25")
    expect(read.nth(2)).to_have_class("wrong-line")
    for _ in "\nZz, 65":
        page.keyboard.press("Backspace")
    expect(read).to_have_count(2)
    page.get_by_role("button", name="Keep the talk").focus()
    page.keyboard.press("Enter")
    page.wait_for_url(re.compile(r"/talks/\d+/back"))
    expect(page.locator(".whole-talk")).to_contain_text("and Bram")


def test_what_was_typed_is_there_again_after_a_crash_and_gone_once_it_is_kept(house, enter):
    page = enter(f"{house.plan}/written")
    field = page.get_by_role("textbox", name="39 + 26")
    field.fill("Bram, 39+1=40+25")
    expect(page.get_by_text("Bram: 39 + 1 = 40")).to_be_visible()
    page.on("dialog", lambda dialog: dialog.accept())
    page.reload()
    expect(field).to_have_value("Bram, 39+1=40+25")
    expect(page.get_by_text("Bram: 39 + 1 = 40")).to_be_visible()
    page.get_by_role("button", name="Keep the talk").click()
    page.wait_for_url(re.compile(r"/talks/\d+/back"))
    with page.expect_response("**/written.json"):
        page.goto(f"{house.origin}{house.plan}/written")
    expect(field).to_have_value("")
    assert page.evaluate("sessionStorage.length") == 0
