"""How a child might say a way, in one line, with numerals."""

from collections.abc import Iterator
from fractions import Fraction
from itertools import groupby

from waysaid.number import (
    Blank,
    Exact,
    Expression,
    Language,
    Number,
    Operation,
    Order,
    Print,
    Sign,
    Span,
    Verdict,
    decimal,
    exact,
    has_point,
    negative,
    number_text,
)
from waysaid.number import text as number_print
from waysaid.ways.images.said import seen_opener, seen_whole
from waysaid.ways.phrases import PHRASES, Phrases
from waysaid.ways.said_parts import renamed_opener
from waysaid.ways.step import Kind, Step
from waysaid.ways.way import Way


def how_said(way: Way, language: Language) -> str:
    """Return one sentence that tells the way as a child might, with every number of its steps.

    The size of a single count is not said (`I counted on from 8: 9, 10`).
    """
    phrases = PHRASES[language]
    if way.seen and (seen := seen_whole(way, language)):
        return seen
    clauses = list(_clauses(way, phrases))
    if not clauses:
        return f"{_answer(way)}."
    opener = seen_opener(way, language) if way.seen else renamed_opener(way, language)
    opener = opener or _opener(way, phrases)
    told = phrases.then.join((", ".join(clauses[:-1]), clauses[-1])) if clauses[1:] else clauses[0]
    whole = f"{opener} {told}" if opener else told
    if isinstance(way.answer, Order | Verdict):
        whole += phrases.ends[way.answer]
    elif way.remainder is not None:
        left = way.remainder
        whole += phrases.left_over.format(groups=left.groups, left=left.left)
    elif way.number is not None and not _ends_with(way.steps[-1], way.number):
        whole += phrases.so.format(answer=_answer(way))
    return f"{whole[0].upper()}{whole[1:]}."


def _answer(way: Way) -> str:
    """Return the answer as numerals, or as the sign or word that it is."""
    if isinstance(way.answer, Order | Verdict | Span):
        return str(way.answer)
    pointed = any(has_point(step.equation) for step in way.steps)
    return number_text(decimal(way.answer) if pointed else way.answer, Print.TRUE)


def _ends_with(step: Step, answer: Exact) -> bool:
    result = step.equation.right
    return not isinstance(result, Operation | Blank) and exact(result) == answer


def _opener(way: Way, phrases: Phrases) -> str:
    opener = phrases.openers.get(way.family, "")
    first = way.steps[0].equation.left
    left = first.left if isinstance(first, Operation) else first
    return opener.format(left=number_print(left, Print.TRUE))


def _clauses(way: Way, phrases: Phrases) -> Iterator[str]:
    for run, group in groupby(way.steps, _count_size):
        steps = tuple(group)
        if run is None:
            for step in steps:
                yield _clause(way, step, phrases)
        else:
            yield _counted(run, steps, phrases)


def _count_size(step: Step) -> tuple[Sign, Number | Blank] | None:
    """Return the sign and size of a count; None for a step that is none."""
    left = step.equation.left
    if step.kind is not Kind.COUNT or not isinstance(left, Operation):
        return None
    return (left.sign, left.right) if not isinstance(left.right, Operation) else None


def _counted(run: tuple[Sign, Number | Blank], steps: tuple[Step, ...], phrases: Phrases) -> str:
    sign, hop = run
    start = steps[0].equation.left
    left = start.left if isinstance(start, Operation) else start
    table = phrases.counted if hop == 1 else phrases.skipped
    return table[sign].format(
        left=number_print(left, Print.TRUE),
        hop=number_print(hop, Print.TRUE),
        all=", ".join(_said(step.equation.right, phrases) for step in steps),
    )


def _clause(way: Way, step: Step, phrases: Phrases) -> str:
    equation = step.equation
    left, result = equation.left, equation.right
    if not isinstance(left, Operation):
        be = phrases.be[left != 1]
        return phrases.opened.format(left=_said(left, phrases), sum=_said(result, phrases), be=be)
    if not isinstance(result, (Operation, Blank)) and exact(result) < 0 <= (way.number or 0):
        owed = _said(negative(result), phrases)
        return phrases.owed.format(sum=_said(left, phrases), result=owed)
    if step.kind is Kind.SCALE and not isinstance(result, Operation):
        scaled = _doubled(left, phrases)
        if scaled:
            number, form = scaled
            be = phrases.be[result != 1]
            return form.format(number=number, result=_said(result, phrases), be=be)
    template = phrases.same if isinstance(result, Operation) else phrases.plain
    if (
        template is phrases.plain
        and not isinstance(left.left, Operation)
        and not isinstance(left.right, Operation)
    ):
        general = phrases.clauses.get((None, step.kind, left.sign), phrases.plain)
        template = phrases.clauses.get((way.family, step.kind, left.sign), general)
    return template.format(
        left=_said(left.left, phrases),
        right=_said(left.right, phrases),
        sum=_said(left, phrases),
        result=_said(result, phrases),
        be=phrases.be[result != 1],
    )


def _doubled(left: Operation, phrases: Phrases) -> tuple[str, str] | None:
    """Return the number that is doubled or halved, and how that is said; None for neither."""
    if left.sign is Sign.TIMES and 2 in (left.left, left.right):
        return _said(left.left if left.right == 2 else left.right, phrases), phrases.doubled
    if left.sign is Sign.OVER and left.right == 2:
        return _said(left.left, phrases), phrases.halved
    return None


def _said(expression: Expression, phrases: Phrases) -> str:
    """Return the expression with numerals for numbers, as they are written, and words for signs."""
    if not isinstance(expression, Operation):
        return number_print(expression, Print.TRUE)
    left, right = _said(expression.left, phrases), _said(expression.right, phrases)
    sign = Sign.OF if _is_part_of(expression) else expression.sign
    return f"{left} {phrases.signs[sign]} {right}"


def _is_part_of(expression: Operation) -> bool:
    """Tell whether it is a part of a number, said so whatever its sign: 1/4 of 60."""
    left = expression.left
    return expression.sign is Sign.TIMES and isinstance(left, Fraction) and 0 < left < 1
