"""Files for elsewhere: a plan's slides, a plan or a talk as a talk file, a class's evidence."""

from django.http import HttpRequest, HttpResponse
from django.shortcuts import redirect
from django.utils import timezone
from django.utils.text import slugify
from django.views.decorators.http import require_safe

from waysaid.number import Language
from waysaid.paper import TableError
from waysaid.site.evidence_out import class_csv, class_parquet
from waysaid.site.plan_files import plan_slides
from waysaid.site.refusal import RefusalError
from waysaid.site.rights import Act
from waysaid.site.talk_out import plan_file, talk_file
from waysaid.site.views.guards import asks, current_class
from waysaid.site.views.pages_back import own_talk
from waysaid.site.views.pages_plan import own_plan

CSV = "text/csv; charset=utf-8"
JSON = "application/json"
PARQUET = "application/vnd.apache.parquet"
SLIDES = "application/vnd.openxmlformats-officedocument.presentationml.presentation"


@require_safe
@asks(Act.PLAN)
def slides(request: HttpRequest, plan_id: int) -> HttpResponse:
    """Return a plan's slides."""
    plan = own_plan(request, plan_id)
    return download(plan_slides(plan), SLIDES, f"{slugify(plan.title) or 'string'}.pptx")


@require_safe
@asks(Act.PLAN)
def plan_json(request: HttpRequest, plan_id: int) -> HttpResponse:
    """Return a plan as a talk file."""
    plan = own_plan(request, plan_id)
    return download(plan_file(plan), JSON, f"{slugify(plan.title) or 'plan'}.json")


@require_safe
@asks(Act.KEEP)
def talk_json(request: HttpRequest, talk_id: int) -> HttpResponse:
    """Return a talk as a talk file, with names only where they are asked for."""
    talk = own_talk(request, talk_id)
    made = talk_file(talk, names=bool(request.GET.get("names")))
    return download(made, JSON, f"{slugify(talk.title) or 'talk'}-{talk.made_at:%Y-%m-%d}.json")


@require_safe
@asks(Act.KEEP)
def evidence(request: HttpRequest, ending: str) -> HttpResponse:
    """Return what the class showed as a table, with names only where they are asked for."""
    school_class = current_class(request)
    if school_class is None:
        return redirect("welcome")
    names = bool(request.GET.get("names"))
    name = f"{slugify(school_class.name) or 'class'}-{timezone.localdate():%Y-%m-%d}.{ending}"
    if ending == "csv":
        return download(class_csv(school_class, names=names), CSV, name)
    try:
        return download(class_parquet(school_class, names=names), PARQUET, name)
    except TableError as error:
        sentence = error.sentence(Language(school_class.desk_language))
        raise RefusalError(409, sentence) from None


def download(content: bytes, kind: str, name: str) -> HttpResponse:
    """Return a file to be kept under a name, which holds no quotes."""
    response = HttpResponse(content, content_type=kind)
    response.headers["Content-Disposition"] = f'attachment; filename="{name}"'
    return response
