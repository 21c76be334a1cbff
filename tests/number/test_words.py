"""Saying numbers and problems for a screen reader."""

import random
import re
from fractions import Fraction

import pytest
from hypothesis import given
from num2words import num2words

from tests.counts import count
from tests.number.problems import expressions
from waysaid.number import Language, number_words, parse, parse_equation, say

EN, ES = Language.EN, Language.ES


def _seeded(most):
    some = random.Random(37)
    return [some.randrange(1_000_001) for _ in range(most)]


def _oracle(number, language):
    """num2words, without the "and" and the commas that this tool leaves out.

    It differs in one more thing: it does not shorten uno before mil (veintiuno mil). The Spanish
    academy's grammar does (veintiún mil, treinta y un mil), and that is what is said here.
    """
    said = num2words(number, lang=language.value)
    if language is EN:
        return re.sub(r"\band |,", "", said)
    return said.replace("veintiuno mil", "veintiún mil").replace("uno mil", "un mil")


@pytest.mark.parametrize("language", Language)
def test_a_whole_number_is_said_as_num2words_says_it(language):
    tried = [*range(2_000), *_seeded(count(test=4_000, sweep=100_000)), 1_000_000]
    wrong = [n for n in tried if number_words(n, language) != _oracle(n, language)]
    assert wrong == []


@pytest.mark.parametrize("language", Language)
def test_no_two_numbers_are_said_alike(language):
    tried = [*range(30_000), 100_000, 101_000, 1_000_000]
    assert len({number_words(n, language) for n in tried}) == len(tried)


SAID = [
    ("37 + 25", "thirty-seven plus twenty-five", "treinta y siete más veinticinco"),
    (
        "7 + _ = 12",
        "seven plus blank equals twelve",
        "siete más espacio en blanco es igual a doce",
    ),
    ("62 - 25", "sixty-two minus twenty-five", "sesenta y dos menos veinticinco"),
    ("3 - (-5)", "three minus negative five", "tres menos menos cinco"),
    ("84 / 4", "eighty-four divided by four", "ochenta y cuatro dividido entre cuatro"),
    ("14 x 6", "fourteen times six", "catorce por seis"),
    (
        "10 - (3 + 2)",
        "ten minus open bracket three plus two close bracket",
        "diez menos abre paréntesis tres más dos cierra paréntesis",
    ),
    ("1/2 + 3/4", "one half plus three quarters", "un medio más tres cuartos"),
    (
        "1 1/4 + 2/3",
        "one and one quarter plus two thirds",
        "uno y un cuarto más dos tercios",
    ),
    ("5/2 - 3/2", "five halves minus three halves", "cinco medios menos tres medios"),
    ("21/100 + 0", "twenty-one hundredths plus zero", "veintiún centésimos más cero"),
    (
        "31/37 + 0",
        "thirty-one over thirty-seven plus zero",
        "treinta y uno sobre treinta y siete más cero",
    ),
]


@pytest.mark.parametrize(("problem", "english", "spanish"), SAID)
def test_a_problem_is_said_in_words(problem, english, spanish):
    assert say(parse(problem), EN) == english
    assert say(parse(problem), ES) == spanish


@pytest.mark.parametrize(
    ("number", "said"),
    [
        (16, "dieciséis"),
        (21, "veintiuno"),
        (22, "veintidós"),
        (23, "veintitrés"),
        (26, "veintiséis"),
        (31, "treinta y uno"),
        (100, "cien"),
        (101, "ciento uno"),
        (555, "quinientos cincuenta y cinco"),
        (1000, "mil"),
        (1001, "mil uno"),
        (21_000, "veintiún mil"),
        (21_021, "veintiún mil veintiuno"),
        (31_000, "treinta y un mil"),
        (101_000, "ciento un mil"),
        (100_000, "cien mil"),
        (1_000_000, "un millón"),
        (21_000_000, "veintiún millones"),
    ],
)
def test_spanish_keeps_its_accents_and_shortens_one(number, said):
    assert number_words(number, ES) == said


@pytest.mark.parametrize("language", Language)
def test_a_number_without_a_word_keeps_its_digits(language):
    assert number_words(10**12, language) == "1000000000000"
    assert number_words(Fraction(1, 10**12), language) == "1/1000000000000"


def test_an_equation_that_is_false_is_said_as_it_stands():
    assert say(parse_equation("7 + 5 = 11"), EN) == "seven plus five equals eleven"


@given(expressions())
def test_anything_can_be_said_without_digits(expression):
    for language in Language:
        said = say(expression, language)
        assert said == " ".join(said.split())
        assert not re.search(r"[0-9_+/]", said)


@given(expressions(), expressions())
def test_two_expressions_that_differ_are_said_apart(one, other):
    assert (say(one, EN) == say(other, EN)) is (one == other)
