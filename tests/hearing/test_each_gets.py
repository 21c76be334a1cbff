"""What each gets of those who share, groups counted up, and facts that are not known after all."""

import pytest

from waysaid.hearing import read
from waysaid.number import Language, parse, text

EN, ES = Language.EN, Language.ES

TOLD = [
    (
        EN,
        "75 / 5",
        "ten each is fifty and five each is twenty five so fifteen",
        "10 x 5 = 50, 5 x 5 = 25, 10 + 5 = 15",
        "15",
    ),
    (
        EN,
        "68 / 4",
        "I gave them ten each and there were twenty eight left",
        "10 x 4 = 40, 68 - 40 = 28",
        None,
    ),
    (
        EN,
        "42 / 3",
        "deal out thirty so they get ten, then the twelve is four each, fourteen",
        "30 / 3 = 10, 12 / 3 = 4, 10 + 4 = 14",
        "14",
    ),
    (EN, "8 x _ = 64", "seven eights is sixty four, seven", "7 x 8 = 64", "7"),
    (EN, "5 x 14", "ten fourteens and then half", "10 x 14 = 140, 140 / 2 = 70", None),
    (EN, "720 / 80", "it's just seventy two over eight", "72 / 8 = 9", None),
    (EN, "3 x 25", "three quarters makes seventy five", "", "75"),
    (EN, "16 x 50", "eight hundreds", "8 x 100 = 800", None),
    (EN, "6 x 8", "double three eights", "3 x 8 = 24, 24 x 2 = 48", None),
    (EN, "424 / 4", "half 212 half 106", "424 / 2 = 212, 212 / 2 = 106", "106"),
    (EN, "_ x 6 = 54", "how many sixes in 54, nine", "54 / 6 = 9", "9"),
    (ES, "42 / 3", "la mitad es 21 y son siete treses, 14", "42 / 2 = 21, 7 x 3 = 21", "14"),
    (EN, "41 / 6", "six full boxes and five cookies by themselves", "", "6 r 5"),
    (EN, "47 / 6", "seven with four nobody gets", "", "7 r 4"),
    (EN, "424 / 4", "four hundreds shared by four then the twenty four", "400 / 4 = 100", None),
    (
        EN,
        "9 x 6",
        "ten sixes is sixty and take away one of the sixes",
        "10 x 6 = 60, 60 - 6 = 54",
        None,
    ),
    (
        EN,
        "12 x 18",
        "six times thirty six, that's one eighty and thirty six, two sixteen",
        "6 x 36 = 216, 180 + 36 = 216",
        "216",
    ),
    (
        EN,
        "25 x 36",
        "twenty thirties is six hundred and five sixes is thirty so six thirty",
        "20 x 30 = 600, 5 x 6 = 30, 600 + 30 = 630",
        "630",
    ),
    (EN, "18 x 5", "nine tens cos you halve the eighteen", "9 x 10 = 90, 18 / 2 = 9", None),
    (
        ES,
        "68 / 4",
        "les di diez a cada uno y quedaron veintiocho, siete más a cada uno, diecisiete",
        "10 x 4 = 40, 68 - 40 = 28, 7 x 4 = 28, 10 + 7 = 17",
        "17",
    ),
    (
        ES,
        "96 / 6",
        "doy diez a cada niño y ya van sesenta, luego seis a cada uno, treinta y seis, dieciséis",
        "10 x 6 = 60, 6 x 6 = 36, 10 + 6 = 16",
        "16",
    ),
    (
        ES,
        "60 / 4",
        "reparto cuarenta, diez a cada uno y luego veinte, cinco a cada uno, quince",
        "40 / 4 = 10, 20 / 4 = 5, 10 + 5 = 15",
        "15",
    ),
    (
        ES,
        "36 x 25",
        "nueve por cien porque la cuarta parte de treinta y seis es nueve",
        "9 x 100 = 900, 36 / 4 = 9",
        None,
    ),
    (ES, "9 x 6", "la tabla del nueve no me la aprendí", "", None),
]


@pytest.mark.parametrize(
    ("problem", "said", "answer"),
    [
        ("46 x 7", "six sevens forty two, four sevens twenty eight, two eighty two", "282"),
        (
            "12 x 14",
            "ten times ten is a hundred and two times four is eight so one oh eight",
            "108",
        ),
    ],
)
def test_a_hundred_said_in_short_at_the_end_is_whole(problem, said, answer):
    assert read(parse(problem), said, EN).answer_text == answer


@pytest.mark.parametrize(("language", "problem", "said", "steps", "answer"), TOLD)
def test_shares_are_heard_as_they_were_told(language, problem, said, steps, answer):
    reading = read(parse(problem), said, language)
    assert ", ".join(text(told.step.equation) for told in reading.told) == steps
    assert reading.answer_text == answer


@pytest.mark.parametrize(
    ("language", "problem", "said", "family"),
    [
        (EN, "18 x 5", "double is 36, double again is 72 and one more 18 makes 90", "break-up"),
        (EN, "7 x 12", "double is 24, double 48, double 96, take one 12, 84", "near-fact"),
        (EN, "7 x _ = 56", "seven nines is fifty six, nine", "think-times"),
        (ES, "7 x _ = 56", "siete por seis cincuenta y seis, seis", "think-times"),
        (EN, "78 / 3", "90 divided by 3 is 30 so minus 12 is 18", "near-fact"),
        (
            EN,
            "_ x 12 = 60",
            "2 twelves is 24 and double that is 48 and one more is 60",
            "chunk-out",
        ),
        (EN, "400 / 25", "there's four in every hundred, so sixteen", "think-times"),
        (ES, "400 / 25", "en cien hay cuatro, entonces dieciséis", "factor-steps"),
        (
            ES,
            "_ x 9 = 63",
            "diez nueves noventa, me paso por 27 que son tres nueves, 7",
            "near-fact",
        ),
        (EN, "7 x 8", "I just know it", "known-fact"),
        (EN, "8 x 12", "I don't know my twelves", None),
        (ES, "8 x 12", "no me sé la tabla del doce", None),
    ],
)
def test_what_was_done_with_groups_names_the_way(language, problem, said, family):
    found = read(parse(problem), said, language).family
    assert (found.value if found else None) == family
