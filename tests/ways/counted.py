"""How many ways there are, in all and of each family, as the lines of tests/counts/ways.counts.

`python -m tests.ways.counted` prints them anew. A count alone shows change, not truth: what is
true is for the slow enumerator and the judge to say.
"""

from collections import Counter
from collections.abc import Iterator

from waysaid.number import parse
from waysaid.ways import ways

_LARGE = (9, 10, 25, 34, 37, 48, 50, 71, 99, 100, 176, 387, 421)
_OTHERS = (
    "7 + _ = 12",
    "_ + 25 = 62",
    "71 - _ = 34",
    "_ - 25 = 37",
    "63 = 70 - _",
    "7 + 26 + 3",
    "58 + 47 - 38",
    "45 + 80 + 55 + 20",
    "37 + 41 + 40 + 38",
)
_IN_GROUPS = (
    "14 x 6",
    "19 x 7",
    "18 x 5",
    "16 x 25",
    "24 x 36",
    "253 x 4",
    "345 x 6",
    "1234 x 56",
    "2 x 7 x 5",
    "96 / 6",
    "84 / 4",
    "354 / 6",
    "800 / 40",
    "8928 / 48",
    "16 / 3",
    "98 / 6",
    "_ x 6 = 54",
    "54 / _ = 9",
    "_ / 6 = 9",
)


def problems() -> Iterator[str]:
    """Yield the problems that are counted.

    Sums and differences within 20, products and quotients of the tables, a few larger, a few of
    other forms.
    """
    for total in range(21):
        for right in range(total + 1):
            yield f"{total - right} + {right}"
            yield f"{total} - {right}"
    for left in _LARGE:
        for right in _LARGE:
            if left + right > 20:
                yield f"{left} + {right}"
            if 20 < left > right:
                yield f"{left} - {right}"
    yield from _OTHERS
    for left in range(2, 13):
        for right in range(2, 13):
            yield f"{left} x {right}"
            yield f"{left * right} / {right}"
    yield from _IN_GROUPS


def line(problem: str) -> str:
    """Return one line: the problem, two spaces, how many ways, and how many of each family."""
    found = ways(parse(problem))
    families = Counter(way.family.value for way in found)
    parts = [f"{family} {many}" for family, many in sorted(families.items())]
    return "  ".join([problem, f"ways {len(found)}", *parts])


if __name__ == "__main__":
    print(*map(line, problems()), sep="\n")
