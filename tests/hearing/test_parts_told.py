"""Parts as children cut, count, take and rename them: steps, answer and way, in two languages."""

import pytest

from waysaid.hearing import read
from waysaid.number import Language, parse

_CUT = [
    ("3/4 of 40", "I split forty into four, ten each, three of those is thirty",
     ["40 / 4 = 10", "10 x 3 = 30"], "30"),
    ("2/3 of 24", "divide it by three and then take two, sixteen",
     ["24 / 3 = 8", "8 x 2 = 16"], "16"),
    ("2/3 x 12", "two twelves is twenty four and then split it in three, eight",
     ["2 x 12 = 24", "24 / 3 = 8"], "8"),
    ("2/3 of 24", "lo divido en tres que es ocho y agarro dos, dieciséis",
     ["24 / 3 = 8", "8 x 2 = 16"], "16"),
    ("3/5 of 35", "treinta y cinco en cinco partes son siete, tomo tres y son veintiuno",
     ["35 / 5 = 7", "7 x 3 = 21"], "21"),
    ("3/4 of 40", "partí cuarenta en cuatro, diez, y agarro tres, treinta",
     ["40 / 4 = 10", "10 x 3 = 30"], "30"),
    ("2/3 x 12", "12/3=4, 4x2=8", ["12 / 3 = 4", "4 x 2 = 8"], "8"),
    ("2/3 x 12", "2x12=24, 24/3=8", ["2 x 12 = 24", "24 / 3 = 8"], "8"),
    ("37 + 25", "I split it into thirty and seven", ["37 = 30 + 7"], None),
]  # fmt: skip
_MORE = [
    ("3/4 + 3/4", "three quarters and one quarter is one and two more quarters is one and a half",
     ["3/4 + 1/4 = 1", "1 + 2/4 = 1 1/2"], "1 1/2"),
    ("5/8 - 3/8", "five eighths take away three little eighths is two eighths",
     ["5/8 - 3/8 = 2/8"], "2/8"),
    ("0.8 + 0.35", "eighty cents and twenty cents is a dollar and then fifteen more cents",
     ["0.80 + 0.20 = 1", "1 + 0.15 = 1.15"], None),
    ("0.9 + 0.4", (
        "nine tenths needs one more tenth for a whole and then three tenths, one point "
        "three"),
     ["9/10 + 1/10 = 1", "1 + 3/10 = 1.3"], "1.3"),
    ("2 1/4 + 1 3/4", "two and one is three, three and a quarter, and three quarters makes four",
     ["2 + 1 = 3", "3 + 1/4 = 3 1/4", "3 1/4 + 3/4 = 4"], "4"),
    ("3 1/4 - 1 3/4", "tres menos uno dos, dos y cuarto, menos tres cuartos es uno y medio",
     ["3 - 1 = 2", "2 + 1/4 = 2 1/4", "2 1/4 - 3/4 = 1 1/2"], "1 1/2"),
    ("5/8 + 7/8", (
        "hice como que siete octavos era uno, entonces uno y cinco octavos, menos un octavo, "
        "uno y cuatro octavos"),
     ["1 + 5/8 = 1 5/8", "1 5/8 - 1/8 = 1 4/8"], "1 4/8"),
    ("1.5 x 6", "six and half of six which is three so nine", ["6 / 2 = 3", "6 + 3 = 9"], "9"),
    ("1.5 x 8", "ocho más la mitad de ocho que es cuatro doce", ["8 / 2 = 4", "8 + 4 = 12"], "12"),
    ("3/4 of 40", "half is twenty and half of that is ten so it's ten",
     ["40 / 2 = 20", "20 / 2 = 10"], "10"),
]  # fmt: skip
_ANEW = [
    ("3/8 + 3/8", "six eighths which is three quarters", ["3/8 + 3/8 = 6/8", "6/8 = 3/4"], "3/4"),
    ("3/5 + 4/5", "siete quintos, o sea uno y dos quintos",
     ["3/5 + 4/5 = 7/5", "7/5 = 1 2/5"], "1 2/5"),
    ("3 x 3/4", "three quarters, six quarters, nine quarters which is two and a quarter",
     ["3/4 + 3/4 = 6/4", "1 1/2 + 3/4 = 9/4", "9/4 = 2 1/4"], "2 1/4"),
    ("3/4 + 1/2", "a half is two quarters so five quarters is one and a quarter",
     ["1/2 = 2/4", "3/4 + 2/4 = 5/4", "5/4 = 1 1/4"], "1 1/4"),
    ("3/4 + 1/2", (
        "I changed them into decimals so point seven five and point five is one point two "
        "five"),
     ["3/4 = 0.75", "1/2 = 0.5", "0.75 + 0.5 = 1.25"], "1.25"),
    ("3.6 / 0.9", "thirty six over nine is four", ["36 / 9 = 4"], "4"),
    ("3/5 + 4/5", "three fiths and four fiths is seven fiths", ["3/5 + 4/5 = 7/5"], "7/5"),
    ("1/2 of 3/4", "la mitad de tres cuartos son tres octavos", ["3/4 / 2 = 3/8"], "3/8"),
    ("6 x 4", "four sixes force", ["4 x 6 = 24"], None),
]  # fmt: skip


_ON = [
    ("90% of 70", "el diez por ciento es siete y se lo quito a setenta, sesenta y tres",
     ["10% of 70 = 7", "70 - 7 = 63"], "63"),
    ("90% of 70", "ten percent is seven and I take it off seventy, sixty three",
     ["10% of 70 = 7", "70 - 7 = 63"], "63"),
    ("0.8 + 0.5", "a cero coma ocho le faltan dos décimas para uno y quedan tres, uno coma tres",
     ["0.8 + 0.2 = 1", "1 + 3/10 = 1.3"], "1.3"),
    ("38 + 27", ("al treinta y ocho le faltan dos para cuarenta "
     "y quedan veinticinco, sesenta y cinco"),
     ["38 + 2 = 40", "40 + 25 = 65"], "65"),
    ("0.8 + 0.5", ("le paso dos décimas al cero coma ocho y se hace uno, "
     "y el otro queda en tres décimas, uno coma tres"),
     ["0.8 + 0.2 = 1", "0.5 - 0.2 = 0.3", "1 + 3/10 = 1.3"], "1.3"),
    ("4.7 - 0.9", ("cuatro coma siete menos uno tres coma siete "
     "y le quito una décima más tres coma seis"), ["4.7 - 1 = 3.7", "3.7 - 1/10 = 3.6"], "3.6"),
    ("6.2 - 3.8", ("six point two minus four is two point two "
     "and take away another point two so it's two"), ["6.2 - 4 = 2.2", "2.2 - 0.2 = 2"], "2"),
    ("3/4 x 8", "three eights is twenty four over four is six",
     ["3 x 8 = 24", "24 / 4 = 6"], "6"),
    ("5 x 2 1/2", "cinco por dos diez y cinco medios dos y medio, doce y medio",
     ["5 x 2 = 10", "5 x 1/2 = 2 1/2", "10 + 2 1/2 = 12 1/2"], "12 1/2"),
    ("10 - 3.6", ("three point six and point four is four and six more is ten "
     "so six point four"), ["3.6 + 0.4 = 4", "4 + 6 = 10", "0.4 + 6 = 6.4"], "6.4"),
]  # fmt: skip


@pytest.mark.parametrize(("problem", "said", "steps", "answer"), [*_CUT, *_MORE, *_ANEW, *_ON])
def test_parts_are_heard_as_they_were_cut_put_on_and_renamed(problem, said, steps, answer):
    heard = read(parse(problem), said, _language(said))
    assert [one.step.text for one in heard.told] == steps
    assert heard.answer_text == answer


_WAYS = [
    ("4 x 2.5", "two times five is ten cause I halved the four and doubled the two and a half",
     "double-halve"),
    ("12 x 3.5", (
        "la mitad de doce es seis y el doble de tres coma cinco es siete, seis por siete "
        "cuarenta y dos"),
     "double-halve"),
    ("2 / 1/3", "times both by three, six divided by one, six", "scale-both"),
    ("2 / 1/3", "there's three thirds in one so two times three is six", "chunk-out"),
    ("2 / 1/3", "one has three thirds so two has six", "chunk-out"),
    ("3 / 1/4", "cuatro ocho doce", "counting"),
    ("16 x 0.25", "la mitad ocho, la mitad cuatro", "factor-steps"),
    ("4 - 2 2/5", "four minus three is one, then I took off another three fifths, two fifths",
     "adjust"),
    ("3.2 - 1.9", "3.2-2=1.2-0.1=1.1", "adjust"),
    ("2.4 / 0.6", "twenty four tenths divided by six tenths is four", "rename"),
    ("1/2 of 3/4", "three quarters is six eighths and half of six eighths is three eighths",
     "rename"),
    ("1/2 of 3/4", (
        "half of a half is a quarter and half of a quarter is an eighth so it's three "
        "eighths"),
     "break-up"),
    ("25% of 84", "eighty four over four is twenty one", "rename"),
    ("10% of 45", "move it over one place four point five", "benchmark"),
    ("15% of 60", "fifteen percent is ten percent and five percent so six and three, nine",
     "benchmark"),
    ("0.65 + 0.7", "0.65 + 0.3 = 0.95 + 0.4 = 1.35", "jump"),
    ("2/3 ? 4/6", "son iguales porque multiplico arriba y abajo por dos", "rename"),
    ("2/3 = 8/12 ?", "true you times the top and bottom by four", "rename"),
    ("1/2 = 3/6 ?", "true because half of six is three", "rename"),
    ("5/6 - 1/2", "la mitad de seis es tres, entonces cinco menos tres, dos sextos", "rename"),
    ("1/3 x 39", "un tercio de treinta es diez y un tercio de nueve es tres, trece", "break-up"),
]  # fmt: skip


@pytest.mark.parametrize(("problem", "said", "family"), _WAYS)
def test_the_way_with_parts_is_told(problem, said, family):
    assert read(parse(problem), said, _language(said)).family == family


_VERDICTS = [
    ("2/3 ? 3/5", ("dos tercios son diez quinceavos y tres quintos son nueve quinceavos, "
     "gana dos tercios"), ">"),
    ("0.7 ? 0.65", ("cero coma siete es setenta centésimas y el otro sesenta y cinco, "
     "es mayor el cero coma siete"), ">"),
    ("5/12 ? 1/2", "five is less than half of twelve so it's smaller", "<"),
    ("3/5 ? 1/2", "three is more than half of five so three fifths", ">"),
    ("2/5 ? 2/7", "sevenths are smaller so two fifths", ">"),
    ("0.45 ? 0.5", "point five is a half and the other one is a bit less", "<"),
    ("3/4 ? 5/8", "tres cuartos son seis octavos y el otro es menos", ">"),
    ("3/4 ? 5/6", "the smaller is three quarters", "<"),
    ("6/7 ? 3/8", ("seis séptimos está casi en el entero y tres octavos ni a la mitad llega, "
     "es mayor el primero"), ">"),
    ("4/5 of 30", ("four fifths is one fifth less than the whole "
     "so it's twenty four because a fifth is six"), "24"),
]  # fmt: skip


@pytest.mark.parametrize(("problem", "said", "answer"), _VERDICTS)
def test_the_verdict_is_of_the_number_it_was_said_of(problem, said, answer):
    assert read(parse(problem), said, _language(said)).answer_text == answer


def _language(said):
    spanish = (" y ", " el ", " la ", "cuatro", "siete", " lo ", " son ", " al ")
    return Language.ES if any(one in f" {said} " for one in spanish) else Language.EN
