"""Which number is the answer: said first, last, again, taken back, or none at all."""

import pytest

from waysaid.hearing import read
from waysaid.number import Language, parse

ANSWERS = [
    ("46 + 29", "forty six plus twenty nine is seventy five, I did forty six plus thirty", "75"),
    ("132 / 12", "eleven, eleven times twelve is one hundred and thirty two", "11"),
    ("65 + 18", "I got eighty three, because sixty five and twenty is eighty five and two less",
     "83"),
    ("44 + 19", "forty four plus twenty is sixty four and that's it", "64"),
    ("44 + 19", "forty four plus twenty is sixty four and then I", None),
    ("39 + 17", "I agree with Noor because I got fifty six too", "56"),
    ("15 - 8", "can I have a different one", None),
    ("57 - 29", "fifty seven take away thirty", None),
    ("83 + 14", "eighty three plus ten is ninety four I mean eighty three plus ten is ninety three",
     None),
    ("7 x 4", "siete por dos catorce, son veintiocho porque catorce por dos", "28"),
    ("8 - 5", "tres, me lo aprendí en casa de mi abuela", "3"),
    ("35 + 19", "treinta y cinco más veinte cincuenta y cinco y eso es todo", "55"),
    ("56 + 27", "eighty three same as what Noor said", "83"),
    ("56 + 27", "I don't agree with eighty two", None),
    ("56 + 27", "I was at seventy something and I lost count", None),
    ("56 + 27", "I had fifty but then I forgot the rest", None),
    ("500 + 340", "eight hundred and forty", "840"),
    ("500 + 340", "five hundred and three hundred is eight hundred and forty more", None),
    ("56 + 27", "it's eighty something", None),
    ("56 + 27", "I lined them up and carried the one eighty three", "83"),
    ("90 - 45", "forty five, it's just half", "45"),
    ("62 - 25", "it can't be forty three", None),
    ("62 - 25", "I don't think it's forty three I think it's thirty seven", "37"),
    ("62 - 25", "I know it's less than forty", None),
    ("62 - 25", "forty three is too big", None),
    ("62 - 25", "she said forty three", None),
    ("62 - 25", "she said forty three but I got thirty seven", "37"),
    ("62 - 25", "it isn't forty three because you have to borrow so thirty seven", "37"),
    ("14 - 6", "you can't take six from four so I borrowed", None),
    ("62 - 25", "I took off the tens first so forty two then the five so thirty seven", "37"),
    ("9 + 4 = _ + 6", "seven because it has to be thirteen on both sides", "7"),
    ("9 + 4 = _ + 6", "thirteen because nine and four is thirteen", "13"),
    ("9 + 4 = _ + 6", "I put seven in the box", "7"),
    ("9 + _ = 15", "you add six", "6"),
    ("9 + _ = 18", "nine plus something is eighteen", None),
    ("9 + _ = 15", "I did fifteen minus nine", None),
    ("43 + 31", "forty three and thirty is seventy three and one more seventy for", "74"),
    ("61 - 46", "fifteen because from forty six it's four to fifty and then eleven", "15"),
    ("26 x 5", "one thirty because ten times twenty six is two hundred and sixty", "130"),
    ("23 / 2", "eleven and a half because twenty two is eleven twos and the one left is half",
     "11 1/2"),
    ("53 - 27", "thirty three because I took twenty off, take off seven is twenty six", "26"),
    ("46 + 29", "I pretended it was thirty and got seventy six and then I gave one back", None),
    ("46 + 29", "forty six and thirty is seventy six take one seventy five", "75"),
    ("46 + 29", "I made it thirty and got seventy six and then I took away one", None),
    ("83 - 38", "eighty three take away forty is forty three but do I add two or take two", None),
    ("400 - 198", ("four hundred take away a hundred is three hundred and there's ninety eight "
     "and that's, um, I don't know"), None),
    ("400 - 198", ("four hundred take away a hundred is three hundred and there's the ninety eight "
     "and um I got stuck"), None),
    ("99 + 156", ("le paso uno del ciento cincuenta y seis al noventa y nueve y ya son cien más "
     "ciento cincuenta y cinco"), None),
    ("35 + 20 + 65", ("treinta y cinco más sesenta y cinco hacen cien y el otro son "
     "veinte más"), None),
    ("14 x 5", "catorce por diez ciento cuarenta y como cinco es la mitad pues setenta", "70"),
    ("11 x 8", "ochenta y ocho, se repite el ocho", "88"),
    ("46 + 27", "yo también saqué setenta y tres pero primero las unidades, seis y siete trece",
     "73"),
    ("0.6 ? 0.58", "point six because shorter ones are bigger", ">"),
    ("47 / 6", "eight sixes is forty eight so it's eight minus one, it's seven and five left over",
     "7 r 5"),
    ("52 / 4", "everybody gets ten and there's twelve left so three more each thirteen", "13"),
]  # fmt: skip


@pytest.mark.parametrize(("problem", "line", "answer"), ANSWERS)
def test_the_answer_is_the_one_said_and_none_where_none_was(problem, line, answer):
    spanish = any(word in line for word in (" por ", " más ", "aprendí", " repite ", "también"))
    heard = read(parse(problem), line, Language.ES if spanish else Language.EN)
    assert heard.answer_text == answer


def test_a_step_taken_back_and_said_again_counts_once():
    line = "thirteen minus five is ten, I mean thirteen minus five is eight, so sixty eight"
    heard = read(parse("83 - 15"), line)
    assert [told.step.text for told in heard.told][:1] == ["13 - 5 = 8"]


def test_a_last_word_where_a_number_is_awaited_is_a_number():
    heard = read(parse("18 - 14"), "eighteen take away fourteen is for")
    assert heard.answer_text == "4"
    assert read(parse("18 - 14"), "I don't know what the minus is for").answer_text is None


def test_the_beginning_of_a_longer_number_is_no_answer():
    line = (
        "seis más dos es ocho y seis más ocho y sumé 66 más veintiocho igual a ochocientos catorce"
    )
    assert read(parse("66 + 28"), line, Language.ES).answer_text != "800"


@pytest.mark.parametrize(
    ("problem", "line", "first"),
    [
        ("15 - 12", "thirteen fourteen fifteen so three", "12 + 1 = 13"),
        ("16 - 3", "I hopped back three times, fifteen fourteen thirteen", "16 - 1 = 15"),
        ("15 - 12", "twelve, thirteen fourteen fifteen so three", "12 + 1 = 13"),
    ],
)
def test_a_count_begins_at_the_number_it_is_one_past(problem, line, first):
    heard = read(parse(problem), line)
    assert [told.step.text for told in heard.told][:1] == [first]
    assert len(heard.told) >= 3


CLAIMS = [
    ("7 + 6 = 8 + 5 ?", "I don't think so", Language.EN, "false"),
    ("7 + 6 = 8 + 5 ?", "I don't think it's true", Language.EN, "false"),
    ("7 + 6 = 8 + 5 ?", "I don't know if it's true", Language.EN, None),
    ("7 + 6 = 8 + 5 ?", "I don't know how but it's true", Language.EN, "true"),
    ("7 + 6 = 8 + 6 ?", "thirteen and fourteen so no", Language.EN, "false"),
    ("7 + 6 = 8 + 6 ?", "thirteen isn't fourteen", Language.EN, "false"),
    ("7 + 6 = 8 + 5 ?", "no creo que sea cierto", Language.ES, "false"),
    ("7 + 6 = 8 + 5 ?", "no sé si es cierto", Language.ES, None),
]


@pytest.mark.parametrize(("problem", "line", "language", "verdict"), CLAIMS)
def test_a_verdict_on_a_claim_is_heard_and_never_out_of_a_doubt(problem, line, language, verdict):
    assert read(parse(problem), line, language).answer_text == verdict


def test_two_numbers_of_the_problem_make_a_third_and_are_no_parts_of_it():
    heard = read(parse("6 + 7 + 4"), "I made ten with the six and the four so seventeen")
    assert [told.step.text for told in heard.told] == ["6 + 4 = 10", "10 + 7 = 17"]


def test_units_that_are_counted_run_into_no_other_number():
    line = "seven hundred because four hundreds and three hundreds"
    assert read(parse("400 + 300"), line).answer_text == "700"
