"""Files for elsewhere: a plan's slides."""

from django.http import HttpRequest, HttpResponse
from django.utils.text import slugify
from django.views.decorators.http import require_safe

from waysaid.site.plan_files import plan_slides
from waysaid.site.rights import Act
from waysaid.site.views.guards import asks
from waysaid.site.views.pages_plan import own_plan

SLIDES = "application/vnd.openxmlformats-officedocument.presentationml.presentation"


@require_safe
@asks(Act.PLAN)
def slides(request: HttpRequest, plan_id: int) -> HttpResponse:
    """Return a plan's slides."""
    plan = own_plan(request, plan_id)
    return download(plan_slides(plan), SLIDES, f"{slugify(plan.title) or 'string'}.pptx")


def download(content: bytes, kind: str, name: str) -> HttpResponse:
    """Return a file to be kept under a name, which holds no quotes."""
    response = HttpResponse(content, content_type=kind)
    response.headers["Content-Disposition"] = f'attachment; filename="{name}"'
    return response
