"""Fill a data folder before its server starts, in a process of its own.

It reads JSON from standard input: the class's names and settings, plans by title, earlier talks as
events. It prints the ids it made.
"""

import json
import os
import sys
from typing import Any

import django

os.environ.setdefault("DJANGO_SETTINGS_MODULE", "waysaid.site.settings")
django.setup(set_prefix=False)

from django.core.management import call_command  # noqa: E402

from waysaid.site.models import SchoolClass  # noqa: E402
from waysaid.site.opening import local_teacher  # noqa: E402
from waysaid.site.record import Sent, append  # noqa: E402
from waysaid.site.talks import start_talk  # noqa: E402
from waysaid.site.views.pages_home import make_class  # noqa: E402
from waysaid.talk import body_from_json  # noqa: E402


def furnish(given: dict[str, Any]) -> dict[str, Any]:
    """Make what is asked for; return the ids of children by name and of plans by title."""
    call_command("migrate", interactive=False, verbosity=0)
    languages = (given.get("language", "en"), given.get("board_language", "en"))
    school_class = make_class(local_teacher().pk, "2B", tuple(given["names"]), languages)
    for name, value in given.get("settings", {}).items():
        setattr(school_class, name, value)
    school_class.save()
    children = {child.name: child.key for child in school_class.children.all()}
    for problem, ways in given.get("earlier", []):
        hold(school_class, problem, [{**way, "child": children[way["child"]]} for way in ways])
    plans = {
        title: school_class.plans.create(title=title, **plan).pk
        for title, plan in given["plans"].items()
    }
    return {"children": children, "plans": plans}


def hold(school_class: SchoolClass, problem: str, ways: list[dict[str, Any]]) -> None:
    """Hold an earlier talk on one problem, in which these ways were told."""
    talk = start_talk(school_class, problems=[problem])
    shown = talk.events.get(kind="talk-opened").body["problems"][0]["id"]
    sent = [
        Sent(place, body_from_json({"kind": "way-shared", "problem": shown, **way}))
        for place, way in enumerate(ways)
    ]
    append(talk.pk, "before", sent)


if __name__ == "__main__":
    json.dump(furnish(json.load(sys.stdin)), sys.stdout)
