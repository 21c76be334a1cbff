"""Measure ways, slips and effort over problems of every kind; print one JSON object.

Run alone, or by `bench.py` as a part of it. Times are of the processor, in milliseconds unless a
name says otherwise, so that other work on the machine does not count; `wall_s` is by the clock.
"""

import gc
import random
import re
import resource
import statistics
import sys
import time
from collections.abc import Callable, Sequence
from concurrent.futures import ProcessPoolExecutor
from functools import partial
from multiprocessing import get_context
from pathlib import Path
from typing import Any

ROOT = Path(__file__).resolve().parents[1]
sys.path.insert(0, str(ROOT))

import sympy  # noqa: E402

from scripts.bench_size import sized, tell  # noqa: E402
from tests.ways.every_kind import KINDS, asked_of_every_kind  # noqa: E402
from waysaid.number import parse  # noqa: E402
from waysaid.slips import foresee, slips  # noqa: E402
from waysaid.ways import effort_of, ways  # noqa: E402

PROBLEMS = sized(5000, 64)
SIZES = sized((25_000, 50_000, 100_000), (64, 128))
CORES = 2
CHUNK = sized(500, 32)
NOT_READ = frozenset({"both sides", "claims", "quick images", "comparisons", "estimates"})
"""Kinds that SymPy's reader has no sentence for."""


def spread(seen: Sequence[float]) -> dict[str, float]:
    """Return the middle, the 95th of a hundred, and the number of what was seen."""
    hundredths = statistics.quantiles(seen, n=100, method="inclusive")
    return {
        "p50": round(hundredths[49], 3),
        "p95": round(hundredths[94], 3),
        "n": len(seen),
    }


def ratio(ours: dict[str, float], other: dict[str, float]) -> dict[str, float]:
    """Return how many times the other's figures ours are."""
    return {part: round(ours[part] / other[part], 2) for part in ("p50", "p95")}


def timed(work: Callable[[], object]) -> float:
    """Return how many milliseconds of the processor a piece of work took."""
    start = time.thread_time_ns()
    work()
    return (time.thread_time_ns() - start) / 1e6


def for_sympy(problem: str) -> str:
    """Return the same arithmetic as SymPy reads it; a blank is a symbol, its side stands alone.

    `1 1/2` is written as a sum, `15%` as a division, `of` as a product.
    """
    line = re.sub(r"(\d+) (\d+/\d+)", r"(\1+\2)", problem)
    line = re.sub(r"(\d+)%", r"(\1/100)", line)
    side = next((side for side in line.split("=") if "_" in side), line)
    return side.replace(" x ", " * ").replace(" of ", " * ").replace("_", "y")


def bench_ways() -> dict[str, Any]:
    """Time `ways()` on problems of every kind, each once cold, and SymPy's reading of the same.

    Turn by turn. What SymPy cannot read leaves only SymPy's time out.
    """
    ours: dict[str, list[float]] = {kind: [] for kind in KINDS}
    theirs: list[float] = []
    for kind, problem in asked_of_every_kind(0, PROBLEMS):
        asked = parse(problem)
        ours[kind].append(timed(partial(ways, asked)))
        if kind not in NOT_READ:
            theirs.append(timed(partial(sympy.sympify, for_sympy(problem))))
    own, other = spread([one for seen in ours.values() for one in seen]), spread(theirs)
    by_kind = {kind: spread(seen) for kind, seen in ours.items()}
    return {"ways": own, "sympify": other, "ratio": ratio(own, other), "by_kind": by_kind}


def bench_slips() -> dict[str, Any]:
    """Time `slips()` on a wrong answer of each problem: one foreseen, or one that nothing explains.

    And `foresee()` on the same problems.
    """
    dice = random.Random("slips")
    explained, foreseen = [], []
    for _, problem in asked_of_every_kind(1, PROBLEMS):
        asked = parse(problem)
        expected = foresee(asked)
        foreseen.append(timed(partial(foresee, asked)))
        wrong = dice.choice(expected).wrong if expected and dice.random() < 0.7 else 4711
        explained.append(timed(partial(slips, asked, wrong)))
    return {"slips": spread(explained), "foresee": spread(foreseen)}


def _work(chunk: int) -> tuple[int, int, float, int]:
    """Work a chunk of problems fully; return its ways, its slips, its seconds and the memory.

    Fully: every way with its effort, every wrong answer foreseen, and the slips of the first one.
    """
    start = time.process_time()
    found = explained = 0
    for _, problem in asked_of_every_kind(chunk + 2, CHUNK):
        asked = parse(problem)
        told = ways(asked)
        found += len([effort_of(way) for way in told])
        expected = foresee(asked)
        explained += len(expected) + len(slips(asked, expected[0].wrong) if expected else ())
    took = time.process_time() - start
    return found, explained, took, resource.getrusage(resource.RUSAGE_SELF).ru_maxrss


def bench_whole(sizes: Sequence[int] = SIZES) -> list[dict[str, Any]]:
    """Work so many problems fully on two cores, each size in processes of its own."""
    seen = []
    for size in sizes:
        gc.collect()
        start = time.perf_counter()
        with ProcessPoolExecutor(CORES, mp_context=get_context("spawn")) as pool:
            done = list(pool.map(_work, range(size // CHUNK)))
        wall, processor = time.perf_counter() - start, sum(one[2] for one in done)
        seen.append(
            {
                "problems": size,
                "ways": sum(one[0] for one in done),
                "slips": sum(one[1] for one in done),
                "wall_s": round(wall, 1),
                "processor_s": round(processor, 1),
                "processor_ms_a_problem": round(1000 * processor / size, 3),
                "memory_of_one_process_mb": round(max(one[3] for one in done) / 1024),
            }
        )
    return seen


def main() -> None:
    """Run every part; `--short` leaves the whole work out."""
    found: dict[str, Any] = {"ways": bench_ways(), "slips": bench_slips()}
    if "--short" not in sys.argv:
        found["whole"] = bench_whole()
    tell(found)


if __name__ == "__main__":
    main()
