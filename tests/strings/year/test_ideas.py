"""The table of ideas: whole, in order, each with something to draw on."""

import pytest

from waysaid.number import Language, Order, answer_of
from waysaid.strings import Curriculum, idea_name
from waysaid.strings.look import look
from waysaid.strings.topic import HOMES
from waysaid.strings.topic import Topic as Kind
from waysaid.strings.year.composed import candidates
from waysaid.strings.year.given import Source, in_grade
from waysaid.strings.year.numbers import BEGUN, OWN
from waysaid.strings.year.stock import MOST, stocked
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


def test_each_idea_can_be_composed():
    kinds = {kind.value for kind in Kind}
    for idea in EVERY:
        composed = idea.topic in kinds and idea.family in HOMES[Kind(idea.topic)]
        assert composed or idea.slug in OWN, idea.slug
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


def test_each_idea_has_a_name_of_its_own_in_both_languages():
    assert idea_name(ideas()["near-doubles-to-20"], Language.EN) == "near double: sums to 20"
    assert idea_name(ideas()["see-pairs"], Language.ES) == "separar: puntos en parejas"
    for language in Language:
        assert len({idea_name(idea, language) for idea in EVERY}) == len(EVERY)


@pytest.mark.parametrize("slug", sorted(BEGUN))
def test_a_string_is_composed_around_a_beginning_of_its_idea(slug):
    idea = ideas()[slug]
    strings = [one for number in range(MOST) if (one := stocked(idea, number))]
    assert len(strings) == MOST
    assert all(one.source is Source.COMPOSED and one.best for one in strings)
    begun = [one.problems[:2] for one in strings]
    assert len(set(begun)) == len(begun)
    assert set(begun) <= set(BEGUN[slug])
    others = {problem for pair in BEGUN[slug] for problem in pair}
    assert all(others.isdisjoint(one.problems[2:]) for one in strings)


def test_a_half_is_once_the_larger_and_once_the_smaller_and_no_side_is_always_larger():
    idea = ideas()["more-or-less-than-half"]
    ended = set()
    for number in range(MOST):
        larger = [answer_of(problem) for problem in stocked(idea, number).problems]
        assert {*larger[:2]} == {Order.MORE, Order.LESS}
        ended.update(larger[2:])
    assert ended == {Order.MORE, Order.LESS}
