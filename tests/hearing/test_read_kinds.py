"""Reading shorthand about every kind of problem: groups, shares, and numbers in their forms."""

import pytest

from tests.hearing.heard import heard, w

GROUPS = [
    # Products and shares, in pieces: each a step of its own.
    (
        "14 x 6",
        "10x6 4x6 60+24",
        [w("10 x 6 = 60", "result"), w("4 x 6 = 24", "result"), w("60 + 24 = 84", "result")],
        None,
        "break-up",
    ),
    ("14 x 6", "10x6=60+24", ["10 x 6 = 60", w("60 + 24 = 84", "result")], None, "break-up"),
    ("14 x 6", "10x6+4x6=84", ["10 x 6 + 4 x 6 = 84"], "84", "break-up"),
    (
        "96 / 6",
        "60/6 36/6 16",
        [w("60 / 6 = 10", "result"), w("36 / 6 = 6", "result")],
        "16",
        "break-up",
    ),
    (
        "96 / 6",
        "10x6 6x6 16",
        [w("10 x 6 = 60", "result"), w("6 x 6 = 36", "result")],
        "16",
        "chunk-out",
    ),
    # Turned-round products are the same steps.
    (
        "14 x 6",
        "6x10=60 6x4=24 84",
        ["6 x 10 = 60", "6 x 4 = 24", w("60 + 24 = 84", "left", "op", "right")],
        "84",
        "break-up",
    ),
    ("8 x 6", "6x7=42 42+6=48", ["6 x 7 = 42", "42 + 6 = 48"], "48", "near-fact"),
    # Hops by factors: where they start need not be said.
    (
        "14 x 4",
        "x2 x2",
        [w("14 x 2 = 28", "left", "result"), w("28 x 2 = 56", "left", "result")],
        None,
        "factor-steps",
    ),
    ("96 / 6", "/2 48 /3 16", [w("96 / 2 = 48", "left"), "48 / 3 = 16"], "16", "factor-steps"),
    ("16 x 5", "16x10=160/2=80", ["16 x 10 = 160", "160 / 2 = 80"], "80", "adjust"),
    ("16 x 5", "16x5=8x10=80", ["16 x 5 = 8 x 10", "8 x 10 = 80"], "80", "double-halve"),
    ("96 / 6", "96/6=48/3=16", ["96 / 6 = 48 / 3", "48 / 3 = 16"], "16", "scale-both"),
    # Something yet to be found.
    ("56 / 8", "8 x ? = 56", ["8 x _ = 56"], None, "think-times"),
    ("56 / 8", "8x?=56 7", ["8 x _ = 56"], "7", "think-times"),
    ("56 / 8", "8x7=56", ["8 x 7 = 56"], None, "think-times"),
    # What is left over is an answer; the last step of such a way is none.
    ("16 / 3", "5 r 1", [], "5 r 1", None),
    ("16 / 3", "5 rem 1", [], "5 r 1", None),
    ("16 / 3", "3x5=15 5 left 1", ["3 x 5 = 15"], "5 r 1", "think-times"),
    ("16 / 3", "3x5=15 16-15=1", ["3 x 5 = 15", "16 - 15 = 1"], None, "think-times"),
    ("16 / 3", "16/3=5 r 1", [], "5 r 1", None),
    ("16 / 3", "5 1/3", [], "5 1/3", None),
    # Counted by the number itself.
    (
        "8 x 3",
        "8 16 24",
        [w("8 + 8 = 16", "op", "right"), w("16 + 8 = 24", "op", "right")],
        "24",
        "counting",
    ),
    # Wrong arithmetic is kept, and shows its way all the same.
    (
        "14 x 6",
        "10x6=60 4x6=20 80",
        ["10 x 6 = 60", "4 x 6 = 20", w("60 + 20 = 80", "left", "op", "right")],
        "80",
        "break-up",
    ),
    (
        "7 x 8",
        "5x8=40 2x8=14 54",
        ["5 x 8 = 40", "2 x 8 = 14", w("40 + 14 = 54", "left", "op", "right")],
        "54",
        "break-up",
    ),
    (
        "96 / 6",
        "60/6 36/6 15",
        [w("60 / 6 = 10", "result"), w("36 / 6 = 6", "result")],
        "15",
        "break-up",
    ),
]

FORMS = [
    ("3.8 + 0.45", "3.8+0.2=4+0.25=4.25", ["3.8 + 0.2 = 4", "4 + 0.25 = 4.25"], "4.25", "bridge"),
    ("3.8 + 0.45", "3,8+0,2=4+0,25=4,25", ["3.8 + 0.2 = 4", "4 + 0.25 = 4.25"], "4.25", "bridge"),
    (
        "3.8 + 0.45",
        "+0.2 4 +0.25",
        [w("3.8 + 0.2 = 4", "left"), w("4 + 0.25 = 4.25", "result")],
        None,
        "bridge",
    ),
    ("3/4 + 5/8", "11/8", [], "11/8", None),
    (
        "15% of 80",
        "10%=8 5%=4 8+4=12",
        [w("10% of 80 = 8", "op", "right"), w("5% of 80 = 4", "op", "right"), "8 + 4 = 12"],
        "12",
        None,
    ),
    ("2/3 of 57", "57/3=19x2=38", ["57 / 3 = 19", "19 x 2 = 38"], "38", None),
    ("3/4 ? 5/8", "3/4=6/8 >", ["3/4 = 6/8"], ">", "rename"),
    ("3/4 ? 5/8", "3/4=6/9 more", ["3/4 = 6/9"], ">", None),
    ("0.65 ? 0.7", "0.7>0.65", [], "<", None),
    ("0.65 ? 0.7", "0.7", [], "0.7", None),
    ("0.5 ? 1/2", "=", [], "=", None),
    ("0.5 ? 1/2", "0.5=1/2", ["0.5 = 1/2"], "=", None),
    (
        "29 + 14 = 30 + 13 ?",
        "29+1=30 14-1=13 true",
        ["29 + 1 = 30", "14 - 1 = 13"],
        "true",
        "give-and-take",
    ),
    ("8 + 4 = _ + 5", "8+4=12-5=7", ["8 + 4 = 12", "12 - 5 = 7"], "7", "rename"),
    ("about 398 x 21", "400x20=8000", ["400 x 20 = 8000"], "8000", "adjust"),
    ("image frame 10: 7", "10-3=7", ["10 - 3 = 7"], "7", "adjust"),
    ("5 - 8", "5-5=0-3=-3", ["5 - 5 = 0", "0 - 3 = -3"], "-3", "bridge"),
]


@pytest.mark.parametrize(("problem", "line", "steps", "answer", "family"), GROUPS)
def test_a_line_about_groups_is_heard_as_it_was_said(problem, line, steps, answer, family):
    assert heard(problem, line) == (steps, answer, family)


@pytest.mark.parametrize(("problem", "line", "steps", "answer", "family"), FORMS)
def test_numbers_are_heard_in_the_form_they_had(problem, line, steps, answer, family):
    found = heard(problem, line)
    assert found[:2] == (steps, answer)
    assert family is None or found[2] == family
