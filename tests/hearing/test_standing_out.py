"""Numbers that stand out are the answer; what one would only go on with is none."""

import pytest

from waysaid.hearing import read
from waysaid.number import Language, parse
from waysaid.ways import Family

ENGLISH = [
    ("38 + 24", "sixty two, forty and twenty two", "62"),
    ("38 + 24", "um sixty two. you do thirty and twenty and then the little ones", "62"),
    ("96 / 4", "twenty four, you share the eighty and then the sixteen", "24"),
    ("8 x 7", "fifty six. my brother taught me", "56"),
    ("1/4 + 1/3", "it's two sevenths, just add everything", "2/7"),
    ("39 + 25", "forty plus twenty four, sixty four, I only moved one over", "64"),
    ("45 + 28", "forty five plus thirty is seventy five, so minus two, seventy three", "73"),
    ("62 - 38", "sixty two minus forty is twenty two then the two", None),
    ("6 + 7", "six and six is twelve and there's one extra", None),
    ("9 + 8", "eight and eight is sixteen so it's one more", None),
    ("16 x 4", "sixteen and sixteen is thirty two and thirty two and thirty two is um", None),
    ("3/4 + 1/8", "um, no, nothing", None),
    ("144 / 24", "halve them both so seventy two over twelve", None),
    ("30 x 7", "three sevens is twenty one so it's too hundred and ten", "210"),
    ("50 x 4", "five fours is twenty so to hundred", "200"),
    ("9 x 8", "ate nines so seventy too", "72"),
    ("25 + 38", "twenty five and forty is sixty five take to away so sixty three", "63"),
    (
        "2.9 + 3.4",
        (
            "three plus three point four is six point four, and "
            "you put the point one back, so six point five"
        ),
        "6.5",
    ),
    (
        "47 + 38",
        "fifty and thirty five is eighty five because I gave three to the forty seven",
        "85",
    ),
    ("72 / 9", "I thought seven but really it's eight because eight nines is seventy two", "8"),
    ("63 - 29", "thirty, then thirty three, then thirty four, because I took thirty off", "34"),
    ("81 - 47", "take one off both so eighty minus forty six and that's thirty five", "35"),
    ("18 x 5", "ten eighteens is one eighty and then halve it, eighty", "80"),
    ("47 / 6", "seven sixes is forty two and there's five left", "7 r 5"),
    (
        "about 498 + 307",
        "five hundred and three hundred, that'd be like seven hundred, no, eight hundred",
        "800",
    ),
    ("20% of 45", "ten percent is four point five so double it, nine", "9"),
    ("0.5 x 18", "that's a half of it, nine", "9"),
    ("53 - 19", "fifty three minus twenty is thirty three", None),
    ("53 - 19", "it's not thirty four, it's thirty two", "32"),
    ("53 - 19", "thirty four, no, thirty two", "32"),
    ("53 - 19", "Mia said thirty four, I got thirty three", "33"),
    ("53 - 19", "I agree with thirty four", None),
    ("45 / 5", "nine, or eight, I lost count", None),
]

SPANISH = [
    ("38 + 24", "sesenta y dos, cuarenta y luego veintidós", "62"),
    ("502 - 497", "cinco, están muy cerca, subo tres y luego dos", "5"),
    ("8 x 7", "cincuenta y seis, me lo enseñó mi hermana", "56"),
    ("7 x 6", "cuarenta y dos, siempre se me queda ésa", "42"),
    ("1/4 + 1/3", "son dos séptimos, nomás sumas todo", "2/7"),
    ("39 + 25", "cuarenta más veinticuatro, sesenta y cuatro, es que pasé uno", "64"),
    ("62 - 38", "sesenta y dos menos cuarenta veintidós y luego los dos", None),
    ("47 + 9", "cuarenta y siete más diez cincuenta y siete y le quito uno", None),
    ("6 + 7", "seis y seis son doce y sobra uno", None),
    ("9 + 8", "ocho y ocho son dieciséis, entonces es uno más", None),
    (
        "16 x 4",
        "dieciséis más dieciséis treinta y dos, y treinta y dos más treinta y dos es eh",
        None,
    ),
    ("25 + 38", "eh no, nada", None),
    ("144 / 24", "los parto los dos a la mitad y queda setenta y dos entre doce", None),
    (
        "2.9 + 3.4",
        (
            "tres más tres coma cuatro son seis coma cuatro, "
            "y le pones el coma uno, entonces seis coma cinco"
        ),
        "6.5",
    ),
    (
        "47 + 38",
        "cincuenta y treinta y cinco son ochenta y cinco porque le di tres al cuarenta y siete",
        "85",
    ),
    (
        "46 + 32",
        "setenta, luego setenta y seis, luego setenta y ocho, porque primero junté las decenas",
        "78",
    ),
    (
        "81 - 47",
        "les quito uno a los dos, ochenta menos cuarenta y seis y eso es treinta y cinco",
        "35",
    ),
    ("18 x 5", "dieciocho por diez ciento ochenta y luego la mitad, ochenta", "80"),
    ("47 / 6", "siete por seis cuarenta y dos y sobran cinco", "7 r 5"),
    ("about 498 + 307", "quinientos más trescientos, como setecientos, no, ochocientos", "800"),
    ("0.5 x 18", "es la mitad, nueve", "9"),
]


@pytest.mark.parametrize(("problem", "line", "answer"), ENGLISH)
def test_answer_in_english(problem: str, line: str, answer: str | None) -> None:
    assert read(parse(problem), line).answer_text == answer


@pytest.mark.parametrize(("problem", "line", "answer"), SPANISH)
def test_answer_in_spanish(problem: str, line: str, answer: str | None) -> None:
    assert read(parse(problem), line, Language.ES).answer_text == answer


KNOWN = [
    ("5 + 5", "pues diez, eso lo sabe todo el mundo", Language.ES),
    ("7 x 6", "cuarenta y dos, me lo enseñó mi abuela", Language.ES),
    ("6 + 6", "doce, todos lo saben", Language.ES),
    ("7 x 8", "fifty six, we did that one last week", Language.EN),
    ("7 + 7", "fourteen, my brother taught me", Language.EN),
]


@pytest.mark.parametrize(("problem", "line", "language"), KNOWN)
def test_where_a_fact_was_learnt_tells_that_it_is_known(
    problem: str, line: str, language: Language
) -> None:
    assert read(parse(problem), line, language).family is Family.KNOWN_FACT


def test_what_was_taught_before_the_work_is_no_known_fact() -> None:
    line = "my teacher taught me to do thirty and twenty is fifty and eight and four is twelve"
    assert read(parse("38 + 24"), line).family is Family.SPLIT


@pytest.mark.parametrize(
    ("problem", "said", "language"),
    [
        ("50 / 10", "tres por diez es treinta, a cincuenta le quité treinta son veinte", "es"),
        ("60 / 8", "hice seis por ocho son cuarenta y ocho, a sesenta le quito 48 son doce", "es"),
        ("20 / 2", "eight times two that's sixteen, twenty minus sixteen makes four", "en"),
    ],
)
def test_what_is_still_to_share_is_no_answer_where_it_ends_the_line(problem, said, language):
    assert read(parse(problem), said, Language(language)).answer is None
