"""Reading starter data: each thing that can be wrong is said in one sentence with its place."""

import json

import pytest

from waysaid.strings import StarterError, starters_in
from waysaid.ways import Family


def one_starter(**changes) -> str:
    both = {"en": "a", "es": "b"}
    problem = {"text": "3 + 2", "why": both}
    starter = {
        "slug": "x",
        "focus": "bridge",
        "title": both,
        "purpose": both,
        "problems": [problem],
        "questions": [both],
    }
    return json.dumps({"grade": 1, "starters": [starter | changes]})


def test_a_well_formed_starter_is_read():
    (read,) = starters_in(one_starter(), "mine.json")
    assert (read.slug, read.grade, read.focus) == ("x", 1, Family.BRIDGE)
    assert read.english.why == ("a",)
    assert read.spanish.why == ("b",)


@pytest.mark.parametrize(
    ("content", "said"),
    [
        ("{", "mine.json is not JSON"),
        ("[]", "mine.json: an object"),
        ('{"grade": 9, "starters": []}', "grade is 9"),
        ('{"grade": 1, "starters": []}', "a list with something in it"),
        (one_starter(slug=""), "slug"),
        (one_starter(focus="magic"), "'magic' is no family"),
        (one_starter(title={"en": "a"}), "x: title in es"),
        (one_starter(problems=[]), "x: problems"),
        (one_starter(problems=[{"text": "3 +", "why": {}}]), "why"),
        (one_starter(questions="why?"), "x: questions"),
        (
            one_starter(problems=[{"text": "3 +", "why": {"en": "a", "es": "b"}}]),
            "Cannot read",
        ),
    ],
)
def test_bad_data_is_refused_with_its_place(content, said):
    with pytest.raises(StarterError) as refused:
        starters_in(content, "mine.json")
    assert said in str(refused.value)
