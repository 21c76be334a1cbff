"""Compose a plan's string from a wish, around what is locked; say what a change costs."""

from dataclasses import dataclass, replace
from functools import lru_cache

from django.utils.translation import gettext as _
from django.utils.translation import ngettext

from waysaid.number import Problem, Unreadable, parse, text
from waysaid.site.models import Plan
from waysaid.site.planning import Row, problems_of, row_of
from waysaid.site.talk_rows import printed
from waysaid.site.used_lately import used_lately
from waysaid.site.warming import Warmer, ready
from waysaid.site.wishing import fields_of, kept_wish
from waysaid.strings import (
    LONGEST,
    MOST_NODES_OF_A_TAP,
    Composed,
    Wish,
    WishError,
    alternatives,
    compose,
    cost,
    row_name,
    why_now,
)

MOST_IDEAS = 3
"""Strings of another idea that are offered: few enough to choose at a glance (our choice)."""
NODES_OF_AN_IDEA = MOST_NODES_OF_A_TAP // (MOST_IDEAS + 1)
"""The nodes searched for each, so that all of them together are there within a tap (our choice)."""


@dataclass(frozen=True, slots=True)
class IdeaShown:
    """A string of another idea: its number, and each problem with its reason."""

    number: int
    rows: tuple[tuple[str, str], ...]


def take_wish(plan: Plan, wish: Wish, fresh: bool) -> None:
    """Put the best string for a wish in a plan; what is locked stays at its place.

    A `fresh` string has no problem that the class was shown lately, but for what is locked or must
    be in it.

    Where that is what stands there already, the rest is composed of other problems. Raises
    `WishError`; the plan is as it was then.
    """
    locked = frozenset(at for at, row in enumerate(plan.problems) if row.get("locked"))
    held = around(plan, wish, fresh)
    _check_kept(held)
    ready(held)
    found = compose(held, MOST_NODES_OF_A_TAP)
    now = problems_of(plan.problems)
    if list(found.problems) == now and len(locked) < len(now):
        rest = {problem for at, problem in enumerate(now) if at not in locked}
        barred = rest - set(held.musts)
        found = _other(replace(held, lately=held.lately | barred))
    _put(plan, wish, fresh, found)


def _other(wish: Wish) -> Composed:
    try:
        return compose(wish, MOST_NODES_OF_A_TAP)
    except WishError:
        said = _("No other problems fit around what is locked: what stands there is the best.")
        raise WishError(said) from None


def _check_kept(wish: Wish) -> None:
    """Raise `WishError` where one problem is to stand at two places: no string holds it twice."""
    kept = [problem for _at, problem in wish.kept]
    twice = next((one for one in kept if kept.count(one) > 1), None)
    if twice is not None:
        said = _("%s is locked at two places, and a string has it once: unlock one of them.")
        raise WishError(said % printed(text(twice)))


def around(plan: Plan, wish: Wish, fresh: bool) -> Wish:
    """Return a wish with what is locked in a plan kept where it is.

    Where it is to be fresh, what the class was shown lately is left out.
    """
    kept = []
    for at, row in enumerate(plan.problems):
        if row.get("locked"):
            kept.append((at, parse(str(row["text"]))))
    held = {problem for _at, problem in kept}
    musts = tuple(must for must in wish.musts if must not in held)
    lately = used_lately(plan.school_class) - held - set(musts) if fresh else frozenset()
    return replace(wish, kept=tuple(kept), musts=musts, lately=lately)


def _put(plan: Plan, wish: Wish, fresh: bool, found: Composed) -> None:
    rows: list[Row] = []
    for at, (problem, why) in enumerate(zip(found.problems, found.why, strict=True)):
        before = plan.problems[at] if at < len(plan.problems) else {}
        if before.get("locked"):
            rows.append({**before, "why": before["why"] if before.get("own") else why})
        else:
            rows.append(row_of(problem, why))
    plan.problems = rows
    plan.wish = {**fields_of(wish, fresh), "about": found.topic.value}
    plan.starter = ""


def is_fresh(plan: Plan) -> bool:
    """Tell whether a plan was wished without problems that the class was shown lately."""
    return bool(plan.wish.get("fresh"))


def keep_added(plan: Plan, added: list[Row]) -> None:
    """Lock problems that were added to a composed plan, and wish for a string as long as it is."""
    for row in added:
        row["locked"] = True
    if len(plan.problems) <= LONGEST:
        longer = max(len(plan.problems), int(plan.wish["length"]))
        plan.wish = {**plan.wish, "length": str(longer)}


def ideas(plan: Plan) -> tuple[IdeaShown, ...]:
    """Return strings of other ideas for the wish of a plan; none for a plan without a wish."""
    now = problems_of(plan.problems)
    return tuple(
        IdeaShown(number, tuple(zip(map(printed, map(text, one.problems)), one.why, strict=True)))
        for number, one in enumerate(_ideas_of(plan))
        if list(one.problems) != now
    )[:MOST_IDEAS]


def take_idea(plan: Plan, number: int) -> None:
    """Put a string of another idea in a plan; there is nothing to do where it is not there."""
    wish, found = kept_wish(plan), _ideas_of(plan)
    if wish is not None and number < len(found):
        topic = wish.topic if plan.wish["topic"] else None
        _put(plan, replace(wish, topic=topic), is_fresh(plan), found[number])


def _ideas_of(plan: Plan) -> tuple[Composed, ...]:
    wish = kept_wish(plan)
    if wish is None:
        return ()
    try:
        return _alternatives(around(plan, wish, is_fresh(plan)))
    except WishError:
        return ()


@lru_cache(maxsize=64)
def _alternatives(wish: Wish) -> tuple[Composed, ...]:
    _check_kept(wish)
    ready(wish)
    return alternatives(wish, MOST_IDEAS + 1, NODES_OF_AN_IDEA)


WARMER = Warmer(_alternatives)
"""Has ready what composing for a wish takes, its other ideas with it."""


def say_why_anew(plan: Plan) -> None:
    """Have the reasons of a composed plan's problems follow a change; her own words stay."""
    wish, problems = kept_wish(plan), problems_of(plan.problems)
    if wish is None or not problems:
        return
    ready(wish)
    try:
        why = why_now(wish, tuple(problems))
    except WishError:
        why = ("",) * len(problems)
    for row, said in zip(plan.problems, why, strict=True):
        if not row.get("own"):
            row["why"] = said


def cost_said(plan: Plan, before: list[str]) -> list[str]:
    """Return what a change costs, from the problems before to those of the plan, row by row."""
    wish, now = kept_wish(plan), problems_of(plan.problems)
    had = _read(before)
    if wish is None or not had or not now or had == now:
        return []
    ready(wish)
    try:
        change = cost(wish, tuple(had), tuple(now))
    except WishError as error:
        return [error.named]
    said = [_worse(row_name(row, wish.language), tenths) for row, tenths in change.rows]
    if not said:
        return [_("It costs nothing: the string is as good as before.")]
    whole = [_worse(_("all in all"), change.wanting)] if len(said) > 1 else []
    return said + whole


def _worse(what: str, tenths: int) -> str:
    many = abs(tenths)
    if tenths == 0:
        said = _("%(what)s: as good as before")
    elif tenths > 0:
        said = ngettext("%(what)s: %(many)s tenth worse", "%(what)s: %(many)s tenths worse", many)
    else:
        said = ngettext("%(what)s: %(many)s tenth better", "%(what)s: %(many)s tenths better", many)
    return said % {"what": what, "many": many}


def _read(texts: list[str]) -> list[Problem]:
    try:
        return [parse(each) for each in texts]
    except Unreadable:
        return []
