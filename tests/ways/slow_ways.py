"""A slow, independent list of some families' ways for sums and differences below 100.

Nothing is built: every way to cut the other number is tried, and those that fit the rule in words
are kept. It imports no way-maker.
"""

from collections.abc import Iterator

Cut = tuple[int, ...]


def _cuts(number: int, parts: int) -> Iterator[Cut]:
    """Yield every way to cut a number into so many parts from 1 up, in every order."""
    if parts == 1:
        yield (number,)
        return
    for first in range(1, number):
        for rest in _cuts(number - first, parts - 1):
            yield (first, *rest)


def _hops(start: int, sign: str, cut: Cut) -> str:
    said = []
    for part in cut:
        after = start + part if sign == "+" else start - part
        said.append(f"{start} {sign} {part} = {after}")
        start = after
    return "; ".join(said)


def _starts(left: int, right: int) -> list[tuple[int, int, bool]]:
    """Return (start, other, whether it is the first number)."""
    return [(left, right, True)] + ([(right, left, False)] if left != right else [])


def _lands(start: int, sign: str, gone: int, unit: int = 10) -> bool:
    return (start + gone if sign == "+" else start - gone) % unit == 0


def jumps(left: int, sign: str, right: int) -> set[str]:
    """The other number's tens and ones, in one to three parts, or its tens one by one.

    A single piece goes on or off at once where the problem is no fact.
    """
    starts = _starts(left, right) if sign == "+" else [(left, right, True)]
    found = set()
    for start, other, first in starts:
        if other >= 10 and other % 10 == 0 and start % 10 and (start >= 10 or first):
            found.add(_hops(start, sign, (other,)))
        if 0 < other < 10 and (start >= 20 if sign == "-" else start >= 10 and start % 10):
            found.add(_hops(start, sign, (other,)))
        if other < 10 or other % 10 == 0 or (start < 10 and not first):
            continue
        tens, ones = other - other % 10, other % 10
        for cut in _cuts(other, 2):
            ones_land = cut[0] == ones and start % 10 and _lands(start, sign, ones)
            if set(cut) == {tens, ones} and not ones_land:
                found.add(_hops(start, sign, cut))
        for cut in _cuts(other, 3):
            if cut[0] == tens and start % 10 and _lands(start, sign, cut[0] + cut[1]):
                found.add(_hops(start, sign, cut))
        if 20 <= tens <= 50:
            found.add(_hops(start, sign, (10,) * (tens // 10) + (ones,)))
    return found


def bridges(left: int, right: int) -> set[str]:
    """Sums: cuts of the other number that land on five, a ten or a hundred and leave something."""
    found = set()
    for start, other, _ in _starts(left, right):
        fills = (start >= 10 or other < 20) and other % 10 != 0
        for gap, rest in _cuts(other, 2):
            plain = _hops(start, "+", (gap, rest))
            opened = {f"{other} - {gap} = {rest}; {plain}", f"{other} = {gap} + {rest}; {plain}"}
            first_ten = start % 10 and gap < 10 and _lands(start, "+", gap)
            if fills and start + gap == 5 and start + other <= 10:
                found.add(plain)
            nearly = 90 < start < 100 and other % 10 == 0 and start + gap == 100
            if (fills or nearly) and first_ten:
                found |= {plain, *opened}
                if rest > 10 and rest % 10:
                    found.add(_hops(start, "+", (gap, rest - rest % 10, rest % 10)))
                    found.add(_hops(start, "+", (gap, rest % 10, rest - rest % 10)))
            if fills and start % 10 and gap >= 10 and rest < 5 and _lands(start, "+", gap):
                found.add(plain)
            if gap <= 50 and not first_ten and _lands(start, "+", gap, 100):
                found |= {plain, f"{other} - {gap} = {rest}; {plain}"}
                if start % 10:
                    near = 10 - start % 10
                    found.add(_hops(start, "+", (near, gap - near, rest)))
    return found


def adjusts(left: int, right: int) -> set[str]:
    """Sums: one number taken as a round one above, both taken as round ones, a round total.

    Both are taken as a hundred where each is at most 5 below it.
    """
    found = set()
    for one in range(left, 131):
        for other in range(right, 131):
            over, more = one - left, other - right
            if (over == 0) == (more == 0):
                continue
            round_one = (other if more else one) % 10 == 0
            near = _near_above(over or more, right if more else left)
            near = near and over < right and more < left
            ends = left % 10 and right % 10 and (one + other) % 10 == 0
            if (round_one and near) or (ends and over + more <= 2):
                found.add(f"{one} + {other} = {one + other}; {_mend(one + other, over + more)}")
    if min(left, right) >= 95 and left + right < 200:
        found.add(f"100 + 100 = 200; {_mend(200, 200 - left - right)}")
    for one in range(10, 131, 10):
        for other in range(10, 131, 10):
            over, more = one - left, other - right
            both = _near_both(over, left) and _near_both(more, right)
            if both and max(over, more) > 0 and over + more and abs(over + more) <= 6:
                total = one + other
                used = f"{one} + {other} = {total}"
                found.add(f"{used}; {_mend(total, over + more)}")
                found.add(f"{used}; {_mend(total, over)}; {_mend(total - over, more)}")
    return found


def _mend(total: int, over: int) -> str:
    return _hops(total, "-" if over > 0 else "+", (abs(over),))


def _near_above(over: int, number: int) -> bool:
    if over <= (2 if number < 10 else 6):
        return True
    return 10 <= over <= 25 and (number + over) % 100 == 0


def _near_both(over: int, number: int) -> bool:
    return 0 < over <= 2 if number < 10 else 0 < abs(over) <= 4


def splits(left: int, sign: str, right: int) -> set[str]:
    """Two two-digit numbers with ones: tens and ones apart, either first."""
    tens, ones = left - left % 10, left % 10
    others, more = right - right % 10, right % 10
    work = (lambda one, other: one + other) if sign == "+" else (lambda one, other: one - other)
    big, small = work(tens, others), work(ones, more)
    by_tens, by_ones = f"{tens} {sign} {others} = {big}", f"{ones} {sign} {more} = {small}"
    last = f"{big} {'+' if small > 0 else '-'} {abs(small)} = {big + small}"
    return {f"{by_tens}; {by_ones}; {last}", f"{by_ones}; {by_tens}; {last}"}
