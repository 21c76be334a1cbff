"""What a listener knows of a problem before a child speaks: its numbers, its ways, its slips."""

from collections.abc import Iterable
from dataclasses import dataclass, field
from fractions import Fraction
from functools import lru_cache
from typing import Any

from waysaid.hearing.draft import Draft
from waysaid.hearing.facts import Facts, facts_of
from waysaid.hearing.numerals import Numeral
from waysaid.hearing.spoken.frame import HOPS
from waysaid.hearing.turned import turned, turned_side
from waysaid.hearing.worth import worth
from waysaid.number import (
    Claim,
    Compare,
    Equation,
    Exact,
    Expression,
    Form,
    Image,
    ImageKind,
    Number,
    Operation,
    Problem,
    Sign,
    Written,
    decimal,
    exact,
    has_form,
    leaves,
    sides,
    written,
)
from waysaid.slips import foresee
from waysaid.ways import Family


@dataclass(frozen=True, slots=True)
class World:
    """Hypotheses for what is heard.

    `lefts` are the left sides of all steps of all ways, and `wrong` the steps of the slips to
    expect, both turned; `numbers` are those that stand in them. `signs` are the problem's own;
    `halves` the steps that halve the bottom of a fraction compared; `sizes` are those that a group
    may have, the rows of a picture among them.
    `unfinished` are the beginnings of slips that are no whole slip, in the order of their steps,
    and the slips that end on something else than their answer, as on what is left over; `slipped`
    are the other slips, whole.
    `pointed` is whether a number of the problem has a point, `parted` whether one is a fraction,
    `hop` the sign of a problem that only adds or only takes away, `whole` whether all
    its numbers are whole and nothing is shared out, `groups` whether it multiplies or divides,
    `base` the number that it takes a part of, where it takes one, `fractions` the top and bottom of
    each of two fractions compared, `digits` what is shared one after the other where whole
    numbers are divided on paper: the 9 and the 12 of 92 / 4; `midway` what ways come to before
    they end.
    """

    facts: Facts
    lefts: frozenset[Expression]
    wrong: frozenset[Equation]
    numbers: frozenset[Exact]
    signs: frozenset[Sign]
    unfinished: frozenset[tuple[Equation, ...]]
    slipped: frozenset[tuple[Equation, ...]]
    pointed: bool
    parted: bool
    hop: Sign | None
    whole: bool
    groups: bool
    halves: frozenset[Expression] = frozenset()
    sizes: tuple[Exact, ...] = ()
    base: Number | None = None
    fractions: tuple[tuple[int, int], ...] = ()
    digits: tuple[Exact, ...] = ()
    midway: frozenset[Exact] = frozenset()

    closed: dict[object, list[Any]] = field(default_factory=dict, compare=False, repr=False)
    """States, then what they become when closed, by all but cost, while a line is heard."""
    made: dict[object, Any] = field(default_factory=dict, compare=False, repr=False)
    """The steps that frames and their left sides make, while one line is heard."""
    costs: dict[object, int] = field(default_factory=dict, compare=False, repr=False)
    """What steps cost, by what was said of them, while one line is heard."""


@lru_cache(maxsize=32)
def world_of(problem: Problem) -> World:
    """Return what is known of the problem."""
    facts = facts_of(problem)
    equations = [step.equation for way in facts.ways for step in way.steps]
    foreseen = foresee(problem)
    wrong = [tuple(map(turned, slip.steps)) for slip in foreseen]
    slips = [step for steps in wrong for step in steps]
    ended = {
        steps
        for steps, slip in zip(wrong, foreseen, strict=True)
        if steps and slip.wrong in (steps[-1].right, None)
    }
    lefts = frozenset(turned_side(one.left) for one in equations)
    numbers = {value for one in (*equations, *slips) for value in _values(one)}
    signs = frozenset(sign for side in sides(problem) for sign in _signs(side))
    hops = signs.intersection(HOPS)
    return World(
        facts,
        lefts,
        frozenset(slips),
        frozenset(numbers) | facts.pieces | frozenset(facts.numbers) | _tops_and_bottoms(problem),
        signs,
        frozenset(steps[: end + 1] for steps in wrong for end in range(len(steps))) - ended,
        frozenset(ended),
        any(has_form(one, Form.DECIMAL) for one in facts.written),
        any(isinstance(one, Fraction) or has_form(one, Form.PARTS) for one in facts.written),
        next(iter(hops)) if len(hops) == 1 else None,
        Sign.OVER not in signs and all(isinstance(one, int) for one in facts.numbers),
        not signs.isdisjoint((Sign.TIMES, Sign.OVER, Sign.OF)),
        halves=_halves(problem),
        sizes=_sizes(problem),
        base=_base(facts.asked),
        fractions=_fractions(problem),
        digits=_digits(problem),
        midway=_midway(facts, wrong),
    )


def _midway(facts: Facts, slips: Iterable[tuple[Equation, ...]]) -> frozenset[Exact]:
    """Return what the steps of ways come to, and of slips all but the last: there one may stop.

    None of a count, where every number on the way is one.
    """
    steps = [
        step.equation for way in facts.ways if way.family != Family.COUNTING for step in way.steps
    ]
    found = (worth(one.right) for one in (*steps, *(one for slip in slips for one in slip[:-1])))
    return frozenset(one for one in found if one is not None and one != facts.answer)


def asks(side: Expression, world: World) -> bool:
    """Tell whether a side of a step is all that is asked, in either order of a sum or product."""
    asked = world.facts.asked
    return asked is not None and turned_side(side) == turned_side(asked)


def slip_begun(drafts: tuple[Draft, ...], world: World) -> bool:
    """Tell whether steps are the beginning of a slip to expect, and not its end."""
    return _steps(drafts) in world.unfinished


def slip_whole(drafts: tuple[Draft, ...], world: World) -> bool:
    """Tell whether steps are all of a slip to expect that comes to a wrong answer in several."""
    return len(drafts) > 1 and _steps(drafts) in world.slipped


def _steps(drafts: tuple[Draft, ...]) -> tuple[Equation, ...]:
    return tuple(turned(draft.equation) for draft in drafts)


def told_in_tens(numeral: Numeral, world: World) -> bool:
    """Tell whether a number told in its places is rather a product, as groups are worked with.

    Of 16 x 15, 24 tens are 24 x 10.
    """
    return numeral.places and bool(world.sizes) and not world.pointed


def as_written(side: Expression, world: World) -> Expression:
    """Return a side of a step with a point in its numbers, where those of the problem have one."""
    if isinstance(side, Operation):
        left, right = as_written(side.left, world), as_written(side.right, world)
        return Operation(side.sign, left, right)
    pointed = world.pointed and not world.parted and isinstance(side, Fraction)
    return decimal(side) if pointed and isinstance(side, Fraction) else side


def _base(asked: Expression | None) -> Number | None:
    """Return the number that a part is taken of; None where none is."""
    if not isinstance(asked, Operation) or asked.sign is not Sign.OF:
        return None
    return asked.right if isinstance(asked.right, Number) else None


def _digits(problem: Problem) -> tuple[Exact, ...]:
    """Return the digits, the rest before them, that long division shares one after the other."""
    if not isinstance(problem, Operation) or problem.sign is not Sign.OVER:
        return ()
    whole, size = problem.left, problem.right
    if not isinstance(whole, int) or not isinstance(size, int) or size < 1:
        return ()
    found, rest = [], 0
    for digit in str(whole):
        rest = 10 * rest + int(digit)
        found += [rest] if rest >= size else []
        rest %= size
    return tuple(found)


def _halves(problem: Problem) -> frozenset[Expression]:
    """Return the steps by which a fraction is held against a half: half of the five of 3/5.

    Or by which a number is found whose half is taken away: half of 72, for 72 - 36.
    """
    if isinstance(problem, Operation) and problem.sign is Sign.MINUS:
        whole, taken = worth(problem.left), worth(problem.right)
        bottoms = {whole} if whole and taken and whole == 2 * taken else set()
    elif isinstance(problem, Compare):
        bottoms = {bottom for _, bottom in _as_written(problem)}
    else:
        return frozenset()
    half = Fraction(1, 2)
    made = [Operation(Sign.OVER, one, 2) for one in bottoms - {2}]
    made += [Operation(Sign.TIMES, half, one) for one in bottoms - {2}]
    return frozenset(map(turned_side, made))


def _sizes(problem: Problem) -> tuple[Exact, ...]:
    """Return how large a group may be: a factor, what is divided by, the rows of an array.

    Of parts to divide by it is how many of them are in one whole.
    """
    if isinstance(problem, Image):
        return tuple(problem.numbers) if problem.kind is ImageKind.ARRAY else ()
    if isinstance(problem, Compare | Claim):
        return ()
    both = list(sides(problem))
    found = [one for side in both for one in _group_sizes(side)]
    if isinstance(problem, Equation) and any(_shares(side) for side in both):
        found += [side for side in both if not isinstance(side, Operation)]
    sizes = [exact(one) for one in found if isinstance(one, int) and one > 1]
    return tuple(dict.fromkeys(sizes))


def _in_a_whole(size: Expression) -> Expression:
    """Return how many of a part are in one whole, four for a quarter; a whole size itself."""
    part = exact(size) if isinstance(size, Written | Fraction) else size
    return part.denominator if isinstance(part, Fraction) and part.numerator == 1 else size


def _group_sizes(side: Expression) -> list[Expression]:
    if not isinstance(side, Operation):
        return []
    if side.sign is Sign.OVER:
        return [_in_a_whole(side.right)]
    return list(written(side)) if side.sign is Sign.TIMES else []


def _shares(side: Expression) -> bool:
    return isinstance(side, Operation) and side.sign is Sign.OVER


def _tops_and_bottoms(problem: Problem) -> frozenset[Exact]:
    """Return the numbers that fractions compared are written with: a half of the five of 3/5."""
    if not isinstance(problem, Compare):
        return frozenset()
    return frozenset(number for one in _as_written(problem) for number in one)


def _fractions(problem: Problem) -> tuple[tuple[int, int], ...]:
    """Return the tops and bottoms of two fractions that are compared; none of other numbers."""
    found = _as_written(problem) if isinstance(problem, Compare | Claim) else []
    return tuple(found) if len(found) == 2 else ()


def _as_written(problem: Compare | Claim) -> list[tuple[int, int]]:
    """Return the tops and bottoms of numbers compared, those of a fraction as it is written."""
    found = []
    for side in sides(problem):
        value = None if isinstance(side, Operation) else worth(side)
        if value is not None and value % 1:
            bottom = Fraction(value).denominator
            if isinstance(side, Written) and side.form is Form.PARTS:
                bottom = side.size
            found.append((int(value * bottom), bottom))
    return found


def _values(equation: Equation) -> set[Exact]:
    found = {*leaves(equation.left), *leaves(equation.right)}
    return {value for one in found if (value := worth(one)) is not None}


def _signs(side: Expression) -> set[Sign]:
    if not isinstance(side, Operation):
        return set()
    return {side.sign} | _signs(side.left) | _signs(side.right)
