"""The demo's class, all of it invented: names, talks, plan."""

from django.db import transaction

from waysaid.site.models import SchoolClass
from waysaid.site.opening import local_teacher


def make_demo() -> None:
    """Fill an empty database with the invented class; one that has a class is left as it is."""
    with transaction.atomic():
        if SchoolClass.objects.exists():
            return
        local_teacher()
