"""What holds of every way to see a quick image, whatever the picture."""

from collections import Counter
from itertools import chain

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from tests.counts import count
from tests.number.problems import images
from waysaid.number import Language, arrange, layout_of, leaves, parse, value_of
from waysaid.ways import Family, effort_of, how_said, ways

MANY = settings(max_examples=count(test=400, sweep=20_000), deadline=None)


def numbers(way):
    return [leaf for step in way.steps for leaf in leaves(step.equation.left)]


@given(images)
@MANY
def test_every_picture_has_a_way_and_every_way_is_true_and_ends_with_the_count(image):
    found = ways(image)
    assert found
    for way in found:
        assert all(step.true for step in way.steps)
        assert value_of(way.steps[-1].equation.right) == image.count == way.answer


@given(images)
@MANY
def test_every_dot_is_in_one_group_and_only_a_frame_thought_full_has_more(image):
    places = range(len(layout_of(image).places))
    for way in ways(image):
        seen = Counter(chain.from_iterable(way.seen))
        if way.family is Family.ADJUST:
            *full, empty = way.seen
            assert min(empty) >= image.count
            assert Counter(chain.from_iterable(full)) == Counter([*range(image.count), *empty])
            assert set(seen) <= set(places)
        else:
            assert seen == Counter(range(image.count)), (way.family, way.variant)


@given(images)
@MANY
def test_the_groups_are_the_numbers_of_the_steps(image):
    for way in ways(image):
        said = set(numbers(way))
        made = {value_of(step.equation.left) for step in way.steps}
        assert all(len(group) in said | made for group in way.seen), (way.family, way.variant)


@given(images)
@MANY
def test_no_two_ways_have_the_same_steps_and_the_least_effort_comes_first(image):
    found = ways(image)
    texts = [tuple(step.text for step in way.steps) for way in found]
    assert len(set(texts)) == len(texts)
    names = [(way.family, way.variant) for way in found]
    assert len(set(names)) == len(names)
    efforts = [effort_of(way).tenths for way in found]
    assert efforts == sorted(efforts)


@given(images, st.sampled_from(Language))
@MANY
def test_a_way_is_said_with_the_count_in_it(image, language):
    for way in ways(image):
        said = how_said(way, language)
        assert str(image.count) in said
        assert said[-1] == "."


@given(st.integers(0, 10**9), st.lists(st.integers(2, 6), min_size=2, max_size=5))
@MANY
def test_the_groups_of_an_arrangement_are_seen_as_they_were_asked_for(seed, sizes):
    shown = {tuple(len(group) for group in way.seen) for way in ways(arrange(seed, *sizes))}
    assert tuple(sizes) in shown


SEEN = (
    ("image frame 10: 7", Family.SPLIT, "5 + 2 = 7", (5, 2)),
    ("image frame 10: 7", Family.ADJUST, "10 - 3 = 7", (10, 3)),
    ("image frame 10: 4", Family.KNOWN_FACT, "4 = 4", (4,)),
    ("image frame 20: 8 6", Family.BRIDGE, "8 + 2 = 10; 10 + 4 = 14", (8, 2, 4)),
    ("image frame 20: 8 6", Family.GIVE_AND_TAKE, "8 + 2 = 10; 6 - 2 = 4; 10 + 4 = 14", (8, 2, 4)),
    ("image frame 20: 9 6", Family.ADJUST, "10 + 6 = 16; 16 - 1 = 15", (10, 6, 1)),
    ("image frame 20: 14", Family.SPLIT, "10 + 4 = 14", (10, 4)),
    ("image pairs 10: 7", Family.COUNTING, "2 + 2 = 4; 4 + 2 = 6; 6 + 1 = 7", (2, 2, 2, 1)),
    ("image pairs 10: 7", Family.NEAR_DOUBLE, "3 + 3 = 6; 6 + 1 = 7", (3, 3, 1)),
    ("image dice: 4 3", Family.BRIDGE, "4 + 1 = 5; 5 + 2 = 7", (4, 1, 2)),
    ("image dice: 4 4", Family.KNOWN_FACT, "4 + 4 = 8", (4, 4)),
    ("image dice: 6 4", Family.GIVE_AND_TAKE, "4 + 1 = 5; 6 - 1 = 5; 5 + 5 = 10", (4, 1, 5)),
    ("image dice: 5 3 5", Family.PARTNERS, "5 + 5 = 10; 10 + 3 = 13", (5, 5, 3)),
    (
        "image dice: 5 5 5 2 2",
        Family.BREAK_UP,
        "3 x 5 = 15; 2 x 2 = 4; 15 + 4 = 19",
        (5, 5, 5, 2, 2),
    ),
    ("image dice: 5 2", Family.COUNTING, "5 + 1 = 6; 6 + 1 = 7", (5, 1, 1)),
    ("image dice: 5", Family.SPLIT, "4 + 1 = 5", (4, 1)),
    ("image array: 3 x 4", Family.KNOWN_FACT, "3 x 4 = 12", (4, 4, 4)),
    ("image array: 3 x 4", Family.COUNTING, "4 + 4 = 8; 8 + 4 = 12", (4, 4, 4)),
    ("image array: 5 x 6", Family.COUNTING, "6 + 6 = 12; 12 + 6 = 18; 18 + 6 = 24; 24 + 6 = 30",
     (6,) * 5),
    ("image array: 7 x 4", Family.BREAK_UP, "5 x 4 = 20; 2 x 4 = 8; 20 + 8 = 28", (20, 8)),
    ("image array: 6 x 4", Family.NEAR_FACT, "5 x 4 = 20; 20 + 4 = 24", (20, 4)),
    ("image array: 4 x 6", Family.FACTOR_STEPS, "2 x 6 = 12; 12 x 2 = 24", (12, 12)),
)  # fmt: skip


@pytest.mark.parametrize(("picture", "family", "steps", "sizes"), SEEN)
def test_a_picture_is_seen(picture, family, steps, sizes):
    told = {
        (way.family, "; ".join(step.text for step in way.steps)): tuple(map(len, way.seen))
        for way in ways(parse(picture))
    }
    assert told[family, steps] == sizes


NEVER = (
    ("image dice: 4 3", Family.ADJUST, "there are no empty places"),
    ("image frame 10: 3", Family.ADJUST, "too many places are empty"),
    ("image frame 20: 14", Family.BRIDGE, "nobody fills five up beside a full ten"),
    ("image dice: 5 2", Family.NEAR_DOUBLE, "the groups are not almost alike"),
    ("image dice: 5 2 5 2 5", Family.BREAK_UP, "the alike are not together"),
    ("image dice: 5 5 2 2", Family.BREAK_UP, "two pairs are put together"),
    ("image dice: 5 5", Family.GIVE_AND_TAKE, "the groups are alike"),
    ("image array: 3 x 4", Family.ADJUST, "there are no empty places"),
)


@pytest.mark.parametrize(("picture", "family", "why"), NEVER)
def test_a_picture_is_not_seen(picture, family, why):
    assert not [way for way in ways(parse(picture)) if way.family is family], why


TOLD = (
    ("image dice: 5", "5 = 5", "I saw 5 at once.", "Vi 5 de una vez."),
    ("image frame 10: 7", "5 + 2 = 7", "I saw groups: 5 and 2 is 7.", "Vi grupos: 5 y 2 son 7."),
    (
        "image frame 10: 7",
        "10 - 3 = 7",
        "I thought of it full: 10 take away 3 is 7.",
        "Lo pensé lleno: 10 menos 3 son 7.",
    ),
    (
        "image dice: 2 1",
        "1 + 1 = 2; 2 + 1 = 3",
        "I counted them one by one: 1, 2, 3.",
        "Los conté de uno en uno: 1, 2, 3.",
    ),
    (
        "image array: 3 x 4",
        "3 x 4 = 12",
        "I saw equal groups: 3 times 4 is 12.",
        "Vi grupos iguales: 3 por 4 son 12.",
    ),
)


@pytest.mark.parametrize(("picture", "steps", "english", "spanish"), TOLD)
def test_a_way_is_told_as_what_was_seen(picture, steps, english, spanish):
    way = next(
        way for way in ways(parse(picture)) if "; ".join(one.text for one in way.steps) == steps
    )
    assert how_said(way, Language.EN) == english
    assert how_said(way, Language.ES) == spanish
