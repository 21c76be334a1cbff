"""Checks of the repository as a whole: sizes, front doors, hosts, floats, clocks, translations."""

import ast
import subprocess
from collections.abc import Iterator, Sequence
from pathlib import Path

from babel.messages.catalog import Catalog
from babel.messages.mofile import read_mo
from babel.messages.pofile import read_po

ROOT = Path(__file__).resolve().parents[2]
LONGEST_FILE = 400
LONGEST_FUNCTION = 50
CODE = {".py", ".js", ".css", ".html", ".sh"}
EXACT = ("number", "ways", "slips", "hearing", "strings", "talk")
"""Layers that a child's answer passes through: no float in them."""

PURE = (*EXACT, "drawing", "growth")
"""Layers without a clock and without unseeded randomness."""

CLOCKS = {"now", "utcnow", "today", "time", "monotonic", "perf_counter", "time_ns"}
DICE = {"random", "choice", "choices", "randint", "randrange", "sample", "shuffle", "uniform"}


def hosts() -> tuple[str, ...]:
    """Return the package registries' hosts, put together here so that no file holds one."""
    parts = (
        ("pypi", "org"),
        ("pythonhosted", "org"),
        ("npmjs", "org"),
        ("npmjs", "com"),
        ("yarnpkg", "com"),
        ("deb", "debian", "org"),
        ("security", "debian", "org"),
        ("proxy", "golang", "org"),
        ("crates", "io"),
        ("anaconda", "org"),
    )
    return tuple(".".join(part) for part in parts)


def tracked(root: Path = ROOT) -> list[Path]:
    """Return the files of the repository: those git keeps, and new ones it does not ignore."""
    asked = ["git", "ls-files", "-z", "--cached", "--others", "--exclude-standard"]
    listed = subprocess.run(asked, cwd=root, capture_output=True, check=True).stdout.decode()
    return [path for name in listed.split("\0") if name and (path := root / name).is_file()]


def own_code(files: list[Path]) -> list[Path]:
    """Return the code we wrote: no migrations, nothing of others'."""
    return [
        path
        for path in files
        if path.suffix in CODE and not {"migrations", "vendor"} & set(path.parts)
    ]


def with_host(files: list[Path]) -> list[str]:
    """Return a line for each file that names a package registry's host."""
    found = []
    for path in files:
        content = path.read_bytes().lower()
        found += [f"{path.name} names {host}" for host in hosts() if host.encode() in content]
    return found


def too_long(files: list[Path]) -> list[str]:
    """Return a line for each file and each Python function over its limit."""
    found = []
    for path in files:
        text = path.read_text(encoding="utf-8")
        lines = len(text.splitlines())
        if lines > LONGEST_FILE:
            found.append(f"{path.name} has {lines} lines")
        if path.suffix == ".py":
            found += [f"{path.name}: {line}" for line in long_functions(ast.parse(text))]
    return found


def long_functions(tree: ast.AST) -> Iterator[str]:
    """Yield a line for each function over the limit, its docstring and inner functions counted."""
    for node in ast.walk(tree):
        if isinstance(node, ast.FunctionDef | ast.AsyncFunctionDef):
            lines = (node.end_lineno or node.lineno) - node.lineno + 1
            if lines > LONGEST_FUNCTION:
                yield f"{node.name} has {lines} lines"


def floats(tree: ast.AST) -> Iterator[str]:
    """Yield a line for each float in the source: a literal, or a call of float."""
    for node in ast.walk(tree):
        if isinstance(node, ast.Constant) and isinstance(node.value, float | complex):
            yield f"line {node.lineno}: {node.value!r}"
        elif isinstance(node, ast.Call) and ast.unparse(node.func) in {"float", "complex"}:
            yield f"line {node.lineno}: {ast.unparse(node)}"


def clocks_and_dice(tree: ast.AST) -> Iterator[str]:
    """Yield a line for each look at a clock and each draw of a number without a seed."""
    for node in ast.walk(tree):
        if not isinstance(node, ast.Call) or not isinstance(node.func, ast.Attribute):
            continue
        owner, verb = ast.unparse(node.func.value), node.func.attr
        clock = verb in CLOCKS and owner.split(".")[-1] in {"datetime", "date", "time"}
        dice = owner == "random" and (verb in DICE or (verb == "Random" and not node.args))
        if clock or dice:
            yield f"line {node.lineno}: {ast.unparse(node)}"


def front_door(source: str) -> list[str]:
    """Return what is wrong with a layer's `__all__`: missing, unsorted or not whole."""
    shown: list[str] | None = None
    bound: set[str] = set()
    for node in ast.parse(source).body:
        if isinstance(node, ast.ImportFrom | ast.Import):
            bound |= {alias.asname or alias.name for alias in node.names}
        elif isinstance(node, ast.FunctionDef | ast.AsyncFunctionDef | ast.ClassDef):
            bound.add(node.name)
        elif isinstance(node, ast.Assign | ast.AnnAssign):
            target = node.targets[0] if isinstance(node, ast.Assign) else node.target
            if ast.unparse(target) == "__all__" and node.value is not None:
                shown = ast.literal_eval(node.value)
            else:
                bound.add(ast.unparse(target))
    if shown is None:
        return ["no __all__"]
    public = {name for name in bound if not name.startswith("_")}
    wrong = [f"{name} is not in __all__" for name in sorted(public - set(shown))]
    wrong += [f"__all__ has {name}, which is not there" for name in sorted(set(shown) - bound)]
    if len(set(shown)) != len(shown) or shown != sorted(shown, key=reading_order):
        wrong.append("__all__ is not sorted")
    return wrong


def reading_order(name: str) -> tuple[int, str]:
    """Sort constants first, then types, then functions, each by the alphabet (as ruff does)."""
    kind = 0 if name.isupper() else 1 if name[:1].isupper() else 2
    return kind, name


def messages(catalog: Catalog) -> dict[object, object]:
    """Return the translations of a catalogue that a page would use."""
    return {
        (_context(message.context), _texts(message.id)): _texts(message.string)
        for message in catalog
        if message.id and message.string and any(message.string) and not message.fuzzy
    }


def _context(given: str | bytes | None) -> str | None:
    """Return a text's context; one that was compiled comes back as bytes."""
    return given.decode() if isinstance(given, bytes) else given


def _texts(one_or_more: str | Sequence[str]) -> tuple[str, ...]:
    """Return a text, or those for one and for many, in the same form from either kind of file."""
    return (one_or_more,) if isinstance(one_or_more, str) else tuple(one_or_more)


def stale(po: Path) -> str | None:
    """Return a line when the compiled file beside a .po is missing or says something else."""
    mo = po.with_suffix(".mo")
    if not mo.is_file():
        return f"{mo.name} is missing"
    with po.open("rb") as source, mo.open("rb") as compiled:
        same = messages(read_po(source)) == messages(read_mo(compiled))
    return None if same else f"{mo.name} differs from {po.name}"
