"""Change a plan: its problems in order, some of them locked, and strings to take instead.

A plan's `problems` are rows of {id, text, why, locked}; `text` is what `waysaid.number` reads. A
row with `own` has a reason in her own words.
"""

from collections.abc import Sequence
from typing import Any

from waysaid.number import (
    Language,
    Problem,
    Unreadable,
    answer_of,
    leaves,
    parse,
    sides,
    text,
)
from waysaid.paper import string_line
from waysaid.site.models import Plan, SchoolClass
from waysaid.site.talks import new_id
from waysaid.strings import Starter, starter_text, starters
from waysaid.ways import Family, grades_of, ways

Row = dict[str, Any]
MOST_PROBLEMS = 12
"""Problems in one plan: more than any talk of ours takes (our choice)."""
LONGEST_WHY = 200


class UnreadableLineError(ValueError):
    """Raised for a line that is no problem; `line` counts from 1."""

    def __init__(self, line: int, problem: Unreadable) -> None:
        super().__init__(line)
        self.line = line
        self.problem = problem


def row_of(problem: Problem, why: str = "") -> Row:
    """Return a new row of a plan."""
    return {"id": new_id(), "text": text(problem), "why": why, "locked": False}


def rows_typed(typed: str) -> list[Row]:
    """Return rows for problems typed one a line, the reason behind a bar where there is one.

    Raises `UnreadableLineError`.
    """
    rows = []
    for place, line in enumerate(typed.splitlines(), 1):
        problem, why = string_line(line)
        if problem or why:
            try:
                rows.append(row_of(parse(problem), why[:LONGEST_WHY]))
            except Unreadable as error:
                raise UnreadableLineError(place, error) from None
    return rows


def plan_of_starter(school_class: SchoolClass, starter: Starter) -> Plan:
    """Return a new plan on a starter, in the desk's language; not yet saved."""
    said = starter_text(starter, Language(school_class.desk_language))
    return Plan(
        school_class=school_class,
        title=said.title,
        problems=rows_of_starter(starter, school_class.desk_language),
        questions=list(said.questions),
        starter=starter.slug,
    )


def rows_of_starter(starter: Starter, language: str) -> list[Row]:
    """Return the rows of a starter."""
    why = starter_text(starter, Language(language)).why
    return [row_of(each, reason) for each, reason in zip(starter.problems, why, strict=True)]


def starter_named(slug: str) -> Starter | None:
    """Return the starter with this slug, or None."""
    return next((each for each in starters() if each.slug == slug), None)


def problems_of(rows: Sequence[Row]) -> list[Problem]:
    """Return the rows' problems; those that cannot be read are left out."""
    found = []
    for row in rows:
        try:
            found.append(parse(str(row.get("text", ""))))
        except Unreadable:
            continue
    return found


def largest(problems: Sequence[Problem]) -> int:
    """Return the largest number of these problems and their answers; 0 for none."""
    numbers = [leaf for each in problems for side in sides(each) for leaf in leaves(side)]
    numbers += [answer for each in problems if isinstance(answer := answer_of(each), int)]
    return max((number for number in numbers if isinstance(number, int)), default=0)


def grade_of_plan(plan: Plan) -> int:
    """Return the grade a plan is for: its wish's or starter's, else that of its hardest problem."""
    wished = str(plan.wish.get("grade", ""))
    if wished.isdecimal():
        return int(wished)
    starter = starter_named(plan.starter)
    if starter is not None:
        return starter.grade
    return max((grades_of(each).first for each in problems_of(plan.problems)), default=0)


def focus_of_plan(plan: Plan) -> Family | None:
    """Return what pays off: as wished, its starter's focus, else the way most often easiest."""
    if plan.wish.get("focus") in {each.value for each in Family}:
        return Family(plan.wish["focus"])
    starter = starter_named(plan.starter)
    if starter is not None:
        return starter.focus
    first = [found[0].family for each in problems_of(plan.problems) if (found := ways(each))]
    return max(first, key=first.count, default=None)


def another(plan: Plan) -> Starter | None:
    """Return the starter to take next: of the same grade and focus, else of the same grade."""
    grade, focus = grade_of_plan(plan), focus_of_plan(plan)
    same_grade = [each for each in starters() if each.grade == grade]
    alike = [each for each in same_grade if each.focus == focus]
    choice = alike if [each for each in alike if each.slug != plan.starter] else same_grade
    slugs = [each.slug for each in choice]
    after = slugs.index(plan.starter) + 1 if plan.starter in slugs else 0
    return choice[after % len(choice)] if choice else None


def take_string(plan: Plan, starter: Starter) -> None:
    """Put a starter's problems in the plan; those that are locked stay where they are."""
    language = plan.school_class.desk_language
    locked = [(at, row) for at, row in enumerate(plan.problems) if row.get("locked")]
    kept = {row["text"] for _at, row in locked}
    rows = [row for row in rows_of_starter(starter, language) if row["text"] not in kept]
    for at, row in locked:
        rows.insert(min(at, len(rows)), row)
    said = starter_text(starter, Language(language))
    if not locked:
        plan.title = said.title
    plan.problems = rows[:MOST_PROBLEMS]
    plan.questions = list(said.questions)
    plan.starter, plan.wish = starter.slug, {}


def moved(rows: Sequence[Row], row_id: str, step: int) -> list[Row]:
    """Return the rows with one of them moved up (-1) or down (1)."""
    found = list(rows)
    place = next((at for at, row in enumerate(found) if row["id"] == row_id), None)
    if place is not None and 0 <= place + step < len(found):
        found[place], found[place + step] = found[place + step], found[place]
    return found


def in_order(rows: Sequence[Row], ids: Sequence[str]) -> list[Row]:
    """Return the rows in the order of these ids; rows not named keep to the end."""
    place = {row_id: at for at, row_id in enumerate(ids)}
    return sorted(rows, key=lambda row: place.get(row["id"], len(place)))
