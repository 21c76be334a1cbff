"""Which of a problem's ways the steps as said belong to.

The same equations first; then the same but for order and turned-round sums; then the same but for
the results, so that wrong arithmetic still shows its way; then part of the ways of one family.
"""

from collections import Counter
from collections.abc import Iterator
from dataclasses import dataclass, field

from waysaid.hearing.draft import Draft
from waysaid.hearing.facts import Facts
from waysaid.hearing.shape import shaped
from waysaid.number import (
    Blank,
    Equation,
    Exact,
    Expression,
    Operation,
    Sign,
    chain,
    exact,
    signed_terms,
)
from waysaid.ways import Family, Kind, Step, Way

_Said = tuple[Equation, ...]


@dataclass(frozen=True, slots=True)
class Match:
    """The steps with their kinds, the family, and whether they stop before the end of a way."""

    steps: tuple[Step, ...]
    family: Family | None
    stops_short: bool


def matched(drafts: tuple[Draft, ...], facts: Facts) -> Match:
    """Return the steps as kinds of move, and the family that explains them, or None."""
    said = tuple(draft.equation for draft in drafts)
    if not said:
        return Match((), None, False)
    names = _Names()
    way = _whole_way(said, facts, names)
    family = way.family if way else _family(drafts, said, facts, names)
    kinds = _in_order(said, way) or _kinds(drafts, said, (way, family), facts, names)
    steps = tuple(Step(kind, equation) for kind, equation in zip(kinds, said, strict=True))
    return Match(steps, family, way is None and _stops_short(said, facts))


def _in_order(said: _Said, way: Way | None) -> tuple[Kind, ...] | None:
    """Return the way's own kinds where the steps were said in its order."""
    if way is None or tuple(map(_turned, said)) != tuple(map(_turned, _equations(way))):
        return None
    return tuple(step.kind for step in way.steps)


def _whole_way(said: _Said, facts: Facts, names: "_Names") -> Way | None:
    """Return the best way that has these very steps, from the closest likeness to the loosest."""
    alike = (
        lambda steps: steps,
        lambda steps: tuple(map(_turned, steps)),
        lambda steps: Counter(map(_turned, steps)),
        names.of,
        lambda steps: Counter(names.of(steps)),
    )
    foreseen = [way for way in facts.ways if len(way.steps) == len(said)]
    for likeness in alike:
        heard = likeness(said)
        for way in foreseen:
            if likeness(_equations(way)) == heard:
                return way
    return None


def _family(drafts: tuple[Draft, ...], said: _Said, facts: Facts, names: "_Names") -> Family | None:
    """Return the family that the steps have the shape of, or the only one that has them."""
    found = shaped(drafts, facts)
    if found:
        return found
    steps = Counter(names.of(said))
    has = {way.family for way in facts.ways if steps <= Counter(names.of(_equations(way)))}
    return has.pop() if len(has) == 1 else None


def _stops_short(said: _Said, facts: Facts) -> bool:
    """Tell whether the steps are the beginning of a way and not its end."""
    steps = tuple(map(_turned, said))
    return any(
        tuple(map(_turned, _equations(way)[: len(steps)])) == steps
        for way in facts.ways
        if len(way.steps) > len(steps)
    )


def _equations(way: Way) -> _Said:
    return tuple(step.equation for step in way.steps)


def _turned(equation: Equation) -> Equation:
    """Return the equation with every plain sum largest first: 5 + 7 = 12 as 7 + 5 = 12."""
    return Equation(_sorted(equation.left), _sorted(equation.right))


def _sorted(side: Expression) -> Expression:
    numbers = _added(side)
    if not numbers:
        return side
    first, *rest = sorted(numbers, reverse=True)
    return chain(first, *((Sign.PLUS, number) for number in rest))


def _added(side: Expression) -> list[Exact] | None:
    """Return the numbers of a plain sum; None for anything else."""
    terms = signed_terms(side)
    if terms is None:
        return None
    plain = [one for sign, one in terms if sign is Sign.PLUS and not isinstance(one, Blank)]
    return plain if len(plain) == len(terms) else None


@dataclass(frozen=True, slots=True)
class _Names:
    """Names steps by what is done and to which number or earlier step, never by what comes out.

    A name is a whole number, given once to each thing named.
    """

    given: dict[object, int] = field(default_factory=dict)

    def of(self, said: _Said) -> tuple[int, ...]:
        """Return one name for each equation; a number an earlier step ended on is that step."""
        found: list[int] = []
        results: dict[Exact, int] = {}
        for equation in said:
            name = self._step(equation, results)
            found.append(name)
            right = equation.right
            if isinstance(equation.left, Operation) and not isinstance(right, (Operation, Blank)):
                results[exact(right)] = name
        return tuple(found)

    def _step(self, equation: Equation, results: dict[Exact, int]) -> int:
        terms = signed_terms(equation.left)
        if terms is None or len(terms) == 1 or isinstance(equation.right, Operation):
            return self._name(_turned(equation))
        signed = [
            (sign.value, self._name(one) if isinstance(one, Blank) else self._number(one, results))
            for sign, one in terms
        ]
        plain = all(sign == Sign.PLUS.value for sign, _ in signed)
        return self._name(tuple(sorted(signed) if plain else signed))

    def _number(self, number: Exact, results: dict[Exact, int]) -> int:
        return results.get(number, self._name(number))

    def _name(self, thing: object) -> int:
        return self.given.setdefault(thing, len(self.given))


def _kinds(
    drafts: tuple[Draft, ...],
    said: _Said,
    likely: tuple[Way | None, Family | None],
    facts: Facts,
    names: _Names,
) -> tuple[Kind, ...]:
    """Return the kind of each step as some way has it, the likely way's or family's first."""
    way, family = likely
    first = [one for one in facts.ways if one is way or (way is None and one.family is family)]
    found: dict[Equation | int, Kind] = {}
    for one in (*first, *facts.ways):
        for step, name in zip(one.steps, names.of(_equations(one)), strict=True):
            found.setdefault(_turned(step.equation), step.kind)
            found.setdefault(name, step.kind)
    return tuple(
        found.get(_turned(equation)) or found.get(name) or by_place
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
        return Kind.MOVE if plus else Kind.SHIFT
    if left == facts.problem or left.sign is Sign.TIMES:
        return Kind.RECALL
    if not isinstance(left.left, Operation) and left.left in (before, *facts.numbers):
        return Kind.JUMP
    return Kind.JOIN if plus else Kind.TAKE
