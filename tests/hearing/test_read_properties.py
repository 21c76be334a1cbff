"""What holds for every line and every problem."""

import re
from itertools import pairwise

from hypothesis import example, given
from hypothesis import strategies as st

from tests.counts import count
from tests.hearing.problems import problems, seeded
from tests.number.problems import expressions
from waysaid.hearing import Part, read
from waysaid.number import (
    BLANK,
    Equation,
    Operation,
    Sign,
    is_true,
    leaves,
    number_text,
    parse,
    parse_equation,
    sign_text,
    text,
    value_of,
    written,
)
from waysaid.ways import ways

PIECES = (
    "0 1 3 5 7 10 12 20 22 25 37 40 62 999999999 + - − – = -> → , ; : ? _ ( ) x / ÷"  # noqa: SIM905
    " 3/4 1/0 0.5 2,5 15% of r rem < > true more".split()
)
lines = st.lists(st.sampled_from([*PIECES, " ", " ", "+", "="]), max_size=40).map("".join)
KINDS = (  # noqa: SIM905
    "14 x 6|16 x 5|6 x 19|12 x 15|96 / 6|180 / 12|16 / 3|50 / 6|_ x 6 = 54|63 = 70 - _|5 - 8"
    "|3.8 + 0.45|0.25 x 36|1/2 + 1/4|3/4 + 3/4|1 1/4 - 3/4|15% of 80|2/3 of 57|0.65 ? 0.7|3/4 ? 5/8"
    "|29 + 14 = 30 + 13 ?|8 + 4 = _ + 5|about 398 x 21|image frame 10: 7|image array: 3 x 4"
).split("|")
"""One problem or more of each kind."""

kinds = st.sampled_from(KINDS).map(parse)
any_problem = st.one_of(problems, expressions(), st.just(BLANK), kinds)


@given(any_problem, st.one_of(lines, st.text()))
@example(62, "+3")
@example(BLANK, "+3 40 +22 62")
@example(BLANK, "8 9 10")
def test_any_line_is_read_and_kept(problem, line):
    assert read(problem, line).words == line


def _spellings(line):
    """The line without gaps; without needless zeros too; without commas too."""
    tight = line.replace(" ", "")
    plain = re.sub(r"(?<![0-9.,])0+(?=[0-9])", "", tight)
    return tight, plain, re.sub(r"(?<![0-9.])0+(?=[0-9])", "", tight.replace(",", ""))


def _written_in(number, said):
    """Tell whether a number is in the words, as it is written, by its value, or cut: 20 1."""
    written_so = number_text(number).lstrip("-−").replace(" ", "")
    value = abs(value_of(number))
    if any(one in line for line in _spellings(said) for one in (written_so, str(value))):
        return True
    cut = (value - value % 10, value % 10)
    return all(str(one) in said for one in cut)


@given(problems, lines)
@example(parse("1 + 1"), "+1/01")
@example(parse("1 + 1"), "+0x1")
@example(parse("1 + 1"), "+20_1->0+0")
def test_what_was_said_is_in_its_span(problem, line):
    for told in read(problem, line).told:
        start, end = told.span
        assert 0 <= start < end <= len(line)
        said = line[start:end]
        equation = told.step.equation
        if Part.RESULT not in told.unsaid and not isinstance(equation.right, Operation):
            assert _written_in(equation.right, said)
        if isinstance(equation.left, Operation) and Part.RIGHT not in told.unsaid:
            assert all(_written_in(one, said) for one in written(equation.left.right))


@given(problems, lines)
def test_a_result_that_nobody_said_is_what_arithmetic_makes_of_the_step(problem, line):
    for told in read(problem, line).told:
        if Part.RESULT in told.unsaid:
            assert is_true(told.step.equation)


small = st.integers(0, 999)
said_equations = st.lists(
    st.builds(
        lambda left, sign, right, result: Equation(Operation(sign, left, right), result),
        small,
        st.sampled_from([Sign.PLUS, Sign.MINUS]),
        small,
        st.integers(-999, 1999),
    ),
    min_size=1,
    max_size=8,
)


@given(problems, said_equations, st.sampled_from([" ", ", ", "; ", " → "]), st.booleans())
def test_equations_are_kept_exactly_as_said_true_or_not(problem, equations, gap, tight):
    printed = [text(equation) for equation in equations]
    line = gap.join(one.replace(" ", "") if tight else one for one in printed)
    told = read(problem, line).told
    assert [one.step.equation for one in told] == equations
    assert not any(one.unsaid for one in told)


@given(any_problem, lines)
@example(37, "999999999+999999999")
@example(37, "500=" + "+".join(["1"] * 150))
def test_a_step_can_be_written_and_read_again(problem, line):
    for told in read(problem, line).told:
        assert parse_equation(told.step.text) == told.step.equation


@given(problems, lines)
@example(parse("0 + 0"), "+0=2,510")
@example(parse("2 + 2"), "1/03")
def test_an_answer_is_a_number_in_the_line(problem, line):
    """Gaps aside, zeros before a number, and the comma of thousands: 2,510 may be 2510."""
    answer = read(problem, line).answer_text
    said = "" if answer is None else answer.removeprefix("-").replace(" ", "")
    assert any(said in one for one in _spellings(line))


def test_the_steps_of_any_way_are_read_back_with_its_family():
    for problem in seeded(count(test=120, sweep=4_000)):
        for way in ways(problem):
            steps = [step.text for step in way.steps]
            for line in (", ".join(steps), " ".join(steps), _tight(steps)):
                _reads_back(problem, way, line)


def test_the_steps_of_any_way_of_any_kind_of_problem_are_read_back_with_its_family():
    for given_text in KINDS:
        problem = parse(given_text)
        for way in ways(problem):
            steps = [step.text for step in way.steps]
            for line in (", ".join(steps), " ".join(steps), _close(steps)):
                if line and "50/6 = 8 2/6" not in line:  # 8 2/6 is read as 8, and 2 / 6
                    reading = read(problem, line)
                    heard = [told.step.equation for told in reading.told]
                    assert heard == [step.equation for step in way.steps], line
                    assert reading.family is way.family, line


def _close(steps):
    """Steps without gaps but where a mixed number needs its own."""
    return " ".join(
        one if " of " in one or re.search(r"[0-9] [0-9]", one) else one.replace(" ", "")
        for one in steps
    )


def _tight(steps):
    return " ".join(step.replace(" ", "") for step in steps)


def _reads_back(problem, way, line):
    if not line:
        return
    reading = read(problem, line)
    assert tuple(told.step for told in reading.told) == way.steps, line
    assert reading.family is way.family, line
    assert not any(told.unsaid for told in reading.told)
    ends = value_of(way.steps[-1].equation.right)
    assert reading.answer in (None, way.answer) or ends == reading.answer
    if ends == way.answer:
        assert reading.answer == way.answer


def _hops(way):
    """The steps where each goes on from the last and is one hop; else None."""
    equations = [step.equation for step in way.steps]
    plain = all(
        isinstance(one.left, Operation)
        and not isinstance(one.left.left, Operation)
        and not isinstance(one.right, Operation)
        for one in equations
    )
    on = plain and all(after.left.left == one.right for one, after in pairwise(equations))
    return equations if on else None


def _run_on(equations):
    first = number_text(equations[0].left.left)
    return first + "".join(f"{_hop(one)}={number_text(one.right)}" for one in equations)


def _hop(equation):
    return sign_text(equation.left.sign) + number_text(equation.left.right)


def test_hops_on_from_one_another_are_read_back_from_a_run_on_line():
    tried = 0
    for problem in seeded(count(test=120, sweep=4_000), seed=62):
        for way in ways(problem):
            hops = _hops(way)
            if hops:
                tried += 1
                reading = read(problem, _run_on(hops))
                assert [told.step.equation for told in reading.told] == hops
                assert reading.family is way.family
    assert tried > 0


def test_a_run_on_line_without_its_last_result_has_no_answer():
    for problem in seeded(count(test=120, sweep=4_000), seed=25):
        for way in ways(problem):
            hops = _hops(way)
            if hops:
                line = _run_on(hops).rpartition("=")[0]
                reading = read(problem, line)
                assert reading.answer is None
                assert reading.told[-1].unsaid[-1] is Part.RESULT


def test_hops_that_start_unsaid_are_read_back():
    for problem in seeded(count(test=120, sweep=4_000), seed=7):
        for way in ways(problem):
            hops = _hops(way)
            if hops and hops[0].left.left in _numbers(problem):
                line = " ".join(f"{_hop(one)} {number_text(one.right)}" for one in hops)
                reading = read(problem, line)
                assert [told.step.equation for told in reading.told] == hops, line
                assert [told.unsaid for told in reading.told] == [
                    (Part.LEFT,),
                    *[()] * (len(hops) - 1),
                ]


def _numbers(problem):
    sides = (problem.left, problem.right) if isinstance(problem, Equation) else (problem,)
    return {leaf for side in sides for leaf in leaves(side)}
