"""What a link says, and the question that leads to it without saying it."""

import re

import pytest
from hypothesis import given

from tests.strings.strings_made import strings
from tests.strings.test_saying_algebra import EXAMPLES, link_of
from waysaid.number import Language, number_text, number_words, parse
from waysaid.strings import Link, LinkKind, Saying, link_question, link_says, links
from waysaid.strings.link_words import ASKED, ASKED_OF, SAID

NAMES = {
    Language.EN: (
        "pattern|same number|same total|one changes|both change|twin|inside|turned|opposite|"
        "undo|ten times|tens|double|half|halve|feeds"
    ),
    Language.ES: (
        "patrón|mismo número|mismo total|gemel|dentro|vuelta|contrari|deshac|decena|dobl|mitad|"
        "diez veces"
    ),
}


@pytest.mark.parametrize("language", Language)
def test_every_saying_and_every_kind_has_words(language):
    assert set(SAID) == set(Saying)
    assert set(ASKED) == set(LinkKind)
    assert all(words[language].strip() for words in [*SAID.values(), *ASKED.values()])


def test_both_languages_of_a_saying_use_the_same_numbers():
    for words in SAID.values():
        places = [sorted(set(re.findall(r"\{\d\}", words[language]))) for language in Language]
        assert places[0] == places[1]


@given(strings())
def test_a_link_is_said_in_one_line_with_its_own_numbers_only(string):
    for link in links(string, every=True):
        for language in Language:
            said = link_says(link, language)
            assert "{" not in said
            assert "\n" not in said
            assert set(re.findall(r"\d+", said)) <= {number_text(n) for n in link.numbers}


@given(strings())
def test_a_question_gives_no_number_away(string):
    for link in links(string, every=True):
        for language in Language:
            question = link_question(link, language)
            assert "?" in question
            assert not re.search(r"\d", question)


@pytest.mark.parametrize("language", Language)
@pytest.mark.parametrize("kind", LinkKind)
def test_a_question_does_not_name_what_is_to_be_found(kind, language):
    link = Link(kind, (0, 1), (), Saying.TURNED)
    assert not re.search(NAMES[language], link_question(link, language), re.IGNORECASE)


SAME_IN_ALL = {
    Language.EN: "same|equal|more than|less|up|down|grow|shrink|twice|third as|together|in both",
    Language.ES: "mism[oa]|igual|más de|menos|sub|baj|crec|dos veces|junt[oa]s|en los dos",
}
"""Words that would say what is found, besides the names of the kinds."""


@pytest.mark.parametrize("language", Language)
@pytest.mark.parametrize("saying", Saying)
def test_every_question_leads_to_its_link_without_saying_it(saying, language):
    link = link_of(saying, EXAMPLES[saying])
    question = link_question(link, language)
    words = set(re.findall(r"\w+", question.casefold()))
    assert "?" in question
    assert not re.search(r"[\d=+×÷−%]", question)
    assert not re.search(NAMES[language], question, re.IGNORECASE)
    assert not re.search(SAME_IN_ALL[language], question, re.IGNORECASE)
    told = {number_words(number, language) for number in link.numbers if number != 1}
    assert not told & words
    assert link_says(link, language) not in question


@pytest.mark.parametrize("language", Language)
def test_questions_of_one_kind_may_differ_where_its_links_are_seen_differently(language):
    together = link_of(Saying.TOGETHER, EXAMPLES[Saying.TOGETHER])
    inside = link_of(Saying.INSIDE, EXAMPLES[Saying.INSIDE])
    assert together.kind is inside.kind
    assert len({ASKED_OF[Saying.TOGETHER][language], ASKED[inside.kind][language]}) == 2
    assert link_question(together, language).startswith(
        ASKED_OF[Saying.TOGETHER][language].partition("{")[0]
    )


def test_a_question_says_which_problems_to_look_at():
    link = links([parse(one) for one in ("40 + 25", "37 + 25")])[0]
    assert "the first and second problems" in link_question(link, Language.EN)
    assert "los problemas primero y segundo" in link_question(link, Language.ES)


def test_a_very_long_string_is_asked_about_without_counting():
    link = links([parse(f"{n} + 5") for n in range(1, 12)])[0]
    assert "these problems" in link_question(link, Language.EN)


@pytest.mark.parametrize(
    ("first", "second", "english", "spanish"),
    [
        (
            "40 + 25",
            "37 + 25",
            "40 went down 3 to 37 and the rest stayed, so the answer went down 3 too.",
            "El 40 bajó 3 hasta 37 y lo demás no cambió, así que la respuesta también bajó 3.",
        ),
        (
            "52 - 20",
            "52 - 19",
            "We take 19 and not 20. That is 1 less taken away, so 1 more is left.",
            "Quitamos 19 y no 20. Quitamos 1 menos, así que la respuesta sube 1.",
        ),
        (
            "9 + _ = 13",
            "8 + _ = 13",
            "9 went down 1 to 8 and the rest stayed, so the missing number went up 1.",
            "El 9 bajó 1 hasta 8 y lo demás no cambió, así que el número que falta subió 1.",
        ),
        (
            "_ - 19 = 40",
            "_ - 20 = 40",
            "19 went up 1 to 20 and the rest stayed, so the missing number went up 1 too.",
            (
                "El 19 subió 1 hasta 20 y lo demás no cambió, así que el número que falta "
                "también subió 1."
            ),
        ),
        (
            "62 - 25",
            "67 - 30",
            "62 and 25 both went up 5, so they are still just as far apart.",
            "El 62 y el 25 subieron 5 los dos, así que siguen a la misma distancia.",
        ),
    ],
)
def test_links_read_as_a_child_might_say_them(first, second, english, spanish):
    link = links([parse(first), parse(second)])[0]
    assert link_says(link, Language.EN) == english
    assert link_says(link, Language.ES) == spanish
