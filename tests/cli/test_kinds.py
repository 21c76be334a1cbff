"""The command line over every kind of problem."""

import json

import pytest


def test_a_division_ends_as_the_class_asks(asked, run):
    for rest, answer in (("left-over", "5 r 1"), ("fraction", "5 1/3"), ("decimal", "5 1/3")):
        assert asked("ways", "16 / 3", "--rest", rest)["answer"] == answer
    assert asked("ways", "16 / 3")["answer"] == "5 r 1"
    assert asked("ways", "16 / 5", "--rest", "decimal")["answer"] == "3.2"
    by_decimal = asked("ways", "16 / 5", "--rest", "decimal")["ways"]
    assert {way["answer"] for way in by_decimal if not way["remainder"]} == {"3.2"}
    left = [way for way in by_decimal if way["remainder"]]
    assert {way["answer"] for way in left} == {way["remainder"] for way in left} == {"3 r 1"}
    assert run("ways", "16 / 3")[1].startswith("16 ÷ 3 = 5 r 1\n")


KINDS = {
    "14 x 6": "84",
    "96 / 6": "16",
    "16 / 3": "5 r 1",
    "_ x 6 = 54": "9",
    "63 = 70 - _": "7",
    "8 + 4 = _ + 5": "7",
    "29 + 14 = 30 + 13 ?": "true",
    "0.65 ? 0.7": "<",
    "3/4 ? 5/8": ">",
    "3/4 + 5/8": "1 3/8",
    "3.8 + 0.45": "4.25",
    "15% of 80": "12",
    "2/3 of 57": "38",
    "about 398 x 21": "8000..8400",
    "image frame 10: 7": "7",
    "5 - 8": "-3",
    "399999 + 2": "400001",
}
"""One problem or more of each kind, with its answer."""


@pytest.mark.parametrize("language", ["en", "es"])
def test_every_kind_of_problem_is_answered_by_every_command(run, asked, language):
    for problem, answer in KINDS.items():
        found = asked("ways", problem, "--lang", language)
        assert (found["problem"], found["answer"]) == (problem, answer)
        assert asked("links", problem, "14 x 6", "--lang", language)["problems"][0] == problem
        assert asked("slips", problem, answer, "--lang", language)["problem"] == problem
        for question in ("ways", "slips", "links"):
            second = {"slips": (answer,), "links": ("14 x 6",)}.get(question, ())
            status, out, err = run(question, problem, *second, "--lang", language)
            assert (status, err) == (0, ""), (question, problem)
            assert all(len(line) <= 100 for line in out.splitlines()), (question, problem)
        if found["ways"]:
            assert asked("draw", problem, "--lang", language)["svg"].startswith("<svg")


def test_every_kind_of_problem_is_answered_on_a_line_of_its_own(run, tmp_path):
    file = tmp_path / "lines.jsonl"
    lines = [json.dumps({"problem": problem}) for problem in (*KINDS, "0.65 ?")]
    file.write_text("\n".join(lines), encoding="utf-8")
    status, out, _ = run("ways", "--lines", str(file))
    found = [json.loads(line) for line in out.splitlines()]
    assert status == 2
    assert [one.get("answer") for one in found] == [*KINDS.values(), None]
    assert "error" in found[-1]


def test_a_problem_is_told_its_grades_and_who_says_so(asked):
    found = asked("ways", "37 + 25")["grades"]
    assert found == {"first": 2, "last": 4, "standard": "2.NBT.5 (ccss)"}
