"""How a child might say a way: natural, complete, in two languages."""

import re
from fractions import Fraction

import pytest
from hypothesis import given
from hypothesis import strategies as some

from waysaid.number import (
    BLANK,
    Equation,
    Language,
    Operation,
    Problem,
    Remainder,
    Sign,
    leaves,
    parse,
)
from waysaid.ways import Family, Kind, Step, Way, family_name, how_said, opened, step, ways
from waysaid.ways.phrases import PHRASES
from waysaid.ways.plan import scaled

PLUS, MINUS, TIMES, OVER = Sign.PLUS, Sign.MINUS, Sign.TIMES, Sign.OVER
J, M = Kind.JUMP, Kind.MOVE

TOLD = (
    (Family.BRIDGE, (step(J, 37, PLUS, 3), step(J, 40, PLUS, 22)), 62,
     "I went to a friendly number first: 37 and 3 more is 40, then 40 and 22 more is 62.",
     "Primero fui a un número fácil: 37 y 3 más son 40, luego 40 y 22 más son 62."),
    (Family.GIVE_AND_TAKE,
     (step(M, 37, PLUS, 3), step(M, 25, MINUS, 3), step(Kind.JOIN, 40, PLUS, 22)), 62,
     "I gave 3 to the 37 to make 40, I took 3 from the 25 and had 22 left, then 40 and 22 is 62.",
     "Le di 3 al 37 para hacer 40, le quité 3 al 25 y me quedó en 22, luego 40 y 22 son 62."),
    (Family.COUNTING, (step(Kind.COUNT, 8, PLUS, 1), step(Kind.COUNT, 9, PLUS, 1)), 10,
     "I counted on from 8: 9, 10.", "Conté desde 8: 9, 10."),
    (Family.COUNTING, (step(Kind.COUNT, 85, MINUS, 10), step(Kind.COUNT, 75, MINUS, 10)), 65,
     "I counted back from 85 in 10s: 75, 65.", "Conté hacia atrás de 10 en 10 desde 85: 75, 65."),
    (Family.THINK_ADD, (step(Kind.RECALL, 7, PLUS, 6),), 6,
     "I thought of adding: 7 and 6 is 13, so it’s 6.",
     "Pensé en sumar: 7 y 6 son 13, así que es 6."),
    (Family.SPLIT,
     (step(Kind.TAKE, 60, MINUS, 20), step(Kind.TAKE, 2, MINUS, 5), step(J, 40, MINUS, 3)), 37,
     ("I split the numbers: 60 take away 20 is 40, 2 take away 5 means 3 still to take off, "
     "then 40 take away 3 is 37."),
     ("Separé los números: 60 menos 20 son 40, 2 menos 5: todavía falta quitar 3, "
     "luego 40 menos 3 son 37.")),
    (Family.KNOWN_FACT, (step(Kind.RECALL, 5, MINUS, 4),), 1,
     "I just know that 5 take away 4 is 1.", "Ya me sé que 5 menos 4 es 1."),
    (Family.COLUMN, (opened(42, 30, 12), step(Kind.TAKE, 12, MINUS, 7)), 5,
     "I did it in columns in my head: 42 is 30 and 12, then 12 take away 7 is 5.",
     "Lo hice en columnas en la cabeza: 42 son 30 y 12, luego 12 menos 7 son 5."),
    (Family.SHIFT_BOTH,
     (Step(Kind.SHIFT, Equation(Operation(MINUS, 62, 25), Operation(MINUS, 67, 30))),
      step(Kind.TAKE, 67, MINUS, 30)), 37,
     ("I changed both numbers the same way: 62 take away 25 is the same as 67 take away 30, "
     "then 67 take away 30 is 37."),
     ("Cambié los dos números igual: 62 menos 25 es lo mismo que 67 menos 30, "
     "luego 67 menos 30 son 37.")),
    (Family.NEAR_FACT, (step(Kind.GROUP, 20, TIMES, 7), step(Kind.MEND, 140, MINUS, 7)), 133,
     "I used a fact close by: 20 times 7 is 140, then 140 less 7 is 133.",
     "Usé un producto cercano: 20 por 7 son 140, luego 140 menos 7 son 133."),
    (Family.FACTOR_STEPS, (step(Kind.SCALE, 253, TIMES, 2), step(Kind.SCALE, 506, TIMES, 2)), 1012,
     "I did it in steps: double 253 is 506, then double 506 is 1012.",
     "Lo hice por pasos: el doble de 253 son 506, luego el doble de 506 son 1012."),
    (Family.FACTOR_STEPS, (step(Kind.SCALE, 90, OVER, 2), step(Kind.SCALE, 45, OVER, 3)), 15,
     "I did it in steps: half of 90 is 45, then 45 divided by 3 is 15.",
     "Lo hice por pasos: la mitad de 90 son 45, luego 45 entre 3 son 15."),
    (Family.DOUBLE_HALVE,
     (scaled(TIMES, (16, 5), (8, 10)), step(Kind.RECALL, 8, TIMES, 10)), 80,
     ("I made one number bigger and the other smaller: 16 times 5 is the same as 8 times 10, "
     "then 8 times 10 is 80."),
     ("Hice un número más grande y el otro más pequeño: 16 por 5 es lo mismo que 8 por 10, "
     "luego 8 por 10 son 80.")),
    (Family.CHUNK_OUT,
     (step(Kind.GROUP, 10, TIMES, 6), step(Kind.TAKE, 96, MINUS, 60), step(Kind.GROUP, 6, TIMES, 6),
      step(Kind.GATHER, 10, PLUS, 6)), 16,
     ("I took out groups: 10 times 6 is 60, 96 take away 60 is 36, 6 times 6 is 36, "
     "then 10 and 6 is 16 altogether."),
     ("Saqué grupos: 10 por 6 son 60, 96 menos 60 son 36, 6 por 6 son 36, "
     "luego 10 y 6 son 16 en total.")),
    (Family.THINK_TIMES, (step(Kind.RECALL, 8, TIMES, 7),), 7,
     "I thought of times: 8 times 7 is 56, so it’s 7.",
     "Pensé en multiplicar: 8 por 7 son 56, así que es 7."),
)  # fmt: skip


@pytest.mark.parametrize(("family", "steps", "answer", "english", "spanish"), TOLD)
def test_a_way_is_told_in_both_languages(
    family: Family, steps: tuple[Step, ...], answer: int, english: str, spanish: str
) -> None:
    way = Way(family, "", steps, answer)
    assert how_said(way, Language.EN) == english
    assert how_said(way, Language.ES) == spanish


def test_what_is_left_over_is_said_in_the_end() -> None:
    steps = (step(Kind.RECALL, 3, TIMES, 5), step(Kind.TAKE, 16, MINUS, 15))
    way = Way(Family.THINK_TIMES, "", steps, Fraction(16, 3), Remainder(5, 1))
    assert how_said(way, Language.EN) == (
        "I thought of times: 3 times 5 is 15, then 16 take away 15 is 1, so it’s 5 and 1 left over."
    )
    assert how_said(way, Language.ES) == (
        "Pensé en multiplicar: 3 por 5 son 15, luego 16 menos 15 es 1, así que es 5 y queda 1."
    )


def test_a_way_without_steps_says_its_answer() -> None:
    assert how_said(Way(Family.KNOWN_FACT, "", (), 12), Language.EN) == "12."


def test_what_was_not_said_stays_blank() -> None:
    way = Way(Family.JUMP, "", (Step(J, Equation(Operation(PLUS, BLANK, 3), 40)),), 40)
    assert "_ and 3 more is 40" in how_said(way, Language.EN)


@pytest.mark.parametrize("language", Language)
def test_every_family_has_a_lower_case_name_of_its_own(language: Language) -> None:
    names = [family_name(family, language) for family in Family]
    assert len(set(names)) == len(Family)
    assert all(name and name == name.lower() for name in names)


def test_names_of_families_differ_between_the_languages() -> None:
    for family in Family:
        assert family_name(family, Language.EN) != family_name(family, Language.ES)


@pytest.mark.parametrize("language", Language)
def test_clauses_ask_only_for_what_a_step_has(language: Language) -> None:
    known = {"left": "1", "right": "2", "result": "3", "sum": "1 + 2", "be": "is"}
    for clause in PHRASES[language].clauses.values():
        assert clause.format(**known)


def _problems() -> some.SearchStrategy[Problem]:
    number = some.integers(0, 400)
    two = some.builds(
        lambda a, b, sign: parse(f"{max(a, b)} {sign} {min(a, b)}"),
        number,
        number,
        some.sampled_from("+-"),
    )
    three = some.builds(lambda a, b, c: parse(f"{a} + {b} + {c}"), number, number, number)
    missing = some.builds(lambda a, b: parse(f"{a} + _ = {a + b}"), number, number)
    factor = some.integers(0, 99)
    product = some.builds(lambda a, b: parse(f"{a} x {b}"), factor, factor)
    quotient = some.builds(lambda a, b: parse(f"{a * b} / {b}"), factor, some.integers(1, 99))
    leftover = some.builds(lambda a, b: parse(f"{a} / {b}"), number, some.integers(1, 99))
    return two | three | missing | product | quotient | leftover


def _must_be_said(way: Way) -> set[int]:
    """Every number of the steps but the size of a count, and a negative piece by its size.

    Nor the two of a double or a half, which has a word of its own.
    """
    said: set[int] = set()
    for one in way.steps:
        numbers = (*leaves(one.equation.left), *leaves(one.equation.right))
        if one.kind is Kind.COUNT:
            numbers = (one.equation.right,) if isinstance(one.equation.right, int) else ()
        if one.kind is Kind.SCALE and 2 in numbers:
            numbers = tuple(number for number in numbers if number != 2)
        said |= {abs(number) for number in numbers if isinstance(number, int)}
    answer = {int(way.answer)} if isinstance(way.answer, int) else set()
    told = {way.remainder.groups, way.remainder.left} if way.remainder else set()
    return said | answer | told


@given(_problems(), some.sampled_from(list(Language)))
def test_every_number_of_the_steps_is_said(problem: Problem, language: Language) -> None:
    for way in ways(problem):
        told = how_said(way, language)
        said = {int(number) for number in re.findall(r"\d+", told)}
        assert _must_be_said(way) <= said


@given(_problems(), some.sampled_from(list(Language)))
def test_a_telling_is_one_plain_sentence(problem: Problem, language: Language) -> None:
    for way in ways(problem):
        told = how_said(way, language)
        assert told[0].isupper() or told[0].isdigit()
        assert told.endswith(".")
        assert ". " not in told
        assert not set("{}+=-_\n") & set(told)
