"""Measure how fast words are heard, beside number words alone; print one JSON object.

Run alone, or by `bench.py` as a part of it. Times are of the processor on one core, in
milliseconds, each utterance once, as a line is met on the desk: the problem's ways are known, as
they are when a talk is on, and the interpreter looks for what nobody holds as seldom as it does in
the served application. Nothing is best of several but the imports, which are all given.
"""

import os
import statistics
import subprocess
import sys
import tempfile
import time
import tracemalloc
from collections.abc import Callable, Iterator
from functools import partial
from pathlib import Path
from typing import Any

ROOT = Path(__file__).resolve().parents[1]
sys.path.insert(0, str(ROOT))

from text_to_num import alpha2digit  # noqa: E402

from scripts.bench_size import sized, tell  # noqa: E402
from scripts.bench_ways import ratio, spread, timed  # noqa: E402
from tests.hearing.said import WRITTEN, sentences  # noqa: E402
from tests.hearing.soup import strings  # noqa: E402
from tests.hearing.speaker import utterances  # noqa: E402
from waysaid.hearing import read  # noqa: E402
from waysaid.hearing.lexicon import lexicon_of  # noqa: E402
from waysaid.hearing.spoken import forget  # noqa: E402
from waysaid.number import Language, Problem, parse  # noqa: E402
from waysaid.site.collector import look_rarely  # noqa: E402

APART = sized(1, 300)
"""Of so many sentences one is read."""
SPOKEN = sized(1_000, 16)
FUZZ = sized(5_000, 10)
IMPORTS = sized(5, 1)
IMPORT = "import time; s = time.thread_time_ns(); import {0}; print(time.thread_time_ns() - s)"
WAITING = 20
"""Words of a line that is to be previewed at once."""

Heard = tuple[Problem, str, Language]


def written() -> Iterator[Heard]:
    """Yield the sentences of the tests."""
    for path in WRITTEN:
        for one in sentences(path):
            yield parse(one.problem), one.said, one.language


def spoken() -> Iterator[Heard]:
    """Yield generated utterances: longer than the written ones, as every step is said."""
    for one in utterances(77, SPOKEN):
        yield parse(one.problem), one.said, one.language


def bench_lines(listed: list[Heard]) -> dict[str, Any]:
    """Time each line in each language, and its number words alone by another library.

    By turns. `first` is with a problem met for the first time: its ways are found, too. `last_key`
    is the line again, as it was just read without its last character: as it is typed on the desk.
    """
    found: dict[str, Any] = {}
    for language in Language:
        lines = [one for one in listed if one[2] is language]
        first, ours, theirs, preview, typed = [], [], [], [], []
        for line in lines:
            first.append(_anew(line))
            ours.append(_anew(line))
            typed.append(_last_key(line))
            theirs.append(timed(partial(alpha2digit, line[1], language.value)))
            if len(line[1].split()) <= WAITING:
                preview.append(ours[-1])
        own, other = spread(ours), spread(theirs)
        found[language.value] = {
            "first": spread(first),
            "heard": own,
            f"up_to_{WAITING}_words": spread(preview),
            "last_key": spread(typed),
            "number_words_alone": other,
            "ratio": ratio(own, other),
            "slowest": round(max(ours), 1),
        }
    return found


def _anew(line: Heard) -> float:
    """Time a line that goes on from no line before it."""
    forget()
    return timed(partial(read, *line))


def _last_key(line: Heard) -> float:
    """Time a line that was read before without its last character."""
    problem, said, language = line
    forget()
    read(problem, said[:-1], language)
    return timed(partial(read, *line))


def bench_fuzz() -> dict[str, Any]:
    """Time any strings; return the slowest."""
    seen = []
    for problem, line, language in strings(0, FUZZ):
        took = _anew((parse(problem), line, language))
        seen.append((took, problem, line[:60], len(line)))
    took, problem, line, length = max(seen)
    return {
        **spread([one[0] for one in seen]),
        "slowest": round(took, 1),
        "slowest_begins": line,
        "slowest_characters": length,
        "slowest_problem": problem,
    }


def bench_memory(listed: list[Heard]) -> dict[str, float]:
    """Return what the lexicons hold, what is kept after all lines, and the most beside: in MB."""

    def held(work: Callable[[], object]) -> tuple[float, float]:
        before = tracemalloc.get_traced_memory()[0]
        tracemalloc.reset_peak()
        work()
        after, most = tracemalloc.get_traced_memory()
        return (after - before) / 2**20, (most - before) / 2**20

    lexicon_of.cache_clear()
    tracemalloc.start()
    lexicons, _ = held(lambda: [lexicon_of(language) for language in Language])
    kept, most = held(lambda: [read(*line) for line in listed[::5]] and None)
    tracemalloc.stop()
    return {
        "lexicons_mb": round(lexicons, 1),
        "kept_after_mb": round(kept, 1),
        "most_mb": round(most, 1),
    }


def bench_imports() -> dict[str, Any]:
    """Return what it takes to import the layer, and the layers below it, in fresh processes.

    The interpreter's compiled files are there, as after an installation: the first run of each
    makes them, in a folder of their own, and is left out.
    """
    found: dict[str, Any] = {}
    cache = tempfile.mkdtemp()
    compiled = {"PYTHONPYCACHEPREFIX": cache, "PYTHONDONTWRITEBYTECODE": ""}
    surroundings = {"env": os.environ | compiled, "cwd": ROOT, "capture_output": True}
    for module in ("waysaid.number", "waysaid.ways", "waysaid.slips", "waysaid.hearing"):
        command = [sys.executable, "-c", IMPORT.format(module)]
        runs = [
            int(subprocess.run(command, check=True, **surroundings).stdout) / 1e6
            for _ in range(IMPORTS + 1)
        ][1:]
        found[module] = {
            "median": round(statistics.median(runs)),
            "all": [round(one) for one in runs],
        }
    return found


def main() -> None:
    """Run every part."""
    lines, start = list(written())[::APART], time.process_time()
    for language in Language:
        lexicon_of(language)
    read_in = round(1000 * (time.process_time() - start))
    look_rarely()
    found = {
        "lexicons_read_ms": read_in,
        "imports_ms": bench_imports(),
        "sentences": bench_lines(lines),
        "generated": bench_lines(list(spoken())),
        "any_string": bench_fuzz(),
        "memory": bench_memory(lines),
    }
    tell(found)


if __name__ == "__main__":
    main()
