"""Look back: the past talks, one as it stood step by step, its chart, and going on with it."""

from django.http import HttpRequest, HttpResponse, JsonResponse
from django.shortcuts import get_object_or_404, redirect, render
from django.utils import translation
from django.utils.text import slugify
from django.views.decorators.http import require_http_methods, require_POST, require_safe

from waysaid.paper import Names, Size, chart_of, chart_pdf
from waysaid.site.around import on_list
from waysaid.site.broadcast import tell
from waysaid.site.erasing import forget_talks
from waysaid.site.look_back import WIDE, moment_after, state_after, steps_shown, with_scenes
from waysaid.site.models import SchoolClass, Talk, new_token
from waysaid.site.paging import page_asked, page_of
from waysaid.site.record import Sent, append, at_hand
from waysaid.site.rights import Act, may, part_in
from waysaid.site.talk_rows import rows_of
from waysaid.site.templatetags.pages import day
from waysaid.site.views.guards import asks, current_class, her_classes, teacher_of
from waysaid.site.wall import wall_of
from waysaid.site.words import board_words
from waysaid.talk import Phase, State, Wall, board_view, body_from_json

PAGE = 30
CLIENT_LETTERS = 16


@require_safe
@asks(Act.LOOK_BACK)
def talks_page(request: HttpRequest) -> HttpResponse:
    """Show the talks of the class, the newest first."""
    school_class = current_class(request)
    if school_class is None:
        return redirect("welcome")
    page = page_of(school_class.talks.all(), page_asked(request), PAGE)
    context = {
        "here": "back",
        "school_class": school_class,
        "rows": rows_of(page.rows),
        "page": page,
        "may_keep": _may_keep(request, school_class),
    }
    return render(request, "waysaid/talks.html", context)


@require_safe
@asks(Act.LOOK_BACK)
def back_page(request: HttpRequest, talk_id: int) -> HttpResponse:
    """Show a talk as it stood after one of its steps; after the last if none is named."""
    talk = own_talk(request, talk_id)
    kept = at_hand(talk.pk)
    with kept.lock:
        records = tuple(kept.records)
    wall = _wall(talk)
    steps = steps_shown(records, wall.names)
    step = _step(request.GET.get("step", ""), len(records))
    then = moment_after(records, step)
    board = with_scenes(board_view(state_after(records, step), wall, WIDE, then))
    context = {
        "here": "back",
        "talk": talk,
        "state": kept.state,
        "steps": steps,
        "step": step,
        "now": steps[step - 1] if steps else None,
        "last": len(records),
        "board": board,
        "phase": Phase(board["phase"]).value,
        "chart": chart_of(kept.state, Names(wall.names)),
        "may_keep": _may_keep(request, talk.school_class),
    }
    return render(request, "waysaid/back.html", context)


@require_safe
@asks(Act.LOOK_BACK)
def replay(request: HttpRequest, talk_id: int) -> HttpResponse:
    """Show a past talk on the whole screen, step by step."""
    talk = own_talk(request, talk_id)
    last = len(at_hand(talk.pk).records)
    context = {"talk": talk, "step": _step(request.GET.get("step", ""), last), "last": last}
    with translation.override(talk.school_class.board_language):
        words = board_words()
    return render(request, "waysaid/replay.html", {**context, "words": words})


@require_safe
@asks(Act.LOOK_BACK)
def state_then(request: HttpRequest, talk_id: int) -> HttpResponse:
    """Return the board's payload as it was after one of the talk's steps."""
    talk = own_talk(request, talk_id)
    kept = at_hand(talk.pk)
    with kept.lock:
        records = tuple(kept.records)
    step = _step(request.GET.get("step", ""), len(records))
    asked = request.GET.get("wide", "")
    wide = int(asked) if asked.isdigit() and len(asked) < 6 else WIDE
    wall = _wall(talk)
    state, now = state_after(records, step), moment_after(records, step)
    return JsonResponse(board_view(state, wall, wide, now))


@require_safe
@asks(Act.LOOK_BACK)
def chart(request: HttpRequest, talk_id: int) -> HttpResponse:
    """Return the chart of a talk as a PDF, on the paper asked for, with names or without."""
    talk = own_talk(request, talk_id)
    state: State = at_hand(talk.pk).state
    asked = request.GET.get("size", Size.A4.value)
    size = Size(asked) if asked in list(Size) else Size.A4
    children = talk.school_class.children.all()
    names = {each.key: each.name for each in children} if request.GET.get("names") else {}
    subtitle = f"{talk.school_class.name} · {day(talk.made_at, state.board_language)}"
    made = chart_pdf(chart_of(state, Names(names), subtitle), size)
    response = HttpResponse(made, content_type="application/pdf")
    name = f"{slugify(state.title) or 'talk'}-{size.value}.pdf"
    response.headers["Content-Disposition"] = f'inline; filename="{name}"'
    return response


@require_POST
@asks(Act.TEACH)
def resume(request: HttpRequest, talk_id: int) -> HttpResponse:
    """Go on with a talk that was paused or ended; go to its desk."""
    talk = own_talk(request, talk_id)
    state = at_hand(talk.pk).state
    if state.paused or state.closed:
        client = f"page-{new_token()[:CLIENT_LETTERS]}"
        append(talk.pk, client, [Sent(1, body_from_json({"kind": "resumed"}))])
        tell(talk.pk)
    return redirect("desk", talk_id=talk.pk)


@require_http_methods(["GET", "HEAD", "POST"])
@asks(Act.KEEP)
def forget_talk(request: HttpRequest, talk_id: int) -> HttpResponse:
    """Ask, then take a talk away for good."""
    talk = own_talk(request, talk_id)
    if request.method == "POST":
        forget_talks([talk])
        return redirect("talks")
    return render(request, "waysaid/forget_talk.html", {"here": "back", "talk": talk})


def _may_keep(request: HttpRequest, school_class: SchoolClass) -> bool:
    """Tell whether she may export, bring in and delete talks of this class."""
    return may(part_in(teacher_of(request), school_class), Act.KEEP)


def _wall(talk: Talk) -> Wall:
    school_class = talk.school_class
    return wall_of(school_class, on_list(school_class), "/class/picture")


def own_talk(request: HttpRequest, talk_id: int) -> Talk:
    """Return a talk of the teacher's own; another's is as good as not there."""
    talks = Talk.objects.select_related("school_class")
    return get_object_or_404(talks, pk=talk_id, school_class__in=her_classes(request))


def _step(asked: str, last: int) -> int:
    return min(max(int(asked), 1), last) if asked.isdigit() and len(asked) < 9 else last
