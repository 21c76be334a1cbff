"""Which of a problem's ways the steps as said belong to.

The same equations first; then the same but for order and turned-round sums; then the same but for
the results, so that wrong arithmetic still shows its way; then part of the ways of one family.
"""

from collections import Counter
from collections.abc import Iterable, Iterator
from dataclasses import dataclass
from fractions import Fraction
from functools import lru_cache
from itertools import repeat
from typing import Any

from waysaid.hearing.draft import Draft
from waysaid.hearing.facts import Facts, facts_of
from waysaid.hearing.names import Names
from waysaid.hearing.shape import shaped
from waysaid.hearing.turned import turned, turned_side
from waysaid.number import (
    BLANK,
    Blank,
    Equation,
    Exact,
    Expression,
    NoValue,
    Operation,
    Problem,
    Sign,
    blanks,
    chain,
    exact,
    leaves,
    value_of,
)
from waysaid.ways import Family, Kind, Step, Way

_Said = tuple[Equation, ...]
_Begun = tuple[Sign, Exact | Blank]


@dataclass(frozen=True, slots=True)
class Match:
    """The steps with their kinds, the family, and whether they stop before the answer.

    That is before the end of a way, or at the end of one that ends on something else, as on what is
    left over.
    """

    steps: tuple[Step, ...]
    family: Family | None
    stops_short: bool


def matched(drafts: tuple[Draft, ...], facts: Facts) -> Match:
    """Return the steps as kinds of move, and the family that explains them, or None."""
    said = tuple(draft.equation for draft in drafts)
    if not said:
        return Match((), None, False)
    names = _known(facts.problem).names.copy()
    apart = tuple(part for equation in said for part in _taken_apart(equation))
    way = _whole_way(said, facts, names)
    if way is None and apart != said:
        way = _whole_way(apart, facts, names)
    family = way.family if way else _family(drafts, apart, facts, names)
    kinds = _in_order(said, way) or _kinds(drafts, said, (way, family), facts, names)
    steps = tuple(Step(kind, equation) for kind, equation in zip(kinds, said, strict=True))
    return Match(steps, family, _stops_short(said, facts) if way is None else _ends_elsewhere(way))


def _taken_apart(equation: Equation) -> Iterator[Equation]:
    """Yield the steps that 10 x 6 + 4 x 6 = 84 says at once: both products, and their sum."""
    terms = list(_terms(equation.left))
    products = [term for _, term in terms if isinstance(term, Operation)]
    if len(terms) < 2 or not products:
        yield equation
        return
    worth: list[tuple[Sign, Expression]] = []
    for sign, term in terms:
        if isinstance(term, Operation):
            try:
                worth.append((sign, value_of(term)))
            except NoValue:
                yield equation
                return
            yield Equation(term, worth[-1][1])
        else:
            worth.append((sign, term))
    yield Equation(chain(worth[0][1], *worth[1:]), equation.right)


def _terms(side: Expression) -> Iterator[tuple[Sign, Expression]]:
    if isinstance(side, Operation) and side.sign in (Sign.PLUS, Sign.MINUS):
        yield from _terms(side.left)
        yield side.sign, side.right
    else:
        yield Sign.PLUS, side


def _ends_elsewhere(way: Way) -> bool:
    """Tell whether a way's last result is not its answer."""
    right = way.steps[-1].equation.right
    return way.remainder is not None or isinstance(right, Operation) or right != way.answer


def _in_order(said: _Said, way: Way | None) -> tuple[Kind, ...] | None:
    """Return the way's own kinds where the steps were said in its order."""
    if way is None or tuple(map(turned, said)) != tuple(map(turned, _equations(way))):
        return None
    return tuple(step.kind for step in way.steps)


@dataclass(frozen=True, slots=True)
class _Known:
    """What is reckoned once for a problem: each way by its likenesses, and the names they gave.

    `counted` has each way's equations, and their names, with how often they come; `kinds` the kind
    of a step by its equation or name, as the first way that has it says.
    """

    likenesses: tuple[tuple[Way, tuple[Any, ...]], ...]
    named: dict[Way, tuple[int, ...]]
    traces: tuple[tuple[Way, "_Trace"], ...]
    names: Names
    counted: tuple[tuple[Way, tuple[Counter[object], Counter[object]]], ...]
    kinds: dict[Equation | int, Kind]


@lru_cache(maxsize=32)
def _known(problem: Problem) -> _Known:
    facts = facts_of(problem)
    names = Names()
    found = [(way, _likenesses(_equations(way), facts, names)) for way in facts.ways]
    named = {way: names.of(_equations(way)) for way in facts.ways}
    traces = tuple((way, _trace(_equations(way), named[way])) for way in facts.ways)
    counted = tuple(
        (way, (Counter[object](_equations(way)), Counter[object](named[way]))) for way in facts.ways
    )
    kinds = _kinds_of(facts.ways, named)
    return _Known(tuple(found), named, traces, names, counted, kinds)


def _kinds_of(ways: Iterable[Way], named: dict[Way, tuple[int, ...]]) -> dict[Equation | int, Kind]:
    found: dict[Equation | int, Kind] = {}
    for way in ways:
        for step, name in zip(way.steps, named[way], strict=True):
            found.setdefault(turned(step.equation), step.kind)
            found.setdefault(name, step.kind)
    return found


def _likenesses(steps: _Said, facts: Facts, names: Names) -> tuple[Any, ...]:
    """Return the steps from the closest likeness to the loosest."""
    turned_steps = tuple(map(turned, steps))
    named = names.of(steps)
    return (
        steps,
        turned_steps,
        Counter(turned_steps),
        tuple(map(_open, turned_steps, repeat(facts.answer))),
        named,
        Counter(named),
    )


def _whole_way(said: _Said, facts: Facts, names: Names) -> Way | None:
    """Return the best way that has these very steps, from the closest likeness to the loosest."""
    known = _known(facts.problem).likenesses
    foreseen = [(way, likes) for way, likes in known if len(way.steps) == len(said)]
    if not foreseen:
        return None
    for place, likeness in enumerate(_likenesses(said, facts, names)):
        for way, likes in foreseen:
            if likes[place] == likeness:
                return way
    return None


@dataclass(frozen=True, slots=True)
class _Trace:
    """What a listener may find again of a way, in any order.

    `names` are what is done and to what, by role, and `plain` as it stands; `begun` what is done
    with an earlier result, whatever the other number; `numbers` all that stand in the steps.
    """

    names: frozenset[int]
    plain: frozenset[Expression | None]
    begun: frozenset[_Begun]
    numbers: frozenset[Exact | Blank]
    size: int


def _trace(said: _Said, named: tuple[int, ...]) -> _Trace:
    looks = _looks(said)
    sides = [side for equation in said for side in (equation.left, equation.right)]
    return _Trace(
        frozenset(named),
        frozenset(plain for plain, _ in looks) - {None},
        frozenset(begun for _, some in looks for begun in some),
        frozenset(number for side in sides for number in leaves(side)),
        len(said),
    )


def _looks(said: _Said) -> list[tuple[Expression | None, frozenset[_Begun]]]:
    """Return the left side of each step that is worked out, and what it does with a result."""
    found: list[tuple[Expression | None, frozenset[_Begun]]] = []
    ends: set[Exact] = set()
    for equation in said:
        left, right = equation.left, equation.right
        if not isinstance(left, Operation) or isinstance(right, Operation):
            found.append((None, frozenset()))
            continue
        pair = not isinstance(left.left, Operation) and not isinstance(left.right, Operation)
        from_there = ends.intersection(leaves(left)) if pair else ()
        plain = turned_side(_as_product(left))
        found.append((plain, frozenset((left.sign, one) for one in from_there)))
        if not isinstance(right, Blank):
            ends.add(exact(right))
    return found


def _as_product(left: Operation) -> Operation:
    """Return 2 x 50 for 50 + 50, and 36 / 4 for 1/4 of 36: the same done in other words."""
    one, other = left.left, left.right
    if left.sign is Sign.PLUS and one == other:
        return Operation(Sign.TIMES, one, 2)
    if left.sign in (Sign.TIMES, Sign.OF):
        for part, whole in ((one, other), (other, one)):
            if isinstance(part, Fraction) and part.numerator == 1:
                return Operation(Sign.OVER, whole, part.denominator)
    return left


def explains(
    drafts: tuple[Draft, ...], loose: frozenset[Exact], facts: Facts
) -> Iterator[tuple[Way, int]]:
    """Yield each way with how well it explains the steps, and the `loose` numbers said besides.

    A step is alike where the same is done to the same numbers or earlier steps, whatever came out;
    half alike where an earlier result goes on alike with another number. Four for each step alike,
    two for each half alike, two less for any other, one less for each step of the way that was not
    said while others were, one for each loose number that stands in it. The figures are our choice.
    """
    known = _known(facts.problem)
    apart = tuple(part for draft in drafts for part in _taken_apart(draft.equation))
    told = list(zip(known.names.copy().of(apart), _looks(apart), strict=True))
    for way, trace in known.traces:
        alike = half = 0
        for name, (plain, begun) in told:
            if name in trace.names or plain in trace.plain:
                alike += 1
            elif not begun.isdisjoint(trace.begun):
                half += 1
        unsaid = max(0, trace.size - alike - half) if told else 0
        yield way, 6 * alike + 4 * half - 2 * len(told) - unsaid + len(loose & trace.numbers)


def _family(drafts: tuple[Draft, ...], said: _Said, facts: Facts, names: Names) -> Family | None:
    """Return the family that the steps have the shape of, or the only one that has them."""
    found = shaped(drafts, facts)
    if found:
        return found
    for place, likeness in enumerate((said, names.of(said))):
        steps = Counter[object](likeness)
        has = {
            way.family for way, counted in _known(facts.problem).counted if steps <= counted[place]
        }
        if len(has) == 1:
            return has.pop()
    return None


def _open(equation: Equation, answer: Exact | None) -> Equation:
    """Return the equation with the answer left to be found: 8 x ? = 56 for 8 x 7 = 56."""
    left = equation.left
    if not isinstance(left, Operation) or answer is None or blanks(equation):
        return equation
    for one, other in ((left.left, left.right), (left.right, left.left)):
        if one == answer and other != answer:
            return Equation(Operation(left.sign, other, BLANK), equation.right)
    return equation


def _stops_short(said: _Said, facts: Facts) -> bool:
    """Tell whether the steps are the beginning of a way and not its end."""
    steps = tuple(map(turned, said))
    return any(
        likes[1][: len(steps)] == steps
        for way, likes in _known(facts.problem).likenesses
        if len(way.steps) > len(steps)
    )


def _equations(way: Way) -> _Said:
    return tuple(step.equation for step in way.steps)


def _kinds(
    drafts: tuple[Draft, ...],
    said: _Said,
    likely: tuple[Way | None, Family | None],
    facts: Facts,
    names: Names,
) -> tuple[Kind, ...]:
    """Return the kind of each step as some way has it, the likely way's or family's first."""
    way, family = likely
    known = _known(facts.problem)
    first = [one for one in facts.ways if one is way or (way is None and one.family is family)]
    found = known.kinds | _kinds_of(first, known.named)
    return tuple(
        found.get(turned(equation)) or found.get(name) or by_place
        for equation, name, by_place in zip(
            said, names.of(said), _by_place(drafts, facts), strict=True
        )
    )


def _by_place(drafts: tuple[Draft, ...], facts: Facts) -> Iterator[Kind]:
    """Yield the kind of each step as its place alone shows it."""
    before: Exact | None = None
    for draft in drafts:
        yield _place_kind(draft, before, facts)
        before = draft.stands


def _place_kind(draft: Draft, before: Exact | None, facts: Facts) -> Kind:
    """Return the kind by where a step starts: from the last result, or a number of the problem."""
    left = draft.left
    if draft.counted:
        return Kind.COUNT
    if not isinstance(left, Operation):
        return Kind.SPLIT
    plus = left.sign is Sign.PLUS
    if isinstance(draft.equation.right, Operation):
        if left.sign not in (Sign.PLUS, Sign.MINUS):
            return Kind.SCALE
        return Kind.MOVE if plus else Kind.SHIFT
    start = None if isinstance(left.left, Operation | Blank) else exact(left.left)
    if left == facts.asked:
        return Kind.RECALL
    if left.sign not in (Sign.PLUS, Sign.MINUS):
        return _group_kind(left, before, facts)
    if start is not None and start in (before, *facts.numbers):
        return Kind.JUMP
    return Kind.JOIN if plus else Kind.TAKE


def _group_kind(left: Operation, before: Exact | None, facts: Facts) -> Kind:
    """Return the kind of a product or a share: equal addends, a number scaled, or some groups."""
    asked = facts.asked
    if isinstance(asked, Operation) and asked.sign in (Sign.PLUS, Sign.MINUS):
        return Kind.RECALL
    on = before is not None and left.left == before
    return Kind.SCALE if on else Kind.GROUP
