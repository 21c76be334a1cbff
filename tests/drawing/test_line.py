"""The open number line: order, equal marks, what is unsaid, and that it tells nothing of right."""

from itertools import pairwise
from random import Random

import pytest

from tests.counts import count
from tests.drawing.look import blind, labels
from tests.drawing.told import telling
from waysaid.drawing import Dot, Frame, Picture, Telling, draw, suits
from waysaid.number import Equation, Operation, Problem, Sign, parse
from waysaid.ways import Kind, Step

TILE = Frame(596, 290)
LINE = Picture.NUMBER_LINE


def _texts(told: Telling) -> list[str]:
    return [label.text for label in labels(draw(LINE, told, TILE))]


def _chain(marks: list[int], amounts: list[tuple[Sign, int]]) -> Telling:
    steps = tuple(
        Step(Kind.JUMP, Equation(Operation(sign, start, amount), end))
        for start, (sign, amount), end in zip(marks, amounts, marks[1:], strict=False)
    )
    problem: Problem = parse("37 + 25")
    return Telling(problem, steps)


def _alike(number: int, random: Random) -> int:
    low = 10 ** (len(str(number)) - 1)
    return random.randint(low if number > 9 else 1, low * 10 - 1)


def test_other_numerals_of_the_same_length_and_order_change_the_labels_alone():
    random = Random(30)
    for _ in range(count(test=1000, sweep=50000)):
        length = random.randint(2, 6)
        marks = [random.randint(1, random.choice((20, 99, 999))) for _ in range(length)]
        if any(one == other for one, other in pairwise(marks)):
            continue
        signs = [random.choice((Sign.PLUS, Sign.MINUS)) for _ in marks[1:]]
        amounts = [(sign, random.randint(1, 300)) for sign in signs]
        swapped = sorted({_alike(mark, random) for mark in marks for _ in range(9)})
        by_length = {size: [n for n in swapped if len(str(n)) == size] for size in (1, 2, 3)}
        order = sorted(set(marks))
        groups = {size: [n for n in order if len(str(n)) == size] for size in by_length}
        if any(len(by_length[size]) < len(group) for size, group in groups.items()):
            continue
        new = {
            old: fresh
            for size, group in groups.items()
            for old, fresh in zip(
                group, sorted(random.sample(by_length[size], len(group))), strict=True
            )
        }
        other = _chain(
            [new[mark] for mark in marks],
            [(sign, _alike(amount, random)) for sign, amount in amounts],
        )
        told = _chain(marks, amounts)
        assert blind(draw(LINE, told, TILE)) == blind(draw(LINE, other, TILE)), (marks, new)


def test_a_wrong_last_result_looks_like_the_right_one():
    right = telling("39 + 27", "jump 39 + 1 = 40", "jump 40 + 26 = 66")
    wrong = telling("39 + 27", "jump 39 + 1 = 40", "jump 40 + 26 = 56")
    assert blind(draw(LINE, right, TILE)) == blind(draw(LINE, wrong, TILE))
    assert "56" in _texts(wrong)
    assert "66" not in _texts(wrong)


def test_marks_stand_in_the_order_of_their_numbers_whatever_was_told():
    random = Random(31)
    for _ in range(count(test=500, sweep=10000)):
        marks = [random.randint(0, 999) for _ in range(random.randint(2, 6))]
        told = _chain(marks, [(Sign.PLUS, 5)] * (len(marks) - 1))
        if not suits(LINE, told):
            continue
        found = [one for one in labels(draw(LINE, told, Frame(9000, 900))) if one.text.isdigit()]
        assert [int(one.text) for one in sorted(found, key=lambda one: one.x)] == sorted(set(marks))


def test_equal_numbers_share_a_mark():
    told = telling("37 + 25", "jump 37 + 30 = 67", "mend 67 - 30 = 37")
    dots = [shape for shape in draw(LINE, told, TILE).shapes if isinstance(shape, Dot)]
    assert len(dots) == 2


def test_what_nobody_said_is_not_written():
    hidden = (frozenset({"left", "result"}), frozenset({"left", "op"}))
    told = telling("39 + 27", "jump 39 + 1 = 40", "jump 40 + 26 = 66", hidden=hidden)
    scene = draw(LINE, told, TILE)
    assert sorted(_texts(told)) == ["+1", "26", "66"]
    assert "39" not in scene.desc
    assert "40" not in scene.desc
    assert sum(isinstance(shape, Dot) for shape in scene.shapes) == 3


def test_a_blank_that_arithmetic_fills_has_a_mark_and_no_label():
    told = telling("39 + 27", "jump 39 + 1 = _", "jump 40 + 26 = 66")
    assert sorted(_texts(told)) == ["+1", "+26", "39", "40", "66"]
    told = telling("7 + _ = 12", "jump 7 + _ = 12")
    assert sorted(_texts(told)) == ["12", "7"]


@pytest.mark.parametrize(
    ("problem", "steps", "shown"),
    [
        ("62 - 25", ("jump 25 + 5 = 30", "jump 30 + 32 = 62", "gather 5 + 32 = 37"), "37"),
        ("62 - 25", ("jump 25 + 40 = 65", "jump 65 - 3 = 62", "split 40 - 3 = 37"), "37"),
        ("62 - 25", ("shift 62 + 5 = 67", "shift 25 + 5 = 30", "take 67 - 30 = 37"), "37"),
        ("62 - 25", ("shift 62 - 25 = 67 - 30", "take 67 - 30 = 37"), "37"),
        ("39 + 27", ("move 39 + 1 = 40", "move 27 - 1 = 26", "join 40 + 26 = 66"), "+26"),
        ("37 + 25", ("jump 37 + 20 = 57", "join 5 + 57 = 62"), "+5"),
    ],
)
def test_a_way_of_each_shape_shows_its_numbers(problem: str, steps: tuple[str, ...], shown: str):
    assert shown in _texts(telling(problem, *steps))


def test_true_minus_signs_are_written_on_hops_back():
    assert "−20" in _texts(telling("62 - 25", "jump 62 - 20 = 42", "jump 42 - 5 = 37"))


@pytest.mark.parametrize(
    "steps",
    [
        (),
        ("join 30 + 20 = 50", "join 7 + 5 = 12", "join 50 + 12 = 62"),
        ("jump 37 + 3 = 41", "jump 40 + 22 = 62"),
        ("jump 37 + 0 = 37",),
        ("jump _ + _ = 62",),
        ("jump 37 x 2 = 74",),
    ],
)
def test_steps_that_do_not_chain_do_not_suit_a_line(steps: tuple[str, ...]):
    assert not suits(LINE, telling("37 + 25", *steps))


def test_counting_writes_every_number_and_every_one():
    steps = [f"count {347 + at} + 1 = {348 + at}" for at in range(12)]
    texts = _texts(telling("347 + 12", *steps))
    assert {str(347 + at) for at in range(13)} <= set(texts)
    assert texts.count("+1") == 12
