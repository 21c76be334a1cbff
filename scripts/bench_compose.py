"""Measure composing: how long a string takes, beside a general solver, and how it grows.

Run alone, or by `bench.py` as a part of it; prints one JSON object. Times are of the processor, one
core, in milliseconds unless a name says otherwise, so that other work on the machine does not
count. Pools and models are made beforehand, untimed for both; the bounds of a pool are in our time.
"""

import resource
import sys
import time
from collections.abc import Callable
from functools import partial
from pathlib import Path
from random import Random
from typing import Any, TypeVar

ROOT = Path(__file__).resolve().parents[1]
sys.path.insert(0, str(ROOT))

from scripts.bench_size import sized, tell  # noqa: E402
from scripts.bench_ways import ratio, spread  # noqa: E402
from tests.strings.solver import Model, solved  # noqa: E402
from tests.strings.test_compose import EVERY, GRADES  # noqa: E402
from waysaid.number import Operation, Sign  # noqa: E402
from waysaid.strings import Topic  # noqa: E402
from waysaid.strings.best import Asked, best_string, bounds_of  # noqa: E402
from waysaid.strings.bounds import Frame  # noqa: E402
from waysaid.strings.pool import Pool, pool, pool_of, problems_in  # noqa: E402
from waysaid.strings.wanting import EASY  # noqa: E402
from waysaid.ways import Family  # noqa: E402

WHOLE = sized(EVERY, [pair for pair in EVERY if pair[0] is Topic.IMAGES][:2])
"""What is composed from whole pools."""
BESIDE = sized(20, 2)
"""Wishes that are given to both."""
FEW = sized(120, 30)
"""Candidates of each of those: the solver does not prove a whole pool in minutes."""
PATIENCE_S = 120.0
_Found = TypeVar("_Found")
SIDES = sized((73, 231, 731), (10, 20))
"""Sums of two numbers up to each: some 2,700, ten and a hundred times as many."""


def whole_pools() -> dict[str, Any]:
    """Compose once for every topic and family, from the whole pool of a grade."""
    cold, best, nodes, unproven = [], [], [], []
    for topic, family in WHOLE:
        found, taken = _taken(partial(pool, GRADES[topic], topic, family))
        cold.append(taken)
        asked = Asked(Frame(5, EASY[GRADES[topic]]))
        bounds_of.cache_clear()
        seen, taken = _taken(partial(best_string, found, asked, 1))
        best.append(taken)
        nodes.append(float(seen.nodes))
        if not seen.proven:
            unproven.append(f"{topic} {family}")
    return {
        "pool_made_anew": spread(cold),
        "best_string": spread(best),
        "nodes": spread(nodes),
        "not_proven": unproven,
    }


def beside_a_solver() -> dict[str, Any]:
    """Give the same candidates and score to both; the least must be the same where both prove."""
    ours, solver, unlike, unproven = [], [], 0, 0
    for seed in range(BESIDE):
        few, frame = _wish(Random(seed))
        bounds_of.cache_clear()
        best, taken = _taken(partial(best_string, few, Asked(frame), 1))
        ours.append(taken)
        (least, proven), taken = _taken(partial(solved, Model(few, frame), PATIENCE_S))
        solver.append(taken)
        unproven += not proven
        unlike += proven and least != best.wanting
    mine, its = spread(ours), spread(solver)
    beside = {"best_string": mine, "solver": its, "times_as_fast": ratio(its, mine)}
    return {"candidates": FEW, **beside, "unlike": unlike, "solver_not_proven": unproven}


def _wish(dice: Random) -> tuple[Pool, Frame]:
    """Return a few problems that lie close to each other, and a frame for them."""
    topic, family = dice.choice(EVERY)
    problems = problems_in(GRADES[topic], topic)
    start = dice.randrange(max(1, len(problems) - FEW))
    return pool_of(problems[start : start + FEW], family), Frame(5, EASY[GRADES[topic]])


def _taken(work: Callable[[], _Found]) -> tuple[_Found, float]:
    """Return what a piece of work finds, and its milliseconds of the processor."""
    start = time.thread_time_ns()
    found = work()
    return found, (time.thread_time_ns() - start) / 1e6


def grown() -> list[dict[str, Any]]:
    """Compose from more and more sums, the same wish."""
    rows = []
    for side in SIDES:
        plus = Sign.PLUS
        problems = [Operation(plus, a, b) for a in range(1, side + 1) for b in range(1, a + 1)]
        found, made = _taken(partial(pool_of, problems, Family.GIVE_AND_TAKE))
        seen, search = _taken(partial(best_string, found, Asked(Frame(5, EASY[2])), 1))
        rows.append(
            {
                "candidates": len(found.candidates),
                "helps": sum(map(len, found.leads)),
                "pool_made_s": round(made / 1000, 1),
                "best_string": round(search, 1),
                "nodes": seen.nodes,
                "proven": seen.proven,
                "peak_mb": resource.getrusage(resource.RUSAGE_SELF).ru_maxrss // 1024,
            }
        )
    return rows


if __name__ == "__main__":
    tell(
        {
            "whole_pools": whole_pools(),
            "beside_a_solver": beside_a_solver(),
            "growth": grown(),
        }
    )
