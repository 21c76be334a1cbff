"""The year of a class: laid out from a calendar, shown by months, taken along."""

from datetime import date
from functools import partial
from typing import Any

from django.http import HttpRequest, HttpResponse, JsonResponse
from django.shortcuts import redirect, render
from django.urls import reverse
from django.utils import timezone
from django.utils.text import slugify
from django.utils.translation import gettext as _
from django.utils.translation import gettext_lazy
from django.views.decorators.http import require_http_methods, require_POST, require_safe

from waysaid.number import Language
from waysaid.paper import CalendarError, read_calendar, year_calendar
from waysaid.site.days_off import DaysOffError, days_off, typed_days
from waysaid.site.models import SchoolClass, SchoolYear, YearDay
from waysaid.site.refusal import not_here
from waysaid.site.rights import Act
from waysaid.site.views.guards import asks, current_class
from waysaid.site.year_days import FixedDayError, keep_laid, swap, talks_by_day, whole_year
from waysaid.site.year_laid import Frame, Row, TooManyDays, laid
from waysaid.site.year_view import Known, comes_too_early, known_of, months_of, next_day, weekdays
from waysaid.site.year_work import WORKS
from waysaid.strings import GRADES, Curriculum, school_days

LARGEST_CALENDAR = 1024 * 1024
"""Bytes of an iCalendar file: a school's is some ten thousand."""
LONGEST_OFF = 8000
CURRICULA = {
    Curriculum.CCSS: gettext_lazy("Common Core (US)"),
    Curriculum.ENGLAND: gettext_lazy("England (Grade 1 is its Year 2)"),
}
TOO_MANY = "too many"
SAID = "year-said"
"""The key in the session for what is said once, after something was done."""

Days = tuple[date, date, frozenset[date]]


class UnfitCalendarError(ValueError):
    """Raised for days that no year can be laid out on; its text is for a person."""


@require_http_methods(["GET", "HEAD", "POST"])
@asks(Act.PLAN)
def year_page(request: HttpRequest) -> HttpResponse:
    """Show the year of the class by months; lay one out."""
    school_class = current_class(request)
    if school_class is None:
        return redirect("welcome")
    if request.method != "POST":
        return _page(request, school_class)
    language = Language(school_class.desk_language)
    try:
        frame, days = _asked(request), _days(request, language)
    except UnfitCalendarError as error:
        return _page(request, school_class, str(error))
    keep = partial(_keep, school_class.pk, frame, days)
    WORKS.begin(school_class.pk, partial(laid, frame, *days), keep)
    return redirect("year")


@require_safe
@asks(Act.PLAN)
def busy(request: HttpRequest) -> HttpResponse:
    """Tell whether a year is being worked on."""
    school_class = current_class(request)
    return JsonResponse({"busy": school_class is not None and WORKS.busy(school_class.pk)})


@require_POST
@asks(Act.PLAN)
def swap_days(request: HttpRequest) -> HttpResponse:
    """Let two days change places; say what now comes before what it needs."""
    school_class, year = class_with_year(request)
    one, other = (_date(request, name) for name in ("one", "other"))
    if one is None or other is None or one == other:
        return _page(request, school_class, _("Choose two school days to change places."))
    try:
        days = swap(year, one, other, timezone.localdate())
    except FixedDayError as error:
        return _page(request, school_class, fixed(error))
    except YearDay.DoesNotExist:
        raise not_here() from None
    known = known_for(school_class, year)
    early = [(known.name(day.idea), name) for day in days for name in comes_too_early(known, day)]
    request.session[SAID] = {"one": one.isoformat(), "other": other.isoformat(), "early": early}
    return redirect(f"{reverse('year')}#day-{other.isoformat()}")


@require_safe
@asks(Act.PLAN)
def year_ics(request: HttpRequest) -> HttpResponse:
    """Return the year as an iCalendar file."""
    school_class, year = class_with_year(request)
    made = year_calendar(whole_year(year), Language(school_class.desk_language))
    response = HttpResponse(made, content_type="text/calendar; charset=utf-8")
    name = f"{slugify(school_class.name) or 'class'}-{year.first:%Y}.ics"
    response.headers["Content-Disposition"] = f'attachment; filename="{name}"'
    return response


@require_POST
@asks(Act.KEEP)
def forget_year(request: HttpRequest) -> HttpResponse:
    """Take the year away; plans and talks stay."""
    _school_class, year = class_with_year(request)
    year.delete()
    return redirect("year")


def class_with_year(request: HttpRequest) -> tuple[SchoolClass, SchoolYear]:
    """Return the class of the moment and its year. Raises a 404 refusal where there is none."""
    school_class = current_class(request)
    year = SchoolYear.objects.filter(school_class=school_class).first() if school_class else None
    if school_class is None or year is None:
        raise not_here()
    return school_class, year


def known_for(school_class: SchoolClass, year: SchoolYear) -> Known:
    """Return the year with what its pages ask for, as of today."""
    language = Language(school_class.desk_language)
    return known_of(year, talks_by_day(school_class), timezone.localdate(), language)


def fixed(error: FixedDayError) -> str:
    """Return what to say of a day that stays as it is."""
    if error.locked:
        return _("%(day)s is locked; unlock it first.") % {"day": error.day.isoformat()}
    return _("%(day)s is past; it stays as it was.") % {"day": error.day.isoformat()}


def told(said: str) -> str:
    """Return what to say of work that came to nothing."""
    if said == TOO_MANY:
        return _("There are not enough talks for so many school days; fewer days would fit.")
    return _("This did not work out, and nothing was changed; try it once more.") if said else ""


def _asked(request: HttpRequest) -> Frame:
    grade = next((each for each in GRADES if str(each) == request.POST.get("grade")), None)
    curricula = {each.value for each in Curriculum}
    curriculum = request.POST.get("curriculum", Curriculum.CCSS.value)
    if grade is None or curriculum not in curricula:
        raise UnfitCalendarError(_("Choose a grade, from Kindergarten to Grade 6."))
    return Frame(grade, Curriculum(curriculum))


def _days(request: HttpRequest, language: Language) -> Days:
    """Return the first and the last day and the days off. Raises `UnfitCalendarError`."""
    first, last = _date(request, "first"), _date(request, "last")
    try:
        off = days_off(request.POST.get("off", "")[:LONGEST_OFF])
    except DaysOffError as error:
        raise UnfitCalendarError(_off(error)) from None
    upload = request.FILES.get("calendar")
    if upload is not None:
        try:
            read = read_calendar(bytes(upload.read(LARGEST_CALENDAR)), first, last)
        except CalendarError as error:
            raise UnfitCalendarError(error.sentence(language)) from None
        first, last, off = read.first, read.last, off | read.off
    if first is None or last is None:
        raise UnfitCalendarError(
            _("Say the first and the last day of school, or choose a calendar that has them.")
        )
    if (last - first).days > 365 or not school_days(first, last, off):
        raise UnfitCalendarError(
            _("No year fits these days; a last day behind the first, within a year, would fit.")
        )
    return first, last, off


def _off(error: DaysOffError) -> str:
    return _(
        "Line %(line)s of the days off, “%(shown)s”, is no day; one such as 2026-12-24 would fit, "
        "or two, such as 2026-12-24 to 2027-01-03."
    ) % {"line": error.line, "shown": error.shown[:40]}


def _date(request: HttpRequest, name: str) -> date | None:
    try:
        return date.fromisoformat(request.POST.get(name, "").strip())
    except ValueError:
        return None


def _keep(class_id: int, frame: Frame, days: Days, made: tuple[Row, ...] | TooManyDays) -> str:
    """Keep what was laid out; where the class went meanwhile there is nothing to keep."""
    if isinstance(made, TooManyDays):
        return TOO_MANY
    school_class = SchoolClass.objects.filter(pk=class_id).first()
    if school_class is not None:
        keep_laid(school_class, frame, days, made)
    return ""


def _page(request: HttpRequest, school_class: SchoolClass, error: str = "") -> HttpResponse:
    year = SchoolYear.objects.filter(school_class=school_class).first()
    error = error or told(WORKS.said(school_class.pk))
    context: dict[str, Any] = {
        "here": "year",
        "school_class": school_class,
        "busy": WORKS.busy(school_class.pk),
        "year": year,
        "grades": GRADES,
        "grade": request.POST.get("grade") or _grade(school_class, year),
        "curricula": CURRICULA,
        "curriculum": request.POST.get("curriculum") or (year.curriculum if year else ""),
        "typed": request.POST if request.method == "POST" else _before(year),
        "said": _said(request),
        "error": error,
    }
    if year is not None:
        known = known_for(school_class, year)
        context["months"] = months_of(known)
        context["weekdays"] = weekdays(known.language)
        context["many"] = len(known.days)
        context["next"] = next_day(known)
    return render(request, "waysaid/year.html", context, status=400 if error else 200)


def _grade(school_class: SchoolClass, year: SchoolYear | None) -> str:
    grade = year.grade if year is not None else school_class.grade
    return "" if grade is None else str(grade)


def _before(year: SchoolYear | None) -> dict[str, str]:
    """Return what the form holds at first: the days of the year that there is."""
    if year is None:
        return {}
    first, last = year.first.isoformat(), year.last.isoformat()
    return {"first": first, "last": last, "off": typed_days(map(date.fromisoformat, year.off))}


def _said(request: HttpRequest) -> dict[str, Any] | None:
    """Return what was done a moment ago, once: which days were swapped, what comes too early."""
    said = request.session.pop(SAID, None)
    if said is None:
        return None
    return {**said, **{name: date.fromisoformat(said[name]) for name in ("one", "other")}}
