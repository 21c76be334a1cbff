"""Days and numbers as a language writes them."""

from datetime import date

import pytest
from django.utils import timezone, translation

from waysaid.site.templatetags.pages import day, number, problem


@pytest.mark.parametrize(
    ("language", "said"),
    [("en", "Wednesday 25 November 2015"), ("es", "miércoles 25 de noviembre de 2015")],
)
def test_a_day_of_another_year_has_its_year(language, said):
    assert day(date(2015, 11, 25), language) == said


def test_a_day_of_this_year_has_none():
    assert str(timezone.localdate().year) not in day(timezone.localdate(), "en")


def test_no_day_is_nothing():
    assert day(None) == ""


@pytest.mark.parametrize(("language", "said"), [("en", "12,345"), ("es", "12.345")])
def test_a_count_is_grouped_as_the_language_does(language, said):
    with translation.override(language):
        assert number(12345) == said


@pytest.mark.parametrize(
    ("kept", "shown"), [("62 - 25", "62 − 25"), ("7 + _ = 12", "7 + ▢ = 12"), ("no", "no")]
)
def test_a_problem_is_shown_with_true_signs(kept, shown):
    assert problem(kept) == shown
