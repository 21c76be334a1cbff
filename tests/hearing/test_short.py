"""Ways with groups told in short: products of a factor's parts, homophones, halves of halves."""

import pytest

from tests.hearing.heard import heard, w
from waysaid.ways import Family

TOLD = [
    ("14 x 3", "I split the fourteen in ten and four so thirty and twelve forty two",
     ["14 = 10 + 4", w("10 x 3 = 30", "left", "op", "right"),
      w("4 x 3 = 12", "left", "op", "right"), "30 + 12 = 42"], "42", Family.BREAK_UP),
    ("43 x 2", "eighty and six", [w("80 + 6 = 86", "result")], None, Family.BREAK_UP),
    ("9 x 6", "sixty minus nine is fifty one", ["60 - 9 = 51"], "51", Family.NEAR_FACT),
    ("62 x 4", "sixty fours two forty and too fours eight two forty eight",
     ["60 x 4 = 240", "2 x 4 = 8", w("240 + 8 = 248", "left", "op", "right")], "248",
     Family.BREAK_UP),
    ("68 / 4", "forty is ten fours and twenty eight is six fours sixteen",
     ["10 x 4 = 40", "6 x 4 = 28", w("10 + 6 = 16", "left", "op", "right")], "16",
     Family.CHUNK_OUT),
    ("0.8 + 0.4", "eight and four is twelve tenths so one point two",
     ["8 + 4 = 12", "12/10 = 1.2"], "1.2", Family.RENAME),
    ("144 / 8", "seventy two, thirty six, eighteen, half half half",
     [w("144 / 2 = 72", "left", "op", "right"), w("72 / 2 = 36", "left", "op", "right"),
      w("36 / 2 = 18", "left", "op", "right")], "18", Family.FACTOR_STEPS),
    ("2/7 + 3/7", "two and three is five and seven and seven is fourteen so five fourteenths",
     ["2 + 3 = 5", "7 + 7 = 14"], "5/14", None),
    ("92 / 4", "a hundred divided by four is twenty five so two less twenty three",
     ["100 / 4 = 25", w("25 - 2 = 23", "left")], "23", Family.NEAR_FACT),
    ("36 + 27", "thirty twenty fifty, six seven thirteen, sixty three",
     [w("30 + 20 = 50", "op"), w("6 + 7 = 13", "op"), w("50 + 13 = 63", "left", "op", "right")],
     "63", Family.SPLIT),
    ("1.5 x 14", "fourteen and then half of fourteen is seven so twenty one",
     ["14 / 2 = 7", w("14 + 7 = 21", "left", "op", "right")], "21", Family.BREAK_UP),
]  # fmt: skip


@pytest.mark.parametrize(("problem", "line", "steps", "answer", "family"), TOLD)
def test_a_way_with_groups_told_in_short_is_heard(problem, line, steps, answer, family):
    assert heard(problem, line) == (steps, answer, family)
