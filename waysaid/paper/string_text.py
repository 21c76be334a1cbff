"""A string as plain text that a colleague can paste: a problem a line, its reason behind a bar."""

from collections.abc import Sequence

from waysaid.number import Problem, text

BAR = "|"
"""Stands between a problem and its reason; no problem has one in it."""


def string_text(problems: Sequence[Problem], why: Sequence[str] = ()) -> str:
    """Return the lines: `37 + 25 | forty is near`; a problem with no reason stands by itself.

    `why` are the reasons of the first problems; breaks and wide gaps in them become one space.
    """
    reasons = [*why, *[""] * (len(problems) - len(why))]
    lines = []
    for problem, reason in zip(problems, reasons, strict=False):
        said = " ".join(reason.split())
        lines.append(f"{text(problem)} {BAR} {said}" if said else text(problem))
    return "".join(f"{line}\n" for line in lines)


def string_line(line: str) -> tuple[str, str]:
    """Return the problem of a line as it was typed, and the reason behind it, or nothing."""
    typed, _, why = line.partition(BAR)
    return typed.strip(), " ".join(why.split())
