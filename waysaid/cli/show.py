"""The answers as people read them: aligned, with true signs, at most 100 characters wide."""

import textwrap
from collections.abc import Iterable, Iterator
from typing import Any, cast

from waysaid.cli.answers import Answer
from waysaid.number import (
    About,
    Claim,
    Compare,
    Equation,
    Image,
    Language,
    Print,
    Problem,
    Unreadable,
    parse,
    parse_equation,
    parse_expression,
    text,
)

_WIDTH = 100

_NONE = {
    "ways": {
        Language.EN: "No way is written for such a problem yet.",
        Language.ES: "Aún no hay ninguna manera escrita para un problema así.",
    },
    "slips": {
        Language.EN: "No slip that we know of leads there.",
        Language.ES: "Ningún error que conozcamos lleva ahí.",
    },
    "links": {
        Language.EN: "Nothing that we know of connects them.",
        Language.ES: "No conocemos nada que los una.",
    },
}


def show_ways(answer: Answer, language: Language) -> Iterator[str]:
    """Yield the lines: effort, family and steps of each way, and under them how it may be said."""
    yield _headed(answer)
    listed = _rows(answer, "ways")
    wide = max((len(way["name"]) for way in listed), default=0)
    for way in listed:
        start = f"{way['effort']:6.1f}  {way['name']:<{wide}}  "
        yield ""
        if way["steps"]:
            yield from _row(start, _list(way["steps"]) + _ending(way))
            start = " " * len(start)
        yield from _row(start, way["said"])
    yield from _none(listed, "ways", language)


def show_slips(answer: Answer, language: Language) -> Iterator[str]:
    """Yield the lines: how likely, what may have happened, and the work that leads there."""
    yield _headed(answer)
    found = _rows(answer, "slips")
    for slip in found:
        start = f"  {slip['likely']:<9}  "
        yield ""
        yield from _row(start, f"{slip['note']} ({slip['slip']}; {slip['source']})")
        yield from _row(" " * len(start), _list(slip["steps"]))
    yield from _none(found, "slips", language)


def show_links(answer: Answer, language: Language) -> Iterator[str]:
    """Yield the lines: the problems, numbered from 1, and each link with what shows it."""
    for place, problem in enumerate(cast("list[str]", answer["problems"]), start=1):
        yield f"{place:>3}  {text(parse(problem), Print.TRUE)}"
    found = _rows(answer, "links")
    between = [", ".join(str(place + 1) for place in link["between"]) for link in found]
    wide = max(map(len, between), default=0)
    for link, numbers in zip(found, between, strict=True):
        start = f"  {numbers:<{wide}}  "
        yield ""
        yield from _row(start, f"{link['says']} ({link['kind']})")
        yield from _row(" " * len(start), _list(link["shows"]))
    yield from _none(found, "links", language)
    if "noticed" in answer:
        noticed = cast("dict[str, Any]", answer["noticed"])
        yield ""
        yield from _row("  ", f"“{noticed['words']}”")
        yield from _row("    ", noticed["says"])


def show_drawing(answer: Answer, _: Language) -> Iterator[str]:
    """Yield the drawing, unless it went into a file."""
    if "out" not in answer:
        yield str(answer["svg"]).removesuffix("\n")


def _rows(answer: Answer, name: str) -> list[dict[str, Any]]:
    return cast("list[dict[str, Any]]", answer[name])


def _headed(answer: Answer) -> str:
    problem = parse(str(answer["problem"]))
    joint = " =" if _worked_out(problem) else ":"
    return f"{text(problem, Print.TRUE)}{joint} {_true(str(answer['answer']))}"


def _worked_out(problem: Problem) -> bool:
    """Tell whether a problem is an expression, with its answer behind an equals sign."""
    return not isinstance(problem, Equation | Claim | Compare | About | Image)


def _ending(way: dict[str, Any]) -> str:
    """Return what a way says in the end, where that is not the last step's result."""
    last = str(way["steps"][-1]).rpartition(" = ")[2]
    answer = str(way["answer"])
    return "" if answer == last else f" → {_true(answer)}"


def _true(line: str) -> str:
    """Return an equation or an answer with true signs."""
    try:
        read = parse_equation(line) if " = " in line else parse_expression(line)
    except Unreadable:
        return line
    return text(read, Print.TRUE)


def _list(equations: Iterable[str]) -> str:
    """Return equations on one line, each kept whole where the line is broken."""
    return ", ".join(_true(one).replace(" ", "\u00a0") for one in equations)


def _row(start: str, words: str) -> Iterator[str]:
    rest = " " * len(start)
    for line in textwrap.wrap(words, _WIDTH, initial_indent=start, subsequent_indent=rest):
        yield line.replace("\u00a0", " ")


def _none(found: list[dict[str, Any]], name: str, language: Language) -> Iterator[str]:
    if not found:
        yield ""
        yield _NONE[name][language]
