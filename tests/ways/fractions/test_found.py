"""Ways with fractions that a class may bring, and what a way asks beside another."""

import pytest

from tests.ways.fractions.judge import faults
from waysaid.number import Sign, parse
from waysaid.ways import Family, Kind, Way, step, tenths_of, ways
from waysaid.ways.fractions.amount import did, said_as

FOUND = [
    ("3/4 + 3/4", "bridge", "3/4 + 1/4 = 1; 1 + 1/2 = 1 1/2"),
    ("2/3 + 2/3", "bridge", "2/3 + 1/3 = 1; 1 + 1/3 = 1 1/3"),
    ("3/4 + 7/8", "rename", "3/4 = 24/32; 7/8 = 28/32; 24/32 + 28/32 = 52/32; 52/32 = 1 5/8"),
    ("3/4 + 7/8", "near-double", "3/4 + 3/4 = 1 1/2; 1 1/2 + 1/8 = 1 5/8"),
    ("3/4 + 7/8", "benchmark", "1 + 1 = 2; 1/4 + 1/8 = 3/8; 2 - 3/8 = 1 5/8"),
    ("3/4 + 7/8", "benchmark", "1/2 + 1/2 = 1; 1/4 + 3/8 = 5/8; 1 + 5/8 = 1 5/8"),
    ("5/6 + 3/4", "bridge", "5/6 = 10/12; 3/4 = 9/12; 10/12 + 2/12 = 1; 1 + 7/12 = 1 7/12"),
    ("2/7 + 3/7", "rename", "2 + 3 = 5; 2/7 + 3/7 = 5/7"),
    ("3/4 + 3/4", "counting", "3/4 + 1/4 = 1; 1 + 1/4 = 1 1/4; 1 1/4 + 1/4 = 1 2/4"),
    ("2 1/2 + 1 3/4", "split", "2 + 1 = 3; 1/2 + 3/4 = 1 1/4; 3 + 1 1/4 = 4 1/4"),
    ("2 1/2 + 1 3/4", "jump", "2 1/2 + 1 = 3 1/2; 3 1/2 + 3/4 = 4 1/4"),
    ("2 1/2 + 1 3/4", "give-and-take", "2 1/2 + 1/2 = 3; 1 3/4 - 1/2 = 1 1/4; 3 + 1 1/4 = 4 1/4"),
    ("2 1/2 + 1 3/4", "split-then-jump", "2 + 1 = 3; 3 + 1/2 = 3 1/2; 3 1/2 + 3/4 = 4 1/4"),
    ("4 1/4 - 1 3/4", "shift-both", "4 1/4 - 1 3/4 = 4 1/2 - 2; 4 1/2 - 2 = 2 1/2"),
    ("4 1/4 - 1 3/4", "add-up", "1 3/4 + 1/4 = 2; 2 + 2 1/4 = 4 1/4; 1/4 + 2 1/4 = 2 1/2"),
    ("4 1/4 - 1 3/4", "rename", "4 1/4 = 3 5/4; 3 5/4 - 1 3/4 = 2 2/4; 2 2/4 = 2 1/2"),
    ("4 1/4 - 1 3/4", "split", "4 - 1 = 3; 1/4 - 3/4 = -1/2; 3 - 1/2 = 2 1/2"),
    ("4 1/4 - 1 3/4", "adjust", "4 1/4 - 2 = 2 1/4; 2 1/4 + 1/4 = 2 1/2"),
    ("4 1/4 - 1 3/4", "bridge", "4 1/4 - 1/4 = 4; 4 - 1 1/2 = 2 1/2"),
    ("3 - 2/5", "benchmark", "1 - 2/5 = 3/5; 2 + 3/5 = 2 3/5"),
    ("3 - 2/5", "rename", "3 = 15/5; 15/5 - 2/5 = 13/5; 13/5 = 2 3/5"),
    ("3/4 - 3/8", "benchmark", "1/2 - 3/8 = 1/8; 3/4 - 1/2 = 1/4; 1/8 + 1/4 = 3/8"),
    ("1/2 + 3/4 + 1/2", "partners", "1/2 + 1/2 = 1; 1 + 3/4 = 1 3/4"),
    ("3/4 + _ = 1 1/4", "add-up", "3/4 + 1/4 = 1; 1 + 1/4 = 1 1/4; 1/4 + 1/4 = 1/2"),
    ("_ + 1/4 = 1", "known-fact", "3/4 + 1/4 = 1"),
    ("1/4 - 3/4", "rename", "1/4 - 3/4 = -2/4; -2/4 = -1/2"),
    ("2/3 of 57", "factor-steps", "57 / 3 = 19; 19 x 2 = 38"),
    ("2/3 of 57", "factor-steps", "57 x 2 = 114; 114 / 3 = 38"),
    ("2/3 x 57", "break-up", "2/3 x 30 = 20; 2/3 x 27 = 18; 20 + 18 = 38"),
    ("2/3 of 57", "adjust", "2/3 of 60 = 40; 2/3 of 3 = 2; 40 - 2 = 38"),
    ("2/3 of 57", "double-halve", "2/3 of 57 = 2 x 19; 2 x 19 = 38"),
    ("3/4 of 160", "benchmark", "160 / 2 = 80; 80 / 2 = 40; 80 + 40 = 120"),
    ("3/4 of 160", "benchmark", "160 / 4 = 40; 160 - 40 = 120"),
    ("1/3 of 36", "known-fact", "1/3 of 36 = 12"),
    ("2/3 of 7", "break-up", "2/3 of 6 = 4; 2/3 of 1 = 2/3; 4 + 2/3 = 4 2/3"),
    ("6 x 2/3", "rename", "6 x 2/3 = 12/3; 12/3 = 4"),
    ("6 x 2/3", "factor-steps", "3 x 2/3 = 2; 2 x 2 = 4"),
    ("4 x 2/3", "counting", "2/3 + 2/3 = 1 1/3; 1 1/3 + 2/3 = 2; 2 + 2/3 = 2 2/3"),
    ("6 x 1 1/2", "break-up", "6 x 1 = 6; 6 x 1/2 = 3; 6 + 3 = 9"),
    ("6 x 1 1/2", "double-halve", "6 x 1 1/2 = 3 x 3; 3 x 3 = 9"),
    ("6 x 1 3/4", "adjust", "6 x 2 = 12; 6 x 1/4 = 1 1/2; 12 - 1 1/2 = 10 1/2"),
    ("1/2 x 3/4", "factor-steps", "3/4 = 6/8; 6/8 / 2 = 3/8"),
    ("2/3 x 3/4", "double-halve", "2/3 x 3/4 = 2 x 1/4; 2 x 1/4 = 1/2"),
    ("3 / 1/2", "chunk-out", "2 x 1/2 = 1; 3 x 2 = 6"),
    ("3 / 1/2", "think-times", "6 x 1/2 = 3"),
    ("4 / 2/3", "rename", "4 = 12/3; 12/3 / 2/3 = 6"),
    ("3/4 / 3", "rename", "3 / 3 = 1; 3/4 / 3 = 1/4"),
    ("3/4 / 1/2", "scale-both", "3/4 / 1/2 = 3 / 2; 3 / 2 = 1 1/2"),
    ("2/3 of _ = 12", "factor-steps", "12 / 2 = 6; 6 x 3 = 18"),
    ("_ of 80 = 20", "rename", "20/80 = 1/4"),
    ("1/2 + 0.25", "rename", "1/2 = 0.5; 0.5 + 0.25 = 0.75"),
    ("1/2 of 3.5", "factor-steps", "3.5 / 2 = 1.75"),
]


@pytest.mark.parametrize(("asked", "family", "steps"), FOUND)
def test_a_way_a_class_may_bring_is_found(asked, family, steps):
    told = [(way.family.value, "; ".join(s.text for s in way.steps)) for way in ways(parse(asked))]
    assert (family, steps) in told


LESS = [
    ("1/3 of 36", "2/3 of 36", "one part is less to do than two"),
    ("3/8 + 2/8", "3/8 + 1/4", "like parts before unlike ones (nfer-y6, yl2006)"),
    ("3/4 + 7/8", "2/3 + 7/8", "parts that fit before those that do not (nz-ao: levels 3 and 4)"),
    ("1/2 + 1/2", "1/2 + 3/4", "to one before past it"),
    ("1 - 1/4", "3 1/4 - 1 3/4", "from one before from a mixed number"),
    ("1/2 of 80", "3/8 of 80", "a half before other parts"),
    ("3 / 1/2", "3 / 3/4", "one part before several"),
]


@pytest.mark.parametrize(("easier", "harder", "why"), LESS)
def test_the_easier_problem_asks_less(easier, harder, why):
    least, more = (min(map(tenths_of, ways(parse(asked)))) for asked in (easier, harder))
    assert least < more, why


def test_the_least_common_unit_asks_less_than_bottom_times_bottom():
    found = {way.variant: way for way in ways(parse("5/6 + 3/4")) if way.family is Family.RENAME}
    assert tenths_of(found["common-unit"]) < tenths_of(found["product-unit"])


BAD = {
    "a false step": (did(Kind.JOIN, 1, Sign.PLUS, 1, 3),),
    "no answer": (said_as(parse("3/4"), parse("1/2 x 1 1/2")),),
    "a number from nowhere": (step(Kind.JOIN, 17, Sign.PLUS, 0),),
    "unlike parts in one go": (did(Kind.JOIN, parse("3/4"), Sign.PLUS, parse("2/5")),),
    "no steps": (),
}


@pytest.mark.parametrize("steps", BAD.values(), ids=BAD.keys())
def test_the_judge_finds(steps):
    problem = parse("3/4 + 1/2")
    answer = ways(problem)[0].answer
    assert list(faults("3/4 + 1/2", Way(Family.BRIDGE, "bad", steps, answer), answer))
