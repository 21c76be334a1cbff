"""The command line: one problem, a file of them, bad input, and what starts the app."""

import json
import subprocess
import sys
import tomllib
import types
from xml.etree import ElementTree as ET

import pytest
from hypothesis import given
from hypothesis import strategies as st

from tests.hearing.problems import seeded
from tests.whole.house import ROOT
from waysaid.cli.answers import MOST_WAYS, chosen
from waysaid.cli.command import QUESTIONS, Question
from waysaid.cli.given import BadInputError
from waysaid.number import parse, parse_equation, text
from waysaid.ways import Family, Way, ways


def test_ways_are_listed_best_first_as_json(asked):
    found = asked("ways", "37+25")
    assert (found["problem"], found["answer"]) == ("37 + 25", "62")
    bridge = next(way for way in found["ways"] if way["steps"] == ["37 + 3 = 40", "40 + 22 = 62"])
    assert bridge["family"] == "bridge"
    efforts = [way["effort"] for way in found["ways"]]
    assert efforts == sorted(efforts)


def test_each_way_in_json_is_a_way_of_the_problem(asked):
    for problem in seeded(14):
        found = asked("ways", text(problem), "--all")
        foreseen = [[step.text for step in way.steps] for way in ways(problem)]
        assert [way["steps"] for way in found["ways"]] == foreseen


@pytest.mark.parametrize(("language", "name"), [("en", "give and take"), ("es", "dar y tomar")])
def test_ways_are_named_in_the_language_asked_for(asked, language, name):
    found = asked("ways", "37 + 25", "--lang", language)
    assert name in {way["name"] for way in found["ways"]}


def test_at_most_forty_ways_are_listed_unless_all_are_asked_for(asked):
    listed = asked("ways", "439 - 184")["ways"]
    every = asked("ways", "439 - 184", "--all")["ways"]
    assert len(listed) == MOST_WAYS < len(every)
    assert {way["family"] for way in listed} == {way["family"] for way in every}


families = st.sampled_from(list(Family))
some_ways = st.lists(st.builds(Way, families, st.sampled_from("ab"), st.just(()), st.integers()))


@given(some_ways, st.integers(0, 40))
def test_the_chosen_ways_keep_their_order_and_every_family_first(found, most):
    kept = chosen(found, most)
    assert len(kept) == min(most, len(found))
    rest = list(found)
    for way in kept:
        rest = rest[rest.index(way) + 1 :]
    kinds = {way.family for way in found}
    assert len({way.family for way in kept}) == min(most, len(kinds))
    variants = {(way.family, way.variant) for way in found}
    if most >= len(kinds):
        assert len({(way.family, way.variant) for way in kept}) == min(most, len(variants))


def test_ways_are_shown_to_people_with_true_signs(run):
    status, out, _ = run("ways", "62 - 25")
    assert status == 0
    assert out.startswith("62 − 25 = 37\n")
    assert "62 − 20 = 42, 42 − 5 = 37" in out
    assert all(len(line) <= 100 for line in out.splitlines())


def test_ways_of_a_missing_number_are_shown_with_the_number(run):
    assert run("ways", "7 + _ = 12")[1].startswith("7 + _ = 12: 5\n")


NO_WAYS = "123456789 x 987654321"
"""Nobody works this in the head."""


def test_a_problem_without_ways_says_so_and_is_no_error(run, asked):
    found = asked("ways", NO_WAYS)
    assert (found["problem"], found["ways"]) == (NO_WAYS, [])
    assert "No way is written" in run("ways", NO_WAYS)[1]


def test_slips_say_what_may_have_happened(asked, run):
    found = asked("slips", "52 - 38", "26")
    assert (found["problem"], found["answer"]) == ("52 - 38", "26")
    assert found["slips"][0]["slip"] == "smaller-from-larger"
    assert found["slips"][0]["likely"] == "often"
    assert found["slips"][0]["source"] == "brown-burton1978"
    assert found["slips"][0]["steps"] == ["50 - 30 = 20", "8 - 2 = 6", "20 + 6 = 26"]
    assert "8 − 2 = 6" in run("slips", "52 - 38", "26")[1]
    assert "No slip" in run("slips", "52 - 38", "14")[1]


def test_a_wrong_answer_may_be_below_zero(asked):
    assert asked("slips", "3 - 2", "-5")["answer"] == "-5"


def test_links_say_what_connects_a_string(asked, run):
    found = asked("links", "40 + 25", "37 + 25", "37 + 28")["links"]
    first = found[0]
    assert (first["kind"], first["between"]) == ("one-changes", [0, 1])
    assert first["shows"] == ["40 - 3 = 37", "65 - 3 = 62"]
    assert first["says"]
    assert "one-changes" in run("links", "40 + 25", "37 + 25")[1]
    assert "Nothing" in run("links", "11 + 13", "700 - 250")[1]


def test_links_match_what_a_child_noticed(asked, run):
    string = ("40 + 25", "37 + 25", "37 + 28")
    assert "noticed" not in asked("links", *string)
    found = asked("links", *string, "--noticed", "the 25 keeps coming back")["noticed"]
    assert found["link"]["kind"] == "same-number"
    assert found["link"]["between"] == [0, 1]
    assert found["says"] == "25 comes back."
    kept = asked("links", *string, "--noticed", "todos dan 65", "--lang", "es")["noticed"]
    assert kept["link"] is None
    assert kept["words"] == "todos dan 65"
    said = run("links", *string, "--noticed", "they all make 65")[1]
    assert said.endswith("“they all make 65”\n    Kept as said; not one that algebra proves.\n")


def test_a_drawing_goes_into_its_file(run, tmp_path):
    file = tmp_path / "f.svg"
    options = ("--way", "bridge", "--as", "number-line", "--out", str(file))
    assert run("draw", "37 + 25", *options) == (0, "", "")
    drawn = file.read_text(encoding="utf-8")
    assert ET.fromstring(drawn).tag == "{http://www.w3.org/2000/svg}svg"
    assert run("draw", "37 + 25", *options[:4])[1] == drawn


def test_a_drawing_is_of_the_way_that_was_named(asked):
    found = asked("draw", "62 - 25", "--way", "add-up", "--as", "number-line")
    assert (found["way"], found["as"]) == ("add-up", "number-line")
    assert "25" in found["svg"]


def test_the_equations_of_the_best_way_are_drawn_where_nothing_else_is_named(asked):
    found = asked("draw", "37 + 25")
    assert (found["way"], found["as"]) == (ways(parse("37 + 25"))[0].family, "equations")


BAD = [
    (("ways", "37 & 25"), "Cannot read ‘&’ at place 4 of ‘37 & 25’"),
    (("ways", ""), "There is nothing to read: a problem such as 37 + 25"),
    (("ways",), "ways needs problem, or --lines"),
    (("ways", "37 & 25", "--lang", "es"), "No se puede leer «&» en el lugar 4 de «37 & 25»"),
    (("ways", "7 + 5 = 12"), "one blank in an equation"),
    (("ways", "37 + 25", "--lang", "xx"), "these are: en, es"),
    (("ways", "37 + 25", "--lines", "/no/such/file"), "cannot read ‘/no/such/file’"),
    (("ways", "--lines", "/"), "cannot read ‘/’"),
    (("ways", "37", "+", "25"), "unrecognized arguments"),
    (("slips", "52 - 38"), "slips needs problem and wrong"),
    (("slips", "52 - 38", "about 3"), "Cannot read ‘about’"),
    (("slips", "52 - 38", "1 + 1"), "a number such as 26"),
    (("links",), "links needs problems"),
    (("links", "37 + 25"), "from 2 to 20 problems"),
    (("links", *["1 + 1"] * 21), "from 2 to 20 problems"),
    (("links", "37 + 25", "40 +"), "Cannot read the end of ‘40 +’"),
    (("draw", "37 + 25", "--way", "shift-both"), "there are: bridge"),
    (("draw", "37 + 25", "--way", "magic"), "‘magic’ is not a way; these are: counting"),
    (("draw", "37 + 25", "--as", "poem"), "‘poem’ is not a picture"),
    (("draw", "37 + 25", "--as", "words"), "these suit it: equations"),
    (("draw", "372 + 256", "--as", "ten-frame"), "these suit it: equations"),
    (("draw", NO_WAYS), "no way is known"),
    (("ways", "16 / 3", "--rest", "round"), "these are: left-over, fraction, decimal"),
    (("draw", "37 + 25", "--out", "/no/such/folder/f.svg"), "cannot write"),
    (("sing", "37 + 25"), "invalid choice: 'sing'"),
    (("--port", "many"), "argument --port"),
    (("demo", "--port", "70000"), "argument --port"),
]


@pytest.mark.parametrize(("argv", "said"), BAD)
def test_bad_input_is_one_clear_line_and_status_2(run, argv, said):
    status, out, err = run(*argv)
    assert (status, out) == (2, "")
    assert said in err
    assert err.startswith("waysaid: ")
    assert err.endswith(".\n")
    assert err.count("\n") == 1


def test_a_line_in_gives_a_line_out_in_the_same_order(answered):
    status, found = answered("ways", '{"problem": "37 + 25"}', '{"problem": "62 - 25"}')
    assert status == 0
    assert [one["answer"] for one in found] == ["62", "37"]


def test_a_bad_line_has_its_error_in_place_and_the_rest_are_answered(answered):
    status, found = answered(
        "slips",
        '{"problem": "52 - 38", "wrong": "26"}',
        "nonsense",
        "",
        "[1, 2]",
        '{"problem": 37}',
        '{"problem": "52 - 38", "wrong": 26, "lang": "es"}',
        '{"problem": "52 - 38", "wrong": "26", "lang": 7}',
        '{"problem": ["52 - 38"], "wrong": "26"}',
        "[" * 5000,
        '{"problem": ' + "9" * 5000 + "}",
        '{"problem": true}',
    )
    assert status == 2
    assert ["error" in one for one in found] == [False, *[True] * 4, False, *[True] * 5]
    assert found[1]["error"].startswith("Line 2: a JSON object would fit here")


def test_a_line_that_is_not_utf_8_is_a_bad_line(run, tmp_path):
    file = tmp_path / "lines.jsonl"
    file.write_bytes(b'\xff\xfe\n{"problem": "1 + 1"}\n')
    status, out, _ = run("ways", "--lines", str(file))
    assert status == 2
    assert ["error" in json.loads(line) for line in out.splitlines()] == [True, False]


def test_options_hold_for_every_line_unless_it_says_otherwise(answered):
    _, found = answered(
        "ways",
        '{"problem": "439 - 184"}',
        '{"problem": "37 + 25", "lang": "en"}',
        options=("--lang", "es", "--all"),
    )
    assert len(found[0]["ways"]) > MOST_WAYS
    assert "dar y tomar" not in {way["name"] for way in found[1]["ways"]}
    assert "hacer puente" in {way["name"] for way in found[0]["ways"]}


def test_drawings_and_links_are_answered_by_the_line_too(answered):
    _, drawn = answered("draw", '{"problem": "37 + 25", "way": "jump", "as": "number-line"}')
    assert drawn[0]["svg"].startswith("<svg")
    _, linked = answered("links", '{"problems": ["40 + 25", "37 + 25"]}')
    assert linked[0]["links"]


json_values = st.recursive(
    st.one_of(st.none(), st.booleans(), st.integers(), st.floats(), st.text()),
    lambda inner: st.one_of(st.lists(inner, max_size=3), st.dictionaries(st.text(), inner)),
    max_leaves=4,
)
problem_like = st.one_of(
    st.sampled_from(["37 + 25", "7 + _ = 12", "3/4 + 1", "2 x 3"]), json_values
)
objects = st.fixed_dictionaries(
    {},
    optional={
        "problem": problem_like,
        "wrong": problem_like,
        "problems": st.one_of(st.lists(problem_like, max_size=3), json_values),
        "lang": st.one_of(st.sampled_from(["en", "es"]), json_values),
        "way": st.one_of(st.sampled_from(Family), json_values),
        "as": json_values,
        "all": json_values,
    },
)


@given(st.sampled_from(list(QUESTIONS.values())), objects)
def test_any_object_is_answered_or_refused_in_one_line(question: Question, given_object):
    try:
        answer = question.answer(given_object)
    except BadInputError as error:
        refused = str(error)
        assert refused
        assert "\n" not in refused
    else:
        assert json.loads(json.dumps(answer)) == answer


def test_every_equation_that_is_printed_can_be_read(asked):
    for way in asked("ways", "357 - 168", "--all")["ways"]:
        for step in way["steps"]:
            assert text(parse_equation(step)) == step


@pytest.fixture
def started(monkeypatch):
    """Stand in for the app: note how it was started."""
    seen = []
    stand_in = types.ModuleType("waysaid.site.launch")
    stand_in.launch = lambda **how: seen.append(how) or 0
    monkeypatch.setitem(sys.modules, "waysaid.site.launch", stand_in)
    return seen


@pytest.mark.parametrize(
    ("argv", "how"),
    [
        ((), {"demo": False, "port": None, "open_browser": True}),
        (("demo",), {"demo": True, "port": None, "open_browser": True}),
        (
            ("demo", "--port", "8200", "--no-browser"),
            {"demo": True, "port": 8200, "open_browser": False},
        ),
        (
            ("--port", "8200", "--no-browser", "demo"),
            {"demo": True, "port": 8200, "open_browser": False},
        ),
        (("--port", "8200", "--no-browser"), {"demo": False, "port": 8200, "open_browser": False}),
    ],
)
def test_the_app_is_started_as_asked(run, started, argv, how):
    assert run(*argv) == (0, "", "")
    assert started == [how]


def test_the_version_is_that_of_the_package(run, started):
    project = tomllib.loads((ROOT / "pyproject.toml").read_text(encoding="utf-8"))["project"]
    assert run("--version") == (0, f"waysaid {project['version']}\n", "")
    assert started == []


def test_the_command_answers_from_a_process_of_its_own():
    ran = subprocess.run(
        [sys.executable, "-m", "waysaid", "ways", "37 + 25", "--json"],
        capture_output=True,
        text=True,
        check=True,
    )
    assert json.loads(ran.stdout)["answer"] == "62"
    assert ran.stderr == ""


def test_a_question_does_not_load_the_web():
    asks = "from waysaid.cli import main; main(['ways', '37 + 25'])"
    shows = "import sys; sys.exit('django' in sys.modules or 'waysaid.site' in sys.modules)"
    subprocess.run([sys.executable, "-c", f"{asks}; {shows}"], capture_output=True, check=True)


def test_lines_can_be_piped_in():
    ran = subprocess.run(
        [sys.executable, "-m", "waysaid", "ways", "--lines", "-"],
        input=b'{"problem": "37 + 25"}\n{}\n',
        capture_output=True,
        check=False,
    )
    assert ran.returncode == 2
    assert [sorted(json.loads(line))[0] for line in ran.stdout.splitlines()] == ["answer", "error"]


def test_a_reader_who_has_gone_is_no_trouble():
    with subprocess.Popen(
        [sys.executable, "-m", "waysaid", "ways", "439 - 184"],
        stdout=subprocess.PIPE,
        stderr=subprocess.PIPE,
    ) as going:
        going.stdout.close()
        assert b"Traceback" not in going.stderr.read()
