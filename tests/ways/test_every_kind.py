"""Random problems over all kinds, judged by a second evaluator that reads what is printed."""

import re
from collections import Counter
from concurrent.futures import ProcessPoolExecutor
from itertools import chain

import pytest
import sympy

from tests.counts import count
from tests.ways.every_judge import Heard, faults_of
from tests.ways.every_kind import KINDS, asked_of_every_kind
from waysaid.number import Order, Verdict, answer_of, number_text, parse
from waysaid.ways import Way, ways

BATCH = 1000


def heard(way: Way) -> Heard:
    """A way as it is printed."""
    answer = way.answer
    shown = answer.value if isinstance(answer, Order | Verdict) else number_text(answer)
    left = (way.remainder.groups, way.remainder.left) if way.remainder else None
    return Heard(way.family.value, tuple(step.text for step in way.steps), shown, left)


def _judged(seed: int, many: int) -> tuple[Counter[str], list[str]]:
    tried: Counter[str] = Counter()
    wrong = []
    for kind, problem in asked_of_every_kind(seed, many):
        tried[kind] += 1
        try:
            told = [heard(way) for way in ways(parse(problem))]
        except Exception as fault:
            wrong.append(f"{problem}: {fault!r}")
            continue
        wrong += [f"{problem}: {fault}" for fault in faults_of(problem, told)]
    return tried, wrong


def test_every_problem_of_every_kind_has_ways_and_a_second_reader_finds_no_fault(sweep_note):
    many = count(test=20_000, sweep=1_000_000)
    sizes = [BATCH] * (many // BATCH) or [many]
    with ProcessPoolExecutor(max_workers=2) as pool:
        judged = list(pool.map(_judged, range(len(sizes)), sizes))
    wrong = list(chain.from_iterable(found for _, found in judged))
    tried = sum((counted for counted, _ in judged), Counter())
    sweep_note(
        "a second reader agrees: over all kinds no way is false, missing, told twice or unclear",
        tried.total(),
        len(wrong),
    )
    assert set(tried) == set(KINDS)
    assert wrong == []


def _sympy_text(printed: str) -> str:
    """A printed expression as SymPy reads it, all numbers exact."""
    exact = re.sub(r"(\d+) (\d+/\d+)", r"(\1+\2)", printed)
    exact = re.sub(r"(?<![\d/.])(\d+/\d+)(?![\d/])", r"(\1)", exact)
    exact = re.sub(r"(\d+(?:\.\d+)?)%", r"(\1/100)", exact)
    return exact.replace(" x ", "*").replace(" of ", "*")


def _in_sympy(printed: str) -> sympy.Expr:
    return sympy.sympify(_sympy_text(printed), rational=True)


def _agrees(problem: str, answer: str) -> bool:
    """Whether SymPy finds a printed answer to be the one."""
    if problem.endswith(" ?"):
        left, right = map(_in_sympy, problem.removesuffix(" ?").split(" = "))
        return answer == ("true" if left == right else "false")
    if " ? " in problem:
        left, right = map(_in_sympy, problem.split(" ? "))
        return answer == ("=" if left == right else "<" if left < right else ">")
    if "_" in problem:
        left, right = map(_in_sympy, problem.replace("_", f"({answer})").split(" = "))
        return bool(left == right)
    return bool(_in_sympy(problem) == _in_sympy(answer))


def test_sympy_finds_the_same_answers_and_every_step_of_the_easiest_way_true(sweep_note):
    many = count(test=5_000, sweep=50_000)
    tried, wrong = 0, []
    for kind, problem in asked_of_every_kind(-1, many * len(KINDS) // (len(KINDS) - 2)):
        if kind in ("quick images", "estimates"):
            continue
        tried += 1
        found = answer_of(parse(problem))
        answer = found.value if isinstance(found, Order | Verdict) else number_text(found)
        if not _agrees(problem, answer):
            wrong.append(f"{problem}: {answer}")
        for way in ways(parse(problem))[:1]:
            texts = (step.text.split(" = ") for step in way.steps)
            wrong += [problem for left, right in texts if _in_sympy(left) != _in_sympy(right)]
    sweep_note("SymPy agrees with every answer and with the steps of the easiest way", tried)
    assert tried >= many - len(KINDS)
    assert wrong == []


def _bad(problem: str, family: str, *steps: str, answer: str) -> tuple[str, Heard]:
    return problem, Heard(family, steps, answer)


BAD = {
    "a false step": _bad("37 + 25", "bridge", "37 + 3 = 41", "41 + 21 = 62", answer="62"),
    "a false step with a point": _bad("0.65 + 0.7", "jump", "0.65 + 0.7 = 0.72", answer="1 7/20"),
    "tops and bottoms added": _bad("1/2 + 1/4", "known-fact", "1/2 + 1/4 = 2/6", answer="3/4"),
    "a wrong answer": _bad("3/4 + 7/8", "rename", "3/4 = 6/8", answer="1 3/4"),
    "an end that is not the answer": _bad("3/4 + 7/8", "bridge", "3/4 + 1/4 = 1", answer="1 5/8"),
    "the wrong order": _bad("0.65 ? 0.7", "rename", "0.7 = 0.70", answer=">"),
    "the wrong verdict": _bad("3 + 4 = 8 ?", "rename", "3 + 4 = 7", answer="true"),
    "the wrong number of dots": _bad("image dice: 3 2", "split", "3 + 2 = 5", answer="6"),
    "a blank filled wrongly": _bad("8 + 4 = _ + 5", "rename", "8 + 4 = 12", answer="12"),
    "an estimate far off": _bad("about 398 x 21", "adjust", "400 x 2 = 800", answer="800"),
    "an estimate that it does not come to": _bad(
        "about 398 x 21", "adjust", "400 x 20 = 8000", answer="8400"
    ),
    "a sum from nowhere": _bad(
        "53 + 28", "split", "22 + 11 = 33", "31 + 17 = 48", "33 + 48 = 81", answer="81"
    ),
    "parts of a factor from nowhere": _bad(
        "47 x 6", "break-up", "31 x 6 = 186", "16 x 6 = 96", "186 + 96 = 282", answer="282"
    ),
    "a hop from nowhere, with a point": _bad(
        "3.84 + 2.95", "jump", "3.84 + 0.47 = 4.31", "4.31 + 2.48 = 6.79", answer="6.79"
    ),
    "a fraction from nowhere": _bad(
        "3/4 + 7/8", "jump", "3/4 + 2/7 = 29/28", "29/28 + 33/56 = 13/8", answer="1 5/8"
    ),
    "percents from nowhere": _bad(
        "15% of 80",
        "benchmark",
        "37% of 80 = 29.6",
        "22% of 80 = 17.6",
        "29.6 - 17.6 = 12",
        answer="12",
    ),
    "no steps": _bad("6 + 6", "known-fact", answer="12"),
}


@pytest.mark.parametrize(("problem", "bad"), BAD.values(), ids=BAD.keys())
def test_the_second_reader_finds(problem: str, bad: Heard) -> None:
    assert list(faults_of(problem, [bad]))


def test_the_second_reader_finds_a_problem_without_a_way_and_one_told_twice() -> None:
    twice = Heard("known-fact", ("6 + 6 = 12",), "12")
    assert list(faults_of("6 + 6", []))
    assert list(faults_of("6 + 6", [twice, twice]))
    assert not list(faults_of("6 + 6", [twice]))
