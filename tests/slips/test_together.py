"""One slip together with one misremembered fact."""

import pytest

from tests.counts import count
from tests.slips.asked import asked
from waysaid.number import Language, Operation, Sign, is_true, parse, text, value_of
from waysaid.slips import Likely, Slip, SlipName, foresee, slip_note, slips

EACH = count(test=150, sweep=10_000)
N = SlipName

EXAMPLES = (
    ("58 + 37", 86, N.DROP_CARRY, "8 + 7 = 16", ("50 + 30 = 80", "8 + 7 = 6", "80 + 6 = 86")),
    ("52 - 38", 25, N.SMALLER_FROM_LARGER, "8 - 2 = 5",
     ("50 - 30 = 20", "8 - 2 = 5", "20 + 5 = 25")),
    ("81 - 38", 52, N.NO_REGROUP, "11 - 8 = 2", ("11 - 8 = 2", "80 - 30 = 50", "50 + 2 = 52")),
    ("27 x 6", 128, N.DROP_CARRY, "7 x 6 = 48", ("7 x 6 = 8", "20 x 6 = 120", "120 + 8 = 128")),
    ("13 x 14", 109, N.PART_MISSING, "3 x 4 = 9",
     ("10 x 10 = 100", "3 x 4 = 9", "100 + 9 = 109")),
)  # fmt: skip


def _together(problem: str, wrong: int) -> dict[SlipName, Slip]:
    return {slip.slug: slip for slip in slips(parse(problem), wrong) if slip.fact is not None}


@pytest.mark.parametrize(("problem", "wrong", "slug", "fact", "steps"), EXAMPLES)
def test_a_slip_comes_with_a_misremembered_fact(
    problem: str, wrong: int, slug: SlipName, fact: str, steps: tuple[str, ...]
) -> None:
    found = _together(problem, wrong)[slug]
    assert found.fact is not None
    assert text(found.fact) == fact
    assert tuple(text(step) for step in found.steps) == steps
    assert found.likely is Likely.RARE


def _cases() -> list[tuple[str, int, Slip]]:
    """Wrong answers near those of the slips, and what takes two things to explain them."""
    found = []
    for given in (*asked(5, EACH, "sums"), *asked(5, EACH, "products")):
        problem = parse(given)
        near = {slip.wrong + off for slip in foresee(problem)[:4] for off in (-10, -2, -1, 1, 6)
                if isinstance(slip.wrong, int)}  # fmt: skip
        for wrong in sorted(one for one in near if one >= 0):
            found += [(given, wrong, slip) for slip in slips(problem, wrong) if slip.fact]
    return found


CASES = _cases()


def test_there_are_many() -> None:
    assert len(CASES) > EACH


def test_it_comes_after_every_slip_alone() -> None:
    for given, wrong, _ in CASES:
        facts = [slip.fact is not None for slip in slips(parse(given), wrong)]
        assert facts == sorted(facts), (given, wrong)


def test_the_fact_is_false_and_near() -> None:
    for given, _, slip in CASES:
        assert slip.fact is not None
        assert is_true(slip.fact) is False, given
        fact = slip.fact.left
        assert isinstance(fact, Operation)
        assert max(value_of(fact.left), value_of(fact.right)) <= 18, given
        off = abs(value_of(fact) - value_of(slip.fact.right))
        most = 1 if fact.sign is not Sign.TIMES else max(value_of(fact.left), value_of(fact.right))
        assert off <= most, (given, slip)


def test_the_answer_is_a_fact_away_from_that_of_the_slip_alone() -> None:
    """The difference is that of the fact, in ones, tens or hundreds."""
    for given, wrong, slip in CASES:
        assert slip.fact is not None
        off = abs(int(value_of(slip.fact.left) - value_of(slip.fact.right)))
        alone = [one.wrong for one in foresee(parse(given)) if one.slug is slip.slug]
        gaps = {abs(wrong - one) for one in alone if isinstance(one, int)}
        assert gaps & {off * 10**place for place in range(9)}, (given, wrong, slip)


def test_its_work_ends_in_the_answer_and_one_fact_more_is_false() -> None:
    for given, wrong, slip in CASES:
        assert value_of(slip.steps[-1].right) == wrong, given
        assert any(is_true(step) is False for step in slip.steps), (given, slip)
        assert slip.wrong == wrong


def test_a_fact_alone_is_no_slip_with_a_fact() -> None:
    """62 - 25 has no zero: that 50 - 20 came out as 20 is a near miss and nothing more."""
    assert {slip.slug for slip in slips(parse("62 - 25"), 27)} == {N.NEAR_MISS}


def test_the_note_tells_both() -> None:
    slip = _together("58 + 37", 86)[N.DROP_CARRY]
    english = "the ten from 8 + 7 may have been lost, and 8 + 7 may have come out as 16"
    spanish = "quizá se perdió la decena de 8 + 7, y quizá 8 + 7 salió como 16"
    assert slip_note(slip, Language.EN) == english
    assert slip_note(slip, Language.ES) == spanish


def test_what_is_foreseen_needs_no_two_things() -> None:
    for given in asked(6, EACH, "sums"):
        assert all(slip.fact is None for slip in foresee(parse(given)))
