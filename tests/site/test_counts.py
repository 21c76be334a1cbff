"""The rule of the summary, attacked: no child is told from any two things a coach can see."""

from datetime import date, timedelta
from itertools import product

from hypothesis import given
from hypothesis import strategies as st

from waysaid.site.counts import LEAST, SETTLED, after, cells, half_term, is_over, together

FAMILIES = ("bridge", "jump")


def seen(world, rule):
    """Return what a coach sees of a world: for each child the families she used."""
    pairs = [(f"c{at}", each) for at, used in enumerate(world) for each in ("", *used)]
    return tuple(sorted(rule(pairs).items()))


def worlds(children):
    used = [(), ("bridge",), ("jump",), ("bridge", "jump")]
    return product(used, repeat=children)


def at_least(least):
    return lambda pairs: cells(pairs, least)


def nearly_all_too(pairs):
    """A rule that withholds few and tells nearly all."""
    who = {}
    for child, family in pairs:
        who.setdefault(family, set()).add(child)
    return {family: len(each) for family, each in who.items() if family and len(each) >= 2}


def told_of_somebody(children, rule):
    """Return each answer from which it is certain what one child did, over every world there is."""
    possible = {}
    for world in worlds(children):
        answers = possible.setdefault(seen(world, rule), set())
        answers |= {
            (child, family, family in used)
            for child, used in enumerate(world) for family in FAMILIES
        }  # fmt: skip
    return [
        (answer, child, family)
        for answer, known in possible.items()
        for child in range(children)
        for family in FAMILIES
        if len({did for who, what, did in known if (who, what) == (child, family)}) < 2
    ]


def told_by_two_counts(children, rule):
    """Return each pair of counts, without and with the last child, that tells what she did.

    Everybody else did the same in both: so it is where one half-term is counted twice.
    """
    known = {}
    for world in worlds(children):
        pair = seen(world[:-1], rule), seen(world, rule)
        known.setdefault(pair, set()).update((each, each in world[-1]) for each in FAMILIES)
    everything = set(product(FAMILIES, (False, True)))
    return [pair for pair, found in known.items() if found != everything]


def test_whatever_is_told_of_a_small_class_each_child_may_have_and_may_not():
    for children, least in ((1, 2), (2, 2), (3, 2), (4, 2), (5, 2), (6, 2), (6, 3)):
        assert told_of_somebody(children, at_least(least)) == []


def test_the_attack_finds_what_a_rule_tells_that_withholds_few_alone():
    assert told_of_somebody(4, nearly_all_too)


def test_counting_a_half_term_twice_would_tell_which_is_why_it_is_counted_once():
    assert told_by_two_counts(6, at_least(2))


def test_two_half_terms_between_which_a_child_joined_do_not_tell_what_she_did():
    rule = at_least(2)
    before = {seen(world, rule) for world in worlds(4)}
    joined = {}
    for world in worlds(5):
        joined.setdefault(seen(world, rule), set()).update(
            (family, family in world[4]) for family in FAMILIES
        )
    for first, (second, known) in product(before, joined.items()):
        assert known == set(product(FAMILIES, (False, True))), (first, second)


def test_a_grade_less_one_of_its_classes_is_what_the_other_tells_anyway():
    for one, other in product(list(worlds(4))[::7], repeat=2):
        first, second = dict(seen(one, at_least(2))), dict(seen(other, at_least(2)))
        for family, (low, high) in together([first, second], 2).items():
            rest = low - first.get(family, 0), high - (first[family] + 1 if family in first else 0)
            told = (second[family], second[family] + 1) if family in second else (0, 0)
            assert rest == told


@given(st.sets(st.integers(0, 29)), st.integers(1, 30))
def test_a_number_has_five_who_did_and_five_who_did_not_behind_it(did, heard):
    did = {each for each in did if each < heard}
    pairs = [(str(each), "bridge" if each in did else "") for each in range(heard)]
    told = cells(pairs)
    if len(did) >= LEAST and heard - len(did) >= LEAST:
        assert told == {"bridge": len(did) // LEAST * LEAST}
    else:
        assert told == {}


@given(st.dates(date(2024, 1, 1), date(2031, 12, 31)))
def test_every_day_is_in_one_half_term_and_none_is_counted_before_it_is_settled(day):
    first = half_term(day)
    assert first <= day < after(first)
    assert half_term(after(first)) == after(first)
    assert not is_over(first, after(first) + SETTLED - timedelta(1))
    assert is_over(first, after(first) + SETTLED)
    assert first.month % 2 == 1
