"""Starter strings: enough of them, in range, connected, true in what they say, in two languages."""

import re
from collections import Counter
from itertools import pairwise

import pytest

from waysaid.number import (
    BLANK,
    Image,
    Language,
    answer_of,
    is_true,
    parse_equation,
    solve,
    text,
)
from waysaid.strings import (
    LinkKind,
    Starter,
    leaves_of,
    links,
    starter_text,
    starters,
)
from waysaid.strings.filled import as_number
from waysaid.ways import Family, effort_of, grades_of, ways

ALL = starters()
EACH = pytest.mark.parametrize("starter", ALL, ids=lambda one: one.slug)


_EN = "zero one two three four five six seven eight nine ten"
_ES = "cero uno dos tres cuatro cinco seis siete ocho nueve diez"
NUMBER_WORDS = {Language.EN: tuple(re.split(" ", _EN)), Language.ES: tuple(re.split(" ", _ES))}


def texts(starter: Starter, language: Language) -> list[str]:
    said = starter_text(starter, language)
    return [said.title, said.purpose, *said.why, *said.questions]


def test_there_are_enough_for_every_grade():
    count = Counter(starter.grade for starter in ALL)
    assert len(ALL) >= 160
    assert [count[grade] for grade in range(7)] >= [15, 20, 20, 30, 25, 20, 10]
    assert all(count[grade] >= 10 for grade in range(7))


def kind_of(problem) -> str:
    whole = text(problem)
    for kind, sign in (("about", "about"), ("image", "image"), ("claim", " ="), ("part", " of ")):
        if sign in whole and (kind != "claim" or whole.endswith("?")):
            return kind
    if "?" in whole:
        return "compare"
    if "_" in whole:
        return "missing"
    signs = {" x ": "times", " / ": "over", " - ": "minus"}
    return next((kind for sign, kind in signs.items() if sign in whole), "plus")


def test_every_kind_of_problem_has_strings():
    kinds = Counter(kind for one in ALL for kind in {kind_of(each) for each in one.problems})
    for kind in ("plus", "minus", "times", "over", "missing", "part", "compare", "about", "image"):
        assert kinds[kind] >= 3, kind
    assert kinds["claim"] >= 1
    written = " ".join(text(each) for one in ALL for each in one.problems)
    assert all(part in written for part in ("%", "3/4", "0.6", "1 1/4"))


def test_no_two_have_one_slug_or_the_same_problems_or_title():
    for of in (
        lambda one: one.slug,
        lambda one: one.problems,
        lambda one: one.english.title,
        lambda one: one.spanish.title,
        lambda one: one.english.purpose,
    ):
        assert [key for key, times in Counter(map(of, ALL)).items() if times > 1] == []


def test_every_family_that_a_string_can_be_about_has_one():
    shown_only_beside_others = {Family.COLUMN}
    assert {starter.focus for starter in ALL} == set(Family) - shown_only_beside_others


def test_missing_numbers_and_three_numbers_occur_in_the_first_grades():
    shown = {
        starter.grade: " ".join(text(one) for one in starter.problems)
        for starter in ALL
        if starter.focus is Family.PARTNERS
    }
    assert set(shown) >= {1, 2, 3}
    missing = {one.grade for one in ALL if BLANK in leaves_of(one.problems[0])}
    assert missing >= {0, 1, 2, 3}


@EACH
def test_it_has_four_to_six_problems_each_with_a_reason_and_two_or_three_questions(starter):
    assert 4 <= len(starter.problems) <= 6
    assert len(set(starter.problems)) == len(starter.problems)
    for language in Language:
        said = starter_text(starter, language)
        assert len(said.why) == len(starter.problems)
        assert 2 <= len(said.questions) <= 3
        assert all(re.search(r"[.?]$", one) for one in [said.purpose, *said.why])
        assert all("?" in question or question.endswith(".") for question in said.questions)
        assert any("?" in question for question in said.questions)
        assert all(len(one) <= 250 for one in texts(starter, language))


@EACH
def test_both_languages_are_there_and_are_not_the_same(starter):
    for english, spanish in zip(
        texts(starter, Language.EN), texts(starter, Language.ES), strict=True
    ):
        assert english.strip()
        assert spanish.strip()
        assert english != spanish
        assert ("?" in english) == ("¿" in spanish and "?" in spanish)


@EACH
def test_both_languages_speak_of_the_same_amounts(starter):
    """From three to nine: one and two have other uses in Spanish, and ten is also a decena."""
    for english, spanish in zip(
        texts(starter, Language.EN), texts(starter, Language.ES), strict=True
    ):
        said = [
            [
                NUMBER_WORDS[language].index(word)
                for word in re.findall(r"\w+", text_.lower())
                if word in NUMBER_WORDS[language][3:10]
            ]
            for language, text_ in ((Language.EN, english), (Language.ES, spanish))
        ]
        assert sorted(said[0]) == sorted(said[1]), (english, spanish)


def fits_grade_1(numbers: list[int]) -> bool:
    """Within 20; beyond it tens, or tens and ones with ones (CCSS 1.OA.6, 1.NBT.4, 1.NBT.6)."""
    if max(numbers) <= 20:
        return True
    parts = sorted(numbers)[:-1]
    return max(numbers) <= 100 and any(part < 10 or part % 10 == 0 for part in parts)


def is_plain_sum(problem) -> bool:
    return (
        not isinstance(problem, Image)
        and kind_of(problem) in ("plus", "minus", "missing")
        and (not re.search(r"[x/.%]", text(problem)))
    )


@EACH
def test_every_number_and_answer_is_inside_the_range_of_the_grade(starter):
    """Within 10, 20 (and tens), 100 and 1000: CCSS K.OA.2, 1.OA.6, 2.NBT.5, 3.NBT.2.

    For all else the grade in which a standard first asks for such a problem.
    """
    for problem in starter.problems:
        if starter.grade > 3 or not is_plain_sum(problem):
            assert grades_of(problem).first <= starter.grade, text(problem)
            continue
        numbers = [leaf for leaf in leaves_of(problem) if leaf is not BLANK]
        numbers.append(solve(problem))
        assert all(isinstance(number, int) and number >= 0 for number in numbers)
        if starter.grade == 1:
            assert fits_grade_1(numbers), text(problem)
        else:
            assert max(numbers) <= {0: 10, 2: 100, 3: 1000}[starter.grade], text(problem)


@EACH
def test_a_number_below_zero_comes_in_the_last_grade_only(starter):
    for problem in starter.problems:
        answer = as_number(answer_of(problem))
        assert answer is None or answer >= 0 or starter.grade == 6


@EACH
def test_every_problem_has_ways_and_the_last_is_no_easier_than_the_first(starter):
    easiest = [effort_of(ways(problem)[0]).tenths for problem in starter.problems]
    assert easiest[-1] >= easiest[0]


@EACH
def test_two_neighbours_or_more_are_linked(starter):
    pairs = [
        pair
        for pair in pairwise(range(len(starter.problems)))
        if any(set(pair) <= set(one.between) for one in links(starter.problems, every=True))
    ]
    assert 2 * len(pairs) >= len(starter.problems) - 1


@EACH
def test_its_problems_are_connected(starter):
    found = links(starter.problems)
    assert found
    assert set().union(*(link.between for link in found)) >= {0, 1}


@EACH
def test_all_but_a_last_stretch_have_a_link_to_another_problem(starter):
    linked = set().union(*(link.between for link in links(starter.problems, every=True)))
    assert linked >= set(range(len(starter.problems) - 1))


def rank(problem, family: Family) -> tuple[int, int] | None:
    """The family's place among the families of a problem, best first, and how many there are."""
    order = list(dict.fromkeys(way.family for way in ways(problem)))
    return (order.index(family) + 1, len(order)) if family in order else None


@EACH
def test_the_focus_family_pays_off_at_the_end(starter):
    """It fits half of the problems or more, as a helper may come before each, and the last.

    There it is among the five easiest or the easier half, or easier than where it first fitted.
    """
    ranks = [rank(problem, starter.focus) for problem in starter.problems]
    fitting = [one for one in ranks if one is not None]
    assert 2 * len(fitting) >= len(ranks)
    assert ranks[-1] is not None
    (first, first_of), (last, last_of) = fitting[0], ranks[-1]
    assert last <= 5 or 2 * last <= last_of or last * first_of < first * last_of


def equations(said: str) -> list[str]:
    return re.findall(r"\d+ *[-+−x×/÷] *\d+ *= *\d+", said)


@EACH
def test_an_equation_in_a_text_is_true(starter):
    for language in Language:
        for said in texts(starter, language):
            assert all(is_true(parse_equation(one)) for one in equations(said))


def test_an_equation_in_a_text_would_be_noticed():
    assert equations("see how 7 + 5 = 13 here") == ["7 + 5 = 13"]


@EACH
def test_a_question_gives_no_answer_away(starter):
    found = [as_number(answer_of(problem)) for problem in starter.problems]
    answers = {one for one in found if isinstance(one, int)}
    for language in Language:
        words = {NUMBER_WORDS[language][one] for one in answers if 2 < one <= 10}
        for question in starter_text(starter, language).questions:
            assert not re.search(r"\d", question)
            assert not words & set(re.findall(r"\w+", question.lower()))


JUDGING = (
    r"\b(good|great|right|wrong|correct|best|easiest|bien|mal|correct[oa]|mejor|incorrect\w*)\b"
)


@EACH
def test_a_question_praises_and_judges_nothing(starter):
    for language in Language:
        for question in starter_text(starter, language).questions:
            assert not re.search(JUDGING, question.lower()), question


# What a reason says of its neighbours is checked against the numbers.

AMOUNTS = {word: at for at, word in enumerate(NUMBER_WORDS[Language.EN])}
AMOUNT = "(one|two|three|four|five|six|seven|eight|nine|ten)"
WHERE = (
    r"(?:than (?:in )?|since |of )?(?:the )?"
    r"(first|second|third|(?:problem|one|double|sum) before(?: it)?)"
)


def index_of(where: str, at: int) -> int:
    return {"first": 0, "second": 1, "third": 2}.get(where, at - 1)


def claims(starter: Starter, pattern: str):
    for at, why in enumerate(starter.english.why):
        for match in re.finditer(pattern, why, re.IGNORECASE):
            amount, *rest = match.groups()
            yield AMOUNTS[amount.lower()], index_of(rest[-1].lower(), at), at, rest[:-1]


def moved(starter: Starter, old: int, new: int) -> list[int]:
    before, after = (leaves_of(starter.problems[at]) for at in (old, new))
    pairs = zip(before, after, strict=True)
    return sorted(b - a for a, b in pairs if a is not BLANK and a != b)


def test_what_is_said_to_have_moved_across_has_moved_across():
    seen = 0
    for starter in ALL:
        for by, old, new, _ in claims(starter, AMOUNT + r" ha(?:s|ve) moved across " + WHERE):
            assert moved(starter, old, new) == [-by, by], (starter.slug, new)
            seen += 1
    assert seen >= 8


def test_what_is_said_to_change_both_numbers_changes_both():
    pattern = r"both(?: numbers)? are " + AMOUNT + r" (more|less) " + WHERE
    seen = 0
    for starter in ALL:
        for by, old, new, (way,) in claims(starter, pattern):
            sign = 1 if way == "more" else -1
            assert moved(starter, old, new) == [sign * by] * 2, (starter.slug, new)
            seen += 1
    assert seen >= 8


def test_what_is_said_to_be_added_or_taken_more_or_less_is():
    pattern = AMOUNT + r" (more|less) (?:is|are|was|were) (?:taken|added) " + WHERE
    seen = 0
    for starter in ALL:
        for by, old, new, (way,) in claims(starter, pattern):
            assert moved(starter, old, new) == [by if way == "more" else -by], (starter.slug, new)
            seen += 1
    assert seen >= 20


def test_what_is_said_to_come_to_more_or_less_does():
    pattern = r"(?:^|, )" + AMOUNT + r" (more|less) than the " + WHERE.split("(?:the )?")[1]
    seen = 0
    for starter in ALL:
        for by, old, new, (way,) in claims(starter, pattern):
            difference = solve(starter.problems[new]) - solve(starter.problems[old])
            assert difference == (by if way == "more" else -by), (starter.slug, new)
            seen += 1
    assert seen >= 5


def test_what_is_said_to_be_inside_is_a_step_of_a_way():
    seen = 0
    for starter in ALL:
        for at, why in enumerate(starter.english.why):
            if "first problem is inside this one" in why:
                inside = {
                    link.between
                    for link in links(starter.problems, every=True)
                    if link.kind is LinkKind.INSIDE_A_WAY
                }
                assert (0, at) in inside, (starter.slug, at)
                seen += 1
    assert seen >= 3


def test_links_of_the_starters_are_of_many_kinds():
    kinds = {link.kind for starter in ALL for link in links(starter.problems)}
    assert kinds >= {
        LinkKind.ONE_CHANGES,
        LinkKind.BOTH_CHANGE,
        LinkKind.PATTERN,
        LinkKind.OPPOSITE,
        LinkKind.TURNED_AROUND,
        LinkKind.TEN_TIMES,
        LinkKind.SAME_TOTAL,
    }
