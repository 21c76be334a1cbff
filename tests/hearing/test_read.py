"""Reading shorthand: what was said, what was not, and nothing corrected."""

import pytest

from tests.hearing.heard import heard, w
from waysaid.hearing import Part, read
from waysaid.number import Language, parse
from waysaid.ways import Kind

# From ../shared/checks/heard_examples.jsonl, the rows in shorthand: problem, line, steps, answer,
# families that fit.
CHECKS = [
    ("37 + 25", "37+20=57+5=62", ["37 + 20 = 57", "57 + 5 = 62"], "62", ["jump"]),
    (
        "37 + 25",
        "30+20 50+7 57+5",
        ["30 + 20 = 50", "50 + 7 = 57", "57 + 5 = 62"],
        None,
        ["split-then-jump"],
    ),
    ("37 + 25", "+3 40 +22 62", ["37 + 3 = 40", "40 + 22 = 62"], "62", ["bridge"]),
]


@pytest.mark.parametrize(("problem", "line", "steps", "answer", "families"), CHECKS)
def test_a_line_of_the_shared_checks_is_heard(problem, line, steps, answer, families):
    reading = read(parse(problem), line)
    assert [told.step.text for told in reading.told] == steps
    assert reading.answer_text == answer
    assert reading.family in families


HEARD = [
    # A run-on equals sign becomes separate steps; a result that nobody said is unsaid.
    (
        "37 + 25",
        "37+3=40+22",
        ["37 + 3 = 40", w("40 + 22 = 62", "result")],
        None,
        "bridge",
    ),
    ("37 + 25", "37+3=40+22=62", ["37 + 3 = 40", "40 + 22 = 62"], "62", "bridge"),
    ("37 + 25", "37+20=57=57+5=62", ["37 + 20 = 57", "57 + 5 = 62"], "62", "jump"),
    ("62 - 25", "62-20=42-5=37", ["62 - 20 = 42", "42 - 5 = 37"], "37", "jump"),
    # Hops: where they start need not be said.
    ("37 + 25", "+3 40 +22 62", [w("37 + 3 = 40", "left"), "40 + 22 = 62"], "62", "bridge"),
    (
        "37 + 25",
        "+3 40 +22",
        [w("37 + 3 = 40", "left"), w("40 + 22 = 62", "result")],
        None,
        "bridge",
    ),
    (
        "47 + 35",
        "+30 +5",
        [w("47 + 30 = 77", "left", "result"), w("77 + 5 = 82", "left", "result")],
        None,
        "jump",
    ),
    (
        "47 + 35",
        "47 +30 +5",
        [w("47 + 30 = 77", "result"), w("77 + 5 = 82", "left", "result")],
        None,
        "jump",
    ),
    ("37 + 25", "+37 62", [w("25 + 37 = 62", "left")], "62", None),
    (
        "62 - 25",
        "-20 42 -5 37",
        [w("62 - 20 = 42", "left"), "42 - 5 = 37"],
        "37",
        "jump",
    ),
    # A result starts the next hop; a piece of the problem starts a step of its own.
    (
        "37 + 25",
        "30+20 7+5 50+12",
        [w("30 + 20 = 50", "result"), w("7 + 5 = 12", "result"), w("50 + 12 = 62", "result")],
        None,
        "split",
    ),
    (
        "37 + 25",
        "30 + 20 7 + 5 50 + 12 62",
        [w("30 + 20 = 50", "result"), w("7 + 5 = 12", "result"), "50 + 12 = 62"],
        "62",
        "split",
    ),
    (
        "37 + 25",
        "30+20 50 7+5 12 50+12 62",
        ["30 + 20 = 50", "7 + 5 = 12", "50 + 12 = 62"],
        "62",
        "split",
    ),
    # The problem said again before the work is no step.
    (
        "62 - 25",
        "62-25 -> -20 42 -5 37",
        [w("62 - 20 = 42", "left"), "42 - 5 = 37"],
        "37",
        "jump",
    ),
    (
        "62 - 25",
        "62-25 -20 42 -5 37",
        [w("62 - 20 = 42", "left"), "42 - 5 = 37"],
        "37",
        "jump",
    ),
    ("37 + 25", "37+25=37+3=40+22=62", ["37 + 3 = 40", "40 + 22 = 62"], "62", "bridge"),
    # A true equality of two sums is one step.
    (
        "37 + 25",
        "37+25=40+22=62",
        ["37 + 25 = 40 + 22", "40 + 22 = 62"],
        "62",
        "give-and-take",
    ),
    (
        "62 - 25",
        "62-25=67-30=37",
        ["62 - 25 = 67 - 30", "67 - 30 = 37"],
        "37",
        "shift-both",
    ),
    ("62 - 25", "67-30=37", ["67 - 30 = 37"], "37", "shift-both"),
    # A whole opened into parts.
    (
        "37 + 25",
        "25=3+22 37+3=40+22=62",
        ["25 = 3 + 22", "37 + 3 = 40", "40 + 22 = 62"],
        "62",
        "bridge",
    ),
    # Below zero.
    (
        "62 - 25",
        "60-20=40 2-5=-3 40-3=37",
        ["60 - 20 = 40", "2 - 5 = -3", "40 - 3 = 37"],
        "37",
        "split",
    ),
    (
        "62 - 25",
        "60-20 40 2-5 -3 40-3 37",
        ["60 - 20 = 40", "2 - 5 = -3", "40 - 3 = 37"],
        "37",
        "split",
    ),
    # Wrong arithmetic is kept, and what follows goes on from it.
    (
        "37 + 25",
        "7+5=11 30+20=50 50+11=61",
        ["7 + 5 = 11", "30 + 20 = 50", "50 + 11 = 61"],
        "61",
        "split",
    ),
    ("37 + 25", "+3 41 +22 63", [w("37 + 3 = 41", "left"), "41 + 22 = 63"], "63", "bridge"),
    ("37 + 25", "37+3=41+22", ["37 + 3 = 41", w("41 + 22 = 63", "result")], None, "bridge"),
    ("71 - 34", "71-40=31-6=25", ["71 - 40 = 31", "31 - 6 = 25"], "25", "adjust"),
    # Answers: a bare number is one; a number on the way to one is not.
    ("37 + 25", "62", [], "62", None),
    ("37 + 25", " 56. ", [], "56", None),
    ("37 + 25", "-5", [w("37 - 5 = 32", "left", "result")], None, None),
    ("37 + 25", "37+3=40", ["37 + 3 = 40"], None, None),
    ("37 + 25", "30+20=50 7+5=12", ["30 + 20 = 50", "7 + 5 = 12"], None, "split"),
    (
        "37 + 25",
        "30+20=50 7+5=12 62",
        ["30 + 20 = 50", "7 + 5 = 12", w("50 + 12 = 62", "left", "op", "right")],
        "62",
        "split",
    ),
    (
        "37 + 25",
        "30+20 7+5 61",
        [w("30 + 20 = 50", "result"), w("7 + 5 = 12", "result")],
        "61",
        "split",
    ),
    ("37 + 25", "7+5=11 61 30+20=50", ["7 + 5 = 11", "30 + 20 = 50"], "61", "split"),
    (
        "37 + 25",
        "62: +3 40 +22",
        [w("37 + 3 = 40", "left"), w("40 + 22 = 62", "result")],
        "62",
        "bridge",
    ),
    ("37 + 25", "37+25=62", ["37 + 25 = 62"], "62", None),
    ("37 + 25", "56 37+20=57+5=62", ["37 + 20 = 57", "57 + 5 = 62"], "62", "jump"),
    ("62 - 25", "25 30 62: 5+32=37", ["5 + 32 = 37"], "37", "add-up"),
    ("62 - 25", "25 30 62: 5+30", [w("5 + 30 = 35", "result")], None, None),
    ("13 - 7", "7+6=13", ["7 + 6 = 13"], None, "think-add"),
    ("13 - 7", "7+6=13 6", ["7 + 6 = 13"], "6", "think-add"),
    ("7 + _ = 12", "7+5=12", ["7 + 5 = 12"], "5", "known-fact"),
    (
        "71 - 34",
        "34+6=40+30=70+1=71",
        ["34 + 6 = 40", "40 + 30 = 70", "70 + 1 = 71"],
        None,
        "add-up",
    ),
    (
        "71 - 34",
        "+6 40 +30 70 +1 71 37",
        [w("34 + 6 = 40", "left"), "40 + 30 = 70", "70 + 1 = 71"],
        "37",
        "add-up",
    ),
    # Equal addends taken together.
    (
        "19 + 21 + 20",
        "3x20=60",
        ["3 x 20 = 60"],
        "60",
        "adjust",
    ),
    ("16 + 17 + 24", "3×20=60-3=57", ["3 x 20 = 60", "60 - 3 = 57"], "57", "adjust"),
    # Counting: the sign and the one are what nobody says.
    (
        "7 + 3",
        "8 9 10",
        [
            w("7 + 1 = 8", "left", "op", "right"),
            w("8 + 1 = 9", "op", "right"),
            w("9 + 1 = 10", "op", "right"),
        ],
        "10",
        "counting",
    ),
    (
        "7 + 3",
        "7, 8, 9",
        [w("7 + 1 = 8", "op", "right"), w("8 + 1 = 9", "op", "right")],
        "9",
        "counting",
    ),
    # Equals signs that lead nowhere yet, as while typing.
    ("37 + 25", "37+3=", [w("37 + 3 = 40", "result")], None, None),
    ("37 + 25", "37+3=?", [w("37 + 3 = 40", "result")], None, None),
]


@pytest.mark.parametrize(("problem", "line", "steps", "answer", "family"), HEARD)
def test_a_line_is_heard_as_it_was_said(problem, line, steps, answer, family):
    assert heard(problem, line) == (steps, answer, family)


SAME = ["+3 40 +22 62", "+3, 40, +22, 62", "+3,40,+22,62", "+3 → 40; +22 → 62", "+ 3 40 + 22 62"]


@pytest.mark.parametrize("line", SAME)
def test_gaps_and_breaks_say_the_same(line):
    assert heard("37 + 25", line) == heard("37 + 25", SAME[0])


@pytest.mark.parametrize("minus", "-−–—")
def test_any_dash_is_a_minus(minus):
    assert heard("62 - 25", f"62{minus}20=42{minus}5=37")[0] == ["62 - 20 = 42", "42 - 5 = 37"]


NEITHER = [
    "",
    "   ",
    "66 56",
    "37 25 62",
    "40=40",
    "37+",
    "+",
    "=5",
    "37++3",
    "1/0",
    "37+3>40",
    "(37+3)",
    "1234567890",
    "+1 " * 150,
    "999999999+1",
    "62?",
    "٣+٤",
    "👍",
    "my dog can count",
    "I was thinking of lunch",
]


@pytest.mark.parametrize("problem", ["37 + 25", "3/8 + 1/4", "13 x 7", "0.7 + 0.5", "48 / 6"])
@pytest.mark.parametrize(
    ("line", "language"),
    [
        ("¿puedo pasar a la pizarra o lo digo sentado?", Language.ES),
        ("¿lo paso al cuaderno o se lo doy a usted?", Language.ES),
        ("can I give it to them or take it back to my seat", Language.EN),
        ("I put it there and then I moved it over", Language.EN),
    ],
)
def test_a_line_without_a_number_tells_no_step(problem, line, language):
    reading = read(parse(problem), line, language)
    assert (reading.told, reading.answer) == ((), None)


@pytest.mark.parametrize("line", NEITHER)
def test_a_line_that_is_no_shorthand_and_says_no_mathematics_is_kept(line):
    assert heard("37 + 25", line) == ([], None, None)
    assert read(parse("37 + 25"), line).words == line


@pytest.mark.parametrize(
    ("line", "steps", "answer", "family"),
    [
        ("thirty seven and three is forty", ["37 + 3 = 40"], None, "bridge"),
        ("I did 37+3=40 and then 22", ["37 + 3 = 40"], None, "bridge"),
        ("I just know it", [], None, "known-fact"),
    ],
)
def test_a_line_of_words_is_heard(line, steps, answer, family):
    reading = read(parse("37 + 25"), line)
    assert [told.step.text for told in reading.told][: len(steps)] == steps
    assert reading.family == family
    assert reading.words == line


def spans(problem, line):
    return [line[slice(*told.span)] for told in read(parse(problem), line).told]


@pytest.mark.parametrize(
    ("line", "pieces"),
    [
        ("37+3=40+22", ["37+3=40", "40+22"]),
        (" +3 40 +22 62", ["+3 40", "40 +22 62"]),
        ("30+20 7+5 62", ["30+20", "7+5"]),
        ("25=3+22 37+3=40", ["25=3+22", "37+3=40"]),
        ("37+10+10+5=62", ["37+10", "+10", "+5=62"]),
        ("37+20=57 58 59 60", ["37+20=57", "58", "58 59", "59 60"]),
    ],
)
def test_each_step_is_tied_to_its_characters(line, pieces):
    assert spans("37 + 25", line) == pieces


@pytest.mark.parametrize(
    ("problem", "line", "kinds"),
    [
        ("37 + 25", "37+3=40 25-3=22 40+22=62", [Kind.MOVE, Kind.MOVE, Kind.JOIN]),
        ("37 + 25", "7+5=11 30+20=50 50+11=61", [Kind.JOIN] * 3),
        ("37 + 25", "37+2=39 39+23=62", [Kind.JUMP, Kind.JUMP]),
        ("37 + 25", "4+4=8 9-4=5", [Kind.JOIN, Kind.TAKE]),
        ("37 + 25", "38 39 40", [Kind.COUNT] * 3),
        ("37 + 25", "25=11+14", [Kind.SPLIT]),
        ("37 + 25", "37+25=62", [Kind.RECALL]),
        ("62 - 25", "62-25=63-26", [Kind.SHIFT]),
        ("37 + 25", "37+25=38+24", [Kind.MOVE]),
    ],
)
def test_each_step_has_its_kind(problem, line, kinds):
    assert [told.step.kind for told in read(parse(problem), line).told] == kinds


@pytest.mark.parametrize(
    ("problem", "line", "family"),
    [
        ("37 + 25", "37+1=38 38+2=40 40+22=62", "bridge"),
        ("37 + 25", "37+20=57 57+4=61 61+1=62", "jump"),
        ("62 - 25", "25+15=40 40+22=62", "add-up"),
        ("62 - 25", "62-40=22 22+15=37", "adjust"),
        ("37 + 25", "37+50=87 87-25=62", "adjust"),
        ("37 + 25", "37+13=50 50+13=63", None),
        ("37 + 25", "2+2=4", None),
        ("8 + 9", "8+1=9 9+8=17", None),
        ("37 + 25", "37+25=37+20+5=57+5=62", None),
    ],
)
def test_steps_that_no_way_has_may_still_have_the_shape_of_a_family(problem, line, family):
    assert heard(problem, line)[2] == family


def test_a_problem_that_no_way_is_written_for_is_read_all_the_same():
    assert heard("14 x 6", "10+10=20+5") == (
        ["10 + 10 = 20", w("20 + 5 = 25", "result")],
        None,
        None,
    )


def test_the_parts_are_slugs():
    assert [*Part] == ["left", "op", "right", "result"]
