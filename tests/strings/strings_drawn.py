"""Random strings of plain text from a seed: quick to make, of all kinds with a number to find."""

from collections.abc import Iterator
from fractions import Fraction
from random import Random


def strings_drawn(seed: int, count: int) -> Iterator[list[str]]:
    """Yield so many strings of two to five problems; half of them are all of one kind."""
    draw = Random(seed)
    for _ in range(count):
        length = draw.randint(2, 5)
        if draw.random() < 1 / 2:
            kind = draw.choice(KINDS)
            yield [kind(draw) for _ in range(length)]
        else:
            yield [draw.choice(KINDS)(draw) for _ in range(length)]


def _sum(draw: Random) -> str:
    return f"{draw.randint(0, 20)} + {draw.randint(0, 20)}"


def _tens(draw: Random) -> str:
    return f"{draw.randint(1, 9)}0 + {draw.randint(1, 40)}"


def _difference(draw: Random) -> str:
    left = draw.randint(0, 30)
    return f"{left} - {draw.randint(0, left)}"


def _three(draw: Random) -> str:
    one, two, last = (draw.randint(0, 9) for _ in range(3))
    return f"{one} + {two} {'-' if last <= one + two and draw.random() < 1 / 2 else '+'} {last}"


def _missing_part(draw: Random) -> str:
    part, whole = sorted((draw.randint(0, 20), draw.randint(0, 20)))
    return draw.choice([f"{part} + _ = {whole}", f"_ + {part} = {whole}", f"{whole} - _ = {part}"])


def _product(draw: Random) -> str:
    return f"{draw.randint(1, 24)} x {draw.randint(1, 12)}"


def _quotient(draw: Random) -> str:
    by = draw.randint(1, 12)
    return f"{by * draw.randint(1, 12)} / {by}"


def _missing_factor(draw: Random) -> str:
    one, other = draw.randint(1, 12), draw.randint(1, 12)
    return draw.choice([f"{one} x _ = {one * other}", f"_ x {one} = {one * other}"])


def _percent(draw: Random) -> str:
    return f"{draw.choice([1, 5, 10, 15, 16, 20, 25, 50, 75])}% of {draw.choice([16, 20, 25, 80])}"


def _decimals(draw: Random) -> str:
    one, other = draw.randint(1, 40), draw.randint(1, 40)
    return f"{one // 10}.{one % 10} + {other // 10}.{other % 10}"


def _parts(draw: Random) -> str:
    sizes = [Fraction(draw.randint(1, 3), draw.choice([2, 4, 8])) for _ in range(2)]
    one, other = (size if size < 1 else 1 / size for size in sizes)
    return f"{one} + {other}"


KINDS = (
    _sum,
    _tens,
    _difference,
    _three,
    _missing_part,
    _product,
    _quotient,
    _missing_factor,
    _percent,
    _decimals,
    _parts,
)
