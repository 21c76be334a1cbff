"""Composing on the plan's page: a wish, what is locked, what a change costs, other ideas."""

import pytest
from hypothesis import given
from hypothesis import strategies as st

from tests.site.made import sent
from waysaid.number import Language, parse
from waysaid.site.composing import ideas, take_wish
from waysaid.site.models import Plan, SchoolClass
from waysaid.site.planning import row_of
from waysaid.site.talks import start_talk
from waysaid.site.used_lately import LATELY, used_lately
from waysaid.site.wishing import choices, fields_of, first_wish, wish_in
from waysaid.site.wording import Wording
from waysaid.strings import FOCUSES, HOMES, Wish, WishError, composable, topics_of
from waysaid.strings.wish import USUAL
from waysaid.ways import Family

WISH = {
    "wish-grade": "1",
    "wish-focus": "near-double",
    "wish-topic": "",
    "wish-length": "4",
    "wish-musts": "",
    "wish-within": "20",
}


@pytest.fixture
def plan(cast):
    made = cast.owner.post("/plans/compose", WISH)
    assert made.status_code == 302, made.text
    return Plan.objects.get()


def texts(plan):
    plan.refresh_from_db()
    return [row["text"] for row in plan.problems]


def press(cast, plan, button, **fields):
    return cast.owner.post(f"/plans/{plan.pk}", {"do": button, "open": "", **WISH, **fields})


def lock(cast, plan, *places):
    plan.refresh_from_db()
    for place in places:
        press(cast, plan, f"lock:{plan.problems[place]['id']}")
    plan.refresh_from_db()


def page_of(cast, plan, query=""):
    return cast.owner.get(f"/plans/{plan.pk}{query}").text


def test_a_wish_makes_a_plan_with_a_reason_for_each_problem(cast, plan):
    assert len(texts(plan)) == 4
    assert all(row["why"] for row in plan.problems)
    assert "problem 1" in plan.problems[1]["why"].lower()
    page = page_of(cast, plan)
    assert plan.problems[1]["why"] in page
    assert "The wish it was composed for" in page
    assert '<option value="near-double" data-topics="sums quick-images" selected>' in page


BAD = [
    ({"wish-grade": "9"}, "Grade 9 is none of ours"),
    ({"wish-grade": "two"}, "“two” is no whole number"),
    ({"wish-focus": "magic"}, "“magic” is no idea of ours"),
    ({"wish-topic": "magic"}, "Strings about “magic” are not composed"),
    ({"wish-topic": "products"}, "‘products’ and ‘near double’ do not go together"),
    ({"wish-length": "9"}, "A string of 9 problems is not composed"),
    ({"wish-within": "-3"}, "“-3” is no whole number"),
    ({"wish-within": "1"}, "numbers to 1"),
    ({"wish-musts": "6 +"}, "Line 1: "),
    ({"wish-musts": "99 + 99"}, "99 + 99 belongs to grades"),
    ({"wish-musts": "6 + 7\n7 + 8\n8 + 9\n6 + 5"}, "4 problems must be in it, and at most 3 may"),
    ({"wish-line": "yes"}, "number line"),
]


@pytest.mark.parametrize(("changed", "sentence"), BAD)
def test_a_wish_that_cannot_be_met_is_told_in_one_sentence_and_stays(cast, changed, sentence):
    page = cast.owner.post("/plans/compose", {**WISH, "wish-musts": "6 + 7", **changed})
    assert page.status_code == 400
    alert = page.text.split('role="alert"')[1].split("</p>")[0]
    assert sentence in alert
    assert f">{changed.get('wish-musts', '6 + 7')}</textarea>" in page.text
    assert not Plan.objects.exists()


@pytest.mark.parametrize(("changed", "sentence"), BAD[-5:])
def test_on_a_plan_it_is_told_the_same_and_the_plan_is_as_it_was(cast, plan, changed, sentence):
    before = texts(plan)
    page = press(cast, plan, "compose", **changed)
    assert page.status_code == 400
    assert sentence in page.text
    assert texts(plan) == before
    assert 'class="wishes" open' in page.text
    field = page.text.split('name="wish-musts"')[1].split("</textarea>")[0]
    assert field.endswith(f">{changed.get('wish-musts', '')}")


@pytest.mark.parametrize("places", [(0,), (1, 2), (0, 3)])
def test_what_is_locked_stays_and_the_rest_is_others(cast, plan, places):
    before = texts(plan)
    ids = [row["id"] for row in plan.problems]
    lock(cast, plan, *places)
    press(cast, plan, "compose")
    after = texts(plan)
    assert len(after) == 4
    for place in range(4):
        if place in places:
            assert after[place] == before[place]
            assert plan.problems[place]["id"] == ids[place]
            assert plan.problems[place]["locked"]
    rest = [text for place, text in enumerate(before) if place not in places]
    assert not set(rest) & set(after)
    press(cast, plan, "back")
    assert texts(plan) == before


def test_a_problem_that_is_typed_is_kept_and_the_rest_composed_around_it(cast, plan):
    second = plan.problems[1]["id"]
    press(cast, plan, "save", **{f"text-{second}": "8+7"})
    assert texts(plan)[1] == "8 + 7"
    assert plan.problems[1]["locked"]
    press(cast, plan, "compose")
    assert texts(plan)[1] == "8 + 7"


def test_a_problem_that_is_added_is_kept_and_the_string_is_as_long_as_that(cast, plan):
    press(cast, plan, "save", more="8 + 7")
    assert texts(plan)[4] == "8 + 7"
    assert plan.problems[4]["locked"]
    press(cast, plan, "compose", **{"wish-length": plan.wish["length"]})
    after = texts(plan)
    assert len(after) == 5
    assert after[4] == "8 + 7"


def test_a_change_says_what_it_costs_and_reasons_follow_it(cast, plan):
    first, why = plan.problems[0]["id"], plan.problems[1]["why"]
    assert 'data-part="costs" hidden' in page_of(cast, plan)
    press(cast, plan, "save", **{f"text-{first}": "9 + 4", f"why-{first}": "Mine."})
    page = page_of(cast, plan)
    assert 'data-part="costs" hidden' not in page
    costs = page.split('class="cost"')[1].split("</ul>")[0]
    assert "easy to enter: " in costs
    assert "all in all: " in costs
    assert " worse" in costs
    plan.refresh_from_db()
    assert plan.problems[0]["why"] == "Mine."
    assert plan.problems[1]["why"] not in ("", why)


def test_a_script_that_saves_gets_the_cost(cast, plan):
    first = plan.problems[0]["id"]
    asked = {"do": "save", f"text-{first}": "9 + 4"}
    saved = cast.owner.post(f"/plans/{plan.pk}", asked, headers={"accept": "application/json"})
    assert saved.json()["saved"]
    assert saved.json()["locked"] == [first]
    assert any(line.startswith("easy to enter: ") for line in saved.json()["cost"])


def test_a_problem_with_no_place_in_a_string_is_kept_with_the_reason_said(cast, plan):
    first = plan.problems[0]["id"]
    press(cast, plan, "save", **{f"text-{first}": "3 - 5"})
    assert texts(plan)[0] == "3 - 5"
    assert "has no answer from 0 up" in page_of(cast, plan)
    assert [row["why"] for row in plan.problems] == [""] * 4
    assert "has no answer from 0 up" in press(cast, plan, "compose").text


def test_where_no_other_problems_fit_it_is_told_and_what_stands_stays(cast, plan):
    tight = {"wish-within": "3", "wish-length": "3"}
    press(cast, plan, "compose", **tight)
    before = texts(plan)
    assert sorted(before) == ["1 + 1", "1 + 2", "2 + 1"]
    refused = press(cast, plan, "compose", **tight)
    assert refused.status_code == 400
    assert "No other problems fit" in refused.text
    assert "used lately" not in refused.text
    assert texts(plan) == before


FRESH = {**WISH, "wish-fresh": "yes"}


def shown(cast, *problems):
    """Have the class talk about these problems; the last of them added in the middle."""
    *planned, added = problems
    talk = start_talk(cast.school_class, problems=list(planned))
    event = {"kind": "problem-added", "problem": "more", "text": added, "sequence": 1}
    cast.owner.post(f"/talks/{talk.pk}/events", sent(event), content_type="application/json")
    return talk


def test_what_the_class_was_shown_lately_is_left_out_where_that_is_wished(cast, plan):
    before = texts(plan)
    shown(cast, *before)
    press(cast, plan, "compose", **FRESH)
    after = texts(plan)
    assert not set(after) & set(before)
    for offered in ideas(plan):
        assert not {problem for problem, _why in offered.rows} & set(before)
    Plan.objects.all().delete()
    cast.owner.post("/plans/compose", WISH)
    assert texts(Plan.objects.get()) == before


def test_what_must_be_in_it_may_have_been_used_lately(cast, plan):
    lock(cast, plan, 0)
    kept, must, *_others = before = texts(plan)
    shown(cast, *before)
    press(cast, plan, "compose", **{**FRESH, "wish-musts": must})
    assert texts(plan)[0] == kept
    assert must in texts(plan)
    assert not set(texts(plan)) & set(before) - {kept, must}


def test_nothing_left_but_what_was_used_is_told_with_the_wish_to_drop(cast, plan):
    shown(cast, "1 + 1", "1 + 2", "2 + 1")
    tight = {"wish-within": "3", "wish-length": "3"}
    refused = press(cast, plan, "compose", **{**FRESH, **tight})
    assert refused.status_code == 400
    assert "nothing that was used lately" in refused.text


def test_only_the_last_twenty_talks_are_lately(cast):
    start_talk(cast.school_class, problems=["6 + 6"])
    for _each in range(LATELY - 1):
        start_talk(cast.school_class, problems=["7 + 7"])
    assert parse("6 + 6") in used_lately(cast.school_class)
    start_talk(cast.school_class, problems=["8 + 8"])
    assert used_lately(cast.school_class) == {parse("7 + 7"), parse("8 + 8")}


def test_one_problem_locked_twice_is_told(cast, plan):
    one, other = (row["id"] for row in plan.problems[:2])
    press(cast, plan, "save", **{f"text-{one}": "8 + 7", f"text-{other}": "8 + 7"})
    assert "8 + 7 is locked at two places" in press(cast, plan, "compose").text


def test_other_ideas_are_offered_and_one_is_taken(cast, plan):
    before = texts(plan)
    assert press(cast, plan, "ideas").headers["Location"].endswith("?ideas=yes#ideas")
    offered = ideas(plan)
    assert 1 <= len(offered) <= 3
    page = page_of(cast, plan, "?ideas=yes")
    assert page.count('value="take:') == len(offered)
    press(cast, plan, f"take:{offered[-1].number}")
    after = texts(plan)
    assert not set(before) & set(after)
    assert after == [problem for problem, _why in offered[-1].rows]
    assert [row["why"] for row in plan.problems] == [why for _problem, why in offered[-1].rows]
    press(cast, plan, "back")
    assert texts(plan) == before


def test_other_ideas_keep_what_is_locked(cast, plan):
    lock(cast, plan, 0)
    kept = texts(plan)[0]
    for offered in ideas(plan):
        assert offered.rows[0][0] == kept


def test_in_spanish_the_page_speaks_spanish(cast):
    SchoolClass.objects.update(desk_language="es")
    page = cast.owner.get("/plans/compose").text
    assert "De qué trata" in page
    assert "sumas de fracciones" in page
    cast.owner.post("/plans/compose", WISH)
    assert "problema 1" in Plan.objects.get().problems[1]["why"].lower()


def test_what_a_wish_needs_is_made_ready(cast):
    assert cast.owner.get("/plans/warm", WISH).status_code == 204
    assert cast.owner.get("/plans/warm", {**WISH, "wish-focus": "magic"}).status_code == 400
    assert cast.outsider.get("/plans/warm", WISH).status_code in (302, 403)


def test_a_colleague_gets_nothing_composed_on_it(cast, plan):
    asked = {"do": "compose", **WISH}
    assert cast.colleague.post(f"/plans/{plan.pk}", asked).status_code == 404


def test_a_typed_plan_suggests_a_wish_of_its_own(cast):
    cast.owner.post("/plans/", {"problems": "40+26\n39 + 26\n39 + 27\n38 + 48"})
    page = page_of(cast, Plan.objects.get())
    assert "Compose from a wish" in page
    assert '<option value="2" selected>' in page
    assert 'name="wish-within" class="field" value="100"' in page


def test_every_idea_and_topic_can_be_chosen():
    offered = choices(Wording(Language.EN))
    assert [slug for slug, *_ in offered["wish_focuses"]] == [each.value for each in FOCUSES]
    assert [slug for slug, _name in offered["wish_topics"]] == [each.value for each in HOMES]


PROBLEMS = st.lists(st.sampled_from(["6 + 7", "8 + 8", "9 + 4"]), unique=True, max_size=3)


@given(
    st.builds(
        Wish,
        grade=st.integers(0, 6),
        focus=st.sampled_from(FOCUSES),
        length=st.integers(3, 7),
        musts=PROBLEMS.map(lambda found: tuple(map(parse, found))),
        topic=st.none() | st.sampled_from(list(HOMES)),
        within=st.none() | st.integers(0, 1000),
        line=st.booleans(),
        surprise=st.booleans(),
    )
)
def test_a_wish_comes_back_from_its_fields(wish):
    assert wish_in(fields_of(wish), Language.EN) == wish


def test_a_wish_refused_leaves_the_plan_as_it_is():
    rows = [row_of(parse("8 + 7"))]
    plan = Plan(school_class=SchoolClass(desk_language="en"), problems=rows, wish={})
    with pytest.raises(WishError):
        take_wish(plan, Wish(9, Family.NEAR_DOUBLE), fresh=False)
    assert plan.problems is rows
    assert plan.wish == {}


def test_the_first_wish_has_a_string_in_every_grade():
    for grade in range(7):
        focus = first_wish(grade).focus
        assert any(composable(grade, topic, focus, USUAL) for topic in topics_of(focus))
