"""Slips hold up on any problem that can be written, and on any answer."""

import re

from hypothesis import given, settings
from hypothesis import strategies as some

from tests.counts import count
from tests.number import problems
from tests.slips.asked import KINDS, asked
from waysaid.number import (
    Answer,
    Equation,
    Language,
    Order,
    Problem,
    Remainder,
    Span,
    Verdict,
    Written,
    parse,
)
from waysaid.slips import Likely, foresee, slip_answer, slip_note, slip_question, slips
from waysaid.slips.catalogue import RULES

ANY = some.one_of(
    problems.expressions(),
    problems.blank_equations,
    problems.equations,
    problems.claims,
    problems.compares,
    problems.estimates,
    problems.images,
)
SAID: some.SearchStrategy[Answer | Remainder | Written] = some.one_of(
    problems.numbers,
    some.builds(Remainder, some.integers(0, 99), some.integers(0, 99)),
    some.sampled_from([*Order, *Verdict]),
    some.builds(Span, some.integers(0, 9), some.integers(9, 99)),
)
EACH = count(test=200, sweep=10_000)


@settings(max_examples=EACH, deadline=None)
@given(ANY, SAID)
def test_any_answer_to_any_problem_has_slips_or_none(
    problem: Problem, said: Answer | Remainder | Written
) -> None:
    for slip in slips(problem, said):
        assert slip_note(slip, Language.EN)
        assert slip_question(slip, Language.ES)
        assert slip.steps


@settings(max_examples=EACH, deadline=None)
@given(ANY)
def test_what_is_foreseen_can_be_told(problem: Problem) -> None:
    for slip in foresee(problem):
        assert slip_note(slip, Language.ES)
        assert slip_answer(slip, problem)
        assert slip.wrong in {again.wrong for again in slips(problem, slip.wrong)}


def test_an_answer_that_nothing_explains_has_no_slip() -> None:
    """An empty tuple, and never a story made up."""
    for given_, said in (
        ("37 + 25", 43),
        ("6 x 8", 1000),
        ("16 / 3", Remainder(9, 2)),
        ("0.5 + 0.7", 99),
        ("1/2 + 1/4", 77),
        ("15% of 80", 77),
        ("0.65 ? 0.7", Order.SAME),
        ("80 - 18 = 62 ?", Verdict.FALSE),
        ("about 398 x 21", 5),
        ("image frame 10: 7", 1),
    ):
        assert slips(parse(given_), said) == (), given_


def test_an_estimate_within_the_span_has_no_slip() -> None:
    for said in (8000, 8200, 8358, 8400):
        assert slips(parse("about 398 x 21"), said) == ()


def test_a_number_said_for_a_comparison_is_taken_as_the_larger() -> None:
    problem = parse("0.1 ? 0.24")
    assert slips(problem, Order.MORE) == slips(problem, parse("0.1").value)  # type: ignore[union-attr,operator]


def test_two_blanks_and_a_division_by_zero_have_no_slips() -> None:
    equation = parse("7 + _ = 12")
    assert isinstance(equation, Equation)
    assert foresee(Equation(equation.left, equation.left)) == ()


def test_every_rule_names_a_source() -> None:
    assert all(rule.source for rule in RULES)


def test_likely_is_one_of_three_words() -> None:
    assert [likely.value for likely in Likely] == ["often", "sometimes", "rare"]


VERDICT = r"wrong|error|mistake|fail|\bmal\b|fallo|equivoc"


def test_every_note_is_tentative_short_and_about_the_answer() -> None:
    for kind in KINDS:
        for one in asked(4, EACH // 4 + 1, kind):
            for slip in foresee(parse(one)):
                for language, may in ((Language.EN, r"\bmay\b"), (Language.ES, r"\bquizá\b")):
                    note = slip_note(slip, language)
                    assert re.search(may, note)
                    assert not re.search(VERDICT, note)
                    assert len(note) <= 120, note
                    assert not set("{}_") & set(note), note
                    assert not re.search(r"\b(child|pupil|niñ|alumn|she|he)\b", note)
