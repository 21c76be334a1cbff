"""What the desk shows of a reading: what was said and what is implied, and what else it may be."""

from typing import Any

from waysaid.hearing import Part, Reading, Told
from waysaid.number import BLANK, Expression, Language, Operation, Print, sign_text, text

MOST_RIVALS = 3
"""Runners-up to choose from: as many as a line takes in (our choice)."""
LEAST_SURE = 5
"""A runner-up with a smaller share in 100 is not worth a look (our choice)."""
SPACE = "▢"
"""What stands for a number that nobody said and nothing implies."""


def parts_of(told: Told, language: Language) -> list[dict[str, Any]]:
    """Return a step as stretches of text, each said or `implied`; what nobody knows is a space."""
    equation = told.step.equation
    pieces = _side(equation.left, language)
    if equation.right is not BLANK:
        made = text(equation.right, Print.TRUE, language)
        pieces += [("=", Part.RESULT), (made, Part.RESULT)]
    parts: list[dict[str, Any]] = []
    for piece, part in pieces:
        implied = part in told.unsaid
        if parts and parts[-1]["implied"] is implied:
            parts[-1]["text"] += f" {piece}"
        else:
            parts.append({"text": piece, "implied": implied})
    return parts


def _side(side: Expression, language: Language) -> list[tuple[str, Part]]:
    whole = text(side, Print.TRUE, language).replace(BLANK.value, SPACE)
    if not isinstance(side, Operation):
        return [] if side is BLANK else [(whole, Part.LEFT)]
    sign = sign_text(side.sign, Print.TRUE, language)
    first, _, last = whole.rpartition(f" {sign} ")
    pieces = [(first, Part.LEFT), (sign, Part.OP), (last, Part.RIGHT)]
    return pieces if first else [(whole, Part.LEFT)]


def taken_back(reading: Reading) -> list[str]:
    """Return the stretches of words that were taken back."""
    stretches = (reading.words[slice(*span)].strip() for span in reading.dropped)
    return [stretch for stretch in stretches if stretch]


def rivals_of(reading: Reading) -> list[Reading]:
    """Return the runners-up that are worth a look, as readings of the same words, surest first."""
    worth = [rival for rival in reading.rivals if rival.sure >= LEAST_SURE]
    return [
        Reading(rival.told, rival.answer, rival.family, reading.words, rival.sure)
        for rival in worth[:MOST_RIVALS]
    ]
