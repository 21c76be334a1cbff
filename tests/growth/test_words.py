"""Words of growth: small numbers are said as small, nothing is a verdict."""

import re

import pytest

from waysaid.growth import (
    LATELY,
    Because,
    How,
    Need,
    Reason,
    Standing,
    caution,
    how_name,
    invite_says,
    need_says,
    reason_says,
    standing_name,
    standing_rule,
    times_said,
)
from waysaid.growth.picture import BY_ITSELF_CHILDREN, BY_ITSELF_TALKS, BY_ITSELF_UNPLANNED
from waysaid.number import Language


def test_the_rules_in_words_are_the_rules():
    assert (BY_ITSELF_CHILDREN, BY_ITSELF_TALKS, BY_ITSELF_UNPLANNED) == (3, 3, 2)
    by_itself = standing_rule(Standing.BY_ITSELF, Language.EN)
    assert re.findall("three|two", by_itself) == ["three", "three", "two"]
    assert LATELY == 20
    for standing in (Standing.NOT_LATELY, Standing.NOBODY):
        assert "last twenty talks" in standing_rule(standing, Language.EN)


def every_sentence(language):
    yield from (times_said(times, talks, language) for times in range(6) for talks in (1, 2))
    yield from (standing_name(one, language) for one in Standing)
    yield from (standing_rule(one, language) for one in Standing)
    yield from (how_name(one, language) for one in How)
    yield from (need_says(one, "bridge", language) for one in Need)
    yield from (reason_says(Reason(one, 4, 3), language) for one in Because)
    yield caution(language)
    yield invite_says(language)


def test_two_observations_are_two_times_so_far_and_nothing_more():
    assert times_said(2, 2, Language.EN) == "two times so far"
    assert times_said(2, 2, Language.ES) == "dos veces hasta ahora"


@pytest.mark.parametrize("language", Language)
def test_no_sentence_ranks_scores_or_foretells(language):
    barred = r"%|per ?cent|por ciento|best|worst|better|worse|behind|ahead|rank|score|level"
    barred += r"|mejor|peor|nivel|will\b|fail|weak|strong"
    said = list(every_sentence(language))
    assert len(set(said)) > 30
    assert [each for each in said if re.search(barred, each, re.IGNORECASE)] == []


def test_every_sentence_is_in_both_languages():
    english, spanish = (list(every_sentence(one)) for one in (Language.EN, Language.ES))
    assert [a for a, b in zip(english, spanish, strict=True) if a == b] == []
