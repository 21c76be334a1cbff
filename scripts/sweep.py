"""Run the parts of the sweep that have not held yet, and write what all of them showed.

Run as `sweep.py [--all] [PATH...]`: every part below the paths, or every part there is. A part
that held with the very files that it rests on now is not run again, unless all are asked for. What
a part showed is written as it ends, so that a sweep that is broken off goes on where it stopped.
"""

import argparse
import json
import os
import subprocess
import sys
import time
import xml.etree.ElementTree as ET
from collections.abc import Sequence
from concurrent.futures import ThreadPoolExecutor, as_completed
from dataclasses import asdict
from pathlib import Path

from sweep_parts import ROOT, Part, parts
from sweep_report import Showed, failed, page, rows_of

KEPT = ROOT / "docs" / "reference" / "sweep.jsonl"
PAGE = ROOT / "docs" / "reference" / "sweep.md"
AT_ONCE = 2
"""Parts that run at the same time; the sweep is meant for two cores."""

NO_TESTS = 5
"""What pytest ends with where a part has none of the tests asked for."""


def kept() -> dict[str, Showed]:
    """Return what the parts showed when they last ran, by their paths."""
    lines = KEPT.read_text(encoding="utf-8").splitlines() if KEPT.is_file() else []
    found = (Showed.read(json.loads(line)) for line in lines)
    return {one.path: one for one in found}


def keep(showed: dict[str, Showed], there: Sequence[Part]) -> None:
    """Write what the parts that are still there showed, and the page of it."""
    now = {part.path: part.digest for part in there}
    left = [one for path, one in sorted(showed.items()) if path in now]
    lines = (json.dumps(asdict(one), ensure_ascii=False) for one in left)
    KEPT.parent.mkdir(parents=True, exist_ok=True)
    KEPT.write_text("".join(f"{line}\n" for line in lines), encoding="utf-8")
    PAGE.write_text(page(left, now), encoding="utf-8")


def run(part: Part, commit: str) -> Showed:
    """Try one part with all its cases and return what it showed."""
    junit = ROOT / "build" / "sweep" / (part.path.replace("/", "-") + ".xml")
    junit.parent.mkdir(parents=True, exist_ok=True)
    junit.unlink(missing_ok=True)
    asked = [sys.executable, "-m", "pytest", "-q", "-p", "no:xdist", "-p", "no:cacheprovider"]
    asked += ["-m", "not browser and not postgres", f"--junitxml={junit}"]
    asked += ["-o", "junit_family=xunit1", part.path]
    began = time.monotonic()
    sized = {**os.environ, "WAYSAID_COUNTS": "sweep"}
    done = subprocess.run(asked, cwd=ROOT, env=sized, capture_output=True, text=True, check=False)
    minutes = round((time.monotonic() - began) / 60, 1)
    junit.with_suffix(".txt").write_text(done.stdout + done.stderr, encoding="utf-8")
    cases = list(ET.parse(junit).iter("testcase")) if junit.is_file() else []
    lost = [case.get("name") or "" for case in cases if failed(case)]
    if done.returncode not in (0, 1, NO_TESTS):
        lost.append(f"pytest ended with {done.returncode}")
    rows = [row for case in cases for row in rows_of(case)]
    return Showed(part.path, part.digest, commit, minutes, len(cases), lost, rows)


def _commit() -> str:
    """Return the commit of the checkout, with a plus where files of git differ from it."""
    asked = ("rev-parse --short HEAD", "status --porcelain --untracked-files=no -- waysaid tests")
    commit, changed = (
        subprocess.run(
            ["git", *words.split()], cwd=ROOT, capture_output=True, text=True, check=False
        ).stdout.strip()
        for words in asked
    )
    return f"{commit}+" if commit and changed else commit or "no commit"


def _below(part: Part, paths: Sequence[str]) -> bool:
    return not paths or any(Path(part.path).is_relative_to(path.rstrip("/")) for path in paths)


def main(arguments: list[str]) -> int:
    """Run what is asked for; return 1 when a part of it did not hold."""
    asked = argparse.ArgumentParser(description=(__doc__ or "").splitlines()[0])
    asked.add_argument("--all", action="store_true", help="also what held and did not change")
    asked.add_argument("paths", nargs="*", metavar="PATH")
    chosen = asked.parse_args(arguments)
    there, showed, commit = parts(), kept(), _commit()
    wanted = [part for part in there if _below(part, chosen.paths)]
    waiting = [
        part
        for part in wanted
        if chosen.all or not (part.path in showed and showed[part.path].holds(part.digest))
    ]
    waiting.sort(key=lambda part: -showed[part.path].minutes if part.path in showed else -1e9)
    print(f"{len(wanted)} parts, {len(wanted) - len(waiting)} of them held and did not change.")
    with ThreadPoolExecutor(AT_ONCE) as pool:
        for done in as_completed([pool.submit(run, part, commit) for part in waiting]):
            one = done.result()
            showed[one.path] = one
            keep(showed, there)
            print(f"{one.minutes:6.1f} min  {one.path}: {one.ended()}", flush=True)
    keep(showed, there)
    held = [showed[part.path].holds(part.digest) for part in wanted]
    return 0 if all(held) else 1


if __name__ == "__main__":
    sys.exit(main(sys.argv[1:]))
