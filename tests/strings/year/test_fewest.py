"""Planning again: on small plans none that keeps the rules changes fewer days: all are tried."""

from itertools import pairwise, permutations
from random import Random

import pytest

from tests.counts import count
from waysaid.strings.year.fewest import Item, Task, Wanted, fewest_changes


def small_task(dice):
    """Return a plan of a few days with rules that it may break."""
    numbers, ideas = iter(range(20)), "abcd"[: dice.randint(2, 4)]
    days = range(3, 3 + dice.randint(2, 5))
    light = frozenset(day for day in days if dice.random() < 0.25)
    plan = {day: Item(next(numbers), dice.choice(ideas), day in light) for day in days}
    spare = [
        Item(next(numbers), dice.choice(ideas), dice.random() < 0.25)
        for _ in range(dice.randint(0, 3))
    ]
    met = {idea: (1, dice.choice((1, 2))) for idea in ideas if dice.random() < 0.3}
    needs = {
        idea: tuple(other for other in ideas if other < idea and dice.random() < 0.4)
        for idea in ideas
    }
    wanted = []
    for idea in ideas:
        if dice.random() < 0.35:
            since = days[0] + dice.randint(0, 2)
            wanted.append(Wanted(idea, since, since + dice.randint(0, 3)))
    return Task(
        plan,
        light,
        frozenset(day for day in days if dice.random() < 0.15),
        tuple(spare),
        met,
        needs,
        tuple(wanted),
        frozenset(idea for idea in ideas if dice.random() < 0.4),
        {idea: dice.randint(0, 1) for idea in ideas},
    )


def keeps_the_rules(task, plan):
    """Tell whether a plan keeps every rule, read off their words."""
    met = {idea: days[0] for idea, days in task.met.items()}
    came = [(days[1], idea) for idea, days in task.met.items()]
    came = sorted(came + [(day, item.idea) for day, item in plan.items()])
    first = dict(met)
    for day, idea in came:
        first.setdefault(idea, day)
    known = {item.idea for item in (*task.plan.values(), *task.spare)} | set(met)
    for idea, day in first.items():
        if idea in met:
            continue
        if any(need in known and first.get(need, 99) >= day for need in task.needs[idea]):
            return False
    for idea in first:
        if any(after - day < 2 for day, after in pairwise(day for day, one in came if one == idea)):
            return False
    return (
        all(item.light == (day in task.light) for day, item in plan.items())
        and all(plan[day] == task.plan[day] for day in task.locked)
        and all(
            any(plan[day].idea == one.idea for day in plan if one.since <= day <= one.until)
            for one in task.wanted
        )
        and task.keep <= set(first)
    )


def fewest_by_trying(task):
    """Return how many days the best of all plans changes; None where none keeps the rules."""
    items, days = (*task.plan.values(), *task.spare), sorted(task.plan)
    plans = (dict(zip(days, chosen, strict=True)) for chosen in permutations(items, len(days)))
    changes = (
        sum(plan[day] != task.plan[day] for day in days)
        for plan in plans
        if all(item.light == (day in task.light) for day, item in plan.items())
        if keeps_the_rules(task, plan)
    )
    return min(changes, default=None)


@pytest.mark.parametrize("start", range(0, count(test=300, sweep=6000), 30))
def test_no_plan_that_keeps_the_rules_changes_fewer_days(start):
    mended = 0
    for seed in range(start, start + 30):
        task = small_task(Random(seed))
        found, wanted = fewest_changes(task), fewest_by_trying(task)
        assert (found is None) == (wanted is None), seed
        if found is not None:
            assert keeps_the_rules(task, found), seed
            assert sum(found[day] != item for day, item in task.plan.items()) == wanted, seed
            mended += bool(wanted)
    assert mended
