"""What is kept about people and time: colleagues' parts, how long, counts, what is handed over."""

from typing import ClassVar

from django.conf import settings
from django.db import models
from django.utils.translation import gettext_lazy as _


class Part(models.TextChoices):
    """What a colleague is in somebody's class; `waysaid.site.rights` says what each may do."""

    TEACHER = "teacher", _("teacher")
    CO_TEACHER = "co-teacher", _("co-teacher")
    VISITOR = "visitor", _("visitor")
    COACH = "coach", _("coach")


class Member(models.Model):
    """A colleague with a part in a class that is not hers."""

    school_class = models.ForeignKey(
        "waysaid_site.SchoolClass", on_delete=models.CASCADE, related_name="members"
    )
    person = models.ForeignKey(
        settings.AUTH_USER_MODEL, on_delete=models.CASCADE, related_name="shared"
    )
    part = models.CharField(max_length=12, choices=Part)
    made_at = models.DateTimeField(auto_now_add=True)

    class Meta:
        ordering: ClassVar = ["made_at", "id"]
        constraints: ClassVar = [
            models.UniqueConstraint(
                fields=["school_class", "person"], name="waysaid_member_of_class_once"
            )
        ]

    def __str__(self) -> str:
        return f"{self.part} {self.pk}"


class Invitation(models.Model):
    """A one-time address that gives one account a part in a class; only its hash is kept."""

    school_class = models.ForeignKey(
        "waysaid_site.SchoolClass", on_delete=models.CASCADE, related_name="invitations"
    )
    account = models.CharField(max_length=150)
    part = models.CharField(max_length=12, choices=Part)
    token_hash = models.CharField(max_length=64, unique=True)
    expires_at = models.DateTimeField()

    class Meta:
        ordering: ClassVar = ["expires_at", "id"]

    def __str__(self) -> str:
        return f"{self.part} {self.pk}"


class Keeping(models.Model):
    """How long a class's talks and names are kept: `days` after the year's end, or until deleted.

    `ends` is the year's end where no year is laid out, as month and day; `said_on` is the day on
    which it was first said to somebody who may change it that they are about to go.
    """

    school_class = models.OneToOneField(
        "waysaid_site.SchoolClass", on_delete=models.CASCADE, related_name="keeping"
    )
    on = models.BooleanField(default=True)
    days = models.PositiveSmallIntegerField(default=60)
    ends = models.CharField(max_length=5, default="07-31")
    said_on = models.DateField(null=True, blank=True)

    def __str__(self) -> str:
        return f"{self.days} days after {self.ends}"


class Counted(models.Model):
    """Counts without names of a class's half-term that is over, made once and never again.

    `cells` holds, by family, the least number of its band; a family that is not there is not told.
    """

    school_class = models.ForeignKey(
        "waysaid_site.SchoolClass", on_delete=models.CASCADE, related_name="counted"
    )
    first = models.DateField()
    cells = models.JSONField(default=dict)

    class Meta:
        ordering: ClassVar = ["first"]
        constraints: ClassVar = [
            models.UniqueConstraint(
                fields=["school_class", "first"], name="waysaid_counted_half_term_once"
            )
        ]

    def __str__(self) -> str:
        return f"{self.first} {len(self.cells)}"


class HandedOver(models.Model):
    """What one teacher chose to hand over to the next, and nothing else of her class.

    It waits for the account `to`, until `expires_at`; `came_from` is the class it was chosen in,
    and the ids in it are that class's. Once taken it belongs to `school_class`, whose ids it has.
    """

    to = models.CharField(max_length=150, blank=True, default="")
    giver = models.CharField(max_length=150, blank=True, default="")
    came_from = models.ForeignKey(
        "waysaid_site.SchoolClass",
        null=True,
        blank=True,
        on_delete=models.CASCADE,
        related_name="handing_over",
    )
    school_class = models.ForeignKey(
        "waysaid_site.SchoolClass",
        null=True,
        blank=True,
        on_delete=models.CASCADE,
        related_name="handed_over",
    )
    content = models.JSONField(default=dict)
    made_at = models.DateTimeField(auto_now_add=True)
    expires_at = models.DateTimeField(null=True, blank=True)

    class Meta:
        ordering: ClassVar = ["made_at", "id"]

    def __str__(self) -> str:
        return f"handed over {self.pk}"
