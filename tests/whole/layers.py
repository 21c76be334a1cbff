"""Reads every import of the package and tells which ones break the layers."""

import ast
import sys
from collections.abc import Iterator
from dataclasses import dataclass
from pathlib import Path

LAYERS = (
    "number",
    "ways",
    "slips",
    "hearing",
    "strings",
    "drawing",
    "talk",
    "growth",
    "paper",
    "site",
    "cli",
)
"""From the lowest to the highest; a layer imports only from those before it."""

WEB = ("site", "cli")
"""Layers that may use any package."""

PACKAGES = {"paper": ("typst", "PIL", "icalendar", "dateutil", "pptx", "duckdb")}
"""Packages from outside that a layer below the site may use."""

OUTSIDE_WORLD = {
    *("asyncio", "http", "os", "shutil", "signal", "socket", "socketserver", "sqlite3", "ssl"),
    *("subprocess", "tempfile", "threading", "time", "urllib", "wsgiref"),
}
"""Parts of the standard library that bring in a clock, the web, a database or the machine."""

PAPER_MAY = frozenset({"os", "tempfile"})
IMPORTERS = frozenset({"import_module", "__import__"})


@dataclass(frozen=True, slots=True)
class Import:
    """One module that a file imports, wherever in the file it does."""

    line: int
    target: str
    relative: bool


def called(node: ast.Call) -> str:
    """Return the last word of a called name, or nothing."""
    if isinstance(node.func, ast.Attribute):
        return node.func.attr
    return node.func.id if isinstance(node.func, ast.Name) else ""


def imports(tree: ast.AST, package: Path) -> Iterator[Import]:
    """Yield every import: at the top, inside functions, for typing, and by name at run time."""
    for node in ast.walk(tree):
        if isinstance(node, ast.Import):
            for alias in node.names:
                yield Import(node.lineno, alias.name, relative=False)
        elif isinstance(node, ast.ImportFrom):
            base = node.module or ""
            if node.level:
                yield Import(node.lineno, "." * node.level + base, relative=True)
                continue
            yield Import(node.lineno, base, relative=False)
            for alias in node.names:
                if is_module(f"{base}.{alias.name}", package):
                    yield Import(node.lineno, f"{base}.{alias.name}", relative=False)
        elif isinstance(node, ast.Call) and called(node) in IMPORTERS and node.args:
            first = node.args[0]
            if isinstance(first, ast.Constant) and isinstance(first.value, str):
                yield Import(node.lineno, first.value, relative=first.value.startswith("."))


def shown(front: Path) -> frozenset[str]:
    """Return the names in the `__all__` of a package's front door."""
    if not front.is_file():
        return frozenset()
    for node in ast.parse(front.read_text(encoding="utf-8")).body:
        if isinstance(node, ast.Assign) and ast.unparse(node.targets[0]) == "__all__":
            return frozenset(ast.literal_eval(node.value))
    return frozenset()


def is_module(name: str, package: Path) -> bool:
    """Tell whether a dotted name is a module or folder, not a value its folder's door shows."""
    parts = name.split(".")
    if parts[0] != package.name or len(parts) < 2:
        return False
    path = package.joinpath(*parts[1:])
    if parts[-1] in shown(path.parent / "__init__.py"):
        return False
    return path.is_dir() or path.with_suffix(".py").is_file()


def fault_inside(layer: str, target: str, package: str) -> str | None:
    """Return what is wrong with an import of the package's own, or None."""
    parts = target.split(".")
    if len(parts) == 1:
        return None
    other = parts[1]
    if other == layer:
        return None
    if layer == "":
        return f"{package}/__init__.py imports {target}; it imports no layer"
    if other not in LAYERS:
        return f"{target} is no layer"
    if LAYERS.index(other) > LAYERS.index(layer):
        return f"{layer} reaches up to {target}"
    if len(parts) > 2 and (layer, other) != ("cli", "site"):
        return f"{layer} reaches past the front door of {other}: {target}"
    return None


def fault_outside(layer: str, target: str) -> str | None:
    """Return what is wrong with an import from outside the package, or None."""
    root = target.split(".", maxsplit=1)[0]
    if layer in WEB:
        return None
    if root in OUTSIDE_WORLD and not (layer == "paper" and root in PAPER_MAY):
        return f"{layer} uses {root}: a clock, the web, a database or the machine"
    if root in sys.stdlib_module_names or root in PACKAGES.get(layer, ()):
        return None
    return f"{layer} uses {root}, which belongs to site and cli"


def faults(package: Path) -> list[str]:
    """Return a line for each import under a package folder that breaks the layers."""
    found = []
    for path in sorted(package.rglob("*.py")):
        where = path.relative_to(package)
        layer = where.parts[0].removesuffix(".py").replace("__init__", "")
        if layer == "__main__":
            layer = "cli"
        for one in imports(ast.parse(path.read_text(encoding="utf-8")), package):
            if one.relative:
                fault: str | None = f"relative import of {one.target}"
            elif one.target.split(".")[0] == package.name:
                fault = fault_inside(layer, one.target, package.name)
            else:
                fault = fault_outside(layer, one.target)
            if fault:
                found.append(f"{where}:{one.line}: {fault}")
    return sorted(set(found))
