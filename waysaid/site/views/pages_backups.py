"""Backups: those there are, one made now, where copies go, and going back to one."""

from django.contrib.auth import login
from django.http import HttpRequest, HttpResponse
from django.shortcuts import redirect, render
from django.utils import timezone
from django.utils.translation import gettext as _
from django.views.decorators.http import require_http_methods

from waysaid.site.backup_days import DAILY, WEEKLY
from waysaid.site.backups import (
    Backup,
    BadBackupError,
    BadFolderError,
    Choice,
    backups,
    can_copy,
    choice,
    choose,
    index,
    make_backup,
    out_of_reach,
)
from waysaid.site.opening import OWN_MACHINE, local_teacher
from waysaid.site.refusal import not_here
from waysaid.site.rewriting import go_back_to
from waysaid.site.views.guards import asks


@require_http_methods(["GET", "HEAD", "POST"])
@asks(None)
def backups_page(request: HttpRequest) -> HttpResponse:
    """Show the backups; make one now, or take what was chosen about them."""
    if not can_copy():
        raise not_here()
    if request.method != "POST":
        return _page(request)
    try:
        if request.POST.get("do") == "now":
            make_backup(timezone.localdate())
        else:
            folder = request.POST.get("folder", "").strip()
            choose(Choice(request.POST.get("on") == "yes", folder))
    except BadFolderError as error:
        return _page(request, str(error))
    except (OSError, BadBackupError):
        return _page(request, _("The backup could not be written. Is there room on the disk?"))
    return redirect("backups")


@require_http_methods(["GET", "HEAD", "POST"])
@asks(None)
def go_back_page(request: HttpRequest) -> HttpResponse:
    """Ask, then put a backup in the place of the data."""
    given = request.POST if request.method == "POST" else request.GET
    wanted = next((each for each in backups() if each.name == given.get("name")), None)
    if not can_copy() or wanted is None:
        raise not_here()
    if request.method != "POST":
        context = {"here": "settings", "backup": _shown(wanted)}
        return render(request, "waysaid/go_back.html", context)
    try:
        go_back_to(wanted, timezone.localdate())
    except BadBackupError:
        return _page(request, _("This backup does not open, so nothing was changed."))
    request.session.flush()
    login(request, local_teacher(), backend=OWN_MACHINE)
    return redirect("home")


def _shown(backup: Backup) -> dict[str, object]:
    counts = index().get(backup.name, {})
    return {
        "name": backup.name,
        "day": backup.day,
        "before": backup.before,
        "opens": counts.get("opens") == "yes",
        "talks": counts.get("talks", 0),
        "children": counts.get("children", 0),
    }


def _page(request: HttpRequest, error: str = "") -> HttpResponse:
    chosen = choice()
    context = {
        "here": "settings",
        "backups": [_shown(each) for each in backups()],
        "on": chosen.on,
        "folder": request.POST.get("folder", chosen.folder),
        "out_of_reach": out_of_reach(),
        "daily": DAILY,
        "weekly": WEEKLY,
        "error": error,
    }
    return render(request, "waysaid/backups.html", context, status=400 if error else 200)
