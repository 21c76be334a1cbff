"""Take a picture for the class's board, show it, take it away."""

from django.http import HttpRequest, HttpResponse
from django.shortcuts import get_object_or_404, redirect
from django.utils.http import url_has_allowed_host_and_scheme
from django.utils.translation import gettext as _
from django.views.decorators.http import require_POST, require_safe

from waysaid.site.models import Picture, PictureKind
from waysaid.site.pictures import LARGEST_BYTES, BadPictureError, keep_picture
from waysaid.site.refusal import RefusalError
from waysaid.site.rights import Act
from waysaid.site.views.guards import asks, current_class, her_classes


@require_POST
@asks(Act.CLASS)
def upload(request: HttpRequest) -> HttpResponse:
    """Keep a picture: a background at once, or the picture of the signal numbered `signal`."""
    school_class = current_class(request)
    sent = request.FILES.get("picture")
    kind = request.POST.get("kind", "")
    if school_class is None or sent is None or kind not in PictureKind.values:
        raise RefusalError(400, _("Choose a picture first."))
    content = bytes(sent.read(LARGEST_BYTES + 1))
    try:
        picture = keep_picture(school_class, PictureKind(kind), content)
    except BadPictureError as error:
        raise RefusalError(400, str(error)) from None
    place = request.POST.get("signal", "")
    if kind == PictureKind.BACKGROUND:
        school_class.background = picture
    elif place.isdigit() and int(place) < len(school_class.signals):
        school_class.signals[int(place)]["picture"] = picture.pk
    school_class.save()
    return _back(request)


@require_safe
@asks(Act.LOOK_BACK)
def shown(request: HttpRequest, picture_id: int) -> HttpResponse:
    """Return one of the teacher's own pictures."""
    picture = get_object_or_404(Picture, pk=picture_id, school_class__in=her_classes(request))
    response = HttpResponse(bytes(picture.content), content_type=picture.content_type)
    response.headers["Cache-Control"] = "private, max-age=86400"
    return response


@require_POST
@asks(Act.CLASS)
def remove(request: HttpRequest, picture_id: int) -> HttpResponse:
    """Take a picture away; a signal that had it goes back to its icon."""
    picture = get_object_or_404(Picture, pk=picture_id, school_class__in=her_classes(request))
    school_class = picture.school_class
    for signal in school_class.signals:
        if signal.get("picture") == picture.pk:
            signal["picture"] = None
    school_class.save()
    picture.delete()
    return _back(request)


def _back(request: HttpRequest) -> HttpResponse:
    """Return to the page the form named, if it is one of ours."""
    wanted = request.POST.get("next", "")
    fine = url_has_allowed_host_and_scheme(wanted, allowed_hosts=None) and wanted.startswith("/")
    return redirect(wanted if fine else "class")
