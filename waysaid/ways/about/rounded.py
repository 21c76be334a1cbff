"""The easier problem worked out: 400 x 20 = 8000; and the same with a part put right."""

from collections.abc import Iterator
from enum import Enum

from waysaid.number import (
    Equation,
    Expression,
    Form,
    Operation,
    Sign,
    as_written_in,
    exact,
    has_form,
    leaves,
    value_of,
    written,
)
from waysaid.ways.about.shape import Estimate
from waysaid.ways.plan import Plan
from waysaid.ways.step import Kind, Step, worked


def plans(problem: Estimate) -> Iterator[Plan]:
    """Yield each easier problem, and the nearer one with the first rounding put right."""
    if _of_parts(problem.asked):
        return
    for easier in problem.easier:
        yield _slug(problem.asked, easier), (_made(easier),)
    yield from _nearer(problem)


def to_landmarks(problem: Estimate) -> Iterator[Plan]:
    """Yield each easier problem where fractions or percents go to landmarks."""
    if _of_parts(problem.asked):
        for easier in problem.easier:
            yield _slug(problem.asked, easier), (_made(easier),)


def _of_parts(expression: Expression) -> bool:
    return any(
        isinstance(exact(leaf), int) is False and not _pointed(leaf)
        for leaf in written(expression)
        if not isinstance(leaf, Enum)
    )


def _pointed(leaf: object) -> bool:
    return has_form(leaf, Form.DECIMAL)


def _slug(asked: Expression, easier: Expression) -> str:
    """Tell the roundings of one problem apart by what is rounded to what."""
    old, new = tuple(leaves(asked)), tuple(leaves(easier))
    changed = [str(one) for before, one in zip(old, new, strict=False) if before != one]
    return "rounded-to-" + "-and-".join(changed).replace("/", "-over-") if changed else "as-it-is"


def _made(easier: Expression) -> Step:
    value = value_of(easier)
    return Step(Kind.JOIN, Equation(easier, as_written_in(value, easier)))


def _nearer(problem: Estimate) -> Iterator[Plan]:
    """Yield 400 x 20 = 8000, then 400 x 1 = 400 more: one number rounded, the other in parts."""
    asked = problem.asked
    for easier in problem.easier:
        if not isinstance(easier, Operation) or not isinstance(asked, Operation):
            continue
        left, right = easier.left, asked.right
        if easier.sign is not Sign.TIMES or easier.right != right:
            continue
        if not isinstance(left, int) or not isinstance(right, int) or right < 10 or not right % 10:
            continue
        big = worked(Kind.GROUP, Sign.TIMES, left, right - right % 10)
        small = worked(Kind.GROUP, Sign.TIMES, left, right % 10)
        total = worked(Kind.JOIN, Sign.PLUS, left * (right - right % 10), left * (right % 10))
        yield f"{_slug(asked, easier)}-in-parts", (big, small, total)
