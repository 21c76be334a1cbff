"""A string under the teacher's hand: what it costs, and the rest composed around what she keeps."""

from random import Random

import pytest

from tests.counts import count
from waysaid.number import Language, parse
from waysaid.strings import (
    Row,
    Topic,
    Wish,
    compose,
    cost,
    recompose,
    row_name,
    topic_name,
    weigh,
    why_now,
)
from waysaid.strings.edit import MOST_NODES_OF_A_TAP
from waysaid.ways import Family

WISHES = [Wish(2, Family.GIVE_AND_TAKE), Wish(4, Family.BREAK_UP), Wish(6, Family.BENCHMARK)]


@pytest.mark.parametrize("wish", WISHES, ids=lambda wish: wish.focus)
def test_a_composed_string_weighs_what_it_says(wish):
    composed = compose(wish)
    assert weigh(wish, composed.problems) == dict(composed.rows)


@pytest.mark.parametrize("seed", range(count(test=4, sweep=60)))
def test_what_is_kept_stays_and_the_rest_is_no_worse_than_it_was(seed):
    dice = Random(seed)
    wish = dice.choice(WISHES)
    composed = compose(wish)
    problems = list(composed.problems)
    places = dice.sample(range(len(problems)), 2)
    problems[places[0]] = dice.choice(compose(Wish(wish.grade, wish.focus, seed=9)).problems)
    if len(set(problems)) < len(problems):
        return
    found = recompose(wish, tuple(problems), frozenset(places))
    assert [found.problems[at] for at in places] == [problems[at] for at in places]
    assert len(set(found.problems)) == len(problems)
    if found.best_possible:
        assert cost(wish, tuple(problems), found.problems).wanting <= 0


def test_with_nothing_kept_it_is_composed_anew():
    wish = WISHES[0]
    again = recompose(wish, compose(wish).problems, frozenset(), most_nodes=200_000)
    assert again.wanting == compose(wish).wanting


def test_a_problem_of_her_own_may_be_kept():
    own = (parse("60 + 19"), parse("61 + 18"), parse("400 + 7"))
    found = recompose(WISHES[0], own, frozenset({2}))
    assert found.problems[2] == parse("400 + 7")
    assert found.nodes <= MOST_NODES_OF_A_TAP + 1


def test_the_cost_of_a_change_is_the_difference_by_row():
    wish, problems = WISHES[0], compose(WISHES[0]).problems
    worse = (*problems[:-1], parse("21 + 64"))
    there, back = cost(wish, problems, worse), cost(wish, worse, problems)
    assert there.wanting == -back.wanting == sum(more for _, more in there.rows) > 0
    assert cost(wish, problems, problems).rows == ()


@pytest.mark.parametrize("wish", WISHES, ids=lambda wish: wish.focus)
def test_why_now_says_what_composing_said(wish):
    composed = compose(wish, MOST_NODES_OF_A_TAP)
    assert why_now(wish, composed.problems) == composed.why
    assert why_now(wish, ()) == ()


@pytest.mark.parametrize("language", Language)
def test_every_topic_and_row_has_a_name_of_its_own(language):
    for names in (
        [topic_name(topic, language) for topic in Topic],
        [row_name(row, language) for row in Row],
    ):
        assert all(names)
        assert len(set(names)) == len(names)
