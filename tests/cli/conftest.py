"""The command, run in this process."""

import json

import pytest

from waysaid.cli import main


@pytest.fixture
def run(capsys):
    """Run the command; give back the status and what it printed."""

    def ran(*argv):
        status = main(list(argv))
        printed = capsys.readouterr()
        return status, printed.out, printed.err

    return ran


@pytest.fixture
def asked(run):
    """Run the command with --json; give back the one object."""

    def ran(*argv):
        status, out, err = run(*argv, "--json")
        assert (status, err) == (0, "")
        return json.loads(out)

    return ran


@pytest.fixture
def answered(run, tmp_path):
    """Run a question over lines; give back the status and the objects."""

    def ran(question, *lines, options=()):
        file = tmp_path / "lines.jsonl"
        file.write_bytes(b"\n".join(line.encode() for line in lines))
        status, out, err = run(question, "--lines", str(file), *options)
        assert err == ""
        return status, [json.loads(line) for line in out.splitlines()]

    return ran
