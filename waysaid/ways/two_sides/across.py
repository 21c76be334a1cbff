"""The two sides looked at together: what one number gains, the other must lose, or gain too.

8 + 4 = _ + 5: 4 and 1 more is 5, so the 8 gives one away. Only the changes are worked out, and
neither side.
"""

from collections.abc import Callable, Iterator, Sequence
from fractions import Fraction

from waysaid.number import Exact, Form, Number, Sign, decimal, exact, has_form, value_of
from waysaid.ways.plan import Moves, Plan
from waysaid.ways.step import Kind, Step, worked
from waysaid.ways.two_sides.shape import Closed, Open, pair_of, whole_numbers

_ANY = 10
"""Up to how much a child would move across in one go; beyond it only whole tens. Our choice."""


def moved(problem: Closed) -> Iterator[Plan]:
    """Yield what one number of a sum gains and what the other is left with."""
    yield from _closed(problem, Sign.PLUS, _gives)


def shifted(problem: Closed) -> Iterator[Plan]:
    """Yield two numbers of a difference changed alike."""
    yield from _closed(problem, Sign.MINUS, _alike)


def doubled(problem: Closed) -> Iterator[Plan]:
    """Yield one factor so many times larger, and the other as many times smaller."""
    yield from _closed(problem, Sign.TIMES, _turns)


def scaled(problem: Closed) -> Iterator[Plan]:
    """Yield both numbers of a division scaled alike."""
    yield from _closed(problem, Sign.OVER, _scales)


def moved_open(problem: Open) -> Iterator[Plan]:
    """Yield the change to the number that is given, and the blank by the opposite change."""
    yield from _opened(problem, Sign.PLUS, _gives)


def shifted_open(problem: Open) -> Iterator[Plan]:
    """Yield the change to the number that is given, and the blank by the same change."""
    yield from _opened(problem, Sign.MINUS, _alike)


def doubled_open(problem: Open) -> Iterator[Plan]:
    """Yield the factor that is given from one beside it, and the blank by the opposite."""
    yield from _opened(problem, Sign.TIMES, _turns)


def scaled_open(problem: Open) -> Iterator[Plan]:
    """Yield the number of the division that is given from its like, and the blank alike."""
    yield from _opened(problem, Sign.OVER, _scales)


_Change = Callable[[Number, Number, Number], Moves | None]


def _closed(problem: Closed, sign: Sign, change: _Change) -> Iterator[Plan]:
    left, right = pair_of(problem.left), pair_of(problem.right)
    if left is None or right is None or left[0] is not sign or right[0] is not sign:
        return
    for slug, one, other, new in _pairings(left[1:], right[1:], _turns_round(sign)):
        moves = change(one, other, new)
        if moves is not None:
            yield slug, moves


def _opened(problem: Open, sign: Sign, change: _Change) -> Iterator[Plan]:
    whole = pair_of(problem.whole)
    if whole is None or whole[0] is not sign or problem.sign is not sign:
        return
    given: tuple[Number | None, ...] = (problem.given,)
    if not _turns_round(sign):
        given = (None, problem.given) if problem.first else (problem.given, None)
    for slug, one, other, new in _pairings(whole[1:], given, _turns_round(sign)):
        moves = change(one, other, new)
        if moves is not None and _ends_at(moves, problem.found):
            yield slug, moves


def _ends_at(moves: Moves, found: Exact) -> bool:
    last = moves[-1]
    return isinstance(last, Step) and value_of(last.equation.right) == found


def _turns_round(sign: Sign) -> bool:
    return sign in (Sign.PLUS, Sign.TIMES)


def _pairings(
    old: tuple[Number, Number], new: Sequence[Number | None], turns: bool
) -> Iterator[tuple[str, Number, Number, Number]]:
    """Yield the number that changes, the other of its side, and what it changes to."""
    for place, target in enumerate(new):
        if target is None:
            continue
        for start, slug in enumerate(("first", "second")):
            if (turns or start == place) and exact(old[start]) != exact(target):
                yield f"{slug}-to-{place + 1}", old[start], old[1 - start], target


def _gives(one: Number, other: Number, new: Number) -> Moves | None:
    return _added(one, other, new, Kind.MOVE, -1)


def _alike(one: Number, other: Number, new: Number) -> Moves | None:
    return _added(one, other, new, Kind.SHIFT, 1)


def _added(one: Number, other: Number, new: Number, kind: Kind, turn: int) -> Moves | None:
    gap: Exact = exact(new) - exact(one)
    far: Exact = gap if gap > 0 else -gap
    after: Exact = exact(other) + turn * gap
    if after <= 0 or exact(one) == 0 or (far > _ANY and far % 10):
        return None
    size = _like((one, other, new), far)
    on, off = (Sign.PLUS, Sign.MINUS) if gap > 0 else (Sign.MINUS, Sign.PLUS)
    return (
        worked(kind, on, one, size),
        worked(kind, on if turn > 0 else off, other, size),
    )


def _turns(one: Number, other: Number, new: Number) -> Moves | None:
    return _times(one, other, new, opposite=True)


def _scales(one: Number, other: Number, new: Number) -> Moves | None:
    return _times(one, other, new, opposite=False)


def _times(one: Number, other: Number, new: Number, *, opposite: bool) -> Moves | None:
    """Scale one number to the new one, and the other by as much, or back by as much."""
    if not whole_numbers(one, other, new):
        return None
    small, large = sorted((exact(one), exact(new)))
    if large % small:
        return None
    by = exact(large / Fraction(small))
    up = exact(new) == large
    signs = (Sign.TIMES, Sign.OVER) if up else (Sign.OVER, Sign.TIMES)
    first, second = signs if opposite else (signs[0], signs[0])
    if second is Sign.OVER and exact(other) % by:
        return None
    return worked(Kind.SCALE, first, one, by), worked(Kind.SCALE, second, other, by)


def _like(others: tuple[Number, ...], size: Exact) -> Number:
    pointed = any(has_form(one, Form.DECIMAL) for one in others)
    return decimal(size) if pointed else size
