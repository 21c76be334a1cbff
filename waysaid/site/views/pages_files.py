"""Files for elsewhere: a plan's slides, a plan or a talk as a talk file."""

from django.http import HttpRequest, HttpResponse
from django.utils.text import slugify
from django.views.decorators.http import require_safe

from waysaid.site.plan_files import plan_slides
from waysaid.site.rights import Act
from waysaid.site.talk_out import plan_file, talk_file
from waysaid.site.views.guards import asks
from waysaid.site.views.pages_back import own_talk
from waysaid.site.views.pages_plan import own_plan

JSON = "application/json"
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


def download(content: bytes, kind: str, name: str) -> HttpResponse:
    """Return a file to be kept under a name, which holds no quotes."""
    response = HttpResponse(content, content_type=kind)
    response.headers["Content-Disposition"] = f'attachment; filename="{name}"'
    return response
