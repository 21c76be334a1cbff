"""Measure the class picture and the next talk's suggestion in a district's database.

Ten thousand talks of 167 classes, 26 children and about 16 ways each: five classes are simulated,
the others are copies of them with ids of their own. Each class is asked once, with nothing of it at
hand; "cold" has no problem's ways worked out before. Times are milliseconds of the server, one run.
"""

import os
import sys
import tempfile
import time
from dataclasses import replace
from pathlib import Path
from typing import Any

ROOT = Path(__file__).resolve().parents[1]
sys.path.insert(0, str(ROOT))
os.environ["DJANGO_SETTINGS_MODULE"] = "waysaid.site.settings"
_FOLDER = tempfile.TemporaryDirectory(prefix="waysaid-bench-")
os.environ["WAYSAID_DATA"] = _FOLDER.name

import django  # noqa: E402

django.setup(set_prefix=False)

from django.contrib.auth.models import User  # noqa: E402
from django.core.management import call_command  # noqa: E402
from django.db import connection, transaction  # noqa: E402
from django.test import Client  # noqa: E402

from scripts.bench_size import sized, tell  # noqa: E402
from scripts.bench_ways import spread  # noqa: E402
from waysaid.growth import Lesson, lessons, past, suggested_next  # noqa: E402
from waysaid.site import evidence  # noqa: E402
from waysaid.site.demo import NAMES, fill  # noqa: E402
from waysaid.site.models import (  # noqa: E402
    Child,
    EventRow,
    Gathered,
    SchoolClass,
    ShownRow,
    Talk,
)
from waysaid.site.views.pages_home import make_class  # noqa: E402

CLASSES, TALKS, SIMULATED = sized((167, 60, 5), (4, 3, 2))
STEP = 1_000_000
"""What the ids of each copy are moved by, so that none meets another."""


def longer() -> list[Lesson]:
    """Return strings of six problems each, so that about 16 ways are told in a talk."""
    all_of_them = lessons()
    both = zip(all_of_them, all_of_them[1:] + all_of_them[:1], strict=True)
    return [replace(one, problems=(*one.problems, *more.problems)[:6]) for one, more in both]


def simulate(owner: User) -> None:
    """Make the classes that are simulated, and gather what they showed."""
    for seed in range(SIMULATED):
        school_class = make_class(owner.pk, f"S{seed}", NAMES, ("en", "en"))
        fill(school_class, longer()[:TALKS], seed)
        evidence.past_of_class(school_class)


def copied(model: Any, number: int, **changed: str) -> str:
    """Return the statement that copies a table's simulated rows; `number` counts the copies."""
    by = STEP * number
    columns = [field.column for field in model._meta.concrete_fields]
    moved = {"id": f"id + {by}", **{name: how.format(by=by) for name, how in changed.items()}}
    told = ", ".join(moved.get(name, f'"{name}"') for name in columns)
    into = ", ".join(f'"{name}"' for name in columns)
    table = model._meta.db_table
    return f"INSERT INTO {table} ({into}) SELECT {told} FROM {table} WHERE id < {STEP}"


def copy_all() -> None:
    """Copy the simulated classes until there are enough."""
    with transaction.atomic(), connection.cursor() as cursor:
        for number in range(1, -(-CLASSES // SIMULATED)):
            token = "{column} || '-" + str(number) + "'"
            for statement in (
                copied(SchoolClass, number),
                copied(Child, number, school_class_id="school_class_id + {by}"),
                copied(
                    Talk,
                    number,
                    school_class_id="school_class_id + {by}",
                    plan_id="NULL",
                    board_token=token.format(column="board_token"),
                    one_token=token.format(column="one_token"),
                ),
                copied(EventRow, number, talk_id="talk_id + {by}"),
                copied(Gathered, number, talk_id="talk_id + {by}"),
                copied(
                    ShownRow,
                    number,
                    gathered_id="gathered_id + {by}",
                    child="CAST(CAST(child AS INTEGER) + {by} AS TEXT)",
                ),
            ):
                cursor.execute(statement)
        cursor.execute("ANALYZE")


def timed(work: Any) -> float:
    """Return how long some work took, in milliseconds."""
    start = time.perf_counter()
    work()
    return 1000 * (time.perf_counter() - start)


def bench_classes(owner: User) -> dict[str, Any]:
    """Ask for every class once: the whole page, what was shown alone, the suggestion."""
    client = Client()
    client.force_login(owner)
    client.get("/class/showed")
    pages, reads, warm, cold = [], [], [], []
    for school_class in SchoolClass.objects.all():
        session = client.session
        session["class"] = school_class.pk
        session.save()
        evidence._kept.clear()
        pages.append(timed(lambda: client.get("/class/showed")))
        reads.append(timed(lambda: evidence.read_past(school_class)))  # noqa: B023
        whole = evidence.past_of_class(school_class)
        warm.append(timed(lambda: suggested_next(whole)))  # noqa: B023
        past.shares.cache_clear()
        cold.append(timed(lambda: suggested_next(whole)))  # noqa: B023
    return {
        "page": spread(pages),
        "rows_read": spread(reads),
        "suggestion": spread(warm),
        "suggestion_cold": spread(cold),
    }


def main() -> None:
    """Measure and print."""
    call_command("migrate", interactive=False, verbosity=0)
    owner = User.objects.create(username="district")
    simulate(owner)
    copy_all()
    ways = ShownRow.objects.filter(how__in=("said", "added", "changed")).count()
    told = {
        "classes": SchoolClass.objects.count(),
        "talks": Talk.objects.count(),
        "events": EventRow.objects.count(),
        "evidence": ShownRow.objects.count(),
        "ways_a_talk": round(ways / Talk.objects.count(), 1),
    }
    tell({"district": told, **bench_classes(owner)})


if __name__ == "__main__":
    main()
