"""Composing: the string found is the best of its candidates, and is what was wished for."""

from dataclasses import replace
from itertools import pairwise, permutations, product
from random import Random

import pytest

from tests.counts import count
from waysaid.number import Language, Operation, Sign, parse, text
from waysaid.slips import foresee
from waysaid.strings import (
    HOMES,
    Topic,
    Wish,
    WishError,
    alternatives,
    composable,
    compose,
    links,
    topic_name,
    topics_of,
)
from waysaid.strings.best import Asked, best_string
from waysaid.strings.bounds import Frame
from waysaid.strings.pool import ENOUGH, Pool, plain_in, pool_of, problems_in, widened
from waysaid.strings.topic_forms import other_forms_of
from waysaid.strings.wanting import ALONE, LAST_ALONE, of_string
from waysaid.ways import Family, family_name, grades_of, ways

pytestmark = pytest.mark.slow

FEW = 8
"""The candidates of a pool small enough that every string of it can be weighed."""
NEAR = max(300, count(test=300, sweep=10_000))
"""Problems that lie close to each other, where helps are looked at."""
FROM_GRADE_2 = list(product(range(2, 7), Topic))
FORMS = [topic for topic in Topic if any(True for _ in other_forms_of(topic))]
FORMS_TRIED = max(200, count(test=200, sweep=10_000))
GRADES = {
    Topic.SUMS: 2,
    Topic.DIFFERENCES: 2,
    Topic.PRODUCTS: 4,
    Topic.QUOTIENTS: 5,
    Topic.SUM_FACTS: 2,
    Topic.PRODUCT_FACTS: 4,
    Topic.SEVERAL: 2,
    Topic.MISSING: 2,
    Topic.IMAGES: 1,
    Topic.FRACTION_SUMS: 5,
    Topic.FRACTION_DIFFERENCES: 5,
    Topic.DECIMAL_SUMS: 5,
    Topic.DECIMAL_DIFFERENCES: 5,
    Topic.PARTS: 5,
    Topic.PERCENTS: 6,
    Topic.CLAIMS: 2,
    Topic.COMPARISONS: 4,
    Topic.ESTIMATES: 4,
}
"""A grade in which each topic is at home."""
SLICE = {Topic.SUMS, Topic.PRODUCTS, Topic.IMAGES, Topic.FRACTION_SUMS, Topic.PERCENTS}
AT_HOME = [(topic, HOMES[topic][0]) for topic in Topic]
WHOLE = [pair for pair in AT_HOME if pair[0] in SLICE] if count(test=100, sweep=0) else AT_HOME
"""Those that are composed from the whole pool of a grade."""
EVERY = [(topic, family) for topic in Topic for family in HOMES[topic]]
IN_OTHER_FORMS = [
    (3, Topic.PRODUCTS),
    (3, Topic.QUOTIENTS),
    (3, Topic.COMPARISONS),
    (6, Topic.SUMS),
    (6, Topic.MISSING),
]
"""Where most candidates are in other forms than the usual one."""
IN_GRADES = [(GRADES[topic], topic, family) for topic, family in EVERY]
IN_GRADES += [(*pair, family) for pair in IN_OTHER_FORMS for family in HOMES[pair[1]]]
LINKED = [(GRADES[topic], topic, family) for topic, family in AT_HOME]
LINKED += [(*pair, HOMES[pair[1]][0]) for pair in IN_OTHER_FORMS]


def of_topics(pairs):
    """Return the pairs of a topic and a family, named for the test's report."""
    return [pytest.param(*pair, id=f"{pair[0]}-{pair[1]}") for pair in pairs]


def wish(topic: Topic, family: Family, **more: object) -> Wish:
    return replace(Wish(GRADES[topic], family, topic=topic), **more)


def small_pool(grade: int, topic: Topic, family: Family, dice: Random) -> Pool:
    """Return a few problems that lie close to each other, so that some help with others."""
    problems = problems_in(grade, topic)
    start = dice.randrange(len(problems) - 40)
    return pool_of(dice.sample(problems[start : start + 40], FEW), family)


@pytest.mark.parametrize("seed", range(count(test=40, sweep=2000)))
def test_no_string_of_a_small_pool_leaves_less_wanting(seed):
    dice = Random(seed)
    small = small_pool(*dice.choice(IN_GRADES), dice)
    many = len(small.candidates)
    length, easy = dice.choice((3, 4)), dice.randint(5, 25)
    named = dice.sample(range(many), dice.randint(0, 2))
    musts, kept = tuple(named[:1]), tuple((at, place) for at, place in enumerate(named[1:], 1))
    barred = frozenset(dice.sample([at for at in range(many) if at not in named], 1))
    surprise = dice.random() < 0.3

    def wanting(one: tuple[int, ...]) -> int | None:
        helps = small.met(one)
        if surprise and helps[-1] is not None:
            return None
        return of_string(small, one, easy) - (ALONE + LAST_ALONE if surprise else 0)

    every = [
        one
        for one in permutations(range(many), length)
        if set(musts) <= set(one)
        and not barred & set(one)
        and all(one[at] == place for at, place in kept)
        and wanting(one) is not None
    ]
    frame = Frame(length, easy, musts, kept, surprise)
    best = best_string(small, Asked(frame, barred), seed)
    assert best.proven
    if not every:
        assert not best.places
        return
    assert best.wanting == min(map(wanting, every))
    assert best.places in every
    assert best.wanting == wanting(best.places)


@pytest.mark.parametrize(("topic", "family"), of_topics(WHOLE))
def test_a_composed_string_is_what_was_wished_for(topic, family):
    composed = compose(wish(topic, family))
    assert composed.topic is topic
    assert len(set(composed.problems)) == len(composed.why) == 5
    assert all(grades_of(problem).holds(GRADES[topic]) for problem in composed.problems)
    assert composed.wanting == sum(wanting for _, wanting in composed.rows)
    assert compose(wish(topic, family)) == composed


@pytest.mark.parametrize(("topic", "family"), of_topics(WHOLE))
def test_the_best_of_a_topic_is_proven(topic, family):
    assert compose(wish(topic, family, length=4)).best_possible


def test_from_grade_2_on_a_string_is_chosen_from_2000_problems_or_more():
    sizes = {(grade, topic): len(problems_in(grade, topic)) for grade, topic in FROM_GRADE_2}
    assert all(many == 0 or many >= ENOUGH for many in sizes.values())


def test_where_a_grade_has_fewer_products_and_quotients_all_of_them_are_candidates():
    products, quotients = (problems_in(3, topic) for topic in (Topic.PRODUCTS, Topic.QUOTIENTS))
    for a, b in product(range(2, 51), repeat=2):
        if a * b <= 100:
            assert Operation(Sign.TIMES, a, b) in products
            assert Operation(Sign.OVER, a * b, a) in quotients


@pytest.mark.parametrize(
    ("grade", "topic", "forms"),
    [
        (
            2,
            Topic.IMAGES,
            ("image dice: 5 5 5 2 2", "image dice: 4 4 4 4 4", "image dice: 6 3 3 3 3"),
        ),
        (3, Topic.PRODUCTS, ("8 x _ = 56", "_ x 8 = 56", "6 x _ = 240", "2 x 3 x 4", "2 x 40 x 3")),
        (3, Topic.PRODUCTS, ("15 x 2 = 5 x _", "4 x 6 = _ x 2", "5 x 12 = 4 x _")),
        (
            3,
            Topic.QUOTIENTS,
            ("56 / _ = 8", "_ / 8 = 7", "8 x _ = 56", "_ x 6 = 240", "96 / 2 / 4"),
        ),
        (3, Topic.PRODUCT_FACTS, ("8 x _ = 56", "56 / _ = 8")),
        (3, Topic.COMPARISONS, ("7/4 ? 5/4", "8/3 ? 8/6", "6/3 ? 2", "2 ? 7/4")),
        (6, Topic.SUMS, ("2998 + 450", "4990 + 1475", "5001 + 2999")),
        (6, Topic.MISSING, ("2.7 + _ = 10", "_ + 1.8 = 4.5", "10 - _ = 2.7", "_ - 1.2 = 0.8")),
    ],
)
def test_where_a_grade_has_few_problems_they_are_candidates_in_other_forms_too(grade, topic, forms):
    found, plain = set(problems_in(grade, topic)), set(plain_in(grade, topic))
    other = {parse(one) for one in forms}
    assert found >= other
    assert not plain & other
    assert len(plain) < ENOUGH
    beside = grade + 1 if grade < 6 else grade - 1
    assert not set(problems_in(beside, topic)) & other


@pytest.mark.parametrize("topic", FORMS)
def test_every_candidate_in_another_form_has_ways_a_grade_and_slips(topic):
    every = sorted(set(other_forms_of(topic)), key=text)
    for problem in Random(5).sample(every, min(len(every), FORMS_TRIED)):
        assert ways(problem), problem
        assert grades_of(problem).source.startswith("ccss")
        assert foresee(problem) or topic is Topic.COMPARISONS, problem


@pytest.mark.parametrize(
    ("before", "after", "kind"),
    [
        ("14 x 7", "98 / 14", "opposite"),
        ("98 / 14", "98 / 7", "opposite"),
        ("_ x 7 = 98", "_ / 14 = 7", "opposite"),
        ("98 / 14", "14 x _ = 98", "same-total"),
        ("98 / _ = 14", "98 / 14", "same-total"),
    ],
)
def test_a_fact_is_undone_where_another_of_its_numbers_is_asked_for(before, after, kind):
    help_ = pool_of((parse(before), parse(after)), Family.THINK_TIMES).met((0, 1))[1]
    assert help_ is not None
    assert (help_.kind, help_.own) == (kind, kind == "opposite")


def test_what_comes_out_helps_with_what_has_some_left_over():
    problems = (parse("20 / 5"), parse("22 / 5"))
    help_ = pool_of(problems, Family.THINK_TIMES).met((0, 1))[1]
    assert help_ is not None
    assert help_.kind in {link.kind for link in links(problems, every=True)}
    assert pool_of((parse("20 / 5"), parse("24 / 5")), Family.THINK_TIMES).met((0, 1))[1] is None


@pytest.mark.parametrize(("grade", "topic", "family"), LINKED)
def test_every_help_is_a_link(grade, topic, family):
    dice, problems = Random(7), problems_in(grade, topic)
    start = dice.randrange(max(1, len(problems) - NEAR))
    found = pool_of(problems[start : start + NEAR], family)
    for _ in range(count(test=40, sweep=2000)):
        before = dice.randrange(len(found.candidates))
        helped = list(found.helped(before).items())
        for after, help_ in dice.sample(helped, min(1, len(helped))):
            pair = [found.candidates[place].problem for place in (before, after)]
            assert help_.kind in {link.kind for link in links(pair, every=True)}, pair


@pytest.mark.parametrize(("topic", "family"), of_topics(AT_HOME))
def test_a_pool_made_wider_is_that_of_all_together(topic, family):
    problems = problems_in(GRADES[topic], topic)[:200]
    more = Random(3).sample(problems, 3)
    narrow = pool_of([one for one in problems if one not in more], family)
    wide, whole = widened(narrow, more, family), pool_of(problems, family)
    places = {one.problem: place for place, one in enumerate(wide.candidates)}
    if wide.steps != whole.steps:
        pytest.skip("the problems taken out were the only ones with parts")
    for before, one in enumerate(whole.candidates):
        found = {whole.candidates[at].problem: help_ for at, help_ in whole.helped(before).items()}
        known = wide.helped(places[one.problem])
        assert {wide.candidates[at].problem: help_ for at, help_ in known.items()} == found


def test_what_must_be_in_is_in_and_what_was_used_lately_is_not():
    must, other = parse("37 + 25"), compose(Wish(2, Family.GIVE_AND_TAKE)).problems
    wished = Wish(2, Family.GIVE_AND_TAKE, musts=(must,), lately=frozenset(other))
    composed = compose(wished)
    assert must in composed.problems
    assert not set(other) & set(composed.problems)
    assert composed.best_possible


def test_a_string_starts_where_it_should():
    start = parse("25 + 38")
    composed = compose(Wish(2, Family.GIVE_AND_TAKE, kept=((0, start),)))
    assert composed.problems[0] == start
    assert composed.best_possible


def test_an_answer_below_zero_is_for_the_grade_that_has_such_numbers():
    start = parse("3 - 7")
    assert compose(Wish(6, Family.BRIDGE, kept=((0, start),))).problems[0] == start


def test_what_an_answer_below_zero_helps_with_is_linked():
    problems = [parse(one) for one in ("5 - 5", "5 - 9", "7 - 11", "7 - 12", "14 - 24")]
    met = pool_of(problems, Family.BRIDGE).met(range(5))
    kinds = ("inside-a-way", "both-change", "one-changes", "double-half")
    assert tuple(help_.kind for help_ in met[1:]) == kinds
    for pair, help_ in zip(pairwise(problems), met[1:], strict=True):
        assert help_.kind in {link.kind for link in links(pair, every=True)}


def test_no_number_is_larger_than_wished():
    composed = compose(Wish(2, Family.BRIDGE, within=40))
    assert all(problem.left + problem.right <= 40 for problem in composed.problems)


def test_a_number_line_day_has_the_focus_in_every_problem():
    assert compose(Wish(2, Family.JUMP, line=True)).problems
    with pytest.raises(WishError, match="number line"):
        compose(Wish(2, Family.GIVE_AND_TAKE, line=True))


def test_a_surprise_comes_unhelped():
    composed = compose(Wish(2, Family.GIVE_AND_TAKE, surprise=True))
    assert composed.idea[-1] is None
    assert composed.best_possible


def test_a_must_of_another_operation_makes_the_string_of_that():
    composed = compose(Wish(1, Family.BRIDGE, length=3, musts=(parse("14 - 6"),)))
    assert composed.topic is Topic.DIFFERENCES


@pytest.mark.parametrize(("minutes", "many"), [(10, 4), (12, 5), (15, 6), (30, 7)])
def test_the_time_gives_the_length(minutes, many):
    assert len(compose(Wish(2, Family.BRIDGE, minutes=minutes)).problems) == many


def test_without_enough_nodes_nothing_is_called_the_best():
    assert not compose(Wish(2, Family.GIVE_AND_TAKE), most_nodes=3).best_possible


@pytest.mark.parametrize("family", [Family.GIVE_AND_TAKE, Family.BRIDGE, Family.ADD_UP])
def test_alternatives_differ_in_idea_and_share_no_problem(family):
    found = alternatives(Wish(2, family, length=4), 3)
    assert len({one.idea for one in found}) == len(found) == 3
    assert len({problem for one in found for problem in one.problems}) == 12
    assert [one.wanting for one in found] == sorted(one.wanting for one in found)


def test_each_reason_refers_to_the_problem_before():
    for language, word in ((Language.EN, "problem"), (Language.ES, "problema")):
        why = compose(Wish(2, Family.GIVE_AND_TAKE, language=language)).why
        for number, reason in enumerate(why[1:], start=1):
            assert f"{word} {number}" in reason.lower()
            assert reason.count(".") == reason.endswith(".") == 1


def test_in_a_reason_a_problem_inside_another_has_its_own_number():
    composed = compose(Wish(2, Family.SPLIT))
    hiding = [(at, one) for at, one in enumerate(composed.why) if "hiding" in one]
    assert hiding
    for at, reason in hiding:
        assert f"Problem {at} is hiding inside problem {at + 1}" in reason


def test_a_family_is_composed_in_every_topic_it_is_at_home_in():
    for topic, family in EVERY:
        assert topic in topics_of(family)
    assert all(composable(GRADES[topic], topic, family, 5) for topic, family in AT_HOME)
    assert topics_of(Family.COLUMN) == ()


@pytest.mark.parametrize(
    ("wished", "said"),
    [
        (Wish(9, Family.BRIDGE), "Grade 9"),
        (Wish(2, Family.BRIDGE, length=9), "from 3 to 7"),
        (Wish(2, Family.COLUMN), "‘column’"),
        (Wish(0, Family.SCALE_BOTH), "another family"),
        (Wish(2, Family.BRIDGE, topic=Topic.PRODUCTS), "‘products’ and ‘bridge’"),
        (Wish(2, Family.GIVE_AND_TAKE, musts=(parse("62 - 25"),)), "leave out 62 − 25"),
        (Wish(0, Family.KNOWN_FACT, musts=(parse("62 + 25"),)), "belongs to grades 2 to 4"),
        (Wish(2, Family.BRIDGE, kept=((0, parse("3 - 7")),)), "no answer"),
        (Wish(5, Family.BRIDGE, kept=((0, parse("3 - 7")),)), "no answer"),
        (Wish(2, Family.BRIDGE, kept=((5, parse("7 + 8")),)), "no place 6"),
        (
            Wish(2, Family.BRIDGE, musts=(parse("62 + 25"),), lately=frozenset({parse("62 + 25")})),
            "used lately",
        ),
        (
            Wish(2, Family.BRIDGE, musts=tuple(parse(f"{n} + 2") for n in range(40, 44))),
            "at most 3",
        ),
        (Wish(2, Family.BRIDGE, length=6, minutes=10), "10 minutes and 6 problems"),
        (Wish(2, Family.BRIDGE, minutes=5), "5 minutes"),
        (Wish(2, Family.BRIDGE, within=2), "numbers to 2"),
        (Wish(0, Family.SCALE_BOTH, language=Language.ES), "En el grado 0"),
    ],
)
def test_wishes_that_clash_are_one_sentence(wished, said):
    with pytest.raises(WishError) as error:
        compose(wished)
    assert said in str(error.value)
    assert str(error.value).count(". ") == 0
    assert error.value.named.count(". ") == 0


@pytest.mark.parametrize("language", Language)
def test_a_clash_is_said_by_slugs_and_by_names(language):
    with pytest.raises(WishError) as error:
        compose(Wish(2, Family.BREAK_UP, topic=Topic.SUM_FACTS, language=language))
    assert "‘sums-and-differences’" in str(error.value)
    assert "‘break-up’" in str(error.value)
    assert f"‘{topic_name(Topic.SUM_FACTS, language)}’" in error.value.named
    assert f"‘{family_name(Family.BREAK_UP, language)}’" in error.value.named
    assert family_name(Family.THINK_ADD, language) in error.value.named


def test_the_wishes_that_clash_are_named_and_the_smallest_is_to_go():
    few = problems_in(1, Topic.SUMS)
    lately = frozenset(one for one in few if one.left + one.right <= 10)
    with pytest.raises(WishError) as error:
        compose(Wish(1, Family.BRIDGE, topic=Topic.SUMS, within=10, lately=lately, surprise=True))
    said = str(error.value)
    assert "used lately" in said
    assert "numbers to 10" in said
    assert "surprise" not in said
    assert said.endswith("leave out nothing that was used lately.")
