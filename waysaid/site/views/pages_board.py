"""What hangs round the class's board: signals, norms, sentence starters, a background."""

from typing import Any

from django.http import HttpRequest, HttpResponse
from django.shortcuts import redirect, render
from django.utils.translation import gettext as _
from django.views.decorators.http import require_http_methods

from waysaid.site.models import PictureKind, SchoolClass
from waysaid.site.pictures import LARGEST_BYTES, BadPictureError, keep_picture
from waysaid.site.rights import Act
from waysaid.site.views.guards import asks, current_class
from waysaid.site.wall import (
    ICONS,
    MOST_SIGNALS,
    standard_norms,
    standard_signals,
    standard_starters,
)

LONGEST_WORD = 40
LONGEST_SENTENCE = 120
MOST_SENTENCES = 8
"""Norms or sentence starters: what a board has room for (our choice)."""


@require_http_methods(["GET", "HEAD", "POST"])
@asks(Act.CLASS)
def board_page(request: HttpRequest) -> HttpResponse:
    """Show what hangs round the board; take changes to it."""
    school_class = current_class(request)
    if school_class is None:
        return redirect("welcome")
    if request.method != "POST":
        return _page(request, school_class)
    try:
        _take(request, school_class)
    except BadPictureError as error:
        return _page(request, school_class, str(error))
    _do(school_class, *request.POST.get("do", "save").split(":")[:2])
    school_class.save()
    return redirect("class-board")


def _take(request: HttpRequest, school_class: SchoolClass) -> None:
    """Take everything the form holds. Raises `BadPictureError` for a picture we cannot take."""
    given = request.POST
    kept = list(school_class.signals)[:MOST_SIGNALS]
    school_class.signals = [_signal(request, school_class, at, old) for at, old in enumerate(kept)]
    if "norms" in given:
        school_class.norms = _sentences(given["norms"])
        school_class.starters = _sentences(given.get("starters", ""))
    sent = request.FILES.get("background")
    if sent is not None:
        before = school_class.background
        school_class.background = keep_picture(
            school_class, PictureKind.BACKGROUND, bytes(sent.read(LARGEST_BYTES + 1))
        )
        school_class.save()
        if before is not None:
            before.delete()


def _signal(
    request: HttpRequest, school_class: SchoolClass, place: int, old: dict[str, Any]
) -> dict[str, Any]:
    word = " ".join(request.POST.get(f"word-{place}", old.get("word", "")).split())
    icon = request.POST.get(f"icon-{place}", old.get("icon") or "")
    picture = old.get("picture")
    sent = request.FILES.get(f"picture-{place}")
    if sent is not None:
        content = bytes(sent.read(LARGEST_BYTES + 1))
        _forget_picture(school_class, picture)
        picture = keep_picture(school_class, PictureKind.SIGNAL, content).pk
    return {
        "word": word[:LONGEST_WORD] or old.get("word", ""),
        "icon": icon if icon in ICONS else None,
        "picture": picture,
    }


def _forget_picture(school_class: SchoolClass, picture: object) -> None:
    if isinstance(picture, int):
        school_class.pictures.filter(pk=picture).delete()


def _sentences(typed: str) -> list[str]:
    lines = [" ".join(line.split())[:LONGEST_SENTENCE] for line in typed.splitlines()]
    return [line for line in lines if line][:MOST_SENTENCES]


def _do(school_class: SchoolClass, what: str, which: str = "") -> None:
    """Do what the pressed button says, after everything typed was taken."""
    signals = school_class.signals
    place = int(which) if which.isdigit() and int(which) < len(signals) else None
    if what == "add" and len(signals) < MOST_SIGNALS:
        signals.append({"word": _("a new signal"), "icon": "question", "picture": None})
    elif what == "usual":
        board = school_class.board_language
        for signal in signals:
            _forget_picture(school_class, signal.get("picture"))
        school_class.signals = standard_signals(board)
        school_class.norms = standard_norms(board)
        school_class.starters = standard_starters(board)
    elif what == "no-background" and school_class.background is not None:
        school_class.background.delete()
        school_class.background = None
    elif place is not None:
        _do_signal(school_class, what, place)


def _do_signal(school_class: SchoolClass, what: str, place: int) -> None:
    signals = school_class.signals
    if what == "remove":
        _forget_picture(school_class, signals.pop(place).get("picture"))
    elif what == "no-picture":
        _forget_picture(school_class, signals[place].get("picture"))
        signals[place]["picture"] = None
    elif what in ("up", "down"):
        other = place + (1 if what == "down" else -1)
        if 0 <= other < len(signals):
            signals[place], signals[other] = signals[other], signals[place]


def icon_words() -> dict[str, str]:
    """Return what each icon shows, in words."""
    return {
        "way": _("a thumb up"),
        "thinking": _("a thought"),
        "agree": _("two rings, one over the other"),
        "same": _("two rings joined"),
        "another": _("a path that parts"),
        "question": _("a speech mark"),
    }


def _page(request: HttpRequest, school_class: SchoolClass, error: str = "") -> HttpResponse:
    given = request.POST
    starters = school_class.starters or standard_starters(school_class.board_language)
    signals = [
        {
            "word": given.get(f"word-{place}", each.get("word", "")),
            "icon": given.get(f"icon-{place}", each.get("icon") or ""),
            "picture": each.get("picture"),
        }
        for place, each in enumerate(school_class.signals[:MOST_SIGNALS])
    ]
    context = {
        "here": "class",
        "part": "board",
        "school_class": school_class,
        "signals": signals,
        "most": len(signals) >= MOST_SIGNALS,
        "icons": icon_words(),
        "norms": given.get("norms", "\n".join(school_class.norms)),
        "starters": given.get("starters", "\n".join(starters)),
        "error": error,
    }
    return render(request, "waysaid/class_board.html", context, status=400 if error else 200)
