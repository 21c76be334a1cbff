"""`waysaid talk-file`: written, looked into, and its form printed."""

import json

import jsonschema


def test_a_string_is_written_and_looked_into_and_fits_the_schema(run, asked, tmp_path):
    out = tmp_path / "string.json"
    told = asked("talk-file", "40 + 25", "image dice: 3 2", "--grade", "2", "--out", str(out))
    assert told == {
        "file": str(out),
        "title": "Number talk",
        "problems": 2,
        "children": 0,
        "events": 0,
    }
    assert asked("talk-file", "--check", str(out)) == told
    schema = asked("talk-file", "--schema")["schema"]
    assert json.loads(run("talk-file", "--schema")[1]) == schema
    jsonschema.validate(json.loads(out.read_bytes()), schema)
    assert run("talk-file", "--check", str(out))[1].count("\n") == 1


def test_what_cannot_be_done_is_said_in_one_line(run, tmp_path):
    bad = tmp_path / "bad.json"
    bad.write_text('{"format": "waysaid-talk", "version": 9}', encoding="utf-8")
    for given, word in (
        ((), "talk-file needs"),
        (("40 + 25",), "talk-file needs"),
        (("--check", str(tmp_path / "none.json")), "cannot read"),
        (("--check", str(bad)), "version ‘9’"),
        (("--check", str(bad), "--lang", "es"), "versión ‘9’"),
        (("40 + 25", "--grade", "9", "--out", str(tmp_path / "x")), "grade"),
    ):
        status, out, err = run("talk-file", *given)
        assert (status, out, err.count("\n")) == (2, "", 1)
        assert word in err
