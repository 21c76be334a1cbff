"""A slow, independent list of some families' ways for products to 99 x 99.

Nothing is built: every cut, neighbour and pair of factors is tried, and those that fit the rule in
words are kept. It imports no way-maker.
"""

from collections.abc import Iterator


def _turns(left: int, right: int) -> Iterator[tuple[int, int, bool]]:
    """Yield (factor changed, factor kept, whether the first one is changed)."""
    yield left, right, True
    if left != right:
        yield right, left, False


def _easy(one: int, other: int) -> bool:
    """One digit times two, twice three digits, three and four times under 200, or the tables."""
    small, large = sorted(int(str(number).rstrip("0")) for number in (one, other))
    if large <= 12 or small == 1:
        return True
    return small < 10 and large < {2: 1000, 3: 200, 4: 200}.get(small, 100)


def _round(number: int) -> bool:
    return str(number).rstrip("0") == "1"


def _times(changed: int, kept: int, first: bool) -> str:
    pair = (changed, kept) if first else (kept, changed)
    return f"{pair[0]} x {pair[1]} = {changed * kept}"


def _fits_cut(cut: int, a: int, b: int) -> bool:
    """Tens and ones; five and the rest or two and the rest of a digit; nearly halves; 25 first."""
    small, large = sorted((a, b))
    return (
        (cut > 10 and large % 10 == 0 and small < 10)
        or (5 < cut < 10 and 5 in (a, b))
        or (4 < cut < 10 and 2 in (a, b))
        or (cut in (7, 9) and large - small == 1)
        or (25 < cut < 30 and a == 25)
    )


def break_ups(left: int, right: int) -> set[str]:
    """One factor in two parts, in either order, or said to be cut; both by place."""
    found: set[str] = set()
    if _round(left) or _round(right):
        return found
    for cut, kept, first in _turns(left, right):
        for a in range(1, cut):
            b = cut - a
            too_small = kept == 2 and cut < 10
            if too_small or not _fits_cut(cut, a, b) or not (_easy(a, kept) and _easy(b, kept)):
                continue
            said = f"{_times(a, kept, first)}; {_times(b, kept, first)}"
            found.add(f"{said}; {a * kept} + {b * kept} = {cut * kept}")
            if a > b:
                found.add(f"{cut} = {a} + {b}; {said}; {a * kept} + {b * kept} = {cut * kept}")
    return found | _four_products(left, right)


def _four_products(left: int, right: int) -> set[str]:
    if min(left, right) < 10 or not left % 10 or not right % 10:
        return set()
    pairs = [
        (a, b) for a in (left - left % 10, left % 10) for b in (right - right % 10, right % 10)
    ]
    said = "; ".join(f"{a} x {b} = {a * b}" for a, b in pairs)
    one, two, three, four = (a * b for a, b in pairs)
    at_once = f"{one} + {two} + {three} + {four} = {left * right}"
    half, most = one + two, one + two + three
    in_turn = f"{one} + {two} = {half}; {half} + {three} = {most}; {most} + {four} = {left * right}"
    return {f"{said}; {at_once}", f"{said}; {in_turn}"}


def one_group_off(left: int, right: int) -> set[str]:
    """From a product with one group more or fewer, then that group off or on."""
    found: set[str] = set()
    if _round(left) or _round(right):
        return found
    for wanted, kept, first in _turns(left, right):
        for used in (wanted - 1, wanted + 1):
            in_the_tables = used > 1 and max(used, wanted, kept) <= 12
            friendly = (used % 10 == 0 or used in (5, 25)) and used > 1 and kept > 2
            square = used == kept and used > 1 and _known_square(used)
            if in_the_tables or square or (friendly and _easy(used, kept)):
                sign = "+" if used < wanted else "-"
                found.add(
                    f"{_times(used, kept, first)}; {used * kept} {sign} {kept} = {wanted * kept}"
                )
    return found


def _known_square(number: int) -> bool:
    return number <= 12 or number % 10 == 0


def two_factors(left: int, right: int) -> set[str]:
    """One factor as two factors, multiplied by one after the other."""
    found: set[str] = set()
    if _round(left) or _round(right):
        return found
    for whole, kept, first in _turns(left, right):
        for one in range(2, whole):
            other = whole // one
            fits = other > 1 and one * other == whole
            plain = (whole % 10 and max(one, other) <= 12) or _round(one) or _round(other)
            if fits and plain and kept > 2 and _easy(one, kept) and _easy(one * kept, other):
                found.add(f"{_times(one, kept, first)}; {one * kept} x {other} = {whole * kept}")
    return found
