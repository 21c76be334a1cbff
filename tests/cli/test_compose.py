"""`waysaid compose`: a wish in, one JSON object or numbered lines out."""

import json

import pytest

pytestmark = pytest.mark.slow


def test_a_wish_is_answered_with_problems_reasons_links_and_a_proof(asked):
    found = asked("compose", "--grade", "2", "--focus", "give-and-take", "--with", "37 + 25")
    assert "37 + 25" in found["problems"]
    assert len(found["problems"]) == len(found["why"]) == 5
    assert found["links"]
    assert found["best_possible"] is True
    assert found["candidates"] >= 2000


def test_people_read_it_as_numbered_lines(run):
    said = run("compose", "--grade", "4", "--focus", "double-halve", "--length", "3")[1]
    assert [line.split()[0] for line in said.splitlines()] == ["1", "2", "3"]


@pytest.mark.parametrize(
    ("given", "said"),
    [
        (("--grade", "x", "--focus", "bridge"), "“grade” is 'x'"),
        (("--grade", "2", "--focus", "nobody"), "‘nobody’ is not a family"),
        (("--focus", "bridge"), "compose needs grade"),
        (("--grade", "2"), "is not a family"),
        (("--grade", "2", "--topic", "nothing"), "‘nothing’ is not a topic"),
        (("--grade", "2", "--focus", "give-and-take", "--with", "62 - 25"), "do not go together"),
        (("--grade", "2", "--focus", "bridge", "--within", "many"), "“within” is 'many'"),
        (("--grade", "9", "--focus", "bridge"), "Grade 9"),
    ],
)
def test_a_bad_wish_is_one_line(run, given, said):
    status, _, error = run("compose", *given)
    assert status == 2
    assert said in error
    assert error.count("\n") == 1


def test_a_topic_alone_is_enough(asked):
    found = asked("compose", "--grade", "6", "--topic", "percents", "--length", "4")
    assert all("%" in problem for problem in found["problems"])
    assert found["topic"] == "percents"


def test_alternatives_come_after_the_best(asked, run):
    given = ("compose", "--grade", "2", "--focus", "bridge", "--alternatives", "3")
    found = asked(*given)
    assert len(found["others"]) == 2
    assert all(one["wanting"] >= found["wanting"] for one in found["others"])
    assert run(*given)[1].count("\n\n") == 2


def test_must_haves_are_met(asked):
    wish = ("--start", "28 + 15", "--within", "60", "--surprise", "--number-line")
    found = asked("compose", "--grade", "2", "--focus", "bridge", *wish)
    assert found["problems"][0] == "28 + 15"
    assert found["best_possible"] is True


def test_wishes_are_answered_by_the_line_too(answered):
    wish = {"grade": 1, "focus": "bridge", "length": 3, "lately": ["9 + 7"]}
    status, found = answered(
        "compose", json.dumps(wish), '{"grade": 1, "focus": "bridge", "with": 7}'
    )
    assert status == 2
    assert "9 + 7" not in found[0]["problems"]
    assert "list" in found[1]["error"]
