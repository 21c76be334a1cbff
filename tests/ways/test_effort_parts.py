"""Effort of decimals, fractions, percents, two sides and estimates: orderings and what must grow.

Rows are as in `test_effort.py`. Where ways of a family are compared whose numbers are the point,
they are told step by step.
"""

import re
from fractions import Fraction
from pathlib import Path

import pytest
from hypothesis import assume, given, settings
from hypothesis import strategies as st

from tests.counts import count
from tests.ways.orderings import MEMORY, READ, Least, Told, told
from tests.ways.test_effort import ORDERINGS as WHOLE_ORDERINGS
from waysaid.number import Equation, Operation, Sign, decimal, mixed, parts, percent
from waysaid.ways import Family, Kind, Step, Way, tenths_of
from waysaid.ways.costs import COSTS, OUR_CHOICE
from waysaid.ways.sum_costs import whole_cost

F = Family
SOURCES = Path(__file__).parents[1] / "published" / "README.md"
MANY = settings(max_examples=count(test=400, sweep=20_000), deadline=None)

ORDERINGS = (
    ("like parts, 92 % right, before unlike ones, 13 %", "nfer-y6, yl2006", READ,
     told("3/7 + 3/7 = 6/7"), told("3/4 + 7/8 = 13/8")),
    ("the same where a whole is made", "nfer-y6, yl2006", READ,
     told("7/8 + 3/8 = 10/8", "10/8 = 1 2/8"),
     told("3/4 = 6/8", "6/8 + 7/8 = 13/8", "13/8 = 1 5/8")),
    ("like denominators (4.NF.3) before unlike ones (5.NF.1)", "ccss", MEMORY,
     told("5/12 + 6/12 = 11/12"), told("1/4 + 2/3 = 11/12")),
    ("like differences before unlike ones", "ccss", MEMORY,
     told("7/8 - 3/8 = 4/8"), told("7/8 - 1/3 = 13/24")),
    ("a fact of one landmark before a common unit (5.NF.2)", "ccss-5nf2", READ,
     told("1/2 + 1/2 = 1"), told("2/5 + 1/2 = 9/10")),
    ("one part of a number before several", "eng-nc2014", MEMORY,
     told("1/6 of 540 = 90"), told("5/6 of 540 = 450")),
    ("one half before one third", OUR_CHOICE, MEMORY,
     told("1/2 of 24 = 12"), told("1/3 of 24 = 8")),
    ("a fraction scaled by 2 before the same by 13", OUR_CHOICE, MEMORY,
     told("7/8 = 14/16"), told("7/8 = 91/104")),
    ("wholes and parts read off before they are added", OUR_CHOICE, MEMORY,
     told("2 + 1/2 = 2 1/2"), told("1 3/4 + 1/2 = 2 1/4")),
    ("whole numbers (3.NBT.2) before decimals (5.NBT.7)", "ccss", READ,
     Least("37 + 25"), Least("3.7 + 2.5")),
    ("the same for products", "ccss", READ, Least("24 x 3"), Least("2.4 x 3")),
    ("tenths before hundredths", OUR_CHOICE, MEMORY, Least("3.7 + 2.5"), Least("3.74 + 2.58")),
    ("as many places before longer and shorter", "unimelb-dec", READ,
     told("0.25 + 0.30 = 0.55"), told("0.25 + 0.3 = 0.55")),
    ("the same for differences", "unimelb-dec", READ,
     told("0.70 - 0.65 = 0.05"), told("0.7 - 0.65 = 0.05")),
    ("one more digit to work on, with a point", OUR_CHOICE, MEMORY,
     Least("2.4 x 3"), Least("2.47 x 3")),
    ("10 % before any percent that is no landmark", "acara", READ,
     told("10% of 80 = 8"), told("17% of 80 = 13.6")),
    ("50 % before any percent that is no landmark", "acara", READ,
     told("50% of 60 = 30"), told("45% of 60 = 27")),
    ("25 % before any percent that is no landmark", "acara", READ,
     told("25% of 80 = 20"), told("35% of 80 = 28")),
    ("10 % before 15 %", OUR_CHOICE, MEMORY, told("10% of 80 = 8"), told("15% of 80 = 12")),
    ("15 % by 10 % and 5 % before 17 % in one go and as many steps", OUR_CHOICE, MEMORY,
     told("10% of 80 = 8", "5% of 80 = 4", "8 + 4 = 12", family=F.BENCHMARK),
     told("10% of 80 = 8", "7% of 80 = 5.6", "8 + 5.6 = 13.6", family=F.BENCHMARK)),
    ("a percent turned round before one that is no landmark", OUR_CHOICE, MEMORY,
     told("25% of 16 = 4"), told("16% of 25 = 4")),
    ("a half with a point before three eighths", "acara", READ,
     told("1/2 = 0.5"), told("3/8 = 0.375")),
    ("moved across before both sides worked out", OUR_CHOICE, MEMORY,
     Least("29 + 14 = 30 + 13 ?", (F.GIVE_AND_TAKE,)), Least("29 + 14 = 30 + 13 ?", (F.RENAME,))),
    ("turned round before both sides worked out", OUR_CHOICE, MEMORY,
     Least("23 x 4 = 4 x 23 ?", (F.KNOWN_FACT,)), Least("23 x 4 = 4 x 23 ?", (F.RENAME,))),
    ("about before exactly", "ccss", MEMORY, Least("about 398 x 21"), Least("398 x 21")),
    ("both numbers rounded before one", OUR_CHOICE, MEMORY,
     Least("about 398 x 21", (F.ADJUST,), "400-and-20"),
     Least("about 398 x 21", (F.ADJUST,), "to-400-in-parts")),
)  # fmt: skip


@pytest.mark.parametrize(
    ("finding", "source", "seen", "less", "more"),
    ORDERINGS,
    ids=[f"{row[1]}: {row[3].problem} before {row[4].problem} ({row[0]})" for row in ORDERINGS],
)
def test_less_effort_before_more(
    finding: str, source: str, seen: str, less: Least | Told, more: Least | Told
) -> None:
    assert less.tenths() < more.tenths()


def test_thirty_orderings_and_more_are_published_and_every_source_is_listed() -> None:
    listed = set(re.findall(r"`([a-z0-9-]+)`", SOURCES.read_text(encoding="utf-8")))
    published = [row for row in (*WHOLE_ORDERINGS, *ORDERINGS) if row[1] != OUR_CHOICE]
    assert sum(row[2] == READ for row in published) >= 30
    for row in published:
        assert set(row[1].split(", ")) <= listed, row[1]
    assert {cost.source for cost in COSTS} <= listed | {OUR_CHOICE}


def tenths(*equations, family=F.KNOWN_FACT):
    """What a way of these equations costs; one with no sign in it opens a number."""
    steps = [
        Step(Kind.JOIN if isinstance(one.left, Operation) else Kind.SPLIT, one) for one in equations
    ]
    return tenths_of(Way(family, "", tuple(steps), 0))


def joined(left, sign, right, result):
    return Equation(Operation(sign, left, right), result)


bottoms = st.integers(2, 12)


@given(bottoms, bottoms, st.data())
@MANY
def test_like_parts_cost_less_than_the_same_tops_of_unlike_ones(one, other, data):
    assume(one != other)
    low, high = sorted((one, other))
    top, more = (data.draw(st.integers(1, low - 1)) for _ in range(2))
    like = joined(parts(top, low), Sign.PLUS, parts(more, low), parts(top + more, low))
    total = Fraction(top, low) + Fraction(more, high)
    unit = low * high
    unlike = joined(parts(top, low), Sign.PLUS, parts(more, high), parts(int(total * unit), unit))
    assert tenths(like) < tenths(unlike)


@given(bottoms, st.integers(1, 11), st.integers(2, 4), st.integers(2, 4))
@MANY
def test_a_fraction_scaled_twice_costs_more_than_once(bottom, top, once, again):
    assume(top < bottom)
    start, middle = parts(top, bottom), parts(top * once, bottom * once)
    end = parts(top * once * again, bottom * once * again)
    assert tenths(Equation(start, middle)) < tenths(Equation(start, middle), Equation(middle, end))


@given(bottoms, st.integers(2, 99), st.data())
@MANY
def test_one_part_of_a_number_costs_no_more_than_several(bottom, share, data):
    top = data.draw(st.integers(1, bottom - 1))
    assume(Fraction(top, bottom).denominator == bottom)
    whole = bottom * share
    one = joined(parts(1, bottom), Sign.OF, whole, share)
    several = joined(parts(top, bottom), Sign.OF, whole, share * top)
    assert tenths(one) <= tenths(several)
    assert top == 1 or tenths(one) < tenths(several)


@given(st.integers(1, 99), st.integers(1, 99), st.integers(1, 3), st.sampled_from((1, -1)))
@MANY
def test_decimals_cost_what_their_digits_do_and_each_point(left, right, places, way):
    assume(left % 10 and right % 10 and (left + right) % 10)
    unit = 10**places
    sign = Sign.PLUS if way > 0 else Sign.MINUS
    left, right = max(left, right), min(left, right)
    result = left + right if way > 0 else left - right
    assume(result % 10)
    numbers = [decimal(Fraction(number, unit), places) for number in (left, right, result)]
    pointed = joined(numbers[0], sign, numbers[1], numbers[2])
    whole = joined(left, sign, right, result)
    assert tenths(pointed) == tenths(whole) + 3


@given(st.sampled_from((1, 10, 50, 100)), st.integers(1, 499), st.integers(3, 9), st.integers(3, 9))
@MANY
def test_a_landmark_costs_less_than_a_percent_of_two_digits(landmark, half, tens, ones):
    assume((tens, ones) != (7, 5) and half % 5)
    number, many = 2 * half, 10 * tens + ones
    rates = [percent(Fraction(one, 100)) for one in (landmark, many)]
    results = [decimal(Fraction(one * number, 100)) for one in (landmark, many)]
    easy, hard = (
        joined(rate, Sign.OF, number, result) for rate, result in zip(rates, results, strict=True)
    )
    assert tenths(easy) < tenths(hard)


@given(st.integers(1, 9), bottoms, st.data())
@MANY
def test_wholes_to_add_too_cost_more(whole, bottom, data):
    top = data.draw(st.integers(1, bottom - 1))
    more = data.draw(st.integers(1, bottom - 1))
    assume(top + more < bottom)
    bare = joined(parts(top, bottom), Sign.PLUS, parts(more, bottom), parts(top + more, bottom))
    with_wholes = joined(
        mixed(whole, top, bottom), Sign.PLUS, mixed(whole, more, bottom),
        mixed(2 * whole, top + more, bottom),
    )  # fmt: skip
    assert tenths(bare) < tenths(with_wholes)


digit = st.integers(1, 9)


def whole_tenths(minus, left, right):
    return sum(whole_cost(minus, left, right))


def at(pairs, side):
    """The numbers above the ones, of one side of the pairs."""
    return int("".join(str(pair[side]) for pair in pairs)) * 10


@st.composite
def below_nine(draw):
    one = draw(st.integers(1, 7))
    return one, draw(st.integers(1, 8 - one))


@st.composite
def apart(draw):
    other = draw(st.integers(1, 7))
    return draw(st.integers(other + 2, 9)), other


@given(st.integers(2, 8), st.lists(below_nine(), min_size=1, max_size=3), st.data())
@MANY
def test_one_more_carry_costs_more_with_all_else_alike(stays, above, data):
    """The ones alone change, from a sum within ten to one that passes it; no other place does."""
    without = data.draw(st.integers(1, 9 - stays))
    passing = data.draw(st.integers(11 - stays, 9))
    left, right = at(above, 0), at(above, 1) + stays
    assert whole_tenths(False, left + without, right) < whole_tenths(False, left + passing, right)


@given(st.integers(2, 8), st.lists(apart(), min_size=1, max_size=3), st.data())
@MANY
def test_one_more_trade_costs_more_with_all_else_alike(taken, above, data):
    """The ones alone change, from enough to too few; every other place has one to spare.

    Halves are left out: 14 - 7 and 8 - 4 are easier than their neighbours.
    """
    enough = data.draw(st.integers(taken + 1, 9))
    too_few = data.draw(st.integers(1, taken - 1))
    assume(10 + too_few != 2 * taken and enough != 2 * taken)
    assume(all(2 * other not in (one, one - 1) for one, other in above))
    left, right = at(above, 0), at(above, 1) + taken
    assert whole_tenths(True, left + enough, right) < whole_tenths(True, left + too_few, right)


@given(digit, digit, digit, digit, digit)
@MANY
def test_one_more_digit_to_work_on_costs_more(tens, ones, more_tens, more_ones, place):
    """A zero of the second number becomes a digit; nothing is passed before or after."""
    assume(tens + more_tens < 10 and ones + more_ones < 10)
    left = 10 * tens + ones
    assert whole_tenths(False, left, 10 * more_tens) < whole_tenths(
        False, left, 10 * more_tens + more_ones
    )
    assert whole_tenths(False, left, more_ones) < whole_tenths(
        False, left, 10 * more_tens + more_ones
    )
    assert whole_tenths(False, left, place * 100) < whole_tenths(
        False, left + place * 100, place * 100 + more_ones
    )
