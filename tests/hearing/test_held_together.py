"""Numbers held together: sides and their worths, one kept whole, a result before what made it."""

import pytest

from waysaid.hearing import read
from waysaid.hearing.turned import turned
from waysaid.number import Language, Order, parse, parse_equation
from waysaid.ways import Family

_STEPS = [
    ("6 x 9 ? 7 x 8", "fifty four and fifty six so the second one",
     ["6 x 9 = 54", "7 x 8 = 56"], "<"),
    ("37 + 25 ? 38 + 23", "la izquierda es sesenta y dos y la derecha sesenta y uno, la izquierda",
     ["37 + 25 = 62", "38 + 23 = 61"], ">"),
    ("45 + 20 ? 40 + 25", "they're both sixty five", ["45 + 20 = 65", "40 + 25 = 65"], "="),
    ("45 + 20 ? 40 + 25", "los dos dan sesenta y cinco", ["45 + 20 = 65", "40 + 25 = 65"], "="),
    ("1.5 x 6", "six and half of six, nine", ["6 / 2 = 3", "6 + 3 = 9"], "9"),
    ("1 1/2 x 8", "ocho y la mitad de ocho, doce", ["8 / 2 = 4", "8 + 4 = 12"], "12"),
    ("150% of 40", "all of forty and then half of it which is twenty",
     ["40 / 2 = 20", "40 + 20 = 60"], None),
    ("150% of 40", "cuarenta y la mitad que es veinte", ["40 / 2 = 20", "40 + 20 = 60"], None),
    ("15% of 80", (
        "ten percent is eight, five percent is half of it, four, put them together, twelve"),
     ["8 / 2 = 4", "8 + 4 = 12"], "12"),
    ("15% of 80", "ten percent is eight and then five percent, only half as much, four",
     ["8 / 2 = 4"], None),
    ("15% of 80", "el diez por ciento es ocho y luego el cinco por ciento, la mitad, cuatro",
     ["8 / 2 = 4"], None),
    ("2 - 3/4", "two minus three quarters, six eighths, so one and a quarter",
     ["3/4 = 6/8", "2 - 3/4 = 1 1/4"], "1 1/4"),
    ("1 - 3/8", "three eighths to a half is one eighth and then a half so five eighths",
     ["3/8 + 1/8 = 1/2", "1/2 + 1/2 = 1"], "5/8"),
    ("7/8 ? 4/5", (
        "the first one is missing an eighth and the other one's missing a fifth so the first one"),
     ["1 - 7/8 = 1/8", "1 - 4/5 = 1/5"], ">"),
    ("1/3 + 1/3", "two sixths, one and one is two and three and three is six",
     ["1 + 1 = 2", "3 + 3 = 6"], "2/6"),
    ("3.8 + 2.6", "five point fourteen, I did three plus two and then eight plus six",
     ["3 + 2 = 5", "8 + 6 = 14"], "5.14"),
    ("59 + 34", "sixty plus thirty four ninety four plus one ninety five",
     ["60 + 34 = 94", "94 + 1 = 95"], "95"),
    ("64 - 28", "sixty take away twenty is forty and eight take away four is four so forty four",
     ["60 - 20 = 40", "8 - 4 = 4", "40 + 4 = 44"], "44"),
    ("53 - 27", "cincuenta menos veinte treinta y siete menos tres cuatro treinta y cuatro",
     ["50 - 20 = 30", "7 - 3 = 4", "30 + 4 = 34"], "34"),
]  # fmt: skip


@pytest.mark.parametrize(("problem", "line", "steps", "answer"), _STEPS)
def test_what_was_held_together_is_heard(problem, line, steps, answer):
    language = Language.ES if {"la", "los", "y"} & {*line.split()} else Language.EN
    reading = read(parse(problem), line, language)
    found = [turned(told.step.equation) for told in reading.told]
    assert [one for one in steps if turned(parse_equation(one)) not in found] == []
    assert reading.answer_text == answer


_VERDICTS = [
    ("4/5 ? 7/10", "four fifths is eight tenths and the other one is only seven so it's bigger",
     Order.MORE),
    ("4/5 ? 7/10",
     "cuatro quintos son ocho décimos y el otro nada más siete así que es más grande", Order.MORE),
    ("2/3 ? 3/5", "two thirds is ten fifteenths and the other is nine fifteenths so it's more",
     Order.MORE),
    ("0.7 ? 0.65", "point seven is seven and the other one is sixty five so it's bigger",
     Order.LESS),
    ("4/6 ? 2/3", "half of four is two and half of six is three so two thirds, they're the same",
     Order.SAME),
    ("4/6 ? 2/3", "le saco la mitad arriba y abajo y me quedan dos tercios, son iguales",
     Order.SAME),
    ("3/5 ? 3/4", "same tops so three quarters", Order.LESS),
    ("0.7 ? 0.65", "it's smaller, the right one", Order.MORE),
    ("0.7 ? 0.65", "the right, it's bigger", Order.LESS),
    ("0.7 ? 0.65", "es más chico, el segundo", Order.MORE),
]  # fmt: skip


@pytest.mark.parametrize(("problem", "line", "order"), _VERDICTS)
def test_no_verdict_is_turned_round(problem, line, order):
    language = Language.ES if {"el", "le", "y"} & {*line.split()} else Language.EN
    assert read(parse(problem), line, language).answer is order


_FAMILIES = [
    ("1 - 3/8", "three eighths to a half is one eighth and then a half so five eighths",
     Family.ADD_UP),
    ("63 - _ = 28", "sixty three minus thirty five is twenty eight", Family.KNOWN_FACT),
    ("8 + 4 = 12 + 5 ?", "it's true because eight plus four is twelve", None),
    ("about 7/8 + 12/13", "each of those is almost one so almost two", Family.BENCHMARK),
]  # fmt: skip


@pytest.mark.parametrize(("problem", "line", "family"), _FAMILIES)
def test_the_way_is_told(problem, line, family):
    assert read(parse(problem), line, Language.EN).family is family
