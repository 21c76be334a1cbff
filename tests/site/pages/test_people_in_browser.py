"""Keeping, forgetting and handing over in a browser: by keyboard, in Spanish, on a phone."""

import pytest

pytestmark = pytest.mark.browser

PHONE = {"width": 320, "height": 640}
PAGES = (
    "/class/record",
    "/class/share",
    "/class/hand-over",
    "/class/handed",
    "/settings/backups",
    "/shared",
    "/shared/summary",
)


@pytest.mark.parametrize("path", PAGES)
def test_each_page_is_whole_on_a_phone_in_spanish_and_has_nothing_axe_minds(
    house, enter, axe, watch, path
):
    house.teacher.get("/settings")
    house.teacher.send_form("/settings", language="es")
    try:
        page = enter(path, viewport=PHONE)
        assert page.evaluate("document.documentElement.lang") == "es"
        assert page.evaluate("document.documentElement.scrollWidth") <= PHONE["width"]
        assert axe(page) == []
    finally:
        house.teacher.get("/settings")
        house.teacher.send_form("/settings", language="en")
    assert watch.errors == []


def test_going_back_takes_three_clicks_from_the_settings(house, enter):
    house.teacher.get("/settings/backups")
    assert house.teacher.send_form("/settings/backups", do="now").status == 302
    page = enter("/settings")
    page.get_by_role("link", name="Backups").click()
    page.get_by_role("link", name="Go back to it").first.click()
    page.get_by_role("button", name="Go back").click()
    page.wait_for_url(f"{house.origin}/")
    assert page.get_by_role("heading", name="2B").is_visible()
    house.teacher.cookies = {each["name"]: each["value"] for each in page.context.cookies()}


def test_a_child_is_erased_by_keyboard_alone(house, enter):
    page = enter("/class/record")
    page.get_by_role("link", name="Delete… Hugo").focus()
    page.keyboard.press("Enter")
    page.get_by_label("The name, and everything").focus()
    page.keyboard.press("Space")
    page.get_by_role("button", name="Delete").focus()
    page.keyboard.press("Enter")
    page.wait_for_url("**/class/record")
    assert "Hugo" not in page.content()
    names = house.teacher.get("/class").text
    assert "Hugo" not in names
    assert "Gita" in names


def test_a_class_is_handed_over_as_a_file_and_taken_back_in(house, enter, tmp_path):
    page = enter("/class/hand-over")
    page.get_by_label("Names, of the children").check()
    page.get_by_label("The ways each of them told").check()
    with page.expect_download() as coming:
        page.get_by_role("button", name="Download as a file").click()
    file = tmp_path / "handed.json"
    coming.value.save_as(file)
    page.goto(f"{house.origin}/class/handed")
    page.get_by_label("A file that was handed to you").set_input_files(file)
    page.get_by_role("button", name="Look at it").click()
    page.get_by_role("button", name="Take it", exact=True).click()
    page.wait_for_url("**/class/handed")
    assert page.get_by_role("heading", name="Bram").is_visible()
    page.get_by_text("1 way").click()
    assert page.get_by_text("39 + 1 = 40").is_visible()
