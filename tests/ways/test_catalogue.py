"""The catalogue lists every way-maker there is, once."""

from pathlib import Path

import waysaid.ways
from waysaid.ways import Family
from waysaid.ways.catalogue import CATALOGUE, makers_for
from waysaid.ways.shape import (
    Below,
    Difference,
    Factors,
    Leftover,
    Missing,
    Product,
    Quotient,
    Several,
    Sum,
    UnderOne,
)

FOLDERS = {
    "add": Sum,
    "take": Difference,
    "below": Below,
    "times": Product,
    "share": Quotient,
    "leftover": Leftover,
    "under_one": UnderOne,
    "factors": Factors,
    "missing": Missing,
    "several": Several,
}

GROUPED = (Product(14, 6), Quotient(84, 4), Leftover(16, 3), Factors((2, 7, 5)))


def test_every_module_of_a_way_is_listed_under_the_shape_of_its_folder():
    root = Path(waysaid.ways.__file__).parent
    listed = {(maker.plans.__module__, maker.shape) for maker in CATALOGUE}
    for folder, shape in FOLDERS.items():
        for module in (root / folder).glob("[!_]*.py"):
            assert (f"waysaid.ways.{folder}.{module.stem}", shape) in listed


def test_no_way_is_listed_twice_and_every_family_is():
    assert len({maker.plans for maker in CATALOGUE}) == len(CATALOGUE)
    assert {maker.family for maker in CATALOGUE} == set(Family)


def test_a_maker_plans_nothing_for_a_shape_that_is_not_its_own():
    for maker in CATALOGUE:
        for shape in (Sum(37, 25), Difference(71, 34), Several((7, 26, 3)), *GROUPED):
            if not isinstance(shape, maker.shape):
                assert list(maker.of(shape)) == []


def test_the_makers_of_a_shape_are_those_that_plan_for_it():
    for shape in (Sum(37, 25), Difference(71, 34), Several((7, 26, 3)), *GROUPED):
        found = [maker for maker in CATALOGUE if isinstance(shape, maker.shape)]
        assert list(makers_for(type(shape))) == found
        assert found
