"""Composing against a general solver: the same candidates and score, the same least."""

from random import Random

import pytest

from tests.counts import count
from tests.strings.solver import Model, solved
from tests.strings.test_compose import IN_GRADES
from waysaid.strings.best import Asked, best_string
from waysaid.strings.bounds import Frame
from waysaid.strings.pool import pool_of, problems_in
from waysaid.strings.wanting import EASY

MOST = max(40, count(test=40, sweep=200))
"""Candidates of a pool: the solver does not prove that of a whole grade in minutes."""


@pytest.mark.parametrize("seed", range(count(test=20, sweep=200)))
def test_the_solver_finds_no_string_that_leaves_less_wanting(seed):
    dice = Random(seed)
    grade, topic, family = dice.choice(IN_GRADES)
    problems = problems_in(grade, topic)
    many = dice.randint(20, MOST)
    start = dice.randrange(len(problems) - many + 1)
    pool = pool_of(problems[start : start + many], family)
    named = dice.sample(range(len(pool.candidates)), dice.randint(0, 2))
    frame = Frame(
        dice.randint(3, 6),
        EASY[grade],
        tuple(named[:1]),
        tuple((1, place) for place in named[1:]),
        dice.random() < 0.25,
    )
    free = [place for place in range(len(pool.candidates)) if place not in named]
    barred = frozenset(dice.sample(free, 3))
    best = best_string(pool, Asked(frame, barred, most_nodes=10**9), seed)
    least, proven = solved(Model(pool, frame, barred))
    assert best.proven
    assert proven
    assert (best.wanting if best.places else None) == least
