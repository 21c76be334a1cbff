"""The house is in order: each check is also shown a fault, so that it can fail."""

import ast

import pytest
from babel.messages.catalog import Catalog
from babel.messages.mofile import write_mo
from babel.messages.pofile import write_po

from tests.whole import house

LAYERS_WITH_DOORS = (*house.PURE, "paper")


def modules(layers):
    return [
        pytest.param(path, id=str(path.relative_to(house.ROOT)))
        for layer in layers
        for path in sorted((house.ROOT / "waysaid" / layer).rglob("*.py"))
    ]


def doors():
    folders = (house.ROOT / "waysaid" / layer for layer in LAYERS_WITH_DOORS)
    return [
        pytest.param(folder / "__init__.py", id=folder.name)
        for folder in folders
        if any(folder.glob("*.py"))
    ]


def test_no_file_names_a_package_registry():
    assert house.with_host(house.tracked()) == []


def test_a_named_registry_is_seen(tmp_path):
    lock = tmp_path / "lock.txt"
    lock.write_text(f"--index-url https://{house.hosts()[0].upper()}/simple\n", encoding="utf-8")
    assert house.with_host([lock]) == [f"lock.txt names {house.hosts()[0]}"]


def test_no_file_or_function_is_too_long():
    assert house.too_long(house.own_code(house.tracked())) == []


def test_a_long_file_and_a_long_function_are_seen(tmp_path):
    path = tmp_path / "long.py"
    path.write_text("def f():\n" + "    f()\n" * 50 + "\n" * 350, encoding="utf-8")
    assert house.too_long([path]) == ["long.py has 401 lines", "long.py: f has 51 lines"]


def test_migrations_and_the_work_of_others_are_not_measured(tmp_path):
    names = ("migrations/a.py", "vendor/b.js", "c.py", "d.md")
    paths = [tmp_path / name for name in names]
    assert house.own_code(paths) == [tmp_path / "c.py"]


@pytest.mark.parametrize("path", modules(house.EXACT))
def test_no_float_can_touch_an_answer(path):
    assert list(house.floats(ast.parse(path.read_text(encoding="utf-8")))) == []


def test_a_float_is_seen():
    tree = ast.parse("a = 0.5\nb = float('1')\nc = 1e3\nd = 5\n")
    lines = sorted(line.split(":")[0] for line in house.floats(tree))
    assert lines == ["line 1", "line 2", "line 3"]


@pytest.mark.parametrize("path", modules(house.PURE))
def test_pure_layers_look_at_no_clock_and_throw_no_dice(path):
    assert list(house.clocks_and_dice(ast.parse(path.read_text(encoding="utf-8")))) == []


def test_a_clock_and_dice_are_seen():
    lines = (
        "datetime.now()",
        "datetime.date.today()",
        "random.choice(x)",
        "random.Random()",
        "random.Random(5).choice(x)",
    )
    seen = [bool(list(house.clocks_and_dice(ast.parse(line)))) for line in lines]
    assert seen == [True, True, True, True, False]


@pytest.mark.parametrize("path", doors())
def test_a_front_door_shows_all_it_has_in_order(path):
    assert path.is_file(), "a layer's folder has an __init__"
    assert house.front_door(path.read_text(encoding="utf-8")) == []


@pytest.mark.parametrize(
    ("source", "wrong"),
    [
        ("from a import b", ["no __all__"]),
        ("from a import b, c\n__all__ = ['b']", ["c is not in __all__"]),
        ("from a import b\n__all__ = ['b', 'c']", ["__all__ has c, which is not there"]),
        ("from a import b, Cd\n__all__ = ['b', 'Cd']", ["__all__ is not sorted"]),
        ("from a import b, Cd, D_E\n__all__ = ['D_E', 'Cd', 'b']", []),
    ],
)
def test_a_front_door_with_a_fault_is_seen(source, wrong):
    assert house.front_door(source) == wrong


def test_compiled_translations_match_their_sources():
    sources = [path for path in house.tracked() if path.suffix == ".po"]
    assert [line for line in map(house.stale, sources) if line] == []


def test_a_stale_translation_is_seen(tmp_path):
    catalog = Catalog(locale="es")
    catalog.add("a way", "un camino")
    po, mo = tmp_path / "django.po", tmp_path / "django.mo"
    with po.open("wb") as file:
        write_po(file, catalog)
    assert house.stale(po) == "django.mo is missing"
    with mo.open("wb") as file:
        write_mo(file, catalog)
    assert house.stale(po) is None
    catalog.add("a slip", "un descuido")
    with po.open("wb") as file:
        write_po(file, catalog)
    assert house.stale(po) == "django.mo differs from django.po"
