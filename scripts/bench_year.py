"""Measure the bank: the years of every grade, laid out, told and checked; print one JSON object.

Run alone, or by `bench.py` as a part of it. `wall_s` is by the clock, on two cores, from a cold
start; the memory is that of the largest process.
"""

import json
import resource
import sys
import tempfile
import time
from collections import Counter
from pathlib import Path
from typing import Any

ROOT = Path(__file__).resolve().parents[1]
sys.path.insert(0, str(ROOT))

from scripts.bench_size import sized, tell  # noqa: E402
from waysaid.cli.bank import SHARES, answer_bank  # noqa: E402

SHARED = sized(SHARES, ((0,),))
"""The grades whose years are laid out, by the core that does it."""


def bench_bank(folder: Path) -> dict[str, Any]:
    """Write the bank into a folder; return how long it took, and where its strings are from."""
    start = time.perf_counter()
    made = answer_bank({"out": str(folder)}, SHARED)
    wall = time.perf_counter() - start
    years = [json.loads((folder / str(name)).read_text("utf-8")) for name in made["files"]]
    talks = [talk for year in years for talk in year["talks"]]
    used = resource.getrusage(resource.RUSAGE_CHILDREN)
    return {
        "talks": len(talks),
        "cores": len(SHARED),
        "wall_s": round(wall, 1),
        "processor_s": round(used.ru_utime + used.ru_stime, 1),
        "memory_of_one_process_mb": round(used.ru_maxrss / 1024),
        "size_mb": round(sum(path.stat().st_size for path in folder.iterdir()) / 1e6, 1),
        "from": dict(Counter(talk["from"] for talk in talks)),
        "proven_best_of_composed": sum(talk["best_possible"] is True for talk in talks),
    }


def main() -> None:
    """Measure and print."""
    with tempfile.TemporaryDirectory() as folder:
        tell({"bank": bench_bank(Path(folder))})


if __name__ == "__main__":
    main()
