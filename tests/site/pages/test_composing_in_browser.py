"""Composing in a real browser, by keyboard alone: a wish, a lock, the rest again, another idea."""

import re

import pytest

pytestmark = [pytest.mark.browser, pytest.mark.slow]

NARROW = {"width": 320, "height": 640}
WIDE = {"width": 1280, "height": 800}


def press(page, name, place=0):
    """Press a button as the keyboard does."""
    page.get_by_role("button", name=name).nth(place).focus()
    with page.expect_navigation():
        page.keyboard.press("Enter")


def problems(page):
    return page.locator(".plan-row .problem-cell > [aria-hidden]").all_inner_texts()


def composed(page):
    """Compose from the form with nothing but keys: four problems to 20, near doubles."""
    page.get_by_label("Grade").focus()
    page.keyboard.type("Grade 1")
    page.keyboard.press("Tab")
    page.keyboard.type("near double")
    page.keyboard.press("Tab")
    page.keyboard.type("sums")
    page.keyboard.press("Tab")
    page.keyboard.type("4")
    page.keyboard.press("Tab")
    page.keyboard.type("20")
    with page.expect_navigation():
        page.keyboard.press("Enter")


@pytest.mark.parametrize("viewport", [WIDE, NARROW])
def test_a_string_is_composed_locked_recomposed_and_changed_for_another_idea(
    enter, axe, watch, viewport
):
    page = enter("/plans/compose", viewport=viewport)
    composed(page)
    first = problems(page)
    assert len(first) == 4
    assert "problem 1" in page.locator(".why-cell").nth(1).inner_text().lower()

    lock = page.locator("button[value^='lock:']").nth(1)
    lock.focus()
    page.keyboard.press("Enter")
    page.wait_for_function("one => one.textContent.startsWith('Locked')", arg=lock.element_handle())
    assert lock.get_attribute("aria-pressed") == "true"
    assert lock.evaluate("one => one === document.activeElement")
    press(page, "Compose the rest again")
    second = problems(page)
    assert second[1] == first[1]
    assert not {*first[:1], *first[2:]} & set(second)
    assert page.get_by_role("heading", name="What the change costs").is_visible()
    assert "tenth" in page.locator(".cost").inner_text()
    assert axe(page) == []

    press(page, "Other ideas")
    assert axe(page) == []
    assert page.evaluate("document.documentElement.scrollWidth") <= viewport["width"]
    cards = page.locator(".ideas .card")
    assert 1 <= cards.count() <= 3
    wanted = cards.first.locator(".between").all_inner_texts()
    press(page, "Take this one")
    assert problems(page) == wanted
    assert wanted[1] == first[1]
    assert watch.errors == []


def test_a_problem_typed_says_at_once_what_it_costs(enter, axe):
    page = enter("/plans/compose")
    composed(page)
    press(page, re.compile("^Open"), 0)
    field = page.get_by_label("Problem", exact=True)
    field.fill("9 + 4")
    page.keyboard.press("Tab")
    costs = page.locator(".cost li")
    costs.first.wait_for()
    assert any(line.startswith("easy to enter: ") for line in costs.all_inner_texts())
    assert page.locator("button[value^='lock:']").first.get_attribute("aria-pressed") == "true"
    assert axe(page) == []


def test_what_it_is_about_follows_the_idea(enter):
    page = enter("/plans/compose")
    topic = page.get_by_label("What it is about")
    topic.select_option("claims")
    page.get_by_label("The idea that pays off").select_option("near-fact")
    assert topic.input_value() == ""
    offered = topic.locator("option:not([disabled])")
    values = [each.get_attribute("value") for each in offered.all()]
    assert values == ["", "products", "quotients", "quick-images"]


def test_a_wish_that_cannot_be_met_keeps_every_field(enter):
    page = enter("/plans/compose")
    page.get_by_label("Problems that must be in it").fill("6 +")
    page.get_by_label("The last one comes as a surprise").check()
    press(page, "Compose")
    assert "6 +" in page.get_by_role("alert").inner_text()
    assert page.get_by_label("Problems that must be in it").input_value() == "6 +"
    assert page.get_by_label("The last one comes as a surprise").is_checked()


def test_in_spanish_ideas_and_costs_fit_320_pixels(house, enter, axe):
    house.teacher.get("/settings")
    house.teacher.send_form("/settings", language="es")
    try:
        page = enter("/plans/compose", viewport=NARROW)
        press(page, "Componer")
        press(page, "Componer el resto de nuevo")
        press(page, "Otras ideas")
        assert page.get_by_role("heading", name="Lo que cuesta el cambio").is_visible()
        assert page.get_by_role("button", name="Tomar esta").count() >= 1
        assert page.evaluate("document.documentElement.scrollWidth") <= NARROW["width"]
        assert axe(page) == []
    finally:
        house.teacher.send_form("/settings", language="en")
