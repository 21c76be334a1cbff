"""A year planned again from what happened: as few talks moved as can be, and why each was.

What is past stays, and so do days that are locked. A talk that was missed is made up within two
weeks, an idea that was not heard yet comes again within one, unless they do so by themselves; no
idea comes before what it needs, or falls out. What gives way are first the ideas that all have,
then those that have most talks. All of it our choice.
"""

from collections import Counter
from collections.abc import Iterable, Mapping
from dataclasses import dataclass, replace
from enum import Enum

from waysaid.number import Language, Problem
from waysaid.strings.year.days import SchoolDay
from waysaid.strings.year.fewest import Item, Task, Wanted, fewest_changes
from waysaid.strings.year.given import in_grade
from waysaid.strings.year.ideas import Idea, idea_name
from waysaid.strings.year.lay_out import Talk, Year
from waysaid.strings.year.stock import MOST, is_light, stocked

MADE_UP_WITHIN = 10
HEARD_WITHIN = 5
"""School days, counted from the first that is still to come."""


@dataclass(frozen=True, slots=True)
class Happened:
    """What became of a plan: days by their number, ideas by their slug.

    The days before `today` are past. On `missed` days, past or to come, there is no talk. `not_yet`
    are ideas not heard yet, `all_have` ideas that every child has.
    """

    today: int
    missed: frozenset[int] = frozenset()
    not_yet: frozenset[str] = frozenset()
    all_have: frozenset[str] = frozenset()
    locked: frozenset[int] = frozenset()


class Cause(Enum):
    """Cause another talk is on a day."""

    MISSED = "missed"
    NOT_YET = "not yet"
    NEEDED = "needed"
    GAVE_WAY = "gave way"


@dataclass(frozen=True, slots=True)
class Move:
    """A day with another talk than before."""

    before: Talk
    after: Talk
    why: Cause


@dataclass(frozen=True, slots=True)
class Planned:
    """A year planned again; `fewest` is whether no plan that keeps the rules moves fewer.

    Where no such plan was in reach nothing was moved, and `fewest` is false. `without` are ideas
    that should come again and cannot: no talk is left, or no day that is free for one.
    """

    year: Year
    moves: tuple[Move, ...]
    given_up: tuple[Talk, ...]
    without: tuple[Idea, ...]
    fewest: bool


def re_plan(year: Year, happened: Happened) -> Planned:
    """Return the year planned again from what happened."""
    talks = [*year.talks, *_fresh(year, happened)]
    task, found = _mended(task_of(year, talks, happened))
    plan = dict(task.plan) if found is None else found
    kept = [one for one in year.talks if one.day.number < happened.today]
    held = [one for one in kept if one.day.number not in happened.missed]
    days = {one.day.number: one.day for one in year.talks}
    new = [replace(talks[item.number], day=days[day]) for day, item in sorted(plan.items())]
    after = _counted([*held, *new])
    moves = _moves(year, after, task, plan, happened)
    on = {one.given.problems for one in after}
    given_up = tuple(one for one in year.talks if one.given.problems not in on)
    ideas = {one.idea.slug: one.idea for one in talks}
    wanted = {one.idea for one in task.wanted}
    without = tuple(ideas[slug] for slug in _due(year, happened) if slug not in wanted)
    return Planned(replace(year, talks=after), moves, given_up, without, found is not None)


def _mended(task: Task) -> tuple[Task, dict[int, Item] | None]:
    """Return the plan mended, and the task without those of the wanted ideas that cannot come."""
    found = fewest_changes(task)
    if found is not None:
        return task, found
    kept, wanted = replace(task, wanted=()), task.wanted
    found = fewest_changes(kept)
    for one in wanted:
        more = replace(kept, wanted=(*kept.wanted, one))
        again = fewest_changes(more)
        if again is not None:
            kept, found = more, again
    return kept, found


def task_of(year: Year, talks: list[Talk], happened: Happened) -> Task:
    """Return what is to be planned: `talks` are those of the year, and fresh ones behind them."""
    items = [Item(at, one.idea.slug, one.light) for at, one in enumerate(talks)]
    planned = {one.day.number: items[at] for at, one in enumerate(year.talks)}
    spare = (*(planned[day] for day in _missed(year, happened)), *items[len(year.talks) :])
    coming = {
        day: item
        for day, item in planned.items()
        if day >= happened.today and day not in happened.missed
    }
    missed = {planned[day].idea for day in _missed(year, happened)}
    return Task(
        plan=coming,
        light=frozenset(one.day.number for one in year.talks if one.day.ends_week),
        locked=happened.locked,
        spare=spare,
        met=_met(year, happened),
        needs={one.idea.slug: one.idea.needs for one in talks},
        wanted=tuple(Wanted(slug, *days) for slug, days in _due(year, happened).items()),
        keep=frozenset({*missed, *(item.idea for item in coming.values())} - happened.all_have),
        dear={one.idea.slug: int(one.idea.slug not in happened.all_have) for one in talks},
    )


def _missed(year: Year, happened: Happened) -> list[int]:
    return [one.day.number for one in year.talks if one.day.number in happened.missed]


def _met(year: Year, happened: Happened) -> dict[str, tuple[int, int]]:
    """Return the first and the last day on which each idea came."""
    met: dict[str, tuple[int, int]] = {}
    for one in year.talks:
        day, slug = one.day.number, one.idea.slug
        if day < happened.today and day not in happened.missed:
            met[slug] = (met.get(slug, (day, day))[0], day)
    return met


def _due(year: Year, happened: Happened) -> dict[str, tuple[int, int]]:
    """Return the ideas that should come again, each with the first and the last day for it."""
    today, met, due = happened.today, _met(year, happened), dict[str, tuple[int, int]]()
    for one in year.talks:
        day, slug = one.day.number, one.idea.slug
        if day in happened.missed and met.get(slug, (0, 0))[1] < day:
            due[slug] = (max(day, today), max(day, today) + MADE_UP_WITHIN - 1)
    due = {slug: days for slug, days in due.items() if slug not in happened.all_have}
    known = {one.idea.slug for one in year.talks}
    soon = (today, today + HEARD_WITHIN - 1)
    return due | dict.fromkeys(sorted(happened.not_yet & known), soon)


def _fresh(year: Year, happened: Happened) -> list[Talk]:
    """Return a talk of either kind for each idea that may have to come again."""
    used = {one.given.problems for one in year.talks}
    asked = [one.idea for one in year.talks if one.day.number in happened.missed]
    asked += [one.idea for one in year.talks if one.idea.slug in happened.not_yet]
    nowhere = year.talks[0].day if year.talks else SchoolDay(0, None, ends_week=False)
    return [
        talk
        for idea in dict.fromkeys(asked)
        for light in (False, True)
        for talk in _unused(year, idea, light, used, nowhere)
    ]


def _unused(
    year: Year, idea: Idea, light: bool, used: set[tuple[Problem, ...]], day: SchoolDay
) -> Iterable[Talk]:
    """Yield the idea's next talk of a kind that the year has not; nothing where it has them all."""
    for number in range(MOST):
        given = stocked(idea, number) if is_light(number) == light else None
        if given is None or given.problems in used:
            continue
        if in_grade(given.problems, idea, year.grade, year.curriculum):
            yield Talk(day, idea, given, 0)
            return


def _counted(talks: list[Talk]) -> tuple[Talk, ...]:
    """Return the talks, those of each idea counted anew."""
    times: Counter[str] = Counter()
    counted = []
    for one in talks:
        times[one.idea.slug] += 1
        counted.append(replace(one, time=times[one.idea.slug]))
    return tuple(counted)


def _moves(
    year: Year,
    after: tuple[Talk, ...],
    task: Task,
    plan: Mapping[int, Item],
    happened: Happened,
) -> tuple[Move, ...]:
    before = {one.day.number: one for one in year.talks}
    wanted = {one.idea for one in task.wanted}
    moves = []
    for one in after:
        day = one.day.number
        if day not in plan or plan[day] == task.plan[day]:
            continue
        slug = one.idea.slug
        if slug in wanted:
            why = Cause.NOT_YET if slug in happened.not_yet else Cause.MISSED
        else:
            why = Cause.NEEDED if one.time == 1 else Cause.GAVE_WAY
        moves.append(Move(before[day], one, why))
    return tuple(moves)


def move_says(move: Move, language: Language) -> str:
    """Return one sentence: what is on the day now, instead of what, and why."""
    day = move.after.day
    shown = str(day.number) if day.date is None else day.date.isoformat()
    names = (idea_name(one.idea, language) for one in (move.after, move.before))
    return _SAID[language][move.why].format(shown, *names)


_SAID = {
    Language.EN: {
        Cause.MISSED: "Day {0}: “{1}” comes here, since it was missed; “{2}” gives way.",
        Cause.NOT_YET: "Day {0}: “{1}” comes here, since it was not heard yet; “{2}” gives way.",
        Cause.NEEDED: "Day {0}: “{1}” begins here, since others need it; “{2}” gives way.",
        Cause.GAVE_WAY: "Day {0}: “{1}” is moved here, since its day was needed, for “{2}”.",
    },
    Language.ES: {
        Cause.MISSED: "Día {0}: aquí viene “{1}”, porque faltó; “{2}” cede su lugar.",
        Cause.NOT_YET: "Día {0}: aquí viene “{1}”, porque aún no se oyó; “{2}” cede su lugar.",
        Cause.NEEDED: "Día {0}: aquí empieza “{1}”, porque otras ideas la piden; “{2}” cede su "
        "lugar.",
        Cause.GAVE_WAY: "Día {0}: “{1}” pasa aquí, porque su día hacía falta, en lugar de “{2}”.",
    },
}
