"""Two numbers compared by their sides: so the left one, the first wins. Our own sentences."""

import pytest

from waysaid.hearing import read
from waysaid.number import Language, Order, parse

SUMS = "37 + 25 ? 38 + 23"
SAID = [
    ("left is sixty two and right is sixty one so left is bigger", Order.MORE),
    ("left is sixty two and right is sixty one so the left", Order.MORE),
    ("the first is sixty two and the second is sixty one so the first is bigger", Order.MORE),
    ("the left has sixty two and the right has sixty one so it's the left one", Order.MORE),
    ("sixty two and sixty one so the first one", Order.MORE),
    ("sixty two and sixty one so the second is smaller", Order.MORE),
    ("so it's the second one", Order.LESS),
    ("la izquierda es sesenta y dos y la derecha sesenta y uno entonces la izquierda", Order.MORE),
]
WRONG = [
    ("left is sixty one and right is sixty two so right is bigger", Order.LESS),
    ("left is sixty one and right is sixty two so the right", Order.LESS),
    ("la izquierda da sesenta y uno y la derecha sesenta y dos así que la derecha", Order.LESS),
]


@pytest.mark.parametrize(("line", "order"), [*SAID, *WRONG])
def test_the_side_that_was_named_is_the_larger(line, order):
    language = Language.ES if "izquierda" in line else Language.EN
    assert read(parse(SUMS), line, language).answer is order


@pytest.mark.parametrize(
    ("line", "order"),
    [
        ("nueve doceavos contra ocho doceavos, gana el primero", Order.MORE),
        ("nueve doceavos contra ocho doceavos, es menor el segundo", Order.MORE),
        ("nueve doceavos contra ocho doceavos, es menor el primero", Order.LESS),
        ("nine twelfths against eight twelfths, wins the first one", Order.MORE),
        ("nine twelfths against eight twelfths, the bigger one is the first one", Order.MORE),
        ("nine twelfths against eight twelfths, smaller is the second one", Order.MORE),
        ("nine twelfths against eight twelfths, the second one wins", Order.LESS),
    ],
)
def test_a_verdict_is_of_the_side_named_behind_it(line, order):
    language = Language.ES if "doceavos" in line else Language.EN
    assert read(parse("3/4 ? 2/3"), line, language).answer is order


@pytest.mark.parametrize(
    "line", ["the left is sixty two", "so is it the left one or the right one"]
)
def test_a_side_spoken_of_is_no_verdict(line):
    assert read(parse(SUMS), line, Language.EN).answer is None
