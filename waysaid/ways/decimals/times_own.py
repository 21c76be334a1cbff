"""Ways to multiply that only decimals have, or that they have in a form of their own."""

from collections.abc import Iterator

from waysaid.number import Equation, Operation
from waysaid.ways.decimals.shape import Scaled, Times, Turned
from waysaid.ways.decimals.unit import all_in, made, pointed
from waysaid.ways.factor import bare, can_do, factored
from waysaid.ways.plan import MINUS, PLUS, TIMES, Move, Plan, summed
from waysaid.ways.step import Kind, Step


def own_cuts(problem: Times) -> Iterator[Plan]:
    """Yield the cuts only decimals have: wholes and the rest, a half and a quarter."""
    for turn in problem.turns():
        factor = turn.factor
        rest = factor.units % 10**factor.places
        if rest and 10 < rest < factor.units:
            yield from _cut(turn, (factor.units - rest, rest), "wholes-and-rest")
        if factor == Scaled(75, 2):
            yield from _cut(turn, (50, 25), "half-and-quarter")


def _cut(turn: Turned, parts: tuple[int, ...], slug: str) -> Iterator[Plan]:
    places, other = turn.factor.places, turn.other
    if not all(can_do(part, other.units) for part in parts):
        return
    groups = tuple(turn.times(Kind.GROUP, part, places) for part in parts)
    both = places + other.places
    for how, sums in summed(Kind.JOIN, *(part * other.units for part in parts)):
        told = tuple(
            all_in(move, both) if isinstance(move, Step) else _sum(move, both) for move in sums
        )
        yield f"{turn.tag}-{slug}{how}", (*groups, *told)


def _sum(move: Move, places: int) -> Step:
    kind, one, sign, other = move
    result = one - other if sign is MINUS else one + other
    return made(kind, (one, places), sign, (other, places), (result, places))


def tens_across(problem: Times) -> Iterator[Plan]:
    """Yield the ten moved across: 0.6 x 40 as 6 x 4."""
    for turn in problem.turns():
        factor, other = turn.factor, turn.other
        less = other.units // 10
        if not factor.places or other.places or other.units % 10 or less < 2:
            continue
        if not can_do(factor.units, less) or 1 in (bare(factor.units), bare(less)):
            continue
        pair = pointed(factor.units, factor.places - 1), pointed(less, 0)
        new = pair if turn.first else pair[::-1]
        old = pointed(problem.left.units, problem.left.places), pointed(other.units, 0)
        if not turn.first:
            old = pointed(other.units, 0), pointed(factor.units, factor.places)
        said = Step(Kind.SCALE, Equation(Operation(TIMES, *old), Operation(TIMES, *new)))
        result = pointed(factor.units * less, factor.places - 1)
        last = Step(Kind.RECALL, Equation(Operation(TIMES, *new), result))
        yield f"{turn.tag}-by-10", (said, last)


def factor_steps(problem: Times) -> Iterator[Plan]:
    """Yield the whole number in its factors, one after another: 2.5 x 8 as double, double, double.

    Doubles also as a number and itself.
    """
    for turn in problem.turns():
        if turn.factor.places or turn.factor.units < 3 or bare(turn.other.units) == 1:
            continue
        for steps in factored(turn.factor.units):
            yield from _in_steps(turn, steps)


def _in_steps(turn: Turned, steps: tuple[int, ...]) -> Iterator[Plan]:
    running, places = turn.other.units, turn.other.places
    moves: list[Step] = []
    added: list[Step] = []
    for by in steps:
        if not can_do(running, by):
            return
        result = (running * by, places)
        if moves:
            moves.append(made(Kind.SCALE, (running, places), TIMES, (by, 0), result))
        else:
            moves.append(turn.times(Kind.SCALE, by, 0))
        twice = made(Kind.JOIN, (running, places), PLUS, (running, places), result)
        added.append(twice if by == 2 else moves[-1])
        running *= by
    slug = f"{turn.tag}-by-{'-'.join(map(str, steps))}"
    yield slug, tuple(moves)
    if 2 in steps:
        yield f"{slug}-added", tuple(added)
