"""No link is false: each is held against the plain text of its problems by a judge of its own.

The judge shares no code with the links: it reads numbers and works out answers from text.
"""

import re
from collections.abc import Callable
from fractions import Fraction
from itertools import pairwise

import pytest

from tests.counts import count
from tests.strings.judge import answer, number, numbers, signs, true
from tests.strings.strings_drawn import strings_drawn
from waysaid.number import number_text, parse, text
from waysaid.strings import Link, LinkKind, Saying, links

STRINGS = count(test=5000, sweep=100_000)
SEED = 6


def differing(first: str, second: str) -> int | None:
    """How many numbers differ, whatever their order, by how they count; None for unlike forms."""
    if signs(first) != signs(second):
        return None
    one, other = counted(first), counted(second)
    for found in list(one):
        if found in other:
            one.remove(found)
            other.remove(found)
    return len(one)


def counted(problem: str) -> list[tuple[bool, Fraction]]:
    """Each number with whether the answer grows when it does, found by making it grow."""
    found = []
    for place, given in enumerate(re.finditer(r"\d+(?:/\d+|\.\d+)?%?", problem)):
        grown = "1" + given[0] if given[0][0] != "0" or len(given[0]) == 1 else "1" + given[0][1:]
        bumped = problem[: given.start()] + grown + problem[given.end() :]
        found.append((answer(bumped) > answer(problem), numbers(problem)[place]))
    return found


def ratio(rows: list[str]) -> Fraction | None:
    before, after = answer(rows[0]), answer(rows[1])
    return after / before if before else None


def steps_evenly(rows: list[str]) -> bool:
    answers = [answer(row) for row in rows]
    gaps = {after - before for before, after in pairwise(answers)}
    if len(gaps) == 1:
        return True
    return all(answers) and len({after / before for before, after in pairwise(answers)}) == 1


def digits(problem: str) -> list[str]:
    return sorted(re.sub(r"^0+|0+$", "", re.sub(r"\D", "", one)) for one in digit_runs(problem))


def digit_runs(problem: str) -> list[str]:
    return re.findall(r"[\d.]+", problem)


def all_scaled(rows: list[str]) -> bool:
    """Every number of one is ten or a hundred times its fellow in the other."""
    small, large = sorted((sorted(numbers(row)) for row in rows), key=sum)
    return any([by * one for one in small] == large for by in (10, 100))


def facts(problem: str) -> list[Fraction]:
    return sorted([*numbers(problem), answer(problem)])


def rounder(rows: list[str]) -> bool:
    """One of the two has more full tens, or more whole numbers, than the other."""
    told = [[(one % 10 == 0, one.denominator == 1) for one in numbers(problem)] for problem in rows]
    return sorted(told[0]) != sorted(told[1])


def told(link: Link) -> list[Fraction]:
    return [number(number_text(one)) for one in link.numbers]


def from_old_to_new(link: Link, rows: list[str]) -> bool:
    """The two numbers said stand in the two problems, and differ by what is said."""
    old, new, by = told(link)[:3]
    times = link.saying.value.endswith(("times", "over"))
    apart = max(old, new) / min(old, new) if times else abs(new - old)
    return old in numbers(rows[0]) and new in numbers(rows[1]) and apart == by


CLAIMS: dict[LinkKind, Callable[[Link, list[str]], bool]] = {
    LinkKind.SAME_NUMBER: lambda link, rows: all(told(link)[0] in numbers(row) for row in rows),
    LinkKind.SAME_TOTAL: lambda link, rows: {answer(row) for row in rows} == {told(link)[0]},
    LinkKind.ONE_CHANGES: lambda link, rows: differing(*rows) == 1 and from_old_to_new(link, rows),
    LinkKind.BOTH_CHANGE: lambda _, rows: (
        differing(*rows) == 2 and answer(rows[0]) == answer(rows[1])
    ),
    LinkKind.TURNED_AROUND: lambda link, rows: (
        answer(rows[0]) == answer(rows[1])
        and rows[0] != rows[1]
        and (differing(*rows) == 0 or link.saying is Saying.PERCENT_TURNED)
    ),
    LinkKind.OPPOSITE: lambda _, rows: facts(rows[0]) == facts(rows[1]) and rows[0] != rows[1],
    LinkKind.TEN_TIMES: lambda _, rows: digits(rows[0]) == digits(rows[1]) or all_scaled(rows),
    LinkKind.DOUBLE_HALF: lambda _, rows: (
        ratio(rows) in (None, 2, 4, Fraction(1, 2), Fraction(1, 4)) and differing(*rows) != 0
    ),
    LinkKind.FEEDS_NEXT: lambda link, rows: (
        answer(rows[0]) == told(link)[0] and answer(rows[0]) in numbers(rows[1])
    ),
    LinkKind.FRIENDLY_TWIN: lambda _, rows: signs(rows[0]) == signs(rows[1]) and rounder(rows),
    LinkKind.INSIDE_A_WAY: lambda link, rows: any(
        shown.startswith(f"{row} = ") for row in rows for shown in link.shows
    ),
    LinkKind.PATTERN: lambda _, rows: len(rows) >= 3 and steps_evenly(rows),
}


def false(link: Link, rows: list[str]) -> bool:
    """Tell whether a link shows an equation that is not true, or claims what is not so."""
    return not all(map(true, link.shows)) or not CLAIMS[link.kind](link, rows)


def test_no_link_in_random_strings_is_false(sweep_note):
    wrong, found = [], 0
    for string in strings_drawn(SEED, STRINGS):
        problems = [parse(one) for one in string]
        texts = [text(problem) for problem in problems]
        for link in links(problems, every=True):
            found += 1
            if false(link, [texts[at] for at in link.between]):
                wrong.append((string, link))
    sweep_note("no link in random strings is false", STRINGS, len(wrong))
    assert found > STRINGS
    assert wrong == []


@pytest.mark.parametrize(
    ("kind", "rows"),
    [
        (LinkKind.BOTH_CHANGE, ["62 - 25", "63 - 24"]),
        (LinkKind.BOTH_CHANGE, ["16 x 5", "8 x 11"]),
        (LinkKind.TURNED_AROUND, ["9 - 4", "4 + 9"]),
        (LinkKind.OPPOSITE, ["6 x 4", "24 / 3"]),
        (LinkKind.TEN_TIMES, ["3 + 4", "30 + 50"]),
        (LinkKind.DOUBLE_HALF, ["3 x 4", "9 x 4"]),
        (LinkKind.FRIENDLY_TWIN, ["48 + 33", "47 + 32"]),
        (LinkKind.INSIDE_A_WAY, ["3 + 4", "5 + 6"]),
        (LinkKind.PATTERN, ["3 + 4", "3 + 5", "3 + 7"]),
    ],
)
def test_the_judge_knows_a_false_link(kind, rows):
    link = Link(kind, tuple(range(len(rows))), ("1 + 1 = 2",), Saying.TURNED)
    assert false(link, rows)


def test_the_judge_knows_an_equation_that_is_not_true():
    link = Link(LinkKind.TURNED_AROUND, (0, 1), ("1 + 1 = 3",), Saying.TURNED)
    assert false(link, ["3 + 4", "4 + 3"])
