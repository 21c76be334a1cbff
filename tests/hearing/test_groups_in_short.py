"""Groups told in short: taken so often, doubled on, a zero put on, put together, counted amiss."""

import pytest

from waysaid.hearing import read
from waysaid.number import Language, parse, text

EN = [
    ("15 x 4", "I added fifteen four times and got sixty", "15 x 4 = 60", "60"),
    ("30 x 4", "thirty four times is one twenty", "30 x 4 = 120", "120"),
    ("34 x 5", "thirty four times five is one seventy", "34 x 5 = 170", "170"),
    ("8 x 6", "double double double: 12 24 48", "6 x 2 = 12, 12 x 2 = 24, 24 x 2 = 48", "48"),
    (
        "200 / 8",
        "half it and half it and half it",
        "200 / 2 = 100, 100 / 2 = 50, 50 / 2 = 25",
        None,
    ),
    (
        "4 x 60",
        "four sixes are twenty four then stick the zero back on",
        "4 x 6 = 24, 24 x 10 = 240",
        None,
    ),
    (
        "30 x 40",
        "three fours is twelve and with the zero that's 120",
        "3 x 4 = 12, 12 x 10 = 120",
        "120",
    ),
    (
        "20 x 40",
        "two fours is eight and put on the two zeros 800",
        "2 x 4 = 8, 8 x 100 = 800",
        "800",
    ),
    (
        "6 x 15",
        "ten sixes is sixty half of that is thirty and then you add the two",
        "10 x 6 = 60, 60 / 2 = 30, 60 + 30 = 90",
        None,
    ),
    (
        "22 x 5",
        "twenty times five is a hundred and two times five is ten so it's a hundred and one",
        "20 x 5 = 100, 5 x 2 = 10, 100 + 10 = 101",
        "101",
    ),
    (
        "4 x 9",
        "nine, eighteen, twenty seven, thirty five",
        "9 + 9 = 18, 18 + 9 = 27, 27 + 9 = 35",
        "35",
    ),
    (
        "17 / 5",
        "three remainder two because three fives are fifteen",
        "3 x 5 = 15, 17 - 15 = 2",
        "3 r 2",
    ),
    ("25 / 4", "there's twenty five cookies everyone gets six and there's one left", "", "6 r 1"),
    ("72 / 8", "it's eight because eight times eight is seventy two", "8 x 8 = 72", "8"),
    (
        "96 / 8",
        "I shared out eighty first, that's ten each, then sixteen left, that's two each, so twelve",
        "80 / 8 = 10, 16 / 8 = 2, 10 + 2 = 12",
        "12",
    ),
    (
        "180 / 20",
        "take a zero off both and it's eighteen divided by two which is nine",
        "180 / 10 = 18, 18 / 2 = 9",
        "9",
    ),
]
ES = [
    ("20 x 3", "veinte tres veces son sesenta", "20 x 3 = 60", "60"),
    (
        "23 x 4",
        "veinte cuatro veces ochenta, tres cuatro veces doce, 92",
        "20 x 4 = 80, 3 x 4 = 12, 80 + 12 = 92",
        "92",
    ),
    (
        "40 x 50",
        "cuatro por cinco veinte y le agrego un cero, doscientos",
        "4 x 5 = 20, 20 x 10 = 200",
        "200",
    ),
    ("72 / 8", "es ocho porque ocho por ocho da setenta y dos", "8 x 8 = 72", "8"),
    (
        "150 / 25",
        "en cien caben cuatro y en cincuenta dos, van seis",
        "100 / 25 = 4, 50 / 25 = 2, 4 + 2 = 6",
        "6",
    ),
    (
        "42 / 3",
        "treinta son diez para cada uno y de los otros doce les tocan cuatro a cada uno, catorce",
        "30 / 3 = 10, 12 / 3 = 4, 10 + 4 = 14",
        "14",
    ),
    (
        "240 / 30",
        "les saco el cero a los dos y queda veinticuatro dividido tres",
        "24 / 3 = 8",
        None,
    ),
]
ES_PLAIN = [
    ("144 / 12", "doce, doce por doce es ciento cuarenta y cuatro", "12 x 12 = 144", "12"),
    ("140 / 20", "quito los ceros y catorce entre dos es siete", "14 / 2 = 7", "7"),
]
TOLD = [(Language.EN, *one) for one in EN] + [(Language.ES, *one) for one in ES + ES_PLAIN]


@pytest.mark.parametrize(("language", "problem", "said", "steps", "answer"), TOLD)
def test_groups_in_short_are_heard_as_they_were_told(language, problem, said, steps, answer):
    reading = read(parse(problem), said, language)
    assert ", ".join(text(told.step.equation) for told in reading.told) == steps
    assert reading.answer_text == answer


@pytest.mark.parametrize(
    ("problem", "said", "family"),
    [
        ("3 x 6", "six and six and six", "counting"),
        ("24 / 3", "24-3-3-3-3-3-3-3-3 = 0 so its 8", "chunk-out"),
        ("72 - 36", "half of seventy two is thirty six", "near-double"),
        ("180 / 20", "take a zero off both and do eighteen divided by two", "scale-both"),
        ("240 / 6", "twenty four divided by six is four so forty", "rename"),
        ("6 x 7", "I carry it, no I forgot it", None),
    ],
)
def test_the_way_is_named_by_what_was_done(problem, said, family):
    heard = read(parse(problem), said, Language.EN).family
    assert (heard and heard.value) == family
