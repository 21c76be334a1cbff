"""What a noticing states is told to the desk, and never to the board."""

import json

import pytest

from waysaid.number import Language
from waysaid.talk import (
    Phase,
    PlannedProblem,
    Record,
    Signal,
    State,
    Wall,
    board_view,
    fold,
    stated,
)
from waysaid.talk import event as happened

WALL = Wall((Signal("I have a way", "way"),), ("We listen.",), ("I noticed",), None, {})


def talk(words: str, language: str = "en", *problems: str) -> State:
    planned = tuple(PlannedProblem(f"p{n}", text) for n, text in enumerate(problems))
    opened = happened.TalkOpened("Thursday", "en", language, planned)
    shown = [happened.ProblemShown(one.id) for one in planned]
    connect = happened.PhaseSet(Phase.CONNECT)
    bodies = (opened, *shown, connect, happened.Noticed("n1", None, words))
    return fold([Record(n, "desk", n, body, n) for n, body in enumerate(bodies)])


def states(state: State, language: Language = Language.EN) -> str:
    return stated(state, state.noticings[0], language)


def test_a_noticing_is_matched_in_the_language_of_the_board_and_told_in_the_desks():
    state = talk("todos dan 10", "es", "5 + 5", "6 + 4")
    assert states(state) == "The answer is the same: 10."
    assert states(state, Language.ES) == "La respuesta es la misma: 10."


@pytest.mark.parametrize("problems", [("5 + 5", "6 + 4"), (), ("5 + 5",), ("rows of chairs",)])
def test_what_states_no_link_is_kept_as_said(problems):
    assert states(talk("they all make 11", "en", *problems)).startswith("Kept as said")


def test_marks_without_words_state_nothing():
    assert states(talk("", "en", "5 + 5", "6 + 4")) == ""


@pytest.mark.parametrize("number", [10, 11])
def test_the_board_is_told_the_words_alone(number):
    state = talk(f"they all make {number}", "en", "5 + 5", "6 + 4")
    connect = board_view(state, WALL, 1778)["connect"]
    board = json.dumps(connect, default=str)
    assert f"they all make {number}" in board
    assert states(state) not in board
    assert set(connect["noticings"][0]) == {"id", "name", "words", "marks", "join"}
