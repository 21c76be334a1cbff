"""Effort: its parts, its table, and the orderings that research reports.

An ordering compares the least effort over the ways of a problem, or over one family of them. Each
row names its source by its id in `tests/published/README.md`, and says whether the finding was
read (often in an abstract) or is from memory.
"""

import pytest
from hypothesis import given
from hypothesis import strategies as some

from tests.ways.orderings import MEMORY, READ, Least
from waysaid.number import parse
from waysaid.ways import Family, effort_of, tenths_of, ways
from waysaid.ways.costs import COSTS, OUR_CHOICE, SUM_FACTS, TAKE_FACTS, TENTHS, TIMES_FACTS, Charge
from waysaid.ways.effort import Reason

F = Family
OFF = (F.JUMP, F.BRIDGE, F.SPLIT, F.SPLIT_THEN_JUMP, F.COLUMN, F.COUNTING)
"""Taking away, as against going up; `adjust` may go either way and is left out."""

ORDERINGS = (
    ("ties are easier than their neighbours", "groen-parkman1972", READ,
     Least("6 + 6", (F.KNOWN_FACT,)), Least("6 + 5", (F.KNOWN_FACT,))),
    ("ties take one time: a large tie is no harder than a small one and its neighbour",
     "groen-parkman1972", READ,
     Least("9 + 9", (F.KNOWN_FACT,)), Least("4 + 5", (F.KNOWN_FACT,))),
    ("the smaller number sets the size of a sum", "groen-parkman1972", READ,
     Least("7 + 2", (F.KNOWN_FACT,)), Least("4 + 5", (F.KNOWN_FACT,))),
    ("counting on from the larger is the shorter count", "groen-parkman1972", READ,
     Least("9 + 3", (F.COUNTING,)), Least("7 + 5", (F.COUNTING,))),
    ("+ 0 is easiest", "dowker2014", READ, Least("7 + 0"), Least("7 + 1")),
    ("the next number is easier than a fact", "dowker2014", READ,
     Least("7 + 1"), Least("7 + 2")),
    ("a fact turned round is harder than the fact", "dowker2014", READ,
     Least("7 + 6", (F.KNOWN_FACT,)), Least("13 - 6", (F.KNOWN_FACT,))),
    ("putting right after taking away is harder than after a sum", "dowker2014", READ,
     Least("46 + 9", (F.ADJUST,)), Least("46 - 9", (F.ADJUST,))),
    ("facts to 10 come before facts to 20 (1.OA.6, 2.OA.2)", "ccss", READ,
     Least("4 + 5", (F.KNOWN_FACT,)), Least("8 + 5", (F.KNOWN_FACT,))),
    ("the same for differences", "ccss", READ,
     Least("9 - 4", (F.KNOWN_FACT,)), Least("13 - 5", (F.KNOWN_FACT,))),
    ("within 100 comes before within 1000 (2.NBT.5, 3.NBT.2)", "ccss", READ,
     Least("37 + 25"), Least("437 + 325")),
    ("10 more is done mentally before any two-digit number (1.NBT.5, 2.NBT.5)", "ccss", MEMORY,
     Least("46 + 10"), Least("46 + 17")),
    ("100 less is done mentally (2.NBT.8)", "ccss", READ, Least("846 - 100"), Least("846 - 118")),
    ("pairs to 10 are known early", "tcm2010", READ,
     Least("7 + 3", (F.KNOWN_FACT,)), Least("5 + 4", (F.KNOWN_FACT,))),
    ("ones, then tens, then any two-digit number (Year 2)", "eng-nc2014", READ,
     Least("52 + 4"), Least("52 + 34")),
    ("recall is quicker than working it out over 10", "lefevre1996", READ,
     Least("8 + 6", (F.KNOWN_FACT,)), Least("8 + 6", (F.BRIDGE, F.NEAR_DOUBLE, F.COUNTING))),
    ("counting in series is slowest", "steel-funnell2001", READ,
     Least("8 + 6", (F.BRIDGE,)), Least("8 + 6", (F.COUNTING,), "by-ones")),
    ("counting a large number on is worse than bridging", "steel-funnell2001", READ,
     Least("37 + 25", (F.BRIDGE,)), Least("37 + 25", (F.COUNTING,))),
    ("counting two on is no worse than bridging", OUR_CHOICE, MEMORY,
     Least("9 + 2", (F.COUNTING,)), Least("9 + 2", (F.BRIDGE,))),
    ("crossing a ten is harder than staying within it", "beishuizen1993", MEMORY,
     Least("34 + 25", (F.JUMP,)), Least("37 + 25", (F.JUMP,))),
    ("the same for differences", "beishuizen1993", MEMORY,
     Least("67 - 25", (F.JUMP,)), Least("62 - 25", (F.JUMP,))),
    ("with regrouping, splitting both is harder than keeping one whole", "beishuizen1993", MEMORY,
     Least("65 - 49", (F.JUMP,)), Least("65 - 49", (F.SPLIT,))),
    ("splitting both is harder with regrouping than without", "beishuizen1993", MEMORY,
     Least("68 - 32", (F.SPLIT,)), Least("62 - 38", (F.SPLIT,))),
    ("near numbers favour going up", "torbeyns2011", READ,
     Least("713 - 695", (F.ADD_UP,)), Least("713 - 695", OFF)),
    ("near numbers favour going up", "jnc5795", READ,
     Least("81 - 79", (F.ADD_UP,)), Least("81 - 79", OFF)),
    ("near numbers favour going up", "vanderauwera2022", READ,
     Least("903 - 886", (F.ADD_UP,)), Least("903 - 886", OFF)),
    ("far numbers favour taking away", "vanderauwera2022", READ,
     Least("502 - 18", OFF), Least("502 - 18", (F.ADD_UP,))),
    ("camp task: easy before moderate", "nzcer", READ, Least("25 - 8"), Least("47 - 15")),
    ("camp task: moderate before difficult", "nzcer", READ, Least("47 - 15"), Least("65 - 29")),
    ("camp task: difficult before very difficult", "nzcer", READ,
     Least("65 - 29"), Least("104 - 46")),
    ("94 % right before 80 %", "nemp1997", READ, Least("74 - 21"), Least("52 - 37")),
    ("92 % right before 70 %", "nemp1997", READ, Least("775 - 432"), Least("536 - 277")),
    ("96 % right before 90 %", "nemp1997", READ, Least("42 + 35"), Least("87 + 56")),
    ("the written column is what older children leave in the head", "caviola2018", READ,
     Least("34 - 18", (F.JUMP, F.SPLIT)), Least("34 - 18", (F.COLUMN,))),
    ("a piece below zero is harder than opening a ten first", OUR_CHOICE, MEMORY,
     Least("62 - 25", (F.SPLIT,), "opened"), Least("62 - 25", (F.SPLIT,), "tens-first")),
    ("a number just below a ten favours adjusting over jumping", OUR_CHOICE, MEMORY,
     Least("52 + 39", (F.ADJUST,), "second-to"), Least("52 + 39", (F.JUMP,), "tens-first")),
    ("a number just above a ten favours jumping over filling up", OUR_CHOICE, MEMORY,
     Least("46 + 31", (F.JUMP,)), Least("46 + 31", (F.BRIDGE,))),
    ("changing both numbers is harder than changing one", OUR_CHOICE, MEMORY,
     Least("58 + 39", (F.ADJUST,), "second-to"), Least("58 + 39", (F.ADJUST,), "both")),
    ("ties are easier than their neighbours", "debrauwer2006", READ,
     Least("7 x 7", (F.KNOWN_FACT,)), Least("7 x 8", (F.KNOWN_FACT,))),
    ("fives are easier than their size suggests", "debrauwer2006", READ,
     Least("5 x 8", (F.KNOWN_FACT,)), Least("4 x 9", (F.KNOWN_FACT,))),
    ("small products are easier than large ones", "debrauwer2006", READ,
     Least("3 x 4", (F.KNOWN_FACT,)), Least("7 x 8", (F.KNOWN_FACT,))),
    ("63 % wrong after 50 %", "caddington2013", READ,
     Least("4 x 8", (F.KNOWN_FACT,)), Least("6 x 8", (F.KNOWN_FACT,))),
    ("under 5 % wrong before 50 %", "caddington2013", READ,
     Least("1 x 12"), Least("4 x 8", (F.KNOWN_FACT,))),
    ("recall is quicker than a fact derived", "lefevre1996m", READ,
     Least("6 x 7", (F.KNOWN_FACT,)), Least("6 x 7", (F.NEAR_FACT, F.BREAK_UP, F.COUNTING))),
    ("a fact derived is quicker than a series counted", "steel-funnell2001", READ,
     Least("7 x 6", (F.NEAR_FACT,)), Least("7 x 6", (F.COUNTING,))),
    ("the fact before the quotient (3.OA.7 asks for products from memory)", "ccss", READ,
     Least("7 x 8", (F.KNOWN_FACT,)), Least("56 / 8", (F.KNOWN_FACT,))),
    ("a digit times tens (3.NBT.3) before two digits times one (4.NBT.5)", "ccss", READ,
     Least("5 x 60"), Least("17 x 6")),
    ("two digits times one (Year 3) before two times two", "eng-nc2014", READ,
     Least("17 x 6"), Least("17 x 26")),
    ("600 / 3 comes from 2 x 3 (Year 4)", "eng-nc2014", READ,
     Least("600 / 3", (F.KNOWN_FACT, F.RENAME)), Least("600 / 3", (F.ADJUST,))),
    ("one group fewer pays off just below a ten", OUR_CHOICE, MEMORY,
     Least("19 x 7", (F.NEAR_FACT,)), Least("19 x 7", (F.BREAK_UP,))),
    ("two parts pay off just above a ten", OUR_CHOICE, MEMORY,
     Least("13 x 7", (F.BREAK_UP,)), Least("13 x 7", (F.COUNTING, F.COLUMN))),
    ("doubling and halving beats four products", OUR_CHOICE, MEMORY,
     Least("16 x 25", (F.DOUBLE_HALVE,)), Least("16 x 25", (F.BREAK_UP,), "both")),
    ("two products beat four", OUR_CHOICE, MEMORY,
     Least("24 x 36", (F.BREAK_UP,)), Least("24 x 36", (F.BREAK_UP,), "both")),
    ("few large lots beat many small ones", OUR_CHOICE, MEMORY,
     Least("186 / 6", (F.CHUNK_OUT,), "by-place"), Least("186 / 6", (F.CHUNK_OUT,), "tens-one")),
    ("a pair that makes ten is multiplied first", "nns1999", MEMORY,
     Least("2 x 7 x 5", (F.PARTNERS,), "pair-1-3"), Least("2 x 7 x 5", (F.PARTNERS,), "pair-2-3")),
    ("counting on from the larger is quicker than from the smaller", "groen-parkman1972", READ,
     Least("3 + 9", (F.COUNTING,), "by-ones-from-second"),
     Least("3 + 9", (F.COUNTING,), "by-ones-from-first")),
    ("a near double beats counting where the numbers are large", "steel-funnell2001", READ,
     Least("8 + 9", (F.NEAR_DOUBLE,)), Least("8 + 9", (F.COUNTING,))),
    ("counting beats a near double where they are small", OUR_CHOICE, MEMORY,
     Least("2 + 3", (F.COUNTING,)), Least("2 + 3", (F.NEAR_DOUBLE,))),
    ("the tens, 12 % wrong, before the twelves, 34 %", "caddington2013", READ,
     Least("10 x 7"), Least("12 x 7")),
    ("the twos, 12 % wrong, before the twelves, 34 %", "caddington2013", READ,
     Least("2 x 7"), Least("12 x 7")),
    ("the ones, 8 % wrong, before the twos, 12 %", "caddington2013", READ,
     Least("1 x 6"), Least("2 x 6")),
    ("times 0 is a rule, and no fact to recall", "lefevre1996m", READ,
     Least("7 x 0"), Least("7 x 6")),
    ("times 1 is a rule", "caddington2013", READ, Least("7 x 1"), Least("7 x 6")),
    ("a tie is easier than a smaller product of other numbers", "campbell-graham1985", MEMORY,
     Least("6 x 6", (F.KNOWN_FACT,)), Least("4 x 8", (F.KNOWN_FACT,))),
    ("6 x 8, wrong most often, after 6 x 6", "caddington2013", READ,
     Least("6 x 6", (F.KNOWN_FACT,)), Least("6 x 8", (F.KNOWN_FACT,))),
    ("products to 5 x 5 (Grade 3) before those to 7 x 7 (Grade 4)", "alberta", READ,
     Least("4 x 5", (F.KNOWN_FACT,)), Least("6 x 7", (F.KNOWN_FACT,))),
    ("products to 7 x 7 (Grade 4) before those to 9 x 9 (Grade 5)", "alberta", READ,
     Least("6 x 7", (F.KNOWN_FACT,)), Least("8 x 9", (F.KNOWN_FACT,))),
    ("80 % right before 70 %", "nemp1997", READ, Least("52 - 37"), Least("536 - 277")),
    ("two numbers, 90 % right, before five, 57 %", "nemp1997", READ,
     Least("237 + 436"), Least("36 + 117 + 6 + 23 + 240")),
    ("a 3-digit number shared, 76 % right, before a 4-digit one, 50 %", "nfer2020", READ,
     Least("432 / 12"), Least("4332 / 12")),
    ("a 3-digit product, 20 % in error, before a 4-digit one, 25 %", "nfer2020", READ,
     Least("342 x 26"), Least("3421 x 26")),
    ("hundreds on a 3-digit number (Year 3) before any number", "eng-nc2014", READ,
     Least("346 + 200"), Least("346 + 278")),
    ("work on one side before work on both", "equality", READ,
     Least("7 + 6"), Least("7 + 6 = _ + 2")),
    ("a pair that makes ten is put together first", "eng-nc2014", READ,
     Least("7 + 26 + 3", (F.PARTNERS,)), Least("7 + 26 + 3", (F.JUMP, F.SPLIT))),
)  # fmt: skip


@pytest.mark.parametrize(
    ("finding", "source", "seen", "less", "more"),
    ORDERINGS,
    ids=[f"{row[1]}: {row[3].problem} before {row[4].problem} ({row[0]})" for row in ORDERINGS],
)
def test_less_effort_before_more(
    finding: str, source: str, seen: str, less: Least, more: Least
) -> None:
    assert less.tenths() < more.tenths()


def test_smaller_addend_orders_all_facts_of_one_larger_number() -> None:
    """Groen & Parkman 1972, read in a summary: the smaller addend explains the times."""
    for larger in range(3, 10):
        others = [SUM_FACTS[larger][smaller] for smaller in range(larger) if larger + smaller != 10]
        assert others == sorted(others)
        assert others[0] < others[-1]


def test_ties_cost_less_than_every_neighbour() -> None:
    for tie in range(3, 10):
        assert SUM_FACTS[tie][tie] < SUM_FACTS[tie][tie - 1]


def test_sums_cost_the_same_turned_round() -> None:
    assert all(SUM_FACTS[a][b] == SUM_FACTS[b][a] for a in range(10) for b in range(10))


def test_the_tables_are_missed_in_the_order_of_a_school() -> None:
    """Caddington 2013, read in press reports: wrong in 8 % of the ones, 12 % of the twos and tens,
    34 % of the twelves."""
    tables = {table: sum(TIMES_FACTS[table][1:]) for table in (1, 2, 10, 12)}
    assert tables[1] < tables[2] < tables[12]
    assert tables[1] < tables[10] < tables[12]


def test_tables_of_a_later_year_cost_more() -> None:
    """eng-nc2014, read: twos, fives and tens in Year 2; threes, fours, eights in Year 3."""
    early = [sum(TIMES_FACTS[table]) for table in (2, 5, 10)]
    later = [sum(TIMES_FACTS[table]) for table in (3, 4, 8)]
    assert max(early) < min(later)


def test_products_cost_the_same_turned_round_and_ties_less_than_neighbours() -> None:
    assert all(TIMES_FACTS[a][b] == TIMES_FACTS[b][a] for a in range(13) for b in range(13))
    for tie in (3, 6, 7, 8):
        assert TIMES_FACTS[tie][tie] < TIMES_FACTS[tie][tie + 1]


def test_a_larger_factor_never_costs_less_where_no_rule_helps() -> None:
    """debrauwer2006, read in the abstract: the size effect."""
    for table in (3, 4, 6, 7, 8, 9):
        plain = [TIMES_FACTS[table][by] for by in (3, 4, 6, 7, 8, 9) if by != table]
        assert plain == sorted(plain)


@pytest.mark.parametrize(("less", "more"), [("70 x 8", "78 x 8"), ("20 x 36", "24 x 36")])
def test_one_more_digit_to_work_on_costs_more(less: str, more: str) -> None:
    assert Least(less).tenths() < Least(more).tenths()


def test_a_difference_never_costs_less_than_its_sum() -> None:
    """Dowker 2014, read in the abstract: identity is easiest, inverse and complement hardest."""
    for part in range(2, 10):
        for rest in range(2, 10):
            assert TAKE_FACTS[part + rest][part] > SUM_FACTS[part][rest]


def test_every_charge_has_one_line_with_a_source_and_a_reason() -> None:
    assert [cost.charge for cost in COSTS] == list(dict.fromkeys(cost.charge for cost in COSTS))
    assert {cost.charge for cost in COSTS} == set(Charge)
    assert all(cost.tenths > 0 and cost.source and cost.why for cost in COSTS)


PARTS = (
    ("37 + 25", F.BRIDGE, "to-ten-from-first", Reason.HELD, (Charge.HOLD,)),
    ("39 + 25", F.ADJUST, "first-to-40", Reason.REWRITTEN, (Charge.REWRITE, Charge.MEND)),
    ("65 - 29", F.ADJUST, "part-to-30", Reason.REWRITTEN, (Charge.REWRITE, Charge.MEND_TAKEN)),
    ("37 + 25", F.JUMP, "tens-first-from-first", Reason.REWRITTEN, (Charge.CUT,)),
    ("37 + 25", F.JUMP, "tens-first-from-first", Reason.CROSSING, (Charge.CROSS,)),
    ("8 + 3", F.COUNTING, "by-ones", Reason.COUNTING, (Charge.TALLY, *(Charge.HOP,) * 3)),
    ("37 + 25", F.COLUMN, "", Reason.COLUMN, (Charge.COLUMN,) * 3),
    ("37 + 25", F.SPLIT, "tens-first", Reason.STEPS, (Charge.STEP,) * 3),
    ("34 + 20", F.SPLIT, "tens-first", Reason.STEPS, (Charge.STEP, Charge.READ_OFF)),
)


@pytest.mark.parametrize(("problem", "family", "variant", "reason", "charges"), PARTS)
def test_a_part_is_made_of_the_charges_of_the_table(
    problem: str, family: Family, variant: str, reason: Reason, charges: tuple[Charge, ...]
) -> None:
    way = Least(problem, (family,), variant).ways()[0]
    parts = {part.reason: part.tenths for part in effort_of(way).parts}
    assert parts[reason] == sum(TENTHS[charge] for charge in charges)


def test_effort_tells_its_parts() -> None:
    bridge = Least("37 + 25", (F.BRIDGE,), "to-ten-from-first").ways()[0]
    effort = effort_of(bridge)
    assert {part.reason for part in effort.parts} >= {Reason.STEPS, Reason.FACTS, Reason.REWRITTEN}
    assert effort.text == f"{effort.tenths // 10}.{effort.tenths % 10}"
    assert all(part.tenths > 0 for part in effort.parts)


def test_a_negative_piece_is_named_among_the_parts() -> None:
    split = next(
        way
        for way in ways(parse("62 - 25"))
        if any(step.text == "2 - 5 = -3" for step in way.steps)
    )
    assert Reason.NEGATIVE in {part.reason for part in effort_of(split).parts}


@given(some.integers(0, 500), some.integers(0, 500), some.sampled_from("+-"))
def test_the_quick_total_is_the_sum_of_the_parts(left: int, right: int, sign: str) -> None:
    left, right = max(left, right), min(left, right)
    asked = (f"{left} {sign} {right}", f"{left} x {right}", f"{left * right} / {max(right, 1)}")
    for problem in asked:
        for way in ways(parse(problem)):
            assert tenths_of(way) == effort_of(way).tenths >= 0


@given(some.integers(1, 99), some.integers(1, 99))
def test_effort_is_made_of_whole_tenths(left: int, right: int) -> None:
    for way in ways(parse(f"{left} + {right}")):
        assert all(type(part.tenths) is int for part in effort_of(way).parts)
