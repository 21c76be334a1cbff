"""Links: each one found is true, none of the plain kinds is missed, and few are offered."""

from fractions import Fraction
from itertools import combinations, pairwise, product

import pytest
import sympy
from hypothesis import example, given

from tests.strings.strings_made import strings
from waysaid.number import (
    BLANK,
    Equation,
    Language,
    Operation,
    Problem,
    Sign,
    is_true,
    parse,
    parse_equation,
    solve,
    text,
)
from waysaid.strings import MOST, Link, LinkKind, leaves_of, link_says, links


def found(*given_texts: str, every: bool = False) -> tuple[Link, ...]:
    return links([parse(one) for one in given_texts], every=every)


def kinds(*given_texts: str) -> set[LinkKind]:
    return {link.kind for link in found(*given_texts, every=True)}


def test_the_example_of_the_design_is_found_first():
    first = found("40 + 25", "37 + 25", "37 + 28")[0]
    assert first.kind is LinkKind.ONE_CHANGES
    assert first.between == (0, 1)
    assert first.shows == ("40 - 3 = 37", "65 - 3 = 62")


def test_the_design_example_also_moves_three_across():
    links_found = found("40 + 25", "37 + 25", "37 + 28")
    assert [(link.kind.value, link.between) for link in links_found] == [
        ("one-changes", (0, 1)),
        ("one-changes", (1, 2)),
        ("both-change", (0, 2)),
    ]


@pytest.mark.parametrize(
    ("first", "second", "kind"),
    [
        ("12 + 5", "30 + 5", LinkKind.SAME_NUMBER),
        ("40 + 22", "37 + 25", LinkKind.SAME_TOTAL),
        ("40 + 25", "37 + 25", LinkKind.ONE_CHANGES),
        ("52 - 20", "52 - 19", LinkKind.ONE_CHANGES),
        ("9 + _ = 13", "8 + _ = 13", LinkKind.ONE_CHANGES),
        ("10 - _ = 5", "10 - _ = 6", LinkKind.ONE_CHANGES),
        ("6 + 4 + 3", "6 + 4 + 5", LinkKind.ONE_CHANGES),
        ("30 + 15", "29 + 16", LinkKind.BOTH_CHANGE),
        ("30 + 15", "16 + 29", LinkKind.BOTH_CHANGE),
        ("62 - 25", "67 - 30", LinkKind.BOTH_CHANGE),
        ("28 + _ = 35", "38 + _ = 45", LinkKind.BOTH_CHANGE),
        ("50 + 30", "48 + 33", LinkKind.FRIENDLY_TWIN),
        ("30 + 20", "34 + 25", LinkKind.INSIDE_A_WAY),
        ("28 + 2", "28 + 5", LinkKind.INSIDE_A_WAY),
        ("17 + 3", "17 + 9 + 3", LinkKind.INSIDE_A_WAY),
        ("37 + 25", "25 + 37", LinkKind.TURNED_AROUND),
        ("6 + 4 + 3", "6 + 3 + 4", LinkKind.TURNED_AROUND),
        ("8 + 5", "13 - 8", LinkKind.OPPOSITE),
        ("13 - 8", "13 - 5", LinkKind.OPPOSITE),
        ("7 + _ = 12", "12 - 7", LinkKind.OPPOSITE),
        ("3 + 4", "30 + 40", LinkKind.TEN_TIMES),
        ("3 + 4", "300 + 400", LinkKind.TEN_TIMES),
        ("4 + 3", "8 + 6", LinkKind.DOUBLE_HALF),
        ("28 + 2", "30 + 7", LinkKind.FEEDS_NEXT),
    ],
)
def test_each_kind_of_two_is_found(first, second, kind):
    assert kind in kinds(first, second)


@pytest.mark.parametrize(
    ("first", "second", "kind"),
    [
        ("40 + 25", "37 - 25", LinkKind.ONE_CHANGES),
        ("40 + 25", "41 + 26", LinkKind.BOTH_CHANGE),
        ("62 - 25", "63 - 24", LinkKind.BOTH_CHANGE),
        ("9 - 4", "4 + 9", LinkKind.TURNED_AROUND),
        ("8 + 5", "8 - 5", LinkKind.OPPOSITE),
        ("3 + 4", "30 + 4", LinkKind.TEN_TIMES),
        ("28 + 2", "31 + 7", LinkKind.FEEDS_NEXT),
        ("7 + 7", "7 + 7", LinkKind.TURNED_AROUND),
        ("50 + 30", "46 + 35", LinkKind.FRIENDLY_TWIN),
        ("12 + 1", "12 + 3", LinkKind.INSIDE_A_WAY),
        ("7 - 1", "7 - 3", LinkKind.INSIDE_A_WAY),
    ],
)
def test_what_only_looks_like_a_link_is_not_found(first, second, kind):
    assert kind not in kinds(first, second)


@pytest.mark.parametrize(
    ("string", "sentence"),
    [
        (
            ("64 + 10", "64 + 20", "64 + 30"),
            "Each time one number goes up 10, and the answer goes up 10.",
        ),
        (
            ("80 - 10", "80 - 20", "80 - 30"),
            "Each time one number goes up 10, and the answer goes down 10.",
        ),
        (
            ("5 + 5", "6 + 4", "7 + 3"),
            "Each time 1 moves from one number to the other, and it keeps making the same.",
        ),
        (
            ("50 - 20", "51 - 21", "52 - 22"),
            "Each time both numbers change by 1 the same way, and they stay just as far apart.",
        ),
        (("5 + 5", "5 + 6", "6 + 6", "6 + 7"), "The answers go up 1 each time."),
        (
            ("1 + 1", "2 + 2", "3 + 3"),
            "The numbers change in the same way each time, and the answer goes up 2.",
        ),
        (
            ("9 + _ = 13", "8 + _ = 13", "7 + _ = 13"),
            "Each time one number goes down 1, and the answer goes up 1.",
        ),
    ],
)
def test_a_rule_through_three_or_more_is_a_pattern(string, sentence):
    patterns = [link for link in found(*string) if link.kind is LinkKind.PATTERN]
    assert patterns[0].between == tuple(range(len(string)))
    assert link_says(patterns[0], Language.EN) == sentence


def test_a_pattern_may_begin_later_in_the_string():
    (pattern,) = (
        link
        for link in found("50 + 30", "49 + 31", "48 + 33", "47 + 35")
        if link.kind is LinkKind.PATTERN
    )
    assert pattern.between == (1, 2, 3)
    assert link_says(pattern, Language.EN).endswith("and the answer goes up 1.")
    assert pattern.shows[:2] == ("49 - 1 = 48", "48 - 1 = 47")


def test_two_problems_are_no_pattern():
    assert LinkKind.PATTERN not in kinds("64 + 10", "64 + 20")


@given(strings())
def test_every_equation_a_link_shows_is_true(string):
    for link in links(string, every=True):
        assert link.shows
        for shown in link.shows:
            equation = parse_equation(shown)
            assert is_true(equation), (link, shown)
            left, right = shown.replace("x", "*").split("=")
            assert sympy.sympify(left) == sympy.sympify(right)


@given(strings())
def test_every_link_names_two_or_more_problems_in_rising_order(string):
    for link in links(string, every=True):
        assert len(link.between) >= 2
        assert list(link.between) == sorted(set(link.between))
        assert set(link.between) <= set(range(len(string)))


@given(strings())
def test_every_mark_is_a_number_of_a_linked_problem(string):
    for link in links(string, every=True):
        for row, place in link.marks:
            assert row in link.between
            assert place == "answer" or 0 <= place < len(leaves_of(string[row]))


# The general claim of each kind, worked out here once more from the problems alone.


def terms(problem: Problem) -> list[int]:
    """The given numbers, signed so that they sum to the answer, found by trying each sign."""
    given_numbers = [leaf for leaf in leaves_of(problem) if leaf is not BLANK]
    bumped = []
    for at, number in enumerate(given_numbers):
        more = list(given_numbers)
        more[at] += 1000
        bumped.append(number if answer_with(problem, more) > solve(problem) else -number)
    assert sum(bumped) == solve(problem)
    return bumped


def answer_with(problem: Problem, numbers: list[int]) -> int:
    rest = iter(numbers)
    words = text(problem).split(" ")
    return solve(parse(" ".join(str(next(rest)) if word.isdigit() else word for word in words)))


def form(problem: Problem) -> str:
    return " ".join("n" if word.isdigit() else word for word in text(problem).split(" "))


CLAIMS = {
    LinkKind.SAME_NUMBER: lambda link, rows: all(link.numbers[0] in leaves_of(one) for one in rows),
    LinkKind.SAME_TOTAL: lambda _, rows: len(set(map(solve, rows))) == 1,
    LinkKind.ONE_CHANGES: lambda _, rows: alike(rows) and differing(*rows) == (1, 1),
    LinkKind.BOTH_CHANGE: lambda _, rows: (
        alike(rows) and differing(*rows) == (2, 2) and solve(rows[0]) == solve(rows[1])
    ),
    LinkKind.TURNED_AROUND: lambda _, rows: alike(rows) and differing(*rows) == (0, 0),
    LinkKind.OPPOSITE: lambda _, rows: three_numbers(rows[0]) == three_numbers(rows[1]),
    LinkKind.TEN_TIMES: lambda _, rows: scaled(rows, (10, 100)),
    LinkKind.DOUBLE_HALF: lambda _, rows: scaled(rows, (2,)),
    LinkKind.FEEDS_NEXT: lambda _, rows: solve(rows[0]) in leaves_of(rows[1]),
    LinkKind.FRIENDLY_TWIN: lambda _, rows: alike(rows) and friendlier(rows),
    LinkKind.INSIDE_A_WAY: lambda link, rows: any(
        f"{text(one)} = {solve(one)}" in link.shows for one in rows
    ),
    LinkKind.PATTERN: lambda _, rows: len(rows) >= 3 and in_one_step(list(map(solve, rows))),
}


def holds(link: Link, string: list[Problem]) -> bool:
    return CLAIMS[link.kind](link, [string[at] for at in link.between])


def in_one_step(answers: list[int]) -> bool:
    """The answers go up or down by the same, or grow the same number of times: 1, 4, 16."""
    by = {after - before for before, after in pairwise(answers)}
    if len(by) > 1 and all(answers):
        by = {Fraction(after, before) for before, after in pairwise(answers)}
    return len(by) == 1


def alike(rows: list[Problem]) -> bool:
    return len(set(map(form, rows))) == 1


def friendlier(rows: list[Problem]) -> bool:
    """One of the two has more full tens than the other."""
    first, second = ([leaf for leaf in leaves_of(one) if leaf is not BLANK] for one in rows)
    tens = [sum(number % 10 == 0 for number in numbers) for numbers in (first, second)]
    return tens[0] != tens[1]


def differing(first: Problem, second: Problem) -> tuple[int, int]:
    left, right = terms(first), terms(second)
    for number in list(left):
        if number in right:
            left.remove(number)
            right.remove(number)
    return len(left), len(right)


def three_numbers(problem: Problem) -> list[int]:
    given_numbers = [leaf for leaf in leaves_of(problem) if leaf is not BLANK]
    return sorted([*given_numbers, solve(problem)])


def scaled(problems: list[Problem], factors: tuple[int, ...]) -> bool:
    one, other = (sorted(terms(problem)) for problem in problems)
    return any(
        [number * by for number in a] == b
        for by in factors
        for a, b in ((one, other), (other, one))
    )


@given(strings())
@example([parse("0 + 1"), parse("0 + 4"), parse("4 + 12")])
@example([parse("11 - 2"), parse("2 + _ = 11")])
def test_the_general_claim_of_every_link_holds(string):
    for link in links(string, every=True):
        assert holds(link, string), link


def small_problems() -> list[Problem]:
    pairs = list(product(range(5), repeat=2))
    return [
        *(Operation(Sign.PLUS, a, b) for a, b in pairs),
        *(Operation(Sign.MINUS, a, b) for a, b in pairs if a >= b),
        *(Equation(Operation(Sign.PLUS, a, BLANK), b) for a, b in pairs if a <= b),
    ]


@pytest.mark.parametrize(
    "kind",
    [
        LinkKind.SAME_TOTAL,
        LinkKind.ONE_CHANGES,
        LinkKind.BOTH_CHANGE,
        LinkKind.FEEDS_NEXT,
    ],
)
def test_no_link_of_a_plain_kind_is_missed_among_small_numbers(kind):
    missed = []
    for first, second in combinations(small_problems(), 2):
        wanted = form(first) == form(second) or kind in (LinkKind.SAME_TOTAL, LinkKind.FEEDS_NEXT)
        claim = Link(kind, (0, 1), (), saying=None)
        if wanted and holds(claim, [first, second]):
            have = {link.kind for link in links([first, second], every=True)}
            if kind not in have:
                missed.append((text(first), text(second)))
    assert not missed


TWO_WAY = {
    LinkKind.SAME_NUMBER,
    LinkKind.SAME_TOTAL,
    LinkKind.ONE_CHANGES,
    LinkKind.BOTH_CHANGE,
    LinkKind.TURNED_AROUND,
    LinkKind.OPPOSITE,
    LinkKind.TEN_TIMES,
    LinkKind.DOUBLE_HALF,
    LinkKind.FRIENDLY_TWIN,
    LinkKind.INSIDE_A_WAY,
    LinkKind.PATTERN,
}


def places(string: list[Problem]) -> set[tuple[LinkKind, tuple[int, ...]]]:
    every = links(string, every=True)
    return {(link.kind, link.between) for link in every if link.kind in TWO_WAY}


@given(strings())
def test_all_but_feeding_the_next_stay_when_the_string_is_reversed(string):
    last = len(string) - 1
    mirrored = {
        (kind, tuple(sorted(last - at for at in between))) for kind, between in places(string)
    }
    assert places(string[::-1]) == mirrored


@given(strings())
def test_what_is_offered_is_a_small_part_of_every_link(string):
    every, few = links(string, every=True), links(string)
    assert set(few) <= set(every)
    assert len(few) <= MOST
    pairs = [link.between for link in few if len(link.between) == 2]
    kinds_of_pairs = (LinkKind.PATTERN, LinkKind.SAME_TOTAL, LinkKind.SAME_NUMBER)
    told = [link.between for link in few if link.kind not in kinds_of_pairs]
    assert all(told.count(pair) <= 2 for pair in pairs)


@pytest.mark.parametrize(
    ("string", "left_out"),
    [
        (("5 + 5", "6 + 4", "7 + 3"), "both-change"),
        (("64 + 10", "64 + 20", "64 + 30"), "one-changes"),
        (("755 + _ = 1000", "368 + _ = 1000"), "one-changes"),
        (("30 + 15", "29 + 16"), "same-total"),
        (("40 + 25", "37 + 25"), "friendly-twin"),
        (("6 + 4", "10 - 6"), "feeds-next"),
        (("7 + 1", "12 + 1"), "same-number"),
    ],
)
def test_what_a_better_link_says_or_nobody_would_see_is_not_offered(string, left_out):
    assert left_out in {link.kind.value for link in found(*string, every=True)}
    assert left_out not in {link.kind.value for link in found(*string)}


@given(strings())
def test_something_is_offered_wherever_a_link_of_neighbours_changes_one_number(string):
    every = [link for link in links(string, every=True) if link.kind is LinkKind.ONE_CHANGES]
    assert links(string) or not every


def test_a_number_that_comes_back_is_not_said_where_one_changes_says_it():
    assert LinkKind.SAME_NUMBER not in {link.kind for link in found("40 + 25", "37 + 25")}
    assert LinkKind.SAME_NUMBER in {link.kind for link in found("12 + 25", "48 - 25")}


@given(strings(longest=3))
def test_the_same_string_gives_the_same_links(string):
    assert links(string) == links(tuple(string))


def test_an_empty_string_and_a_single_problem_have_no_links():
    assert found() == ()
    assert found("37 + 25", every=True) == ()


def test_problems_beyond_sums_still_share_numbers_and_answers():
    assert kinds("3 x 4", "12 + 5") >= {LinkKind.FEEDS_NEXT}
    assert kinds("3 x 4", "7 + 5") >= {LinkKind.SAME_TOTAL}
