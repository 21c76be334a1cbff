"""Every foreseen way is recorded in at most three taps, counted by the page itself."""

import pytest

from tests.talks.said import Teller
from tests.talks.screens import waited

pytestmark = pytest.mark.browser

MOST = 3
COUNT = """() => {
  window.taps = 0;
  addEventListener("click", (event) => { if (event.isTrusted) window.taps += 1; }, true);
}"""


def likely_for(state, child):
    """Return the chips in the order that the desk shows once this child is chosen."""
    order = state["chip_orders"].get(child, range(len(state["chips"])))
    return [state["chips"][place] for place in order]


def first_problem(hall, open_desk):
    """Begin a talk, show its first problem, and return the talk and its desk."""
    talk = hall.begin("Taps")
    desk = open_desk(talk)
    desk.page.locator("#next").click()
    desk.page.locator("#chips .chip").first.wait_for()
    return talk, desk


@pytest.mark.usefixtures("calm")
def test_every_foreseen_way_costs_at_most_three_taps(hall, open_desk, open_board):
    talk = hall.begin("Taps")
    desk, board = open_desk(talk), open_board(talk)
    desk.page.evaluate(COUNT)
    told = 0
    for problem in ("8 + 7", "62 − 25", "7 + ▢ = 12", "7 + _ = 12"):
        if problem.startswith("7 + ") and desk.page.locator("#strip .now", has_text="7 +").count():
            continue
        desk.page.locator("#next").click()
        desk.page.locator("#strip .now", has_text=problem[:4]).wait_for()
        chips = likely_for(hall.state(talk), hall.children["Noor"])
        assert chips
        for place, chip in enumerate(chips):
            desk.page.evaluate("() => { window.taps = 0; }")
            desk.speaker("Noor")
            if place >= desk.page.locator("#chips .chip").count():
                desk.more().click()
            assert desk.chips()[place][0] == chip["lines"][0], (place, desk.chips(), chip)
            desk.page.locator("#chips .chip").nth(place).click()
            assert desk.page.evaluate("() => window.taps") <= MOST
            told += 1
            assert waited(lambda: len(hall.state(talk)["ways"]), told) == told
            way = hall.state(talk)["ways"][-1]
            assert (way["name"], way["lines"]) == ("Noor", chip["lines"])
        ways = len(chips)

        def shown():
            said = board.says()
            return len(said.get("ways", ())) + len(said.get("folded", ()))

        assert waited(shown, ways) == ways


def test_a_double_tap_tells_one_way_and_the_desk_is_ready_though_no_state_comes(hall, open_desk):
    talk, desk = first_problem(hall, open_desk)
    page = desk.page
    desk.speaker("Noor")
    page.context.set_offline(True)
    page.locator("#chips .chip").first.evaluate("chip => { chip.click(); chip.click(); }")
    chosen = page.locator("#names [aria-pressed=true]")
    assert waited(chosen.count, 0) == 0
    assert hall.state(talk)["ways"] == []
    page.context.set_offline(False)
    assert waited(lambda: len(hall.state(talk)["ways"]), 1) == 1
    assert page.evaluate("document.activeElement.name") == "line"


def tap_twice(page, selector, between):
    """Tap twice on one spot, slowly enough that `between` holds before the second tap."""
    box = page.locator(selector).first.bounding_box()
    page.mouse.move(box["x"] + box["width"] / 2, box["y"] + box["height"] / 2)
    for clicks in (1, 2):
        page.mouse.down(click_count=clicks)
        page.mouse.up(click_count=clicks)
        assert waited(between, True)


@pytest.mark.usefixtures("calm")
def test_a_double_tap_counts_once_though_the_desk_was_drawn_anew_between(hall, open_desk):
    talk, desk = first_problem(hall, open_desk)
    page = desk.page
    chosen = page.locator("#names [aria-pressed=true]")
    name = '#names button[data-key^="child-"]'
    tap_twice(page, name, lambda: chosen.count() == 1)
    tap_twice(page, "#chips .chip", lambda: len(hall.state(talk)["ways"]) == 1 and desk.saved())
    second = hall.state(talk)["problems"][1]["id"]
    shown = page.locator(f'#strip .now[data-key="problem-{second}"]')
    tap_twice(page, "#next", lambda: shown.count() == 1)
    desk.answer("66")  # The desk tells in order: what a second tap told would be there first.
    assert waited(lambda: "66" in str(hall.state(talk)["answers"]), True)
    assert len(hall.state(talk)["ways"]) == 1
    assert shown.count() == 1


@pytest.mark.usefixtures("calm")
def test_what_is_put_anew_stays_scrolled_as_it_was(hall, open_desk):
    page = open_desk(hall.begin("Taps")).page
    dom = page.locator("script[type=module]").first.get_attribute("src").replace("desk-page", "dom")
    found = page.evaluate(
        """async (dom) => {
          const { fill, make } = await import(dom);
          const list = make("div", {});
          list.style.setProperty("height", "50px");
          list.style.setProperty("overflow", "auto");
          const rows = () => Array.from({ length: 40 }, (_, at) => make("p", {}, `row ${at}`));
          document.body.append(list);
          fill(list, rows());
          list.scrollTop = 120;
          fill(list, rows());
          return list.scrollTop;
        }""",
        dom,
    )
    assert found == 120


@pytest.mark.usefixtures("calm")
def test_a_tap_counts_though_another_desk_changes_the_panel_under_the_finger(hall, open_desk):
    talk, desk = first_problem(hall, open_desk)
    page = desk.page
    problem = hall.state(talk)["board"]["problem"]["id"]
    page.locator("#names button", has_text="Noor").hover()
    page.mouse.down()
    Teller(hall, talk).way(problem, "Goran", "just so")
    page.locator("#seen", has_text="just so").wait_for()
    heard = page.locator("#names .name.heard .who")
    assert heard.all_inner_texts() == []
    page.mouse.up()
    chosen = page.locator("#names [aria-pressed=true] .who")
    assert waited(chosen.all_inner_texts, ["Noor"]) == ["Noor"]
    assert heard.all_inner_texts() == ["Goran"]
