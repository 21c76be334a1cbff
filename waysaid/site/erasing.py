"""Take away what is kept of a child, a talk or a class, here and in this machine's backups.

Files that were downloaded or printed before still hold it, and so do copies on other machines.
"""

import contextlib
import re
import time
from collections.abc import Iterator, Sequence
from contextlib import contextmanager
from dataclasses import dataclass
from datetime import datetime

from django.db import DEFAULT_DB_ALIAS, OperationalError, connection, transaction
from django.db.models import Q
from django.utils.translation import gettext as _

from waysaid.site.evidence import forget_gathered
from waysaid.site.handing import forget_in_handed
from waysaid.site.hub import HUB
from waysaid.site.mentions import pattern, without, without_in, written_in
from waysaid.site.models import Child, EventRow, Plan, SchoolClass, ShownRow, Talk
from waysaid.site.people_models import HandedOver
from waysaid.site.record import forget_all
from waysaid.site.rewriting import rewrite_backups

NOTHING_WITHOUT_A_CHILD = "passed"
"""The kind of event that says only that this child chose to pass."""
TRIES = 40
"""Times, a twentieth of a second apart, that SQLite is asked to empty its log (our choice)."""


@dataclass(frozen=True, slots=True)
class Gone:
    """Whom to forget: ids are the same in every copy of this data.

    A file of other data may lie among the copies, with the same ids for other children: the moment
    at which the class was made tells the two apart.

    `said_too` takes away what the child said; `in_words` puts other words in the place of the name
    where somebody wrote it.
    """

    child: int
    school_class: int
    made_at: datetime
    name: str
    said_too: bool
    in_words: bool


def forget_child(child: Child, *, said_too: bool, in_words: bool = False) -> list[str]:
    """Take a child away for good; what was said stays nameless, or goes too.

    Events are changed nowhere else: here the name's id goes out of each of them. Return the
    names of the backups that could not be changed and still hold the child.
    """
    return forget_children([child], said_too=said_too, in_words=in_words)


def forget_children(
    children: Sequence[Child], *, said_too: bool, in_words: bool = False
) -> list[str]:
    """Take children away for good, as `forget_child` does each."""
    gone = [
        Gone(each.pk, of.pk, of.made_at, each.name, said_too, in_words)
        for each in children
        for of in [each.school_class]
    ]
    if not gone:
        return []

    def forget_each(using: str) -> None:
        for each in gone:
            _forget(each, using)

    with _for_good():
        forget_each(DEFAULT_DB_ALIAS)
    return rewrite_backups(forget_each)


def _forget(gone: Gone, using: str) -> None:
    """Forget a child in one database, the teacher's own or a backup."""
    same = SchoolClass.objects.using(using).filter(pk=gone.school_class, made_at=gone.made_at)
    if not same.exists():
        return
    child = Child.objects.using(using).filter(pk=gone.child, school_class=gone.school_class).first()
    events = EventRow.objects.using(using).filter(talk__school_class=gone.school_class)
    for row in events.filter(body__child=str(gone.child)):
        if gone.said_too or row.kind == NOTHING_WITHOUT_A_CHILD:
            row.delete(using=using)
        else:
            row.body = {**row.body, "child": None}
            row.save(update_fields=["body"], using=using)
    if gone.in_words:
        for name in {gone.name, child.name if child else gone.name}:
            _rename(gone.school_class, pattern(name), _("a child"), using)
    forget_gathered(gone.school_class, using)
    forget_in_handed(gone.school_class, str(gone.child), gone.name, using)
    if child is not None:
        child.delete(using=using)


def _rename(class_id: int, name: re.Pattern[str], instead: str, using: str) -> None:
    """Put other words in the place of a name, wherever somebody wrote it in this class."""
    for row in EventRow.objects.using(using).filter(talk__school_class=class_id):
        body = without_in(name, row.body, instead)
        if body != row.body:
            row.body = body
            row.save(update_fields=["body"], using=using)
    for talk in Talk.objects.using(using).filter(school_class=class_id):
        title = without(name, talk.title, instead)
        if title != talk.title:
            talk.title = title[:120]
            talk.save(update_fields=["title"], using=using)
    for plan in Plan.objects.using(using).filter(school_class=class_id):
        plan.title = without(name, plan.title, instead)[:120]
        plan.problems = without_in(name, plan.problems, instead)
        plan.questions = without_in(name, plan.questions, instead, here=True)
        plan.wish = without_in(name, plan.wish, instead)
        plan.save(using=using)
    _rename_handed(class_id, name, instead, using)
    for each in SchoolClass.objects.using(using).filter(pk=class_id):
        each.own_names = {
            family: without(name, own, instead) for family, own in each.own_names.items()
        }
        each.norms = without_in(name, each.norms, instead, here=True)
        each.starters = without_in(name, each.starters, instead, here=True)
        each.signals = without_in(name, each.signals, instead)
        each.save(using=using)


def _rename_handed(class_id: int, name: re.Pattern[str], instead: str, using: str) -> None:
    of_class = Q(came_from=class_id) | Q(school_class=class_id)
    for handed in HandedOver.objects.using(using).filter(of_class):
        handed.content = without_in(name, handed.content, instead)
        handed.save(update_fields=["content"], using=using)


def mentions_of(child: Child) -> list[str]:
    """Return each text kept of the class in which somebody wrote the child's name."""
    name, school_class = pattern(child.name), child.school_class
    talks, plans = school_class.talks.all(), school_class.plans.all()
    texts: list[str] = [*(talk.title for talk in talks), *(plan.title for plan in plans)]
    for plan in plans:
        texts += [*written_in(plan.problems), *written_in(plan.questions, here=True)]
    texts += [*written_in(school_class.norms, here=True), *written_in(school_class.signals)]
    texts += written_in([*school_class.starters, *school_class.own_names.values()], here=True)
    for row in EventRow.objects.filter(talk__school_class=school_class):
        texts += written_in(row.body)
    for handed in school_class.handed_over.all():
        texts += written_in(handed.content)
    return [text for text in dict.fromkeys(texts) if without(name, text, "") != text]


def forget_talks(talks: list[Talk], *, backups_too: bool = False) -> list[str]:
    """Take talks away with everything in them.

    Return the names of the backups that were to lose them too and could not be changed.
    """
    gone = [talk.pk for talk in talks]
    classes = {talk.school_class for talk in talks}
    with _for_good():
        Talk.objects.filter(pk__in=gone).delete()
    _end_streams(gone)
    if not backups_too:
        return []

    def forget_them(alias: str) -> None:
        for of in classes:
            Talk.objects.using(alias).filter(
                pk__in=gone, school_class=of.pk, school_class__made_at=of.made_at
            ).delete()

    return rewrite_backups(forget_them)


def forget_class(school_class: SchoolClass, *, backups_too: bool = False) -> list[str]:
    """Take a class away: names, plans, its year, talks, pictures, colleagues' parts in it.

    Return the names of the backups that were to lose it too and could not be changed.
    """
    class_id, made_at = school_class.pk, school_class.made_at
    gone = list(school_class.talks.values_list("pk", flat=True))
    with _for_good():
        school_class.delete()
    _end_streams(gone)
    if not backups_too:
        return []
    return rewrite_backups(
        lambda alias: SchoolClass.objects.using(alias).filter(pk=class_id, made_at=made_at).delete()
    )


def _end_streams(talks: list[int]) -> None:
    """Let no screen go on looking at a talk that is gone."""
    for talk in talks:
        HUB.empty(talk)


@contextmanager
def _for_good() -> Iterator[None]:
    """Do all or nothing, and leave nothing of it in the data file or at hand.

    SQLite keeps what was deleted or changed, long ago too, until its place is used again: the file
    is written anew without it.
    """
    if connection.vendor == "sqlite":
        with connection.cursor() as cursor:
            cursor.execute("PRAGMA secure_delete = ON")
            cursor.fetchall()
    with transaction.atomic():
        yield
    forget_all()
    tidy()


def tidy() -> None:
    """Write the data file anew without what was deleted, and empty its log.

    No statement may be open on this thread's connection.

    On PostgreSQL the tables give their places free; whoever keeps it decides on its old files.
    Another writer may be in the way for long; then only what was just deleted is wiped.
    """
    with connection.cursor() as cursor, contextlib.suppress(OperationalError):
        if connection.vendor != "sqlite":
            tables = ", ".join(of._meta.db_table for of in (Child, EventRow, Talk, Plan, ShownRow))
            cursor.execute(f"VACUUM {tables}")
            return
        cursor.execute("VACUUM")
        for _try in range(TRIES):
            cursor.execute("PRAGMA wal_checkpoint(TRUNCATE)")
            if cursor.fetchall()[0][0] == 0:
                return
            time.sleep(0.05)
