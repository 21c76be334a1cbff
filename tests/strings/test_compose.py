"""Composing: the string found is the best of its candidates, and is what was wished for."""

from itertools import permutations
from random import Random

import pytest

from tests.counts import count
from waysaid.number import Language, parse
from waysaid.strings import Plain, Wish, WishError, compose, links, plain_of
from waysaid.strings.best import Asked, best_string
from waysaid.strings.pool import SIGNS, plains_of, pool, pool_of
from waysaid.strings.wanting import of_string
from waysaid.ways import Family, grades_of

FEW = 8
"""The candidates of a pool small enough that every string of it can be weighed."""
WISHES = [
    Wish(2, Family.GIVE_AND_TAKE),
    Wish(2, Family.SHIFT_BOTH, length=4),
    Wish(3, Family.NEAR_FACT, length=6),
    Wish(4, Family.DOUBLE_HALVE, length=3),
    Wish(5, Family.SCALE_BOTH, length=7),
    Wish(1, Family.BRIDGE),
]


def plain(given: str) -> Plain:
    """Read a plain problem."""
    read = plain_of(parse(given))
    assert read is not None
    return read


@pytest.mark.parametrize("seed", range(count(test=20, sweep=400)))
def test_no_string_of_a_small_pool_leaves_less_wanting(seed):
    dice = Random(seed)
    family = dice.choice((Family.GIVE_AND_TAKE, Family.SHIFT_BOTH, Family.DOUBLE_HALVE))
    plains = plains_of(4 if family is Family.DOUBLE_HALVE else 2, family)
    start = dice.randrange(len(plains) - 40)
    small = pool_of(tuple(dice.sample(plains[start : start + 40], FEW)), family)
    musts = tuple(dice.sample(range(FEW), dice.randint(0, 2)))
    length, easy = dice.choice((3, 4)), dice.randint(5, 25)
    best = best_string(small, Asked(length, easy, musts), seed)
    every = (one for one in permutations(range(FEW), length) if set(musts) <= set(one))
    assert best.proven
    assert best.wanting == min(of_string(small, one, easy) for one in every)
    assert best.wanting == of_string(small, best.places, easy)
    assert set(musts) <= set(best.places)


@pytest.mark.parametrize("wish", WISHES, ids=lambda wish: f"{wish.grade}-{wish.focus}")
def test_a_composed_string_is_what_was_wished_for(wish):
    composed = compose(wish)
    assert composed.best_possible
    assert len(set(composed.problems)) == len(composed.why) == wish.length
    for problem in composed.problems:
        grades = grades_of(problem)
        assert grades.first <= wish.grade <= grades.last
        made = plain_of(problem)
        assert made is not None
        assert made.sign is SIGNS[wish.focus]
    assert compose(wish) == composed


@pytest.mark.parametrize("family", [Family.GIVE_AND_TAKE, Family.SHIFT_BOTH])
def test_from_grade_2_on_a_string_is_chosen_from_2000_problems(family):
    assert len(pool(2, family).candidates) >= 2000


@pytest.mark.parametrize(
    ("grade", "family"),
    [(wish.grade, wish.focus) for wish in WISHES] + [(4, Family.CHUNK_OUT), (2, Family.SPLIT)],
)
def test_every_help_is_a_link(grade, family):
    found, dice = pool(grade, family), Random(7)
    for _ in range(count(test=60, sweep=1000)):
        before = dice.randrange(len(found.candidates))
        for after, help_ in dice.sample(found.helps[before], min(1, len(found.helps[before]))):
            pair = [found.candidates[place].plain.problem for place in (before, after)]
            assert help_.kind in {link.kind for link in links(pair, every=True)}, pair


def test_what_must_be_in_is_in_and_what_was_used_lately_is_not():
    must, other = plain("37 + 25"), compose(Wish(2, Family.GIVE_AND_TAKE)).problems
    lately = frozenset(plain_of(one) for one in other)
    composed = compose(Wish(2, Family.GIVE_AND_TAKE, musts=(must,), lately=lately))
    assert must.problem in composed.problems
    assert not set(other) & set(composed.problems)
    assert composed.best_possible


def test_without_enough_nodes_nothing_is_called_the_best():
    assert not compose(Wish(2, Family.GIVE_AND_TAKE), most_nodes=20).best_possible


def test_each_reason_refers_to_the_problem_before():
    for language, word in ((Language.EN, "problem"), (Language.ES, "problema")):
        why = compose(Wish(2, Family.GIVE_AND_TAKE, language=language)).why
        for number, reason in enumerate(why[1:], start=1):
            assert f"{word} {number}" in reason


def test_in_a_reason_a_problem_inside_another_has_its_own_number():
    composed = compose(Wish(2, Family.SPLIT))
    hiding = [(at, one) for at, one in enumerate(composed.why) if "hiding" in one]
    assert hiding
    for at, reason in hiding:
        assert f"Problem {at} is hiding inside problem {at + 1}" in reason


@pytest.mark.parametrize(
    ("wish", "said"),
    [
        (Wish(9, Family.BRIDGE), "Grade 9"),
        (Wish(2, Family.BRIDGE, length=9), "from 3 to 7"),
        (Wish(2, Family.PARTNERS), "‘partners’"),
        (Wish(1, Family.DOUBLE_HALVE), "another family"),
        (Wish(2, Family.BRIDGE, musts=(plain("62 - 25"),)), "leave out 62 − 25"),
        (Wish(0, Family.BRIDGE, musts=(plain("62 + 25"),)), "belongs to grades 2 to 4"),
        (
            Wish(2, Family.BRIDGE, musts=(plain("62 + 25"),), lately=frozenset({plain("62 + 25")})),
            "used lately",
        ),
        (
            Wish(2, Family.BRIDGE, musts=tuple(plain(f"{n} + 2") for n in range(40, 44))),
            "at most 3",
        ),
        (Wish(0, Family.BRIDGE, language=Language.ES), "En el grado 0"),
    ],
)
def test_wishes_that_clash_are_one_sentence(wish, said):
    with pytest.raises(WishError) as error:
        compose(wish)
    assert said in str(error.value)
    assert str(error.value).count(". ") == 0
