"""Layers import only downwards, only through front doors, and the web stays in the site."""

import shutil
from pathlib import Path

import pytest

from tests.whole.layers import LAYERS, faults

PACKAGE = Path(__file__).resolve().parents[2] / "waysaid"

PLANTED = {
    "up": ("ways", "import waysaid.site\n", "ways reaches up to waysaid.site"),
    "up, late": (
        "number",
        "def f() -> None:\n    from waysaid.talk import State\n",
        "number reaches up to waysaid.talk",
    ),
    "up, for typing only": (
        "hearing",
        "import typing\nif typing.TYPE_CHECKING:\n    from waysaid.paper import sheet\n",
        "hearing reaches up to waysaid.paper",
    ),
    "past a front door": (
        "slips",
        "from waysaid.number.parse import parse\n",
        "slips reaches past the front door of number: waysaid.number.parse",
    ),
    "a module through a front door": (
        "slips",
        "from waysaid.number import parse_of_a_plant\n",
        "slips reaches past the front door of number: waysaid.number.parse_of_a_plant",
    ),
    "relative": ("ways", "from .step import Step\n", "relative import of .step"),
    "Django outside the site": (
        "talk",
        "def f() -> None:\n    import django.db\n",
        "talk uses django, which belongs to site and cli",
    ),
    "a clock": (
        "growth",
        "from time import monotonic\n",
        "growth uses time: a clock, the web, a database or the machine",
    ),
    "by name at run time": (
        "number",
        "import importlib\nimportlib.import_module('waysaid.cli')\n",
        "number reaches up to waysaid.cli",
    ),
}


def test_no_import_breaks_the_layers():
    assert faults(PACKAGE) == []


def test_every_folder_of_the_package_is_a_layer():
    folders = {path.parent.relative_to(PACKAGE).parts[:1] for path in PACKAGE.rglob("*.py")}
    assert {names[0] for names in folders if names} <= set(LAYERS)


def _copy(target: Path) -> Path:
    """Copy the package with a folder for each layer, and a module behind a front door."""
    shutil.copytree(PACKAGE, target, ignore=shutil.ignore_patterns("*.ttf", "*.woff2", "*.pyc"))
    for layer in LAYERS:
        if layer != "cli":
            (target / layer).mkdir(exist_ok=True)
    (target / "number" / "parse_of_a_plant.py").write_text("", encoding="utf-8")
    return target


def _planted(kind: str) -> str:
    """Return the name of the file in which a fault is planted."""
    layer, _, _ = PLANTED[kind]
    return f"{layer}/planted_{list(PLANTED).index(kind)}.py"


@pytest.fixture(scope="module")
def seen(tmp_path_factory):
    """Return what is seen once every fault is planted, and was not before."""
    target = _copy(tmp_path_factory.mktemp("planted") / "waysaid")
    before = set(faults(target))
    for kind, (_, source, _) in PLANTED.items():
        (target / _planted(kind)).write_text(source, encoding="utf-8")
    return set(faults(target)) - before


@pytest.mark.parametrize("kind", PLANTED)
def test_a_planted_fault_is_seen(seen, kind):
    _, source, expected = PLANTED[kind]
    lines = source.splitlines()
    line = next(n for n, text in enumerate(lines, 1) if "waysaid" in text or n == len(lines))
    name = _planted(kind)
    assert {one for one in seen if one.startswith(f"{name}:")} == {f"{name}:{line}: {expected}"}


def test_nothing_is_seen_but_what_was_planted(seen):
    files = {one.split(":")[0] for one in seen}
    assert files == {_planted(kind) for kind in PLANTED}


def test_the_allowed_ways_to_import_are_let_through(tmp_path):
    copy = _copy(tmp_path / "waysaid")
    door = "from waysaid.strings.link import link\n__all__ = ['link']\n"
    allowed = {
        "strings/__init__.py": door,
        "strings/link.py": "from waysaid.number import Problem\nfrom waysaid import ways\n",
        "drawing/planted.py": "from waysaid.strings import link\n",
        "site/planted.py": "import django.db\nimport time\n",
        "cli.py": "def main():\n    from waysaid.site.settings import DATABASES as d\n",
        "paper/planted.py": "import typst\nimport PIL.Image\n",
    }
    for name, source in allowed.items():
        (copy / name).write_text(source, encoding="utf-8")
    assert [line for line in faults(copy) if line.split(":")[0] in allowed] == []
