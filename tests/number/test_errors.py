"""One clear sentence for a line that cannot be read."""

import pickle
from contextlib import contextmanager, suppress

import pytest
from hypothesis import given
from hypothesis import strategies as st

from waysaid.number import (
    LONGEST,
    RULES,
    Language,
    Reason,
    Unreadable,
    parse,
    parse_equation,
)

SAMPLES = [(reason, line) for reason, rule in RULES.items() for line in rule.refused]
ONLY_EQUATIONS = {Reason.NO_EQUALS}


def refused(line, reason=Reason.STRANGE):
    read = parse_equation if reason in ONLY_EQUATIONS else parse
    with pytest.raises(Unreadable) as caught:
        read(line)
    return caught.value


def test_every_reason_has_a_row_and_lines_that_are_refused_for_it():
    assert set(RULES) == set(Reason)
    assert all(rule.refused for rule in RULES.values())


@pytest.mark.parametrize(("reason", "line"), SAMPLES)
def test_a_line_is_refused_for_its_reason(reason, line):
    assert refused(line, reason).reason is reason


@pytest.mark.parametrize("language", Language)
@pytest.mark.parametrize(("reason", "line"), SAMPLES)
def test_the_sentence_is_one_line_and_says_what_would_be_accepted(reason, line, language):
    sentence = refused(line, reason).sentence(language)
    assert sentence.isprintable()
    assert len(sentence) < 260
    assert sentence.endswith(f"{RULES[reason].wanted(language)}.")


@pytest.mark.parametrize("rule", RULES.values())
def test_no_message_is_left_in_the_other_language(rule):
    assert rule.en != rule.es


def test_the_place_is_counted_from_one():
    assert refused("37 & 25").sentence(Language.EN) == (
        "Cannot read ‘&’ at place 4 of ‘37 & 25’:"
        " numbers with +, −, x or / between them would fit here."
    )
    assert refused("37 & 25").sentence(Language.ES) == (
        "No se puede leer «&» en el lugar 4 de «37 & 25»:"
        " aquí caben números con +, −, x o / entre ellos."
    )


def test_the_end_has_no_place():
    assert str(refused("37 +")) == "Cannot read the end of ‘37 +’: a number would fit here."


def test_nothing_is_called_nothing():
    assert str(refused("  ")) == (
        "There is nothing to read: a problem such as 37 + 25 would fit here."
    )


def test_printing_it_gives_the_english_sentence():
    error = refused("37 & 25")
    assert str(error) == error.sentence(Language.EN)


@pytest.mark.parametrize(
    ("line", "marked"),
    [
        ("37 & 25", "37 & 25\n   ^"),
        ("37 +", "37 +\n    ^"),
        ("37 hundred 25", "37 hundred 25\n   ^^^^^^^"),
        ("7 + 5 = 12", "7 + 5 = 12\n^^^^^^^^^^"),
        ("37\t&", "37 &\n   ^"),
    ],
)
def test_a_caret_stands_under_the_place(line, marked):
    assert refused(line).marked == marked


@given(st.text(max_size=2 * LONGEST), st.sampled_from(Language))
def test_any_refusal_marks_a_place_that_can_be_seen(line, language):
    with suppress(Unreadable):
        parse(line)
        return
    error = refused(line)
    shown, carets = error.marked.split("\n")
    assert shown.isprintable()
    assert carets.strip(" ") == "^" * carets.count("^") != ""
    assert len(carets) <= len(shown) + 1
    assert error.sentence(language).isprintable()


def test_the_caret_stands_under_the_very_character_of_a_long_line():
    line = " + ".join(["12"] * 30) + " & 5"
    shown, carets = refused(line).marked.split("\n")
    assert shown[carets.index("^")] == "&"


def test_it_can_pass_through_a_context_manager():
    @contextmanager
    def inside():
        yield

    with pytest.raises(Unreadable), inside():
        parse("37 & 25")


def test_it_can_be_sent_to_another_process():
    error = refused("37 & 25")
    again = pickle.loads(pickle.dumps(error))
    assert (again.given, again.at, again.reason) == (error.given, error.at, error.reason)
