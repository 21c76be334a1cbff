"""Sums and differences of decimals, worked as whole numbers are, in units of the smallest place."""

from collections.abc import Callable, Iterator

from waysaid.number import Operation
from waysaid.ways.decimals.shape import InUnits
from waysaid.ways.decimals.unit import all_in, made
from waysaid.ways.maker import AnyMaker, Maker
from waysaid.ways.plan import PLUS, TIMES, Move, Plan
from waysaid.ways.shape import Below, Difference, Missing, Nothing, Several, Sum
from waysaid.ways.step import Kind, Step
from waysaid.ways.whole import WHOLE

ADDED = (Sum, Difference, Below, Several, Missing, Nothing)
"""The shapes that are the same in any unit."""
OF_ONES = ("from-digits", "to-five", "fives")
"""How the slugs start or end of ways that are about small whole numbers; our choice."""
LARGE = 10**9


def in_units(maker: AnyMaker) -> AnyMaker:
    """Return the maker that does with units what a maker of whole numbers does with ones."""
    return Maker(maker.family, InUnits, _plans(maker), _told)


def _plans(maker: AnyMaker) -> Callable[[InUnits], Iterator[Plan]]:
    def plans(problem: InUnits) -> Iterator[Plan]:
        """Yield the plans of the whole numbers that a child would also follow with decimals."""
        least = 10 ** max(problem.places - 1, 0)
        for slug, moves in maker.of(problem.whole):
            if slug.startswith(OF_ONES) or slug.endswith(OF_ONES):
                continue
            if all(_counted_by(move) >= least for move in moves):
                yield slug, moves

    return plans


def _told(move: Move | Step, problem: InUnits) -> Step:
    """Return the step of a move in units; of a product the first number is a count, and stays."""
    places = problem.places
    if isinstance(move, Step):
        return all_in(move, places)
    kind, left, sign, right = move
    if sign is TIMES:
        return made(kind, (left, 0), sign, (right, places), (left * right, places))
    result = left + right if sign is PLUS else left - right
    return made(kind, (left, places), sign, (right, places), (result, places))


def _counted_by(move: Move | Step) -> int:
    """Return the size of a count in units; a move that is none is as good as a large one.

    Nobody counts on by anything smaller than a tenth; our choice.
    """
    if not isinstance(move, Step):
        return move[3] if move[0] is Kind.COUNT else LARGE
    whole = move.equation.left
    counted = move.kind is Kind.COUNT and isinstance(whole, Operation)
    hop = whole.right if counted and isinstance(whole, Operation) else None
    return hop if isinstance(hop, int) else LARGE


MAKERS: tuple[AnyMaker, ...] = tuple(in_units(maker) for maker in WHOLE if maker.shape in ADDED)
