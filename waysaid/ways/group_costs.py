"""What a product or a quotient of two whole numbers asks, in tenths: facts and carried tens."""

from functools import lru_cache

from waysaid.ways.costs import TENTHS, TIMES_FACTS, Charge
from waysaid.ways.factor import TABLES, bare

_TEN = TENTHS[Charge.TIMES_TEN]
_TURNED = TENTHS[Charge.SHARE_FACT]
_DIGIT = TENTHS[Charge.TIMES_DIGIT]
_CROSS = TENTHS[Charge.CROSS]


@lru_cache(maxsize=1 << 14)
def times_costs(left: int, right: int) -> tuple[int, int]:
    """Return the tenths for the facts and for what is carried of a product.

    Zeros at the end are put back at once; beyond the tables every digit of one number is taken
    times every digit of the other.
    """
    if not left or not right:
        return 0, 0
    small, large = sorted((bare(left), bare(right)))
    zeros = _TEN if small * large < left * right else 0
    if large <= TABLES:
        return TIMES_FACTS[small][large] + (0 if zeros and small == 1 else zeros), 0
    if small == 1:
        return zeros, 0
    facts = _DIGIT * (len(str(small)) * len(str(large)) - 1)
    crossing = 0
    for by in map(int, str(small)):
        carried = 0
        for digit in map(int, reversed(str(large))):
            facts += TIMES_FACTS[by][digit]
            carried = (by * digit + carried) // 10
            crossing += _CROSS if carried else 0
        crossing -= _CROSS if carried else 0
    return facts + zeros, crossing


@lru_cache(maxsize=1 << 14)
def share_costs(whole: int, part: int) -> tuple[int, int]:
    """Return the same for a quotient: the product that undoes it, turned round."""
    groups = whole // part if part else 0
    facts, crossing = times_costs(part, groups)
    plain = min(bare(part), bare(groups)) < 2 if part and groups else True
    return facts + (0 if plain else _TURNED), crossing
