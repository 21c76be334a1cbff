"""`waysaid evidence`: talk files to one table."""

from datetime import date

import pytest

from waysaid.paper import (
    ChildInFile,
    TalkFile,
    read_evidence_csv,
    read_evidence_parquet,
    talk_file_bytes,
)
from waysaid.talk import Record
from waysaid.talk import event as happened


@pytest.fixture
def files(tmp_path):
    """Two talks: one with a name and a day, one with neither."""
    opened = happened.TalkOpened("T", "en", "en", (happened.PlannedProblem("p", "40 + 25"),))
    events = (
        Record(1, "d", 0, opened, 1_790_000_000_000),
        Record(2, "d", 1, happened.ProblemShown("p"), 1_790_000_000_000),
        Record(3, "d", 2, happened.AnswerHeard("a", "p", "65", "c1"), 1_790_000_000_000),
    )
    named = TalkFile(
        "T", day=date(2026, 9, 14), children=(ChildInFile("c1", "Noor"),), events=events
    )
    bare = TalkFile("T", children=(ChildInFile("c1"),), events=events)
    made = []
    for name, talk in (("monday", named), ("tuesday", bare), ("plan", TalkFile("Plan"))):
        made.append(tmp_path / f"{name}.json")
        made[-1].write_bytes(talk_file_bytes(talk))
    return [str(each) for each in made]


@pytest.mark.parametrize(
    ("ending", "read"),
    [
        ("csv", lambda file: read_evidence_csv(file.read_bytes())),
        ("parquet", read_evidence_parquet),
    ],
)
def test_talk_files_become_one_table(asked, files, tmp_path, ending, read):
    out = tmp_path / f"shown.{ending}"
    told = asked("evidence", *files, "--out", str(out))
    assert told == {"files": 3, "rows": 2, "out": str(out)}
    shown = read(out)
    assert [(each.talk, each.child, each.right) for each in shown] == [
        ("monday", "Noor", True),
        ("tuesday", "tuesday:c1", True),
    ]
    assert [each.day for each in shown] == [date(2026, 9, 14), date(2026, 9, 21)]


def test_what_cannot_be_made_is_said_in_one_line(run, files, tmp_path):
    bad = tmp_path / "bad.json"
    bad.write_bytes(b"{}")
    out = str(tmp_path / "x.csv")
    for given, word in (
        ((*files,), "needs files and out"),
        ((*files, "--out", "x.xlsx"), ".csv or .parquet"),
        ((str(bad), "--out", out), "waysaid-talk"),
        ((str(tmp_path / "none.json"), "--out", out), "cannot read"),
        ((*files, "--out", str(tmp_path / "no" / "x.csv")), "cannot write"),
        ((*files, "--out", str(tmp_path / "no" / "x.parquet")), "cannot write"),
    ):
        status, said, err = run("evidence", *given)
        assert (status, said, err.count("\n")) == (2, "", 1)
        assert word in err
