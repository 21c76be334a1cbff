"""`waysaid compose`: a wish in, one JSON object or numbered lines out."""

import json

import pytest


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
        (("--grade", "2"), "compose needs grade and focus"),
        (("--grade", "2", "--focus", "bridge", "--with", "3/4 + 1/4"), "cannot be composed with"),
        (("--grade", "9", "--focus", "bridge"), "Grade 9"),
    ],
)
def test_a_bad_wish_is_one_line(run, given, said):
    status, _, error = run("compose", *given)
    assert status == 2
    assert said in error
    assert error.count("\n") == 1


def test_wishes_are_answered_by_the_line_too(answered):
    wish = {"grade": 1, "focus": "bridge", "length": 3, "lately": ["9 + 7"]}
    status, found = answered(
        "compose", json.dumps(wish), '{"grade": 1, "focus": "bridge", "with": 7}'
    )
    assert status == 2
    assert "9 + 7" not in found[0]["problems"]
    assert "list" in found[1]["error"]
