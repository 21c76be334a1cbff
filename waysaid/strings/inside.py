"""The link of a problem that is a step of another's way."""

from fractions import Fraction
from functools import lru_cache

from waysaid.number import Equation, Expression, Operation, Problem, Sign, arithmetic, exact, text
from waysaid.strings.factor_pairs import changed_factors
from waysaid.strings.link import Link, LinkKind, Saying
from waysaid.strings.meets import places_in
from waysaid.strings.show import change
from waysaid.strings.sight import Sight
from waysaid.ways import Family, Way, ways

NOT_INSIDE = frozenset({Family.KNOWN_FACT, Family.COUNTING})
"""Ways whose steps are no smaller problem of their own. Our choice."""


def inside_link(part: Sight, whole: Sight) -> Link | None:
    """Return the link by which one problem is a step of the other's best way that has it.

    A part of a number is also met as its quotient (25% of 80 as 80 / 4), and a product as the one
    that another has a single group more than: both our choice.
    """
    asked = arithmetic(part.problem)
    if asked is None or isinstance(asked, Equation) or part.filled == whole.filled:
        return None
    steps = (
        _steps_with(part.filled, whole.problem, asked)
        or _as_quotient(part, whole.problem)
        or _one_group_less(part, whole)
    )
    if not steps:
        return None
    return Link(
        LinkKind.INSIDE_A_WAY,
        (min(part.at, whole.at), max(part.at, whole.at)),
        steps,
        Saying.INSIDE,
        (part.at + 1, whole.at + 1),
        tuple((part.at, place) for place in places_in(part)),
    )


@lru_cache(maxsize=256)
def _told(problem: Problem) -> tuple[tuple[Way, tuple[str, ...]], ...]:
    """Return the ways of a problem that others may be inside of, each with its steps as text."""
    return tuple(
        (way, tuple(step.text for step in way.steps))
        for way in ways(problem)
        if way.family not in NOT_INSIDE
    )


def _steps_with(equation: str, whole: Problem, asked: Expression | None = None) -> tuple[str, ...]:
    """Return the steps of the first way that has an equation among them; () where none has.

    With `asked` a step that works out just that will do, however its result is written; one that
    only makes another problem of it, as 11 - 2 = 10 - 1, will not.
    """
    for way, steps in _told(whole):
        works = asked is not None and any(_works_out(step.equation, asked) for step in way.steps)
        if works or equation in steps:
            return steps
    return ()


def _works_out(step: Equation, asked: Expression) -> bool:
    """Tell whether a step says what something comes to."""
    return step.left == asked and not isinstance(step.right, Operation)


def _as_quotient(part: Sight, whole: Problem) -> tuple[str, ...]:
    """Return the problem and the steps that have it as a quotient: 10% of 60 as 60 / 10."""
    if [term.sign for term in part.factors] != [Sign.TIMES, Sign.TIMES]:
        return ()
    for one, other in (part.factors, part.factors[::-1]):
        by = exact(1 / Fraction(one.size)) if one.size else 0
        if isinstance(by, int) and by > 1:
            quotient = Equation(Operation(Sign.OVER, other.shown, by), part.total)
            steps = _steps_with(text(quotient), whole)
            return (part.filled, *steps) if steps else ()
    return ()


def _one_group_less(part: Sight, whole: Sight) -> tuple[str, ...]:
    """Return the problem and the one group more that makes it the other: 25 x 12 and 25 x 13."""
    pairs = changed_factors(part, whole)
    if pairs is None or len(pairs) != 1 or "=" in part.form:
        return ()
    ((old, new),) = pairs
    if old.sign is not Sign.TIMES or new.size - old.size != 1 or len(part.factors) != 2:
        return ()
    if any(term.sign is Sign.OVER for term in part.factors):
        return ()
    return (part.filled, change(part.shown, whole.shown))
