"""A year planned again: past and locked days stay, what was missed comes, each move is said."""

from importlib import import_module
from random import Random

import pytest

from tests.counts import count
from waysaid.number import Language
from waysaid.strings import (
    Happened,
    faults,
    lay_out_year,
    move_says,
    numbered_days,
    re_plan,
    year_told,
)
from waysaid.strings.year.re_plan import HEARD_WITHIN, MADE_UP_WITHIN

YEAR = lay_out_year(0, numbered_days())


def happened_by(dice):
    """Return something that may have happened to the year."""
    today = dice.randint(2, 170)
    past = sorted({talk.idea.slug for talk in YEAR.talks[: today - 1]})
    some = [frozenset(dice.sample(past, min(len(past), dice.randint(0, 2)))) for _ in range(2)]
    missed = {dice.randint(max(1, today - 5), today + 5) for _ in range(dice.randint(0, 4))}
    locked = frozenset(dice.sample(range(today, 181), 8))
    return Happened(today, frozenset(missed), some[0] - some[1], some[1], locked)


@pytest.mark.parametrize("seed", range(count(test=60, sweep=2000)))
def test_a_plan_again_keeps_what_it_must_and_brings_what_it_should(seed):
    happened = happened_by(Random(seed))
    planned = re_plan(YEAR, happened)
    before = {talk.day.number: talk for talk in YEAR.talks}
    after = {talk.day.number: talk for talk in planned.year.talks}
    assert set(after) == set(before) - happened.missed
    for day, talk in after.items():
        if day < happened.today or day in happened.locked:
            assert talk.given == before[day].given
    changed = [day for day in after if after[day].given != before[day].given]
    assert [move.after.day.number for move in planned.moves] == changed
    assert planned.fewest
    if seed % 20 == 0:
        assert list(faults(year_told(planned.year))) == []
    without = {idea.slug for idea in planned.without}
    coming = {day: talk.idea.slug for day, talk in after.items() if day >= happened.today}
    for slug in happened.not_yet - without:
        assert slug in {coming.get(happened.today + more) for more in range(HEARD_WITHIN)}
    for day in happened.missed & set(before):
        slug = before[day].idea.slug
        if slug not in happened.all_have | happened.not_yet | without:
            last = max(day, happened.today) + MADE_UP_WITHIN
            assert slug in {talk.idea.slug for at, talk in after.items() if day < at < last}


def test_when_nothing_happened_nothing_moves():
    planned = re_plan(YEAR, Happened(60))
    assert planned.year == YEAR
    assert planned.moves == planned.given_up == planned.without == ()


def test_each_move_is_one_sentence_with_its_day_and_both_ideas():
    planned = re_plan(YEAR, Happened(63, frozenset({61, 62}), frozenset({"see-pairs"})))
    assert planned.moves
    for move in planned.moves:
        for language, word in ((Language.EN, "Day"), (Language.ES, "Día")):
            said = move_says(move, language)
            assert said.startswith(f"{word} {move.after.day.number}: ")
            assert said.count(". ") == 0


def test_an_idea_that_all_have_gives_way_first():
    ideas = {talk.idea.slug for talk in YEAR.talks[60:75]}
    for slug in sorted(ideas):
        happened = Happened(61, not_yet=frozenset({"twins"}), all_have=frozenset({slug}))
        assert all(talk.idea.slug == slug for talk in re_plan(YEAR, happened).given_up)


def test_an_idea_without_a_talk_left_is_named(monkeypatch):
    monkeypatch.setattr(import_module("waysaid.strings.year.re_plan"), "stocked", lambda *_: None)
    behind = max(talk.day.number for talk in YEAR.talks if talk.idea.slug == "twins") + 1
    planned = re_plan(YEAR, Happened(behind, not_yet=frozenset({"twins"})))
    assert [idea.slug for idea in planned.without] == ["twins"]
    assert planned.moves == ()
