"""A slip as a short note for the teacher alone: what may have happened, never a verdict."""

from fractions import Fraction

from waysaid.number import (
    Blank,
    Expression,
    Form,
    Language,
    Operation,
    Order,
    Print,
    Problem,
    Sign,
    Verdict,
    exact,
    has_form,
    said_text,
    text,
    value_of,
)
from waysaid.slips.slip import Slip, SlipName
from waysaid.slips.words import ADJUSTED, AGAINST, CARRIED, FACTS, NOTES, UNITS


def slip_note(slip: Slip, language: Language) -> str:
    """Return a short, tentative note: `the ten from 9 + 6 may have been lost`.

    A misremembered fact on top is told after it: `and 8 + 7 may have come out as 16`.
    """
    where = slip.steps[slip.at].left
    right = where.right if isinstance(where, Operation) else where
    note = _wording(slip, where, language)
    told = note.format(
        sum=_shown(slip, where, language),
        right=text(right, Print.TRUE, language),
        unit=_unit(where, language),
    )
    if slip.fact is None:
        return told
    fact = text(slip.fact.left, Print.TRUE, language), text(slip.fact.right, Print.TRUE, language)
    return told + FACTS[language].format(sum=fact[0], result=fact[1])


_HELD = frozenset(
    {
        SlipName.LONGER_LARGER, SlipName.SHORTER_LARGER, SlipName.IGNORE_POINT,
        SlipName.BIGGER_BOTTOM, SlipName.SMALLER_BOTTOM, SlipName.BIGGER_TOP,
        SlipName.DENOMINATOR_AFTER_POINT, SlipName.TOP_POINT_BOTTOM,
    }
)  # fmt: skip
"""Slips in which two numbers are held against each other."""


def _shown(slip: Slip, where: Expression, language: Language) -> str:
    """Return the step's work as text; two numbers that were held together as such."""
    if isinstance(slip.wrong, Order | Verdict) and slip.slug in _HELD:
        if isinstance(where, Operation):
            sides = text(where.left, Print.TRUE), text(where.right, Print.TRUE)
            return AGAINST[language].format(*sides)
        return text(slip.steps[slip.at], Print.TRUE, language)
    return text(where, Print.TRUE, language)


def _wording(slip: Slip, where: Expression, language: Language) -> str:
    """Return the words for a slip; two of them depend on the sign of the step."""
    sign = where.sign if isinstance(where, Operation) else None
    if slip.slug is SlipName.ADJUST_WRONG_WAY and sign in ADJUSTED[language]:
        return ADJUSTED[language][sign]
    if slip.slug is SlipName.DROP_CARRY and sign is not Sign.PLUS:
        return CARRIED[language]
    return NOTES[language][slip.slug]


def slip_answer(slip: Slip, problem: Problem, style: Print = Print.PLAIN) -> str:
    """Return the wrong answer as it may have been said: `6/14`, `2.50`, `4 r 4`, `<`."""
    last = slip.steps[-1].right
    numbers = not isinstance(last, Operation | Blank) and isinstance(slip.wrong, int | Fraction)
    if numbers and value_of(last) == slip.wrong:
        return text(last, style)
    return said_text(slip.wrong, problem, style)


def _unit(where: Expression, language: Language) -> str:
    """Return what goes to the next place from a step: the ten from 9 + 6, the whole from 3/4."""
    right = where.right if isinstance(where, Operation) else where
    if isinstance(right, Operation | Blank):
        return UNITS[language][1]
    pointed = has_form(right, Form.DECIMAL)
    if not pointed and not isinstance(right, int):
        return UNITS[language][0]
    size, place = abs(Fraction(exact(right))), 1
    while size >= 10:
        size, place = size / 10, place + 1
    while 0 < size < 1:
        size, place = size * 10, place - 1
    return UNITS[language].get(place, UNITS[language][0])
