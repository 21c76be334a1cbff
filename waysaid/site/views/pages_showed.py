"""What the class showed: ways, voices, what could come next; and one child's ways over time."""

from django.http import HttpRequest, HttpResponse
from django.shortcuts import get_object_or_404, redirect, render
from django.views.decorators.http import require_POST, require_safe

from waysaid.growth import (
    caution,
    class_picture,
    invite_says,
    suggested_next,
    voices,
    ways_of_child,
)
from waysaid.site.composing import take_wish
from waysaid.site.evidence import past_of_class
from waysaid.site.first_problems import grade_of
from waysaid.site.following import wish_for
from waysaid.site.models import Plan
from waysaid.site.paging import page_asked
from waysaid.site.rights import Act, may, part_in
from waysaid.site.showed_view import (
    MOST_TICKS,
    TICK,
    groups_shown,
    next_shown,
    voices_shown,
    way_cards,
)
from waysaid.site.talks import todays_title
from waysaid.site.views.guards import asks, current_class, teacher_of
from waysaid.site.wording import wording_of
from waysaid.strings import WishError

CARDS = 24
"""Ways on one page of a child's."""


@require_safe
@asks(Act.LOOK_BACK)
def showed_page(request: HttpRequest) -> HttpResponse:
    """Show what the class showed so far, and what could come next."""
    return _page(request)


def _page(request: HttpRequest, error: str = "") -> HttpResponse:
    school_class = current_class(request)
    if school_class is None:
        return redirect("welcome")
    past, wording = past_of_class(school_class), wording_of(school_class)
    names = {child.key: child.name for child in school_class.children.filter(active=True)}
    heard = voices(past, list(names))
    suggestion = suggested_next(past)
    shown = voices_shown(heard, past, names)
    context = {
        "here": "class",
        "part": "showed",
        "school_class": school_class,
        "talks": len(past.talks),
        "groups": groups_shown(class_picture(past), past, names, wording),
        "line": TICK * min(len(past.talks), MOST_TICKS),
        "voices": shown,
        "invite": [voice for voice in shown if voice.invite],
        "invite_says": invite_says(wording.language),
        "next": next_shown(suggestion, past, wording) if suggestion else None,
        "caution": caution(wording.language),
        "error": error,
    }
    return render(request, "waysaid/showed.html", context, status=400 if error else 200)


@require_POST
@asks(Act.PLAN)
def compose_next(request: HttpRequest) -> HttpResponse:
    """Compose the string that could come next, as a plan; where nothing stands out, say so."""
    school_class = current_class(request)
    if school_class is None:
        return redirect("welcome")
    suggestion = suggested_next(past_of_class(school_class))
    if suggestion is None:
        return redirect("showed")
    plan = Plan(school_class=school_class, title=todays_title(school_class))
    try:
        wish = wish_for(suggestion, school_class, grade_of(request, school_class))
        take_wish(plan, wish, fresh=True)
    except WishError as error:
        return _page(request, error.named)
    plan.save()
    return redirect("plan", plan_id=plan.pk)


@require_safe
@asks(Act.LOOK_BACK)
def child_page(request: HttpRequest, child_id: int) -> HttpResponse:
    """Show a child's ways over time, the newest page of them last in its line."""
    school_class = current_class(request)
    if school_class is None:
        return redirect("welcome")
    child = get_object_or_404(school_class.children, pk=child_id)
    past, wording = past_of_class(school_class), wording_of(school_class)
    own = ways_of_child(past, child.key)
    page = page_asked(request)
    end = len(own) - (page - 1) * CARDS
    context = {
        "here": "class",
        "part": "showed",
        "school_class": school_class,
        "child": child,
        "many": len(own),
        "cards": way_cards(own[max(0, end - CARDS) : max(0, end)], wording),
        "newer": page - 1 if page > 1 else None,
        "older": page + 1 if end > CARDS else None,
        "voice": voices_shown(voices(past, [child.key]), past, {child.key: child.name})[0],
        "caution": caution(wording.language),
        "may_erase": may(part_in(teacher_of(request), school_class), Act.KEEP),
    }
    return render(request, "waysaid/child.html", context)
