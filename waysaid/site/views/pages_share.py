"""Colleagues: whom a class is shared with, what is shared with oneself, an invitation taken."""

from django.conf import settings
from django.http import HttpRequest, HttpResponse
from django.shortcuts import get_object_or_404, redirect, render
from django.urls import reverse
from django.utils import timezone
from django.utils.translation import gettext as _
from django.views.decorators.http import require_http_methods, require_safe

from waysaid.site.access import BOARD_AFTER_CLOSING
from waysaid.site.counts import LEAST, SETTLED
from waysaid.site.models import SchoolClass
from waysaid.site.people_models import Part
from waysaid.site.refusal import RefusalError, not_here
from waysaid.site.rights import Act
from waysaid.site.sharing import (
    LIFE,
    SEES,
    NotSharedError,
    accept,
    can_share,
    invitation_for,
    invite,
    shared_with,
    take_back,
)
from waysaid.site.summary import summary_of
from waysaid.site.views.guards import asks, current_class, her_classes, own_class, teacher_of

MOST_BOARDS = 20


@require_http_methods(["GET", "HEAD", "POST"])
@asks(Act.SHARE)
def share_page(request: HttpRequest) -> HttpResponse:
    """Show who has a part in the class; invite a colleague, or take a part back."""
    school_class = current_class(request)
    if school_class is None:
        return redirect("welcome")
    if request.method != "POST":
        return _share(request, school_class)
    if not can_share():
        raise not_here()
    what, _sep, which = request.POST.get("do", "invite").partition(":")
    if what == "invite":
        return _invite(request, school_class)
    row = int(which) if which.isascii() and which.isdigit() else 0
    if what == "member":
        take_back(get_object_or_404(school_class.members, pk=row))
    elif what == "invitation":
        get_object_or_404(school_class.invitations, pk=row).delete()
    return redirect("class-share")


def _invite(request: HttpRequest, school_class: SchoolClass) -> HttpResponse:
    try:
        account = request.POST.get("account", "")
        token = invite(school_class, account, request.POST.get("part", ""))
    except NotSharedError as error:
        return _share(request, school_class, error=str(error))
    path = reverse("invited", args=[token])
    origin = settings.ORIGINS[0] if settings.ORIGINS else ""
    return _share(request, school_class, address=origin + path, account=account.strip())


def _share(request: HttpRequest, school_class: SchoolClass, **more: str) -> HttpResponse:
    members = school_class.members.select_related("person")
    context = {
        "here": "class",
        "part": "share",
        "school_class": school_class,
        "can_share": can_share(),
        "members": members,
        "invitations": school_class.invitations.filter(expires_at__gt=timezone.now()),
        "parts": [(value, label, SEES[value]) for value, label in Part.choices],
        "days": LIFE.days,
        "typed": request.POST,
        **more,
    }
    status = 400 if more.get("error") else 200
    return render(request, "waysaid/class_share.html", context, status=status)


@require_safe
@asks(None)
def shared_page(request: HttpRequest) -> HttpResponse:
    """Show the classes shared with her, and where each leads."""
    context = {"here": "home", "shared": shared_with(teacher_of(request)), "can_share": can_share()}
    return render(request, "waysaid/shared.html", context)


@require_safe
@asks(Act.BOARDS)
def boards_page(request: HttpRequest, class_id: int) -> HttpResponse:
    """Show the boards of the class's talks that are open."""
    school_class = own_class(request, class_id)
    since = timezone.now() - BOARD_AFTER_CLOSING
    talks = school_class.talks.exclude(closed_at__lt=since)[:MOST_BOARDS]
    context = {"here": "home", "school_class": school_class, "talks": talks}
    return render(request, "waysaid/shared_boards.html", context)


@require_safe
@asks(Act.SUMMARY)
def summary_page(request: HttpRequest) -> HttpResponse:
    """Show counts without names of the classes she coaches, or may see everything of."""
    classes = list(her_classes(request).order_by("name", "pk"))
    if not classes:
        raise not_here()
    context = {
        "here": "home",
        "grades": summary_of(classes, timezone.localdate()),
        "least": LEAST,
        "weeks": SETTLED.days // 7,
    }
    return render(request, "waysaid/shared_summary.html", context)


@require_http_methods(["GET", "HEAD", "POST"])
@asks(None)
def invited_page(request: HttpRequest, token: str) -> HttpResponse:
    """Show what an invitation lets one see; take it, or leave it."""
    person = teacher_of(request)
    invitation = invitation_for(person, token) if can_share() else None
    if invitation is None:
        sentence = _("This invitation is not for your account, or is over; ask for a new one.")
        raise RefusalError(404, sentence)
    if request.method == "POST":
        if request.POST.get("do") == "accept":
            accept(person, invitation)
        else:
            invitation.delete()
        return redirect("shared")
    context = {"here": "home", "invitation": invitation, "sees": SEES[invitation.part]}
    response = render(request, "waysaid/invited.html", context)
    response.headers["Referrer-Policy"] = "no-referrer"
    return response
