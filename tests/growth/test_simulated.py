"""The simulated class talks as published studies say that classes do, and from a seed."""

from collections import Counter

from hypothesis import given
from hypothesis import strategies as st

from tests.growth.rooms import CHILDREN, past, state_of
from waysaid.growth import TOLD, Lesson, Room, Simulated, lessons
from waysaid.number import parse
from waysaid.talk import body_from_json, body_json
from waysaid.ways import Family


@given(st.integers(0, 10**6))
def test_the_same_seed_makes_the_same_talks(seed):
    twice = [Simulated(Room(CHILDREN[:5]), seed) for _ in range(2)]
    first, second = ([one.talk(each, "") for each in lessons()[:4]] for one in twice)
    assert first == second


@given(st.integers(0, 10**6))
def test_what_happens_is_what_a_desk_could_have_sent(seed):
    script = Simulated(Room(CHILDREN), seed).talk(lessons()[seed % 80], "Talk")
    for seconds, body in script:
        assert seconds >= 0
        assert body_from_json(body_json(body)) == body
    state = state_of(script)
    assert state.closed
    assert len(state.shown) == len(state.problems)


def test_most_children_use_several_families_as_siegler_reports():
    # Siegler 1996, overlapping waves: most children use more than one strategy at any time.
    whole = past(Room(CHILDREN), 1, 60)
    families = {
        child: {p.family for p in whole.shown if p.child == child and p.how in TOLD}
        for child in CHILDREN
    }
    several = sum(len(each) > 1 for each in families.values())
    assert several * 2 > len(CHILDREN)


def test_an_easier_way_is_told_more_often_than_a_harder_one():
    # Siegler and Shrager 1984: the choice falls more often on what is strong and asks little.
    bridge, column = 0, 0
    string = Lesson((parse("8 + 6"), parse("38 + 6")))
    for seed in range(60):
        simulated = Simulated(Room(CHILDREN, one_in=1), seed)
        state = state_of(simulated.talk(string, "Talk"))
        counted = Counter(way.family for way in state.ways)
        bridge += counted[Family.BRIDGE]
        column += counted[Family.COLUMN]
    assert bridge > 2 * column


def test_counting_gives_way_in_the_course_of_the_year():
    # Carpenter and Moser 1984; Siegler 1996: counting is left by degrees for what asks less.
    early, late = Counter(), Counter()
    for seed in range(12):
        simulated = Simulated(Room(CHILDREN), seed)
        strings = [lessons()[at % 80] for at in range(120)]
        for at, lesson in enumerate(strings):
            told = Counter(way.family for way in state_of(simulated.talk(lesson, "")).ways)
            if at < 30:
                early += told
            elif 80 <= at < 110:  # the same strings again
                late += told
    assert late[Family.COUNTING] * early.total() < early[Family.COUNTING] * late.total()


def test_an_unknown_family_is_never_told_and_a_rare_one_only_by_its_children():
    room = Room(CHILDREN, 1, frozenset({Family.BRIDGE}), {Family.ADJUST: ("3", "8")})
    whole = past(room, 5, 40)
    told = [piece for piece in whole.shown if piece.family is not None]
    assert Family.BRIDGE not in {piece.family for piece in told}
    assert {piece.child for piece in told if piece.family is Family.ADJUST} <= {"3", "8"}
