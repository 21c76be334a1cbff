"""A plan: typed or taken, changed without losing anything, then talked."""

import re

import pytest
from hypothesis import given
from hypothesis import strategies as st

from waysaid.site.models import Plan, SchoolClass, Talk
from waysaid.site.planning import (
    another,
    grade_of_plan,
    in_order,
    moved,
    plan_of_starter,
    starter_named,
    take_string,
)
from waysaid.site.record import at_hand
from waysaid.strings import starters

TYPED = "40+26\n39 + 26\n\n39 plus 27"


@pytest.fixture
def plan(cast):
    cast.owner.post("/plans/", {"problems": TYPED, "title": "Thursday"})
    return Plan.objects.get()


def texts(plan):
    plan.refresh_from_db()
    return [row["text"] for row in plan.problems]


def press(cast, plan, button, **fields):
    return cast.owner.post(f"/plans/{plan.pk}", {"do": button, "open": "", **fields})


def row_id(plan, place):
    plan.refresh_from_db()
    return plan.problems[place]["id"]


def test_typed_problems_make_a_plan_in_their_order(plan):
    assert texts(plan) == ["40 + 26", "39 + 26", "39 + 27"]


def test_a_line_that_cannot_be_read_is_named_with_its_place_and_nothing_is_lost(cast):
    page = cast.owner.post("/plans/", {"problems": "40+26\n39 ~ 26", "title": "T"})
    assert page.status_code == 400
    assert "Line 2" in page.text
    assert "place 4" in page.text
    assert "40+26\n39 ~ 26</textarea>" in page.text
    assert 'value="T"' in page.text
    assert not Plan.objects.exists()


def test_no_line_at_all_is_told(cast):
    assert "at least one problem" in cast.owner.post("/plans/", {"problems": " \n"}).text


def test_the_page_says_what_to_expect_of_each_problem(cast, plan):
    page = cast.owner.get(f"/plans/{plan.pk}").text
    first = page.split("ways-cell")[1].split("</p>")[0]
    assert "jump" in first
    assert " · " in first
    assert "if 55: the ten from 9 + 6 may have been lost" in page
    assert "so the answer went down 1 too" in page
    assert "3 problems" in page
    assert "to 100" in page


def test_what_pays_off_in_a_string_is_named_first(cast):
    cast.owner.post("/starters/moving-a-few-across")
    plan = Plan.objects.get()
    rows = cast.owner.get(f"/plans/{plan.pk}").text.split("ways-cell")[1:]
    assert "</span>give and take ·" in rows[plan_place(plan, "29 + 16")]


def plan_place(plan, text):
    return [row["text"] for row in plan.problems].index(text)


def test_an_opened_row_shows_the_ways_drawn(cast, plan):
    page = cast.owner.get(f"/plans/{plan.pk}?open={row_id(plan, 2)}").text
    assert page.count("<svg") > 4
    assert "39 + 1 = 40" in page


def test_what_was_typed_in_an_opened_row_is_kept_whatever_button_is_pressed(cast, plan):
    first = row_id(plan, 0)
    press(cast, plan, f"down:{first}", **{f"text-{first}": "50+26", f"why-{first}": "a way in"})
    assert texts(plan) == ["39 + 26", "50 + 26", "39 + 27"]
    assert plan.problems[1]["why"] == "a way in"


def test_a_bad_problem_in_a_row_changes_nothing_and_stays_in_its_field(cast, plan):
    first = row_id(plan, 0)
    page = press(cast, plan, "save", **{f"text-{first}": "50 +", "open": first})
    assert page.status_code == 400
    assert 'value="50 +"' in page.text
    assert texts(plan) == ["40 + 26", "39 + 26", "39 + 27"]


def test_a_script_that_saves_gets_the_sentence(cast, plan):
    first = row_id(plan, 0)
    asked = {"do": "save", f"text-{first}": "50 +"}
    refused = cast.owner.post(f"/plans/{plan.pk}", asked, headers={"accept": "application/json"})
    assert refused.status_code == 400
    assert "50 +" in refused.json()["error"]


def test_a_problem_is_removed_and_brought_back(cast, plan):
    press(cast, plan, f"remove:{row_id(plan, 1)}")
    assert texts(plan) == ["40 + 26", "39 + 27"]
    assert "Take it back" in cast.owner.get(f"/plans/{plan.pk}").text
    press(cast, plan, "back")
    assert texts(plan) == ["40 + 26", "39 + 26", "39 + 27"]


def test_problems_are_added_at_the_end(cast, plan):
    press(cast, plan, "save", more="39+47\n38 + 48")
    assert texts(plan)[3:] == ["39 + 47", "38 + 48"]


def test_a_plan_holds_twelve_problems_and_no_more(cast, plan):
    refused = press(cast, plan, "save", more="\n".join(["1+1"] * 10))
    assert refused.status_code == 400
    assert len(texts(plan)) == 3


def test_another_string_keeps_what_is_locked_where_it_is(cast, plan):
    press(cast, plan, f"lock:{row_id(plan, 1)}")
    press(cast, plan, "another")
    after = texts(plan)
    assert after[1] == "39 + 26"
    assert "40 + 26" not in after
    assert plan.starter
    press(cast, plan, "another")
    assert texts(plan)[1] == "39 + 26"
    assert texts(plan) != after


def test_name_day_and_questions_are_kept(cast, plan):
    press(cast, plan, "save", title="Friday", made_for="2026-11-27", questions="Why?\n\nHow?")
    plan.refresh_from_db()
    assert (plan.title, str(plan.made_for)) == ("Friday", "2026-11-27")
    assert plan.questions == ["Why?", "How?"]
    assert "Friday 27 November" in cast.owner.get(f"/plans/{plan.pk}").text


def test_a_talk_on_the_plan_begins_with_its_problems(cast, plan):
    cast.owner.post("/start", {"plan": plan.pk})
    talk = Talk.objects.get(plan=plan)
    assert [each.text for each in at_hand(talk.pk).state.problems] == texts(plan)


def test_the_printed_plan_has_every_way_and_question(cast, plan):
    press(cast, plan, "save", title="T", questions="Who saw it coming?")
    page = cast.owner.get(f"/plans/{plan.pk}/print").text
    assert "Who saw it coming?" in page
    assert page.count("<svg") > 12


def test_a_plan_is_deleted_and_its_talk_stays(cast, plan):
    cast.owner.post("/start", {"plan": plan.pk})
    cast.owner.post(f"/plans/{plan.pk}/remove")
    assert not Plan.objects.exists()
    assert Talk.objects.filter(school_class=cast.school_class).count() == 2


@pytest.mark.parametrize("path", ["", "/print"])
def test_a_colleague_does_not_see_it(cast, plan, path):
    assert cast.colleague.get(f"/plans/{plan.pk}{path}").status_code == 404


def test_a_colleague_cannot_start_or_change_it(cast, plan):
    assert cast.colleague.post("/start", {"plan": plan.pk}).status_code == 404
    assert cast.colleague.post(f"/plans/{plan.pk}", {"do": "another"}).status_code == 404
    assert cast.colleague.post(f"/plans/{plan.pk}/remove").status_code == 404


def test_a_reason_cannot_become_markup(cast, plan):
    first = row_id(plan, 0)
    press(cast, plan, "save", **{f"text-{first}": "1+1", f"why-{first}": "<script>x</script>"})
    assert "<script>x" not in cast.owner.get(f"/plans/{plan.pk}").text


ROWS = st.lists(st.text("abcdef", min_size=1, max_size=3), unique=True, max_size=8).map(
    lambda ids: [{"id": each, "text": "1 + 1"} for each in ids]
)


@given(ROWS, st.text("abcdef", max_size=3), st.sampled_from([-1, 1]))
def test_moving_a_row_loses_none_and_moving_it_back_undoes_it(rows, which, step):
    after = moved(rows, which, step)
    assert sorted(row["id"] for row in after) == sorted(row["id"] for row in rows)
    if after != rows:
        assert moved(after, which, -step) == rows


@given(ROWS, st.lists(st.text("abcdef", max_size=3)))
def test_any_order_that_is_asked_for_loses_no_row(rows, ids):
    after = [row["id"] for row in in_order(rows, ids)]
    assert sorted(after) == sorted(row["id"] for row in rows)
    known = [each for each in dict.fromkeys(reversed(ids)) if each in after]
    assert [each for each in after if each in ids] == list(reversed(known))


@pytest.mark.parametrize("starter", starters(), ids=lambda each: each.slug)
def test_every_starter_leads_to_another_of_its_grade_and_back_to_itself(starter):
    plan = plan_of_starter(SchoolClass(desk_language="en"), starter)
    seen = []
    while plan.starter not in seen:
        seen.append(plan.starter)
        following = another(plan)
        assert following.grade == starter.grade
        take_string(plan, following)
    assert len(seen) > 1
    assert starter_named(seen[0]).grade == grade_of_plan(plan)


def test_many_plans_come_in_pages(cast):
    for number in range(31):
        cast.school_class.plans.create(title=f"Plan {number}", problems=[])
    first, second = (cast.owner.get(f"/plans/?page={page}").text for page in (1, 2))
    titles = [set(re.findall(r">(Plan \d+)</a>", page)) for page in (first, second)]
    assert len(titles[0]) == 30
    assert titles[1]
    assert not titles[0] & titles[1]
    assert "?page=2" in first
    assert "?page=1" in second
