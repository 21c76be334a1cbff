"""What every view asks first: who is it, may they, and what did they send."""

import json
from collections.abc import Callable
from functools import wraps
from typing import Any, Concatenate, ParamSpec

from django.conf import settings
from django.contrib.auth.models import User
from django.contrib.auth.views import redirect_to_login
from django.core.exceptions import RequestDataTooBig
from django.db import DatabaseError
from django.db.models import QuerySet
from django.http import HttpRequest, HttpResponse, UnreadablePostError
from django.shortcuts import get_object_or_404, render
from django.utils import translation
from django.utils.translation import gettext as _

from waysaid.site import access
from waysaid.site.models import SchoolClass
from waysaid.site.refusal import RefusalError, not_here
from waysaid.site.rights import Act, classes_for, may, part_in
from waysaid.site.views.failures import answer, disk_refusal

Rest = ParamSpec("Rest")
View = Callable[Concatenate[HttpRequest, Rest], HttpResponse]
ACT_META = "waysaid.act"
"""The key in the request's META for what its page does."""
CURRENT = "class"
"""The key in the session for the class the teacher last turned to."""


def plain(view: View[Rest]) -> View[Rest]:
    """Turn a refusal, and a refusing disk, into one plain sentence."""

    @wraps(view)
    def answered(request: HttpRequest, /, *args: Rest.args, **kwargs: Rest.kwargs) -> HttpResponse:
        try:
            return view(request, *args, **kwargs)
        except RefusalError as refusal:
            return answer(request, refusal)
        except DatabaseError as error:
            return answer(request, disk_refusal(error))

    return answered


def asks(act: Act | None) -> Callable[[View[Rest]], View[Rest]]:
    """Let in only a signed-in teacher, and never through the school network's door.

    What the view then finds of classes is what she may do this in; None is for pages about no
    class. The page speaks the language of the desk of the class she turned to last.
    """

    def guarded(view: View[Rest]) -> View[Rest]:
        @wraps(view)
        def answered(
            request: HttpRequest, /, *args: Rest.args, **kwargs: Rest.kwargs
        ) -> HttpResponse:
            if access.visitor_of(request).door is not None:
                return answer(request, not_here())
            if not request.user.is_authenticated:
                if settings.SCHOOL_SERVER:
                    return redirect_to_login(request.get_full_path())
                return render(request, "waysaid/closed.html", status=403)
            request.META[ACT_META] = act
            school_class = turned_to(request)
            spoken = school_class.desk_language if school_class else translation.get_language()
            with translation.override(spoken):
                return view(request, *args, **kwargs)

        return plain(answered)

    return guarded


def teachers_own(view: View[Rest]) -> View[Rest]:
    """Let in only whoever may do everything in the class: what a page is that names no act."""
    return asks(Act.KEEP)(view)


def teacher_of(request: HttpRequest) -> User:
    """Return the signed-in teacher."""
    if not isinstance(request.user, User):
        raise not_here()
    return request.user


def her_classes(request: HttpRequest) -> QuerySet[SchoolClass]:
    """Return the classes in which she may do what this page does."""
    return classes_for(teacher_of(request), request.META.get(ACT_META) or Act.KEEP)


def own_class(request: HttpRequest, class_id: int) -> SchoolClass:
    """Return a class in which she may do what this page does; another is as good as not there."""
    return get_object_or_404(her_classes(request), pk=class_id)


def turned_to(request: HttpRequest) -> SchoolClass | None:
    """Return the class the teacher last turned to, else her first, else one shared with her."""
    teacher = teacher_of(request)
    taught = classes_for(teacher, Act.TEACH)
    chosen = taught.filter(pk=request.session.get(CURRENT) or 0).first()
    return chosen or taught.filter(owner=teacher).first() or taught.first()


def current_class(request: HttpRequest) -> SchoolClass | None:
    """Return the class the teacher turned to, or None where she has none.

    Raises a 403 refusal where her part in it does not include what this page does.
    """
    school_class = turned_to(request)
    act = request.META.get(ACT_META)
    if school_class is not None and act is not None:
        part = part_in(teacher_of(request), school_class)
        if not may(part, act):
            raise RefusalError(403, _("Your part in this class does not include this page."))
    return school_class


def looks_back_alone(request: HttpRequest) -> bool:
    """Tell whether she may look back in the class she turned to, and not change its list."""
    school_class = turned_to(request)
    part = part_in(teacher_of(request), school_class) if school_class else None
    return may(part, Act.LOOK_BACK) and not may(part, Act.CLASS)


def turn_to(request: HttpRequest, school_class: SchoolClass) -> None:
    """Remember the class the teacher turned to."""
    request.session[CURRENT] = school_class.pk


def seat_at(request: HttpRequest, talk_id: int) -> access.Seat:
    """Return the asker's place at a talk's desk. Raises a 404 refusal for anybody else."""
    seat = access.desk_seat(access.visitor_of(request), talk_id)
    if seat is None:
        raise not_here()
    return seat


def owner_seat(request: HttpRequest, talk_id: int) -> access.Seat:
    """Return the owner's place. Raises a 404 refusal for anybody else, joined devices too."""
    seat = seat_at(request, talk_id)
    if not seat.owner:
        raise not_here()
    return seat


def json_of(request: HttpRequest) -> dict[str, Any]:
    """Return the JSON object that was sent. Raises a 400 refusal for anything else."""
    try:
        given = json.loads(request.body)
    except RequestDataTooBig:
        raise RefusalError(413, _("This is more than Waysaid takes at once.")) from None
    except (ValueError, RecursionError, UnreadablePostError):
        given = None
    if not isinstance(given, dict):
        raise RefusalError(400, _("This takes one JSON object."))
    return given
