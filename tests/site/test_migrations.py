"""The tables follow the models, and data of an earlier version comes along."""

import json
import os
import subprocess
import sys
from io import StringIO

from django.core.management import call_command

UPGRADE = """
import json
import django
django.setup(set_prefix=False)
from django.contrib.auth.models import User
from django.core.management import call_command
from django.db import connection
from django.db.migrations.executor import MigrationExecutor
from waysaid.site.models import SchoolClass
from waysaid.site.serving import make_ready

call_command("migrate", "waysaid_site", "0001", interactive=False, verbosity=0)
call_command("migrate", "auth", interactive=False, verbosity=0)
call_command("migrate", "sessions", interactive=False, verbosity=0)
User.objects.create(username="owner")
old = MigrationExecutor(connection).loader.project_state([("waysaid_site", "0001_first")]).apps
made = old.get_model("waysaid_site", "SchoolClass").objects.create(name="2B", owner_id=1)
old.get_model("waysaid_site", "Child").objects.create(name="Ünsal", school_class_id=made.pk)
make_ready(demo=False)
kept = SchoolClass.objects.get()
print(json.dumps([kept.name, kept.grade, [child.name for child in kept.children.all()]]))
"""


def test_no_change_of_a_model_is_without_its_migration(cast):
    call_command("makemigrations", check=True, dry_run=True, stdout=StringIO())


def test_data_of_the_first_version_comes_along(tmp_path):
    environment = {
        **{name: value for name, value in os.environ.items() if not name.startswith("WAYSAID_")},
        "DJANGO_SETTINGS_MODULE": "waysaid.site.settings",
        "WAYSAID_DATA": str(tmp_path),
    }
    done = subprocess.run(
        [sys.executable, "-c", UPGRADE],
        env=environment,
        capture_output=True,
        text=True,
        check=False,
    )
    assert done.returncode == 0, done.stderr
    assert json.loads(done.stdout) == ["2B", None, ["Ünsal"]]
