"""The question that goes with a slip gives nothing away."""

import re

import pytest

from tests.counts import count
from tests.slips.asked import KINDS, asked
from waysaid.number import (
    Language,
    Print,
    Remainder,
    Span,
    answer_of,
    answer_text,
    number_text,
    parse,
    remainder_of,
    text,
)
from waysaid.slips import SlipName, foresee, slip_question, slips
from waysaid.slips.ask import _ASKED

EACH = count(test=80, sweep=5_000)
NUMBER = r"\d+ \d+/\d+|\d+/\d+|\d+(?:\.\d+)?%?"
WORDS = {
    Language.EN: "zero one two three four five six seven eight nine ten eleven twelve twenty"
    " hundred thousand half double once twice first second true false larger smaller",
    Language.ES: "cero uno dos tres cuatro cinco seis siete ocho nueve diez once doce veinte cien"
    " mil mitad doble primero segundo verdadero falso mayor menor iguales",
}
VERDICTS = {
    Language.EN: r"wrong|mistake|error|incorrect|correct|\bright\b|forg|should|miss|lost|careful",
    Language.ES: r"error|equivoc|mal\b|correct|\bbien\b|olvid|debe|falta|perd|fall|cuidado",
}


def _rights(given: str) -> set[str]:
    """Every way in which the right answer may be printed."""
    problem = parse(given)
    found = {answer_text(problem), answer_text(problem, Print.TRUE)}
    left = remainder_of(problem)
    if left is not None:
        found.add(str(left.groups))
    answer = answer_of(problem)
    if isinstance(answer, Span):
        found |= {number_text(answer.low), number_text(answer.high)}
    elif isinstance(answer, int):
        found.add(str(answer))
    return found


@pytest.mark.parametrize("language", list(Language))
@pytest.mark.parametrize("kind", KINDS)
def test_no_question_holds_the_right_answer(kind: str, language: Language) -> None:
    for given in asked(2, EACH, kind):
        for slip in foresee(parse(given)):
            question = slip_question(slip, language)
            assert not any(right in question for right in _rights(given)), (given, question)


@pytest.mark.parametrize("language", list(Language))
@pytest.mark.parametrize("kind", KINDS)
def test_a_question_holds_no_number_that_the_problem_does_not(
    kind: str, language: Language
) -> None:
    for given in asked(2, EACH, kind):
        for slip in foresee(parse(given)):
            question = slip_question(slip, language)
            known = set(re.findall(NUMBER, text(parse(given), Print.TRUE)))
            assert set(re.findall(NUMBER, question)) <= known, (given, question)


def _all_questions(language: Language) -> set[str]:
    given = [one for kind in KINDS for one in asked(3, EACH, kind)]
    return {slip_question(slip, language) for one in given for slip in foresee(parse(one))}


@pytest.mark.parametrize("language", list(Language))
def test_a_question_says_no_number_in_words_and_no_verdict(language: Language) -> None:
    for question in _all_questions(language):
        words = set(re.findall(r"[^\W\d_]+", question.lower()))
        assert not words & set(WORDS[language].split()), question
        assert not re.search(VERDICTS[language], question.lower()), question


@pytest.mark.parametrize("language", list(Language))
def test_a_question_asks_and_is_short(language: Language) -> None:
    for question in _all_questions(language):
        assert question.endswith("?")
        assert ("¿" in question) is (language is Language.ES)
        assert len(question) <= 120, question
        assert not set("{}_=") & set(question)


def test_every_slip_has_something_to_ask() -> None:
    assert set(_ASKED) == set(SlipName)


def test_a_question_names_the_numbers_of_the_problem() -> None:
    (slip,) = [slip for slip in slips(parse("37 + 25"), 52) if slip.slug is SlipName.DROP_CARRY]
    question = "Can you show me where each piece of 37 and 25 went?"
    assert slip_question(slip, Language.EN) == question


def test_a_question_names_what_finds_a_blank_in_its_order() -> None:
    slip = slips(parse("25 + _ = 62"), 43)[0]
    question = "Can you build 62 and show me what happens as 25 comes off?"
    assert slip_question(slip, Language.EN) == question


def test_a_number_that_holds_the_answer_is_not_named() -> None:
    slip = slips(parse("62 - 56"), 14)[0]
    assert "62" not in slip_question(slip, Language.EN)
    assert slip.numbers == (56,) or "6" not in slip_question(slip, Language.EN)


def test_the_question_is_the_same_for_every_answer_that_a_slip_gives() -> None:
    """So that the words tell nothing of the answer that was heard."""
    problem = parse("347 + 285")
    asked_of = {
        slip_question(slip, Language.EN)
        for slip in foresee(problem)
        if slip.slug is SlipName.DROP_CARRY
    }
    assert len(asked_of) == 1


def test_a_remainder_is_not_given_away() -> None:
    problem = parse("26 / 5")
    for wrong in (5, Remainder(5, 2), Remainder(4, 6)):
        for slip in slips(problem, wrong):
            assert "5" not in slip_question(slip, Language.EN)
