"""What is kept: a teacher's classes, their children, plans, talks, and what happened in them.

A child is a name on a class list and nothing more. A talk is its events; everything else about it
is folded from them.
"""

import hashlib
import secrets
from typing import ClassVar

from django.conf import settings
from django.db import models
from django.utils.translation import gettext_lazy as _

from waysaid.site import people_models  # noqa: F401  Django looks for tables from here
from waysaid.talk import LOOK_SECONDS

TOKEN_BYTES = 32


def new_token() -> str:
    """Return a random token that is safe in an address (32 random bytes)."""
    return secrets.token_urlsafe(TOKEN_BYTES)


def hashed(token: str) -> str:
    """Return what is kept of a token whose holder alone should know it."""
    return hashlib.sha256(token.encode()).hexdigest()


class Language(models.TextChoices):
    """The languages a desk or a board can speak."""

    ENGLISH = "en", "English"
    SPANISH = "es", "Español"


class SchoolClass(models.Model):
    """A class: its grade (0 is kindergarten) if said, its languages, what hangs round its board.

    `words` is whose names for the families of ways its desk shows, `own_names` what this class
    calls some of them, by slug, and `rest` how it says what a division leaves.
    """

    owner = models.ForeignKey(
        settings.AUTH_USER_MODEL, on_delete=models.CASCADE, related_name="classes"
    )
    name = models.CharField(max_length=80)
    grade = models.PositiveSmallIntegerField(null=True, blank=True)
    desk_language = models.CharField(max_length=5, choices=Language, default=Language.ENGLISH)
    board_language = models.CharField(max_length=5, choices=Language, default=Language.ENGLISH)
    words = models.CharField(max_length=20, default="ours")
    own_names = models.JSONField(default=dict, blank=True)
    rest = models.CharField(max_length=12, default="left-over")
    image_seconds = models.PositiveSmallIntegerField(default=LOOK_SECONDS)
    signals = models.JSONField(default=list)
    norms = models.JSONField(default=list)
    starters = models.JSONField(default=list)
    background = models.ForeignKey(
        "Picture", null=True, blank=True, on_delete=models.SET_NULL, related_name="+"
    )
    made_at = models.DateTimeField(auto_now_add=True)

    class Meta:
        ordering: ClassVar = ["made_at", "id"]

    def __str__(self) -> str:
        return self.name


class Child(models.Model):
    """A name on a class list; `active` is false for a child who has left."""

    school_class = models.ForeignKey(SchoolClass, on_delete=models.CASCADE, related_name="children")
    name = models.CharField(max_length=60)
    order = models.PositiveIntegerField(default=0)
    active = models.BooleanField(default=True)

    class Meta:
        ordering: ClassVar = ["order", "id"]
        constraints: ClassVar = [
            models.UniqueConstraint(
                fields=["school_class", "name"], name="waysaid_child_names_differ"
            )
        ]

    def __str__(self) -> str:
        return self.name

    @property
    def key(self) -> str:
        """The id that events name the child by."""
        return str(self.pk)


class Plan(models.Model):
    """A planned string: `problems` is a list of {id, text, why, locked}.

    `wish` is what it was composed for, as the fields of its form, and `about`, what it then was
    about; empty for a plan that was not composed.
    """

    school_class = models.ForeignKey(SchoolClass, on_delete=models.CASCADE, related_name="plans")
    title = models.CharField(max_length=120)
    problems = models.JSONField(default=list)
    questions = models.JSONField(default=list)
    starter = models.CharField(max_length=80, blank=True, default="")
    wish = models.JSONField(default=dict, blank=True)
    made_for = models.DateField(null=True, blank=True)
    made_at = models.DateTimeField(auto_now_add=True)
    changed_at = models.DateTimeField(auto_now=True)

    class Meta:
        ordering: ClassVar = ["-made_for", "-made_at", "-id"]

    def __str__(self) -> str:
        return self.title


class Talk(models.Model):
    """A talk. `history` is false on a substitute's talk: the desk then tells nothing of before.

    `set_aside` are the ids of ways whose correction the teacher erased: it counts no more.
    """

    school_class = models.ForeignKey(SchoolClass, on_delete=models.CASCADE, related_name="talks")
    plan = models.ForeignKey(
        Plan, null=True, blank=True, on_delete=models.SET_NULL, related_name="talks"
    )
    title = models.CharField(max_length=120)
    history = models.BooleanField(default=True)
    board_token = models.CharField(max_length=64, unique=True, default=new_token)
    one_token = models.CharField(max_length=64, unique=True, default=new_token)
    set_aside = models.JSONField(default=list, blank=True)
    made_at = models.DateTimeField(auto_now_add=True)
    closed_at = models.DateTimeField(null=True, blank=True)

    class Meta:
        ordering: ClassVar = ["-made_at", "-id"]

    def __str__(self) -> str:
        return self.title


class SchoolYear(models.Model):
    """The year of a class: what it was laid out for, and what planning it again would move.

    `off` are ISO dates. Its days can be laid out anew from it, apart from what was changed by hand.
    """

    school_class = models.OneToOneField(SchoolClass, on_delete=models.CASCADE, related_name="year")
    grade = models.PositiveSmallIntegerField()
    curriculum = models.CharField(max_length=12)
    seed = models.PositiveIntegerField(default=1)
    first = models.DateField()
    last = models.DateField()
    off = models.JSONField(default=list, blank=True)
    proposal = models.JSONField(null=True, blank=True)
    made_at = models.DateTimeField(auto_now_add=True)

    def __str__(self) -> str:
        return f"{self.first} – {self.last}"


class YearDay(models.Model):
    """A school day: its idea's slug, the texts of its problems, what was said of it.

    `skipped` says that there is no talk on it, `held` that there was one although none is kept
    here, `settled` that the year was planned again without it.
    """

    year = models.ForeignKey(SchoolYear, on_delete=models.CASCADE, related_name="days")
    date = models.DateField()
    idea = models.CharField(max_length=80)
    problems = models.JSONField(default=list)
    plan = models.ForeignKey(
        Plan, null=True, blank=True, on_delete=models.SET_NULL, related_name="+"
    )
    locked = models.BooleanField(default=False)
    skipped = models.BooleanField(default=False)
    held = models.BooleanField(default=False)
    settled = models.BooleanField(default=False)

    class Meta:
        ordering: ClassVar = ["date"]
        constraints: ClassVar = [
            models.UniqueConstraint(fields=["year", "date"], name="waysaid_year_day_once")
        ]

    def __str__(self) -> str:
        return f"{self.date} {self.idea}"


class EventRow(models.Model):
    """One event of a talk, as the client sent it, in the server's order; never changed."""

    talk = models.ForeignKey(Talk, on_delete=models.CASCADE, related_name="events")
    order = models.PositiveIntegerField()
    client = models.CharField(max_length=64)
    sequence = models.PositiveIntegerField()
    kind = models.CharField(max_length=32)
    body = models.JSONField()
    received_at = models.DateTimeField()

    class Meta:
        ordering: ClassVar = ["talk", "order"]
        constraints: ClassVar = [
            models.UniqueConstraint(fields=["talk", "order"], name="waysaid_event_order"),
            models.UniqueConstraint(
                fields=["talk", "client", "sequence"], name="waysaid_event_sent_once"
            ),
        ]

    def __str__(self) -> str:
        return f"{self.order} {self.kind}"


class Gathered(models.Model):
    """What was gathered of a talk up to the event of order `upto`; made again when more came.

    `problems` are the texts of those that were shown, `focus` the family its plan was about.
    """

    talk = models.OneToOneField(Talk, on_delete=models.CASCADE, related_name="gathered")
    upto = models.PositiveIntegerField()
    day = models.DateField()
    focus = models.CharField(max_length=20, blank=True, default="")
    problems = models.JSONField(default=list)

    def __str__(self) -> str:
        return f"{self.talk_id} up to {self.upto}"


class ShownRow(models.Model):
    """One piece of evidence of a talk, as `waysaid.growth` has it; `child` is a child's id."""

    gathered = models.ForeignKey(Gathered, on_delete=models.CASCADE, related_name="shown")
    order = models.PositiveIntegerField()
    child = models.CharField(max_length=64, null=True, blank=True)  # noqa: DJ001  nobody named
    how = models.CharField(max_length=10)
    problem = models.CharField(max_length=2000, blank=True, default="")
    family = models.CharField(max_length=20, blank=True, default="")
    way = models.CharField(max_length=64, blank=True, default="")
    picture = models.CharField(max_length=20, blank=True, default="")
    right = models.BooleanField(null=True)
    language = models.CharField(max_length=5)
    planned = models.BooleanField(default=False)

    class Meta:
        ordering: ClassVar = ["gathered", "order"]

    def __str__(self) -> str:
        return f"{self.order} {self.how}"


class PictureKind(models.TextChoices):
    """What a picture is for."""

    BACKGROUND = "background", _("background")
    SIGNAL = "signal", _("signal")


class Picture(models.Model):
    """A teacher's own picture, drawn anew by us, with nothing in it but its pixels."""

    school_class = models.ForeignKey(SchoolClass, on_delete=models.CASCADE, related_name="pictures")
    kind = models.CharField(max_length=12, choices=PictureKind)
    content = models.BinaryField()
    content_type = models.CharField(max_length=20)
    width = models.PositiveIntegerField()
    height = models.PositiveIntegerField()
    made_at = models.DateTimeField(auto_now_add=True)

    class Meta:
        ordering: ClassVar = ["id"]

    def __str__(self) -> str:
        return f"{self.kind} {self.pk}"


class Role(models.TextChoices):
    """What a device that joined may be."""

    BOARD = "board", _("board")
    DESK = "desk", _("desk")


class DeviceKey(models.Model):
    """A device that joined one talk in one role; only a hash of its key is kept."""

    talk = models.ForeignKey(Talk, on_delete=models.CASCADE, related_name="devices")
    role = models.CharField(max_length=8, choices=Role)
    history = models.BooleanField(default=True)
    key_hash = models.CharField(max_length=64, unique=True)
    made_at = models.DateTimeField(auto_now_add=True)

    def __str__(self) -> str:
        return f"{self.role} {self.pk}"


class Opening(models.Model):
    """A one-time address that opens this machine's own session; gone at its first use."""

    token_hash = models.CharField(max_length=64, unique=True)
    made_at = models.DateTimeField(auto_now_add=True)

    def __str__(self) -> str:
        return f"opening {self.pk}"
