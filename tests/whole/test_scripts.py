"""The scripts of the house: the report of a sweep, the plain checks, the make targets."""

import importlib.util
import json
import re
import subprocess
import sys
import xml.etree.ElementTree as ET
import zipfile
from dataclasses import asdict, replace

import pytest

from tests.whole.house import ROOT


def script(name):
    spec = importlib.util.spec_from_file_location(name, ROOT / "scripts" / f"{name}.py")
    module = importlib.util.module_from_spec(spec)
    sys.modules[name] = module
    spec.loader.exec_module(module)
    return module


JUNIT = """<testsuites><testsuite>
<testcase classname="tests.ways.test_ways" name="test_every_answer_is_right"><properties>
<property name="waysaid-sweep-examples" value="5000"/>
<property name="waysaid-sweep" value="49500|2|every way gives the answer"/></properties></testcase>
<testcase classname="tests.talk.test_fold" name="test_undo_takes_back"><properties>
<property name="waysaid-sweep-examples" value="5000"/></properties><failure/></testcase>
<testcase classname="tests.talk.test_fold" name="test_plain"/>
</testsuite></testsuites>
"""


def test_the_report_of_a_sweep_has_a_row_for_each_property():
    report = script("sweep_report")
    cases = list(ET.fromstring(JUNIT).iter("testcase"))
    part = report.Showed("tests/one.py", "0f", "c0ffee0", 90.0, 3, ["test_undo_takes_back"], [])
    part.rows.extend(row for case in cases for row in report.rows_of(case))
    text = report.page([part], {"tests/one.py": "0f", "tests/two.py": "aa"})
    assert "2 properties, 54,500 cases, 1 failed. 3 tests in 1 files ran for\n1.5 h" in text
    assert "1 of 2 files wait to be run" in text
    assert [line for line in text.splitlines() if line.startswith(("| ", "- "))][1:] == [
        "| undo takes back | `talk/test_fold` | up to 5,000 | 0 | **no** | c0ffee0 |",
        "| every way gives the answer | `ways/test_ways` | 49,500 | 2 | yes | c0ffee0 |",
        "- `tests/one.py` (c0ffee0): test_undo_takes_back",
    ]
    assert report.Showed.read(json.loads(json.dumps(asdict(part)))) == part
    assert not part.holds("0f")
    assert replace(part, failed=[]).holds("0f")
    assert not replace(part, failed=[]).holds("aa")


@pytest.mark.parametrize(
    ("name", "content", "fault"),
    [
        ("a.py", b"x = 1 \n", "blanks"),
        ("a.py", b"x = 1\r\n", "carriage returns"),
        ("a.py", b"x = 1", "one line end"),
        ("a.toml", b"a = \n", "does not parse"),
        ("a.yaml", b"a: [\n", "does not parse"),
        ("a.json", b"{,}\n", "does not parse"),
        ("a.md", b"\xff\n", "UTF-8"),
        ("a.png", b"0" * 1_000_001, "1000001 bytes"),
    ],
)
def test_a_plain_fault_of_a_file_is_seen(tmp_path, name, content, fault):
    path = tmp_path / name
    path.write_bytes(content)
    assert any(fault in line for line in script("check_files").faults(path))


def test_a_file_in_order_is_let_through(tmp_path):
    path = tmp_path / "a.toml"
    path.write_bytes("a = 'sí'\n".encode())
    assert script("check_files").faults(path) == []


def test_help_names_every_target():
    makefile = (ROOT / "Makefile").read_text(encoding="utf-8")
    phony = re.search(r"\.PHONY: (.*)", makefile).group(1).split()
    ask = ["make", "-s", "help"]
    said = subprocess.run(ask, cwd=ROOT, capture_output=True, text=True, check=True)
    assert re.findall(r"make ([a-z-]+)", said.stdout) == phony


@pytest.mark.parametrize("path", sorted((ROOT / "scripts").glob("*.sh")), ids=lambda p: p.name)
def test_each_shell_script_is_well_formed(path):
    assert subprocess.run(["bash", "-n", path], capture_output=True, check=False).stderr == b""


@pytest.mark.slow
def test_the_wheel_holds_the_package_and_nothing_of_the_tests(tmp_path):
    build = [sys.executable, "-m", "hatchling", "build", "-t", "wheel", "-d", str(tmp_path)]
    subprocess.run(build, cwd=ROOT, check=True, capture_output=True)
    (wheel,) = tmp_path.glob("*.whl")
    with zipfile.ZipFile(wheel) as opened:
        names = set(opened.namelist())
    assert {name.split("/")[0].split("-")[0] for name in names} == {"waysaid"}
    package = ROOT / "waysaid"
    kept = {".py", ".css", ".js", ".html", ".woff2", ".ttf", ".mo", ".typ", ".svg", ".json"}
    expected = {
        f"waysaid/{path.relative_to(package)}"
        for path in package.rglob("*")
        if path.suffix in kept and "__pycache__" not in path.parts
    }
    assert expected <= names


@pytest.mark.parametrize(
    ("word", "many", "note"), [("quick", 2, {"small_run": True}), ("test", 9, {}), ("sweep", 9, {})]
)
def test_a_measurement_is_small_where_it_is_asked_to_be_and_says_so(
    monkeypatch, capsys, word, many, note
):
    monkeypatch.setenv("WAYSAID_COUNTS", word)
    bench = script("bench_size")
    bench.tell({"seen": bench.sized(9, 2)})
    assert json.loads(capsys.readouterr().out) == {**note, "seen": many}
