"""The table of ideas: whole, in order, each with something to draw on."""

import pytest

from waysaid.number import Language
from waysaid.strings import Curriculum, idea_name, starters
from waysaid.strings.look import look
from waysaid.strings.topic import HOMES
from waysaid.strings.topic import Topic as Kind
from waysaid.strings.year.changed import seeds
from waysaid.strings.year.composed import candidates
from waysaid.strings.year.given import in_grade
from waysaid.strings.year.numbers import OWN
from waysaid.strings.year.stock import stocked
from waysaid.strings.year.table import ideas, ideas_asked

pytestmark = pytest.mark.slow

EVERY = list(ideas().values())


def test_each_idea_comes_behind_what_it_needs_in_either_curriculum():
    seen = set()
    for idea in EVERY:
        assert set(idea.needs) <= seen, idea.slug
        for curriculum in Curriculum:
            grade = idea.standard(curriculum).grade
            assert all(ideas()[need].standard(curriculum).grade <= grade for need in idea.needs)
        seen.add(idea.slug)


@pytest.mark.parametrize("curriculum", Curriculum)
def test_each_idea_is_asked_for_in_one_grade(curriculum):
    asked = [idea for grade in range(7) for idea in ideas_asked(grade, curriculum)]
    assert sorted(one.slug for one in asked) == sorted(ideas())


def test_each_idea_has_seeds_or_can_be_composed():
    kinds = {kind.value for kind in Kind}
    for idea in EVERY:
        composed = idea.topic in kinds and idea.family in HOMES[Kind(idea.topic)]
        assert composed or idea.slug in seeds() or idea.slug in OWN, idea.slug
    assert not set(OWN) & set(seeds())
    assert set(OWN) <= set(ideas())


@pytest.mark.parametrize("slug", sorted(OWN))
def test_the_problems_of_an_idea_are_its_own(slug):
    idea = ideas()[slug]
    kept = candidates(idea)
    assert len(kept) >= 9
    ways_in_focus = [idea.family in look(problem).families for problem in kept]
    assert 3 * sum(ways_in_focus) >= len(kept)
    for grade in {idea.ccss.grade, min(6, idea.ccss.grade + 1)}:
        first = stocked(idea, 0)
        assert first is not None
        assert in_grade(first.problems, idea, grade, Curriculum.CCSS)
        assert set(first.problems) <= set(kept)
        assert any(idea.family in look(problem).families for problem in first.problems[1:])


def test_each_seed_is_of_an_idea_and_each_starter_is_known():
    slugs = {one.slug for one in starters()}
    assert set(seeds()) <= set(ideas())
    assert {one.starter for row in seeds().values() for one in row.strings} - {""} <= slugs


def test_each_idea_has_a_name_of_its_own_in_both_languages():
    assert idea_name(ideas()["near-doubles-to-20"], Language.EN) == "near double: sums to 20"
    assert idea_name(ideas()["see-pairs"], Language.ES) == "separar: puntos en parejas"
    for language in Language:
        assert len({idea_name(idea, language) for idea in EVERY}) == len(EVERY)


@pytest.mark.parametrize("slug", sorted(seeds()))
def test_strings_from_seeds_stay_with_the_idea(slug):
    idea = ideas()[slug]
    first = stocked(idea, 0)
    assert first is not None
    assert first.problems[-1] in {one.problems[-1] for one in seeds()[slug].strings}
