"""What is done by itself once a day, and soon after starting: a backup, and what is due to go."""

import logging
import threading
from datetime import date

from django.db import DatabaseError, close_old_connections
from django.utils import timezone

from waysaid.site.backups import BadBackupError, backups, can_copy, choice, make_backup
from waysaid.site.handing import forget_expired
from waysaid.site.keeping import let_go
from waysaid.site.models import SchoolClass
from waysaid.site.people_models import Part
from waysaid.site.summary import count_what_is_over

log = logging.getLogger(__name__)
EVERY_SECONDS = 600
"""How often it is looked whether a day's work is still to be done (our choice)."""


def begin() -> None:
    """Look at once and then again and again, in a thread that ends with the server."""
    threading.Thread(target=_again_and_again, daemon=True, name="daily").start()


def _again_and_again() -> None:
    pause, done = threading.Event(), date.min
    while True:
        today = timezone.localdate()
        if done != today and let_go_what_is_due(today):
            done = today
        back_up(today)
        pause.wait(EVERY_SECONDS)


def let_go_what_is_due(today: date) -> bool:
    """Count what a coach may see, then delete what is due; tell whether it could all be done."""
    try:
        close_old_connections()
        for school_class in SchoolClass.objects.filter(members__part=Part.COACH).distinct():
            count_what_is_over(school_class, today)
        let_go(today)
        forget_expired()
    except (OSError, DatabaseError):
        log.exception("What is due could not be deleted.")
        return False
    finally:
        close_old_connections()
    return True


def back_up(today: date) -> None:
    """Make today's backup if there is none; whatever fails is logged and tried again."""
    try:
        close_old_connections()
        if backup_due(today):
            make_backup(today)
    except (OSError, DatabaseError, BadBackupError):
        log.exception("The backup could not be made.")
    finally:
        close_old_connections()


def backup_due(today: date) -> bool:
    """Tell whether a backup of today is wanted, not there, and there is anything to keep."""
    if not can_copy() or not choice().on:
        return False
    made = any(each.day == today and not each.before for each in backups())
    return not made and SchoolClass.objects.exists()
