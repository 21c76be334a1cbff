"""A hearing puts no words into a child's mouth: over generated talk whose truth is known."""

from dataclasses import replace

import pytest

from tests.counts import count
from tests.hearing.lies import Fault, counted, faults, heard_of
from tests.hearing.speaker import utterances
from waysaid.hearing import Reading, Told, read
from waysaid.number import Language, Remainder, answer_of, parse, parse_equation
from waysaid.ways import Kind, Step

PARTS = 8
"""The utterances are tried in so many parts, so that several processes can share them."""
MOST = {
    Fault.WORDS: 0,
    Fault.TRUE_ANSWER: 1,
    Fault.ANSWER: 3,
    Fault.TAKEN_BACK: 2,
    Fault.NONE: 10,
    Fault.NUMBER: 8,
    Fault.CHANGED: 7,
    Fault.REPAIRED: 2,
}
"""How many of a thousand utterances may have each fault: a little more than was measured.

The aim is none of any; all but the first are known to fall short of it. The figures stand in
docs/reference/hearing.md.
"""


def allowed(fault: Fault, number: int) -> float:
    """Return the most faults of a kind among so many: one and three deviations more, by chance."""
    mean = MOST[fault] * number / 1000
    return mean + 3 * mean**0.5 + 1 if mean else 0


@pytest.mark.parametrize("part", range(PARTS))
def test_what_nobody_said_is_not_heard(part):
    many = count(test=2_000, sweep=100_000) // PARTS
    number, found = counted(utterances(part, many))
    assert number == many
    over = {fault.value: found[fault] for fault in Fault if found[fault] > allowed(fault, number)}
    assert over == {}


def test_the_speaker_says_the_same_from_the_same_seed_and_more_than_one_thing():
    listed = list(utterances(5, 60))
    assert listed == list(utterances(5, 60))
    assert {one.language for one in listed} == set(Language)
    assert {one.right for one in listed} == {True, False}
    assert any(one.taken_back for one in listed)
    assert any(one.answer is None for one in listed)
    assert any(not line.result for one in listed for line in one.lines)


def _lying(said, heard: Reading):
    """Yield a fault, and the reading made to have it."""
    first, *rest = heard.told
    truth = answer_of(parse(said.problem))
    yield Fault.WORDS, replace(heard, words=heard.words.upper())
    yield Fault.ANSWER, replace(heard, answer=4712)
    yield Fault.TRUE_ANSWER, replace(heard, answer=truth)
    yield Fault.NONE, replace(heard, answer=truth)
    strange = Step(Kind.JOIN, parse_equation("4711 + 4712 = 9423"))
    yield Fault.NUMBER, replace(heard, told=(Told(strange, (), (0, 1)), *rest))
    mended = Step(Kind.JOIN, parse_equation("30 + 20 = 50"))
    for fault in (Fault.CHANGED, Fault.REPAIRED):
        yield fault, replace(heard, told=(Told(mended, (), first.span), *rest))


def test_each_lie_is_seen():
    """The measure itself: a reading with the fault has it, and the one without has none."""
    wrong = (one for seed in range(50) for one in utterances(seed, 40))
    said = next(
        one
        for one in wrong
        if one.answer is None
        and [line.result for line in one.lines] == [True]
        and not isinstance(answer_of(parse(one.problem)), Remainder)
        and answer_of(parse(one.problem)) not in one.spoken | one.taken_back
    )
    line = replace(said.lines[0], equation=parse_equation("30 + 20 = 51"))
    said = replace(said, lines=(line,), problem="37 + 26", spoken=frozenset({30, 20, 51}))
    heard = Reading((Told(Step(Kind.JOIN, line.equation), (), (0, 9)),), None, None, said.said)
    assert faults(said, heard) == set()
    seen = {fault for fault, lie in _lying(said, heard) if fault in faults(said, lie)}
    assert seen == set(Fault) - {Fault.TAKEN_BACK}
    back = replace(said, taken_back=frozenset({52}))
    assert Fault.TAKEN_BACK in faults(back, replace(heard, answer=52))


CASES = [
    ("540 x 8", "five hundred forty times ate makes four thousand three hundred twenty one",
     ["540 x 8 = 4321"], "4321"),
    ("53 - 27", "twenty three because I took twenty off fifty three, take off seven is sixteen",
     ["53 - 20 = 23", "23 - 7 = 16"], "16"),
    ("2 + 8", "it's eleven because two and eight", ["2 + 8 = 11"], "11"),
    ("108 / 6", "it's twenty eight because I shared one hundred eight by six",
     ["108 / 6 = 28"], "28"),
    ("81 + 82", "eighty one plus two is eighty three", ["81 + 2 = 83"], None),
    ("5 x 6", "five times six is thirty two", ["5 x 6 = 32"], "32"),
    ("5 x 6", "cinco por seis son treinta y dos", ["5 x 6 = 32"], "32"),
    ("7 + 8", "seven and seven is fifteen and one more is sixteen",
     ["7 + 7 = 15", "15 + 1 = 16"], "16"),
    ("45 / 5", "five times ate that's forty five then forty five divided by five is eight",
     ["5 x 8 = 45", "45 / 5 = 8"], "8"),
    ("96 / 6", "es seis porque dividí noventa y seis entre seis", ["96 / 6 = 6"], "6"),
    ("80 - 47", "eighty take forty is forty and zero take away seven is seven so forty seven",
     ["80 - 40 = 40", "0 - 7 = 7", "40 + 7 = 47"], "47"),
    ("72 - 36", "half of seventy two is thirty six", ["72 / 2 = 36"], "36"),
    ("63 x 2", "double sixty is one twenty double three is six so won twenty six",
     ["60 x 2 = 120", "3 x 2 = 6", "120 + 6 = 126"], "126"),
    ("52 x 2", "double fifty is a hundred and double two is for so one oh ate",
     ["50 x 2 = 100", "2 x 2 = 4", "100 + 4 = 108"], "108"),
    ("20 x 3", "sumé veinte tres veces y da sesenta", ["20 x 3 = 60"], "60"),
    ("30 x 4", "thirty four times is one thirty", ["30 x 4 = 130"], "130"),
]  # fmt: skip


@pytest.mark.parametrize(("problem", "line", "steps", "answer"), CASES)
def test_a_wrong_result_or_an_early_end_is_kept_as_it_was_said(problem, line, steps, answer):
    language = Language.ES if line.startswith(("es ", "cinco ", "sumé ")) else Language.EN
    heard = read(parse(problem), line, language)
    assert [told.step.text for told in heard.told] == steps
    assert heard.answer_text == answer


def test_a_result_that_was_taken_back_is_no_answer():
    line = "doscientos cuarenta y tres entre nueve son treinta y siete digo dividí doscientos"
    line += " cuarenta y tres entre nueve es veintisiete"
    heard = read(parse("7/9 of 243"), line, Language.ES)
    assert heard.answer_text != "37"


def test_an_utterance_is_heard_alike_whatever_was_heard_before():
    """A reading depends on nothing but the words: no memory of the one before."""
    listed = list(utterances(9, 20))
    assert [heard_of(one) for one in listed] == [heard_of(one) for one in reversed(listed)][::-1]
