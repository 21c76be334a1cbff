"""A quick image is composed for a plan: chosen, looked at, arranged anew, placed by hand."""

import pytest

from waysaid.number import Image, layout_of, parse
from waysaid.site.models import Plan
from waysaid.site.record import at_hand
from waysaid.site.talks import start_talk


@pytest.fixture
def plan(cast):
    cast.owner.post("/plans/", {"problems": "4 + 3", "title": "Dots"})
    return Plan.objects.get()


def show(cast, plan, **fields):
    return cast.owner.get(f"/plans/{plan.pk}/picture", fields)


def add(cast, plan, **fields):
    cast.owner.post(f"/plans/{plan.pk}/picture", {"do": "add", **fields})
    plan.refresh_from_db()
    return plan.problems[-1]["text"]


CHOSEN = (
    ("frame", "7", "image frame 10: 7"),
    ("frame", "14", "image frame 20: 14"),
    ("frame", "8 6", "image frame 20: 8 6"),
    ("pairs", " 5 ", "image pairs 10: 5"),
    ("dice", "4 3", "image dice: 4 3"),
    ("dice", "5 5 5 2 2", "image dice: 5 5 5 2 2"),
    ("array", "3 4", "image array: 3 x 4"),
)


@pytest.mark.parametrize(("kind", "numbers", "text"), CHOSEN)
def test_what_is_chosen_is_shown_and_put_into_the_plan(cast, plan, kind, numbers, text):
    page = show(cast, plan, kind=kind, numbers=numbers)
    assert text in page.content.decode()
    assert page.content.decode().count("<circle") >= parse(text).count
    assert add(cast, plan, kind=kind, numbers=numbers) == text


@pytest.mark.parametrize(
    ("kind", "numbers"),
    [
        ("frame", ""),
        ("frame", "21"),
        ("dice", "7"),
        ("dice", "1 1 1 1 1 1"),
        ("array", "3"),
        ("groups", "9"),
        ("hand", ""),
    ],
)
def test_what_makes_no_picture_is_said_in_one_sentence(cast, plan, kind, numbers):
    page = show(cast, plan, kind=kind, numbers=numbers)
    assert page.status_code == 400
    assert "<svg" not in page.content.decode().split("<main", 1)[1]
    add(cast, plan, kind=kind, numbers=numbers)
    assert [row["text"] for row in plan.problems] == ["4 + 3"]


def test_another_arrangement_has_the_same_groups_in_other_places(cast, plan):
    first = show(cast, plan, kind="groups", numbers="4 3", seed="5").context
    again = show(cast, plan, kind="groups", numbers="4 3", seed="5").context
    other = show(cast, plan, kind="groups", numbers="4 3", seed="5", do="another").context
    assert first["text"] == again["text"] != other["text"]
    assert first["seen"][0].lines == ("4 + 3 = 7",)
    assert other["seen"][0].lines == ("4 + 3 = 7",)
    kept = add(cast, plan, kind="groups", numbers="4 3", seed=str(other["chosen"].seed))
    assert kept == other["text"]


def test_dots_are_placed_by_hand(cast, plan):
    text = add(cast, plan, kind="hand", at=["2,2", "10,2", "18,10", "3,3", "x,1"])
    image = parse(text)
    assert isinstance(image, Image)
    assert image.count == 3
    assert text == "image dots: 2,2 10,2 18,10"
    assert len(layout_of(image).dots) == 3


def test_the_class_says_for_how_long_a_picture_is_shown(cast):
    school_class = cast.school_class
    form = {"do": "languages", "name": "2B", "language": "en", "board_language": "en"}
    cast.owner.post("/class", {**form, "image_seconds": "5"})
    school_class.refresh_from_db()
    assert school_class.image_seconds == 5
    talk = start_talk(school_class, problems=["image dice: 4"])
    assert at_hand(talk.pk).state.image_seconds == 5
    cast.owner.post("/class", {**form, "image_seconds": "600"})
    school_class.refresh_from_db()
    assert school_class.image_seconds == 5


@pytest.mark.browser
@pytest.mark.parametrize("width", [1180, 320])
def test_the_page_can_be_used_by_everyone(house, enter, axe, width):
    for query in ("?kind=frame&numbers=8+6", "?kind=hand&at=2,2&at=10,2", "?kind=groups&numbers=9"):
        page = enter(f"{house.plan}/picture{query}", viewport={"width": width, "height": 820})
        assert axe(page) == []
        assert page.evaluate("document.documentElement.scrollWidth") <= width


@pytest.mark.browser
def test_a_picture_is_chosen_and_added_by_clicks(house, enter):
    page = enter(house.plan)
    page.get_by_role("link", name="A quick image").click()
    page.get_by_label("Picture").select_option("dice")
    page.get_by_label("Numbers").fill("5 3")
    page.get_by_role("button", name="Show").click()
    page.get_by_text("image dice: 5 3").wait_for()
    page.get_by_role("button", name="Put it into the plan").click()
    page.locator(".plan-row").nth(3).wait_for()
    assert page.locator(".plan-row").count() == 4
