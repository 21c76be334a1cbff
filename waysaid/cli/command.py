"""Arguments in, lines out: `waysaid`, `waysaid demo`, and the questions of `answers`."""

import argparse
import json
import os
import sys
from collections.abc import Callable, Iterator, Sequence
from dataclasses import dataclass
from pathlib import Path
from typing import NoReturn

from waysaid.cli.answers import (
    PICTURES,
    Answer,
    answer_draw,
    answer_links,
    answer_slips,
    answer_ways,
)
from waysaid.cli.bank import answer_bank, show_bank
from waysaid.cli.compose import answer_compose, show_compose
from waysaid.cli.evidence import answer_evidence, show_evidence
from waysaid.cli.given import BadInputError, Given, language_in
from waysaid.cli.hear import answer_hear, show_hear
from waysaid.cli.months import answer_months, show_months
from waysaid.cli.show import show_drawing, show_links, show_slips, show_ways
from waysaid.cli.slides import answer_slides, show_slides
from waysaid.cli.talk_file import answer_talk_file, show_talk_file
from waysaid.cli.year import answer_year, show_year
from waysaid.number import Language, Rest
from waysaid.strings import Curriculum
from waysaid.ways import Family

BAD_INPUT = 2
"""The exit status after bad input: part of the command's fixed form."""


@dataclass(frozen=True, slots=True)
class Question:
    """A question that can be asked: its answer, how people read it, what it needs."""

    answer: Callable[[Given], Answer]
    show: Callable[[Answer, Language], Iterator[str]]
    needs: tuple[str, ...]
    help: str


QUESTIONS = {
    "ways": Question(
        answer_ways, show_ways, ("problem",), "list the ways to work a problem in the head"
    ),
    "hear": Question(
        answer_hear, show_hear, ("problem", "said"), "read what a child said as steps"
    ),
    "slips": Question(
        answer_slips, show_slips, ("problem", "wrong"), "say what may lead to a wrong answer"
    ),
    "links": Question(
        answer_links, show_links, ("problems",), "say what connects the problems of a string"
    ),
    "compose": Question(
        answer_compose, show_compose, ("grade",), "write the best string for a wish"
    ),
    "year": Question(
        answer_year, show_year, ("grade", "out"), "lay out a year of talks for a grade"
    ),
    "bank": Question(answer_bank, show_bank, ("out",), "lay out a year for every grade"),
    "slides": Question(
        answer_slides, show_slides, ("problems", "out"), "write a string as slides to be changed"
    ),
    "talk-file": Question(
        answer_talk_file, show_talk_file, (), "write a string as a talk file, or look into one"
    ),
    "evidence": Question(
        answer_evidence, show_evidence, ("files", "out"), "write talk files as one table"
    ),
    "months": Question(
        answer_months, show_months, ("folder",), "count ways by family, grade and month"
    ),
    "draw": Question(answer_draw, show_drawing, ("problem",), "draw a way as SVG"),
}


def main(argv: Sequence[str] | None = None) -> int:
    """Run the command; return the exit status: 0, or 2 after bad input."""
    for stream in (sys.stdout, sys.stderr):
        if hasattr(stream, "reconfigure"):
            stream.reconfigure(errors="replace")
    try:
        asked = parser().parse_args(argv)
        return _run(asked)
    except BadInputError as error:
        print(f"waysaid: {error}", file=sys.stderr)
        return BAD_INPUT
    except BrokenPipeError:
        # Whoever was reading has gone; nothing is left to tell.
        os.dup2(os.open(os.devnull, os.O_WRONLY), sys.stdout.fileno())
        return 1


def _run(asked: argparse.Namespace) -> int:
    if asked.version:
        return _tell_version()
    if asked.command in (None, "demo"):
        return _launch(asked)
    if asked.command == "adduser":
        return _add_teacher(asked.name)
    if asked.lines is not None:
        return _answer_lines(asked)
    return _answer_one(asked)


def _tell_version() -> int:
    # Only here: a question must not wait for what is installed to be looked through.
    from importlib.metadata import version

    print(f"waysaid {version('waysaid')}")
    return 0


def _launch(asked: argparse.Namespace) -> int:
    # Only here: a question must not wait for the web.
    from waysaid.site.launch import launch

    demo = asked.command == "demo"
    return launch(demo=demo, port=asked.port, open_browser=not asked.no_browser)


def _add_teacher(name: str) -> int:
    from waysaid.site.launch import add_teacher

    return add_teacher(name, password_from_input=not sys.stdin.isatty())


def _answer_one(asked: argparse.Namespace) -> int:
    question = QUESTIONS[asked.command]
    given = {name: value for name, value in vars(asked).items() if value not in (None, [])}
    if any(name not in given for name in question.needs):
        raise BadInputError(f"{asked.command} needs {' and '.join(question.needs)}, or --lines.")
    answer = question.answer(given)
    if asked.command == "draw" and asked.out is not None:
        _write(asked.out, str(answer["svg"]))
        answer["out"] = asked.out
    if asked.json:
        print(json.dumps(answer))
    else:
        for line in question.show(answer, language_in(given)):
            print(line)
    return 0


def _answer_lines(asked: argparse.Namespace) -> int:
    """Answer a file of JSON objects, one a line; a bad one does not stop the others."""
    options = {name: vars(asked)[name] for name in ("all", "lang", "rest") if vars(asked).get(name)}
    status = 0
    for number, line in enumerate(_lines(asked.lines), start=1):
        try:
            answer = QUESTIONS[asked.command].answer({**options, **_object(line)})
        except BadInputError as error:
            answer, status = {"error": f"Line {number}: {error}"}, BAD_INPUT
        print(json.dumps(answer))
    return status


def _lines(name: str) -> Iterator[bytes]:
    """Yield the lines of a file, or of the standard input for `-`."""
    if name == "-":
        yield from sys.stdin.buffer
        return
    try:
        file = Path(name).open("rb")  # noqa: SIM115  closed below; only opening is to be caught
    except OSError as error:
        raise BadInputError(_trouble("read", name, error)) from None
    with file:
        yield from file


def _object(line: bytes) -> dict[str, object]:
    try:
        read = json.loads(line)
    except (ValueError, RecursionError):
        read = None
    if not isinstance(read, dict):
        raise BadInputError('a JSON object would fit here, such as {"problem": "37 + 25"}.')
    return read


def _write(name: str, said: str) -> None:
    try:
        Path(name).write_text(said, encoding="utf-8")
    except OSError as error:
        raise BadInputError(_trouble("write", name, error)) from None


def _trouble(verb: str, name: str, error: OSError) -> str:
    return f"cannot {verb} ‘{name}’ ({error.strerror}); a file to {verb} would fit here."


_SUCH_AS = ", ".join(
    f'"{one}"'
    for one in (
        "37 + 25",
        "7 + _ = 12",
        "16 / 3",
        "0.65 ? 0.7",
        "29 + 14 = 30 + 13 ?",
        "15%% of 80",
        "about 398 x 21",
        "image frame 10: 7",
    )
)


class _Parser(argparse.ArgumentParser):
    """Says what is wrong in one line, as everything else here does."""

    def error(self, message: str) -> NoReturn:
        raise BadInputError(f"{message}; {self.prog} --help lists what is accepted.")


def parser() -> argparse.ArgumentParser:
    """Return what reads the arguments; the reference pages print its help."""
    whole = _Parser(
        prog="waysaid",
        description="Hear how children worked something out. Without a command: open the app.",
    )
    whole.add_argument("--version", action="store_true", help="say which version it is, and end")
    _start_options(whole, None)
    commands = whole.add_subparsers(dest="command", metavar="COMMAND")
    demo = commands.add_parser("demo", help="open the app with an invented class")
    _start_options(demo, argparse.SUPPRESS)
    adduser = commands.add_parser("adduser", help="make a teacher's account on a school's server")
    adduser.add_argument("name", help="the name to sign in with")
    for name, question in QUESTIONS.items():
        _question_options(name, commands.add_parser(name, help=question.help))
    return whole


def _start_options(parser: argparse.ArgumentParser, unsaid: str | None) -> None:
    """Add the options of a start; for `demo` one that is unsaid leaves what stood before it."""
    no_browser = unsaid or False
    parser.add_argument("--port", type=_port, default=unsaid, help="the port to listen on")
    parser.add_argument(
        "--no-browser", action="store_true", default=no_browser, help="do not open a browser"
    )


def _port(said: str) -> int:
    number = int(said)
    if not 0 <= number <= 65535:
        raise ValueError(said)
    return number


def _question_options(name: str, parser: argparse.ArgumentParser) -> None:
    if name == "links":
        parser.add_argument("problems", nargs="*", help='such as "40 + 25" "37 + 25"')
        parser.add_argument("--noticed", metavar="WORDS", help="what a child noticed about them")
    elif name in ("slides", "talk-file"):
        _file_options(name, parser)
    elif name == "evidence":
        parser.add_argument("files", nargs="*", metavar="FILE", help="talk files")
        parser.add_argument("--out", metavar="TABLE", help="the file to write: .csv or .parquet")
    elif name == "months":
        parser.add_argument("folder", nargs="?", help="where grade=0 to grade=6 are, with Parquet")
    elif name == "compose":
        _wish_options(parser)
    elif name in ("year", "bank"):
        _year_options(name, parser)
    else:
        parser.add_argument("problem", nargs="?", help=f"such as {_SUCH_AS}")
    if name == "hear":
        parser.add_argument("said", nargs="?", help="the words, or shorthand")
    if name == "slips":
        parser.add_argument("wrong", nargs="?", help="the answer that was given")
    if name == "ways":
        parser.add_argument("--all", action="store_true", help="every way, not only 40")
    if name in ("ways", "slides"):
        parser.add_argument("--rest", help=f"what to do with a remainder: one of {', '.join(Rest)}")
    if name == "draw":
        parser.add_argument("--way", help=f"one of {', '.join(Family)}")
        parser.add_argument("--as", help=f"one of {', '.join(PICTURES)}")
        parser.add_argument("--out", metavar="FILE", help="the file to write")
    parser.add_argument("--lang", help=f"one of {', '.join(Language)}")
    parser.add_argument("--json", action="store_true", help="print one JSON object")
    parser.add_argument("--lines", metavar="FILE", help="a JSON object a line; - for what is piped")


def _file_options(name: str, parser: argparse.ArgumentParser) -> None:
    such = "string.pptx" if name == "slides" else "string.json"
    parser.add_argument("problems", nargs="*", help='such as "40 + 25" "37 + 25"')
    parser.add_argument("--out", metavar="FILE", help=f"the file to write, such as {such}")
    if name == "talk-file":
        parser.add_argument("--title", help="what the string is called")
        parser.add_argument("--grade", help="from 0 (kindergarten) to 6")
        parser.add_argument("--check", metavar="FILE", help="a talk file to look into")
        parser.add_argument("--schema", action="store_true", help="print the form as JSON Schema")


def _wish_options(parser: argparse.ArgumentParser) -> None:
    parser.add_argument("--grade", help="from 0 (kindergarten) to 6")
    parser.add_argument("--focus", help="the family that the string is about, by its slug")
    parser.add_argument("--length", help="how many problems, from 3 to 7; 5 unless said")
    parser.add_argument("--with", nargs="+", metavar="PROBLEM", help="what must be in it")
    parser.add_argument("--topic", help="what it is about; without a focus its first family")
    parser.add_argument("--start", nargs=1, metavar="PROBLEM", help="what it begins with")
    parser.add_argument("--within", help="the largest number it may have")
    parser.add_argument("--minutes", help="the time there is, in minutes")
    parser.add_argument("--number-line", action="store_true", help="ways along a number line")
    parser.add_argument("--surprise", action="store_true", help="the last problem comes unhelped")
    parser.add_argument("--alternatives", help="how many strings, each of another idea")
    parser.add_argument("--lately", nargs="+", metavar="PROBLEM", help="what must not be in it")
    parser.add_argument("--seed", help="chooses among strings that are as good; 1 unless said")


def _year_options(name: str, parser: argparse.ArgumentParser) -> None:
    if name == "year":
        parser.add_argument("--grade", help="from 0 (kindergarten) to 6")
        parser.add_argument("--calendar", metavar="FILE", help="the school's days, as iCalendar")
        parser.add_argument("--first", metavar="DATE", help="the first day of school")
        parser.add_argument("--last", metavar="DATE", help="the last day of school")
    parser.add_argument("--curriculum", help=f"one of {', '.join(Curriculum)}; ccss unless said")
    parser.add_argument("--seed", help="which of many such years; 1 unless said")
    parser.add_argument("--out", metavar="DIR", help="the folder to write into")
