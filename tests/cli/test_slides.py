"""`waysaid slides`: a file that can be opened, and one line for what cannot be made."""

import pptx


def test_a_string_is_written_as_slides(run, tmp_path):
    out = tmp_path / "string.pptx"
    assert run("slides", "40 + 25", "37 + 25", "--out", str(out)) == (
        0,
        f"The slides are in {out}.\n",
        "",
    )
    assert len(pptx.Presentation(str(out)).slides) == 4


def test_what_cannot_be_made_is_said_in_one_line(run, tmp_path):
    for given, word in (
        (("--out", "x.pptx"), "slides needs problems and out"),
        (("40 + 25",), "slides needs problems and out"),
        (("40 ~ 25", "--out", str(tmp_path / "x.pptx")), "place 4"),
        (("40 + 25", "--out", str(tmp_path)), "cannot write"),
        (["1 + 1"] * 13 + ["--out", "x.pptx"], "from 1 to 12"),
    ):
        status, out, err = run("slides", *given)
        assert (status, out, err.count("\n")) == (2, "", 1)
        assert word in err
    assert not list(tmp_path.iterdir())
