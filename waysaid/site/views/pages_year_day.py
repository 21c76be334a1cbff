"""A day of the year, and the year planned again from what happened."""

from datetime import date
from functools import partial
from typing import Any

from django.http import HttpRequest, HttpResponse
from django.shortcuts import redirect, render
from django.utils import timezone
from django.utils.translation import gettext as _
from django.views.decorators.http import require_http_methods

from waysaid.number import Language
from waysaid.site.models import SchoolClass, SchoolYear, YearDay
from waysaid.site.refusal import not_here
from waysaid.site.rights import Act
from waysaid.site.views.guards import asks
from waysaid.site.views.pages_year import class_with_year, known_for, told
from waysaid.site.year_days import (
    became_of,
    frame_of,
    plan_of_day,
    proposal_kept,
    rows_of_year,
    take_proposal,
)
from waysaid.site.year_laid import Became, Proposal, planned_again
from waysaid.site.year_view import day_shown, heard_lately, problems_shown, swappable
from waysaid.site.year_work import WORKS


@require_http_methods(["GET", "HEAD", "POST"])
@asks(Act.PLAN)
def day_page(request: HttpRequest, day: str) -> HttpResponse:
    """Show a day with its string; lock it, skip it, or make its string a plan."""
    school_class, year = class_with_year(request)
    found = year.days.filter(date=_read(day)).first()
    if found is None:
        raise not_here()
    if request.method != "POST":
        return _day(request, school_class, found)
    what = request.POST.get("do", "")
    if what == "plan":
        return redirect("plan", plan_id=plan_of_day(found).pk)
    error = _change(found, what)
    if error:
        return _day(request, school_class, found, error)
    return redirect("year-day", day=day)


@require_http_methods(["GET", "HEAD", "POST"])
@asks(Act.PLAN)
def again_page(request: HttpRequest) -> HttpResponse:
    """Plan the year again from what happened: ask, show what would move and why, then move it."""
    school_class, year = class_with_year(request)
    what = request.POST.get("do", "")
    error = ""
    if what == "work":
        _begin(request, school_class, year)
        return redirect("year-again")
    if what == "leave":
        year.proposal = None
        year.save(update_fields=["proposal"])
        return redirect("year")
    if what == "take" and year.proposal is not None:
        if take_proposal(year):
            return redirect("year")
        year.proposal = None
        year.save(update_fields=["proposal"])
        error = _("The days are others by now, and nothing was moved; plan again.")
    return _again(request, school_class, year, error)


def _read(day: str) -> date:
    try:
        return date.fromisoformat(day)
    except ValueError:
        raise not_here() from None


def _change(day: YearDay, what: str) -> str:
    """Do what a button says; return one sentence where that cannot be."""
    past = day.date < timezone.localdate()
    match what:
        case "lock" | "unlock" if not past:
            day.locked = what == "lock"
        case "skip":
            day.skipped, day.held, day.locked = True, False, False
        case "talk":
            if day.settled and _elsewhere(day):
                return _("Its string is on another day now; plan the year again instead.")
            day.skipped, day.settled, day.held = False, False, past
    day.save(update_fields=["locked", "skipped", "held", "settled"])
    return ""


def _elsewhere(day: YearDay) -> bool:
    others = day.year.days.exclude(pk=day.pk)
    return any(other.problems == day.problems for other in others)


def _day(
    request: HttpRequest, school_class: SchoolClass, day: YearDay, error: str = ""
) -> HttpResponse:
    known = known_for(school_class, day.year)
    dates = [one.date for one in known.days]
    place = dates.index(day.date)
    movable = swappable(known, day)
    context: dict[str, Any] = {
        "here": "year",
        "school_class": school_class,
        "day": day,
        "shown": day_shown(known, day),
        "problems": problems_shown(day, known.language),
        "before": dates[place - 1] if place else None,
        "after": dates[place + 1] if place + 1 < len(dates) else None,
        "others": movable,
        "earlier": max((one.date for one in movable if one.date < day.date), default=None),
        "later": min((one.date for one in movable if one.date > day.date), default=None),
        "error": error,
    }
    return render(request, "waysaid/year_day.html", context, status=400 if error else 200)


def _begin(request: HttpRequest, school_class: SchoolClass, year: SchoolYear) -> None:
    known = known_for(school_class, year)
    said = {one.slug: request.POST.get(f"idea-{one.slug}", "") for one in heard_lately(known)}
    ideas = (
        frozenset(slug for slug, each in said.items() if each == "not-yet"),
        frozenset(slug for slug, each in said.items() if each == "all-have"),
    )
    became = became_of(known.days, known.talks, known.today, ideas)
    work = partial(planned_again, frame_of(year), rows_of_year(known.days), became)
    WORKS.begin(school_class.pk, work, partial(_keep, year.pk, became))


def _keep(year_id: int, became: Became, proposal: Proposal) -> str:
    kept = proposal_kept(proposal, became)
    SchoolYear.objects.filter(pk=year_id).update(proposal=kept)
    return ""


def _again(
    request: HttpRequest, school_class: SchoolClass, year: SchoolYear, error: str
) -> HttpResponse:
    known = known_for(school_class, year)
    became = became_of(known.days, known.talks, known.today)
    waiting = [day.date for day in known.days if day.date in became.missed and not day.settled]
    error = error or told(WORKS.said(school_class.pk))
    kept = year.proposal
    language = Language(school_class.desk_language).value
    context: dict[str, Any] = {
        "here": "year",
        "school_class": school_class,
        "busy": WORKS.busy(school_class.pk),
        "missed": waiting,
        "heard": heard_lately(known),
        "proposal": kept,
        "moves": [each["says"][language] for each in kept["moves"]] if kept else [],
        "without": [known.name(slug) for slug in kept["without"]] if kept else [],
        "error": error,
    }
    return render(request, "waysaid/year_again.html", context, status=400 if error else 200)
