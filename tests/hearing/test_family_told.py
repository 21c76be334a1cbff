"""Families told by what the steps are: a picture miscounted, a fact that undoes, places put on."""

import pytest

from waysaid.hearing import read
from waysaid.number import Language, parse, text

EN, ES = Language.EN, Language.ES

FAMILIES = [
    (EN, "image frame 20: 13", "seven empty and it's twenty altogether so thirteen", "adjust"),
    (EN, "image frame 20: 17", "ten and then I saw six more so sixteen", "split"),
    (EN, "image dice: 5 4 4", "four and four is eight and five is thirteen", "partners"),
    (ES, "image dice: 3 3 2", "tres y tres seis y dos ocho", "partners"),
    (EN, "image dice: 4 3", "three and three is six and one more is seven", "near-double"),
    (EN, "image dice: 4 4 4", "four and four is eight and four is twelve", "counting"),
    (ES, "image array: 3 x 5", "cinco y cinco diez y cinco quince", "counting"),
    (EN, "13 - 6", "six and what makes thirteen, six and seven is thirteen so seven", "think-add"),
    (EN, "14 - 8", "fourteen take eight is six because eight and six is fourteen", "think-add"),
    (
        ES,
        "48 / 6",
        "les tocan ocho, no sé, nueve, porque seis por nueve cuarenta y ocho",
        "think-times",
    ),
    (EN, "48 / 3", "thirty is ten threes then eighteen is six threes sixteen", "chunk-out"),
    (EN, "29 / 4", "six fours is twenty four and five left over", "chunk-out"),
    (EN, "256 + 178", "200+100=300+50=350+70=420+6=426+8=434", "split-then-jump"),
    (ES, "52 - 6", "cincuenta y dos menos dos cincuenta y quito cuatro cuarenta y seis", "bridge"),
    (EN, "52 - 19", "both one bigger, fifty three take twenty is thirty three", "shift-both"),
    (EN, "12 - 9", "twelve eleven ten nine eight seven six five four, so four", "counting"),
]


@pytest.mark.parametrize(("language", "problem", "said", "family"), FAMILIES)
def test_what_the_steps_are_names_the_family(language, problem, said, family):
    found = read(parse(problem), said, language).family
    assert (found.value if found else None) == family


@pytest.mark.parametrize(
    ("language", "problem", "said", "told"),
    [
        (EN, "3/8 ? 2/5", "three eighths is fifteen fortieths", "3/8 = 15/40"),
        (EN, "3/8 ? 5/6", "nine twenty fourths and twenty twenty fourths", "3/8 = 9/24"),
        (ES, "3/8 ? 2/5", "dos quintos son dieciséis cuarentavos", "2/5 = 16/40"),
        (ES, "3/8 ? 5/6", "tres octavos son nueve veinticuatroavos", "3/8 = 9/24"),
    ],
)
def test_parts_finer_than_twentieths_are_named(language, problem, said, told):
    steps = read(parse(problem), said, language).told
    assert told in [text(one.step.equation) for one in steps]


@pytest.mark.parametrize(
    ("language", "said"),
    [
        (EN, "I tried making them the same on the bottom"),
        (EN, "I made the bottoms the same"),
        (ES, "los puse iguales abajo"),
    ],
)
def test_bottoms_made_alike_are_no_verdict(language, said):
    assert read(parse("3/8 ? 2/5"), said, language).answer is None


@pytest.mark.parametrize(
    ("language", "problem", "said", "answer"),
    [
        (ES, "91 / 7", "diez por siete setenta, quedan treinta y uno, tres sietes, trece", "13"),
        (
            EN,
            "95 / 7",
            "ten sevens is seventy, 25 left, three sevens, thirteen and 4 left",
            "13 r 4",
        ),
    ],
)
def test_groups_put_to_those_with_a_rest_go_before_them(language, problem, said, answer):
    assert read(parse(problem), said, language).answer_text == answer


def test_the_last_addend_may_be_the_larger_part_of_what_is_reached():
    told = read(parse("15 + 7 + 3"), "seven and three is ten then twenty five", EN).told
    assert [text(one.step.equation) for one in told] == ["7 + 3 = 10", "10 + 15 = 25"]
