"""The parts of the sweep: each test file that counts its cases, with all that it rests on.

A part rests on the modules that it imports, on theirs in turn, on the files that are read beside
them, and on the locked packages. As long as none of these changes, what it showed still holds.
"""

import ast
import hashlib
from collections.abc import Iterable, Iterator
from dataclasses import dataclass
from pathlib import Path

ROOT = Path(__file__).resolve().parents[1]
COUNTS = ("tests.counts", "hypothesis", "sweep_note")
"""A test file that names one of these tries more cases in a sweep."""

APART = ("whole", "talks")
"""Folders of tests that look at the house and at browsers: they try no cases."""

ALWAYS = ("tests/conftest.py", "tests/counts.py", "tests/sweep.py", "requirements/dev.txt")
NAMES_AT_RUN_TIME = ("waysaid/site/", "waysaid/cli/")
"""Layers that find modules by name as they run: whoever rests on them rests on all code."""


@dataclass(frozen=True, slots=True)
class Part:
    """A test file, and a digest of all files that its tests rest on."""

    path: str
    digest: str


def parts(root: Path = ROOT) -> tuple[Part, ...]:
    """Return the parts of a checkout, in the order of their paths."""
    resting = _Resting(root)
    found = sorted((root / "tests").rglob("test_*.py"))
    return tuple(
        Part(str(path.relative_to(root)), resting.digest(path))
        for path in found
        if path.relative_to(root).parts[1] not in APART
        and any(word in path.read_text(encoding="utf-8") for word in COUNTS)
    )


class _Resting:
    """What rests on what in one checkout; each file is read once."""

    def __init__(self, root: Path) -> None:
        self._root = root
        self._imports: dict[Path, frozenset[Path]] = {}
        self._digests: dict[Path, bytes] = {}

    def digest(self, path: Path) -> str:
        """Return 16 signs that change when a file changes that this one rests on."""
        whole = hashlib.sha256()
        for each in sorted(self._all_of(path)):
            whole.update(str(each.relative_to(self._root)).encode() + b"\0" + self._content(each))
        return whole.hexdigest()[:16]

    def _content(self, path: Path) -> bytes:
        if path not in self._digests:
            self._digests[path] = hashlib.sha256(path.read_bytes()).digest()
        return self._digests[path]

    def _all_of(self, path: Path) -> set[Path]:
        found: set[Path] = set()
        waiting = [path, *(self._root / each for each in ALWAYS if (self._root / each).is_file())]
        while waiting:
            each = waiting.pop()
            if each not in found:
                found.add(each)
                waiting += self._imported(each)
        names = {str(each.relative_to(self._root)) for each in found}
        if any(name.startswith(NAMES_AT_RUN_TIME) for name in names):
            found |= set((self._root / "waysaid").rglob("*.py"))
        return found | set(self._beside(found))

    def _beside(self, modules: Iterable[Path]) -> Iterator[Path]:
        """Yield what lies beside modules and is no code, also in folders that hold none."""
        for folder in {path.parent for path in modules if path.suffix == ".py"}:
            for path in folder.iterdir():
                if path.name == "__pycache__":
                    continue
                if path.is_dir() and not any(path.rglob("*.py")):
                    yield from (each for each in path.rglob("*") if each.is_file())
                elif path.is_file() and path.suffix != ".py":
                    yield path

    def _imported(self, path: Path) -> frozenset[Path]:
        if path not in self._imports:
            text = path.read_text(encoding="utf-8") if path.suffix == ".py" else ""
            named = {name for node in ast.walk(ast.parse(text)) for name in _named(node)}
            self._imports[path] = frozenset(each for name in named for each in self._files(name))
        return self._imports[path]

    def _files(self, name: str) -> Iterator[Path]:
        """Yield the module of a dotted name and the packages that it is in, if they are ours."""
        steps = name.split(".")
        if steps[0] not in ("tests", "waysaid"):
            return
        for many in range(1, len(steps) + 1):
            module = self._root.joinpath(*steps[:many])
            for path in (module.with_suffix(".py"), module / "__init__.py"):
                if path.is_file():
                    yield path


def _named(node: ast.AST) -> Iterator[str]:
    match node:
        case ast.Import(names=names):
            yield from (each.name for each in names)
        case ast.ImportFrom(module=str(module), names=names, level=0):
            yield from (f"{module}.{each.name}" for each in names)
