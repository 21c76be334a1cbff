"""Every kind of problem at the desk: what is understood, offered, answered and noted."""

import pytest

from tests.site.made import answer, child_id, sent
from waysaid.number import Language, Rest, parse, text
from waysaid.site.answer_view import answer_view, in_words
from waysaid.site.chips import chips_for, foreseen
from waysaid.site.history import History
from waysaid.site.understood import EXAMPLES, understood
from waysaid.site.wording import Wording

UNDERSTOOD = [
    ("14x6", "14 × 6: fourteen times six"),
    ("3/4 ? 5/8", "3/4 ? 5/8: which is larger, three quarters or five eighths?"),
    ("image frame 10: 7", "picture: ten frame, 7 dots"),
    ("_ x 6 = 54", "▢ × 6 = 54: blank times six equals fifty-four"),
    (" 15 % of 80", "15% of 80: fifteen percent of eighty"),
]


@pytest.mark.parametrize(("typed", "says"), UNDERSTOOD)
def test_what_was_understood_stands_as_on_the_board_and_is_said(typed, says):
    found = understood(typed, Language.EN)
    assert (found.says, found.wrong) == (says, False)


@pytest.mark.parametrize("language", list(Language))
def test_every_example_that_is_shown_can_be_read(language):
    for typed in EXAMPLES[language]:
        assert not understood(typed, language).wrong, typed
        assert foreseen(text(parse(typed))), typed


@pytest.mark.parametrize("typed", ["", "3/4 +", "image dice: 9", "7 + 5 = 12", "a + b", "1/0"])
@pytest.mark.parametrize("language", list(Language))
def test_what_cannot_be_read_is_said_in_one_sentence(typed, language):
    found = understood(typed, language)
    assert found.wrong
    assert found.says.endswith(".")
    assert "\n" not in found.says


def test_a_field_asks_for_what_was_understood(cast):
    said = cast.owner.get("/typed", {"text": "14 x 6"}).json()
    assert said == {"says": "14 × 6: fourteen times six", "wrong": False}
    at_desk = cast.owner.get(f"/talks/{cast.talk.pk}/typed", {"text": "14 x"}).json()
    assert at_desk["wrong"]
    assert cast.owner.get("/typed", {"text": "1" * 5000}).json()["wrong"]


def test_nobody_else_is_told_anything_by_a_field(cast):
    assert cast.outsider.get("/typed", {"text": "14 x 6"}).status_code == 403
    for other in (cast.outsider, cast.panel, cast.colleague):
        assert other.get(f"/talks/{cast.talk.pk}/typed", {"text": "14 x 6"}).status_code == 404


def do(cast, **fields):
    usual = {"do": "languages", "name": "2B", "language": "en", "board_language": "en"}
    return cast.owner.post("/class", {**usual, **fields})


@pytest.mark.parametrize(
    ("chosen", "kept"), [("fraction", "fraction"), ("decimal", "decimal"), ("half", "left-over")]
)
def test_what_to_do_with_a_remainder_is_kept_if_it_is_known(cast, chosen, kept):
    do(cast, rest=chosen)
    cast.school_class.refresh_from_db()
    assert cast.school_class.rest == kept
    assert f'value="{kept}" selected' in cast.owner.get("/class").text


ENDS = [
    ("16 / 3", Rest.LEFT_OVER, {"5 r 1"}),
    ("16 / 3", Rest.FRACTION, {"5 1/3"}),
    ("16 / 5", Rest.DECIMAL, {"3.2"}),
    ("15 / 3", Rest.LEFT_OVER, {"5"}),
]


@pytest.mark.parametrize(("problem", "rest", "answers"), ENDS)
def test_the_ways_offered_end_as_the_class_says_a_remainder(problem, rest, answers):
    chips = chips_for(problem, History(), Wording(Language.EN, rest=rest))
    assert {chip["answer"] for chip in chips} == answers


def test_few_answers_are_taps_in_the_words_of_the_board():
    compared = answer_view("3/4 ? 5/8", "en", Rest.LEFT_OVER)
    assert [one["text"] for one in compared["choices"]] == ["<", "=", ">"]
    assert [one["says"] for one in compared["choices"]] == [
        "3/4 < 5/8",
        "3/4 = 5/8",
        "3/4 > 5/8",
    ]
    claim = answer_view("29 + 14 = 30 + 13 ?", "es", Rest.LEFT_OVER)
    assert [one["text"] for one in claim["choices"]] == ["verdadero", "falso"]
    assert in_words("true", "es") == "verdadero"
    assert in_words("5 r 1", "es") == "5 r 1"
    assert in_words(None, "es") is None


@pytest.mark.parametrize(
    ("problem", "whole"),
    [("14 x 6", True), ("16 / 3", False), ("3/4 + 1", False), ("_ + 3 = 5", True)],
)
def test_a_keyboard_of_digits_is_asked_for_where_digits_are_enough(problem, whole):
    assert answer_view(problem, "en", Rest.LEFT_OVER)["whole"] is whole


def test_an_estimate_has_its_range_and_no_other_problem_one():
    assert answer_view("about 398 x 21", "en", Rest.LEFT_OVER)["range"] == ["8000", "8400"]
    assert answer_view("398 x 21", "en", Rest.LEFT_OVER)["range"] is None


NOTED = [
    ("16 / 3", "5 r 1", False),
    ("16 / 3", "5 1/3", False),
    ("16 / 3", "6 r 1", True),
    ("3/4 + 5/8", "11/8", False),
    ("3/4 + 5/8", "8/12", True),
    ("0.65 ? 0.7", "<", False),
    ("0.65 ? 0.7", ">", True),
    ("29 + 14 = 30 + 13 ?", "true", False),
    ("29 + 14 = 30 + 13 ?", "false", True),
    ("about 398 x 21", "8000", False),
    ("about 398 x 21", "100", False),
    ("image frame 10: 7", "8", True),
    ("8 + 4 = _ + 5", "12", True),
    ("14 x 6", "I think 84", False),
]


@pytest.mark.parametrize(("problem", "said", "noted"), NOTED)
def test_only_an_answer_that_does_not_fit_is_noted_and_for_the_teacher_alone(
    cast, problem, said, noted
):
    events = [
        {"sequence": 0, "kind": "problem-added", "problem": "new", "text": problem},
        {"sequence": 1, "kind": "problem-shown", "problem": "new"},
        {
            "sequence": 2,
            "kind": "way-shared",
            "id": "w",
            "problem": "new",
            "child": child_id(cast.school_class),
            "words": "so",
            "answer": said,
        },
        answer("new", said, 3),
    ]
    path = f"/talks/{cast.talk.pk}/events"
    sent_ = cast.owner.post(path, sent(*events), content_type="application/json")
    assert sent_.status_code == 200, sent_.text
    desk = cast.owner.get(f"/talks/{cast.talk.pk}/desk.json").json()
    told = next(way for way in desk["ways"] if way["id"] == "w")
    assert any(f"ends at {said}" in flag for flag in told["flags"]) is noted
    assert "flags" not in str(desk["board"])


def test_a_wrong_answer_brings_a_question_that_gives_nothing_away(cast):
    events = [
        {"sequence": 0, "kind": "problem-added", "problem": "new", "text": "52 - 38"},
        {"sequence": 1, "kind": "problem-shown", "problem": "new"},
    ]
    path = f"/talks/{cast.talk.pk}/events"
    cast.owner.post(path, sent(*events), content_type="application/json")

    def questions():
        return cast.owner.get(f"/talks/{cast.talk.pk}/desk.json").json()["private"]["questions"]

    before = questions()
    wrong = sent(answer("new", "26", 2))
    cast.owner.post(path, wrong, content_type="application/json")
    asked = [one for one in questions() if one not in before]
    assert len(asked) == 1
    assert questions()[0] == asked[0]
    assert "14" not in asked[0]
