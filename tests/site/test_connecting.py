"""Connecting on the desk in a real browser: what only the teacher reads beside what all see."""

import pytest

from tests.site.live_room import open_room

pytestmark = [pytest.mark.browser, pytest.mark.slow]
WHY = "The answer stays: what one number lost, the other gained."


@pytest.fixture
def room(serve, open_page):
    yield from open_room(serve, open_page)


def choose(desk):
    for number in ("39", "27"):
        desk.get_by_role("button", name=f"{number}, 39 + 27", exact=True).click()


def test_two_numbers_are_swapped_or_one_gives_to_the_other_and_the_desk_says_why(room):
    desk = room.desk
    desk.locator('[data-key="connect"]').click()
    desk.locator('[data-key="tab-what-if"]').click()
    choose(desk)
    desk.get_by_role("button", name="swap", exact=True).click()
    room.board.locator(".what-if", has_text="27 + 39").wait_for()
    room.desk.bring_to_front()
    desk.get_by_text("The answer stays: the order does not matter in adding.").wait_for()
    choose(desk)
    desk.locator('input[name="amount"]').fill("-1")
    desk.get_by_role("button", name="move across", exact=True).click()
    room.board.locator(".what-if", has_text="40 + 26").wait_for()
    room.desk.bring_to_front()
    desk.get_by_text(WHY).wait_for()
    assert WHY not in room.board.content()


def test_what_a_noticing_states_is_read_on_the_desk_alone(room):
    desk = room.desk
    desk.locator('[data-key="connect"]').click()
    desk.locator('[data-part="notice"] input[name="words"]').fill("they all make 67")
    desk.locator('[data-part="notice"] button.main').click()
    kept = "Kept as said; not one that algebra proves."
    desk.locator(".told .stated", has_text=kept).wait_for()
    room.board.get_by_text("“they all make 67”").wait_for()
    assert kept not in room.board.content()
